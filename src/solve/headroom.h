/*
 * Headroom: plumb from the nosing line to what is overhead.
 */
#ifndef SOLVE_HEADROOM_H
#define SOLVE_HEADROOM_H

#include "pitchboard/stair.h"

/* `lead` is how far the sloped line goes on before the first nosing. */
struct headroom headroom_find(const struct job *job, double total_rise,
	const struct layout_option *o, double lead);

/* The longest unit run that leaves so much headroom at the edge of the opening; INFINITY when
 * there is nothing to measure, and negative when none does.  `lead` counts in treads. */
double headroom_longest_run(const struct job *job, double total_rise, int risers, double wanted,
	double lead);

#endif
