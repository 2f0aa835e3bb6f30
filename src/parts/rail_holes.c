#include "parts/rail_holes.h"

#include "parts/fixing.h"
#include "parts/profile.h"

/*
 * Holes are drilled square to the plumb cut, so they run level, while the rail does not: what
 * counts is how high they lie half-way along, and that both their ends keep in the wood.
 *
 *          .'  |        |  .'
 *        .'    |        |.'
 *      .'   ===| newel  |===       at the head a hole comes nearer to the top of the
 *     |   .'   |        | .'|      rail, at the foot to its underside
 *     | .'              .'
 */

#define PLUG 10.0 /* length of the plug of an access hole */
#define COVER 2.0 /* of wood over an access hole, at least */

static double sine_of(const struct rail_cut *c)
{
	return sin(c->stretch->pitch);
}

static const struct job_rail *rail_of(const struct rail_cut *c)
{
	return &c->stretch->rod->job->rail;
}

/* How far a hole reaches up and down from its middle. */
static double reach(const struct rail_cut *c, struct hole h)
{
	return h.diameter / 2 + h.depth / 2 * sine_of(c);
}

struct hole bolt_hole(const struct job_rail_bolt *bolt)
{
	return (struct hole){ bolt->clearance, bolt->length / 2 };
}

struct hole dowel_hole(const struct job_dowel *dowel)
{
	return (struct hole){ dowel->diameter, dowel->length / 2 + DOWEL_GLUE_ROOM };
}

double hole_least_depth(const struct rail_cut *c, struct hole h)
{
	return 2 * (reach(c, h) + c->wood);
}

struct hole_range hole_range(const struct rail_cut *c, struct hole h)
{
	double keep = reach(c, h) + c->wood;
	return (struct hole_range){ keep, rail_of(c)->depth - keep };
}

bool hole_has_room(struct hole_range r)
{
	return r.low <= r.high;
}

double hole_aside(const struct rail_cut *c, struct hole h, double height)
{
	double up = reach(c, h);
	double half = profile_narrowest(c->part->section, height - up, height + up);
	return half - h.diameter / 2 - c->wood;
}

double hole_at_cut(const struct rail_cut *c, struct hole h, double height)
{
	const struct stretch *s = c->stretch;
	return height / s->cosine + c->inward * h.depth / 2 * s->slope;
}

/* A point of a level line into the rail: so high over the underside at the cut, so far in. */
static struct vec3 point(const struct rail_cut *c, double at_cut, double in)
{
	double cosine = c->stretch->cosine, sine = sine_of(c), x = c->inward * in;
	return vec3(c->edge + at_cut * sine + x * cosine, 0, at_cut * cosine - x * sine);
}

static struct frame mouth(const struct rail_cut *c, double at_cut, double aside)
{
	double cosine = c->stretch->cosine, sine = sine_of(c);
	struct frame f = { .origin = point(c, at_cut, 0), .u = { 0, 1, 0 } };
	f.origin.y = aside;
	f.w = vec3_scale(vec3(cosine, 0, -sine), -c->inward);
	f.v = vec3_cross(f.w, f.u);
	return f;
}

struct bore rail_bolt_access(const struct job_rail_bolt *bolt, struct vec3 at, double rail)
{
	double depth = fmin(at.z + bolt->clearance, rail - COVER);
	struct bore b = { .size = bore_round(bolt->access_diameter, depth),
		.fixing = FIXING_PLUG,
		.fixing_width = bolt->access_diameter,
		.fixing_length = PLUG };
	b.at = (struct frame){ vec3(at.x, 0, 0), { 1, 0, 0 }, { 0, -1, 0 }, { 0, 0, -1 } };
	b.text = "access hole for the rail bolt, plugged";
	return b;
}

bool rail_bolt_access_fits(struct outline section, const struct job_rail_bolt *bolt, double height)
{
	return profile_half_width(section, height / 2) >= bolt->access_diameter / 2 + HOLE_WOOD;
}

static void add_access_hole(const struct rail_cut *c, double at_cut)
{
	struct vec3 p = point(c, at_cut, c->bolt.access);
	piece_bore(c->arena, c->part, rail_bolt_access(&c->bolt, p, rail_of(c)->depth));
}

void rail_bolt_add(const struct rail_cut *c, double height)
{
	struct hole h = bolt_hole(&c->bolt);
	double at_cut = hole_at_cut(c, h, height);
	struct bore b = { .at = mouth(c, at_cut, 0), .size = bore_round(h.diameter, h.depth) };
	if (!c->at_wall)
		b.mate = bore_round(c->bolt.pilot, c->bolt.length / 2);
	b.fixing = FIXING_RAIL_BOLT;
	b.fixing_length = c->bolt.length;
	b.fixing_width = c->bolt.diameter;
	b.text = c->at_wall ? "rail bolt, into a stud or backing in the wall" : "rail bolt";
	piece_bore(c->arena, c->part, b);
	add_access_hole(c, at_cut);
}

void rail_dowel_add(const struct rail_cut *c, double height, double aside)
{
	const struct job_dowel *dowel = &rail_of(c)->dowel;
	struct hole h = dowel_hole(dowel);
	struct bore b = dowel_bore((struct dowel){ h.diameter, dowel->length, h.depth, h.depth });
	b.at = mouth(c, hole_at_cut(c, h, height), aside);
	b.text = "dowel, rail to newel";
	piece_bore(c->arena, c->part, b);
}
