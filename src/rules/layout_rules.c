/*
 * Rows of an edition that a layout is chosen by: they are read before the stair
 * is solved, and held against the stair as made afterwards, like all others.
 */
#include <string.h>

#include "rules/limits.h"

static const struct {
	const char *gauge;
	enum layout_measure measure;
} measures[] = {
	{ "riser_height", MEASURE_RISE },
	{ "tread_depth", MEASURE_RUN },
	{ "pace", MEASURE_PACE },
	{ "pitch", MEASURE_PITCH },
	{ "nosing_projection", MEASURE_NOSING },
	{ "open_risers", MEASURE_OPEN_RISERS },
	{ "headroom", MEASURE_HEADROOM },
	{ "headroom_to_floor", MEASURE_HEADROOM_TO_FLOOR },
};

/* Less than a limit: by more than what counts as equal. */
#define JUST (2 * NEAR_ENOUGH)

/* Is this gauge one that a layout has?  Then its bounds. */
static bool bounds_of(const char *gauge, const struct bounds *b, struct layout_bounds *out)
{
	*out = (struct layout_bounds){ .least = -INFINITY, .most = INFINITY };
	if (limit_given(b->least))
		out->least = b->least.value;
	if (limit_given(b->above))
		out->least = b->above.value + JUST;
	if (limit_given(b->most))
		out->most = b->most.value;
	if (limit_given(b->below))
		out->most = b->below.value - JUST;
	for (size_t i = 0; i < sizeof(measures) / sizeof(*measures); i++) {
		out->measure = measures[i].measure;
		if (strcmp(measures[i].gauge, gauge) == 0)
			return true;
	}
	return false;
}

/* A row that counts only where something else is so, which a layout does not know, is left out. */
static bool limit_of(struct arena *a, const struct rule_set *rules, const struct rule *r,
	struct layout_limit *out)
{
	*out = (struct layout_limit){ .where_count = r->condition_count };
	if (*r->not_checked || r->condition_count > MOST_LAYOUT_CONDITIONS ||
		!bounds_of(r->gauge, &r->bounds, &out->bounds))
		return false;
	for (int i = 0; i < r->condition_count; i++) {
		const struct rule_condition *c = &r->conditions[i];
		if (!bounds_of(c->gauge, &c->bounds, &out->where[i]))
			return false;
	}
	out->from = arena_printf(a, "%s %s%s", rules->brief, r->section,
		r->amends ? ", as amended" : "");
	return true;
}

const struct layout_limits *rules_for_layout(struct arena *a, const struct rule_set *rules)
{
	if (!rules)
		return NULL;
	struct layout_limits *all = NEW(a, struct layout_limits);
	struct layout_limit *limits = NEW_N(a, struct layout_limit, rules->rule_count + 1);
	for (int i = 0; i < rules->rule_count; i++)
		all->n += limit_of(a, rules, &rules->rules[i], &limits[all->n]);
	all->limits = limits;
	return all;
}
