/*
 * What carries the steps, where a code asks for sizes and not for strength.
 */
#include "rules/gauge.h"

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

static const char *mend_plank(const struct survey *s, struct shortfall f)
{
	return arena_printf(s->arena, "a plank %s wider", survey_say(s, fabs(f.by)));
}

static const char *mend_spacing(const struct survey *s, struct shortfall f)
{
	(void)f;
	return arena_printf(s->arena, "%d carriages between the outer two",
		job_carriages(s->stair->job) + 1);
}

const struct gauge gauges_of_stringers[] = {
	{ "stringer_throat", "wood left under the notches", GAUGE_LENGTH, stringer_throat,
		mend_plank, "stringers", "least_throat" },
	{ "stringer_width", "width of the stringers", GAUGE_LENGTH, stringer_width, mend_plank,
		"stringers", NULL },
	{ "stringer_thickness", "thickness of the stringers", GAUGE_LENGTH, stringer_thickness,
		NULL, "stringers", NULL },
	{ "stringer_spacing", "stringers, centre to centre", GAUGE_LENGTH, stringer_spacing,
		mend_spacing, "stringers", "middle_count" },
	{ 0 },
};
