/*
 * The floors before and after a flight, as far as the job knows them.
 *
 * Sizes of landings are measured on the floor that the job says is clear; a door
 * counts with all that its leaf passes over.
 */
#include "pitchboard/landing.h"
#include "rules/mend.h"

/* Depth in the direction of travel, width across it. */
enum extent { DEPTH, WIDTH, EXTENTS };

static const char *const extent_keys[EXTENTS] = { "depth", "width" };

static const char *const at[LANDINGS] = { "at the foot", "at the head" };

static struct reading size_of(const struct survey *s, enum landing_place place, enum extent extent)
{
	const struct job_landing *l = &s->stair->job->landings.at[place];
	double known = extent == WIDTH ? l->width : l->depth;

	return known > 0 ? reading_of(known, at[place])
			 : reading_not_possible(arena_printf(s->arena,
				   "the %s of the landing %s is not in the job",
				   extent_keys[extent], at[place]));
}

/* Over the width of the flight; shown as what it is, not as what it is over. */
static struct reading over_stair(const struct survey *s, enum landing_place place,
	enum extent extent)
{
	struct reading r = size_of(s, place, extent);
	double size = r.least;

	if (r.state != READING_TAKEN)
		return r;
	return reading_shown(reading_of(size - s->stair->width, at[place]),
		arena_printf(s->arena, "%s, the stair %s", survey_say(s, size),
			survey_say(s, s->stair->width)));
}

static struct reading foot_depth(const struct survey *s)
{
	return size_of(s, LANDING_FOOT, DEPTH);
}

static struct reading head_depth(const struct survey *s)
{
	return size_of(s, LANDING_HEAD, DEPTH);
}

static struct reading foot_depth_over(const struct survey *s)
{
	return over_stair(s, LANDING_FOOT, DEPTH);
}

static struct reading head_depth_over(const struct survey *s)
{
	return over_stair(s, LANDING_HEAD, DEPTH);
}

static struct reading foot_width_over(const struct survey *s)
{
	return over_stair(s, LANDING_FOOT, WIDTH);
}

static struct reading head_width_over(const struct survey *s)
{
	return over_stair(s, LANDING_HEAD, WIDTH);
}

/* ---- doors ---- */

static const char *door_at(const struct survey *s, enum landing_place place,
	const struct job_door *door)
{
	static const char *const walls[] = {
		[LANDING_RIGHT] = "the right-hand wall",
		[LANDING_LEFT] = "the left-hand wall",
		[LANDING_END] = "the end wall",
	};

	return arena_printf(s->arena, "%s, door in %s", at[place], walls[door->wall]);
}

static struct reading nearest_door(const struct survey *s, enum landing_place place)
{
	const struct job_landing *l = &s->stair->job->landings.at[place];
	struct reading r = reading_none();

	if (!node_has(l->src, "doors"))
		return reading_not_possible(place == LANDING_FOOT
				? "whether a door opens at the foot is not in the job"
				: "whether a door opens at the head is not in the job");
	for (int i = 0; i < l->door_count; i++) {
		double clear = door_clear(s->stair, place, &l->doors[i]);
		if (clear < INFINITY)
			reading_add(&r, clear, door_at(s, place, &l->doors[i]));
	}
	if (r.state != READING_TAKEN)
		return reading_not_applicable("no door opens towards the stair there");
	if (r.least < 0)
		r.shown = arena_printf(s->arena, "%s over the stair", survey_say(s, -r.least));
	return r;
}

static struct reading foot_door(const struct survey *s)
{
	return nearest_door(s, LANDING_FOOT);
}

static struct reading head_door(const struct survey *s)
{
	return nearest_door(s, LANDING_HEAD);
}

static const char *const keys[LANDINGS] = { "landings.foot", "landings.head" };

static struct mend larger(const struct survey *s, struct shortfall f, enum landing_place place,
	enum extent extent)
{
	double was = size_of(s, place, extent).least;
	struct mend m = mend_said(arena_printf(s->arena, "%s more clear floor %s",
		survey_say(s, mend_size(s, f, f.by, 1)), at[place]));

	return mend_also_size(s, m,
		arena_printf(s->arena, "%s.%s", keys[place], extent_keys[extent]),
		mend_from(s, f, was));
}

static struct mend mend_foot_depth(const struct survey *s, struct shortfall f)
{
	return larger(s, f, LANDING_FOOT, DEPTH);
}

static struct mend mend_head_depth(const struct survey *s, struct shortfall f)
{
	return larger(s, f, LANDING_HEAD, DEPTH);
}

static struct mend mend_foot_width(const struct survey *s, struct shortfall f)
{
	return larger(s, f, LANDING_FOOT, WIDTH);
}

static struct mend mend_head_width(const struct survey *s, struct shortfall f)
{
	return larger(s, f, LANDING_HEAD, WIDTH);
}

/* Every door that comes too near opens the other way. */
static struct mend doors_out(const struct survey *s, struct shortfall f, enum landing_place place)
{
	const struct job_landing *l = &s->stair->job->landings.at[place];
	struct mend m = mend_said(arena_printf(s->arena,
		"the door opening out of the landing, or %s further from the stair",
		survey_say(s, mend_size(s, f, f.by, 1))));

	for (int i = 0; i < l->door_count; i++)
		if (door_clear(s->stair, place, &l->doors[i]) < f.limit)
			m = mend_also(s, m,
				arena_printf(s->arena, "%s.doors[%d].opens", keys[place], i + 1),
				"out");
	return m;
}

static struct mend mend_foot_door(const struct survey *s, struct shortfall f)
{
	return doors_out(s, f, LANDING_FOOT);
}

static struct mend mend_head_door(const struct survey *s, struct shortfall f)
{
	return doors_out(s, f, LANDING_HEAD);
}

static struct reading landing_on_the_way(const struct survey *s)
{
	(void)s;
	return reading_not_applicable("there is no landing between the floors");
}

const struct gauge gauges_of_landings[] = {
	{ "foot_depth", "landing at the foot, in the direction of travel", GAUGE_LENGTH, foot_depth,
		mend_foot_depth, "landings.foot" },
	{ "head_depth", "landing at the head, in the direction of travel", GAUGE_LENGTH, head_depth,
		mend_head_depth, "landings.head" },
	{ "foot_depth_over", "depth of the landing at the foot", GAUGE_LENGTH, foot_depth_over,
		mend_foot_depth, "landings.foot" },
	{ "head_depth_over", "depth of the landing at the head", GAUGE_LENGTH, head_depth_over,
		mend_head_depth, "landings.head" },
	{ "foot_width_over", "landing at the foot, across", GAUGE_LENGTH, foot_width_over,
		mend_foot_width, "landings.foot" },
	{ "head_width_over", "landing at the head, across", GAUGE_LENGTH, head_width_over,
		mend_head_width, "landings.head" },
	{ "foot_door", "clear floor to a door's swing at the foot", GAUGE_LENGTH, foot_door,
		mend_foot_door, "landings.foot" },
	{ "head_door", "clear floor to a door's swing at the head", GAUGE_LENGTH, head_door,
		mend_head_door, "landings.head" },
	{ "landing_between", "landing between two flights", GAUGE_LENGTH, landing_on_the_way, NULL,
		"stair" },
	{ 0 },
};
