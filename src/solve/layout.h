/*
 * Choosing a layout: how many risers, how long a run.
 */
#ifndef SOLVE_LAYOUT_H
#define SOLVE_LAYOUT_H

#include "pitchboard/stair.h"

struct layout {
	struct layout_option taken;    /* 0 risers: none fits, and the reason is in the diags */
	struct layout_option *options; /* what was weighed; none when nothing was chosen */
	int option_count;
};

/* Treads of a flight of so many risers: the upper floor is the last step, unless the last tread
 * lies flush with it. */
int layout_treads(const struct job *job, int risers);

struct layout layout_choose(struct arena *a, const struct job *job, const struct job_segment *seg,
	const struct layout_limits *limits, double total_rise, struct diags *d);

#endif
