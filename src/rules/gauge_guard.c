/*
 * Guards of open sides: where there is a drop, and what ball goes through.
 */
#include "rules/gauge.h"

#include <stdlib.h>

#define NEAR_SIDE 150.0 /* the balustrade stands within this of the limit of its side */

static bool is_open(const struct step *step, bool on_right)
{
	return on_right ? step->open_right : step->open_left;
}

/* Is there a guard over the middle of the step's open edge? */
static bool is_guarded(const struct survey *s, const struct step *step, bool on_right)
{
	double x = (step->riser_x + step->back_x) / 2, y = on_right ? 0 : s->stair->width;
	struct region over = region_box(vec3(x - 1, y - NEAR_SIDE, step->level),
		vec3(x + 1, y + NEAR_SIDE, INFINITY));

	return survey_extreme(s, counts_rails, over, vec3(0, 0, 1)).found;
}

static struct reading highest_open(const struct survey *s, bool only_bare)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->flight->step_count; i++)
		for (int side = 0; side < 2; side++) {
			const struct step *step = &s->flight->steps[i];
			if (!is_open(step, side == 0) ||
				(only_bare && is_guarded(s, step, side == 0)))
				continue;
			reading_add(&r, step->level,
				arena_printf(s->arena, "%s side, step %d",
					side == 0 ? "right" : "left", step->number));
		}
	return r;
}

static struct reading drop(const struct survey *s)
{
	struct reading r = highest_open(s, false);

	return r.state == READING_TAKEN ? r : reading_not_applicable("no side is open");
}

static struct reading drop_without_guard(const struct survey *s)
{
	struct reading all = highest_open(s, false), bare = highest_open(s, true);

	if (all.state != READING_TAKEN)
		return reading_not_applicable("no side is open");
	return bare.state == READING_TAKEN
		? bare
		: reading_shown(reading_of(0, "every open step"), "guarded");
}

/* ---- what goes between ---- */

struct upright {
	double from, to;
};

static int by_from(const void *a, const void *b)
{
	double x = ((const struct upright *)a)->from, y = ((const struct upright *)b)->from;

	return (x > y) - (x < y);
}

/* Balusters, newels, and the walls that take the ends of a rail. */
static int uprights_of(const struct survey *s, double y, struct upright *list)
{
	int n = 0;

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		bool stands =
			counts_infill(p->part) || counts_newels(p->part) || counts_walls(p->part);
		if (stands && p->high.y > y - NEAR_SIDE && p->low.y < y + NEAR_SIDE)
			list[n++] = (struct upright){ p->low.x, p->high.x };
	}
	qsort(list, (size_t)n, sizeof(*list), by_from);
	return n;
}

/* Under a rail, from one upright to the next: as wide is the ball that goes between them. */
static void add_gaps(const struct survey *s, const struct placed *rail, struct reading *r)
{
	double y = (rail->low.y + rail->high.y) / 2, reached = rail->low.x;
	struct upright *list = NEW_N(s->arena, struct upright, s->count + 1);
	int n = uprights_of(s, y, list);

	list[n] = (struct upright){ rail->high.x, rail->high.x };
	for (int i = 0; i <= n; i++) {
		double to = fmin(list[i].from, rail->high.x);
		if (to > reached + NEAR_ENOUGH)
			reading_add(r, to - reached,
				arena_printf(s->arena, "%s side, %s", survey_side(s, y),
					survey_place(s, (reached + to) / 2)));
		reached = fmax(reached, list[i].to);
	}
}

static struct reading ball_between(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		bool right = p->low.y + p->high.y < s->stair->width;
		const struct job_stair *stair = &s->stair->job->stair;
		if (counts_rails(p->part) &&
			(right ? stair->right.kind : stair->left.kind) == SIDE_OPEN)
			add_gaps(s, p, &r);
	}
	return r.state == READING_TAKEN ? r : reading_not_applicable("no side is open");
}

static struct reading ball_in_triangle(const struct survey *s)
{
	(void)s;
	return reading_not_applicable("no bottom rail runs over the steps: balusters stand on "
				      "them, or on a closed stringer");
}

static const char *mend_drop(const struct survey *s, struct shortfall f)
{
	int step = 1;

	while (step < s->flight->step_count && s->flight->steps[step - 1].level <= f.limit)
		step++;
	return arena_printf(s->arena, "a guard from step %d up", step);
}

static const char *mend_between(const struct survey *s, struct shortfall f)
{
	double section = s->stair->job->balusters.section, run = s->flight->unit_run;
	int n = (int)ceil(run / (f.limit + section));

	while (run / n - section >= f.limit - NEAR_ENOUGH)
		n++;
	return arena_printf(s->arena, "%d balusters to a tread leave %s between them", n,
		survey_say(s, run / n - section));
}

const struct gauge gauges_of_guard[] = {
	{ "drop", "drop at an open side", GAUGE_LENGTH, drop, NULL, "stair", NULL },
	{ "drop_without_guard", "drop without a guard", GAUGE_LENGTH, drop_without_guard, mend_drop,
		"rail", NULL },
	{ "ball_between", "ball between balusters", GAUGE_LENGTH, ball_between, mend_between,
		"balusters", "largest_gap" },
	{ "ball_in_triangle", "ball under the bottom rail, over a step", GAUGE_LENGTH,
		ball_in_triangle, NULL, "balusters", NULL },
	{ 0 },
};
