/*
 * Guards of open sides: where there is a drop, and what ball goes through.
 */
#include <string.h>

#include "pitchboard/ball.h"
#include "rules/mend.h"
#include "rules/spans.h"

#define NEAR_SIDE 150.0 /* the balustrade stands within this of the limit of its side */
#define KNEE_HIGH 500.0 /* what rises less over a step is no guard of it */

/* A shorter length is a gap in a guard and no lack of one: the smallest ball of the codes (Approved
 * Document K 1.39: 100 mm, read) does not go through. */
#define NO_GAP 100.0

static bool is_open(const struct step *step, enum which_side side)
{
	return side == ON_THE_RIGHT ? step->open_right : step->open_left;
}

/* Does the piece stand between the step and the drop beside it? */
static bool counts_beside_step(const struct part *p)
{
	return counts_guard_rails(p) || counts_level_rails(p) || counts_newels(p) ||
		counts_walls(p);
}

static bool stands_beside(const struct survey *s, const struct placed *p, const struct step *step,
	enum which_side side)
{
	double y = side == ON_THE_RIGHT ? 0 : s->stair->width;

	return counts_beside_step(p->part) && p->box.high.z > step->level + KNEE_HIGH &&
		p->box.low.y < y + NEAR_SIDE && p->box.high.y > y - NEAR_SIDE;
}

/* The longest part of the step's open edge, from its riser to the one behind, that nothing stands
 * before. */
static double bare_length(const struct survey *s, const struct step *step, enum which_side side)
{
	struct spans covers = { NEW_N(s->arena, struct span, s->count + 1), 0 };
	double longest = 0;

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		if (stands_beside(s, p, step, side))
			covers.at[covers.n++] = (struct span){ p->box.low.x, p->box.high.x };
	}
	struct spans bare =
		spans_bare(s->arena, covers, (struct span){ step->riser_x, step->back_x });
	for (int i = 0; i < bare.n; i++)
		longest = fmax(longest, bare.at[i].to - bare.at[i].from);
	return longest;
}

/* Open, and to be guarded by what is made here. */
static bool is_guarded_here(const struct survey *s, const struct step *step, enum which_side side)
{
	const struct job_stair *job = &s->stair->job->stair;
	const struct job_side *which = side == ON_THE_RIGHT ? &job->right : &job->left;

	return is_open(step, side) && which->guard == GUARD_HERE;
}

static bool is_bare(const struct survey *s, const struct step *step, enum which_side side)
{
	return is_guarded_here(s, step, side) && bare_length(s, step, side) >= NO_GAP;
}

/* All open edges of steps, or those without a guard. */
enum edges { EDGES_ALL, EDGES_BARE };

static const char *open_at(const struct survey *s, const struct step *step, enum which_side side,
	enum edges edges)
{
	const char *name = side_word(side);

	if (edges == EDGES_ALL)
		return arena_printf(s->arena, "%s side, step %d", name, step->number);
	return arena_printf(s->arena, "%s side, step %d, %s of it", name, step->number,
		survey_say(s, bare_length(s, step, side)));
}

static struct reading highest_open(const struct survey *s, enum edges edges)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->flight->step_count; i++)
		for (enum which_side side = ON_THE_RIGHT; side <= ON_THE_LEFT; side++) {
			const struct step *step = &s->flight->steps[i];
			if (edges == EDGES_BARE ? !is_bare(s, step, side) : !is_open(step, side))
				continue;
			reading_add(&r, step->level, open_at(s, step, side, edges));
		}
	return r;
}

static struct reading drop(const struct survey *s)
{
	struct reading r = highest_open(s, EDGES_ALL);

	return r.state == READING_TAKEN ? r : reading_not_applicable("no side is open");
}

static struct reading drop_without_guard(const struct survey *s)
{
	struct reading all = highest_open(s, EDGES_ALL), bare = highest_open(s, EDGES_BARE);

	if (all.state != READING_TAKEN)
		return reading_not_applicable("no side is open");
	if (bare.state == READING_TAKEN)
		return bare;
	return has_guard_by_others(s) ? reading_by_others()
				      : reading_shown(reading_of(0, "every open step"), "guarded");
}

