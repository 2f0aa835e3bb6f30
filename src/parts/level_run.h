/*
 * Level runs: the rails that guard the upper floor, in a chain from the head of the stair.
 */
#ifndef PARTS_LEVEL_RUN_H
#define PARTS_LEVEL_RUN_H

#include "parts/stretch.h"

/* The middle of a run on plan, x along the flight, y in from the limit of its side (negative is
 * outside the stair): from the centre of the newel at its start to that at its end, or to the face
 * of the wall. */
struct run_line {
	const struct job_level_run *run;
	struct vec from, to;
	bool is_met; /* the newel at its start belongs to the stair, or to the run before */
};

/* The runs of a side, in order. */
struct run_lines {
	struct run_line *line;
	int n;
};

struct run_lines level_run_lines(struct arena *a, const struct rod *r, const struct side *side);

/* What a run covers on plan, newels and all. */
struct box level_run_box(const struct rod *r, const struct run_line *line);

/* The opening's edge beside a side of the stair, in from its limit: as far out as the stair's own
 * wood where the job gives no width.  And the whole opening. */
double level_run_edge(const struct rod *r, const struct side *side);
struct box level_run_opening(const struct rod *r, const struct side *side);

/* How far the treads, newels and rail of a side reach out past its limit. */
double level_run_reach(const struct rod *r, const struct side *side);

/* Appends the stretches of a side's runs to those of its rake (NULL: none); where to go on. */
struct stretch **level_runs_add(struct arena *a, const struct rod *r, const struct side *side,
	struct stretch *raked, struct stretch **tail);

/* Complains of runs that cannot stand. */
void level_runs_check(struct arena *a, const struct rod *r, struct diags *d);

#endif
