/*
 * The rail: its height all along, how far it goes, how it ends.
 */
#include "rules/handrail.h"
#include "rules/limits.h"
#include "rules/mend.h"

#define SLIVER 0.01  /* thickness of a slice through a rail */
#define TOUCHING 2.0 /* a rail that ends so near to a newel or wall dies into it */

static const char no_rail[] = "there is no rail";

static bool any_rail(const struct survey *s)
{
	return has_rail(s, ON_THE_RIGHT) || has_rail(s, ON_THE_LEFT);
}

static const char *side_of(const struct survey *s, const struct placed *p)
{
	return side_word(placed_side(s, p));
}

/* ---- height ---- */

/* The slice of a rail at x, as a region. */
static struct region slice_of(const struct placed *p, double x)
{
	x = fmin(fmax(x, p->box.low.x + SLIVER), p->box.high.x - SLIVER);
	return region_box(vec3(x - SLIVER, p->box.low.y, p->box.low.z - 1),
		vec3(x + SLIVER, p->box.high.y, p->box.high.z + 1));
}

/* Top of the rail at x over the line of the nosings, which goes on past the last of them as far as
 * the rail does. */
static void add_height(const struct survey *s, const struct placed *p, double x, struct reading *r)
{
	struct extreme top = survey_extreme(s, counts_rails, slice_of(p, x), vec3(0, 0, 1));

	if (top.found)
		reading_add(r, top.value - slope_at(s->nosing_line, top.at.x),
			arena_printf(s->arena, "%s side, over %s", side_of(s, p),
				survey_place(s, top.at.x)));
}

/* A rail on a wall ends square to its length, and mitred; two lengths of a rail meet square: there
 * the top is shorter than the rail is. */
static double square_end(const struct placed *p)
{
	const struct part_size *z = &p->part->size;

	if (counts_wall_rails(p->part))
		return z->thickness + z->width;
	return p->part->length_of.count ? z->thickness : 0;
}

/* The top of a rail is straight between its corners: the extremes lie at one of those. */
static void add_heights(const struct survey *s, const struct placed *p, struct reading *r)
{
	double from = p->box.low.x + square_end(p), to = p->box.high.x - square_end(p),
	       last = -INFINITY;

	add_height(s, p, from, r);
	for (int i = 0; i < p->face_count; i++)
		for (int k = 0; k < p->faces[i].n; k++) {
			double x = p->faces[i].at[k].x;
			if (fabs(x - last) > 1 && x > from + 1 && x < to - 1)
				add_height(s, p, x, r);
			last = x;
		}
	add_height(s, p, to, r);
}

/* A rail that follows the nosing line is as high everywhere, within what a slice is thick. */
static struct reading heights_settled(struct reading r, const char *everywhere)
{
	if (r.state == READING_TAKEN && r.most - r.least < 2 * SLIVER) {
		r.least_at = r.most_at = everywhere;
		r.least = r.most = (r.least + r.most) / 2;
	}
	return r;
}

static struct reading rail_height(const struct survey *s)
{
	struct handrail h = handrail_of(s);
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++)
		if (is_of_handrail(s, h, &s->pieces[i]))
			add_heights(s, &s->pieces[i], &r);
	if (r.state != READING_TAKEN)
		return reading_without(s, no_rail);
	return heights_settled(r,
		h.side == ON_THE_RIGHT ? "right side, all along" : "left side, all along");
}

static struct reading guard_height(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++)
		if (counts_guard_rails(s->pieces[i].part))
			add_heights(s, &s->pieces[i], &r);
	if (r.state != READING_TAKEN)
		return reading_without(s, "no side is open");
	return heights_settled(r,
		has_guard_by_others(s) ? "all along the guard made here" : "all along");
}

/* ---- how far it goes ---- */

/* Which sides, going up. */
static const char *sides_words(const struct survey *s)
{
	bool right = has_rail(s, ON_THE_RIGHT), left = has_rail(s, ON_THE_LEFT);

	if (right && left)
		return "a rail on both sides";
	return right ? "a rail on the right" : left ? "a rail on the left" : "no rail";
}

static struct reading rail_sides(const struct survey *s)
{
	int n = has_rail(s, ON_THE_RIGHT) + has_rail(s, ON_THE_LEFT);
	struct reading r = reading_of(n, "the flight");

	if (n < 2 && has_guard_by_others(s))
		return reading_by_others();
	return reading_shown(r, sides_words(s));
}

