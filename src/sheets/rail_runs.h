/*
 * Runs of rail: each as long as it goes straight, in however many pieces, and what stands under it.
 *
 *                   .'|  newel at its high end
 *                 .' .|
 *         |     .' .' |
 *         |   .' .'|
 *         | .' .'| |     uprights of the infill
 *         |' .'| | |
 *         |.'  |
 *  newel at its low end
 */
#ifndef SHEETS_RAIL_RUNS_H
#define SHEETS_RAIL_RUNS_H

#include "pitchboard/rail.h"

enum rail_run_end { RUN_LOW_END, RUN_HIGH_END, RUN_ENDS };

struct rail_run {
	struct frame at;   /* in the house: u along its underside going up, v to the left; origin
			      in the middle of that, at the low end */
	double length;     /* of its underside */
	const char *marks; /* "H1, H2" of its pieces */
	const struct rail *end[RUN_ENDS]; /* what is known of its lowest piece and of its highest */
};

struct rail_runs {
	struct rail_run *run;
	int n;
};

/* Of this kind: of balustrades, or along walls. */
struct rail_runs rail_runs(struct arena *a, const struct part *parts, const struct part_kind *kind);

/* In the house. */
struct vec3 rail_run_point(const struct rail_run *r, enum rail_run_end end);

/* Where the upright, in one of its places, stands along the run, in the middle of its thickness;
 * less than 0: not under this run. */
double rail_run_upright(const struct rail_run *r, const struct part *upright, int place);

/* Does the run end against this post in its place? */
bool rail_run_meets(const struct rail_run *r, enum rail_run_end end, const struct part *post,
	int place);

#endif
