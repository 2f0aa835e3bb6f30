#include "rules/shadow.h"

#include <stdlib.h>

/* What lies beyond an end of the guard is as far as this. */
#define FAR 1e5

static struct box box_round(const struct vec *at, int n)
{
	struct box b = { INFINITY, INFINITY, -INFINITY, -INFINITY };

	for (int i = 0; i < n; i++) {
		b.x0 = fmin(b.x0, at[i].x);
		b.y0 = fmin(b.y0, at[i].y);
		b.x1 = fmax(b.x1, at[i].x);
		b.y1 = fmax(b.y1, at[i].y);
	}
	return b;
}

static struct vec thrown(struct vec3 p, struct guard_plane plane)
{
	return vec(vec3_dot(vec3_sub(p, plane.origin), plane.along), p.z);
}

static struct shadow shadow_of(struct arena *a, const struct face *f, struct guard_plane plane)
{
	struct vec *at = NEW_N(a, struct vec, f->n);

	for (int i = 0; i < f->n; i++)
		at[i] = thrown(f->at[i], plane);
	return (struct shadow){ .at = at, .n = f->n, .box = box_round(at, f->n) };
}

static int from_left(const void *a, const void *b)
{
	const struct vec *p = a, *q = b;

	if (p->x != q->x)
		return (p->x > q->x) - (p->x < q->x);
	return (p->y > q->y) - (p->y < q->y);
}

/* One chain of a hull, from the first point of a sorted list to the last (Andrew, 1979). */
static int hull_chain(const struct vec *at, int n, int step, struct vec *hull)
{
	int m = 0;

	for (int i = 0; i < n; i++) {
		struct vec p = step > 0 ? at[i] : at[n - 1 - i];
		while (m > 1 &&
			vec_cross(vec_sub(hull[m - 1], hull[m - 2]), vec_sub(p, hull[m - 1])) <= 0)
			m--;
		hull[m++] = p;
	}
	return m - 1;
}

/* A rail is straight: what it covers is the hull of its corners, whatever its profile. */
static struct shadow hull_of(struct arena *a, const struct placed *p, struct guard_plane plane)
{
	int n = 0;

	for (int i = 0; i < p->face_count; i++)
		n += p->faces[i].n;
	struct vec *at = NEW_N(a, struct vec, n), *hull = NEW_N(a, struct vec, 2 * n);
	n = 0;
	for (int i = 0; i < p->face_count; i++)
		for (int k = 0; k < p->faces[i].n; k++)
			at[n++] = thrown(p->faces[i].at[k], plane);
	qsort(at, (size_t)n, sizeof(*at), from_left);
	int m = hull_chain(at, n, 1, hull);
	m += hull_chain(at, n, -1, hull + m);
	return (struct shadow){ .at = hull, .n = m, .box = box_round(hull, m) };
}

/* Edge on, a face throws no shadow that its neighbours do not. */
static bool is_edge_on(const struct shadow *s)
{
	double area = 0;

	for (int i = 0; i < s->n; i++)
		area += vec_cross(s->at[i], s->at[(i + 1) % s->n]);
	return fabs(area) < 1e-3;
}

static bool stands_in(const struct placed *p, struct guard_plane plane, double within)
{
	struct vec3 across = vec3_cross(vec3(0, 0, 1), plane.along);
	double low = INFINITY, high = -INFINITY;

	for (int i = 0; i < p->face_count; i++)
		for (int k = 0; k < p->faces[i].n; k++) {
			double d = vec3_dot(vec3_sub(p->faces[i].at[k], plane.origin), across);
			low = fmin(low, d);
			high = fmax(high, d);
		}
	return low < within && high > -within;
}

/* What lies beyond an end of the guard is not its business. */
static struct shadow end_shadow(struct arena *a, double x0, double x1)
{
	struct vec *at = NEW_N(a, struct vec, 4);

	at[0] = vec(x0, -FAR);
	at[1] = vec(x1, -FAR);
	at[2] = vec(x1, FAR);
	at[3] = vec(x0, FAR);
	return (struct shadow){ .at = at, .n = 4, .box = box_round(at, 4) };
}

static bool is_rail(const struct part *p)
{
	return counts_rails(p) || counts_level_rails(p);
}

struct shadows shadows_on(const struct survey *s, struct guard_plane plane, double within,
	double from, double to)
{
	struct shadows all = { .n = 0 };
	int room = 2;

	for (int i = 0; i < s->count; i++)
		room += s->pieces[i].face_count;
	struct shadow *list = NEW_N(s->arena, struct shadow, room);
	list[all.n++] = end_shadow(s->arena, from - FAR, from);
	list[all.n++] = end_shadow(s->arena, to, to + FAR);
	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		if (!stands_in(p, plane, within))
			continue;
		if (is_rail(p->part)) {
			list[all.n++] = hull_of(s->arena, p, plane);
			continue;
		}
		for (int k = 0; k < p->face_count; k++) {
			list[all.n] = shadow_of(s->arena, &p->faces[k], plane);
			list[all.n].is_bar = counts_bars(s, p);
			all.n += !is_edge_on(&list[all.n]);
		}
	}
	all.shadow = list;
	return all;
}
