#include "rules/finding_words.h"

#include <string.h>

#include "base/text.h"

const char *finding_word(enum finding_state state)
{
	switch (state) {
	case FINDING_NOT_MET: return "not met";
	case FINDING_NEAR: return "near";
	case FINDING_NOT_CHECKED: return "not checked";
	case FINDING_MET: return "met";
	case FINDING_NOT_APPLICABLE: return "does not apply";
	}
	return "";
}

const char *finding_condition(struct arena *a, const struct judging *w, const struct rule *rule,
	const struct rule_condition *c, const struct reading *r)
{
	const struct gauge *g = gauge_find(c->gauge);
	const char *limit = bounds_words(a, &c->bounds, g->unit, rule->written_in->units);

	if (r->state != READING_TAKEN)
		return arena_printf(a, "only where %s: %s; here %s", g->what, limit, r->why);
	double here =
		limit_given(c->bounds.above) || limit_given(c->bounds.least) ? r->most : r->least;
	return arena_printf(a, "only where %s: %s; here %s", g->what, limit,
		r->shown ? r->shown : value_words(a, here, g->unit, job_lettering(w->job)));
}

const char *finding_provided(struct arena *a, const struct judging *w, const struct gauge *g,
	struct rule_room room, enum finding_state state)
{
	struct lettering how = job_lettering(w->job);
	const char *value = value_words(a, room.value, g->unit, how);

	if (state == FINDING_MET || fabs(room.left) < NEAR_ENOUGH)
		return value;
	if (strcmp(value, value_words(a, room.limit, g->unit, how)) != 0)
		return value;
	how.fraction = how.units == UNITS_INCHES ? 64 : 10;
	value = value_words(a, room.value, g->unit, how);
	if (strcmp(value, value_words(a, room.limit, g->unit, how)) != 0)
		return value;
	return arena_printf(a, "just %s %s", room.value > room.limit ? "over" : "under", value);
}

const char *finding_asked(struct arena *a, const struct judging *w, const struct rule *rule,
	const struct gauge *g)
{
	enum units own = rule->amends ? w->job->about.units : rule->written_in->units;
	const char *asked = bounds_words(a, &rule->bounds, g->unit, own);

	if (*rule->asked && !rule->amends)
		return rule->asked;
	if (g->unit != GAUGE_LENGTH || own == w->job->about.units)
		return asked;
	return arena_printf(a, "%s (%s)", asked,
		bounds_words(a, &rule->bounds, g->unit, w->job->about.units));
}

/* What was read in one edition was not read in the next. */
static bool is_carried_over(const struct judging *w, const struct rule *rule)
{
	return rule->written_in != w->rules && rule->source != SOURCE_FROM_MEMORY;
}

const char *finding_source_in_short(struct arena *a, const struct judging *w,
	const struct rule *rule)
{
	const char *word = rule_source_word(rule->source);

	return is_carried_over(w, rule) ? arena_printf(a, "%s in %s", word, rule->written_in->brief)
					: word;
}

const char *finding_source(struct arena *a, const struct judging *w, const struct rule *rule)
{
	const struct job_amendment *m = rule->amends;
	const char *word = rule_source_word(rule->source);

	if (m) {
		const struct gauge *g = gauge_find(rule->gauge);
		return arena_printf(a, "amended by %s, %s%s%s; the edition has %s", m->by, m->date,
			*m->text ? ": " : "", m->text,
			bounds_words(a, &rule->enacted, g->unit, rule->written_in->units));
	}
	if (!is_carried_over(w, rule))
		return word;
	return arena_printf(a, "%s; carried over from memory", finding_source_in_short(a, w, rule));
}

const char *finding_subject(struct arena *a, const struct rule *rule)
{
	const struct gauge *g = gauge_find(rule->gauge);

	if (*rule->what)
		return rule->what;
	return g ? g->what : text_spoken(a, rule->row);
}
