/*
 * What carries the steps, where a code asks for sizes and not for strength.
 */
#include "rules/mend.h"

static struct reading each_stringer(const struct survey *s, double (*size)(const struct part *p))
{
	struct reading r = reading_none();

	for (int i = 0; i < s->count; i++) {
		const struct part *p = s->pieces[i].part;
		if (p->stringer && !isnan(size(p)))
			reading_add(&r, size(p), arena_printf(s->arena, "stringer %s", p->mark));
	}
	return r;
}

/* Nothing is cut through a housed one. */
static double throat_of(const struct part *p)
{
	return p->stringer->kind == STRINGER_HOUSED ? NAN : p->stringer->throat;
}

static double width_of(const struct part *p)
{
	return p->stringer->plank_width;
}

static double thickness_of(const struct part *p)
{
	return p->size.thickness;
}

static struct reading stringer_throat(const struct survey *s)
{
	struct reading r = each_stringer(s, throat_of);

	return r.state == READING_TAKEN ? r : reading_not_applicable("every stringer is housed");
}

static struct reading stringer_width(const struct survey *s)
{
	return each_stringer(s, width_of);
}

static struct reading stringer_thickness(const struct survey *s)
{
	return each_stringer(s, thickness_of);
}

static struct reading stringer_spacing(const struct survey *s)
{
	return reading_of(job_carriage_spacing(s->stair->job), "across the flight");
}

/* The kinds of stringers that a job has; the wall's serves between two walls, too. */
static struct mend for_each_plank(const struct survey *s, struct mend m, const char *key, double mm)
{
	static const char *const groups[] = { "wall", "open", "middle" };

	for (int i = 0; i < 3; i++)
		m = mend_also_size(s, m, arena_printf(s->arena, "stringers.%s.%s", groups[i], key),
			mm);
	return m;
}

/* As wide as the widest of what the job names, and what is missing. */
static double widest_plank(const struct survey *s)
{
	double widest = 0;

	for (int i = 0; i < s->count; i++)
		if (s->pieces[i].part->stringer)
			widest = fmax(widest, width_of(s->pieces[i].part));
	return widest;
}

static struct mend mend_throat(const struct survey *s, struct shortfall f)
{
	double wide = mend_from(s, f, widest_plank(s));

	return for_each_plank(s,
		mend_said(arena_printf(s->arena, "planks %s wide: %s wider", survey_say(s, wide),
			survey_say(s, f.by))),
		"width", wide);
}

static struct mend mend_width(const struct survey *s, struct shortfall f)
{
	double wide = fmax(mend_size(s, f, f.limit, 1), widest_plank(s));

	return for_each_plank(s,
		mend_said(arena_printf(s->arena, "planks %s wide: %s wider", survey_say(s, wide),
			survey_say(s, f.by))),
		"width", wide);
}

static struct mend mend_thickness(const struct survey *s, struct shortfall f)
{
	double thick = mend_size(s, f, f.limit, 1);

	return for_each_plank(s,
		mend_said(arena_printf(s->arena, "planks %s thick: %s thicker",
			survey_say(s, thick), survey_say(s, f.by))),
		"thickness", thick);
}

/* As many as bring them near enough, across the same width. */
static struct mend mend_spacing(const struct survey *s, struct shortfall f)
{
	int now = job_carriages(s->stair->job);
	double across = job_carriage_spacing(s->stair->job) * (now + 1);
	int n = (int)ceil(across / f.limit - NEAR_ENOUGH) - 1;
	struct mend m = mend_said(arena_printf(s->arena, "%d carriages between the outer two", n));

	return mend_also(s, m, "stringers.middle_count", arena_printf(s->arena, "%d", n));
}

const struct gauge gauges_of_stringers[] = {
	{ "stringer_throat", "wood left under the notches", GAUGE_LENGTH, stringer_throat,
		mend_throat, "stringers.least_throat" },
	{ "stringer_width", "width of the stringers", GAUGE_LENGTH, stringer_width, mend_width,
		"stringers" },
	{ "stringer_thickness", "thickness of the stringers", GAUGE_LENGTH, stringer_thickness,
		mend_thickness, "stringers" },
	{ "stringer_spacing", "stringers, centre to centre", GAUGE_LENGTH, stringer_spacing,
		mend_spacing, "stringers.middle_count" },
	{ 0 },
};
