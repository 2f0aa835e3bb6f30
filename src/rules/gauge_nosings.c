/*
 * The front edge of treads, and what is under it.
 */
#include "rules/footing.h"
#include "rules/mend.h"

#include <string.h>

#define LEAST_BAR 10.0   /* a thinner one is none */
#define THINNEST_BAR 6.0 /* the least of its key, and what a yard planes down to */
#define COLUMN 1.0       /* half the side of a column of wood that is looked at */

static bool risers_are_open(const struct survey *s)
{
	return s->stair->job->risers.kind == RISER_OPEN;
}

static double tread_thickness_of(const struct survey *s)
{
	return s->stair->job->treads.thickness;
}

/* Face of riser i, between the tread below and the one above it. */
static double riser_front(const struct survey *s, int i, double y)
{
	double top = s->stair->unit_rise * i - tread_thickness_of(s);
	double foot = s->stair->unit_rise * (i - 1);
	double x = (i - 1) * s->flight->unit_run, reach = s->flight->unit_run / 2;
	struct region slice =
		region_box(vec3(x - reach, y - COLUMN, foot), vec3(x + reach, y + COLUMN, top));
	struct extreme face = survey_extreme(s, counts_risers, slice, vec3(-1, 0, 0));

	return face.found ? -face.value : NAN;
}

static struct reading nosing_projection(const struct survey *s)
{
	const struct footing *f = footings_make(s);
	struct reading r = reading_none();

	if (risers_are_open(s))
		return reading_not_applicable("the risers are open");
	for (int i = 1; i <= s->flight->risers; i++)
		for (int end = 0; end < FOOTING_ENDS; end++) {
			double face = riser_front(s, i, footing_y(s, end));
			if (!isnan(face) && !isnan(f[i].front[end]))
				reading_add(&r, face - f[i].front[end],
					arena_printf(s->arena, "riser %d, %s", i,
						footing_ends[end]));
		}
	if (r.state == READING_TAKEN && r.most - r.least < NEAR_ENOUGH)
		r.least_at = r.most_at = "every nosing";
	return r;
}

static struct reading nosing_difference(const struct survey *s)
{
	struct reading r = nosing_projection(s);

	return r.state == READING_TAKEN ? reading_of(r.most - r.least, r.most_at) : r;
}

static bool edges_are_bevelled(const struct survey *s)
{
	return s->stair->job->treads.nosing_profile == NOSING_CHAMFER;
}

static struct reading nosing_radius(const struct survey *s)
{
	struct reading r = reading_none();

	if (edges_are_bevelled(s))
		return reading_not_applicable("the edges are bevelled");
	for (int i = 0; i < s->count; i++)
		for (const struct feature *f = s->pieces[i].part->features; f; f = f->next)
			if (f->kind == FEATURE_ROUND && counts_treads(s->pieces[i].part))
				reading_add(&r, f->radius, s->pieces[i].part->name);
	return r.state == READING_TAKEN ? r : reading_of(0, "every nosing");
}

/* Along either face. */
static struct reading nosing_bevel(const struct survey *s)
{
	struct reading r = reading_none();

	if (!edges_are_bevelled(s))
		return reading_not_applicable("the edges are not bevelled");
	for (int i = 0; i < s->count; i++)
		for (const struct feature *f = s->pieces[i].part->features; f; f = f->next)
			if (f->kind == FEATURE_CHAMFER && counts_treads(s->pieces[i].part))
				reading_add(&r, f->depth, s->pieces[i].part->name);
	return r;
}

/* A riser stands on edge; the block that it goes round at a starting step lies flat, and the edges
 * that it shows are square to its face. */
static double lean_of(struct frame place)
{
	double from_plumb = asin(fmin(1, fabs(place.w.z)));

	return fmin(from_plumb, PI / 2 - from_plumb);
}

/* The angle of a riser from plumb. */
static struct reading riser_slope(const struct survey *s)
{
	struct reading r = reading_none();

