#include "random/balls.h"

#include <stdlib.h>

#include "parts/infill.h"
#include "pitchboard/ball.h"
#include "random/convex.h"

#define STEP 12.0   /* of the grid on which everything is tried */
#define AGREED 0.03 /* of a diameter */
#define FINER 12    /* times the best points of the grid are looked round */
#define PROMISING 40
#define REFINED (4 * STEP) /* two steps either way, each half as long as the one before */
#define TILE 8             /* points of the grid either way, held against what is near them */

/* A convex piece seen square to the balustrade. */
struct shade {
	struct vec *at; /* counter-clockwise */
	int n;
	struct box box;
};

struct shades {
	const struct stretch *stretch;
	struct shade *shade;
	int n;
};

static int from_left(const void *one, const void *other)
{
	const struct vec *a = one, *b = other;
	if (a->x != b->x)
		return (a->x > b->x) - (a->x < b->x);
	return (a->y > b->y) - (a->y < b->y);
}

static double turn(struct vec a, struct vec b, struct vec c)
{
	return vec_cross(vec_sub(b, a), vec_sub(c, b));
}

/* Convex hull, by Andrew's monotone chain. */
static struct shade hull(struct arena *a, struct vec *p, int n)
{
	struct shade h = { NEW_N(a, struct vec, 2 * n + 1), 0,
		{ INFINITY, INFINITY, -INFINITY, -INFINITY } };
	qsort(p, (size_t)n, sizeof(*p), from_left);
	for (int pass = 0, least = 1; pass < 2; pass++, least = h.n + 1) {
		for (int i = 0; i < n; i++) {
			struct vec q = pass ? p[n - 1 - i] : p[i];
			while (h.n > least && turn(h.at[h.n - 2], h.at[h.n - 1], q) <= 0)
				h.n--;
			h.at[h.n++] = q;
		}
		h.n--;
	}
	for (int i = 0; i < n; i++)
		h.box = (struct box){ fmin(h.box.x0, p[i].x), fmin(h.box.y0, p[i].y),
			fmax(h.box.x1, p[i].x), fmax(h.box.y1, p[i].y) };
	return h;
}

static void add_shade(struct arena *a, struct shades *all, const struct convex *c)
{
	double half = all->stretch->rod->job->rail.width / 2 - 1, low = INFINITY, high = -INFINITY;
	struct vec *p = NEW_N(a, struct vec, 2 * c->n);
	for (int i = 0; i < 2 * c->n; i++) {
		struct vec3 at =
			frame_place_back(all->stretch->axes, i < c->n ? c->a[i] : c->b[i - c->n]);
		p[i] = vec(at.x, at.z);
		low = fmin(low, at.y);
		high = fmax(high, at.y);
	}
	if (low < half && high > -half)
		all->shade[all->n++] = hull(a, p, 2 * c->n);
}

static struct shades shades_of(struct arena *a, const struct stretch *s, const struct part *parts)
{
	struct shades all = { .stretch = s };
	struct convex *list = NULL;
	int n = 0;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			for (struct convex *c = convex_pieces(a, p, p->places[i], vec3(0, 0, 0)),
					   *next;
				c; c = next) {
				next = c->next;
				c->next = list;
				list = c;
				n++;
			}
	all.shade = NEW_N(a, struct shade, n + 1);
	for (const struct convex *c = list; c; c = c->next)
		add_shade(a, &all, c);
	return all;
}

static double from_edge(struct vec p, struct vec a, struct vec b)
{
	struct vec along = vec_sub(b, a);
	double share = vec_dot(vec_sub(p, a), along) / fmax(vec_dot(along, along), 1e-12);
	struct vec foot = vec_add(a, vec_scale(along, fmin(fmax(share, 0), 1)));
	return vec_length(vec_sub(p, foot));
}

/* 0 inside. */
static double from_shade(struct vec p, const struct shade *h)
{
	double least = INFINITY;
	bool inside = h->n > 2;
	for (int i = 0; i < h->n; i++) {
		struct vec a = h->at[i], b = h->at[(i + 1) % h->n];
		least = fmin(least, from_edge(p, a, b));
		inside = inside && turn(a, b, p) > 0;
	}
	return inside ? 0 : least;
}

/* How far a point is from a box; 0 inside. */
static double from_box(struct vec p, const struct box *b)
{
	double dx = p.x < b->x0 ? b->x0 - p.x : p.x > b->x1 ? p.x - b->x1 : 0;
	double dy = p.y < b->y0 ? b->y0 - p.y : p.y > b->y1 ? p.y - b->y1 : 0;
	return dx > dy ? dx : dy;
}

static double clear_at(const struct shades *all, struct vec p)
{
	const struct stretch *s = all->stretch;
	double least = BALL_LARGEST / 2;
	if (s->foot.kind == RAIL_END_PLUMB)
		least = fmin(least, p.x - s->from);
	if (s->head.kind == RAIL_END_PLUMB)
		least = fmin(least, s->to - p.x);
	for (int i = 0; i < all->n && least > 0; i++)
		if (from_box(p, &all->shade[i].box) < least)
			least = fmin(least, from_shade(p, &all->shade[i]));
	return least;
}

/* Those that matter to any point no further than `reach` from this one: what bounds the ball here
 * bounds it there. */
static struct shades shades_near(struct arena *a, const struct shades *all, struct vec p,
	double reach)
{
	double most = clear_at(all, p) + 2 * reach;
	int n = 0;
	for (int i = 0; i < all->n; i++)
		n += from_box(p, &all->shade[i].box) < most;
	struct shades near = { all->stretch, NEW_N(a, struct shade, n + 1), 0 };
	for (int i = 0; i < all->n; i++)
		if (from_box(p, &all->shade[i].box) < most)
			near.shade[near.n++] = all->shade[i];
	return near;
}