/* ---- what ball goes through ---- */

static const char *ball_at(const struct survey *s, const struct ball *b)
{
	const char *side = b->on_left ? "left side" : "right side";
	const char *over = b->step > 0 ? arena_printf(s->arena, "over step %d", b->step)
		: b->on_rake           ? "at the lower floor"
				       : "at the upper floor";

	return arena_printf(s->arena, "%s, %s, %s", side, over,
		ball_place_name(s->stair->job, b->place));
}

enum opening { OPENING_TRIANGLE, OPENING_OTHER };

/* In the triangle over a step, or in any other opening, of the rake. */
static struct reading balls_on_rake(const struct survey *s, enum opening opening,
	const char *otherwise)
{
	const struct ball *b = balls_measure(s->arena, s->stair, s->parts);
	struct reading r = reading_none();

	if (highest_open(s, EDGES_ALL).state != READING_TAKEN)
		return reading_not_applicable("no side is open");
	for (; b; b = b->next)
		if (b->on_rake && !ball_is_beside_cross(b->place) &&
			(b->place == BALL_TRIANGLE) == (opening == OPENING_TRIANGLE))
			reading_add(&r, b->diameter, ball_at(s, b));
	return r.state == READING_TAKEN ? r : reading_without(s, otherwise);
}

static struct reading ball_between(const struct survey *s)
{
	return balls_on_rake(s, OPENING_OTHER, "nothing is open between steps and rail");
}

static struct reading ball_in_triangle(const struct survey *s)
{
	return balls_on_rake(s, OPENING_TRIANGLE,
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
			reading_add(&r, s->pieces[i].box.high.z - s->top, "at the upper floor");
	return r.state == READING_TAKEN ? r : reading_not_possible(no_level_rail);
}

static struct mend mend_floor_guard(const struct survey *s, struct shortfall f)
{
	const struct job_rail *rail = &s->stair->job->rail;
	struct mend m = { .words = NULL };

	for (int i = 0; i < rail->level_run_count; i++)
		if (rail->level_runs[i].height < f.limit)
			m = mend_also_size(s, m,
				arena_printf(s->arena, "rail.level_runs[%d].height", i + 1),
				mend_size(s, f, f.limit, 1));
	m.words = arena_printf(s->arena, "the level rail %s high: %s higher",
		survey_say(s, mend_size(s, f, f.limit, 1)), survey_say(s, f.by));
	return m;
}

static struct reading floor_ball(const struct survey *s)
{
	const struct ball *b = balls_measure(s->arena, s->stair, s->parts);
	struct reading r = reading_none();

