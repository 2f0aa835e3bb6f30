#include "rules/ball.h"

/*
 * The room round a point, its distance from the nearest shadow, changes by no more than one moves.
 * So a cell with so much room in its middle and no corner far away can be put aside as soon as a
 * larger ball is known (branch and bound).  Between two straight sides the room is the same all
 * along, and that rule alone would cut the whole gap into dust; there a second one helps: a ball is
 * no wider than the free way across, between two edges that pass the whole cell.
 */

#define EXACT 0.002 /* of the radius */
#define REACH 400.0 /* no ball that matters is larger */
#define ROWS 16     /* points in a row, to begin with */
#define CLIMBED 1e-5
#define ENDED 1e-4 /* a cell so small is cut no further */

/* The library's fmin() also minds numbers that are none. */
static inline double lesser(double a, double b)
{
	return a < b ? a : b;
}

static inline double greater(double a, double b)
{
	return a > b ? a : b;
}

/* ---- room round a point ---- */

/* Squared. */
static double to_edge(struct vec p, struct vec a, struct vec b)
{
	struct vec along = vec_sub(b, a), off = vec_sub(p, a);
	double length = vec_dot(along, along);
	double share = length > 0 ? vec_dot(off, along) / length : 0;

	off = vec_sub(off, vec_scale(along, lesser(greater(share, 0), 1)));
	return vec_dot(off, off);
}

static double to_box(struct vec p, struct box b)
{
	double dx = greater(greater(b.x0 - p.x, p.x - b.x1), 0);
	double dy = greater(greater(b.y0 - p.y, p.y - b.y1), 0);

	return hypot(dx, dy);
}

/* Negative inside: so far it is to the nearest place where there may be room. */
static double to_shadow(struct vec p, const struct shadow *s)
{
	double nearest = INFINITY;
	bool inside = false;

	for (int i = 0; i < s->n; i++) {
		struct vec a = s->at[i], b = s->at[(i + 1) % s->n];
		nearest = lesser(nearest, to_edge(p, a, b));
		if ((a.y > p.y) != (b.y > p.y) &&
			p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
			inside = !inside;
	}
	return inside ? -sqrt(nearest) : sqrt(nearest);
}

/* Is the point under the lowest bar? */
static bool is_under_bars(const struct shadows *all, struct vec p)
{
	double lowest = INFINITY;

	for (int i = 0; i < all->n; i++) {
		const struct shadow *s = &all->shadow[i];
		if (!s->is_bar || p.x < s->box.x0 || p.x > s->box.x1)
			continue;
		for (int k = 0; k < s->n; k++) {
			struct vec a = s->at[k], b = s->at[(k + 1) % s->n];
			if ((a.x > p.x) != (b.x > p.x))
				lowest = lesser(lowest,
					a.y + (b.y - a.y) * (p.x - a.x) / (b.x - a.x));
		}
	}
	return lowest < INFINITY && p.y < lowest;
}

static double to_nearest_bar(const struct shadows *all, struct vec p)
{
	double nearest = INFINITY;

	for (int i = 0; i < all->n; i++)
		if (all->shadow[i].is_bar)
			nearest = lesser(nearest, fabs(to_shadow(p, &all->shadow[i])));
	return nearest;
}

/* Of a ball with its middle there; where there is none, by how much not. */
static double room_round(const struct shadows *all, const struct ball_window *w, struct vec p)
{
	double room = lesser(REACH, (slope_at(w->top, p.x) - p.y) / hypot(1, w->top.slope));

	/* to come to the place that is meant one has to pass a bar */
	if (w->place != BALL_ANYWHERE && is_under_bars(all, p) != (w->place == BALL_UNDER_BAR))
		room = lesser(room, -to_nearest_bar(all, p));
	for (int i = 0; i < all->n; i++)
		if (to_box(p, all->shadow[i].box) < greater(room, 0) + NEAR_ENOUGH)
			room = lesser(room, to_shadow(p, &all->shadow[i]));
	return room;
}

/* ---- the free way across a cell ---- */

static struct vec middle_of(struct box b)
{
	return vec((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2);
}

/* From the middle of a cell to its corners. */
static double reach_of(struct box b)
{
	return hypot(b.x1 - b.x0, b.y1 - b.y0) / 2;
}

/* What lies free along a line through a cell. */
struct free_way {
	double before, after;
};

/* An edge that passes a strip as wide as the cell bounds what is free on its side of the cell.
 * Positions are along the way, from the middle. */
static struct free_way way_cut(struct free_way w, struct vec a, struct vec b, double reach)
{
	if (lesser(a.y, b.y) > -reach || greater(a.y, b.y) < reach)
		return w;
	double lean = (b.x - a.x) / (b.y - a.y);
	double at = a.x - lean * a.y, off = fabs(lean) * reach;
	if (at + off < -reach)
		w.before = greater(w.before, at - off);
	if (at - off > reach)
		w.after = lesser(w.after, at + off);
	return w;
}

static double half_way_across(const struct shadows *all, struct box cell, struct vec way)
{
	struct free_way w = { -INFINITY, INFINITY };
	struct vec middle = middle_of(cell), side = vec_left(way);
	double reach = reach_of(cell);

	for (int i = 0; i < all->n; i++) {
		const struct shadow *s = &all->shadow[i];
		struct vec last = vec_sub(s->at[s->n - 1], middle);
		struct vec before = vec(vec_dot(last, way), vec_dot(last, side));
		for (int k = 0; k < s->n; k++) {
			struct vec at = vec_sub(s->at[k], middle);
			struct vec here = vec(vec_dot(at, way), vec_dot(at, side));
			w = way_cut(w, before, here, reach);
			before = here;
		}
	}
	/* half of the way; and from no place of the cell is it further to either end */
	double most = ((cell.x1 - cell.x0) * fabs(way.x) + (cell.y1 - cell.y0) * fabs(way.y)) / 2;
	return lesser((w.after - w.before) / 2, lesser(most - w.before, most + w.after));
}

/* ---- the search ---- */

struct search {
	const struct shadows *all;
	const struct ball_window *window;
	struct vec rake; /* square to the rail */
	double radius;
	struct vec at;
};

/* No more than this is the radius of a ball with its middle in the cell. */
static double most_in(const struct search *s, struct box cell, double room)
{
	double most = room + reach_of(cell);

	if (most > s->radius + EXACT)
		most = lesser(most, half_way_across(s->all, cell, vec(1, 0)));
	if (most > s->radius + EXACT)
		most = lesser(most, half_way_across(s->all, cell, vec(0, 1)));
	if (most > s->radius + EXACT)
		most = lesser(most, half_way_across(s->all, cell, s->rake));
	return most;
}

/* The room round a point; the largest so far is kept. */
static double try_at(struct search *s, struct vec p)
{
	double room = room_round(s->all, s->window, p);

	if (room > s->radius) {
		s->radius = room;
		s->at = p;
	}
	return room;
}

/* From a point to the best place near it, by ever smaller steps. */
static void climb(struct search *s, struct vec from, double step)
{
	static const struct vec ways[] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 }, { 1, 1 },
		{ -1, -1 }, { 1, -1 }, { -1, 1 } };
	struct box b = s->window->box;
	double here = try_at(s, from);

	while (step > CLIMBED) {
		double before = here;
		for (int i = 0; i < 8; i++) {
			struct vec p = vec_add(from, vec_scale(ways[i], step));
			p = vec(lesser(greater(p.x, b.x0), b.x1), lesser(greater(p.y, b.y0), b.y1));
			double room = try_at(s, p);
			if (room <= here)
				continue;
			here = room;
			from = p;
		}
		if (here <= before)
			step /= 2;
	}
}

