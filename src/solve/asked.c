#include "solve/asked.h"

#include <string.h>

#include "solve/comfort.h"
#include "solve/headroom.h"
#include "solve/layout.h"

/* The headroom that the job wants comes last: of two limits alike the edition's is named. */
struct asked asked_make(struct arena *a, const struct job *job, const struct layout_limits *limits,
	double total_rise)
{
	int n = limits ? limits->n : 0;
	struct asked w = { job, total_rise, NEW_N(a, struct layout_limit, n + 1), n + 1, n > 0 };
	if (n > 0)
		memcpy(w.limits, limits->limits, (size_t)n * sizeof(*w.limits));
	w.limits[n] = (struct layout_limit){ .from = "wanted" };
	w.limits[n].bounds =
		(struct layout_bounds){ MEASURE_HEADROOM, job->opening.headroom, INFINITY };
	return w;
}

/* Nothing to measure: NAN, which is neither less nor more than a limit. */
static double headroom_after(const struct asked *w, const struct layout_option *o, double lead)
{
	struct headroom h = headroom_find(w->job, w->total_rise, o, lead);
	return h.state == HEADROOM_NOT_CHECKED ? NAN : h.least;
}

/* Over open risers none is measured (rules/gauge_nosings.c). */
static double nosing_of(const struct job *job)
{
	return job->risers.kind == RISER_OPEN ? NAN : job->treads.nosing;
}

static double value_of(const struct asked *w, const struct layout_option *o, enum layout_measure m)
{
	switch (m) {
	case MEASURE_RISE: return o->unit_rise;
	case MEASURE_RUN: return o->unit_run;
	case MEASURE_PACE: return o->step_sum;
	case MEASURE_PITCH: return o->pitch;
	case MEASURE_NOSING: return nosing_of(w->job);
	case MEASURE_OPEN_RISERS: return w->job->risers.kind == RISER_OPEN;
	case MEASURE_HEADROOM: return headroom_after(w, o, 0);
	case MEASURE_HEADROOM_TO_FLOOR: return headroom_after(w, o, o->unit_run);
	}
	return NAN;
}

static const char *name_of(enum layout_measure m)
{
	switch (m) {
	case MEASURE_RISE: return "rise";
	case MEASURE_RUN: return "unit run";
	case MEASURE_PACE: return "twice rise plus run";
	case MEASURE_PITCH: return "pitch";
	case MEASURE_NOSING: return "nosing";
	case MEASURE_OPEN_RISERS: return "open risers";
	case MEASURE_HEADROOM:
	case MEASURE_HEADROOM_TO_FLOOR: return "headroom";
	}
	return "";
}

/* By how much it lies under, negative, or over. */
static double excess_of(const struct asked *w, const struct layout_option *o,
	const struct layout_bounds *b)
{
	double value = value_of(w, o, b->measure);
	if (value > b->most + NEAR_ENOUGH)
		return value - b->most;
	return value < b->least - NEAR_ENOUGH ? value - b->least : 0;
}

static bool counts(const struct asked *w, const struct layout_option *o,
	const struct layout_limit *l)
{
	for (int i = 0; i < l->where_count; i++)
		if (excess_of(w, o, &l->where[i]) != 0)
			return false;
	return true;
}

double asked_shortfall(const struct asked *w, const struct layout_option *o)
{
	double sum = 0;
	for (int i = 0; i < w->n; i++) {
		const struct layout_bounds *b = &w->limits[i].bounds;
		double excess = counts(w, o, &w->limits[i]) ? excess_of(w, o, b) : 0;
		if (excess != 0)
			sum += fabs(excess) / fmax(excess > 0 ? b->most : b->least, 1e-3);
	}
	return sum;
}

/* Spoken of in feet, where steps are in inches. */
static bool is_headroom(enum layout_measure m)
{
	return m == MEASURE_HEADROOM || m == MEASURE_HEADROOM_TO_FLOOR;
}

static const char *fault_words(struct arena *a, const struct asked *w,
	const struct layout_option *o, const struct layout_limit *l)
{
	struct comfort_figure f = { .name = name_of(l->bounds.measure),
		.value = value_of(w, o, l->bounds.measure),
		.least = l->bounds.least,
		.most = l->bounds.most };
	bool is_over = f.value > l->bounds.most;
	const char *word = is_over ? "over the most" : "under the least";
	double limit = is_over ? f.most : f.least;
	struct lettering how = job_lettering(w->job);
	if (l->bounds.measure == MEASURE_PITCH)
		return arena_printf(a, "pitch %s is %s, %s (%s)", angle_letter(a, f.value), word,
			angle_letter(a, limit), l->from);
	if (l->bounds.measure == MEASURE_OPEN_RISERS)
		return arena_printf(a, "the risers are %s (%s)", f.value > 0 ? "open" : "closed",
			l->from);
	if (is_headroom(l->bounds.measure))
		return arena_printf(a, "headroom %s is %s, %s (%s)", length_say(a, how, f.value),
			word, length_say(a, how, limit), l->from);
	return arena_printf(a, "%s (%s)", comfort_fault(a, w->job, f), l->from);
}

const char *asked_fault(struct arena *a, const struct asked *w, const struct layout_option *o)
{
	for (int i = 0; i < w->n; i++)
		if (counts(w, o, &w->limits[i]) && excess_of(w, o, &w->limits[i].bounds) != 0)
			return fault_words(a, w, o, &w->limits[i]);
	return NULL;
}

/* What one limit leaves of the runs; those of headroom and pitch only from above, or below. */
static struct run_range runs_within(const struct asked *w, const struct layout_bounds *b,
	int risers)
{
	struct run_range r = { 0, INFINITY };
	double rise = w->total_rise / risers;
	switch (b->measure) {
	case MEASURE_RUN: return (struct run_range){ fmax(0, b->least), b->most };
	case MEASURE_PACE:
		return (struct run_range){ fmax(0, b->least - 2 * rise), b->most - 2 * rise };
	case MEASURE_PITCH:
		if (b->most < PI / 2)
			r.least = rise / tan(b->most);
		if (b->least > 0)
			r.most = rise / tan(b->least);
		break;
	case MEASURE_HEADROOM:
		r.most = headroom_longest_run(w->job, w->total_rise, risers, b->least, 0);
		break;
	case MEASURE_HEADROOM_TO_FLOOR:
		r.most = headroom_longest_run(w->job, w->total_rise, risers, b->least, 1);
		break;
	case MEASURE_RISE:
	case MEASURE_NOSING:
	case MEASURE_OPEN_RISERS: break;
	}
	return r;
}

struct run_range asked_run(const struct asked *w, int limit, int risers)
{
	if (w->limits[limit].where_count > 0)
		return (struct run_range){ 0, INFINITY };
	return runs_within(w, &w->limits[limit].bounds, risers);
}

struct run_range asked_runs(const struct asked *w, int risers)
{
	struct run_range all = { 0, INFINITY };
	for (int i = 0; i < w->n; i++) {
		struct run_range r = asked_run(w, i, risers);
		all.least = fmax(all.least, r.least);
		all.most = fmin(all.most, r.most);
	}
	return all;
}
