#include "solve/layout.h"

#include "solve/comfort.h"

/*
 * Two measures of comfort, both old: a pace is twice the rise plus the run
 * (Blondel, Cours d'architecture, 1675), and rise plus run comes to 17 or 18
 * inches ("Drawing", chestofbooks reprint; NAVEDTRA 14044 has 17 1/2).  A layout
 * is the more comfortable the nearer it comes to the pace the job wants and to
 * the middle of the sums it allows.
 */
struct weighing {
	struct arena *a;
	const struct job *job;
	const struct job_segment *seg;
	double total_rise;
};

int layout_treads(const struct job *job, int risers)
{
	return job->stringers.head == HEAD_FLUSH ? risers : risers - 1;
}

static const char *say(const struct weighing *w, double mm)
{
	return comfort_say(w->a, w->job, mm);
}

static double clamp(double v, double lo, double hi)
{
	return fmin(fmax(v, lo), hi);
}

/* A run that nobody gave is taken to the fraction that the job letters, where the limits let it. */
static double run_rounded(const struct weighing *w, double run, double lo, double hi)
{
	const struct job_about *about = &w->job->about;
	double unit = about->units == UNITS_INCHES ? MM_PER_INCH : 1;
	double step = unit / (about->fraction > 0 ? about->fraction : 1);
	double even = round(run / step) * step;
	return even >= lo && even <= hi ? even : run;
}

static double run_for(const struct weighing *w, int risers)
{
	const struct job_comfort *c = &w->job->comfort;
	double rise = w->total_rise / risers;
	if (w->seg->run > 0)
		return w->seg->run;
	double lo = fmax(c->least_run, fmax(c->step_least - 2 * rise, c->sum_least - rise));
	double hi = fmin(c->most_run, fmin(c->step_most - 2 * rise, c->sum_most - rise));
	double run = run_rounded(w, clamp(c->step_wanted - 2 * rise, lo, fmax(lo, hi)), lo, hi);
	int treads = layout_treads(w->job, risers);
	bool too_long = w->seg->total_run > 0 && run * treads > w->seg->total_run;
	return too_long ? w->seg->total_run / treads : run;
}

static struct layout_option option_of(const struct weighing *w, int risers)
{
	struct layout_option o = { .risers = risers, .unit_rise = w->total_rise / risers };
	o.unit_run = run_for(w, risers);
	o.total_run = layout_treads(w->job, risers) * o.unit_run;
	o.pitch = atan2(o.unit_rise, o.unit_run);
	o.step_sum = 2 * o.unit_rise + o.unit_run;
	o.sum = o.unit_rise + o.unit_run;
	return o;
}

static bool is_over(double value, double limit)
{
	return limit > 0 && value > limit + NEAR_ENOUGH;
}

/* The limits on what the user gave are the user's own business: comfort_warn says so much. */
static const char *fault_of_rise(const struct weighing *w, const struct layout_option *o)
{
	if (w->seg->risers > 0)
		return NULL;
	return comfort_fault(w->a, w->job, comfort_rise(w->job, o));
}

static const char *fault_of_run(const struct weighing *w, const struct layout_option *o)
{
	double room = w->seg->total_run;
	if (is_over(o->total_run, room))
		return arena_printf(w->a, "a run of %s is %s more than there is room for",
			say(w, o->total_run),
			comfort_say_difference(w->a, w->job, o->total_run - room));
	return w->seg->run > 0 ? NULL : comfort_fault(w->a, w->job, comfort_run(w->job, o));
}

static const char *fault_of_pace(const struct weighing *w, const struct layout_option *o)
{
	return comfort_fault(w->a, w->job, comfort_pace(w->job, o));
}

/* NULL: it lies within every limit. */
static const char *fault_of(const struct weighing *w, const struct layout_option *o)
{
	const char *fault = fault_of_rise(w, o);
	if (!fault)
		fault = fault_of_run(w, o);
	return fault ? fault : fault_of_pace(w, o);
}

static double sum_wanted(const struct job *job)
{
	return (job->comfort.sum_least + job->comfort.sum_most) / 2;
}

static double discomfort(const struct job *job, const struct layout_option *o)
{
	return fabs(o->step_sum - job->comfort.step_wanted) + fabs(o->sum - sum_wanted(job));
}

static const char *winning_words(const struct weighing *w, const struct layout_option *o)
{
	return arena_printf(w->a,
		"chosen: twice rise plus run %s and rise plus run %s come nearest to %s and %s",
		say(w, o->step_sum), say(w, o->sum), say(w, w->job->comfort.step_wanted),
		say(w, sum_wanted(w->job)));
}

