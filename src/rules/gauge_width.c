/*
 * Clear width, and what reaches into it.
 *
 * IRC R311.7.1 asks three things: 36 in over the height that a handrail may have and under the
 * headroom; no more than 4 1/2 in of handrail into that on either side; and so much between, "at
 * and below" handrail height.  Newels, their caps and brackets it does not name.  So at the rail
 * and under it everything counts that a body meets there, newels as well; over the rail walls only.
 * A newel's cap stands over the rail that dies into the newel, and counts nowhere but where it
 * hangs down to rail height: it is a hand wide and passed in one step, and a checker who wants it
 * taken off has the size of the cap on the sheets.  DIN 18065 measures its usable width at the
 * rail, too (from memory).
 */
#include "pitchboard/width.h"
#include "rules/handrail.h"
#include "rules/mend.h"

#define OVER_RAIL 100.0  /* so far over the rail only walls count */
#define HEAD_HIGH 2000.0 /* over the nosing line */
#define NEXT_TO 300.0    /* a wall further off a rail is not its wall */

static bool counts_beside(const struct part *p)
{
	return counts_walls(p) || counts_rails(p) || counts_wall_rails(p) || counts_newels(p) ||
		counts_infill(p) || p->kind == &part_stringer;
}

/* Where one step is clear between two heights over the nosing line: y of either side. */
struct clear {
	double right, left;
};

static struct clear clear_at(const struct survey *s, const struct step *step, counts_fn *counts,
	double from, double to)
{
	double z0 = s->nosing_line.z0, middle = s->stair->width / 2;
	struct region r = { .n = 0 };
	struct clear c = { 0, s->stair->width };

	r = region_between(r, vec3(1, 0, 0), step->nosing_x, step->back_x);
	r = region_between(r, survey_over_nosings(s), z0 + from, z0 + to);
	struct extreme right = survey_extreme(s, counts,
		region_between(r, vec3(0, 1, 0), -INFINITY, middle), vec3(0, 1, 0));
	struct extreme left = survey_extreme(s, counts,
		region_between(r, vec3(0, 1, 0), middle, INFINITY), vec3(0, -1, 0));
	if (right.found)
		c.right = fmax(c.right, right.value);
	if (left.found)
		c.left = fmin(c.left, -left.value);
	return c;
}

static struct reading narrowest(const struct survey *s, counts_fn *counts, double from, double to)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->flight->step_count; i++) {
		const struct step *step = &s->flight->steps[i];
		struct clear c = clear_at(s, step, counts, from, to);
		reading_add(&r, c.left - c.right, arena_printf(s->arena, "step %d", step->number));
	}
	if (r.most - r.least < NEAR_ENOUGH)
		r.least_at = r.most_at = "every step";
	return r;
}

/* Over the rail: between walls; an open side counts at the outer face of its stringer. */
static struct reading clear_width(const struct survey *s)
{
	return narrowest(s, counts_walls, s->stair->job->rail.height + OVER_RAIL, HEAD_HIGH);
}

/* From the nosing line to the top of the rail: whatever reaches in. */
static struct reading clear_width_at_rail(const struct survey *s)
{
	return narrowest(s, counts_beside, 1, s->stair->job->rail.height);
}

/* Between what stands on either side: up to the rail all of it, over that the walls. */
static struct reading usable_width(const struct survey *s)
{
	struct reading at_rail = clear_width_at_rail(s), over = clear_width(s);

	return over.least < at_rail.least ? over : at_rail;
}

/* From the limit of its side to the inner face. */
static double projection_of(const struct survey *s, const struct placed *p)
{
	return placed_side(s, p) == ON_THE_RIGHT ? p->box.high.y : s->stair->width - p->box.low.y;
}

static struct reading rail_projection(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		const char *side = placed_side(s, p) == ON_THE_RIGHT ? "right side" : "left side";
		if (counts_rails(p->part))
			reading_add(&r, projection_of(s, p), side);
	}
	return r.state == READING_TAKEN ? r : reading_without(s, "there is no rail");
}

/* The face of the wall beside a rail, in y; NAN where no wall stands beside it.  What ends under
 * the rail, all the way up, is not beside it. */
static double wall_beside(const struct survey *s, const struct placed *rail, enum which_side side)
{
	struct vec3 low = rail->box.low, high = rail->box.high, over = survey_over_nosings(s);
	double underside = vec3_dot(over, low);

	if (side == ON_THE_RIGHT)
		low.y -= NEXT_TO;
	else
		high.y += NEXT_TO;
	struct region beside = region_between(region_box(low, high), over, underside, INFINITY);
	struct extreme face =
		survey_extreme(s, counts_walls, beside, vec3(0, side == ON_THE_RIGHT ? 1 : -1, 0));
	if (!face.found)
		return NAN;
	return side == ON_THE_RIGHT ? face.value : -face.value;
}

