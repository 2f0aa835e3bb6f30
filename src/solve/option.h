/*
 * One layout of those that are weighed: so many risers, and a run that suits them.
 */
#ifndef SOLVE_OPTION_H
#define SOLVE_OPTION_H

#include "solve/asked.h"

/* What options are made and weighed with. */
struct weighing {
	struct arena *a;
	const struct job *job;
	const struct job_segment *seg;
	double total_rise;
	struct asked asked;
};

/* A run that is comfortable and meets what is asked; where there is none but the limits of comfort
 * give way, one that meets it; else the comfortable one nearest to it. */
struct layout_option option_make(const struct weighing *w, int risers);

/* Longer than there is room for? */
bool option_is_too_long(const struct weighing *w, const struct layout_option *o);

/* It meets what an edition asks, and the limits of comfort that it misses are the usual ones, not
 * written in the job: these give way. */
bool option_moves_comfort(const struct weighing *w, const struct layout_option *o);

#endif
