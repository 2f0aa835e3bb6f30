#include "random/convex.h"

#include <stdlib.h>
#include <string.h>

#define SAME 1e-7

static struct vec3 normal_of(const struct vec3 *p, int n)
{
	struct vec3 sum = { 0, 0, 0 };
	for (int i = 0; i < n; i++)
		sum = vec3_add(sum, vec3_cross(p[i], p[(i + 1) % n]));
	return vec3_unit(sum);
}

/* A plane's own axes, so that corners can be looked at flat. */
struct flat {
	struct vec3 u, v;
};

static struct flat flat_of(struct vec3 normal)
{
	struct vec3 x = fabs(normal.x) < 0.7 ? vec3(1, 0, 0) : vec3(0, 1, 0);
	struct vec3 u = vec3_unit(vec3_cross(x, normal));
	return (struct flat){ u, vec3_cross(normal, u) };
}

static struct vec laid(struct flat f, struct vec3 p)
{
	return vec(vec3_dot(f.u, p), vec3_dot(f.v, p));
}

static double turn(struct vec a, struct vec b, struct vec c)
{
	return vec_cross(vec_sub(b, a), vec_sub(c, b));
}

static bool inside(struct vec p, struct vec a, struct vec b, struct vec c)
{
	return turn(a, b, p) > -SAME && turn(b, c, p) > -SAME && turn(c, a, p) > -SAME;
}

static struct convex *piece(struct arena *a, int n, struct convex *next)
{
	struct convex *c = NEW(a, struct convex);
	c->n = n;
	c->a = NEW_N(a, struct vec3, n);
	c->b = NEW_N(a, struct vec3, n);
	c->next = next;
	return c;
}

static struct convex *wedge(struct arena *a, const struct vec3 one[3], const struct vec3 other[3],
	struct convex *next)
{
	struct convex *c = piece(a, 3, next);
	memcpy(c->a, one, 3 * sizeof(*one));
	memcpy(c->b, other, 3 * sizeof(*other));
	return c;
}

/* A polygon that is being clipped ear by ear. */
struct ears {
	const struct vec *flat;
	int *left; /* indices of the corners still there */
	int n;
};

static bool is_ear(const struct ears *e, int i)
{
	int before = e->left[(i + e->n - 1) % e->n], at = e->left[i];
	int after = e->left[(i + 1) % e->n];
	struct vec a = e->flat[before], b = e->flat[at], c = e->flat[after];
	if (turn(a, b, c) <= 0)
		return false;
	for (int k = 0; k < e->n; k++) {
		int other = e->left[k];
		if (other == before || other == at || other == after)
			continue;
		if (inside(e->flat[other], a, b, c))
			return false;
	}
	return true;
}

/* A corner that lies straight between its neighbours: no ear, and no use. */
static bool is_straight(const struct ears *e, int i)
{
	struct vec a = e->flat[e->left[(i + e->n - 1) % e->n]], b = e->flat[e->left[i]];
	struct vec c = e->flat[e->left[(i + 1) % e->n]];
	return fabs(turn(a, b, c)) <= SAME * (1 + vec_length(vec_sub(c, a)));
}

static void drop(struct ears *e, int i)
{
	memmove(&e->left[i], &e->left[i + 1], (size_t)(e->n - 1 - i) * sizeof(int));
	e->n--;
}

/* Clips one ear or drops one straight corner; the index of the ear, -1: none, n: dropped. */
static int next_ear(struct ears *e)
{
	for (int i = 0; i < e->n; i++)
		if (is_ear(e, i))
			return i;
	for (int i = 0; i < e->n; i++)
		if (is_straight(e, i)) {
			drop(e, i);
			return e->n;
		}
	abort(); /* the outline crosses itself */
}

