#include "parts/ball_search.h"

#include <string.h>

#include "pitchboard/ball.h"

/*
 * Branch and bound over squares.  The distance to an edge is convex, so in a
 * square it is largest at a corner, and so is the mean of two distances; what
 * passes is at most the smaller distance, hence at most their mean.  Between two
 * parallel balusters that bound is exact, and squares along the middle line are
 * not divided for nothing.
 */

#define CLOSE 0.005 /* radius: squares that promise no more than this, or are smaller, are left */
#define DEEPEST 20
#define PAIRS 6 /* nearest edges that are paired */

#define ROUNDS 14 /* of the search along a line */

/* The line through the best place is searched once more, to the end: between balusters set just to
 * the limit the limit is to be found, and nothing less. */
#define ABOUT 0.5
#define LAST_ROUNDS 40

struct square {
	struct vec at; /* its middle */
	double half;
	const int *edges; /* those that can be nearest somewhere in it */
	int n;
};

struct search {
	const struct ball_plane *plane;
	const struct ball_window *window;
	const struct ball_zone *zone;
	int *room; /* for the lists of edges, DEEPEST deep */
	double *near;
	int rounds;
	struct ball_found best;
};

static double distance(const struct search *s, int edge, struct vec p)
{
	return ball_edge_distance(&s->plane->edges[edge], p);
}

static struct vec corner(const struct square *q, int i)
{
	return vec(q->at.x + (i & 1 ? q->half : -q->half), q->at.y + (i & 2 ? q->half : -q->half));
}

static bool is_in_zone(const struct search *s, struct vec p)
{
	const struct ball_zone *z = s->zone;
	return p.x >= z->from && p.x <= z->to && p.y > slope_at(z->low, p.x) &&
		p.y < slope_at(z->high, p.x) && p.y > stretch_foot(s->plane->stretch, p.x);
}

/* Can no point of the square be in the zone?  What the feet stand on rises, so that under the
 * square's lower end nothing of it is higher: else all the air under the steps, where no ball
 * counts and none is found, would be divided to the last. */
static bool is_beside(const struct search *s, const struct square *q)
{
	const struct ball_zone *z = s->zone;
	double top = q->at.y + q->half, bottom = q->at.y - q->half;
	double lower_end = fmax(q->at.x - q->half, z->from), higher_end = q->at.x + q->half;
	return q->at.x + q->half < z->from || q->at.x - q->half > z->to ||
		top < slope_at(z->low, q->at.x - q->half) ||
		bottom > slope_at(z->high, higher_end) ||
		q->at.y + q->half < stretch_foot(s->plane->stretch, lower_end);
}

static double radius_at(const struct search *s, const struct square *q, struct vec p)
{
	double least = BALL_LARGEST / 2;
	for (int i = 0; i < q->n; i++)
		least = fmin(least, distance(s, q->edges[i], p));
	return least;
}

static void offer(struct search *s, double radius, struct vec p)
{
	if (radius <= s->best.radius || !is_in_zone(s, p) ||
		ball_plane_is_solid(s->plane, s->window, p))
		return;
	s->best = (struct ball_found){ radius, p };
}

/* The farthest point from the nearest edge, along the line away from it, within the square. */
static void climb(struct search *s, const struct square *q, int nearest)
{
	const struct ball_edge *e = &s->plane->edges[nearest];
	struct vec along = vec_sub(e->b, e->a), to = vec_sub(q->at, e->a);
	double length = vec_dot(along, along);
	double share = length > 0 ? fmin(fmax(vec_dot(to, along) / length, 0), 1) : 0;
	struct vec away = vec_unit(vec_sub(to, vec_scale(along, share)));
	double reach = q->half / fmax(fmax(fabs(away.x), fabs(away.y)), 0.5), low = -reach;
	double high = reach;
	for (int i = 0; i < s->rounds; i++) {
		double one = low + (high - low) * 0.382, other = low + (high - low) * 0.618;
		double r1 = radius_at(s, q, vec_add(q->at, vec_scale(away, one)));
		double r2 = radius_at(s, q, vec_add(q->at, vec_scale(away, other)));
		if (r1 > r2)
			high = other;
		else
			low = one;
	}
	struct vec p = vec_add(q->at, vec_scale(away, (low + high) / 2));
	offer(s, radius_at(s, q, p), p);
}

