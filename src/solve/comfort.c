#include "solve/comfort.h"

#include <string.h>

/* The finest that a rule shows: 1/64 in, 0.1 mm. */
static struct lettering finest(const struct job *job)
{
	enum units units = job->about.units;
	return (struct lettering){ .units = units, .fraction = units == UNITS_INCHES ? 64 : 10 };
}

static const char *say(struct arena *a, struct lettering how, double mm)
{
	const char *figure = length_letter_inches(a, how, mm);
	return how.units == UNITS_INCHES ? figure : arena_printf(a, "%s mm", figure);
}

const char *comfort_say(struct arena *a, const struct job *job, double mm)
{
	return say(a, job_lettering(job), mm);
}

const char *comfort_say_difference(struct arena *a, const struct job *job, double mm)
{
	bool is_nothing = length_lettered_value(job_lettering(job), mm) < NEAR_ENOUGH;
	return is_nothing ? say(a, finest(job), mm) : comfort_say(a, job, mm);
}

struct comfort_figure comfort_rise(const struct job *job, const struct layout_option *o)
{
	const struct job_comfort *c = &job->comfort;
	return (struct comfort_figure){ "rise", o->unit_rise, c->least_rise, c->most_rise,
		"least_rise", "most_rise" };
}

struct comfort_figure comfort_run(const struct job *job, const struct layout_option *o)
{
	const struct job_comfort *c = &job->comfort;
	return (struct comfort_figure){ "unit run", o->unit_run, c->least_run, c->most_run,
		"least_run", "most_run" };
}

struct comfort_figure comfort_pace(const struct job *job, const struct layout_option *o)
{
	const struct job_comfort *c = &job->comfort;
	struct comfort_figure step = { "twice rise plus run", o->step_sum, c->step_least,
		c->step_most, "step_least", "step_most" };
	struct comfort_figure sum = { "rise plus run", o->sum, c->sum_least, c->sum_most,
		"sum_least", "sum_most" };
	return comfort_excess(step) != 0 ? step : sum;
}

double comfort_excess(struct comfort_figure f)
{
	if (f.value > f.most + NEAR_ENOUGH)
		return f.value - f.most;
	return f.value < f.least - NEAR_ENOUGH ? f.value - f.least : 0;
}

bool comfort_is_own_limit(const struct job *job, struct comfort_figure f)
{
	double excess = comfort_excess(f);
	return excess != 0 && node_has(job->comfort.src, excess > 0 ? f.most_key : f.least_key);
}

/* A figure that would be lettered like its limit is said finer, and "just" where that does not
 * help either: nobody believes that 6 1/2" is under 6 1/2". */
const char *comfort_fault(struct arena *a, const struct job *job, struct comfort_figure f)
{
	double excess = comfort_excess(f), limit = excess > 0 ? f.most : f.least;
	if (excess == 0)
		return NULL;
	const char *figure = comfort_say(a, job, f.value), *bound = comfort_say(a, job, limit);
	if (strcmp(figure, bound) == 0)
		figure = say(a, finest(job), f.value);
	return arena_printf(a, "%s %s is %s%s, %s", f.name, figure,
		strcmp(figure, bound) == 0 ? "just " : "",
		excess > 0 ? "over the most" : "under the least", bound);
}

static void warn_of_rise(struct arena *a, const struct job *job, const struct job_segment *seg,
	const struct layout_option *o, struct diags *d)
{
	double total = o->unit_rise * o->risers;
	bool high = comfort_excess(comfort_rise(job, o)) > 0;
	int better = high ? (int)ceil(total / job->comfort.most_rise - NEAR_ENOUGH)
			  : (int)floor(total / job->comfort.least_rise + NEAR_ENOUGH);
	const char *mend = better < 2 ? ""
				      : arena_printf(a, "%d risers make it %s; or ", better,
						comfort_say(a, job, total / better));
	diag_warning(d, node_pos(seg->src, "risers"),
		arena_printf(a, "%schange the limit under comfort", mend), "risers: with %d the %s",
		o->risers, comfort_fault(a, job, comfort_rise(job, o)));
}

static void warn_of_run(struct arena *a, const struct job *job, const struct job_segment *seg,
	struct comfort_figure f, struct diags *d)
{
	double excess = comfort_excess(f);
	diag_warning(d, node_pos(seg->src, "run"),
		arena_printf(a, "%s %s run would do; or change the limit under comfort",
			comfort_say_difference(a, job, fabs(excess)), excess > 0 ? "less" : "more"),
		"run: %s", comfort_fault(a, job, f));
}

void comfort_warn(struct arena *a, const struct job *job, const struct job_segment *seg,
	const struct layout_option *o, struct diags *d)
{
	bool rise = seg->risers > 0 && comfort_excess(comfort_rise(job, o)) != 0;
	bool run = seg->run > 0 && comfort_excess(comfort_run(job, o)) != 0;
	if (rise)
		warn_of_rise(a, job, seg, o, d);
	if (run)
		warn_of_run(a, job, seg, comfort_run(job, o), d);
	/* what follows from those two is said once they are mended */
	if (!rise && !run && seg->run > 0 && comfort_excess(comfort_pace(job, o)) != 0)
		warn_of_run(a, job, seg, comfort_pace(job, o), d);
}
