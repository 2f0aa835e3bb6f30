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

/* Lines stay whole unless others run beside this share of them. */
#define BESIDE 0.7

/* Along a line. */
struct span {
	double from, to;
};

struct pencil {
	struct vec a, b;
	enum pen pen;
	double way, off; /* its direction, and its distance from the origin */
	struct span span;
	bool is_left_out; /* but for these */
	const struct span *rests;
	int rest_count;
	int order;
};

/* From left to right, or up. */
static struct vec direction_of(struct vec a, struct vec b)
{
	struct vec d = vec_unit(vec_sub(b, a));

	return d.x < -SAME_WAY || (d.x < SAME_WAY && d.y < 0) ? vec_scale(d, -1) : d;
}

static struct pencil pencil_of(struct vec a, struct vec b, enum pen pen)
{
	struct vec d = direction_of(a, b);
	double p = vec_dot(a, d), q = vec_dot(b, d);
	return (struct pencil){ .a = a,
		.b = b,
		.pen = pen,
		.way = round(atan2(d.y, d.x) / SAME_WAY),
		.off = vec_cross(d, a),
		.span = { fmin(p, q), fmax(p, q) } };
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

static int compare_spans(const void *one, const void *other)
{
	const struct span *p = one, *q = other;

	return (p->from > q->from) - (p->from < q->from);
}

static bool is_near(const struct pencil *p, const struct pencil *q)
{
	return p->way == q->way && fabs(p->off - q->off) < CLEAR;
}

static int add_shared(struct span p, struct span q, struct span *out)
{
	struct span shared = { fmax(p.from, q.from), fmin(p.to, q.to) };

	if (shared.from >= shared.to)
		return 0;
	*out = shared;
	return 1;
}

/* Where fine lines before it that stay, and bold ones on either side, run beside line i. */
static int spans_beside(const struct pencil *all, int n, int i, struct span *out)
{
	const struct pencil *p = &all[i];
	int count = 0;

	for (int k = i - 1; k >= 0 && is_near(p, &all[k]); k--)
		if (!all[k].is_left_out)
			count += add_shared(p->span, all[k].span, &out[count]);
	for (int k = i + 1; k < n && is_near(p, &all[k]); k++)
		if (all[k].pen != PEN_FINE)
			count += add_shared(p->span, all[k].span, &out[count]);
	qsort(out, (size_t)count, sizeof(*out), compare_spans);
	return count;
}

/* What of a span others leave: they are sorted, have room for one more, and become the rests. */
static int spans_left(struct span all, struct span *others, int n)
{
	double from = all.from;
	int count = 0;

	for (int i = 0; i < n; i++) {
		struct span other = others[i];
		if (other.from > from)
			others[count++] = (struct span){ from, other.from };
		from = fmax(from, other.to);
	}
	if (from < all.to)
		others[count++] = (struct span){ from, all.to };
	return count;
}

static double spans_length(const struct span *s, int n)
{
	double sum = 0;

	for (int i = 0; i < n; i++)
		sum += s[i].to - s[i].from;
	return sum;
}

/* Short ones are facets of a curve: without some of them it would be dotted. */
static bool may_be_left_out(const struct pencil *p)
{
	return p->pen == PEN_FINE && spans_length(&p->span, 1) > CLEAR;
}

static const struct span *keep_spans(struct arena *a, const struct span *spans, int n)
{
	struct span *kept = NEW_N(a, struct span, n);

	for (int i = 0; i < n; i++)
		kept[i] = spans[i];
	return kept;
}

static void thin_out(struct arena *a, struct pencil *all, int n)
{
	struct span *beside = NEW_N(a, struct span, n + 1);

	qsort(all, (size_t)n, sizeof(*all), compare_pencils);
	for (int i = 0; i < n; i++) {
		struct pencil *p = &all[i];
		if (!may_be_left_out(p))
			continue;
		int rests = spans_left(p->span, beside, spans_beside(all, n, i, beside));
		if (spans_length(beside, rests) > (1 - BESIDE) * spans_length(&p->span, 1))
			continue;
		p->is_left_out = true;
		p->rests = keep_spans(a, beside, rests);
		p->rest_count = rests;
	}
	qsort(all, (size_t)n, sizeof(*all), compare_orders);
}

static void draw_span(struct drawing *g, const struct pencil *p, struct span s)
{
	struct vec d = direction_of(p->a, p->b), foot = vec_scale(d, -vec_dot(p->a, d));

	foot = vec_add(p->a, foot);
	draw_line(g, p->pen, vec_add(foot, vec_scale(d, s.from)),
		vec_add(foot, vec_scale(d, s.to)));
}

static void draw_pencil(struct drawing *g, const struct pencil *p)
{
	if (!p->is_left_out)
		draw_line(g, p->pen, p->a, p->b);
	for (int i = 0; i < p->rest_count; i++)
		draw_span(g, p, p->rests[i]);
}

static void draw_tints(struct arena *a, struct drawing *g, const struct view *v, struct placing at)
{
	for (int i = 0; i < v->tint_count; i++) {
		const struct tint *t = &v->tints[i];
		struct vec *points = NEW_N(a, struct vec, t->n);
		for (int k = 0; k < t->n; k++)
			points[k] = placing_at(at, t->points[k]);
		draw_fill(g, t->shade, points, t->n);
	}
}

void picture_draw(struct drawing *g, const struct view *v, struct placing at,
	enum picture_line (*line)(const struct part *p, double scale))
{
	struct arena *scratch = arena_new();
	struct pencil *all = NEW_N(scratch, struct pencil, v->stroke_count);

	draw_tints(scratch, g, v, at);
	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		bool bold = s->pen != PEN_OUTLINE || line(s->part, at.scale) == PICTURE_BOLD;
		all[i] = pencil_of(placing_at(at, s->a), placing_at(at, s->b),
			bold ? s->pen : PEN_FINE);
		all[i].order = i;
	}
	thin_out(scratch, all, v->stroke_count);
	for (int i = 0; i < v->stroke_count; i++)
		draw_pencil(g, &all[i]);
	arena_free(scratch);
}
