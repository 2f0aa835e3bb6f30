/*
 * The tables of gauges, and how a reading grows.
 */
#include "rules/gauge.h"

#include <string.h>

const struct gauge *const gauge_tables[] = {
	gauges_of_flight,
	gauges_of_steps,
	gauges_of_nosings,
	gauges_of_headroom,
	gauges_of_width,
	gauges_of_rail,
	gauges_of_grip,
	gauges_of_guard,
	gauges_of_edges,
	gauges_of_stringers,
	gauges_of_landings,
	NULL,
};

const struct gauge *gauge_find(const char *name)
{
	for (int i = 0; gauge_tables[i]; i++)
		for (const struct gauge *g = gauge_tables[i]; g->name; g++)
			if (strcmp(g->name, name) == 0)
				return g;
	return NULL;
}

struct reading reading_of(double value, const char *at)
{
	return (struct reading){ READING_TAKEN, value, value, at, at, NULL, NULL };
}

struct reading reading_shown(struct reading r, const char *words)
{
	r.shown = words;
	return r;
}

struct reading reading_not_applicable(const char *why)
{
	return (struct reading){ .state = READING_NOT_APPLICABLE, .why = why };
}

struct reading reading_not_possible(const char *why)
{
	return (struct reading){ .state = READING_NOT_POSSIBLE, .why = why };
}

bool has_guard_by_others(const struct survey *s)
{
	return job_has_guard(s->stair->job, GUARD_BY_OTHERS);
}

struct reading reading_by_others(void)
{
	return reading_not_possible("the guard of an open side is by others");
}

struct reading reading_without(const struct survey *s, const char *why)
{
	return has_guard_by_others(s) ? reading_by_others() : reading_not_applicable(why);
}

struct reading reading_none(void)
{
	return (struct reading){ .state = READING_NOT_POSSIBLE,
		.least = INFINITY,
		.most = -INFINITY,
		.why = "nothing of it was found in the model" };
}

/* Of equal values the first one is named: rounding of doubles chooses no place. */
void reading_add(struct reading *r, double value, const char *at)
{
	if (value < r->least - NEAR_ENOUGH) {
		r->least = value;
		r->least_at = at;
	}
	if (value > r->most + NEAR_ENOUGH) {
		r->most = value;
		r->most_at = at;
	}
	r->state = READING_TAKEN;
	r->why = NULL;
}
