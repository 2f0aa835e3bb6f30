/*
 * The floors before and after a flight.  A job may know how far they go on, never how wide they
 * are.
 */
#include "rules/gauge.h"

static struct reading floor_size(const struct survey *s)
{
	(void)s;
	return reading_not_possible(
		"how far the floors go on before and after the flight is not in the job");
}

/* Both have to be known: the shorter one counts. */
static struct reading floor_depth(const struct survey *s)
{
	const struct job_floors *f = &s->stair->job->floors;
	struct reading r = reading_none();

	if (f->lower_landing <= 0)
		return reading_not_possible("lower_landing is not in the job");
	if (f->upper_landing <= 0)
		return reading_not_possible("upper_landing is not in the job");
	reading_add(&r, f->lower_landing, "at the foot");
	reading_add(&r, f->upper_landing, "at the head");
	return r;
}

static const char *mend_depth(const struct survey *s, struct shortfall f)
{
	return arena_printf(s->arena, "%s more clear floor %s", survey_say(s, f.by),
		f.reading->least_at);
}

static struct reading landing_on_the_way(const struct survey *s)
{
	(void)s;
	return reading_not_applicable("there is no landing between the floors");
}

const struct gauge gauges_of_landings[] = {
	{ "landing_depth", "landing, in the direction of travel", GAUGE_LENGTH, floor_depth,
		mend_depth, "floors", NULL },
	{ "landing_width", "landing, across", GAUGE_LENGTH, floor_size, NULL, "stair", NULL },
	{ "landing_between", "landing between two flights", GAUGE_LENGTH, landing_on_the_way, NULL,
		"stair", NULL },
	{ 0 },
};
