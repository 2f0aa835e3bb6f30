#include "parts/ball_plane.h"

#include <string.h>

#include "pitchboard/ball.h"

#define REACH (BALL_LARGEST / 2)
#define SLIVER 1e-6 /* of a face's area: it is seen edge on */
#define TOUCHING 1.0

static struct vec seen(const struct stretch *s, struct frame place, struct vec3 p)
{
	struct vec3 at = frame_place_back(s->axes, frame_place(place, p));
	return vec(at.x, at.z);
}

static void add_to_window(struct arena *a, struct ball_window *w, int edge)
{
	if (w->n == w->room) {
		int *more = NEW_N(a, int, 2 * w->room + 64);
		if (w->n > 0)
			memcpy(more, w->edges, (size_t)w->n * sizeof(*more));
		w->edges = more;
		w->room = 2 * w->room + 64;
	}
	w->edges[w->n++] = edge;
}

static void add_edge(struct arena *a, struct ball_plane *plane, struct ball_edge e)
{
	double from = plane->stretch->from;
	double low = fmin(e.a.x, e.b.x) - REACH - from, high = fmax(e.a.x, e.b.x) + REACH - from;
	if (low > plane->count * plane->width || high < 0)
		return;
	if (plane->n == plane->room) {
		struct ball_edge *more = NEW_N(a, struct ball_edge, 2 * plane->room + 256);
		if (plane->n > 0)
			memcpy(more, plane->edges, (size_t)plane->n * sizeof(*more));
		plane->edges = more;
		plane->room = 2 * plane->room + 256;
	}
	plane->edges[plane->n] = e;
	int first = (int)fmax(floor(low / plane->width), 0);
	for (int i = first; i < plane->count && i * plane->width <= high; i++)
		add_to_window(a, &plane->windows[i], plane->n);
	plane->n++;
}

/* Twice; positive when it looks towards the viewer. */
static double area(const struct vec *p, int n)
{
	double sum = 0;
	for (int i = 0; i < n; i++)
		sum += vec_cross(p[i], p[(i + 1) % n]);
	return sum;
}

/* Only those that face one way: together they cover all that the solid hides. */
static void add_face(struct arena *a, struct ball_plane *plane, const struct vec *p, int n,
	const struct part *part)
{
	int face = plane->n > 0 ? plane->edges[plane->n - 1].face + 1 : 0;
	if (area(p, n) < SLIVER)
		return;
	for (int i = 0; i < n; i++)
		add_edge(a, plane, (struct ball_edge){ p[i], p[(i + 1) % n], face, part });
}

static void add_solid(struct arena *a, struct ball_plane *plane, const struct part *part,
	struct frame place, const struct solid *s)
{
	struct vec *top = NEW_N(a, struct vec, s->n), *under = NEW_N(a, struct vec, s->n);
	for (int i = 0; i < s->n; i++) {
		top[i] = seen(plane->stretch, place, s->a[i]);
		under[s->n - 1 - i] = seen(plane->stretch, place, s->b[i]);
	}
	add_face(a, plane, top, s->n, part);
	add_face(a, plane, under, s->n, part);
	for (int i = 0; i < s->n; i++) {
		int k = (i + 1) % s->n;
		const struct vec side[4] = { top[k], top[i], under[s->n - 1 - i],
			under[s->n - 1 - k] };
		add_face(a, plane, side, 4, part);
	}
}

static void widen(double across[2], const struct stretch *s, struct frame place,
	const struct vec3 *p, int n)
{
	for (int i = 0; i < n; i++) {
		double y = frame_place_back(s->axes, frame_place(place, p[i])).y;
		across[0] = fmin(across[0], y);
		across[1] = fmax(across[1], y);
	}
}

/* Does it stand within the balustrade's thickness, which is the rail's? */
static bool is_in_plane(const struct stretch *s, struct frame place, const struct solid *solid)
{
	double across[2] = { INFINITY, -INFINITY };
	double half = s->rod->job->rail.width / 2 - TOUCHING;
	widen(across, s, place, solid->a, solid->n);
	widen(across, s, place, solid->b, solid->n);
	return across[0] < half && across[1] > -half;
}

/* Where the rail just ends, what is measured ends too. */
static void add_end(struct arena *a, struct ball_plane *plane, struct rail_end e)
{
	struct ball_edge end = { { e.x, -1e5 }, { e.x, 1e5 }, -1, NULL };
	if (e.kind == RAIL_END_PLUMB)
		add_edge(a, plane, end);
}

struct ball_plane ball_plane_make(struct arena *a, const struct stretch *s,
	const struct part *parts)
{
	struct ball_plane plane = { .stretch = s, .width = s->rod->run };
	plane.count = (int)fmax(ceil((s->to - s->from) / plane.width - NEAR_ENOUGH), 1);
	plane.windows = NEW_N(a, struct ball_window, plane.count);
	add_end(a, &plane, s->foot);
	add_end(a, &plane, s->head);
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			for (const struct solid *k = p->solids; k; k = k->next)
				if (is_in_plane(s, p->places[i], k))
					add_solid(a, &plane, p, p->places[i], k);
	return plane;
}

double ball_edge_distance(const struct ball_edge *e, struct vec p)
{
	struct vec along = vec_sub(e->b, e->a), to = vec_sub(p, e->a);
	double length = vec_dot(along, along);
	double share = length > 0 ? vec_dot(to, along) / length : 0;
	share = fmin(fmax(share, 0), 1);
	return vec_length(vec_sub(to, vec_scale(along, share)));
}

/* Does the edge cross the line straight up from the point? */
static bool is_over(const struct ball_edge *e, struct vec p)
{
	if ((e->a.x > p.x) == (e->b.x > p.x))
		return false;
	double share = (p.x - e->a.x) / (e->b.x - e->a.x);
	return e->a.y + share * (e->b.y - e->a.y) > p.y;
}

bool ball_plane_is_solid(const struct ball_plane *plane, const struct ball_window *w, struct vec p)
{
	bool inside = false;
	int face = -1;
	for (int i = 0; i < w->n; i++) {
		const struct ball_edge *e = &plane->edges[w->edges[i]];
		if (e->face < 0)
			continue;
		if (e->face != face && inside)
			return true;
		face = e->face;
		inside ^= is_over(e, p);
	}
	return inside;
}
