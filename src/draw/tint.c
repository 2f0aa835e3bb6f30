/*
 * What is seen of the shaded faces of a picture.
 *
 * From each patch of such a face, whatever lies before it is taken off.  Inside a screen and
 * before the patch are both half planes, as in hidden.c, so what the screen hides is convex and
 * leaves convex pieces, exactly:
 *
 *      _________________           _____ ___________
 *     |                 |         |     |___________|
 *     |    .---------------       |     |
 *     |    |   screen             |     |
 *     |____|____________          |_____|
 */
#include <stdlib.h>

#include "draw/bounds.h"
#include "draw/grid.h"
#include "draw/scene.h"

/* Pieces with less area than this are crumbs. */
#define CRUMB 1e-2

/* Convex, counter-clockwise. */
struct patch {
	struct patch *next;
	const struct vec *at;
	int n;
	struct box box;
};

struct tinter {
	const struct scene *scene;
	struct vec *now, *then; /* what is being cut, by turns */
	struct half *hides;     /* half planes in which a screen hides */
	int room;               /* in each of them */
	struct tints found;
	int found_room;
};

static void make_room(struct tinter *t, int room)
{
	struct arena *a = t->scene->arena;

	if (room <= t->room)
		return;
	t->room = 2 * room;
	t->now = NEW_N(a, struct vec, t->room);
	t->then = NEW_N(a, struct vec, t->room);
	t->hides = NEW_N(a, struct half, t->room);
}

static double inside(struct half h, struct vec p)
{
	return h.x * p.x + h.y * p.y + h.at;
}

enum share { SHARE_NONE, SHARE_SOME, SHARE_ALL };

/* How much of a polygon lies in a half plane, before anything is cut: nearly always all or none. */
static enum share share_in(const struct vec *at, int n, struct half h)
{
	double low = INFINITY, high = -INFINITY;

	for (int i = 0; i < n; i++) {
		double v = inside(h, at[i]);
		low = v < low ? v : low;
		high = v > high ? v : high;
	}
	if (high < RIM)
		return SHARE_NONE;
	return low > -RIM ? SHARE_ALL : SHARE_SOME;
}

/* The part of a convex polygon that lies in a half plane; 0 points: none to speak of. */
static int clip_half(const struct vec *at, int n, struct half h, struct vec *out)
{
	int count = 0;

	for (int i = 0; i < n; i++) {
		struct vec p = at[i], q = at[(i + 1) % n];
		double from = inside(h, p), to = inside(h, q);
		if (from >= 0)
			out[count++] = p;
		if ((from > 0 && to < 0) || (from < 0 && to > 0))
			out[count++] = vec_add(p, vec_scale(vec_sub(q, p), from / (from - to)));
	}
	return count >= 3 && points_area(out, count) > CRUMB ? count : 0;
}

/* Where a screen lies before a plane, and inside itself. */
static int hides_where(const struct screen *s, struct plane of, struct half *out)
{
	int n = 0;

	for (int i = 0; i < s->n; i++)
		out[n++] = s->sides[i];
	out[n++] = (struct half){ s->plane.dx - of.dx, s->plane.dy - of.dy,
		s->plane.z - of.z - NEARER };
	return n;
}

/* Cuts what is at hand down to the half plane; its points. */
static int cut_down(struct tinter *t, int n, struct half h)
{
	struct vec *cut = t->then;
	enum share share = share_in(t->now, n, h);

	if (share != SHARE_SOME)
		return share == SHARE_ALL ? n : 0;
	n = clip_half(t->now, n, h, cut);
	t->then = t->now;
	t->now = cut;
	return n;
}

static void take_up(struct tinter *t, const struct patch *p)
{
	for (int i = 0; i < p->n; i++)
		t->now[i] = p->at[i];
}

static bool is_hidden_somewhere(struct tinter *t, const struct patch *p, int sides)
{
	int n = p->n;

	take_up(t, p);
	for (int i = 0; i < sides && n > 0; i++)
		n = cut_down(t, n, t->hides[i]);
	return n > 0;
}

static struct patch *patch_keep(struct tinter *t, const struct vec *at, int n, struct patch *next)
{
	struct patch *p = NEW(t->scene->arena, struct patch);
	struct vec *kept = NEW_N(t->scene->arena, struct vec, n);

	for (int i = 0; i < n; i++)
		kept[i] = at[i];
	*p = (struct patch){ next, kept, n, points_box(at, n) };
	return p;
}

/* Puts what the screen leaves of a patch in front of a list. */
static struct patch *patch_cut(struct tinter *t, struct patch *p, int sides, struct patch *list)
{
	int n = p->n;

	take_up(t, p);
	for (int i = 0; i < sides && n > 0; i++) {
		struct half in = t->hides[i], out = { -in.x, -in.y, -in.at };
		int beside = share_in(t->now, n, in) == SHARE_ALL
			? 0
			: clip_half(t->now, n, out, t->then);
		if (beside > 0)
			list = patch_keep(t, t->then, beside, list);
		n = cut_down(t, n, in);
	}
	return list;
}

/* ---- a face ---- */

static bool is_before(const struct screen *s, const struct screen *of, double farthest)
{
	return s->face != of->face && s->nearest > farthest + NEARER &&
		box_touches(s->box, of->box);
}

static struct patch *screen_take(struct tinter *t, const struct screen *s, struct plane of,
	struct patch *list)
{
	struct patch *left = NULL;

	for (struct patch *p = list, *next; p; p = next) {
		next = p->next;
		make_room(t, p->n + s->n + 2);
		int sides = hides_where(s, of, t->hides);
		if (box_touches(p->box, s->box) && is_hidden_somewhere(t, p, sides)) {
			left = patch_cut(t, p, sides, left);
			continue;
		}
		p->next = left;
		left = p;
	}
	return left;
}

static double farthest_of(const struct screen *s)
{
	double z = INFINITY;

	for (int i = 0; i < s->point_count; i++)
		z = fmin(z, plane_at(s->plane, s->points[i].x, s->points[i].y));
	return z;
}

static void tint_add(struct tinter *t, const struct patch *p, enum shade shade)
{
	if (t->found.n == t->found_room) {
		struct tint *old = t->found.at;
		t->found_room = t->found_room ? 2 * t->found_room : 256;
		t->found.at = NEW_N(t->scene->arena, struct tint, t->found_room);
		for (int i = 0; i < t->found.n; i++)
			t->found.at[i] = old[i];
	}
	t->found.at[t->found.n++] = (struct tint){ p->at, p->n, shade };
}

static void screen_tint(struct tinter *t, struct grid *g, const struct screen *s)
{
	struct patch whole = { NULL, s->points, s->point_count, s->box };
	struct patch *seen = &whole;
	double farthest = farthest_of(s);
	const struct screen *c = grid_cover(g, s->box);

	for (; c && seen; c = c->found)
		if (is_before(c, s, farthest))
			seen = screen_take(t, c, s->plane, seen);
	for (; seen; seen = seen->next)
		tint_add(t, seen, s->face->shade);
}

struct tints tints_find(const struct scene *s, struct grid *g)
{
	struct tinter t = { .scene = s };

	if (!s->spec->picture)
		return t.found;
	for (enum shade shade = SHADE_BLACK; shade < SHADE_WHITE; shade++)
		for (const struct screen *c = s->screens; c; c = c->next)
			if (c->face && c->face->shade == shade)
				screen_tint(&t, g, c);
	return t.found;
}
