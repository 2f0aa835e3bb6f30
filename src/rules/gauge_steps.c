/*
 * Rise and run, as the feet find them.
 */
#include "rules/footing.h"
#include "rules/limits.h"
#include "rules/mend.h"

#include <stdlib.h>

/* What is the same at every step is found nowhere in particular. */
static struct reading settled(struct reading r, const char *everywhere)
{
	if (r.state == READING_TAKEN && r.most - r.least < NEAR_ENOUGH)
		r.least_at = r.most_at = everywhere;
	return r;
}

/* Plumb from one walking surface to the next. */
static double rise_of(const struct footing *f, int riser, int end)
{
	return f[riser].level[end] - f[riser - 1].level[end];
}

/* Horizontally from nosing to nosing; the last going reaches to that of the upper floor. */
static double run_of(const struct footing *f, int step, int end)
{
	return f[step + 1].front[end] - f[step].front[end];
}

/* What is measured at every step from the first to this one, at its ends and in its middle. */
struct along_steps {
	double (*of)(const struct footing *f, int i, int end);
	int last;
	const char *name, *everywhere;
};

static struct reading read_along(const struct survey *s, struct along_steps m)
{
	const struct footing *f = footings_make(s);
	struct reading r = reading_none();

	for (int i = 1; i <= m.last; i++)
		for (int end = 0; end < FOOTING_ENDS; end++)
			if (!isnan(m.of(f, i, end)))
				reading_add(&r, m.of(f, i, end),
					arena_printf(s->arena, "%s %d, %s", m.name, i,
						footing_ends[end]));
	return settled(r, m.everywhere);
}

static struct reading riser_height(const struct survey *s)
{
	return read_along(s,
		(struct along_steps){ rise_of, s->flight->risers, "riser", "every riser" });
}

static struct reading tread_depth(const struct survey *s)
{
	return read_along(s,
		(struct along_steps){ run_of, s->flight->risers - 1, "step", "every step" });
}

static struct reading difference_of(const struct survey *s, struct reading r)
{
	if (r.state != READING_TAKEN)
		return r;
	if (r.most - r.least < NEAR_ENOUGH)
		return reading_of(0, r.most_at);
	return reading_of(r.most - r.least,
		arena_printf(s->arena, "%s and %s", r.least_at, r.most_at));
}

static struct reading riser_difference(const struct survey *s)
{
	return difference_of(s, riser_height(s));
}

static struct reading tread_difference(const struct survey *s)
{
	return difference_of(s, tread_depth(s));
}

static struct reading riser_difference_adjacent(const struct survey *s)
{
	const struct footing *f = footings_make(s);
	struct reading r = reading_none();

	for (int i = 2; i <= s->flight->risers; i++)
		for (int end = 0; end < FOOTING_ENDS; end++)
			if (!isnan(rise_of(f, i, end) + rise_of(f, i - 1, end)))
				reading_add(&r, fabs(rise_of(f, i, end) - rise_of(f, i - 1, end)),
					arena_printf(s->arena, "risers %d and %d, %s", i - 1, i,
						footing_ends[end]));
	return settled(r, "every riser");
}

static struct reading tread_difference_adjacent(const struct survey *s)
{
	const struct footing *f = footings_make(s);
	struct reading r = reading_none();

	for (int i = 2; i < s->flight->risers; i++)
		for (int end = 0; end < FOOTING_ENDS; end++)
			if (!isnan(run_of(f, i, end) + run_of(f, i - 1, end)))
				reading_add(&r, fabs(run_of(f, i, end) - run_of(f, i - 1, end)),
					arena_printf(s->arena, "steps %d and %d, %s", i - 1, i,
						footing_ends[end]));
	if (s->flight->risers < 3)
		return reading_not_applicable("there is one tread");
	return settled(r, "every step");
}

static double rise(const struct survey *s)
{
	return s->stair->unit_rise;
}

static double run(const struct survey *s)
{
	return s->flight->unit_run;
}

static struct reading pace(const struct survey *s)
{
	return reading_of(2 * rise(s) + run(s), "every step");
}

static struct reading pitch(const struct survey *s)
{
	return reading_of(s->flight->pitch, "the flight");
}

/* ---- what would mend it ---- */

static struct mend mend_riser(const struct survey *s, struct shortfall f)
{
	double total = s->stair->total_rise;
	int n = f.by > 0 ? (int)floor(total / f.limit + NEAR_ENOUGH)
			 : (int)ceil(total / f.limit - NEAR_ENOUGH);

	if (n < 2 || n == s->flight->risers || !bounds_hold(f.row, total / n))
		return mend_said(NULL);
	struct mend m = mend_said(arena_printf(s->arena, "%d risers make it %s, and the run %s %s",
		n, survey_say(s, total / n), survey_say(s, abs(n - s->flight->risers) * run(s)),
		n > s->flight->risers ? "longer" : "shorter"));
	return mend_also(s, m, "stair.segments[1].risers", arena_printf(s->arena, "%d", n));
}

/* A run between nosings, and what it comes to over all of them. */
static struct mend with_run(const struct survey *s, struct shortfall f, double exact, int way)
{
	double wanted = mend_size(s, f, exact, way);
	double more = (wanted - run(s)) * s->flight->step_count;
	struct mend m = mend_said(arena_printf(s->arena, "a unit run of %s: the flight is %s %s",
		survey_say(s, wanted), survey_say(s, fabs(more)), more > 0 ? "longer" : "shorter"));

	return mend_also_size(s, m, "stair.segments[1].run", wanted);
}

static int way_of(struct shortfall f)
{
	return f.by > 0 ? 1 : -1;
}

static struct mend mend_tread(const struct survey *s, struct shortfall f)
{
	return mend_is_for_one_step(f) ? mend_one_step(s, f) : with_run(s, f, f.limit, way_of(f));
}

static struct mend mend_pace(const struct survey *s, struct shortfall f)
{
	return with_run(s, f, f.limit - 2 * rise(s), way_of(f));
}

/* Steeper by a shorter run. */
static struct mend mend_pitch(const struct survey *s, struct shortfall f)
{
	return with_run(s, f, rise(s) / tan(f.limit), -way_of(f));
}

const struct gauge gauges_of_steps[] = {
	{ "riser_height", "riser height", GAUGE_LENGTH, riser_height, mend_riser,
		"stair.segments[1].risers" },
	{ "riser_difference", "largest difference of risers", GAUGE_LENGTH, riser_difference, NULL,
		"stair.segments[1].risers" },
	{ "riser_difference_adjacent", "difference of risers one after the other", GAUGE_LENGTH,
		riser_difference_adjacent, NULL, "stair.segments[1].risers" },
	{ "tread_depth", "tread depth, nosing to nosing", GAUGE_LENGTH, tread_depth, mend_tread,
		"stair.segments[1].run" },
	{ "tread_difference", "largest difference of treads", GAUGE_LENGTH, tread_difference, NULL,
		"stair.segments[1].run" },
	{ "tread_difference_adjacent", "difference of treads one after the other", GAUGE_LENGTH,
		tread_difference_adjacent, NULL, "stair.segments[1].run" },
	{ "pace", "twice rise plus run", GAUGE_LENGTH, pace, mend_pace, "stair.segments[1].run" },
	{ "pitch", "pitch", GAUGE_ANGLE, pitch, mend_pitch, "stair.segments[1].run" },
	{ 0 },
};
