#include "random/outlines.h"

#include <stdlib.h>

#include "parts/outline.h"

#define NEAR_BOX 0.01   /* mm */
#define NEAR_AREA 0.001 /* of the area */

struct points {
	struct vec *at;
	int n;
};

/* The corners of all solids, seen from the part's z. */
static struct points corners_of(struct arena *a, const struct part *p)
{
	int most = 0;
	for (const struct solid *s = p->solids; s; s = s->next)
		most += 2 * s->n;
	struct points seen = { NEW_N(a, struct vec, most), 0 };
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			seen.at[seen.n++] = vec(s->a[i].x, s->a[i].y);
			seen.at[seen.n++] = vec(s->b[i].x, s->b[i].y);
		}
	return seen;
}

static int from_left(const void *one, const void *other)
{
	const struct vec *a = one, *b = other;
	if (a->x != b->x)
		return a->x < b->x ? -1 : 1;
	return (a->y > b->y) - (a->y < b->y);
}

static double turn(struct vec a, struct vec b, struct vec c)
{
	return vec_cross(vec_sub(b, a), vec_sub(c, b));
}

/* Lower side from left to right, then the upper one back (monotone chain). */
static struct points hull_of(struct arena *a, struct points all)
{
	struct points hull = { NEW_N(a, struct vec, 2 * all.n + 1), 0 };
	qsort(all.at, (size_t)all.n, sizeof(*all.at), from_left);
	for (int pass = 0; pass < 2; pass++) {
		int begun = hull.n;
		for (int i = 0; i < all.n; i++) {
			struct vec at = all.at[pass ? all.n - 1 - i : i];
			while (hull.n >= begun + 2 &&
				turn(hull.at[hull.n - 2], hull.at[hull.n - 1], at) <= 0)
				hull.n--;
			hull.at[hull.n++] = at;
		}
		hull.n--;
	}
	return hull;
}

static double area_of(struct points p)
{
	double twice = 0;
	for (int i = 0; i < p.n; i++)
		twice += vec_cross(p.at[i], p.at[(i + 1) % p.n]);
	return twice / 2;
}

static struct box box_of(struct points p)
{
	struct box b = { INFINITY, INFINITY, -INFINITY, -INFINITY };
	for (int i = 0; i < p.n; i++) {
		b.x0 = fmin(b.x0, p.at[i].x);
		b.y0 = fmin(b.y0, p.at[i].y);
		b.x1 = fmax(b.x1, p.at[i].x);
		b.y1 = fmax(b.y1, p.at[i].y);
	}
	return b;
}

static double apart(struct box a, struct box b)
{
	double x = fmax(fabs(a.x0 - b.x0), fabs(a.x1 - b.x1));
	return fmax(x, fmax(fabs(a.y0 - b.y0), fabs(a.y1 - b.y1)));
}

static bool is_convex(struct points p)
{
	for (int i = 0; i < p.n; i++)
		if (turn(p.at[i], p.at[(i + 1) % p.n], p.at[(i + 2) % p.n]) < -1e-6)
			return false;
	return true;
}

/* The end of a moulded section shows its profile when it is cut on the rake: figured as the length
 * it is cut out of. */
static bool ends_show_profile(const struct part *p)
{
	return p->section.n > 0 && (p->start.bevel != 0 || p->end.bevel != 0);
}

static const char *outline_holds(struct arena *a, const struct part *p)
{
	struct profile f = profile_of(a, p->outline);
	struct points outline = { f.at, f.n }, hull = hull_of(a, corners_of(a, p));
	double off = apart(box_of(outline), box_of(hull));
	double drawn = area_of(outline), seen = area_of(hull);
	if (off > NEAR_BOX)
		return arena_printf(a, "%s %s: its box is off by %.3f", p->mark, p->name, off);
	if (!ends_show_profile(p) && is_convex(outline) && fabs(drawn - seen) > NEAR_AREA * seen)
		return arena_printf(a, "%s %s: it is %.1f mm2, and seen %.1f", p->mark, p->name,
			drawn, seen);
	return NULL;
}

const char *outlines_hold(struct arena *a, const struct stair *s, const struct part *parts)
{
	(void)s;
	for (const struct part *p = parts; p; p = p->next) {
		const char *why =
			p->solids && p->outline.n > 2 && !p->existing ? outline_holds(a, p) : NULL;
		if (why)
			return why;
	}
	return NULL;
}
