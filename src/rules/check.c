/*
 * Rule by rule: what is asked, what this stair has, and what came of it.
 */
#include <assert.h>
#include <string.h>

#include "rules/finding_words.h"

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

/* Does one of its conditions put the rule aside?  Then the finding says why. */
static bool is_put_aside(struct arena *a, const struct judging *w, struct finding *f)
{
	for (int i = 0; i < f->rule->condition_count; i++) {
		const struct rule_condition *c = &f->rule->conditions[i];
		struct reading r = gauge_find(c->gauge)->read(w->survey);
		if (r.state == READING_TAKEN && is_somewhere_within(&r, &c->bounds))
			continue;
		f->state = r.state == READING_NOT_POSSIBLE ? FINDING_NOT_CHECKED
							   : FINDING_NOT_APPLICABLE;
		f->reason = finding_condition(a, w, f->rule, c, &r);
		return true;
	}
	return false;
}

/* ---- limits ---- */

static struct rule_room tighter(struct rule_room a, struct rule_room b)
{
	return b.left < a.left ? b : a;
}

static struct rule_room room_left(const struct bounds *b, const struct reading *r)
{
	struct rule_room room = { .left = INFINITY };

	if (limit_given(b->least))
		room = tighter(room,
			(struct rule_room){ r->least - b->least.value, r->least, b->least.value,
				r->least_at, false });
	if (limit_given(b->above))
		room = tighter(room,
			(struct rule_room){ r->least - b->above.value, r->least, b->above.value,
				r->least_at, true });
	if (limit_given(b->most))
		room = tighter(room,
			(struct rule_room){ b->most.value - r->most, r->most, b->most.value,
				r->most_at, false });
	if (limit_given(b->below))
		room = tighter(room,
			(struct rule_room){ b->below.value - r->most, r->most, b->below.value,
				r->most_at, true });
	return room;
}

/* What the shop's tolerance comes to in the gauge's unit: a pitch turns by what one step does when
 * it is that much too high.  A count is exact. */
static double tolerance_in(const struct judging *w, enum gauge_unit unit)
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

/* No tolerance is more than the limit itself: next to a small one all would be near. */
static enum finding_state judge(struct rule_room room, double tolerance)
{
	double close = fmin(tolerance, fabs(room.limit));

	/* of nothing at all there is no less */
	if (room.limit == 0 && room.left > -NEAR_ENOUGH)
		return FINDING_MET;
	if (room.left < -NEAR_ENOUGH || (room.is_strict && room.left < NEAR_ENOUGH))
		return FINDING_NOT_MET;
	return room.left < close - NEAR_ENOUGH ? FINDING_NEAR : FINDING_MET;
}

/* ---- findings ---- */

static struct mend mend_of(struct arena *a, const struct judging *w, const struct gauge *g,
	const struct reading *r, struct rule_room room, const struct bounds *row)
{
	double by = room.limit - room.value;
	struct mend mend = { .words = NULL };

	if (g->mend)
		mend = g->mend(w->survey,
			(struct shortfall){ r, room.limit, by, room.is_strict, row });
	if (!mend.words)
		mend.words = arena_printf(a, "%s %s",
			value_words(a, fabs(by), g->unit, job_lettering(w->job)),
			by > 0 ? "more" : "less");
	return mend;
}

/* The key that decides it, where that or its group is written; else what asks for it. */
static struct pos place_in_job(const struct job *job, const struct gauge *g)
{
	struct pos at = job_pos(job, g->key);

	return at.line ? at : job_pos(job, "code.edition");
}

static void measure(struct arena *a, const struct judging *w, struct finding *f)
{
	const struct gauge *g = gauge_find(f->rule->gauge);
	struct reading r = g->read(w->survey);

	if (r.state != READING_TAKEN) {
		f->state = r.state == READING_NOT_POSSIBLE ? FINDING_NOT_CHECKED
							   : FINDING_NOT_APPLICABLE;
		f->reason = r.why;
		return;
	}
	struct rule_room room = room_left(&f->rule->bounds, &r);
	f->state = judge(room, tolerance_in(w, g->unit));
	f->value = room.value;
	f->limit = room.limit;
	f->provided = r.shown ? r.shown : finding_provided(a, w, g, room, f->state);
	f->place = room.at ? room.at : "";
	if (f->state != FINDING_NOT_MET)
		return;
	struct mend mend = mend_of(a, w, g, &r, room, &f->rule->bounds);
	f->mend = mend.words;
	f->settings = mend.settings;
	f->setting_count = mend.n;
}

static struct finding *find(struct arena *a, const struct judging *w, const struct rule *rule)
{
	struct finding *f = NEW(a, struct finding);
	const struct gauge *g = gauge_find(rule->gauge);

	*f = (struct finding){ .rules = w->rules, .rule = rule };
	f->provided = f->place = f->reason = f->mend = "";
	f->what = finding_subject(a, rule);
	f->source = finding_source(a, w, rule);
	f->source_in_short = finding_source_in_short(a, w, rule);
	if (*rule->not_checked) {
		f->state = FINDING_NOT_CHECKED;
		f->asked = rule->asked;
		f->reason = rule->not_checked;
		f->at = job_pos(w->job, "code.edition");
		return f;
	}
	assert(g && "rules_read let a row without a gauge pass");
	f->asked = finding_asked(a, w, rule, g);
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
	const struct judging w = { &survey, s->job, rules };
	for (int i = 0; i < rules->rule_count; i++) {
		*tail = find(a, &w, &rules->rules[i]);
		warn(a, *tail, d);
		tail = &(*tail)->next;
	}
	return first;
}
