#include "random/invariants.h"

#include <stdlib.h>
#include <string.h>

#include "random/balls.h"
#include "random/boards.h"
#include "random/joints.h"
#include "random/mouldings.h"
#include "random/outlines.h"
#include "random/overlap.h"

#define OVERLAP_ALLOWED 0.01

static bool is_named(const struct part *p, const char *name)
{
	return strcmp(p->name, name) == 0;
}

/* Box round one placed part. */
struct extent {
	struct vec3 low, high;
};

static void stretch(struct extent *e, struct vec3 p)
{
	e->low = vec3(fmin(e->low.x, p.x), fmin(e->low.y, p.y), fmin(e->low.z, p.z));
	e->high = vec3(fmax(e->high.x, p.x), fmax(e->high.y, p.y), fmax(e->high.z, p.z));
}

static struct extent extent_of(const struct part *p, int place)
{
	struct extent e = { { INFINITY, INFINITY, INFINITY }, { -INFINITY, -INFINITY, -INFINITY } };
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			stretch(&e, frame_place(p->places[place], s->a[i]));
			stretch(&e, frame_place(p->places[place], s->b[i]));
		}
	return e;
}

static int by_size(const void *one, const void *other)
{
	double a = *(const double *)one, b = *(const double *)other;
	return (a > b) - (a < b);
}

/* Levels of all walked-on surfaces, from the lower floor to the upper, ascending. */
static double *levels(struct arena *a, const struct stair *s, const struct part *parts, int *n)
{
	double *z = NEW_N(a, double, s->treads + 2);
	*n = 0;
	z[(*n)++] = 0;
	for (const struct part *p = parts; p; p = p->next) {
		if (!is_named(p, "tread body") && !is_named(p, "landing nosing") &&
			!is_named(p, "starting tread"))
			continue;
		for (int i = 0; i < p->count && *n < s->treads + 2; i++)
			z[(*n)++] = extent_of(p, i).high.z;
	}
	qsort(z, (size_t)*n, sizeof(*z), by_size);
	return z;
}

static const char *rises_equal(struct arena *a, const struct stair *s, const struct part *parts)
{
	int n;
	double *z = levels(a, s, parts, &n);
	if (n != s->risers + 1)
		return arena_printf(a, "%d levels for %d risers", n, s->risers);
	for (int i = 1; i < n; i++)
		if (fabs(z[i] - z[i - 1] - s->total_rise / s->risers) > 1e-6)
			return arena_printf(a, "rise %d is %.6f, not %.6f", i, z[i] - z[i - 1],
				s->total_rise / s->risers);
	if (fabs(z[n - 1] - s->total_rise) > 1e-6)
		return arena_printf(a, "they add up to %.6f, not %.6f", z[n - 1], s->total_rise);
	return NULL;
}

static bool carries_front(const struct part *p)
{
	return is_named(p, "tread front strip") || is_named(p, "starting tread");
}

/* Fronts of all front strips stand one unit run apart. */
static const char *runs_equal(struct arena *a, const struct stair *s, const struct part *parts)
{
	double *x = NEW_N(a, double, s->treads);
	int n = 0;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; carries_front(p) && i < p->count; i++)
			if (n < s->treads)
				x[n++] = extent_of(p, i).low.x;
	qsort(x, (size_t)n, sizeof(*x), by_size);
	if (n != s->treads)
		return arena_printf(a, "%d front strips for %d treads", n, s->treads);
	for (int i = 1; i < n; i++)
		if (fabs(x[i] - x[i - 1] - s->flights[0].unit_run) > 1e-6)
			return arena_printf(a, "run %d is %.6f", i, x[i] - x[i - 1]);
	return NULL;
}

static bool in_line(struct extent a, struct extent b)
{
	return fmin(a.high.y, b.high.y) - fmax(a.low.y, b.low.y) > 1;
}

/* Clear distances: between balusters, and from them to the ends of their rail. */
struct clear_limits {
	double between, at_ends;
};

/* Along one rail, the balusters' fronts and backs between its two ends. */
static const char *gaps_along(struct arena *a, const struct part *parts, struct extent rail,
	struct clear_limits limits)
{
	double *x = NEW_N(a, double, 4000);
	int n = 0;
	x[n++] = rail.low.x;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; is_named(p, "baluster") && i < p->count; i++) {
			struct extent e = extent_of(p, i);
			if (!in_line(e, rail) || n > 3990)
				continue;
			x[n++] = e.low.x;
			x[n++] = e.high.x;
		}
	x[n++] = rail.high.x;
	qsort(x, (size_t)n, sizeof(*x), by_size);
	for (int i = 1; i < n; i += 2) {
		double limit = i == 1 || i == n - 1 ? limits.at_ends : limits.between;
		if (x[i] - x[i - 1] > limit + 1e-6)
			return arena_printf(a, "a gap of %.3f at x %.3f, limit %.3f",
				x[i] - x[i - 1], x[i - 1], limit);
	}
	return NULL;
}