	if (risers_are_open(s))
		return reading_not_applicable("the risers are open");
	for (int i = 0; i < s->count; i++)
		if (counts_risers(s->pieces[i].part))
			for (int k = 0; k < s->pieces[i].part->count; k++)
				reading_add(&r, lean_of(s->pieces[i].part->places[k]),
					"every riser");
	return r;
}

/* The ball that goes through between two treads: as high as the opening is under
 * its bar, for it is wider. */
static struct reading riser_opening(const struct survey *s)
{
	const struct footing *f = footings_make(s);
	struct reading r = reading_none();

	if (!risers_are_open(s))
		return reading_not_applicable("the risers are closed");
	for (int i = 1; i <= s->flight->risers; i++)
		for (int end = 0; end < FOOTING_ENDS; end++) {
			double gap = f[i].level[end] - tread_thickness_of(s) -
				s->stair->job->risers.bar - f[i - 1].level[end];
			if (!isnan(gap))
				reading_add(&r, gap, arena_printf(s->arena, "under step %d", i));
		}
	return r;
}

/* How far each tread reaches, on plan, under the one above it. */
static struct reading tread_overlap(const struct survey *s)
{
	const struct footing *f = footings_make(s);
	struct reading r = reading_none();

	for (int i = 1; i < s->flight->risers; i++) {
		double y = footing_y(s, 1), level = s->stair->unit_rise * i;
		double x = s->first_nosing + (i - 1) * s->flight->unit_run;
		struct region slice = region_box(vec3(x, y - COLUMN, level - COLUMN),
			vec3(x + 2 * s->flight->unit_run, y + COLUMN, level + COLUMN));
		struct extreme back = survey_extreme(s, counts_treads, slice, vec3(1, 0, 0));
		if (back.found && !isnan(f[i + 1].front[1]))
			reading_add(&r, back.value - f[i + 1].front[1],
				arena_printf(s->arena, "step %d", i));
	}
	if (r.state == READING_TAKEN && r.most - r.least < NEAR_ENOUGH)
		r.least_at = r.most_at = "every step";
	return r;
}

static struct reading open_risers(const struct survey *s)
{
	bool open = risers_are_open(s);

	return reading_shown(reading_of(open ? 1 : 0, "the flight"),
		open ? "the risers are open" : "the risers are closed");
}

static struct reading tread_thickness(const struct survey *s)
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++)
		if (s->pieces[i].part->kind == &part_tread)
			reading_add(&r, s->pieces[i].box.high.z - s->pieces[i].box.low.z,
				"every tread");
	return r;
}

static struct mend mend_projection(const struct survey *s, struct shortfall f)
{
	double nosing = mend_from(s, f, s->stair->job->treads.nosing);

	if (mend_is_for_one_step(f))
		return mend_one_step(s, f);
	struct mend m = mend_said(arena_printf(s->arena, "a nosing of %s: %s %s",
		survey_say(s, nosing), survey_say(s, fabs(f.by)), f.by > 0 ? "more" : "less"));

	return mend_also_size(s, m, "treads.nosing", nosing);
}

/* A landing nosing no thicker than the finish can be rounded by half of that. */
static double thinnest_round(const struct survey *s)
{
	double least = INFINITY;

	for (int i = 0; i < s->count; i++) {
		const struct part *p = s->pieces[i].part;
		for (const struct feature *f = p->features; f; f = f->next)
			if (f->kind == FEATURE_ROUND && counts_treads(p))
				least = fmin(least, p->size.thickness);
	}
	return least;
}

/* A full round has half the tread's thickness, and no other. */
static struct mend mend_radius(const struct survey *s, struct shortfall f)
{
	double radius = mend_size(s, f, f.limit, f.by > 0 ? 1 : -1);
	bool is_full = s->stair->job->treads.nosing_profile == NOSING_FULL_ROUND;
	struct mend m =
		mend_said(arena_printf(s->arena, "edges rounded to %s", survey_say(s, radius)));

	if (radius > thinnest_round(s) / 2)
		return m;
	if (is_full)
		m = mend_also(s, m, "treads.nosing_profile", "eased");
	return mend_also_size(s, m, "treads.nosing_radius", radius);
}