/* One unbroken rail is enough. */
static struct reading rail_gap(const struct survey *s)
{
	if (!any_rail(s))
		return reading_without(s, no_rail);
	struct handrail h = handrail_of(s);
	double gap = h.bare.to - h.bare.from;
	const char *side = h.side == ON_THE_RIGHT ? "right side" : "left side";
	if (gap <= 0)
		return reading_shown(reading_of(0, side), "unbroken");
	if (has_guard_by_others(s))
		return reading_by_others();
	double last = h.bare.to - s->stair->job->treads.nosing - TOUCHING;
	return reading_shown(reading_of(gap,
				     arena_printf(s->arena, "%s, from %s to %s", side,
					     survey_place(s, h.bare.from), survey_place(s, last))),
		arena_printf(s->arena, "%s without", survey_say(s, gap)));
}

static struct reading risers_without_rail(const struct survey *s)
{
	struct reading r = reading_of(any_rail(s) ? 0 : s->flight->risers, "the flight");

	if (!any_rail(s) && has_guard_by_others(s))
		return reading_by_others();
	return reading_shown(r,
		any_rail(s) ? sides_words(s)
			    : arena_printf(s->arena, "%d risers, no rail", s->flight->risers));
}

/* ---- how it ends ---- */

static bool counts_ends(const struct part *p)
{
	bool is_return = counts_wall_rails(p) && !counts_rails(p);

	return counts_newels(p) || counts_walls(p) || is_return;
}

/* Does another length of rail meet this one here? */
static bool goes_on(const struct survey *s, const struct placed *p, double x)
{
	struct box3 end = p->box;

	end.low.x = end.high.x = x;
	for (int i = 0; i < s->count; i++) {
		const struct placed *q = &s->pieces[i];
		if (q != p && counts_rails(q->part) && box3_near(end, q->box, TOUCHING))
			return true;
	}
	return false;
}

static bool is_loose(const struct survey *s, const struct placed *p, double x)
{
	if (goes_on(s, p, x))
		return false;
	struct region at = slice_of(p, x);
	struct extreme top = survey_extreme(s, counts_rails, at, vec3(0, 0, 1));
	struct extreme foot = survey_extreme(s, counts_rails, at, vec3(0, 0, -1));
	struct region near = region_box(vec3(x - TOUCHING, p->box.low.y, -foot.value - TOUCHING),
		vec3(x + TOUCHING, p->box.high.y, top.value + TOUCHING));

	return !survey_extreme(s, counts_ends, near, vec3(0, 0, 1)).found;
}

static struct reading loose_rail_ends(const struct survey *s)
{
	const char *at = NULL;
	int loose = 0;

	if (!any_rail(s))
		return reading_without(s, no_rail);
	for (int i = 0; i < 2 * s->count; i++) {
		const struct placed *p = &s->pieces[i / 2];
		double x = i % 2 ? p->box.high.x : p->box.low.x;
		if (!counts_rails(p->part) || !is_loose(s, p, x))
			continue;
		loose++;
		at = arena_printf(s->arena, "%s side, over %s", side_of(s, p), survey_place(s, x));
	}
	return reading_shown(reading_of(loose, at),
		loose ? arena_printf(s->arena, "%d in the air", loose) : "none in the air");
}

/* ---- what would mend it ---- */

static struct mend mend_height(const struct survey *s, struct shortfall f)
{
	double was = f.by > 0 ? f.reading->least : f.reading->most;

	return mend_said(arena_printf(s->arena, "the rail %s %s: height %s",
		survey_say(s, mend_size(s, f, fabs(f.by), 1)), f.by > 0 ? "higher" : "lower",
		survey_say(s, mend_from(s, f, was))));
}

static struct mend mend_guard_height(const struct survey *s, struct shortfall f)
{
	return mend_also_size(s, mend_height(s, f), "rail.height",
		mend_from(s, f, s->stair->job->rail.height));
}

/* What the rail over the open side has to be, which the hand may go up by once the other one is
 * right; 0: it is right as it is. */
static double guard_wanted(const struct survey *s, struct shortfall f)
{
	double was = s->stair->job->rail.height;
	const struct limit *least = &f.row->least, *most = &f.row->most;
	bool any = false;

	for (int i = 0; i < s->count; i++)
		any = any || counts_guard_rails(s->pieces[i].part);
	if (any && limit_given(*least) && was < least->value - NEAR_ENOUGH)
		return mend_size(s, f, least->value, 1);
	if (any && limit_given(*most) && was > most->value + NEAR_ENOUGH)
		return mend_size(s, f, most->value, -1);
	return 0;
}

