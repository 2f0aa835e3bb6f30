/*
 * Where the rails along walls run: what rail, brackets and the wall behind them are set out from.
 */
#ifndef PARTS_WALL_RAIL_H
#define PARTS_WALL_RAIL_H

#include "parts/profile.h"
#include "parts/rod.h"

/* One rail, from end to end.  Along the rake a place is measured from `start`, plumb under which
 * (at the underside) its lower end lies. */
struct wall_run {
	const struct job_wall_rail *spec;
	const struct side *side;
	struct profile_sizes sizes;
	double start;  /* x of the flight */
	double room;   /* along the flight, without its returns */
	double length; /* along the rake, end to end, its returns with it */
	double under;  /* level of the underside at `start` */
	double middle; /* of the rail, in from the wall */
};

struct wall_runs {
	struct wall_run *run;
	int n;
};

/* Those that have a wall and a section that can be struck; what is wrong with the others goes into
 * `d`, unless that is NULL. */
struct wall_runs wall_runs_make(struct arena *a, const struct rod *r, struct diags *d);

/* Axes with x along the flight's slope, y to the left, z square to both; origin under the middle
 * of the rail at its lower end. */
struct frame wall_run_axes(const struct rod *r, const struct wall_run *run);

/* 1 where the wall is on the left of the rail, -1 where on its right. */
double wall_run_wall(const struct wall_run *run);

/* How far a bracket reaches along the wall, to either side of its middle. */
double bracket_half(void);

/* How far a bracket of it reaches below the rail's underside. */
double bracket_reach(const struct job_wall_rail *w);

/* The highest level of the wall rails of a side; -INFINITY: it has none. */
double wall_runs_top(struct arena *a, const struct rod *r, const struct side *side);

#endif
