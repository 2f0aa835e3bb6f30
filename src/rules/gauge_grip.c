/*
 * Can a hand close round the rail?  From the outline of its cross section.
 *
 *              ___________
 *            .'           '.    widest: recess begins under it
 *           (               )
 *            '.           .'
 *              |         |      recess: as deep as the narrower side has it
 *            .'           '.
 *           |_______________|
 */
#include "rules/gauge.h"

#include "parts/outline.h"

/* How far under the widest part the recess has to reach its depth, and that depth: 7/8 in and 5/16
 * in, IRC 2018 R311.7.8.5 type II (read). */
#define RECESS_WITHIN (7 * MM_PER_INCH / 8)
#define RECESS_DEPTH (5 * MM_PER_INCH / 16)

#define LINES 400 /* levels at which a profile is looked at */
#define ROUND_ENOUGH 0.99

/* A section as points: x up, y across. */
struct grip {
	const struct vec *at;
	int n;
};

/* However the part lies in its own axes, in the house its section stands upright. */
static void turn_upright(struct profile *f, struct frame at)
{
	bool lies = fabs(at.w.z) > fabs(at.v.z);
	double sign = (lies ? at.w.z : at.v.z) < 0 ? -1 : 1;

	for (int i = 0; i < f->n; i++)
		f->at[i] = lies ? vec(sign * f->at[i].y, f->at[i].x)
				: vec(sign * f->at[i].x, f->at[i].y);
}

static struct grip grip_of(const struct survey *s)
{
	struct grip g = { .n = 0 };

	for (int i = 0; i < s->count && g.n == 0; i++) {
		const struct part *p = s->pieces[i].part;
		if (!counts_rails(p))
			continue;
		struct outline o = p->section.n > 0
			? p->section
			: outline_box(s->arena, 0, 0, p->size.width, p->size.thickness);
		struct profile f = profile_of(s->arena, o);
		turn_upright(&f, p->places[0]);
		g.at = f.at;
		g.n = f.n;
	}
	return g;
}

static double perimeter_of(const struct grip *g)
{
	double sum = 0;

	for (int i = 0; i < g->n; i++)
		sum += vec_length(vec_sub(g->at[(i + 1) % g->n], g->at[i]));
	return sum;
}

static double area_of(const struct grip *g)
{
	double sum = 0;

	for (int i = 0; i < g->n; i++)
		sum += vec_cross(g->at[i], g->at[(i + 1) % g->n]);
	return fabs(sum) / 2;
}

/* From one point of the section to the farthest other one. */
static double longest_across(const struct grip *g)
{
	double longest = 0;

	for (int i = 0; i < g->n; i++)
		for (int k = i + 1; k < g->n; k++)
			longest = fmax(longest, vec_length(vec_sub(g->at[i], g->at[k])));
	return longest;
}

/* A circle holds the most within its perimeter: 4 pi area = perimeter squared. */
static bool is_round(const struct grip *g)
{
	double p = perimeter_of(g);

	return 4 * PI * area_of(g) > ROUND_ENOUGH * p * p;
}

static const char no_rail[] = "there is no rail";

static struct reading rail_diameter(const struct survey *s)
{
	struct grip g = grip_of(s);

	if (g.n == 0)
		return reading_not_applicable(no_rail);
	return is_round(&g) ? reading_of(longest_across(&g), "the rail's section")
			    : reading_not_applicable("the rail is not round");
}

static struct reading not_round(const struct survey *s, double (*size)(const struct grip *g))
{
	struct grip g = grip_of(s);

	if (g.n == 0)
		return reading_not_applicable(no_rail);
	return is_round(&g) ? reading_not_applicable("the rail is round")
			    : reading_of(size(&g), "the rail's section");
}

static struct reading rail_perimeter(const struct survey *s)
{
	return not_round(s, perimeter_of);
}

static struct reading rail_across(const struct survey *s)
{
	return not_round(s, longest_across);
}

/* ---- the recess of a large rail ---- */

struct span {
	double low, high; /* z of either side at one level; low > high: nothing there */
};

static struct span span_at(const struct grip *g, double y)
{
	struct span s = { INFINITY, -INFINITY };

	for (int i = 0; i < g->n; i++) {
		struct vec p = g->at[i], q = g->at[(i + 1) % g->n];
		if ((p.x - y) * (q.x - y) > 0 || p.x == q.x)
			continue;
		double z = p.y + (q.y - p.y) * (y - p.x) / (q.x - p.x);
		s.low = fmin(s.low, z);
		s.high = fmax(s.high, z);
	}
	return s;
}

/* A section read level by level from its top down. */
struct levels {
	double top, step;
	struct span at[LINES];
	int widest; /* the lowest level of the first part, from the top, that is widest */
};