/* Of the rail that the hand goes up by: on the wall of its side, else over the open one. */
static struct mend mend_rail_height(const struct survey *s, struct shortfall f)
{
	const struct job *job = s->stair->job;
	enum which_side side = handrail_of(s).side;
	struct mend m = mend_height(s, f);

	for (int i = 0; i < s->count; i++)
		if (placed_side(s, &s->pieces[i]) == side && counts_guard_rails(s->pieces[i].part))
			return mend_guard_height(s, f);
	for (int i = 0; i < job->wall_rail_count; i++)
		if (job->wall_rails[i].side == side)
			m = mend_also_size(s, m,
				arena_printf(s->arena, "wall_rails[%d].height", i + 1),
				mend_from(s, f, job->wall_rails[i].height));
	double guard = guard_wanted(s, f);
	if (guard > 0)
		m = mend_also_size(s, m, "rail.height", guard);
	return m;
}

static struct mend mend_gap(const struct survey *s, struct shortfall f)
{
	return mend_said(
		arena_printf(s->arena, "%s more of rail, or a rail on the other side all along",
			survey_say(s, fabs(f.by))));
}

static bool is_walled(const struct job_side *side)
{
	return side->kind == SIDE_WALL;
}

/* On a wall that has none, all along it. */
static struct mend on_a_wall(const struct survey *s, struct mend m, int wanted)
{
	const struct job_stair *stair = &s->stair->job->stair;
	bool right = is_walled(&stair->right) && !has_rail(s, ON_THE_RIGHT);
	bool left = is_walled(&stair->left) && !has_rail(s, ON_THE_LEFT);

	if (s->stair->job->wall_rail_count > 0 || right + left < wanted)
		return m;
	return mend_also(s, m, "wall_rails",
		wanted > 1      ? "[{side: right}, {side: left}]"
			: right ? "[{side: right}]"
				: "[{side: left}]");
}

static struct mend mend_no_rail(const struct survey *s, struct shortfall f)
{
	(void)f;
	return on_a_wall(s,
		mend_said(arena_printf(s->arena, "a rail over %d risers, on a wall or an open side",
			s->flight->risers)),
		1);
}

static struct mend mend_sides(const struct survey *s, struct shortfall f)
{
	return on_a_wall(s,
		mend_said(arena_printf(s->arena, "a rail over %d risers on %s", s->flight->risers,
			f.by > 1 ? "both sides" : "one side more")),
		(int)f.by);
}

/* Where steps beyond the rail lie before a wall that is too low for it: no key puts a newel there.
 */
static bool is_loose_before_top(const struct survey *s)
{
	const struct flight *f = s->flight;
	const struct step *last = &f->steps[f->step_count - 1];

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		bool on_right = placed_side(s, p) == ON_THE_RIGHT;
		if (counts_guard_rails(p->part) &&
			!(on_right ? last->open_right : last->open_left) &&
			is_loose(s, p, p->box.high.x))
			return true;
	}
	return false;
}

static struct mend mend_ends(const struct survey *s, struct shortfall f)
{
	struct mend m =
		mend_said(arena_printf(s->arena, "%d %s returned to the wall or let into a newel",
			(int)fabs(f.by), fabs(f.by) > 1 ? "ends" : "end"));

	if (is_loose_before_top(s))
		return m;
	if (!s->stair->job->newels.bottom)
		m = mend_also(s, m, "newels.bottom", "yes");
	return s->stair->job->newels.top ? m : mend_also(s, m, "newels.top", "yes");
}

const struct gauge gauges_of_rail[] = {
	{ "rail_height", "height of the rail", GAUGE_LENGTH, rail_height, mend_rail_height,
		"rail.height" },
	{ "guard_height", "height of the guard on open sides", GAUGE_LENGTH, guard_height,
		mend_guard_height, "rail.height" },
	{ "rail_sides", "sides with a rail", GAUGE_COUNT, rail_sides, mend_sides, "rail" },
	{ "rail_gap", "flight without a rail", GAUGE_LENGTH, rail_gap, mend_gap, "rail" },
	{ "risers_without_rail", "risers without a rail", GAUGE_COUNT, risers_without_rail,
		mend_no_rail, "rail" },
	{ "loose_rail_ends", "rail ends that end in the air", GAUGE_COUNT, loose_rail_ends,
		mend_ends, "newels" },
	{ 0 },
};