/* What lies between `base` and `far`, all side lines parallel, cut into triangular pieces. */
static struct convex *prism_pieces(struct arena *a, const struct vec3 *base, const struct vec3 *far,
	int n, struct convex *list)
{
	struct flat f = flat_of(normal_of(base, n));
	struct vec *flat = NEW_N(a, struct vec, n);
	struct ears e = { flat, NEW_N(a, int, n), n };
	for (int i = 0; i < n; i++) {
		flat[i] = laid(f, base[i]);
		e.left[i] = i;
	}
	while (e.n >= 3) {
		int i = next_ear(&e);
		if (i >= e.n)
			continue;
		struct vec3 one[3], other[3];
		for (int k = 0; k < 3; k++) {
			int at = e.left[(i + k + e.n - 1) % e.n];
			one[k] = base[at];
			other[k] = far[at];
		}
		list = wedge(a, one, other, list);
		drop(&e, i);
	}
	return list;
}

static bool is_convex(const struct vec3 *p, int n)
{
	struct vec3 normal = normal_of(p, n);
	for (int i = 0; i < n; i++) {
		struct vec3 into = vec3_sub(p[(i + 1) % n], p[i]);
		struct vec3 out = vec3_sub(p[(i + 2) % n], p[(i + 1) % n]);
		if (vec3_dot(vec3_cross(into, out), normal) < -SAME)
			return false;
	}
	return true;
}

static double face_area(const struct vec3 *p, int n)
{
	struct vec3 sum = { 0, 0, 0 };
	for (int i = 1; i + 1 < n; i++)
		sum = vec3_add(sum, vec3_cross(vec3_sub(p[i], p[0]), vec3_sub(p[i + 1], p[0])));
	return vec3_length(sum) / 2;
}

/* What a mitred edge has beyond the prism on the smaller face. */
static struct convex *mitre_piece(struct arena *a, const struct vec3 *large,
	const struct vec3 *small, const struct vec3 *dropped, int i, int n, struct convex *list)
{
	int k = (i + 1) % n;
	struct vec3 shift = vec3_sub(large[i], dropped[i]), edge = vec3_sub(large[k], large[i]);
	if (vec3_length(vec3_cross(shift, edge)) < SAME)
		return list;
	struct vec3 one[3] = { small[i], dropped[i], large[i] };
	struct vec3 other[3] = { small[k], dropped[k], large[k] };
	return wedge(a, one, other, list);
}

/* A stringer with mitred riser cuts: the prism on its smaller face, and a wedge at every mitre. */
static struct convex *bevelled_pieces(struct arena *a, const struct solid *s, struct convex *list)
{
	bool a_smaller = face_area(s->a, s->n) < face_area(s->b, s->n);
	const struct vec3 *small = a_smaller ? s->a : s->b, *large = a_smaller ? s->b : s->a;
	struct vec3 normal = normal_of(small, s->n);
	double height = vec3_dot(normal, vec3_sub(large[0], small[0]));
	struct vec3 along = vec3_scale(normal, height);
	struct vec3 *dropped = NEW_N(a, struct vec3, s->n);
	for (int i = 0; i < s->n; i++)
		dropped[i] = vec3_add(small[i], along);
	list = prism_pieces(a, small, dropped, s->n, list);
	for (int i = 0; i < s->n; i++)
		list = mitre_piece(a, large, small, dropped, i, s->n, list);
	return list;
}

/* Are all its side lines parallel?  A prism is, and a strip cut to any angle at its ends. */
static bool is_strip(const struct solid *s)
{
	struct vec3 along = { 0, 0, 0 };
	for (int i = 0; i < s->n; i++) {
		struct vec3 side = vec3_sub(s->b[i], s->a[i]);
		if (vec3_length(side) > vec3_length(along))
			along = side;
	}
	for (int i = 0; i < s->n; i++) {
		struct vec3 side = vec3_sub(s->b[i], s->a[i]);
		if (vec3_length(vec3_cross(vec3_unit(along), side)) > SAME)
			return false;
	}
	return true;
}

