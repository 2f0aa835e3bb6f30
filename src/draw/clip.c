#include "draw/clip.h"

/* How far a straight piece of a flattened arc may be off the arc. */
#define FLATNESS 0.001

/* Liang and Barsky's way: each pair of sides narrows the part of the segment that is inside. */
struct clipped clip_segment(struct box window, struct vec a, struct vec b)
{
	const double from[2] = { a.x, a.y }, step[2] = { b.x - a.x, b.y - a.y };
	const double low[2] = { window.x0, window.y0 }, high[2] = { window.x1, window.y1 };
	double t0 = 0, t1 = 1;

	for (int i = 0; i < 2; i++) {
		if (fabs(step[i]) < NEAR_ENOUGH) {
			if (from[i] < low[i] || from[i] > high[i])
				return (struct clipped){ 0 };
			continue;
		}
		double in = (low[i] - from[i]) / step[i], out = (high[i] - from[i]) / step[i];
		t0 = fmax(t0, fmin(in, out));
		t1 = fmin(t1, fmax(in, out));
	}
	if (t0 >= t1)
		return (struct clipped){ 0 };
	/* ends inside stay exactly what they are */
	return (struct clipped){ true, t0 > 0 ? vec_add(a, vec_scale(vec_sub(b, a), t0)) : a,
		t1 < 1 ? vec_add(a, vec_scale(vec_sub(b, a), t1)) : b };
}

static bool is_inside(struct box w, struct vec p)
{
	return p.x >= w.x0 && p.x <= w.x1 && p.y >= w.y0 && p.y <= w.y1;
}

/* Where to begin round a closed chain so that no piece of it is met in two halves: at a corner
 * outside; -1 when all is inside. */
static int first_outside(struct box window, struct chain whole)
{
	for (int i = 0; i < whole.n; i++)
		if (!is_inside(window, whole.points[i]))
			return i;
	return -1;
}

static bool goes_on(const struct chain *piece, struct vec *end, struct vec from)
{
	return piece && piece->points + piece->n == end && vec_near(end[-1], from);
}

struct chain *clip_chain(struct arena *a, struct box window, struct chain whole)
{
	struct chain *pieces = NULL, **tail = &pieces, *piece = NULL;
	struct vec *end = NEW_N(a, struct vec, 2 * whole.n + 1);
	int start = first_outside(window, whole), segments = whole.n - (whole.closed ? 0 : 1);

	if (start < 0 || !whole.closed)
		start = 0;
	if (first_outside(window, whole) < 0) {
		pieces = NEW(a, struct chain);
		*pieces = (struct chain){ NULL, whole.points, whole.n, whole.closed };
		return pieces;
	}
	for (int i = 0; i < segments; i++) {
		struct clipped c = clip_segment(window, whole.points[(start + i) % whole.n],
			whole.points[(start + i + 1) % whole.n]);
		if (!c.some)
			continue;
		if (!goes_on(piece, end, c.a)) {
			piece = *tail = NEW(a, struct chain);
			tail = &piece->next;
			piece->points = end;
			*end++ = c.a;
			piece->n = 1;
		}
		*end++ = c.b;
		piece->n++;
	}
	return pieces;
}

static bool is_straight(struct corner c)
{
	return fabs(c.bulge) < NEAR_ENOUGH;
}

/* A piece over the angle s leaves the arc by r (1 - cos(s / 2)). */
static int side_pieces(struct corner from, struct vec to)
{
	if (is_straight(from))
		return 1;
	struct corner_arc arc = corner_arc(from, to);
	double piece = 2 * acos(1 - fmin(1, FLATNESS / arc.radius));
	return (int)ceil(fabs(arc.to - arc.from) / piece);
}

/* The corner, and the ends of the pieces that follow it, but for the last. */
static int flatten_side(struct vec *out, struct corner from, struct vec to)
{
	int n = side_pieces(from, to);

	out[0] = from.at;
	for (int i = 1; i < n; i++)
		out[i] = corner_arc_point(corner_arc(from, to), (double)i / n);
	return n;
}

struct chain outline_chain(struct arena *a, struct outline o)
{
	struct vec *points = NULL;
	int most = 0, n = 0;

	for (int i = 0; i < o.n; i++)
		most += side_pieces(o.corners[i], o.corners[(i + 1) % o.n].at);
	points = NEW_N(a, struct vec, most + 1);
	for (int i = 0; i < o.n; i++)
		n += flatten_side(points + n, o.corners[i], o.corners[(i + 1) % o.n].at);
	return (struct chain){ NULL, points, n, true };
}