static const char *losing_words(const struct weighing *w, const struct layout_option *o)
{
	return arena_printf(w->a,
		"would do, but twice rise plus run %s and rise plus run %s come no nearer",
		say(w, o->step_sum), say(w, o->sum));
}

/* The index of the best option that fits, or -1. */
static int best_of(const struct weighing *w, struct layout_option *options, int n)
{
	int best = -1;
	for (int i = 0; i < n; i++) {
		options[i].verdict = fault_of(w, &options[i]);
		if (options[i].verdict)
			continue;
		if (best < 0 ||
			discomfort(w->job, &options[i]) <
				discomfort(w->job, &options[best]) - NEAR_ENOUGH)
			best = i;
	}
	return best;
}

/* From one riser fewer than the limits let in to one more, so that the table shows why not. */
static struct layout_option *options_make(const struct weighing *w, int *count)
{
	const struct job_comfort *c = &w->job->comfort;
	int from = w->seg->risers, to = w->seg->risers;
	if (from == 0) {
		from = (int)ceil(w->total_rise / fmax(c->most_rise, 50)) - 1;
		to = (int)floor(w->total_rise / fmax(c->least_rise, 50)) + 1;
		from = from < 2 ? 2 : from;
		to = to < from ? from : to;
	}
	*count = to - from + 1;
	struct layout_option *options = NEW_N(w->a, struct layout_option, *count);
	for (int i = 0; i < *count; i++)
		options[i] = option_of(w, from + i);
	return options;
}

/* The most comfortable of those that a rise within its limits makes possible. */
static const struct layout_option *nearest_of(const struct weighing *w,
	const struct layout_option *options, int n)
{
	const struct layout_option *nearest = NULL;
	for (int i = 0; i < n; i++) {
		if (fault_of_rise(w, &options[i]))
			continue;
		if (!nearest || discomfort(w->job, &options[i]) < discomfort(w->job, nearest))
			nearest = &options[i];
	}
	return nearest ? nearest : &options[0];
}

/* When nothing fits, the option that comes nearest says which number stands in the way. */
static void refuse(const struct weighing *w, const struct layout_option *options, int n,
	struct diags *d)
{
	const struct layout_option *o = nearest_of(w, options, n);
	diag_error(d, node_pos(w->seg->src, w->seg->total_run > 0 ? "total_run" : "risers"),
		"change that limit under comfort, or give risers and run",
		"no layout fits: %d risers of %s and a unit run of %s come nearest, but %s",
		o->risers, say(w, o->unit_rise), say(w, o->unit_run), o->verdict);
}

static struct layout choose(const struct weighing *w, struct diags *d)
{
	int n;
	struct layout_option *options = options_make(w, &n);
	int best = best_of(w, options, n);
	if (best < 0) {
		refuse(w, options, n, d);
		return (struct layout){ 0 };
	}
	for (int i = 0; i < n; i++)
		if (!options[i].verdict && i != best)
			options[i].verdict = losing_words(w, &options[i]);
	options[best].verdict = winning_words(w, &options[best]);
	options[best].chosen = true;
	return (struct layout){ options[best].risers, options[best].unit_run, options, n };
}

static struct layout as_given(const struct weighing *w, struct diags *d)
{
	struct layout_option o = option_of(w, w->seg->risers);
	double room = w->seg->total_run;
	int treads = layout_treads(w->job, o.risers);
	if (!is_over(o.total_run, room))
		return (struct layout){ .risers = o.risers, .unit_run = o.unit_run };
	diag_error(d, node_pos(w->seg->src, "total_run"),
		arena_printf(w->a, "a unit run of %s would just fit", say(w, room / treads)),
		"%d steps of %s need a run of %s: %s more than total_run, %s", treads,
		say(w, o.unit_run), say(w, o.total_run),
		comfort_say_difference(w->a, w->job, o.total_run - room), say(w, room));
	return (struct layout){ 0 };
}

struct layout layout_choose(struct arena *a, const struct job *job, const struct job_segment *seg,
	double total_rise, struct diags *d)
{
	struct weighing w = { a, job, seg, total_rise };
	bool is_given = seg->risers > 0 && seg->run > 0;
	struct layout l = is_given ? as_given(&w, d) : choose(&w, d);
	if (l.risers == 0)
		return l;
	struct layout_option taken = option_of(&w, l.risers);
	comfort_warn(a, job, seg, &taken, d);
	return l;
}
