/*
 * The rail: its height all along, how far it goes, how it ends.
 */
#include "rules/gauge.h"

#include <stdlib.h>

#define SLIVER 0.01  /* thickness of a slice through a rail */
#define TOUCHING 2.0 /* a rail that ends so near to a newel or wall dies into it */

static bool counts_ends(const struct part *p)
{
	return counts_newels(p) || counts_walls(p);
}

static bool is_on_right(const struct survey *s, const struct placed *p)
{
	return p->low.y + p->high.y < s->stair->width;
}

/* ---- height ---- */

/* The slice of a rail at x, as a region. */
static struct region slice_of(const struct placed *p, double x)
{
	x = fmin(fmax(x, p->low.x + SLIVER), p->high.x - SLIVER);
	return region_box(vec3(x - SLIVER, p->low.y, p->low.z - 1),
		vec3(x + SLIVER, p->high.y, p->high.z + 1));
}

/* A raked rail is measured from the line of the nosings even where it runs on past the last of
 * them to its newel; a level one from the floor. */
static double base_of(const struct survey *s, const struct placed *p, double x)
{
	return p->is_raked ? slope_at(s->nosing_line, x) : survey_base(s, x);
}

/* Top of the rail at x over what the foot stands on there. */
static void add_height(const struct survey *s, const struct placed *p, double x, struct reading *r)
{
	struct extreme top = survey_extreme(s, counts_rails, slice_of(p, x), vec3(0, 0, 1));

	if (top.found)
		reading_add(r, top.value - base_of(s, p, top.at.x),
			arena_printf(s->arena, "%s side, over %s",
				survey_side(s, (p->low.y + p->high.y) / 2),
				survey_place(s, top.at.x)));
}

/* The top of a rail is straight between its corners, and so is the line it is measured from
 * between the nosings of the flight's ends: the extremes lie at one of those. */
static void add_heights(const struct survey *s, const struct placed *p, struct reading *r)
{
	double last = -INFINITY;

	add_height(s, p, p->low.x, r);
	for (int i = 0; i < p->face_count; i++)
		for (int k = 0; k < p->faces[i].n; k++) {
			double x = p->faces[i].at[k].x;
			if (fabs(x - last) > 1 && x > p->low.x + 1 && x < p->high.x - 1)
				add_height(s, p, x, r);
			last = x;
		}
	if (p->low.x < s->last_nosing && s->last_nosing < p->high.x)
		add_height(s, p, s->last_nosing, r);
	add_height(s, p, p->high.x, r);
}

static struct reading heights_of(const struct survey *s,
	bool (*is_meant)(const struct survey *s, const struct placed *p), const char *otherwise)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++)
		if (counts_rails(s->pieces[i].part) && is_meant(s, &s->pieces[i]))
			add_heights(s, &s->pieces[i], &r);
	if (r.state != READING_TAKEN)
		return reading_not_applicable(otherwise);
	/* a rail that follows the nosing line is as high everywhere, within what a slice is
	 * thick */
	if (r.most - r.least < 2 * SLIVER) {
		r.least_at = r.most_at = "all along";
		r.least = r.most = (r.least + r.most) / 2;
	}
	return r;
}

static bool any_rail(const struct survey *s, const struct placed *p)
{
	(void)s;
	(void)p;
	return true;
}

static bool is_beside_a_drop(const struct survey *s, const struct placed *p)
{
	const struct job_stair *stair = &s->stair->job->stair;

	return (is_on_right(s, p) ? stair->right.kind : stair->left.kind) == SIDE_OPEN;
}

static struct reading rail_height(const struct survey *s)
{
	return heights_of(s, any_rail, "there is no rail");
}

static struct reading guard_height(const struct survey *s)
{
	return heights_of(s, is_beside_a_drop, "no side is open");
}

/* ---- how far it goes ---- */

struct stretch {
	double from, to;
};

static int by_from(const void *a, const void *b)
{
	double x = ((const struct stretch *)a)->from, y = ((const struct stretch *)b)->from;

	return (x > y) - (x < y);
}

/* Rails and newels of one side as stretches of x, in order. */
static int stretches_of(const struct survey *s, bool on_right, struct stretch *list)
{
	int n = 0;

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		if ((counts_rails(p->part) || counts_newels(p->part)) &&
			is_on_right(s, p) == on_right)
			list[n++] = (struct stretch){ p->low.x, p->high.x };
	}
	qsort(list, (size_t)n, sizeof(*list), by_from);
	return n;
}

/* The longest stretch of the flight, between its first and last riser, without a rail. */
static struct stretch bare_stretch(const struct survey *s, bool on_right)
{
	struct stretch *list = NEW_N(s->arena, struct stretch, s->count + 1), longest = { 0, 0 };
	double end = (s->flight->risers - 1) * s->flight->unit_run, reached = 0;
	int n = stretches_of(s, on_right, list);

	list[n] = (struct stretch){ end, end };
	for (int i = 0; i <= n; i++) {
		double to = fmin(list[i].from, end);
		if (to - reached > longest.to - longest.from)
			longest = (struct stretch){ reached, to };
		reached = fmax(reached, list[i].to);
	}
	return longest;
}

