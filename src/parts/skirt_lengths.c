#include "parts/skirt.h"
#include "parts/tread.h"

/*
 * A plain skirt in lengths: where treads are cut out for a wall that stands in
 * its way, it stops plumb against that and goes on behind it.
 *
 *               |  .'
 *            ___|.'      behind
 *           |wall|
 *        .' |____|
 *      .'| .'            in front
 */

/* The corners on the far side of x from `way` are cut off: 1 keeps what is behind x, -1 what is in
 * front of it.  Upper and lower edge never turn back, so one piece is left. */
static struct outline cut_at(struct arena *a, struct outline o, double x, double way)
{
	struct path p = path_begin(a, 2 * o.n);
	for (int i = 0; i < o.n; i++) {
		struct vec from = o.corners[i].at, to = o.corners[(i + 1) % o.n].at;
		double here = (from.x - x) * way, there = (to.x - x) * way;
		if (here >= 0)
			path_to(&p, from.x, from.y);
		if (here * there < 0)
			path_to(&p, x, from.y + (to.y - from.y) * here / (here - there));
	}
	return path_close(p);
}

/* Of the lower edge, plumb under or over x. */
static double lower_edge(struct outline o, double x)
{
	double low = INFINITY;
	for (int i = 0; i < o.n; i++) {
		struct vec from = o.corners[i].at, to = o.corners[(i + 1) % o.n].at;
		if ((from.x > x) != (to.x > x))
			low = fmin(low, from.y + (to.y - from.y) * (x - from.x) / (to.x - from.x));
	}
	return low;
}

/* A wall that passes steps may end under the tread behind the last that it cuts, and stand in the
 * skirt's way a little further back than that one reaches. */
static double back_of(const struct rod *r, const struct side *side, struct outline whole, double x)
{
	double back = x;
	for (int i = 0; i < r->job->treads.notch_count; i++) {
		const struct job_notch *n = &r->job->treads.notches[i];
		struct notch_wall w = notch_wall_make(r, n);
		bool is_here = w.passes && notch_hand(n) == side->hand && w.low.x < x;
		if (is_here && w.high.z > lower_edge(whole, x) + NEAR_ENOUGH)
			back = fmax(back, w.high.x + r->job->treads.scribe);
	}
	return back;
}

/* Front and back of the first wall in a tread that ends behind x; INFINITY: there is none. */
static struct vec wall_behind(const struct rod *r, const struct side *side, double x)
{
	struct vec first = vec(INFINITY, INFINITY);
	for (int step = 1; step <= r->steps; step++) {
		struct tread_plan t = tread_plan_make(r, step);
		const struct gaps *gaps = &t.ends[side->hand].gaps;
		double front = tread_front(&t);
		for (int i = 0; i < gaps->n; i++) {
			const struct gap *g = &gaps->at[i];
			double from = front + fmax(g->from, 0), to = front + fmin(g->to, t.depth);
			if (g->is_existing && to > x + NEAR_ENOUGH && from < first.x)
				first = vec(from, to);
		}
	}
	return first;
}

struct lengths skirt_lengths(struct arena *a, const struct rod *r, const struct side *side,
	struct outline whole)
{
	struct lengths l = { NEW_N(a, struct outline, MOST_NOTCHES * r->steps + 1), 0 };
	struct box all = outline_extent(whole);
	double x = all.x0;
	while (x < all.x1 - NEAR_ENOUGH) {
		struct vec wall = wall_behind(r, side, x);
		struct outline rest = x > all.x0 ? cut_at(a, whole, x, 1) : whole;
		if (wall.x > x + NEAR_ENOUGH)
			l.at[l.n++] = wall.x < all.x1 ? cut_at(a, rest, wall.x, -1) : rest;
		x = back_of(r, side, whole, wall.y);
	}
	return l;
}
