#include "parts/bands.h"

#include <assert.h>

static bool same_plane(struct end_plane a, struct end_plane b)
{
	return near_enough(a.at, b.at) && near_enough(a.by_y, b.by_y);
}

static double plane_at(struct end_plane e, double y)
{
	return e.at + e.by_y * y;
}

void bands_add(struct bands *b, struct band more)
{
	double middle = (more.from + more.to) / 2;
	if (plane_at(more.far, middle) - plane_at(more.near, middle) < NEAR_ENOUGH)
		return;
	struct band *last = b->n > 0 ? &b->at[b->n - 1] : NULL;
	if (last && near_enough(last->to, more.from) && same_plane(last->near, more.near) &&
		same_plane(last->far, more.far)) {
		last->to = more.to;
		return;
	}
	assert(b->n < MOST_BANDS);
	b->at[b->n++] = more;
}

void bands_shift(struct bands *b, double along)
{
	for (int i = 0; i < b->n; i++) {
		b->at[i].near.at += along;
		b->at[i].far.at += along;
	}
}

void path_straight_to(struct path *p, double x, double y)
{
	while (p->n > 1) {
		struct vec a = p->corners[p->n - 2].at, b = p->corners[p->n - 1].at;
		struct vec on = vec_sub(vec(x, y), b), before = vec_sub(b, a);
		if (fabs(vec_cross(before, on)) > NEAR_ENOUGH * vec_length(before) ||
			vec_dot(before, on) < 0)
			break;
		p->n--;
	}
	path_to(p, x, y);
}

struct outline bands_outline(struct arena *a, const struct bands *b)
{
	struct path p = path_begin(a, 4 * b->n + 1);
	for (int i = 0; i < b->n; i++) {
		const struct band *k = &b->at[i];
		path_straight_to(&p, plane_at(k->far, k->from), k->from);
		path_straight_to(&p, plane_at(k->far, k->to), k->to);
	}
	for (int i = b->n - 1; i >= 0; i--) {
		const struct band *k = &b->at[i];
		path_straight_to(&p, plane_at(k->near, k->to), k->to);
		path_straight_to(&p, plane_at(k->near, k->from), k->from);
	}
	return path_close(p);
}

/* Which side of a line square to the width is kept: x * way <= at * way. */
struct limit {
	double at, way;
};

static void add_corner(struct profile *f, struct vec at, unsigned soft)
{
	const struct vec *last = f->n > 0 ? &f->at[f->n - 1] : NULL;
	if (last && vec_near(*last, at)) {
		f->soft[f->n - 1] |= (unsigned char)soft;
		return;
	}
	f->at[f->n] = at;
	f->soft[f->n++] = (unsigned char)soft;
}

static struct vec crossing(struct vec a, struct vec b, double x)
{
	double share = (x - a.x) / (b.x - a.x);
	return vec(x, a.y + share * (b.y - a.y));
}

/* What is left of a section on one side; the seam that it leaves is soft. */
static struct profile profile_limited(struct arena *a, struct profile f, struct limit l)
{
	struct profile kept = { NEW_N(a, struct vec, 2 * f.n), NEW_N(a, unsigned char, 2 * f.n),
		0 };
	for (int i = 0; i < f.n; i++) {
		struct vec at = f.at[i], next = f.at[(i + 1) % f.n];
		bool in = (l.at - at.x) * l.way > -NEAR_ENOUGH;
		bool next_in = (l.at - next.x) * l.way > -NEAR_ENOUGH;
		bool on = near_enough(l.at, at.x);
		if (in)
			add_corner(&kept, at, f.soft[i] | (on ? SOFT_SIDE : 0u));
		if (in && !next_in)
			add_corner(&kept, on ? at : crossing(at, next, l.at),
				SOFT_SIDE | SOFT_A | SOFT_B);
		else if (!in && next_in && !near_enough(l.at, next.x))
			add_corner(&kept, crossing(at, next, l.at), SOFT_SIDE);
	}
	return kept;
}

static double width_of(struct profile f)
{
	double width = 0;
	for (int i = 0; i < f.n; i++)
		width = fmax(width, f.at[i].x);
	return width;
}

struct solid *bands_solids(struct arena *a, const struct bands *b, struct outline section)
{
	struct profile whole = profile_of(a, section);
	double width = width_of(whole);
	struct solid *s = NULL;
	for (int i = 0; i < b->n; i++) {
		const struct band *k = &b->at[i];
		struct profile f = whole;
		if (k->from > NEAR_ENOUGH)
			f = profile_limited(a, f, (struct limit){ k->from, -1 });
		if (k->to < width - NEAR_ENOUGH)
			f = profile_limited(a, f, (struct limit){ k->to, 1 });
		s = solid_add(s, solid_strip(a, f, k->near, k->far));
	}
	return s;
}

struct cuts_across cuts_between(double from, double to)
{
	return (struct cuts_across){ { from, to }, 2 };
}

void cuts_add(struct cuts_across *c, double at)
{
	int k = c->n;
	for (int i = 0; i < c->n; i++)
		if (near_enough(c->at[i], at))
			return;
	if (at < c->at[0] || at > c->at[c->n - 1])
		return;
	assert(c->n < MOST_BANDS);
	for (; k > 0 && c->at[k - 1] > at; k--)
		c->at[k] = c->at[k - 1];
	c->at[k] = at;
	c->n++;
}
