#include "rules/footing.h"

/* Clear of newels and housings. */
static const double shares[FOOTING_ENDS] = { 0.85, 0.5, 0.15 };

const char *const footing_ends[FOOTING_ENDS] = { "left end", "middle", "right end" };

#define COLUMN 1.0     /* half the side of a column of wood that is looked at */
#define BEHIND 60.0    /* a foot lands that far behind the nosing and more */
#define IN_FRONT 300.0 /* so far a nosing is looked for in front of the riser */

double footing_y(const struct survey *s, int end)
{
	return s->stair->width * shares[end];
}

/* Level of surface i as solved: where to look for it. */
static double expected_level(const struct survey *s, int i)
{
	return s->stair->unit_rise * i;
}

static double level_at(const struct survey *s, int i, double x, double y)
{
	double expected = expected_level(s, i), half = s->stair->unit_rise / 2;
	struct region column = region_box(vec3(x - COLUMN, y - COLUMN, expected - half),
		vec3(x + COLUMN, y + COLUMN, expected + half));
	struct extreme top = survey_extreme(s, counts_walking, column, vec3(0, 0, 1));

	return top.found ? top.value : NAN;
}

static double front_at(const struct survey *s, int i, double nosing_x, double y)
{
	double level = expected_level(s, i), half = s->stair->unit_rise / 2;
	struct region slice = region_box(vec3(nosing_x - IN_FRONT, y - COLUMN, level - half),
		vec3(nosing_x + s->flight->unit_run / 2, y + COLUMN, level + half));
	struct extreme front = survey_extreme(s, counts_treads, slice, vec3(-1, 0, 0));

	return front.found ? -front.value : NAN;
}

static struct footing footing_at(const struct survey *s, int i)
{
	struct footing f;
	double nosing_x = s->first_nosing + (i - 1) * s->flight->unit_run;
	double x = i == 0 ? s->first_nosing - BEHIND : nosing_x + BEHIND;

	for (int end = 0; end < FOOTING_ENDS; end++) {
		double y = footing_y(s, end);
		f.level[end] = level_at(s, i, x, y);
		f.front[end] = i == 0 ? NAN : front_at(s, i, nosing_x, y);
	}
	return f;
}

const struct footing *footings_make(const struct survey *s)
{
	struct footing *all = NEW_N(s->arena, struct footing, s->flight->risers + 1);

	for (int i = 0; i <= s->flight->risers; i++)
		all[i] = footing_at(s, i);
	return all;
}