/* Steps that carry the balusters of a rail: the open ones of its side; the edge of a housed
 * stringer goes on past them. */
static int carrying(const struct stair *s, struct extent rail)
{
	const struct job_stair *stair = &s->job->stair;
	bool on_right = rail.low.y + rail.high.y < stair->width;
	int to = on_right ? stair->right.to_step : stair->left.to_step;
	if (to <= 0)
		to = s->treads;
	return s->job->stringers.open.kind == STRINGER_HOUSED ? to + 1 : to;
}

/* With so many to a tread, the first on each in line with the face of its riser. */
static double largest_of(const struct stair *s, struct extent rail, int per_tread)
{
	double pitch = s->flights[0].unit_run / per_tread, thick = s->job->balusters.section;
	double before = rail.low.x, most = 0;
	for (int i = 0; i < carrying(s, rail) * per_tread; i++) {
		double front = i * pitch;
		if (front < rail.low.x - 1e-6 || front + thick > rail.high.x + 1e-6)
			continue;
		most = fmax(most, front - before);
		before = front + thick;
	}
	return fmax(most, rail.high.x - before);
}

/* Where a rail ends is not for balusters to say: beside it no number of them that fits may do. */
static double least_possible(const struct stair *s, struct extent rail)
{
	double least = INFINITY, run = s->flights[0].unit_run;
	double room = s->job->balusters.section + s->job->treads.nosing;
	for (int n = 1; n <= 12; n++)
		if (n == 1 || room <= run / n)
			least = fmin(least, largest_of(s, rail, n));
	return least;
}

static const char *gaps_beside(struct arena *a, const struct stair *s, const struct part *parts,
	struct extent rail)
{
	double limit = s->job->balusters.largest_gap;
	bool is_raked = rail.high.z - rail.low.z > s->job->rail.depth + 1;
	double at_ends = is_raked ? fmax(limit, least_possible(s, rail)) : limit;
	return gaps_along(a, parts, rail, (struct clear_limits){ limit, at_ends });
}

/* A number that the job gives is drawn, whatever gap it leaves. */
static const char *gaps_small(struct arena *a, const struct stair *s, const struct part *parts)
{
	if (s->job->balusters.per_tread > 0 || s->job->infill.kind == INFILL_BARS ||
		s->job->infill.kind == INFILL_PANEL)
		return NULL;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; is_named(p, "rail") && i < p->count; i++) {
			const char *why = gaps_beside(a, s, parts, extent_of(p, i));
			if (why)
				return why;
		}
	return NULL;
}

/* What is left between the inner corners and the lower edge, on the worse face. */
static double throat_left(const struct part *p)
{
	const struct stringer *g = p->stringer;
	double least = INFINITY;
	for (int i = 0; i < g->steps; i++)
		least = fmin(least, g->inner_corners[i].y);
	for (int i = 0; i < g->far_face.n; i++)
		for (int k = 0; k < g->steps; k++)
			if (p->outline.corners[i].at.x == g->inner_corners[k].x &&
				p->outline.corners[i].at.y == g->inner_corners[k].y)
				least = fmin(least, g->far_face.corners[i].at.y);
	return least;
}

static const char *plank_holds(struct arena *a, const struct part *p)
{
	const struct stringer *g = p->stringer;
	for (int i = 0; i < p->outline.n; i++) {
		struct vec at = p->outline.corners[i].at;
		if (at.y < -1e-6 || at.y > g->plank_width + 1e-6 || at.x < -1e-6 ||
			at.x > g->cut_length + 1e-6)
			return arena_printf(a, "%s: a corner at %.3f, %.3f", p->mark, at.x, at.y);
	}
	if (g->plank_length > 0 && g->plank_length < g->cut_length)
		return arena_printf(a, "%s is longer than its plank", p->mark);
	if (g->kind == STRINGER_HOUSED)
		return NULL;
	if (fabs(throat_left(p) - g->throat) > 1e-6)
		return arena_printf(a, "%s: throat %.4f, said %.4f", p->mark, throat_left(p),
			g->throat);
	bool is_told = p->note && strstr(p->note, "the throat is less");
	return g->throat < g->least_throat - 1e-6 && !is_told
		? arena_printf(a, "%s: throat", p->mark)
		: NULL;
}

static const char *planks_hold(struct arena *a, const struct stair *s, const struct part *parts)
{
	(void)s;
	for (const struct part *p = parts; p; p = p->next) {
		const char *why = p->stringer ? plank_holds(a, p) : NULL;
		if (why)
			return why;
	}
	return NULL;
}

static const char *label(struct arena *a, struct placed p)
{
	return arena_printf(a, "%s %s (place %d)", p.part->mark, p.part->name, p.place + 1);
}

static const char *nothing_overlaps(struct arena *a, const struct stair *s,
	const struct part *parts)
{
	struct overlap o = overlap_find(a, parts, OVERLAP_ALLOWED);
	(void)s;
	if (o.depth <= OVERLAP_ALLOWED)
		return NULL;
	return arena_printf(a, "%s and %s: %.4f", label(a, o.one), label(a, o.other), o.depth);
}