static bool is_guarded(const struct stretch *s, struct vec p, double above)
{
	return p.x >= s->from && p.x <= s->to && p.y > stretch_foot(s, p.x) &&
		p.y > above + s->slope * p.x && p.y < stretch_rail_under(s, p.x);
}

/* Round a point, finer and finer; never further from it than REFINED. */
static double refine(const struct shades *all, struct vec p, double above)
{
	double best = clear_at(all, p);
	for (double step = STEP / 2; step > STEP / (1 << FINER); step /= 2) {
		struct vec middle = p;
		for (int i = -2; i <= 2; i++)
			for (int k = -2; k <= 2; k++) {
				struct vec q = vec_add(middle, vec(i * step, k * step));
				double r =
					is_guarded(all->stretch, q, above) ? clear_at(all, q) : 0;
				if (r > best) {
					best = r;
					p = q;
				}
			}
	}
	return best;
}

struct trial {
	double radius;
	struct vec at;
};

struct trials {
	struct trial *at;
	int n;
};

/* The points of the grid from this corner on. */
static void try_tile(struct arena *a, const struct shades *all, struct vec corner, double above,
	struct trials *t)
{
	struct vec guarded[TILE * TILE];
	int n = 0;
	for (int i = 0; i < TILE * TILE; i++) {
		int row = i / TILE, column = i % TILE;
		struct vec p = vec_add(corner, vec(STEP * row, STEP * column));
		if (is_guarded(all->stretch, p, above))
			guarded[n++] = p;
	}
	if (n == 0)
		return;
	struct shades near = shades_near(a, all, guarded[0], 2 * TILE * STEP);
	for (int i = 0; i < n; i++)
		t->at[t->n++] = (struct trial){ clear_at(&near, guarded[i]), guarded[i] };
}

static int larger_first(const void *one, const void *other)
{
	double a = ((const struct trial *)one)->radius, b = ((const struct trial *)other)->radius;
	return (a < b) - (a > b);
}

static double largest(struct arena *a, const struct shades *all, double above)
{
	const struct stretch *s = all->stretch;
	double low = stretch_foot(s, s->from), high = stretch_rail_under(s, s->to), best = 0;
	double tile = TILE * STEP;
	int room = (int)((s->to - s->from) / tile + 2) * (int)((high - low) / tile + 2);
	struct trials tried = { NEW_N(a, struct trial, TILE * TILE * room), 0 };
	for (double x = s->from; x < s->to; x += tile)
		for (double z = low; z < high; z += tile)
			try_tile(a, all, vec(x, z), above, &tried);
	qsort(tried.at, (size_t)tried.n, sizeof(*tried.at), larger_first);
	for (int i = 0; i < tried.n && i < PROMISING; i++) {
		struct shades near = shades_near(a, all, tried.at[i].at, REFINED);
		best = fmax(best, refine(&near, tried.at[i].at, above));
	}
	return 2 * best;
}

static bool is_here(const struct stretch *s, const struct ball *b)
{
	struct vec3 at = frame_place_back(s->axes, b->at);
	return fabs(at.y) < 1 && at.x >= s->from && at.x <= s->to &&
		b->on_rake == (s->feet != FEET_ON_FLOOR);
}

/* What was measured on a stretch, with the triangles or without. */
static double measured(const struct stretch *s, const struct ball *balls, enum ball_place without)
{
	double most = 0;
	for (const struct ball *b = balls; b; b = b->next)
		if (is_here(s, b) && b->place != without)
			most = fmax(most, b->diameter);
	return most;
}

static const char *all_pass(struct arena *a, const struct shades *all, const struct ball *balls)
{
	for (const struct ball *b = balls; b; b = b->next) {
		struct vec3 at = frame_place_back(all->stretch->axes, b->at);
		if (!is_here(all->stretch, b))
			continue;
		double clear = 2 * clear_at(all, vec(at.x, at.z));
		if (clear < b->diameter - AGREED)
			return arena_printf(a, "a ball of %.3f %s: only %.3f passes", b->diameter,
				ball_place_name(all->stretch->rod->job, b->place), clear);
	}
	return NULL;
}

static const char *none_larger(struct arena *a, const struct shades *all, const struct ball *balls,
	double above, enum ball_place without)
{
	double found = measured(all->stretch, balls, without), tried = largest(a, all, above);
	if (tried < BALL_SMALLEST || tried < found + AGREED)
		return NULL;
	return arena_printf(a, "measured %.3f, but %.3f passes, from x %.0f to %.0f", found, tried,
		all->stretch->from, all->stretch->to);
}

static const char *stretch_agrees(struct arena *a, const struct stretch *s,
	const struct part *parts, const struct ball *balls)
{
	struct shades all = shades_of(a, s, parts);
	double shoe = infill_bottom(s, 0);
	const char *why = all_pass(a, &all, balls);
	if (!why)
		why = none_larger(a, &all, balls, -1e6, (enum ball_place) - 1);
	if (!why && s->feet == FEET_ON_TREADS && infill_has_shoe(s->rod->job))
		why = none_larger(a, &all, balls, shoe, BALL_TRIANGLE);
	return why;
}

const char *balls_agree(struct arena *a, const struct stair *st, const struct part *parts)
{
	const struct ball *balls = balls_measure(a, st, parts);
	struct rod r = rod_make(st, &st->flights[0]);
	const char *why = NULL;
	for (const struct stretch *s = stretches_make(a, &r); s && !why; s = s->next)
		why = stretch_is_made(s) ? stretch_agrees(a, s, parts, balls) : NULL;
	return why;
}