static bool has_rail(const struct survey *s, bool on_right)
{
	for (int i = 0; i < s->count; i++)
		if (counts_rails(s->pieces[i].part) && is_on_right(s, &s->pieces[i]) == on_right)
			return true;
	return false;
}

/* Which sides, going up. */
static const char *sides_words(const struct survey *s)
{
	bool right = has_rail(s, true), left = has_rail(s, false);

	if (right && left)
		return "a rail on both sides";
	return right ? "a rail on the right" : left ? "a rail on the left" : "no rail";
}

static struct reading rail_sides(const struct survey *s)
{
	struct reading r = reading_of(has_rail(s, true) + has_rail(s, false), "the flight");

	return reading_shown(r, sides_words(s));
}

/* On the side where it goes further: one unbroken rail is enough. */
static struct reading rail_gap(const struct survey *s)
{
	struct stretch right = bare_stretch(s, true), left = bare_stretch(s, false), bare = left;
	bool both = has_rail(s, true) && has_rail(s, false), on_right = has_rail(s, true);

	if (!has_rail(s, true) && !has_rail(s, false))
		return reading_not_applicable("there is no rail");
	if (both)
		on_right = right.to - right.from <= left.to - left.from;
	if (on_right)
		bare = right;
	if (bare.to - bare.from <= TOUCHING)
		return reading_shown(reading_of(0, on_right ? "right side" : "left side"),
			"unbroken");
	struct reading r = reading_of(bare.to - bare.from,
		arena_printf(s->arena, "%s side, from %s to %s", on_right ? "right" : "left",
			survey_place(s, bare.from),
			survey_place(s, bare.to - s->stair->job->treads.nosing - TOUCHING)));
	return reading_shown(r,
		arena_printf(s->arena, "%s without", survey_say(s, bare.to - bare.from)));
}

static struct reading risers_without_rail(const struct survey *s)
{
	bool any = has_rail(s, true) || has_rail(s, false);

	struct reading r = reading_of(any ? 0 : s->flight->risers, "the flight");
	return reading_shown(r,
		any ? sides_words(s)
		    : arena_printf(s->arena, "%d risers, no rail", s->flight->risers));
}

/* ---- how it ends ---- */

static bool is_loose(const struct survey *s, const struct placed *p, double x)
{
	struct region at = slice_of(p, x);
	struct extreme top = survey_extreme(s, counts_rails, at, vec3(0, 0, 1));
	struct extreme foot = survey_extreme(s, counts_rails, at, vec3(0, 0, -1));
	struct region near = region_box(vec3(x - TOUCHING, p->low.y, -foot.value),
		vec3(x + TOUCHING, p->high.y, top.value));

	return !survey_extreme(s, counts_ends, near, vec3(0, 0, 1)).found;
}

static struct reading loose_rail_ends(const struct survey *s)
{
	const char *at = NULL;
	int loose = 0, rails = 0;

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		if (!counts_rails(p->part))
			continue;
		rails++;
		for (int end = 0; end < 2; end++) {
			double x = end ? p->high.x : p->low.x;
			if (!is_loose(s, p, x))
				continue;
			loose++;
			at = arena_printf(s->arena, "%s side, over %s",
				survey_side(s, (p->low.y + p->high.y) / 2), survey_place(s, x));
		}
	}
	if (!rails)
		return reading_not_applicable("there is no rail");
	return reading_shown(reading_of(loose, at),
		loose ? arena_printf(s->arena, "%d in the air", loose) : "none in the air");
}

static const char *mend_height(const struct survey *s, struct shortfall f)
{
	return arena_printf(s->arena, "the rail %s %s: height %s", survey_say(s, fabs(f.by)),
		f.by > 0 ? "higher" : "lower", survey_say(s, s->stair->job->rail.height + f.by));
}

static const char *mend_gap(const struct survey *s, struct shortfall f)
{
	return arena_printf(s->arena, "%s more of rail, or a rail on the other side all along",
		survey_say(s, fabs(f.by)));
}

static const char *mend_no_rail(const struct survey *s, struct shortfall f)
{
	(void)f;
	return arena_printf(s->arena, "a rail over %d risers, on a wall or an open side",
		s->flight->risers);
}

static const char *mend_ends(const struct survey *s, struct shortfall f)
{
	return arena_printf(s->arena, "%d %s returned to the wall or let into a newel",
		(int)fabs(f.by), fabs(f.by) > 1 ? "ends" : "end");
}

const struct gauge gauges_of_rail[] = {
	{ "rail_height", "height of the rail", GAUGE_LENGTH, rail_height, mend_height, "rail",
		"height" },
	{ "guard_height", "height of the guard on open sides", GAUGE_LENGTH, guard_height,
		mend_height, "rail", "height" },
	{ "rail_sides", "sides with a rail", GAUGE_COUNT, rail_sides, NULL, "rail", NULL },
	{ "rail_gap", "flight without a rail", GAUGE_LENGTH, rail_gap, mend_gap, "rail", NULL },
	{ "risers_without_rail", "risers without a rail", GAUGE_COUNT, risers_without_rail,
		mend_no_rail, "rail", NULL },
	{ "loose_rail_ends", "rail ends that end in the air", GAUGE_COUNT, loose_rail_ends,
		mend_ends, "newels", NULL },
	{ 0 },
};