/* A large ball to begin with puts most of the window aside at once. */
static void search_first(struct search *s)
{
	struct box b = s->window->box;
	struct vec step = vec((b.x1 - b.x0) / ROWS, (b.y1 - b.y0) / ROWS);
	double before = s->radius;

	for (int i = 0; i < ROWS; i++)
		for (int k = 0; k < ROWS; k++)
			try_at(s, vec(b.x0 + (i + 0.5) * step.x, b.y0 + (k + 0.5) * step.y));
	if (s->radius > before)
		climb(s, s->at, greater(step.x, step.y));
}

static void search_cell(struct search *s, struct box cell)
{
	struct vec middle = middle_of(cell);
	double room = try_at(s, middle);

	if (reach_of(cell) < ENDED || most_in(s, cell, room) <= s->radius + EXACT)
		return;
	struct box one = cell, other = cell;
	if (cell.x1 - cell.x0 > cell.y1 - cell.y0)
		one.x1 = other.x0 = middle.x;
	else
		one.y1 = other.y0 = middle.y;
	search_cell(s, one);
	search_cell(s, other);
}

/* Those that a ball in the window could touch. */
static struct shadows shadows_near(struct arena *a, const struct shadows *all, struct box b)
{
	struct shadow *list = NEW_N(a, struct shadow, all->n);
	struct shadows near = { list, 0 };

	for (int i = 0; i < all->n; i++) {
		struct box s = all->shadow[i].box;
		if (s.x0 < b.x1 + REACH / 2 && s.x1 > b.x0 - REACH / 2 && s.y0 < b.y1 + REACH / 2 &&
			s.y1 > b.y0 - REACH / 2)
			list[near.n++] = all->shadow[i];
	}
	return near;
}

struct ball ball_largest(struct arena *a, const struct shadows *all, struct ball_window w)
{
	struct shadows near = shadows_near(a, all, w.box);
	struct search s = { .all = &near, .window = &w, .radius = w.least / 2 };

	if (w.box.x1 <= w.box.x0 || w.box.y1 <= w.box.y0)
		return (struct ball){ 0 };
	s.rake = vec_unit(vec(-w.top.slope, 1));
	search_first(&s);
	search_cell(&s, w.box);
	return s.radius > w.least / 2 ? (struct ball){ 2 * s.radius, s.at } : (struct ball){ 0 };
}