static bool is_as_wide(const struct levels *l, int i, double width)
{
	return l->at[i].high - l->at[i].low > width - l->step / 10;
}

static struct levels levels_of(const struct grip *g)
{
	struct levels l = { .top = -INFINITY };
	double foot = INFINITY, widest = 0;

	for (int i = 0; i < g->n; i++) {
		l.top = fmax(l.top, g->at[i].x);
		foot = fmin(foot, g->at[i].x);
	}
	l.step = (l.top - foot) / LINES;
	for (int i = 0; i < LINES; i++) {
		l.at[i] = span_at(g, l.top - (i + 0.5) * l.step);
		widest = fmax(widest, l.at[i].high - l.at[i].low);
	}
	while (!is_as_wide(&l, l.widest, widest))
		l.widest++;
	while (l.widest + 1 < LINES && is_as_wide(&l, l.widest + 1, widest))
		l.widest++;
	return l;
}

/* How far both sides have come in at a level from where they are widest. */
static double recess_at(const struct levels *l, int i)
{
	struct span widest = l->at[l->widest], here = l->at[i];

	return fmin(here.low - widest.low, widest.high - here.high);
}

static struct reading of_recess(const struct survey *s, double (*size)(const struct levels *l))
{
	struct grip g = grip_of(s);

	if (g.n == 0)
		return reading_not_applicable(no_rail);
	struct levels l = levels_of(&g);
	return reading_of(size(&l), "the rail's section");
}

static double recess_start(const struct levels *l)
{
	return (l->widest + 0.5) * l->step;
}

static double recess_depth(const struct levels *l)
{
	double deepest = 0;

	for (int i = l->widest; i < LINES && (i - l->widest) * l->step <= RECESS_WITHIN; i++)
		deepest = fmax(deepest, recess_at(l, i));
	return deepest;
}

/* Levels, under the widest, at which the recess has its depth: the first, and the one after. */
static void recess_band(const struct levels *l, int *from, int *to)
{
	*from = l->widest;
	while (*from < LINES && recess_at(l, *from) < RECESS_DEPTH)
		(*from)++;
	*to = *from;
	while (*to < LINES && recess_at(l, *to) >= RECESS_DEPTH)
		(*to)++;
}

static double recess_height(const struct levels *l)
{
	int from, to;

	recess_band(l, &from, &to);
	return (to - from) * l->step;
}

static double recess_reach(const struct levels *l)
{
	int from, to;

	recess_band(l, &from, &to);
	return to > from ? to * l->step : 0;
}

static double width_over_recess(const struct levels *l)
{
	return l->at[l->widest].high - l->at[l->widest].low;
}

static struct reading rail_recess_start(const struct survey *s)
{
	return of_recess(s, recess_start);
}

static struct reading rail_recess_depth(const struct survey *s)
{
	return of_recess(s, recess_depth);
}

static struct reading rail_recess_height(const struct survey *s)
{
	return of_recess(s, recess_height);
}

static struct reading rail_recess_reach(const struct survey *s)
{
	return of_recess(s, recess_reach);
}

static struct reading rail_recess_width(const struct survey *s)
{
	return of_recess(s, width_over_recess);
}

static const char *mend_profile(const struct survey *s, struct shortfall f)
{
	return arena_printf(s->arena, "another profile of rail: %s %s here",
		survey_say(s, fabs(f.by)), f.by > 0 ? "more" : "less");
}

const struct gauge gauges_of_grip[] = {
	{ "rail_diameter", "diameter of a round rail", GAUGE_LENGTH, rail_diameter, mend_profile,
		"rail", "width" },
	{ "rail_perimeter", "perimeter of the rail", GAUGE_LENGTH, rail_perimeter, mend_profile,
		"rail", "width" },
	{ "rail_across", "longest measure across the rail", GAUGE_LENGTH, rail_across, mend_profile,
		"rail", "width" },
	{ "rail_recess_start", "top of the rail to its recesses", GAUGE_LENGTH, rail_recess_start,
		mend_profile, "rail", "width" },
	{ "rail_recess_depth", "depth of the rail's recesses", GAUGE_LENGTH, rail_recess_depth,
		mend_profile, "rail", "width" },
	{ "rail_recess_height", "height of the rail's recesses", GAUGE_LENGTH, rail_recess_height,
		mend_profile, "rail", "width" },
	{ "rail_recess_reach", "top of the rail to the foot of its recesses", GAUGE_LENGTH,
		rail_recess_reach, mend_profile, "rail", "width" },
	{ "rail_recess_width", "width of the rail over its recesses", GAUGE_LENGTH,
		rail_recess_width, mend_profile, "rail", "width" },
	{ 0 },
};
