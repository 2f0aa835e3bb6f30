/*
 * What goes wrong between the drawing and the house: changes made to finished parts.
 */
#ifndef TESTS_RULES_CHANGES_H
#define TESTS_RULES_CHANGES_H

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

static inline void with_section(struct part *parts, const struct corner *corners, int n)
{
	for (struct part *p = parts; p; p = p->next)
		if (p->kind == &part_rail)
			p->section = (struct outline){ corners, n };
}

/* Four quarter rounds: a bulge is the tangent of a quarter of the angle. */
static inline void round_rail(struct built *b, struct part *parts, double by)
{
	struct corner *c = NEW_N(b->arena, struct corner, 4);
	double r = by / 2, quarter = tan(PI / 8);

	c[0] = (struct corner){ { -r, 0 }, quarter };
	c[1] = (struct corner){ { 0, -r }, quarter };
	c[2] = (struct corner){ { r, 0 }, quarter };
	c[3] = (struct corner){ { 0, r }, quarter };
	with_section(parts, c, 4);
}

static inline void rectangular_rail(struct built *b, struct part *parts, double up, double across)
{
	struct corner *c = NEW_N(b->arena, struct corner, 4);

	c[1].at = vec(0, across);
	c[2].at = vec(up, across);
	c[3].at = vec(up, 0);
	with_section(parts, c, 4);
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
 *     ___|   |___
 *    |___________|  foot
 */
struct tee {
	double head_width, head, recess, neck, foot;
};

static const struct tee plain_tee = { 60, 12, 10, 40, 10 };

static inline void tee_rail(struct built *b, struct part *parts, struct tee t)
{
	struct corner *c = NEW_N(b->arena, struct corner, 12);
	double w = t.head_width, in = t.recess;
	double neck = t.foot, head = neck + t.neck, top = head + t.head;
	const struct vec at[12] = { { 0, 0 }, { 0, w }, { neck, w }, { neck, w - in },
		{ head, w - in }, { head, w }, { top, w }, { top, 0 }, { head, 0 }, { head, in },
		{ neck, in }, { neck, 0 } };

	for (int i = 0; i < 12; i++)
		c[i].at = at[i];
	with_section(parts, c, 12);
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

static inline void rail_with_head_width(struct built *b, struct part *parts, double by)
{
	struct tee t = plain_tee;
	t.head_width = by;
	tee_rail(b, parts, t);
}

#endif
