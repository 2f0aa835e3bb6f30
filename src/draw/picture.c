/*
 * Drawing a picture.
 *
 * On paper a round is a bundle of lines, and so is the corner strip of a panelled newel.  Lines
 * that run side by side are sorted by the way they run and by their distance from the origin; of
 * the fine ones those stay that keep clear of the last one before them and of every bold one:
 *
 *      | |||| |          |  |   |
 *      | |||| |    ->    |  |   |
 *      | |||| |          |  |   |
 */
#include "draw/picture.h"

#include <stdlib.h>

/* Lines nearer to each other than this run together, in print and on a screen. */
#define CLEAR 0.35

/* Directions that differ by less are one. */
#define SAME_WAY 1e-4

/* A line is beside another one when this share of it is. */
#define BESIDE 0.7

struct pencil {
	struct vec a, b;
	enum pen pen;
	double way, off; /* its direction, and its distance from the origin */
	double from, to; /* along that direction */
	bool is_left_out;
	int order;
};

static struct pencil pencil_of(struct vec a, struct vec b, enum pen pen)
{
	struct vec d = vec_unit(vec_sub(b, a));

	if (d.x < -SAME_WAY || (d.x < SAME_WAY && d.y < 0))
		d = vec_scale(d, -1);
	double p = vec_dot(a, d), q = vec_dot(b, d);
	return (struct pencil){ .a = a,
		.b = b,
		.pen = pen,
		.way = round(atan2(d.y, d.x) / SAME_WAY),
		.off = vec_cross(d, a),
		.from = fmin(p, q),
		.to = fmax(p, q) };
}

static int compare_pencils(const void *one, const void *other)
{
	const struct pencil *p = one, *q = other;

	if (p->way != q->way)
		return p->way < q->way ? -1 : 1;
	if (p->off != q->off)
		return p->off < q->off ? -1 : 1;
	return p->order - q->order;
}

static int compare_orders(const void *one, const void *other)
{
	const struct pencil *p = one, *q = other;

	return p->order - q->order;
}

static bool is_beside(const struct pencil *p, const struct pencil *q)
{
	double shared = fmin(p->to, q->to) - fmax(p->from, q->from);

	return shared >= BESIDE * (p->to - p->from);
}

/* Is one of those beside it that stay? */
static bool is_crowded(const struct pencil *all, int n, int i)
{
	const struct pencil *p = &all[i];

	for (int k = i - 1; k >= 0 && all[k].way == p->way && p->off - all[k].off < CLEAR; k--)
		if (!all[k].is_left_out && is_beside(p, &all[k]))
			return true;
	for (int k = i + 1; k < n && all[k].way == p->way && all[k].off - p->off < CLEAR; k++)
		if (all[k].pen != PEN_FINE && is_beside(p, &all[k]))
			return true;
	return false;
}

static void thin_out(struct pencil *all, int n)
{
	qsort(all, (size_t)n, sizeof(*all), compare_pencils);
	for (int i = 0; i < n; i++)
		all[i].is_left_out = all[i].pen == PEN_FINE && is_crowded(all, n, i);
	qsort(all, (size_t)n, sizeof(*all), compare_orders);
}

static void draw_tints(struct drawing *g, const struct view *v, struct placing at)
{
	for (int i = 0; i < v->tint_count; i++) {
		const struct tint *t = &v->tints[i];
		struct vec *points = NEW_N(g->arena, struct vec, t->n);
		for (int k = 0; k < t->n; k++)
			points[k] = placing_at(at, t->points[k]);
		draw_fill(g, t->shade, points, t->n);
	}
}

void picture_draw(struct drawing *g, const struct view *v, struct placing at,
	enum picture_line (*line)(const struct part *p, double scale))
{
	struct pencil *all = NEW_N(g->arena, struct pencil, v->stroke_count);

	draw_tints(g, v, at);
	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		bool bold = s->pen != PEN_OUTLINE || line(s->part, at.scale) == PICTURE_BOLD;
		all[i] = pencil_of(placing_at(at, s->a), placing_at(at, s->b),
			bold ? s->pen : PEN_FINE);
		all[i].order = i;
	}
	thin_out(all, v->stroke_count);
	for (int i = 0; i < v->stroke_count; i++)
		if (!all[i].is_left_out)
			draw_line(g, all[i].pen, all[i].a, all[i].b);
}