/* What of the list can still be nearest in the square, nearest ones first as far as PAIRS; and the
 * distance of its middle. */
static double gather(struct search *s, struct square *q, const struct square *of, int depth)
{
	int *list = s->room + (size_t)depth * (size_t)s->window->n;
	double least = BALL_LARGEST / 2;
	for (int i = 0; i < of->n; i++) {
		s->near[i] = distance(s, of->edges[i], q->at);
		least = fmin(least, s->near[i]);
	}
	q->n = 0;
	for (int i = 0; i < of->n; i++)
		if (s->near[i] <= least + 2 * q->half * 1.4143) {
			s->near[q->n] = s->near[i];
			list[q->n++] = of->edges[i];
		}
	for (int k = 0; k < PAIRS && k < q->n; k++)
		for (int i = k + 1; i < q->n; i++)
			if (s->near[i] < s->near[k]) {
				double d = s->near[i];
				int edge = list[i];
				s->near[i] = s->near[k];
				list[i] = list[k];
				s->near[k] = d;
				list[k] = edge;
			}
	q->edges = list;
	return least;
}

/* The most that a radius can be in the square. */
static double bound(const struct search *s, const struct square *q)
{
	int n = q->n < PAIRS ? q->n : PAIRS;
	double at[PAIRS][4], least = BALL_LARGEST / 2;
	for (int i = 0; i < n; i++)
		for (int c = 0; c < 4; c++)
			at[i][c] = distance(s, q->edges[i], corner(q, c));
	for (int i = 0; i < n; i++)
		for (int k = i; k < n; k++) {
			double most = 0;
			for (int c = 0; c < 4; c++)
				most = fmax(most, (at[i][c] + at[k][c]) / 2);
			least = fmin(least, most);
		}
	return least;
}

static void look(struct search *s, struct square q, const struct square *of, int depth)
{
	if (is_beside(s, &q) || q.half < CLOSE || depth >= DEEPEST)
		return;
	double middle = gather(s, &q, of, depth);
	if (bound(s, &q) <= s->best.radius + CLOSE)
		return;
	offer(s, middle, q.at);
	if (q.n > 0 && middle + q.half > s->best.radius)
		climb(s, &q, q.edges[0]);
	/* wholly inside of something */
	if (middle > q.half * 1.4143 && ball_plane_is_solid(s->plane, s->window, q.at))
		return;
	double half = q.half / 2;
	for (int i = 0; i < 4; i++) {
		struct square part = { vec(q.at.x + (i & 1 ? half : -half),
					       q.at.y + (i & 2 ? half : -half)),
			half, NULL, 0 };
		look(s, part, &q, depth + 1);
	}
}

struct ball_found ball_search(struct arena *a, const struct ball_plane *plane,
	const struct ball_window *w, const struct ball_zone *zone)
{
	struct search s = { .plane = plane, .window = w, .zone = zone, .rounds = ROUNDS };
	struct square all = { .edges = w->edges, .n = w->n };
	double half = (zone->to - zone->from) / 2, x = (zone->from + zone->to) / 2;
	double bottom = fmax(slope_at(zone->low, zone->from), zone->floor);
	double top = slope_at(zone->high, zone->to);
	s.best.radius = BALL_SMALLEST / 2;
	s.room = NEW_N(a, int, (size_t)(DEEPEST + 1) * (size_t)(w->n + 1));
	s.near = NEW_N(a, double, w->n + 1);
	for (double z = bottom + half; z - half < top && half > 0; z += 2 * half)
		look(&s, (struct square){ vec(x, z), half, NULL, 0 }, &all, 0);
	if (s.best.radius <= BALL_SMALLEST / 2)
		return (struct ball_found){ 0, { 0, 0 } };
	s.rounds = LAST_ROUNDS;
	struct square last = { s.best.at, ABOUT, NULL, 0 };
	gather(&s, &last, &all, 0);
	if (last.n > 0)
		climb(&s, &last, last.edges[0]);
	return s.best;
}
