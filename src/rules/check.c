/*
 * Rule by rule: what is asked, what this stair has, and what came of it.
 */
#include <assert.h>
#include <string.h>

#include "rules/limits.h"

/* What one rule is judged with. */
struct bench {
	const struct survey *survey;
	const struct job *job;
	const struct rule_set *rules;
};

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

int findings_count(const struct finding *list, enum finding_state state)
{
	int n = 0;

	for (; list; list = list->next)
		n += list->state == state;
	return n;
}

/* ---- conditions ---- */

/* Somewhere within what was read: a row holds for every place where its condition does. */
static bool is_somewhere_within(const struct reading *r, const struct bounds *b)
{
	if (limit_given(b->least) && r->most < b->least.value - NEAR_ENOUGH)
		return false;
	if (limit_given(b->most) && r->least > b->most.value + NEAR_ENOUGH)
		return false;
	if (limit_given(b->above) && r->most <= b->above.value + NEAR_ENOUGH)
		return false;
	return !limit_given(b->below) || r->least < b->below.value - NEAR_ENOUGH;
}

static const char *condition_words(struct arena *a, const struct bench *w, const struct rule *rule,
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

/* Does one of its conditions put the rule aside?  Then the finding says why. */
static bool is_put_aside(struct arena *a, const struct bench *w, struct finding *f)
{
	for (int i = 0; i < f->rule->condition_count; i++) {
		const struct rule_condition *c = &f->rule->conditions[i];
		struct reading r = gauge_find(c->gauge)->read(w->survey);
		if (r.state == READING_TAKEN && is_somewhere_within(&r, &c->bounds))
			continue;
		f->state = r.state == READING_NOT_POSSIBLE ? FINDING_NOT_CHECKED
							   : FINDING_NOT_APPLICABLE;
		f->reason = condition_words(a, w, f->rule, c, &r);
		return true;
	}
	return false;
}

/* ---- limits ---- */

/* One limit of a rule against a reading: how much room is left, negative when none. */
struct room {
	double left, value, limit;
	const char *at;
	bool is_strict; /* the limit itself is already too much */
};

static struct room tighter(struct room a, struct room b)
{
	return b.left < a.left ? b : a;
}

static struct room room_left(const struct bounds *b, const struct reading *r)
{
	struct room room = { .left = INFINITY };

	if (limit_given(b->least))
		room = tighter(room,
			(struct room){ r->least - b->least.value, r->least, b->least.value,
				r->least_at, false });
	if (limit_given(b->above))
		room = tighter(room,
			(struct room){ r->least - b->above.value, r->least, b->above.value,
				r->least_at, true });
	if (limit_given(b->most))
		room = tighter(room,
			(struct room){ b->most.value - r->most, r->most, b->most.value, r->most_at,
				false });
	if (limit_given(b->below))
		room = tighter(room,
			(struct room){ b->below.value - r->most, r->most, b->below.value,
				r->most_at, true });
	return room;
}

/* What the shop's tolerance comes to in the gauge's unit: a pitch turns by what one step does when
 * it is that much too high.  A count is exact. */
static double tolerance_in(const struct bench *w, enum gauge_unit unit)
{
	const struct survey *s = w->survey;
	double rise = s->stair->unit_rise, run = s->flight->unit_run, by = w->job->code.tolerance;

	switch (unit) {
	case GAUGE_LENGTH: return by;
	case GAUGE_ANGLE: return atan2(rise + by, run) - atan2(rise, run);
	case GAUGE_COUNT: return 0;
	}
	return 0;
}

static enum finding_state judge(struct room room, double tolerance)
{
	/* of nothing at all there is no less */
	if (room.limit == 0 && room.left > -NEAR_ENOUGH)
		return FINDING_MET;
	if (room.left < -NEAR_ENOUGH || (room.is_strict && room.left < NEAR_ENOUGH))
		return FINDING_NOT_MET;
	return room.left < tolerance - NEAR_ENOUGH ? FINDING_NEAR : FINDING_MET;
}

/* ---- words ---- */

/* As the job letters lengths; finer where it would read like the limit it misses. */
static const char *provided_words(struct arena *a, const struct bench *w, const struct gauge *g,
	struct room room, enum finding_state state)
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

/* In the units of the edition, and in those of the job where they are others. */
static const char *asked_words(struct arena *a, const struct bench *w, const struct rule *rule,
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
static bool is_carried_over(const struct bench *w, const struct rule *rule)
{
	return rule->written_in != w->rules && rule->source != SOURCE_FROM_MEMORY;
}

static const char *short_source(struct arena *a, const struct bench *w, const struct rule *rule)
{
	const char *word = rule_source_word(rule->source);

	return is_carried_over(w, rule) ? arena_printf(a, "%s in %s", word, rule->written_in->brief)
					: word;
}

static const char *source_words(struct arena *a, const struct bench *w, const struct rule *rule)
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
	return arena_printf(a, "%s; carried over from memory", short_source(a, w, rule));
}

static struct mend mend_of(struct arena *a, const struct bench *w, const struct gauge *g,
	const struct reading *r, struct room room)
{
	double by = room.limit - room.value;
	struct mend mend = { .words = NULL };

	if (g->mend)
		mend = g->mend(w->survey, (struct shortfall){ r, room.limit, by, room.is_strict });
	if (!mend.words)
		mend.words = arena_printf(a, "%s %s",
			value_words(a, fabs(by), g->unit, job_lettering(w->job)),
			by > 0 ? "more" : "less");
	return mend;
}

/* The key that decides it: of the group where it is not written, of the job where no group is. */
static struct pos place_in_job(const struct job *job, const struct gauge *g)
{
	const struct {
		const char *name;
		const struct node *src;
	} groups[] = {
		{ "floors", job->floors.src },
		{ "landings", job->landings.src },
		{ "opening", job->opening.src },
		{ "stair", job->stair.src },
		{ "segments", job->stair.segments[0].src },
		{ "stringers", job->stringers.src },
		{ "treads", job->treads.src },
		{ "risers", job->risers.src },
		{ "newels", job->newels.src },
		{ "rail", job->rail.src },
		{ "balusters", job->balusters.src },
	};

	for (size_t i = 0; i < sizeof(groups) / sizeof(*groups); i++)
		if (strcmp(groups[i].name, g->group) == 0 && groups[i].src)
			return node_pos(groups[i].src, g->key);
	return node_pos(job->code.src, "edition");
}

static void measure(struct arena *a, const struct bench *w, struct finding *f)
{
	const struct gauge *g = gauge_find(f->rule->gauge);
	struct reading r = g->read(w->survey);

	if (r.state != READING_TAKEN) {
		f->state = r.state == READING_NOT_POSSIBLE ? FINDING_NOT_CHECKED
							   : FINDING_NOT_APPLICABLE;
		f->reason = r.why;
		return;
	}
	struct room room = room_left(&f->rule->bounds, &r);
	f->state = judge(room, tolerance_in(w, g->unit));
	f->value = room.value;
	f->limit = room.limit;
	f->provided = r.shown ? r.shown : provided_words(a, w, g, room, f->state);
	f->place = room.at ? room.at : "";
	if (f->state != FINDING_NOT_MET)
		return;
	struct mend mend = mend_of(a, w, g, &r, room);
	f->mend = mend.words;
	f->settings = mend.settings;
	f->setting_count = mend.n;
}

/* "landing_slope" as it is said. */
static const char *spoken(struct arena *a, const char *row)
{
	char *words = arena_strdup(a, row);

	for (char *c = words; *c; c++)
		if (*c == '_')
			*c = ' ';
	return words;
}

static struct finding *find(struct arena *a, const struct bench *w, const struct rule *rule)
{
	struct finding *f = NEW(a, struct finding);
	const struct gauge *g = gauge_find(rule->gauge);

	*f = (struct finding){ .rules = w->rules, .rule = rule };
	f->provided = f->place = f->reason = f->mend = "";
	f->what = *rule->what ? rule->what : g ? g->what : spoken(a, rule->row);
	f->source = source_words(a, w, rule);
	f->source_in_short = short_source(a, w, rule);
	if (*rule->not_checked) {
		f->state = FINDING_NOT_CHECKED;
		f->asked = rule->asked;
		f->reason = rule->not_checked;
		f->at = node_pos(w->job->code.src, "edition");
		return f;
	}
	assert(g && "rules_read let a row without a gauge pass");
	f->asked = asked_words(a, w, rule, g);
	f->at = place_in_job(w->job, g);
	if (!is_put_aside(a, w, f))
		measure(a, w, f);
	return f;
}

/* What is not met is told where the job decides it. */
static void warn(struct arena *a, const struct finding *f, struct diags *d)
{
	if (f->state != FINDING_NOT_MET)
		return;
	diag_warning(d, f->at, arena_printf(a, "mend: %s", f->mend),
		"%s %s: %s is %s, asked: %s%s%s", f->rules->brief, f->rule->section, f->what,
		f->provided, f->asked, *f->place ? "; " : "", f->place);
}

const struct finding *code_check(struct arena *a, const struct stair *s, const struct part *parts,
	const struct rule_set *rules, struct diags *d)
{
	struct finding *first = NULL, **tail = &first;

	if (!s || !parts || !rules)
		return NULL;
	struct survey survey = survey_make(a, s, parts);
	const struct bench w = { &survey, s->job, rules };
	for (int i = 0; i < rules->rule_count; i++) {
		*tail = find(a, &w, &rules->rules[i]);
		warn(a, *tail, d);
		tail = &(*tail)->next;
	}
	return first;
}