static struct mend mend_bevel(const struct survey *s, struct shortfall f)
{
	double bevel = mend_size(s, f, f.limit, f.by > 0 ? 1 : -1);

	return mend_also_size(s,
		mend_said(arena_printf(s->arena, "edges bevelled by %s", survey_say(s, bevel))),
		"treads.nosing_chamfer", bevel);
}

static struct mend mend_thickness(const struct survey *s, struct shortfall f)
{
	double thickness = mend_from(s, f, s->stair->job->treads.thickness);
	struct mend m =
		mend_said(arena_printf(s->arena, "treads %s thick", survey_say(s, thickness)));

	return mend_also_size(s, m, "treads.thickness", thickness);
}

/* In from the edge, where the underside of a nosing is flat, or a little further. */
static double rounded_under(const struct job_treads *t)
{
	switch (t->nosing_profile) {
	case NOSING_EASED:
	case NOSING_FULL_ROUND: return t->nosing_radius;
	case NOSING_HALF_ROUND: return 0;
	case NOSING_CHAMFER: return t->nosing_chamfer + t->nosing_radius / 2;
	}
	return 0;
}

/* Where the program chooses the risers, it would weigh them anew over a longer nosing: the bar is
 * as deep as those that are drawn ask. */
static struct mend mend_keeping_risers(const struct survey *s, struct mend m)
{
	if (s->stair->job->stair.segments[0].risers > 0)
		return m;
	return mend_also(s, m, "stair.segments[1].risers",
		arena_printf(s->arena, "%d", s->flight->risers));
}

/* A bar stands under the flat of the nosing: as thin as that asks, or the nosing as long. */
static struct mend mend_bar_thickness(const struct survey *s, struct shortfall f, struct mend m)
{
	const struct job *job = s->stair->job;
	double under = rounded_under(&job->treads), room = job->treads.nosing - under;

	if (job->risers.bar_thickness <= room)
		return m;
	if (room >= THINNEST_BAR)
		return mend_also_size(s, m, "risers.bar_thickness", mend_size(s, f, room, -1));
	m = mend_also_size(s, m, "treads.nosing",
		mend_size(s, f, under + job->risers.bar_thickness, 1));
	return mend_keeping_risers(s, m);
}

static struct mend mend_opening(const struct survey *s, struct shortfall f)
{
	double was = s->stair->job->risers.bar;
	double bar = mend_size(s, f, fmax(was - f.by, LEAST_BAR), 1);
	struct mend m = mend_said(
		arena_printf(s->arena, "a bar %s deep under each tread takes %s off the gap",
			survey_say(s, bar), survey_say(s, bar - was)));

	return mend_bar_thickness(s, f, mend_also_size(s, m, "risers.bar", bar));
}

const struct gauge gauges_of_nosings[] = {
	{ "nosing_projection", "nosing projection", GAUGE_LENGTH, nosing_projection,
		mend_projection, "treads.nosing" },
	{ "nosing_difference", "largest difference of nosings", GAUGE_LENGTH, nosing_difference,
		NULL, "treads.nosing" },
	{ "nosing_radius", "radius of the nosing's edge", GAUGE_LENGTH, nosing_radius, mend_radius,
		"treads.nosing_radius" },
	{ "nosing_bevel", "bevel of the nosing\'s edge", GAUGE_LENGTH, nosing_bevel, mend_bevel,
		"treads.nosing_chamfer" },
	{ "riser_slope", "slope of risers from plumb", GAUGE_ANGLE, riser_slope, NULL,
		"risers.kind" },
	{ "riser_opening", "ball between two treads", GAUGE_LENGTH, riser_opening, mend_opening,
		"risers.kind" },
	{ "tread_overlap", "overlap of treads on plan", GAUGE_LENGTH, tread_overlap,
		mend_projection, "treads.nosing" },
	{ "open_risers", "open risers", GAUGE_COUNT, open_risers, NULL, "risers.kind" },
	{ "tread_thickness", "thickness of treads", GAUGE_LENGTH, tread_thickness, mend_thickness,
		"treads.thickness" },
	{ 0 },
};
