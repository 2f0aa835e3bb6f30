/*
 * Holes in the plumb cut of a rail, and how much wood they find.
 */
#ifndef PARTS_RAIL_HOLES_H
#define PARTS_RAIL_HOLES_H

#include "parts/piece.h"
#include "parts/stretch.h"

#define HOLE_WOOD 2.0    /* at least so much is left round a hole that the job asks for */
#define HOLE_ROOMY 6.0   /* and round one chosen by room, where it can be (common practice) */
#define BOLT_HEIGHT 24.0 /* usual, over the underside: 15/16 in (from memory) */

/* One end of a rail, while it is drilled. */
struct rail_cut {
	struct arena *arena;
	struct part *part;
	const struct stretch *stretch;
	double inward; /* 1 at the foot, -1 at the head: which way the rail lies */
	double edge;   /* x of the cut at the underside */
	bool is_met;   /* the newel has the bolt of another rail */
	double met;    /* its level; NAN: that rail has none there */
	bool at_wall;  /* existing work, which is not drilled here */
	double wood;   /* least that is left round a hole */
	struct job_rail_bolt bolt;
};

struct hole {
	double diameter, depth;
};

/* The hole that its nut is reached by, from under a rail so deep; `at` is on the bolt's axis. */
struct bore rail_bolt_access(const struct job_rail_bolt *bolt, struct vec3 at, double rail);

/* Does a rail of this section, half-way up to a bolt so high, have wood on both sides of that? */
bool rail_bolt_access_fits(struct outline section, const struct job_rail_bolt *bolt, double height);

struct hole bolt_hole(const struct job_rail_bolt *bolt);
struct hole dowel_hole(const struct job_dowel *dowel);

/* Heights over the underside, square to the rail, that a hole may have half-way along. */
struct hole_range {
	double low, high;
};

struct hole_range hole_range(const struct rail_cut *c, struct hole h);
bool hole_has_room(struct hole_range r);

/* The least depth of a rail in which a hole has that much wood round it. */
double hole_least_depth(const struct rail_cut *c, struct hole h);

/* How far from the middle of the rail a hole may lie that is so high half-way along. */
double hole_aside(const struct rail_cut *c, struct hole h, double height);

/* Plumb over the underside, at the cut, for a hole that has this height half-way. */
double hole_at_cut(const struct rail_cut *c, struct hole h, double height);

/* Heights are half-way along; a bolt brings its access hole. */
void rail_bolt_add(const struct rail_cut *c, double height);
void rail_dowel_add(const struct rail_cut *c, double height, double aside);

#endif