/* Pressed down by half a millimetre, a tread body runs into what carries it; in a housing there is
 * room for wedges under it, so there it only has to reach in. */
static bool bears_on(struct arena *a, struct placed tread, struct placed stringer)
{
	struct extent t = extent_of(tread.part, tread.place);
	struct extent g = extent_of(stringer.part, stringer.place);
	if (stringer.part->stringer->kind == STRINGER_HOUSED)
		return fmin(t.high.y, g.high.y) - fmax(t.low.y, g.low.y) > 1;
	return overlap_between(a, tread, vec3(0, 0, -0.5), stringer) > 0.4;
}

static bool is_tread_piece(const struct part *p)
{
	return is_named(p, "tread body") || is_named(p, "tread front strip") ||
		is_named(p, "tread return") || is_named(p, "starting tread");
}

/* Does any piece of the tread with its underside at z bear on this stringer? */
static bool carries(struct arena *a, const struct part *parts, double z, struct placed stringer)
{
	for (const struct part *t = parts; t; t = t->next)
		for (int i = 0; is_tread_piece(t) && i < t->count; i++)
			if (fabs(t->places[i].origin.z - z) < 1e-6 &&
				bears_on(a, (struct placed){ t, i }, stringer))
				return true;
	return false;
}

static const char *treads_bear(struct arena *a, const struct stair *s, const struct part *parts)
{
	for (int i = 0; i < s->treads; i++) {
		double z = s->flights[0].steps[i].level - s->job->treads.thickness;
		int carried = 0;
		for (const struct part *g = parts; g; g = g->next)
			for (int k = 0; g->stringer && k < g->count; k++)
				carried += carries(a, parts, z, (struct placed){ g, k });
		if (carried < 2)
			return arena_printf(a, "tread %d lies on %d stringers", i + 1, carried);
	}
	return NULL;
}

static double lowest(const struct part *p)
{
	double z = INFINITY;
	for (int i = 0; i < p->count; i++)
		z = fmin(z, extent_of(p, i).low.z);
	return z;
}

/* Stringers, first riser and the blocks at the foot: on the structure, or on a finish that was laid
 * before them. */
static const char *foot_stands(struct arena *a, const struct stair *s, const struct part *parts)
{
	bool bare = s->job->stringers.foot == FOOT_STRUCTURAL;
	double floor = bare ? -s->job->floors.lower_finish : 0, riser = INFINITY;
	for (const struct part *p = parts; p; p = p->next) {
		bool stands =
			p->stringer || is_named(p, "riser block") || is_named(p, "thrust block");
		if (stands && fabs(lowest(p) - floor) > 1e-6)
			return arena_printf(a, "%s stands at %.6f, not %.6f", p->name, lowest(p),
				floor);
		if (is_named(p, "riser"))
			riser = fmin(riser, lowest(p));
	}
	if (isfinite(riser) && fabs(riser - floor) > 1e-6)
		return arena_printf(a, "the first riser stands at %.6f, not %.6f", riser, floor);
	return NULL;
}

/* How far the fourth corner of a side is out of the plane of the other three. */
static double twist(const struct solid *s, int i)
{
	int k = (i + 1) % s->n;
	struct vec3 across = vec3_sub(s->b[k], s->a[i]), back = vec3_sub(s->b[i], s->a[k]);
	struct vec3 normal = vec3_unit(vec3_cross(across, back));
	return fabs(vec3_dot(normal, vec3_sub(s->a[k], s->a[i])));
}

static const char *sides_flat(struct arena *a, const struct stair *s, const struct part *parts)
{
	(void)s;
	for (const struct part *p = parts; p; p = p->next)
		for (const struct solid *k = p->solids; k; k = k->next)
			for (int i = 0; i < k->n; i++)
				if (twist(k, i) > 1e-6)
					return arena_printf(a, "side %d of %s is twisted by %g", i,
						p->name, twist(k, i));
	return NULL;
}

const struct invariant invariants[] = {
	{ "every rise is equal, and they add up to the total rise", rises_equal },
	{ "every run is equal", runs_equal },
	{ "no gap between balusters is over the limit", gaps_small },
	{ "every stringer lies inside its plank and keeps its throat", planks_hold },
	{ "no two parts overlap by more than 0.01 mm", nothing_overlaps },
	{ "every tread bears on at least two stringers", treads_bear },
	{ "stringers, first riser and blocks stand on the same floor", foot_stands },
	{ "the sides of all solids are flat", sides_flat },
	{ "every joint has two halves that meet", joints_meet },
	{ "two halves laid out by the figures of their sheets meet", joints_laid_out },
	{ "no loose tenon of a tread is near another hole", tenons_clear },
	{ "the largest balls are what brute force finds", balls_agree },
	{ "every piece is cut, and no board holds more than it is", boards_wrong },
	{ "a moulding touches the wood behind it and the tread", mouldings_touch },
	{ "every outline is that of its solids", outlines_hold },
};

const int invariant_count = sizeof(invariants) / sizeof(invariants[0]);
