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
#include <stdlib.h>

#include "parts/outline.h"
#include "rules/gauge.h"

/* How far under the widest part the recess has to reach its depth, and that depth: 7/8 in and 5/16
 * in, IRC 2018 R311.7.8.5 type II (read). */
#define RECESS_WITHIN (7 * MM_PER_INCH / 8)
#define RECESS_DEPTH (5 * MM_PER_INCH / 16)

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

/* Where the section is cut at one level: z of either side. */
struct span {
	double low, high;
};

/* Just above a level, or just under it: at a level corner the two differ. */
static struct span span_at(const struct grip *g, double x)
{
	struct span s = { INFINITY, -INFINITY };

	for (int i = 0; i < g->n; i++) {
		struct vec p = g->at[i], q = g->at[(i + 1) % g->n];
		if ((p.x < x) == (q.x < x))
			continue;
		double z = p.y + (q.y - p.y) * (x - p.x) / (q.x - p.x);
		s.low = fmin(s.low, z);
		s.high = fmax(s.high, z);
	}
	return s;
}

#define JUST 1e-7

/* One level of a section: its depth under the top, and the sides there. */
struct level {
	double down;
	struct span at;
};

/* A section from its top down: just under every corner, and just above the next.  Between two
 * levels its sides are straight. */
struct levels {
	const struct level *at;
	int n;
	int widest; /* the lowest of the first ones, from the top, that are widest */
};

static double width_of(const struct level *l)
{
	return l->at.high - l->at.low;
}

static int by_height(const void *a, const void *b)
{
	double x = ((const struct vec *)a)->x, y = ((const struct vec *)b)->x;

	return (x < y) - (x > y);
}

static struct levels levels_read(const struct survey *s, const struct grip *g)
{
	struct vec *corners = NEW_N(s->arena, struct vec, g->n);
	struct level *at = NEW_N(s->arena, struct level, 2 * g->n);
	struct levels l = { .at = at };

	for (int i = 0; i < g->n; i++)
		corners[i] = g->at[i];
	qsort(corners, (size_t)g->n, sizeof(*corners), by_height);
	for (int i = 0; i + 1 < g->n; i++) {
		double top = corners[i].x - JUST, foot = corners[i + 1].x + JUST;
		if (top <= foot)
			continue;
		at[l.n++] = (struct level){ corners[0].x - top, span_at(g, top) };
		at[l.n++] = (struct level){ corners[0].x - foot, span_at(g, foot) };
	}
	return l;
}

/* Corners of a round are this much off it. */
#define AS_WIDE 1e-4

static struct levels levels_of(const struct survey *s, const struct grip *g)
{
	struct levels l = levels_read(s, g);
	double widest = 0;

	for (int i = 0; i < l.n; i++)
		widest = fmax(widest, width_of(&l.at[i]));
	while (width_of(&l.at[l.widest]) < widest - AS_WIDE)
		l.widest++;
	while (l.widest + 1 < l.n && width_of(&l.at[l.widest + 1]) >= widest - AS_WIDE)
		l.widest++;
	return l;
}

/* How far both sides have come in at a level from where they are widest. */
static double recess_at(const struct levels *l, int i)
{
	struct span widest = l->at[l->widest].at, here = l->at[i].at;

	return fmin(here.low - widest.low, widest.high - here.high);
}

static struct reading of_recess(const struct survey *s, double (*size)(const struct levels *l))
{
	struct grip g = grip_of(s);

	if (g.n == 0)
		return reading_not_applicable(no_rail);
	struct levels l = levels_of(s, &g);
	return reading_of(size(&l), "the rail's section");
}

static double recess_start(const struct levels *l)
{
	return l->at[l->widest].down;
}

/* At a depth between two levels, the recess as it runs straight from one to the other. */
static double recess_between(const struct levels *l, int i, double down)
{
	double a = l->at[i].down, b = l->at[i + 1].down;
	double share = b - a > JUST ? (down - a) / (b - a) : 0;

	return recess_at(l, i) + share * (recess_at(l, i + 1) - recess_at(l, i));
}

static double recess_depth(const struct levels *l)
{
	double deepest = 0, within = recess_start(l) + RECESS_WITHIN;

	for (int i = l->widest; i < l->n; i++) {
		if (l->at[i].down > within) {
			deepest = fmax(deepest, recess_between(l, i - 1, within));
			break;
		}
		deepest = fmax(deepest, recess_at(l, i));
	}
	return deepest;
}

/* The stretch, under the widest part, over which the recess keeps its depth: from, to, as depths
 * under the top. */
struct band {
	double from, to;
};

/* Between two levels, where the recess comes to its depth or leaves it. */
static double crossing(const struct levels *l, int i)
{
	double a = recess_at(l, i), b = recess_at(l, i + 1);

	return l->at[i].down + (l->at[i + 1].down - l->at[i].down) * (RECESS_DEPTH - a) / (b - a);
}

static bool is_deep(const struct levels *l, int i)
{
	return recess_at(l, i) >= RECESS_DEPTH - NEAR_ENOUGH;
}

static struct band recess_band(const struct levels *l)
{
	int i = l->widest;

	while (i < l->n && !is_deep(l, i))
		i++;
	if (i == l->n)
		return (struct band){ 0, 0 };
	double from = i > 0 && !is_deep(l, i - 1) ? crossing(l, i - 1) : l->at[i].down;
	while (i + 1 < l->n && is_deep(l, i + 1))
		i++;
	return (struct band){ from, i + 1 < l->n ? crossing(l, i) : l->at[i].down };
}

static double recess_height(const struct levels *l)
{
	struct band b = recess_band(l);

	return b.to - b.from;
}

static double recess_reach(const struct levels *l)
{
	return recess_band(l).to;
}

static double width_over_recess(const struct levels *l)
{
	return width_of(&l->at[l->widest]);
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
