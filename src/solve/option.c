#include "solve/option.h"

#include "solve/comfort.h"
#include "solve/headroom.h"
#include "solve/layout.h"

static bool is_empty(struct run_range r)
{
	return r.most < r.least || r.most <= 0;
}

static struct run_range common(struct run_range a, struct run_range b)
{
	return (struct run_range){ fmax(a.least, b.least), fmin(a.most, b.most) };
}

/* Of the first range the run that lies nearest to the second, which it has nothing in common with.
 */
static double nearest(struct run_range r, struct run_range to)
{
	return r.least > to.most ? r.least : r.most;
}

/* A run that nobody gave is taken to the fraction that the job letters, where the limits let it. */
static double run_rounded(const struct weighing *w, double run, struct run_range r)
{
	const struct job_about *about = &w->job->about;
	double unit = about->units == UNITS_INCHES ? MM_PER_INCH : 1;
	double step = unit / (about->fraction > 0 ? about->fraction : 1);
	double even = round(run / step) * step;
	if (even > r.most + NEAR_ENOUGH)
		even -= step;
	return even >= r.least - NEAR_ENOUGH ? even : run;
}

static double run_within(const struct weighing *w, double rise, struct run_range r)
{
	double wanted = w->job->comfort.step_wanted - 2 * rise;
	return run_rounded(w, fmin(fmax(wanted, r.least), r.most), r);
}

/* Limits that leave nothing between them: the least is the lesser evil. */
static struct run_range runs_of_comfort(const struct weighing *w, double rise)
{
	const struct job_comfort *c = &w->job->comfort;
	double least = fmax(c->least_run, fmax(c->step_least - 2 * rise, c->sum_least - rise));
	double most = fmin(c->most_run, fmin(c->step_most - 2 * rise, c->sum_most - rise));
	return (struct run_range){ least, fmax(least, most) };
}

static struct layout_option with_run(const struct weighing *w, int risers, double run)
{
	struct layout_option o = { .risers = risers, .unit_rise = w->total_rise / risers };
	o.unit_run = run;
	o.total_run = layout_treads(w->job, risers) * o.unit_run;
	o.pitch = atan2(o.unit_rise, o.unit_run);
	o.step_sum = 2 * o.unit_rise + o.unit_run;
	o.sum = o.unit_rise + o.unit_run;
	o.headroom = headroom_find(w->job, w->total_rise, &o, 0).least;
	return o;
}

/* The one that falls less short of what is asked; of two alike the first. */
static struct layout_option less_short(const struct weighing *w, struct layout_option one,
	struct layout_option other)
{
	double short_one = asked_shortfall(&w->asked, &one);
	return asked_shortfall(&w->asked, &other) < short_one - NEAR_ENOUGH ? other : one;
}

/* No run meets all that is asked.  What a run falls short by changes its slope only where a limit
 * begins to bite, so one of those ends, or an end of the range, is the best. */
static struct layout_option least_short(const struct weighing *w, int risers, struct run_range in)
{
	double rise = w->total_rise / risers;
	struct layout_option best = with_run(w, risers, run_within(w, rise, in));
	for (int i = 0; i < w->asked.n; i++) {
		struct run_range r = common(in, asked_run(&w->asked, i, risers));
		if (is_empty(r))
			r = (struct run_range){ nearest(in, r), nearest(in, r) };
		best = less_short(w, best, with_run(w, risers, run_rounded(w, r.least, r)));
		best = less_short(w, best, with_run(w, risers, run_rounded(w, r.most, r)));
	}
	return best;
}

bool option_is_too_long(const struct weighing *w, const struct layout_option *o)
{
	return w->seg->total_run > 0 && o->total_run > w->seg->total_run + NEAR_ENOUGH;
}

bool option_moves_comfort(const struct weighing *w, const struct layout_option *o)
{
	const struct comfort_figure figures[] = { comfort_rise(w->job, o), comfort_run(w->job, o),
		comfort_pace(w->job, o) };
	for (int i = 0; i < 3; i++)
		if (comfort_is_own_limit(w->job, figures[i]))
			return false;
	return w->asked.has_edition && !option_is_too_long(w, o) &&
		asked_shortfall(&w->asked, o) == 0;
}

struct layout_option option_make(const struct weighing *w, int risers)
{
	double rise = w->total_rise / risers;
	struct run_range room = { 0, INFINITY };
	if (w->seg->run > 0)
		return with_run(w, risers, w->seg->run);
	if (w->seg->total_run > 0)
		room.most = w->seg->total_run / layout_treads(w->job, risers);
	struct run_range comfort = runs_of_comfort(w, rise);
	struct run_range asked = common(asked_runs(&w->asked, risers), room);
	struct run_range both = common(comfort, asked);
	if (!is_empty(both))
		return with_run(w, risers, run_within(w, rise, both));
	if (is_empty(asked) && is_empty(common(comfort, room)))
		return with_run(w, risers, room.most);
	if (is_empty(asked))
		return least_short(w, risers, common(comfort, room));
	struct layout_option o = with_run(w, risers, nearest(asked, comfort));
	if (option_moves_comfort(w, &o))
		return o;
	return with_run(w, risers, fmin(nearest(comfort, asked), room.most));
}