	for (; b; b = b->next)
		if (!b->on_rake && !ball_is_beside_cross(b->place))
			reading_add(&r, b->diameter, ball_at(s, b));
	return r.state == READING_TAKEN ? r : reading_not_possible(no_level_rail);
}

/* From the lowest step that has none and needs one. */
static struct mend mend_drop(const struct survey *s, struct shortfall f)
{
	for (int i = 0; i < s->flight->step_count; i++)
		for (enum which_side side = ON_THE_RIGHT; side <= ON_THE_LEFT; side++) {
			const struct step *step = &s->flight->steps[i];
			if (step->level > f.limit && is_bare(s, step, side))
				return mend_said(arena_printf(s->arena, "a guard from step %d up",
					step->number));
		}
	return mend_said(NULL);
}

/* Is it the gap that balusters or bars are set to?  Beside a newel, at the end of a wall and under
 * the rail a ball may find more room; where the next one then stands, keys do not say alone. */
static bool is_set_gap(const struct survey *s, struct shortfall f)
{
	return strstr(f.reading->most_at, ball_place_name(s->stair->job, BALL_BETWEEN)) &&
		f.reading->most < s->stair->job->balusters.largest_gap + 1;
}

static struct mend mend_opening(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	bool in_panel = job->newels.build == NEWEL_PANELLED &&
		strstr(f.reading->most_at, ball_place_name(job, BALL_AT_NEWEL));

	return mend_said(arena_printf(s->arena,
		"one more baluster or bar there, or this opening %s smaller%s",
		survey_say(s, mend_size(s, f, fabs(f.by), 1)),
		in_panel ? ": it goes into the recess of the newel's panel" : ""));
}

/* The fewest to a tread that leave no more than a gap between them. */
static int per_tread(const struct survey *s, double gap)
{
	double section = s->stair->job->balusters.section, run = s->flight->unit_run;

	return (int)ceil(run / (gap + section + NEAR_ENOUGH));
}

static struct mend mend_gap(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	double gap = mend_size(s, f, fmin(job->balusters.largest_gap + f.by, f.limit), -1);
	const char *what = job->infill.kind == INFILL_BARS ? "bars" : "balusters";

	if (!is_set_gap(s, f))
		return mend_opening(s, f);
	struct mend m = mend_said(
		arena_printf(s->arena, "%s no more than %s apart", what, survey_say(s, gap)));
	m = mend_also_size(s, m, "balusters.largest_gap", gap);
	if (job->balusters.per_tread > 0)
		m = mend_also(s, m, "balusters.per_tread",
			arena_printf(s->arena, "%d", per_tread(s, gap)));
	return m;
}

/* So many to a tread as leave less between them. */
static struct mend mend_between(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	int n = per_tread(s, f.is_strict ? f.limit - 2 * NEAR_ENOUGH : f.limit);

	if (!is_set_gap(s, f) || job->balusters.per_tread <= 0 || job->infill.kind == INFILL_BARS ||
		job->infill.kind == INFILL_PANEL)
		return mend_gap(s, f);
	struct mend m =
		mend_said(arena_printf(s->arena, "%d balusters to a tread leave %s between them", n,
			survey_say(s, s->flight->unit_run / n - job->balusters.section)));
	return mend_also(s, m, "balusters.per_tread", arena_printf(s->arena, "%d", n));
}

/*
 * The riser above, the tread and the rail's underside make a right-angled triangle of the shape of
 * rise and run, as high as the riser, the lift over the nosings and what the line of the nosings
 * gains over the nosing itself.  A nosing takes room away from the ball in it, so that a triangle
 * whose own circle is no larger than the limit is small enough.
 */
static struct mend mend_triangle(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	double rise = s->stair->unit_rise, run = s->flight->unit_run;
	double inscribed = rise + run - hypot(rise, run);
	double lift = f.limit * rise / inscribed - rise - job->treads.nosing * rise / run;
	bool is_shoe = job->infill.kind != INFILL_BARS && job->infill.kind != INFILL_PANEL;

	if (lift >= 0 && is_shoe)
		return mend_also_size(s,
			mend_said(arena_printf(s->arena,
				"the bottom rail %s over the nosings, plumb: %s lower",
				survey_say(s, mend_size(s, f, lift, -1)),
				survey_say(s, job->infill.shoe_lift - mend_size(s, f, lift, -1)))),
			"infill.shoe_lift", mend_size(s, f, lift, -1));
	struct mend m = mend_said(arena_printf(s->arena,
		"what closes the triangle, %s less of it: balusters on the treads, or a closed "
		"stringer",
		survey_say(s, mend_size(s, f, fabs(f.by), 1))));
	return is_shoe ? mend_also(s, m, "infill.shoe", "no") : m;
}

const struct gauge gauges_of_guard[] = {
	{ "drop", "drop at an open side", GAUGE_LENGTH, drop, NULL, "stair" },
	{ "drop_without_guard", "drop without a guard", GAUGE_LENGTH, drop_without_guard, mend_drop,
		"rail" },
	{ "floor_guard_height", "height of the guard at the upper floor", GAUGE_LENGTH,
		floor_guard_height, mend_floor_guard, "rail" },
	{ "floor_ball", "ball through the guard at the upper floor", GAUGE_LENGTH, floor_ball,
		mend_gap, "balusters.largest_gap" },
	{ "ball_between", "ball through the guard", GAUGE_LENGTH, ball_between, mend_between,
		"balusters.largest_gap" },
	{ "ball_in_triangle", "ball under the bottom rail", GAUGE_LENGTH, ball_in_triangle,
		mend_triangle, "infill.shoe_lift" },
	{ 0 },
};
