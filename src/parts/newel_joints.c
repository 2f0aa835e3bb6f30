#include "parts/fixing.h"
#include "parts/newel_foot.h"
#include "parts/stringer.h"

/*
 * What newels are drilled for: loose tenons to the stringers whose ends come
 * against them, and their feet (newel_foot.c).
 *
 *     tread   ______
 *            |______|
 *       |    ||  string        two tenons where the joint is tall
 *       |   =||=
 *       |   =||=
 *       |    ||
 *
 * Sizes are common practice.
 */

#define TENON_DEPTH 30.0  /* into either side */
#define GLUE_ROOM 1.0     /* under its end: it must never stand on the bottom */
#define LEAST_DEPTH 12.0  /* of a mortise that still holds */
#define BESIDE_ACCESS 6.0 /* of wood between it and the hole to the nut of a newel bolt */
#define LEAST_TENON 6.0
#define TALL_JOINT 140.0 /* takes two tenons */
#define LEAST_JOINT 45.0

static const struct vec3 up = { 1, 0, 0 };

struct frame post_mouth(struct vec3 origin, struct vec3 u, struct vec3 w)
{
	return (struct frame){ origin, u, vec3_cross(w, u), w };
}

/* The piece of the newel that a mouth is in. */
static struct part *wood_at(const struct post *p, struct frame mouth)
{
	struct vec3 inside = vec3_sub(mouth.origin, vec3_scale(mouth.w, 0.5));
	for (struct part *w = p->wood; w; w = w->next)
		if (solids_contain(w->solids, frame_place_back(w->places[0], inside)))
			return w;
	return NULL;
}

void post_drill(struct pieces *list, const struct post *p, struct bore b)
{
	struct frame at = frame_compose(p->place, b.at);
	struct part *w = wood_at(p, at);
	double in = (p->section - p->core) / 2;
	if (!w && in > 0) { /* in a panel: into the core */
		at.origin = vec3_sub(at.origin, vec3_scale(at.w, in));
		b.size.depth -= in;
		w = wood_at(p, at);
	}
	if (!w)
		return;
	b.at = frame_within(w->places[0], at);
	piece_bore(list->arena, w, b);
}

double post_across(const struct post *p, double in)
{
	double off = in - p->side->rail;
	return p->section / 2 + (p->side->hand == HAND_RIGHT ? off : -off);
}

/* As deep as into the stringer, but for the hole that comes across to the bolt in its middle. */
static double depth_in_newel(const struct post *p)
{
	double step = round_size(p->rod->job->about.units, 1.0 / 16, 1);
	double room = (p->section - foot_bits(p).access) / 2 - BESIDE_ACCESS;
	return fmin(TENON_DEPTH + GLUE_ROOM,
		fmax(LEAST_DEPTH, step * floor(room / step + NEAR_ENOUGH)));
}

static void tenons_add(struct pieces *list, const struct post *p, struct post_contact c,
	double face)
{
	double half = p->section / 2, tall = c.high - c.low;
	double in0 = fmax(c.in0, p->side->rail - half), in1 = fmin(c.in1, p->side->rail + half);
	enum units units = p->rod->job->about.units;
	double thick = bit_within(units, round_size(units, 0.5, 12), (in1 - in0) / 3);
	int n = tall > TALL_JOINT ? 2 : 1;
	struct vec3 out = vec3(0, face > half ? 1 : -1, 0);
	if (thick < LEAST_TENON || tall < LEAST_JOINT)
		return;
	struct bore b = { .fixing = FIXING_LOOSE_TENON, .text = "loose tenon, stringer to newel" };
	b.size = bore_oblong(BORE_MORTISE, fmin(60, tall / n - 25), thick, TENON_DEPTH + GLUE_ROOM);
	b.mate = b.size;
	b.size.depth = depth_in_newel(p);
	b.fixing_length = b.size.depth + b.mate.depth - 2 * GLUE_ROOM;
	b.fixing_width = b.size.length;
	for (int i = 0; i < n; i++) {
		double level = c.low + tall * (i + 0.5) / n - p->end.newel_z;
		b.at = post_mouth(vec3(level, face, post_across(p, (in0 + in1) / 2)), up, out);
		post_drill(list, p, b);
	}
}

struct post_contact post_contact(const struct post *p)
{
	const struct rod *r = p->rod;
	struct post_contact c = { p->side->outer, p->side->inner, p->end.newel_z, 0 };
	if (p->side->kind == STRINGER_HOUSED)
		c.in1 -= r->job->stringers.housing_depth;
	return c;
}

static void foot_tenons_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	struct post_contact c = post_contact(p);
	bool housed = p->side->kind == STRINGER_HOUSED;
	double block = stringers_have_block(r) ? r->job->stringers.block_thickness : 0;
	c.low = r->foot + (housed ? 0 : block);
	c.high = housed ? rod_housed_edge_z(r, p->end.x) : r->rise - r->tread;
	tenons_add(list, p, c, p->section);
}

static void head_tenons_add(struct pieces *list, const struct post *p)
{
	struct post_contact c = post_contact(p);
	c.high = rod_housed_edge_z(p->rod, p->end.x);
	if (p->side->kind == STRINGER_HOUSED)
		tenons_add(list, p, c, 0);
}

enum newel_held newel_joints_add(struct pieces *list, const struct post *p)
{
	if (p->end.kind == RAIL_END_NEWEL && p->is_bottom)
		foot_tenons_add(list, p);
	else if (p->end.kind == RAIL_END_NEWEL)
		head_tenons_add(list, p);
	return newel_foot_fix(list, p);
}
