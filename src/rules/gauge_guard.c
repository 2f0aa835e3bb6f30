/*
 * Guards of open sides: where there is a drop, and what ball goes through.
 */
#include "pitchboard/rail.h"
#include "rules/ball.h"
#include "rules/gauge.h"

#define NEAR_SIDE 150.0 /* the balustrade stands within this of the limit of its side */
#define WITHIN 10.0     /* of the middle of the rail: what stands there stands in the guard */
#define LEAST_BALL 1.0  /* less is a joint, not an opening */
#define BAY 500.0       /* a level guard is looked at in bays */

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

	return survey_extreme(s, counts_guard_rails, over, vec3(0, 0, 1)).found;
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

/* ---- what ball goes through ---- */

/* Over each step from its nosing to the next, above its tread; over the lower floor and the upper
 * one as far as the rail goes. */
static struct box room_over(const struct survey *s, const struct placed *rail, int i)
{
	const struct flight *f = s->flight;
	double from = s->first_nosing + (i - 1) * f->unit_run, to = from + f->unit_run;
	struct box b = { .x0 = i == 0 ? rail->low.x : fmax(from, rail->low.x) };

	b.x1 = i == f->step_count ? rail->high.x : fmin(to, rail->high.x);
	b.y0 = i == 0 ? 0 : f->steps[i - 1].level;
	b.y1 = rail->high.z;
	return b;
}

static void add_balls_on_rake(const struct survey *s, const struct placed *rail,
	enum ball_place place, struct reading *r)
{
	double y = (rail->low.y + rail->high.y) / 2;
	struct guard_plane plane = { { 0, y, 0 }, { 1, 0, 0 } };
	struct shadows all = shadows_on(s, plane, WITHIN, rail->low.x, rail->high.x);
	struct slope_line top = s->nosing_line;

	top.z0 += rail->part->rail->height;
	for (int i = 0; i <= s->flight->step_count; i++) {
		struct box box = room_over(s, rail, i);
		struct ball b = ball_largest(s->arena, &all,
			(struct ball_window){ box, top, place, fmax(LEAST_BALL, r->most) });
		if (b.diameter > 0)
			reading_add(r, b.diameter,
				arena_printf(s->arena, "%s side, over %s", survey_side(s, y),
					survey_place(s, b.at.x)));
	}
}

static struct reading balls_on_rake(const struct survey *s, enum ball_place place,
	const char *otherwise)
{
	struct reading r = reading_none();
	bool any = false;

	for (int i = 0; i < s->count; i++) {
		if (!counts_guard_rails(s->pieces[i].part))
			continue;
		any = true;
		add_balls_on_rake(s, &s->pieces[i], place, &r);
	}
	if (!any)
		return reading_not_applicable("no side is open");
	return r.state == READING_TAKEN ? r : reading_not_applicable(otherwise);
}

static struct reading ball_between(const struct survey *s)
{
	return balls_on_rake(s, BALL_BETWEEN, "nothing is open under the rail");
}

static struct reading ball_in_triangle(const struct survey *s)
{
	return balls_on_rake(s, BALL_UNDER_BAR,
		"no bottom rail runs over the steps: what stands there stands on them, or on a "
		"closed stringer");
}

/* ---- the guard of the upper floor ---- */

static const char no_level_rail[] =
	"what guards the opening's edge in the upper floor is not in the job";

static struct reading floor_guard_height(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++)
		if (counts_level_rails(s->pieces[i].part))
			reading_add(&r, s->pieces[i].high.z - s->top, "at the upper floor");
	return r.state == READING_TAKEN ? r : reading_not_possible(no_level_rail);
}

static void add_balls_on_level(const struct survey *s, const struct placed *rail, struct reading *r)
{
	struct vec3 middle = vec3_scale(vec3_add(rail->low, rail->high), 0.5);
	bool lengthwise = rail->high.x - rail->low.x > rail->high.y - rail->low.y;
	double half = (lengthwise ? rail->high.x - rail->low.x : rail->high.y - rail->low.y) / 2;
	struct guard_plane plane = { middle, lengthwise ? vec3(1, 0, 0) : vec3(0, 1, 0) };
	struct shadows all = shadows_on(s, plane, WITHIN, -half, half);
	struct slope_line top = { rail->high.z, 0 };

	for (double from = -half; from < half; from += BAY) {
		struct box box = { from, s->top, fmin(from + BAY, half), rail->high.z };
		struct ball b = ball_largest(s->arena, &all,
			(struct ball_window){ box, top, BALL_ANYWHERE, fmax(LEAST_BALL, r->most) });
		if (b.diameter > 0)
			reading_add(r, b.diameter, "at the upper floor");
	}
}

static struct reading floor_ball(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++)
		if (counts_level_rails(s->pieces[i].part))
			add_balls_on_level(s, &s->pieces[i], &r);
	return r.state == READING_TAKEN ? r : reading_not_possible(no_level_rail);
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

/* The opening grows as its height does: a rail as much lower, plumb, as what is missing has of it.
 */
static const char *mend_triangle(const struct survey *s, struct shortfall f)
{
	double rise = s->stair->unit_rise, run = s->flight->unit_run;
	double inscribed = rise + run - hypot(rise, run);

	return arena_printf(s->arena, "a bottom rail about %s lower",
		survey_say(s, fabs(f.by) * rise / inscribed));
}

const struct gauge gauges_of_guard[] = {
	{ "drop", "drop at an open side", GAUGE_LENGTH, drop, NULL, "stair", NULL },
	{ "drop_without_guard", "drop without a guard", GAUGE_LENGTH, drop_without_guard, mend_drop,
		"rail", NULL },
	{ "floor_guard_height", "height of the guard at the upper floor", GAUGE_LENGTH,
		floor_guard_height, NULL, "rail", NULL },
	{ "floor_ball", "ball through the guard at the upper floor", GAUGE_LENGTH, floor_ball, NULL,
		"balusters", "largest_gap" },
	{ "ball_between", "ball through the guard", GAUGE_LENGTH, ball_between, mend_between,
		"balusters", "largest_gap" },
	{ "ball_in_triangle", "ball under the bottom rail", GAUGE_LENGTH, ball_in_triangle,
		mend_triangle, "balusters", NULL },
	{ 0 },
};
