/*
 * Screens: faces turned to the eye, as convex patches.
 *
 * A face of few corners is a patch as it is.  One that is not convex (the face of a sawtooth
 * stringer) is cut into trapezoids by upright lines through its corners, so that every patch stays
 * as small as a step:
 *
 *              __
 *           __| .'
 *        __| | .
 *       | |  .'
 *       |_|.'
 */
#include <stdlib.h>

#include "draw/bounds.h"
#include "draw/scene.h"

/* Upright lines nearer than this are one. */
#define SLIVER 1e-7

static int halves_of(const struct vec *points, int n, struct half *out)
{
	int count = 0;
	for (int i = 0; i < n; i++) {
		struct vec p = points[i], d = vec_sub(points[(i + 1) % n], p);
		if (vec_length(d) < NEAR_ENOUGH)
			continue;
		struct vec in = vec_left(vec_unit(d));
		out[count++] = (struct half){ in.x, in.y, -vec_dot(in, p) };
	}
	return count;
}

static void keep_points(struct scene *s, struct screen *c, const struct vec *points, int n)
{
	struct vec *kept = NEW_N(s->arena, struct vec, n);

	for (int i = 0; i < n; i++)
		kept[i] = points[i];
	c->points = kept;
	c->point_count = n;
}

/* Adds one screen; the polygon must be convex. */
static void screen_add(struct scene *s, const struct face *f, struct plane plane,
	const struct vec *points, int n)
{
	struct screen *c = NEW(s->arena, struct screen);
	struct half *sides = NEW_N(s->arena, struct half, n);

	c->face = f;
	c->plane = plane;
	c->box = points_box(points, n);
	c->n = halves_of(points, n, sides);
	c->sides = sides;
	if (s->spec->picture)
		keep_points(s, c, points, n);
	c->nearest = plane_at(plane, points[0].x, points[0].y);
	for (int i = 1; i < n; i++)
		c->nearest = fmax(c->nearest, plane_at(plane, points[i].x, points[i].y));
	if (c->n < 3)
		return;
	*s->screen_tail = c;
	s->screen_tail = &c->next;
	s->screen_count++;
}

/* A corner that turns right, or straight back, is not one of a convex polygon. */
static bool convex(const struct vec *points, int n)
{
	for (int i = 0; i < n; i++) {
		struct vec d = vec_sub(points[(i + 1) % n], points[i]);
		struct vec e = vec_sub(points[(i + 2) % n], points[(i + 1) % n]);
		double turn = vec_cross(d, e), size = vec_length(d) * vec_length(e);
		if (turn < -1e-9 * size || (turn < 1e-9 * size && vec_dot(d, e) < 0))
			return false;
	}
	return true;
}

/* An edge of the polygon, from left to right. */
struct rim {
	struct vec a, b;
	int turn;  /* +1: the polygon is above it, -1: below */
	double at; /* its height in the middle of the strip at hand */
};

static double rim_at(const struct rim *r, double x)
{
	double t = (x - r->a.x) / (r->b.x - r->a.x);
	return r->a.y + t * (r->b.y - r->a.y);
}

static int compare_rims(const void *a, const void *b)
{
	const struct rim *p = a, *q = b;
	const double key[][2] = { { p->a.x, q->a.x }, { p->a.y, q->a.y }, { p->b.x, q->b.x },
		{ p->b.y, q->b.y }, { p->turn, q->turn } };

	for (int i = 0; i < 5; i++) {
		if (key[i][0] != key[i][1])
			return key[i][0] < key[i][1] ? -1 : 1;
	}
	return 0;
}

static int rims_of(const struct vec *points, int n, struct rim *out)
{
	int count = 0;
	for (int i = 0; i < n; i++) {
		struct vec p = points[i], q = points[(i + 1) % n];
		if (fabs(q.x - p.x) <= SLIVER)
			continue;
		out[count++] = q.x > p.x ? (struct rim){ p, q, 1, 0 } : (struct rim){ q, p, -1, 0 };
	}
	qsort(out, (size_t)count, sizeof(*out), compare_rims);
	return count;
}

/* Where the upright lines stand: at every corner. */
static int strips_of(const struct vec *points, int n, double *out)
{
	int count = 0;
	for (int i = 0; i < n; i++)
		out[i] = points[i].x;
	qsort(out, (size_t)n, sizeof(*out), number_by_size);
	for (int i = 0; i < n; i++) {
		if (count == 0 || out[i] - out[count - 1] > SLIVER)
			out[count++] = out[i];
	}
	return count;
}

/* The rims that cross the strip at hand, from the lowest up. */
struct active {
	struct rim **at;
	int n;
};

static void active_drop(struct active *a, double middle)
{
	int n = 0;
	for (int i = 0; i < a->n; i++) {
		if (a->at[i]->b.x > middle)
			a->at[n++] = a->at[i];
	}
	a->n = n;
}

static void active_sort(struct active *a, double middle)
{
	for (int i = 0; i < a->n; i++) {
		struct rim *r = a->at[i];
		int k = i;
		r->at = rim_at(r, middle);
		for (; k > 0 && a->at[k - 1]->at > r->at; k--)
			a->at[k] = a->at[k - 1];
		a->at[k] = r;
	}
}

static void trapezoid(struct scene *s, const struct face *f, struct plane plane,
	const struct rim *low, const struct rim *high, double x0, double x1)
{
	const struct vec points[] = {
		vec(x0, rim_at(low, x0)),
		vec(x1, rim_at(low, x1)),
		vec(x1, rim_at(high, x1)),
		vec(x0, rim_at(high, x0)),
	};
	screen_add(s, f, plane, points, 4);
}

static void strip(struct scene *s, const struct face *f, struct plane plane, const struct active *a,
	double x0, double x1)
{
	int winding = 0;
	for (int i = 0; i + 1 < a->n; i++) {
		winding += a->at[i]->turn;
		if (winding > 0 && a->at[i + 1]->at - a->at[i]->at > SLIVER)
			trapezoid(s, f, plane, a->at[i], a->at[i + 1], x0, x1);
	}
}

static void screen_trapezoids(struct scene *s, const struct face *f, struct plane plane,
	const struct vec *points, int n)
{
	struct rim *rims = NEW_N(s->arena, struct rim, n);
	double *strips = NEW_N(s->arena, double, n);
	int rim_count = rims_of(points, n, rims);
	int strip_count = strips_of(points, n, strips);
	struct active active = { NEW_N(s->arena, struct rim *, n), 0 };
	int next = 0;

	for (int i = 0; i + 1 < strip_count; i++) {
		double middle = (strips[i] + strips[i + 1]) / 2;
		active_drop(&active, middle);
		for (; next < rim_count && rims[next].a.x < middle; next++) {
			if (rims[next].b.x > middle)
				active.at[active.n++] = &rims[next];
		}
		active_sort(&active, middle);
		strip(s, f, plane, &active, strips[i], strips[i + 1]);
	}
}

void screen_polygon(struct scene *s, const struct face *f, struct plane plane,
	const struct vec *points, int n)
{
	if (n < 3)
		return;
	if (convex(points, n))
		screen_add(s, f, plane, points, n);
	else
		screen_trapezoids(s, f, plane, points, n);
}