static struct reading wall_clearance(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		enum which_side side = placed_side(s, p);
		bool on_right = side == ON_THE_RIGHT;
		double wall = counts_rails(p->part) ? wall_beside(s, p, side) : NAN;
		if (!isnan(wall) && (on_right ? wall <= p->box.low.y : wall >= p->box.high.y))
			reading_add(&r, on_right ? p->box.low.y - wall : wall - p->box.high.y,
				arena_printf(s->arena, "%s side", side_word(side)));
	}
	return r.state == READING_TAKEN ? r : reading_not_applicable("no rail runs along a wall");
}

struct clear_width clear_width_measure(struct arena *a, const struct stair *stair,
	const struct part *parts, enum clear_at at)
{
	const struct survey s = survey_make(a, stair, parts);
	double rail = stair->job->rail.height;
	struct clear_width best = { 0, INFINITY, 0 };

	for (int i = 0; i < s.flight->step_count; i++) {
		const struct step *step = &s.flight->steps[i];
		struct clear c = at == CLEAR_OVER_RAIL
			? clear_at(&s, step, counts_walls, rail + OVER_RAIL, HEAD_HIGH)
			: clear_at(&s, step, counts_beside, 1, rail);
		if (c.left - c.right < best.left - best.right - NEAR_ENOUGH)
			best = (struct clear_width){ c.right, c.left, step->number };
	}
	return best;
}

/* An opening that is as wide as the stair grows with it. */
static struct mend mend_width(const struct survey *s, struct shortfall f)
{
	double width = mend_from(s, f, s->stair->width), opening = s->stair->job->opening.width;
	struct mend m = mend_said(arena_printf(s->arena, "a stair %s wide: %s wider",
		survey_say(s, width), survey_say(s, f.by)));

	m = mend_also_size(s, m, "stair.width", width);
	return opening > 0 ? mend_also_size(s, m, "opening.width",
				     mend_size(s, f, opening + width - s->stair->width, 1))
			   : m;
}

/* The rails on walls that reach in too far, and the rail of the open side, which is as near to it
 * as it can be and has to be narrower by as much on both its sides. */
static struct mend mend_projection(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	struct mend m = mend_said(
		arena_printf(s->arena, "a rail %s nearer to its side, or so much narrower there",
			survey_say(s, mend_size(s, f, fabs(f.by), 1))));

	for (int i = 0; i < job->wall_rail_count; i++) {
		double clear = f.limit - job->wall_rails[i].width;
		if (clear < job->wall_rails[i].clearance && clear > 0)
			m = mend_also_size(s, m,
				arena_printf(s->arena, "wall_rails[%d].clearance", i + 1),
				mend_size(s, f, clear, -1));
	}
	for (int i = 0; i < s->count; i++)
		if (counts_guard_rails(s->pieces[i].part) &&
			projection_of(s, &s->pieces[i]) > f.limit + NEAR_ENOUGH)
			return mend_also_size(s, m, "rail.width",
				mend_size(s, f, job->rail.width + 2 * f.by, -1));
	return m;
}

static struct mend mend_clearance(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	struct mend m = mend_said(arena_printf(s->arena, "the rail %s further off the wall",
		survey_say(s, mend_size(s, f, f.by, 1))));

	for (int i = 0; i < job->wall_rail_count; i++)
		if (job->wall_rails[i].clearance < f.limit - NEAR_ENOUGH)
			m = mend_also_size(s, m,
				arena_printf(s->arena, "wall_rails[%d].clearance", i + 1),
				mend_size(s, f, f.limit, 1));
	return m;
}

const struct gauge gauges_of_width[] = {
	{ "clear_width", "clear width over the rail", GAUGE_LENGTH, clear_width, mend_width,
		"stair.width" },
	{ "clear_width_at_rail", "clear width at the rail and under it", GAUGE_LENGTH,
		clear_width_at_rail, mend_width, "stair.width" },
	{ "usable_width", "usable width between rails and walls", GAUGE_LENGTH, usable_width,
		mend_width, "stair.width" },
	{ "rail_projection", "how far the rail reaches into the width", GAUGE_LENGTH,
		rail_projection, mend_projection, "rail.width" },
	{ "wall_clearance", "rail to wall", GAUGE_LENGTH, wall_clearance, mend_clearance,
		"rail.width" },
	{ 0 },
};
