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
 * job itself writes do not give way to an edition, the usual ones do.  Where nothing keeps them the
 * layout that comes nearest is drawn, and said to.
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
	RANK_UNCOMFORTABLE, /* past a limit of comfort: no other fits */
	RANK_UNCLIMBED,     /* and past one on the rise, which is worse */
	RANK_TOO_LONG,      /* there is no room for it */
};

static enum rank rank_of(const struct weighing *w, const struct layout_option *o)
{
	if (option_is_too_long(w, o))
		return RANK_TOO_LONG;
	if (!fault_of(w, o))
		return asked_shortfall(&w->asked, o) > 0 ? RANK_FALLS_SHORT : RANK_MEETS_ALL;
	if (option_moves_comfort(w, o))
		return RANK_MOVES_COMFORT;
	return fault_of_rise(w, o) ? RANK_UNCLIMBED : RANK_UNCOMFORTABLE;
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
	if (rank_of(w, o) >= RANK_UNCOMFORTABLE)
		return arena_printf(w->a, "chosen: it comes nearest, though %s", fault);
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

static struct layout_option *best_of(const struct weighing *w, struct layout_option *options, int n)
{
	struct layout_option *best = &options[0];
	for (int i = 1; i < n; i++)
		if (is_better(w, &options[i], best))
			best = &options[i];
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
		options[i] = option_make(w, from + i);
	return options;
}

static struct pos blamed(const struct weighing *w)
{
	return node_pos(w->seg->src, w->seg->total_run > 0 ? "total_run" : "risers");
}

static struct layout refuse(const struct weighing *w, const struct layout_option *o,
	struct diags *d)
{
	double room = w->seg->total_run;
	int treads = layout_treads(w->job, o->risers);
	diag_error(d, blamed(w),
		arena_printf(w->a, "write stair.segments[1].run: %s",
			length_say_most(w->a, job_lettering(w->job), room / treads)),
		"%d steps of %s need a run of %s: %s more than total_run, %s", treads,
		say(w, o->unit_run), say(w, o->total_run),
		comfort_say_difference(w->a, w->job, o->total_run - room), say(w, room));
	return (struct layout){ .option_count = 0 };
}

/* A limit of comfort stops nobody: what comes nearest is drawn, and which number is in the way. */
static void warn_of_comfort(const struct weighing *w, const struct layout_option *o,
	struct diags *d)
{
	const struct job *job = w->job;
	if (w->seg->run > 0 && !fault_of_rise(w, o))
		return; /* comfort_warn says so */
	struct comfort_figure f = fault_of_rise(w, o) ? comfort_rise(job, o)
		: fault_of_run(w, o)                  ? comfort_run(job, o)
						      : comfort_pace(job, o);
	struct lettering l = job_lettering(job);
	bool over = comfort_excess(f) > 0;
	diag_warning(d, blamed(w),
		arena_printf(w->a, "write comfort.%s: %s, or give risers and run",
			over ? f.most_key : f.least_key,
			over ? length_say_least(w->a, l, f.value)
			     : length_say_most(w->a, l, f.value)),
		"no layout keeps every limit of comfort: %d risers of %s and a unit run of %s come "
		"nearest, but %s",
		o->risers, say(w, o->unit_rise), say(w, o->unit_run), fault_of(w, o));
}

static struct layout choose(const struct weighing *w, struct diags *d)
{
	int n;
	struct layout_option *options = options_make(w, &n);
	struct layout_option *best = best_of(w, options, n);
	if (rank_of(w, best) == RANK_TOO_LONG)
		return refuse(w, best, d);
	if (rank_of(w, best) >= RANK_UNCOMFORTABLE)
		warn_of_comfort(w, best, d);
	for (int i = 0; i < n; i++)
		options[i].verdict = losing_words(w, &options[i]);
	best->verdict = winning_words(w, best);
	best->chosen = true;
	return (struct layout){ *best, options, n };
}

static struct layout as_given(const struct weighing *w, struct diags *d)
{
	struct layout_option o = option_make(w, w->seg->risers);
	return option_is_too_long(w, &o) ? refuse(w, &o, d) : (struct layout){ .taken = o };
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
