/*
 * The limits of comfort, and what lies outside them, in words.
 */
#ifndef SOLVE_COMFORT_H
#define SOLVE_COMFORT_H

#include "pitchboard/stair.h"

/* One figure of a layout and the limits that the job sets it. */
struct comfort_figure {
	const char *name; /* "rise" */
	double value, least, most;
	const char *least_key, *most_key; /* under comfort */
};

struct comfort_figure comfort_rise(const struct job *job, const struct layout_option *o);
struct comfort_figure comfort_run(const struct job *job, const struct layout_option *o);

/* Of twice rise plus run and rise plus run the first that lies outside its limits; else the last.
 */
struct comfort_figure comfort_pace(const struct job *job, const struct layout_option *o);

/* By how much it is over its limit, or, negative, under it; 0 within. */
double comfort_excess(struct comfort_figure f);

/* Is the limit that it lies outside of written in the job, and not the default? */
bool comfort_is_own_limit(const struct job *job, struct comfort_figure f);

/* rise 8 1/4" is over the most, 7 3/4"; NULL: it lies within its limits. */
const char *comfort_fault(struct arena *a, const struct job *job, struct comfort_figure f);

/* Steps are spoken of in inches, never in feet: 24 5/8", 625 mm. */
const char *comfort_say(struct arena *a, const struct job *job, double mm);

/* The same for a difference, as fine as a rule goes where it would come to nothing. */
const char *comfort_say_difference(struct arena *a, const struct job *job, double mm);

/* Warns of what the job itself gives outside its limits, and says what would mend it. */
void comfort_warn(struct arena *a, const struct job *job, const struct job_segment *seg,
	const struct layout_option *o, struct diags *d);

#endif