static struct convex *solid_pieces(struct arena *a, const struct solid *s, struct convex *list)
{
	if (is_convex(s->a, s->n) && is_convex(s->b, s->n)) {
		struct convex *c = piece(a, s->n, list);
		memcpy(c->a, s->a, (size_t)s->n * sizeof(*s->a));
		memcpy(c->b, s->b, (size_t)s->n * sizeof(*s->b));
		return c;
	}
	if (is_strip(s))
		return prism_pieces(a, s->a, s->b, s->n, list);
	return bevelled_pieces(a, s, list);
}

static struct vec3 corner(const struct convex *c, int i)
{
	return i < c->n ? c->a[i] : c->b[i - c->n];
}

static void place(struct convex *c, struct frame at, struct vec3 moved)
{
	c->low = vec3(INFINITY, INFINITY, INFINITY);
	c->high = vec3(-INFINITY, -INFINITY, -INFINITY);
	for (int i = 0; i < 2 * c->n; i++) {
		struct vec3 p = vec3_add(frame_place(at, corner(c, i)), moved);
		if (i < c->n)
			c->a[i] = p;
		else
			c->b[i - c->n] = p;
		c->low = vec3(fmin(c->low.x, p.x), fmin(c->low.y, p.y), fmin(c->low.z, p.z));
		c->high = vec3(fmax(c->high.x, p.x), fmax(c->high.y, p.y), fmax(c->high.z, p.z));
	}
}

struct convex *convex_pieces(struct arena *a, const struct part *p, struct frame at,
	struct vec3 moved)
{
	struct convex *list = NULL;
	for (const struct solid *s = p->solids; s; s = s->next)
		list = solid_pieces(a, s, list);
	for (struct convex *c = list; c; c = c->next)
		place(c, at, moved);
	return list;
}

/* How far two pieces lie over each other along an axis; negative when they are apart. */
static double along_axis(const struct convex *one, const struct convex *other, struct vec3 axis)
{
	double length = vec3_length(axis);
	if (length < 1e-9)
		return INFINITY;
	double low[2] = { INFINITY, INFINITY }, high[2] = { -INFINITY, -INFINITY };
	const struct convex *c[2] = { one, other };
	for (int k = 0; k < 2; k++)
		for (int i = 0; i < 2 * c[k]->n; i++) {
			double at = vec3_dot(corner(c[k], i), axis) / length;
			low[k] = fmin(low[k], at);
			high[k] = fmax(high[k], at);
		}
	return fmin(high[0] - low[1], high[1] - low[0]);
}

/* The least over the faces of `of`. */
static double along_faces(const struct convex *one, const struct convex *other,
	const struct convex *of, double allowed)
{
	double least = fmin(along_axis(one, other, normal_of(of->a, of->n)),
		along_axis(one, other, normal_of(of->b, of->n)));
	for (int i = 0; i < of->n && least > allowed; i++) {
		int k = (i + 1) % of->n;
		struct vec3 side[4] = { of->a[i], of->a[k], of->b[k], of->b[i] };
		least = fmin(least, along_axis(one, other, normal_of(side, 4)));
	}
	return least;
}

static struct vec3 edge(const struct convex *c, int i)
{
	int k = i % c->n, next = (k + 1) % c->n;
	if (i < c->n)
		return vec3_sub(c->a[next], c->a[k]);
	if (i < 2 * c->n)
		return vec3_sub(c->b[next], c->b[k]);
	return vec3_sub(c->a[k], c->b[k]);
}

double convex_depth(const struct convex *one, const struct convex *other, double allowed)
{
	double least = along_faces(one, other, one, allowed);
	if (least > allowed)
		least = fmin(least, along_faces(one, other, other, allowed));
	for (int i = 0; i < 3 * one->n && least > allowed; i++)
		for (int k = 0; k < 3 * other->n && least > allowed; k++) {
			struct vec3 axis =
				vec3_cross(vec3_unit(edge(one, i)), vec3_unit(edge(other, k)));
			if (vec3_length(axis) > 1e-3)
				least = fmin(least, along_axis(one, other, axis));
		}
	return fmax(least, 0);
}
