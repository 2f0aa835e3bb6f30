/*
 * What is asked of a layout: by the edition that the job names, and by the headroom it wants.
 */
#ifndef SOLVE_ASKED_H
#define SOLVE_ASKED_H

#include "pitchboard/stair.h"

struct asked {
	const struct job *job;
	double total_rise;
	struct layout_limit *limits;
	int n;
	bool has_edition;
};

struct asked asked_make(struct arena *a, const struct job *job, const struct layout_limits *limits,
	double total_rise);

/* Unit runs from the least to the most; none when the most is less. */
struct run_range {
	double least, most;
};

/* Those that meet one limit with so many risers; all where it counts only under conditions, that
 * may not hold after all. */
struct run_range asked_run(const struct asked *w, int limit, int risers);

/* Those that meet all that is asked with so many risers. */
struct run_range asked_runs(const struct asked *w, int risers);

/* By how much a layout misses all that is asked, as shares of each limit; 0: it meets it. */
double asked_shortfall(const struct asked *w, const struct layout_option *o);

/* headroom 6'-7" is under the least, 6'-8" (IRC 2018 R311.7.2); NULL: it meets all. */
const char *asked_fault(struct arena *a, const struct asked *w, const struct layout_option *o);

#endif
