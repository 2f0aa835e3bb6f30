#include "solve/layout.h"

#include "solve/comfort.h"
#include "solve/option.h"

/*
 * Two measures of comfort, both old: a pace is twice the rise plus the run
 * (Blondel, Cours d'architecture, 1675), and rise plus run comes to 17 or 18
 * inches ("Drawing", chestofbooks reprint; NAVEDTRA 14044 has 17 1/2).  A layout
 * is the more comfortable the nearer it comes to the pace the job wants and to
 * the middle of the sums it allows.
 *
 * What the edition of a code asks, and the headroom wanted, come before comfort: a
 * layout that misses them is chosen only when all do.  Limits of comfort that the
 * job itself writes hold in any case; the usual ones give way to an edition.
 */

int layout_treads(const struct job *job, int risers)
{
	return job->stringers.head == HEAD_FLUSH ? risers : risers - 1;
}

static const char *say(const struct weighing *w, double mm)
{
	return comfort_say(w->a, w->job, mm);
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
	if (option_is_too_long(w, o))
		return arena_printf(w->a, "a run of %s is %s more than there is room for",
			say(w, o->total_run),
			comfort_say_difference(w->a, w->job, o->total_run - w->seg->total_run));
	return w->seg->run > 0 ? NULL : comfort_fault(w->a, w->job, comfort_run(w->job, o));
}

static const char *fault_of_pace(const struct weighing *w, const struct layout_option *o)
{
	return comfort_fault(w->a, w->job, comfort_pace(w->job, o));
}

/* NULL: it lies within every limit of comfort, and there is room for it. */
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

/* From the best down. */
enum rank {
	RANK_MEETS_ALL,
	RANK_MOVES_COMFORT, /* meets what an edition asks, past a usual limit of comfort */
	RANK_FALLS_SHORT,   /* comfortable, and misses what is asked */
	RANK_IMPOSSIBLE,
};

static enum rank rank_of(const struct weighing *w, const struct layout_option *o)
{
	bool is_comfortable = !fault_of(w, o);
	if (!is_comfortable)
		return option_moves_comfort(w, o) ? RANK_MOVES_COMFORT : RANK_IMPOSSIBLE;
	return asked_shortfall(&w->asked, o) > 0 ? RANK_FALLS_SHORT : RANK_MEETS_ALL;
}

/* Of those that fall short the one that falls least short; then the more comfortable one. */
static bool is_better(const struct weighing *w, const struct layout_option *o,
	const struct layout_option *than)
{
	enum rank rank = rank_of(w, o), other = rank_of(w, than);
	double shortfall = asked_shortfall(&w->asked, o);
	double least = asked_shortfall(&w->asked, than);
	if (rank != other)
		return rank < other;
	if (!near_enough(shortfall, least))
		return shortfall < least;
	return discomfort(w->job, o) < discomfort(w->job, than) - NEAR_ENOUGH;
}

static const char *winning_words(const struct weighing *w, const struct layout_option *o)
{
	const char *fault = fault_of(w, o), *missed = asked_fault(w->a, &w->asked, o);
	if (fault)
		return arena_printf(w->a, "chosen: it meets what the code asks, though %s", fault);
	if (missed)
		return arena_printf(w->a, "chosen: it comes nearest to what is asked, but %s",
			missed);
	return arena_printf(w->a,
		"chosen: twice rise plus run %s and rise plus run %s come nearest to %s and %s",
		say(w, o->step_sum), say(w, o->sum), say(w, w->job->comfort.step_wanted),
		say(w, sum_wanted(w->job)));
}

static const char *losing_words(const struct weighing *w, const struct layout_option *o)
{
	const char *fault = fault_of(w, o);
	if (!fault)
		fault = asked_fault(w->a, &w->asked, o);
	return fault ? fault
		     : arena_printf(w->a,
			       "would do, but twice rise plus run %s and rise plus run %s come no "
			       "nearer",
			       say(w, o->step_sum), say(w, o->sum));
}

/* The best option, or NULL when none is possible. */
static struct layout_option *best_of(const struct weighing *w, struct layout_option *options, int n)
{
	struct layout_option *best = &options[0];
	for (int i = 1; i < n; i++)
		if (is_better(w, &options[i], best))
			best = &options[i];
	return rank_of(w, best) == RANK_IMPOSSIBLE ? NULL : best;
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
		options[i] = option_make(w, from + i);
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
		o->risers, say(w, o->unit_rise), say(w, o->unit_run), fault_of(w, o));
}

static struct layout choose(const struct weighing *w, struct diags *d)
{
	int n;
	struct layout_option *options = options_make(w, &n);
	struct layout_option *best = best_of(w, options, n);
	if (!best) {
		refuse(w, options, n, d);
		return (struct layout){ .option_count = 0 };
	}
	for (int i = 0; i < n; i++)
		options[i].verdict = losing_words(w, &options[i]);
	best->verdict = winning_words(w, best);
	best->chosen = true;
	return (struct layout){ *best, options, n };
}

static struct layout as_given(const struct weighing *w, struct diags *d)
{
	struct layout_option o = option_make(w, w->seg->risers);
	double room = w->seg->total_run;
	int treads = layout_treads(w->job, o.risers);
	if (!option_is_too_long(w, &o))
		return (struct layout){ .taken = o };
	diag_error(d, node_pos(w->seg->src, "total_run"),
		arena_printf(w->a, "a unit run of %s would just fit", say(w, room / treads)),
		"%d steps of %s need a run of %s: %s more than total_run, %s", treads,
		say(w, o.unit_run), say(w, o.total_run),
		comfort_say_difference(w->a, w->job, o.total_run - room), say(w, room));
	return (struct layout){ .option_count = 0 };
}

struct layout layout_choose(struct arena *a, const struct job *job, const struct job_segment *seg,
	const struct layout_limits *limits, double total_rise, struct diags *d)
{
	struct weighing w = { a, job, seg, total_rise, asked_make(a, job, limits, total_rise) };
	bool is_given = seg->risers > 0 && seg->run > 0;
	struct layout l = is_given ? as_given(&w, d) : choose(&w, d);
	if (l.taken.risers > 0)
		comfort_warn(a, job, seg, &l.taken, d);
	return l;
}
