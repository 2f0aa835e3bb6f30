/*
 * What goes wrong between the drawing and the house: changes made to finished parts.
 */
#ifndef TESTS_RULES_CHANGES_H
#define TESTS_RULES_CHANGES_H

#include "parts/profile.h"
#include "rules_checked.h"

typedef void change_fn(struct built *b, struct part *parts, double by);

/* ---- a step out of its place ---- */

enum { MOVED_STEP = 7 };

static inline bool is_of_step(const struct built *b, const struct part *p, int place)
{
	double level = b->stair->flights[0].steps[MOVED_STEP - 1].level;

	return p->kind == &part_tread && fabs(built_extent(p, place).high.z - level) < 1;
}

static inline void move_step(struct built *b, struct part *parts, struct vec3 by)
{
	for (struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			if (is_of_step(b, p, i)) {
				struct frame *at = (struct frame *)&p->places[i];
				at->origin = vec3_add(at->origin, by);
			}
}

static inline void raise_step(struct built *b, struct part *parts, double by)
{
	move_step(b, parts, vec3(0, 0, by));
}

/* Back, away from who goes up. */
static inline void push_step(struct built *b, struct part *parts, double by)
{
	move_step(b, parts, vec3(by, 0, 0));
}

static inline void lean_risers(struct built *b, struct part *parts, double by)
{
	(void)b;
	for (struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == &part_riser && i < p->count; i++) {
			struct frame *at = (struct frame *)&p->places[i];
			at->v = vec3(-sin(by), 0, cos(by));
			at->w = vec3(-cos(by), 0, -sin(by));
		}
}

/* ---- rails ---- */

static inline void take_rails_away(struct built *b, struct part *parts, double by)
{
	(void)b;
	(void)by;
	for (struct part *p = parts; p; p = p->next)
		if (p->kind == &part_rail)
			p->count = 0;
}

/* A second place for the rail: beside the wall on the left, so far off it. */
static inline void hang_rail_on_wall(struct built *b, struct part *parts, double by)
{
	for (struct part *p = parts; p; p = p->next) {
		if (p->kind != &part_rail)
			continue;
		struct frame *places = (struct frame *)p->places;
		double over = b->stair->width - by - built_extent(p, 0).high.y;
		places[p->count] = places[0];
		places[p->count].origin.y += over;
		p->count++;
		return;
	}
}

/* Another profile in place of the rail's own. */
static inline void with_section(struct built *b, struct part *parts, const struct corner *corners,
	int n)
{
	for (struct part *p = parts; p; p = p->next) {
		if (p->kind != &part_rail)
			continue;
		struct rail *rail = NEW(b->arena, struct rail);
		*rail = *p->rail;
		rail->profile = profile_measured((struct outline){ corners, n });
		p->rail = rail;
	}
}

/* Four quarter rounds: a bulge is the tangent of a quarter of the angle. */
static inline void round_rail(struct built *b, struct part *parts, double by)
{
	struct corner *c = NEW_N(b->arena, struct corner, 4);
	double r = by / 2, quarter = tan(PI / 8);

	c[0] = (struct corner){ { 0, 0 }, quarter };
	c[1] = (struct corner){ { r, r }, quarter };
	c[2] = (struct corner){ { 0, by }, quarter };
	c[3] = (struct corner){ { -r, r }, quarter };
	with_section(b, parts, c, 4);
}

/* Middle of its underside at the origin. */
static inline void rectangular_rail(struct built *b, struct part *parts, double up, double across)
{
	struct corner *c = NEW_N(b->arena, struct corner, 4);

	c[0].at = vec(-across / 2, 0);
	c[1].at = vec(across / 2, 0);
	c[2].at = vec(across / 2, up);
	c[3].at = vec(-across / 2, up);
	with_section(b, parts, c, 4);
}

static inline void square_rail(struct built *b, struct part *parts, double by)
{
	rectangular_rail(b, parts, by, by);
}

/* So flat that its perimeter is small for its diagonal. */
static inline void flat_rail(struct built *b, struct part *parts, double by)
{
	rectangular_rail(b, parts, 20, sqrt(by * by - 400));
}

/*
 *     ___________
 *    |           |  head, as deep as the recess starts
 *    |___     ___|
 *        |   |      neck, in by the recess on both sides
 *      __|   |__
 *     |   .-.   |   foot, a hair narrower, with a hollow under it
 */
struct tee {
	double head_width, head, recess, neck, foot;
};

static const struct tee plain_tee = { 60, 12, 10, 40, 10 };

#define HOLLOW 3.0

static inline void tee_rail(struct built *b, struct part *parts, struct tee t)
{
	struct corner *c = NEW_N(b->arena, struct corner, 14);
	double w = t.head_width / 2, narrow = w - 1, in = w - t.recess;
	double neck = t.foot, head = neck + t.neck, top = head + t.head;
	const struct vec at[14] = { { -narrow, 0 }, { -HOLLOW, 0 }, { HOLLOW, 0 }, { narrow, 0 },
		{ narrow, neck }, { in, neck }, { in, head }, { w, head }, { w, top }, { -w, top },
		{ -w, head }, { -in, head }, { -in, neck }, { -narrow, neck } };

	for (int i = 0; i < 14; i++)
		c[i].at = at[i];
	c[1].bulge = -0.5;
	with_section(b, parts, c, 14);
}

/* A rounded bar: four straight sides, four quarter rounds. */
static inline void rail_with_edges(struct built *b, struct part *parts, double by)
{
	struct corner *c = NEW_N(b->arena, struct corner, 8);
	double w = 25, h = 30, q = tan(PI / 8);
	const struct corner at[8] = { { { -w + by, 0 }, 0 }, { { w - by, 0 }, q }, { { w, by }, 0 },
		{ { w, h - by }, q }, { { w - by, h }, 0 }, { { -w + by, h }, q },
		{ { -w, h - by }, 0 }, { { -w, by }, q } };

	memcpy(c, at, sizeof(at));
	with_section(b, parts, c, 8);
}

static inline void rail_with_head(struct built *b, struct part *parts, double by)
{
	struct tee t = plain_tee;
	t.head = by;
	tee_rail(b, parts, t);
}

static inline void rail_with_recess_depth(struct built *b, struct part *parts, double by)
{
	struct tee t = plain_tee;
	t.recess = by;
	tee_rail(b, parts, t);
}

static inline void rail_with_recess_height(struct built *b, struct part *parts, double by)
{
	struct tee t = plain_tee;
	t.neck = by;
	tee_rail(b, parts, t);
}

static inline void rail_with_recess_reach(struct built *b, struct part *parts, double by)
{
	struct tee t = plain_tee;
	t.neck = by - t.head;
	tee_rail(b, parts, t);
}

/* Under the widest part a step that is not deep enough, and only under it the recess. */
static inline void rail_with_shy_step(struct built *b, struct part *parts, double by)
{
	struct corner *c = NEW_N(b->arena, struct corner, 14);
	double step = 60 - by;
	const struct vec at[14] = { { -20, 0 }, { -HOLLOW, 0 }, { HOLLOW, 0 }, { 20, 0 },
		{ 20, step }, { 29, step }, { 29, 60 }, { 30, 60 }, { 30, 70 }, { -30, 70 },
		{ -30, 60 }, { -29, 60 }, { -29, step }, { -20, step } };

	for (int i = 0; i < 14; i++)
		c[i].at = at[i];
	c[1].bulge = -0.5;
	with_section(b, parts, c, 14);
}

static inline void rail_with_head_width(struct built *b, struct part *parts, double by)
{
	struct tee t = plain_tee;
	t.head_width = by;
	tee_rail(b, parts, t);
}

#endif
