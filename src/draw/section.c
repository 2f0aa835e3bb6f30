/*
 * Cutting the solids of a scene by the section plane.
 *
 * The plane is square to the view, so what is kept has z <= at.  A corner lying in the plane is
 * kept: a solid that only touches the plane is not cut by it.
 */
#include "draw/bounds.h"
#include "draw/scene.h"

#include <stdlib.h>

/* A cut with less area than this is a graze. */
#define GRAZE 1e-4

static bool kept(double at, struct vec3 p)
{
	return p.z <= at + NEAR_ENOUGH;
}

/* Where the line from a kept point to one taken away meets the plane. */
static struct vec3 crossing(double at, struct vec3 in, struct vec3 out)
{
	double t = fmax(0, (at - in.z) / (out.z - in.z));
	struct vec3 p = vec3_add(in, vec3_scale(vec3_sub(out, in), t));
	p.z = at;
	return p;
}

/* The same whichever way the edge is walked, so that both faces beside it agree to the last bit. */
static struct vec3 crossing_of(double at, struct vec3 p, struct vec3 q)
{
	return kept(at, p) ? crossing(at, p, q) : crossing(at, q, p);
}

enum side_of_cut section_side(const struct view_spec *spec, const struct body *b)
{
	if (!spec->cut)
		return BODY_BEHIND;
	double low = b->a[0].z, high = low;
	for (int i = 0; i < b->n; i++) {
		low = fmin(low, fmin(b->a[i].z, b->b[i].z));
		high = fmax(high, fmax(b->a[i].z, b->b[i].z));
	}
	if (high <= spec->at + NEAR_ENOUGH)
		return BODY_BEHIND;
	return low >= spec->at - NEAR_ENOUGH ? BODY_TAKEN_AWAY : BODY_CUT;
}

int section_clip_loop(double at, const struct loop_corner *loop, int n, struct vec3 *out)
{
	int count = 0;
	for (int i = 0; i < n; i++) {
		struct vec3 p = loop[i].at, q = loop[(i + 1) % n].at;
		if (kept(at, p))
			out[count++] = p;
		if (kept(at, p) != kept(at, q))
			out[count++] = crossing_of(at, p, q);
	}
	return count;
}

bool section_clip_edge(double at, struct edge *e)
{
	bool a = kept(at, e->a), b = kept(at, e->b);

	if (a && !b)
		e->b = crossing(at, e->a, e->b);
	if (b && !a)
		e->a = crossing(at, e->b, e->a);
	return a || b;
}

/* A place where the plane crosses an edge of the solid. */
struct crossing {
	int edge;
	double along; /* the line in which the plane meets a face */
};

static int compare_crossings(const void *a, const void *b)
{
	const struct crossing *p = a, *q = b;
	if (p->along != q->along)
		return p->along < q->along ? -1 : 1;
	return p->edge - q->edge;
}

/* The outline of the cut, edge by edge: from the crossing of one edge to that of the next. */
struct ring {
	double at;
	struct vec *points; /* one an edge of the solid; read only where it is crossed */
	int *next;          /* -1: not crossed, or already walked */
	struct crossing *ins, *outs;
};

static struct ring ring_new(struct arena *a, double at, int n)
{
	struct ring c = {
		.at = at,
		.points = NEW_N(a, struct vec, 3 * n),
		.next = NEW_N(a, int, 3 * n),
		.ins = NEW_N(a, struct crossing, n + 4),
		.outs = NEW_N(a, struct crossing, n + 4),
	};
	for (int i = 0; i < 3 * n; i++)
		c.next[i] = -1;
	return c;
}

/*
 * The line in which the plane meets a face runs in and out of it.  Going along it with the solid
 * on the left, the way in is always where the face's own loop comes down through the plane, the
 * way out where it goes up; sorted, they pair off.
 */
static void ring_face(struct ring *c, const struct loop_corner *loop, int n, struct vec3 normal)
{
	struct vec line = vec(-normal.y, normal.x);
	int ins = 0, outs = 0;

	for (int i = 0; i < n; i++) {
		struct vec3 p = loop[i].at, q = loop[(i + 1) % n].at;
		if (kept(c->at, p) == kept(c->at, q))
			continue;
		struct vec3 x = crossing_of(c->at, p, q);
		struct crossing here = { loop[i].edge, vec_dot(vec(x.x, x.y), line) };
		c->points[here.edge] = vec(x.x, x.y);
		if (kept(c->at, q))
			c->ins[ins++] = here;
		else
			c->outs[outs++] = here;
	}
	if (ins > 1) {
		qsort(c->ins, (size_t)ins, sizeof(*c->ins), compare_crossings);
		qsort(c->outs, (size_t)outs, sizeof(*c->outs), compare_crossings);
	}
	for (int i = 0; i < ins; i++)
		c->next[c->ins[i].edge] = c->outs[i].edge;
}

/* Takes one closed line out of the ring, corners that fall together taken once. */
static int ring_take(struct ring *c, int edge, struct vec *out)
{
	int n = 0;
	while (c->next[edge] >= 0) {
		struct vec p = c->points[edge];
		int next = c->next[edge];
		c->next[edge] = -1;
		edge = next;
		if (n == 0 || !vec_near(p, out[n - 1]))
			out[n++] = p;
	}
	if (n > 1 && vec_near(out[0], out[n - 1]))
		n--;
	return n;
}

static void cut_add(struct scene *s, int piece, const struct vec *points, int n)
{
	struct cut *c = NEW(s->arena, struct cut);
	struct plane before = s->cut_face.plane;

	/* nearer than a face that happens to lie in the plane, which the cut hides too */
	before.z += 2 * NEARER;
	*c = (struct cut){ .points = points, .n = n, .piece = piece };
	*s->cut_tail = c;
	s->cut_tail = &c->next;
	s->cut_count++;
	screen_polygon(s, NULL, before, points, n);
}

void section_cut(struct scene *s, struct body *b)
{
	struct ring c = ring_new(s->arena, s->spec->at, b->n);
	int crossed = 0;

	for (int f = 0; f < b->n + 2; f++) {
		int n = body_loop(b, f);
		ring_face(&c, b->loop, n, b->faces[f].normal);
	}
	for (int i = 0; i < 3 * b->n; i++)
		crossed += c.next[i] >= 0;
	struct vec *points = NEW_N(s->arena, struct vec, crossed);
	for (int i = 0; i < 3 * b->n; i++) {
		int n = ring_take(&c, i, points);
		if (n < 3 || fabs(points_area(points, n)) < GRAZE)
			continue;
		cut_add(s, b->piece, points, n);
		points += n;
	}
}
