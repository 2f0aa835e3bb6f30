/*
 * Headroom: plumb from the nosing line, and from the floors before and after
 * it, to the lowest point of what is overhead.
 */
#include <string.h>

#include "rules/mend.h"

#define LANDING 914.4     /* 36 in of floor in front of the first riser */
#define LEAST_FLOOR 150.0 /* no floor carries that is thinner */
#define INSET 1.0         /* what only touches the side of the stair is not over it */

static struct region over_stair(const struct survey *s, double x0, double x1)
{
	return region_box(vec3(x0, INSET, 0), vec3(x1, s->stair->width - INSET, INFINITY));
}

static void add_overhead(const struct survey *s, struct reading *r, struct extreme e, double under)
{
	if (e.found)
		reading_add(r, under,
			arena_printf(s->arena, "under the %s, over %s", e.part->name,
				survey_place(s, e.at.x)));
}

static void add_upper_ceiling(const struct survey *s, struct reading *r)
{
	double ceiling = s->stair->job->opening.upper_ceiling_height;

	if (ceiling > 0)
		reading_add(r, ceiling, "under the upper ceiling, over the upper floor");
}

static struct reading overhead(const struct survey *s, double sloped_from)
{
	struct vec3 plumb = survey_over_nosings(s);
	struct region flight = over_stair(s, sloped_from, s->last_nosing);
	struct region floor = over_stair(s, s->first_nosing - LANDING, sloped_from);
	struct reading r = reading_none();

	if (s->stair->job->opening.length <= 0)
		return reading_not_possible("the job gives no opening in the upper floor");
	flight = region_between(flight, plumb, s->nosing_line.z0, INFINITY);
	struct extreme e = survey_extreme(s, counts_overhead, flight, vec3_scale(plumb, -1));
	add_overhead(s, &r, e, e.at.z - slope_at(s->nosing_line, e.at.x));
	e = survey_extreme(s, counts_overhead, floor, vec3(0, 0, -1));
	add_overhead(s, &r, e, e.at.z);
	add_upper_ceiling(s, &r);
	if (r.state != READING_TAKEN)
		r.why = "there is nothing overhead in the model";
	return r;
}

static struct reading headroom(const struct survey *s)
{
	return overhead(s, s->first_nosing);
}

/* The nosing line goes on, one tread beyond the first riser, to the floor. */
static struct reading headroom_to_floor(const struct survey *s)
{
	return overhead(s, fmax(s->first_nosing - s->flight->unit_run, -LANDING));
}

static struct mend mend_floor(const struct survey *s, double thinner)
{
	const struct job_opening *o = &s->stair->job->opening;
	struct mend m = mend_said(arena_printf(s->arena, "a floor %s thinner, or so much more rise",
		survey_say(s, thinner)));

	if (s->stair->floor_depth - thinner < LEAST_FLOOR)
		return m;
	if (o->floor_thickness > 0)
		m = mend_also_size(s, m, "opening.floor_thickness", o->floor_thickness - thinner);
	if (o->ceiling_height > 0)
		m = mend_also_size(s, m, "opening.ceiling_height", o->ceiling_height + thinner);
	return m;
}

static bool upper_ceiling_is_low(const struct survey *s, struct shortfall f)
{
	double ceiling = s->stair->job->opening.upper_ceiling_height;

	return ceiling > 0 && ceiling < f.limit - NEAR_ENOUGH;
}

/* It may be too low beside what is worse. */
static struct mend and_upper_ceiling(const struct survey *s, struct shortfall f, struct mend m)
{
	double ceiling = s->stair->job->opening.upper_ceiling_height;

	if (!upper_ceiling_is_low(s, f))
		return m;
	m.words = arena_printf(s->arena, "%s%sthe upper ceiling %s higher", m.words,
		*m.words ? "; and " : "", survey_say(s, mend_size(s, f, f.limit - ceiling, 1)));
	return mend_also_size(s, m, "opening.upper_ceiling_height", mend_size(s, f, f.limit, 1));
}

/* Under the upper ceiling, and where the whole ceiling hangs too low, no opening helps. */
static struct mend mend_headroom(const struct survey *s, struct shortfall f)
{
	const struct job_opening *o = &s->stair->job->opening;
	double thinner = mend_size(s, f, f.by, 1), depth = s->stair->floor_depth;
	double along = mend_size(s, f, f.by * s->flight->unit_run / s->stair->unit_rise, 1);

	if (upper_ceiling_is_low(s, f) && strstr(f.reading->least_at, "upper ceiling"))
		return and_upper_ceiling(s, f, mend_said(""));
	if (depth > 0 && s->top - depth < f.limit - NEAR_ENOUGH)
		return and_upper_ceiling(s, f, mend_floor(s, thinner));
	return and_upper_ceiling(s, f,
		mend_also_size(s,
			mend_said(arena_printf(s->arena,
				"the edge of the opening %s further towards the foot of the "
				"stair, or a floor %s thinner",
				survey_say(s, along), survey_say(s, thinner))),
			"opening.length", mend_size(s, f, o->length + along, 1)));
}

const struct gauge gauges_of_headroom[] = {
	{ "headroom", "headroom", GAUGE_LENGTH, headroom, mend_headroom, "opening.length" },
	{ "headroom_to_floor", "headroom", GAUGE_LENGTH, headroom_to_floor, mend_headroom,
		"opening.length" },
	{ 0 },
};
