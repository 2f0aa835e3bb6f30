/*
 * The stringer as it lies on the bench: upper edge away from you, the worked face up.
 */
#include "draw/bounds.h"
#include "draw/running.h"
#include "sheets/stringer_bores.h"
#include "sheets/words.h"

/* A stringer on the bench with its holes, as it is being drawn. */
struct bench {
	const struct stringer_subject *subject;
	struct stringer_bores bores;
	double scale;
};

static void draw_chain(struct sheet *s, enum pen pen, struct chain c, double scale)
{
	struct vec *paper = NEW_N(s->drawing->arena, struct vec, c.n);

	for (int i = 0; i < c.n; i++)
		paper[i] = vec_scale(c.points[i], scale);
	if (c.closed)
		draw_polygon(s->drawing, pen, paper, c.n);
	else
		draw_polyline(s->drawing, pen, paper, c.n);
}

static void draw_piece(struct sheet *s, const struct stringer_subject *t, double scale)
{
	draw_chain(s, PEN_OUTLINE, t->shape.outline, scale);
	draw_chain(s, PEN_HIDDEN, t->shape.far_face, scale);
	for (const struct chain *c = t->shape.grooves; c; c = c->next)
		draw_chain(s, PEN_OUTLINE, *c, scale);
}

/* It runs on beyond the piece, by how much the list of facts says. */
static struct box draw_plank(struct sheet *s, const struct stringer_subject *t, double scale)
{
	const double beyond = 3;
	struct box b = { -beyond, 0, t->shape.length * scale + beyond,
		t->part->stringer->plank_width * scale };

	draw_box(s->drawing, PEN_ABOVE, b);
	return b;
}

static struct running_mark mark_at(struct arena *a, const struct stringer_subject *t,
	struct vec corner, double scale)
{
	struct vec p = vec_scale(shape_point(&t->shape, corner), scale);

	return (struct running_mark){ p.x, p.y, inches_words(a, t->context->stair, corner.x) };
}

static bool before(const struct running_mark *a, const struct running_mark *b)
{
	return a->at < b->at;
}

static void swap(struct running_mark *a, struct running_mark *b)
{
	struct running_mark kept = *a;

	*a = *b;
	*b = kept;
}

/* They come nearly in order, or nearly backwards from a mirrored piece: turned round first, each
 * then has only a few places to move. */
static void put_in_order(const struct stringer_subject *t, struct running_mark *m, int n)
{
	for (int i = 0; t->shape.mirrored && i < n / 2; i++)
		swap(&m[i], &m[n - 1 - i]);
	for (int i = 1; i < n; i++)
		for (int k = i; k > 0 && before(&m[k], &m[k - 1]); k--)
			swap(&m[k], &m[k - 1]);
}

/* The corner at the low end: where every position along the plank is measured from. */
static struct vec zero_corner(const struct part *p)
{
	const struct outline *o = &p->outline;
	struct vec zero = o->corners[0].at;

	for (int i = 1; i < o->n; i++)
		if (o->corners[i].at.x < zero.x)
			zero = o->corners[i].at;
	return zero;
}

#define ROW_SHARE 0.8 /* of the paper's width: margins and the words at both ends take the rest */

enum plank_half { UPPER_HALF, LOWER_HALF };

/* Holes whose mouth is in this half of the plank, each with the letter of its kind, beside the
 * `others` in their row; where that row would be longer than the sheet, the table alone has them.
 */
static int add_bores(struct sheet *s, const struct bench *bench, enum plank_half half,
	struct running_mark *m, int others)
{
	const struct stringer_bores *b = &bench->bores;
	struct arena *a = s->drawing->arena;
	double middle = bench->subject->part->stringer->plank_width / 2;
	int n = 0;

	for (int i = 0; i < b->bores.n; i++) {
		struct vec3 at = b->bores.bore[i].at.origin;
		if ((at.y > middle ? UPPER_HALF : LOWER_HALF) != half)
			continue;
		m[n] = mark_at(a, bench->subject, vec(at.x, at.y), bench->scale);
		m[n].text = arena_printf(a, "%s %s", bore_letter(a, b->kind[i]),
			bore_along_words(a, bench->subject->context->stair, &b->bores.bore[i]));
		n++;
	}
	return running_length(s->hand, others + n) < s->drawing->width * ROW_SHARE ? n : 0;
}

/* Zero, and along the upper edge every riser cut meeting a tread cut. */
static struct box run_above(struct sheet *s, const struct bench *bench, double edge)
{
	const struct stringer_subject *t = bench->subject;
	const struct stringer *w = t->part->stringer;
	struct arena *a = s->drawing->arena;
	struct running_mark *m = NEW_N(a, struct running_mark, w->steps + 1 + bench->bores.bores.n);
	int n = 0;

	m[n++] = mark_at(a, t, zero_corner(t->part), bench->scale);
	for (int i = 0; i < w->steps; i++)
		m[n++] = mark_at(a, t, w->tread_corners[i], bench->scale);
	n += add_bores(s, bench, UPPER_HALF, m + n, n);
	put_in_order(t, m, n);
	return draw_running(s->hand, DIM_ABOVE, edge, m, n);
}

/* The corners of the two ends on the lower edge, and the inner corners in between. */
static struct box run_below(struct sheet *s, const struct bench *bench)
{
	const struct stringer_subject *t = bench->subject;
	const struct stringer *w = t->part->stringer;
	const struct outline *o = &t->part->outline;
	struct arena *a = s->drawing->arena;
	struct running_mark *m =
		NEW_N(a, struct running_mark, w->steps + o->n + bench->bores.bores.n);
	int n = 0;

	for (int i = 0; i < w->steps; i++)
		m[n++] = mark_at(a, t, w->inner_corners[i], bench->scale);
	for (int i = 0; i < o->n; i++)
		if (o->corners[i].at.y < NEAR_ENOUGH * 1000)
			m[n++] = mark_at(a, t, o->corners[i].at, bench->scale);
	n += add_bores(s, bench, LOWER_HALF, m + n, n);
	put_in_order(t, m, n);
	return draw_running(s->hand, DIM_BELOW, 0, m, n);
}

/* A common origin is a small open circle; so are points that no corner of the piece shows. */
static void draw_points(struct sheet *s, const struct stringer_subject *t, double scale)
{
	const struct stringer *w = t->part->stringer;
	struct vec zero = vec_scale(shape_point(&t->shape, zero_corner(t->part)), scale);

	draw_circle(s->drawing, PEN_DIM, zero, 1.0);
	for (int i = 0; w->kind == STRINGER_HOUSED && i < w->steps; i++) {
		const struct vec corners[] = { w->tread_corners[i], w->inner_corners[i] };
		for (int k = 0; k < 2; k++)
			draw_circle(s->drawing, PEN_DIM,
				vec_scale(shape_point(&t->shape, corners[k]), scale), 0.5);
	}
}

/* Which end is which; the box grows by the words. */
static struct box letter_ends(struct sheet *s, const struct stringer_subject *t, struct box used)
{
	struct hand h = s->hand;
	double y = (used.y1 - h.letter) / 2, gap = 2;
	double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, "head") + gap;

	draw_text(h.g, vec(used.x0 - gap, y), h.letter, ALIGN_RIGHT,
		t->shape.mirrored ? "head" : "foot");
	draw_text(h.g, vec(used.x1 + gap, y), h.letter, ALIGN_LEFT,
		t->shape.mirrored ? "foot" : "head");
	used.x0 -= wide;
	used.x1 += wide;
	return used;
}

static struct box compose_bench(struct sheet *s, const void *what, double scale)
{
	const struct stringer_subject *t = what;
	struct arena *a = s->drawing->arena;

	const struct bench bench = { t, stringer_bores(a, t->part), scale };

	draw_piece(s, t, scale);
	stringer_draw_bores(s, t, &bench.bores, scale);
	draw_points(s, t, scale);
	struct box used = draw_plank(s, t, scale);
	double upper = used.y1;
	used = letter_ends(s, t, used);
	used = box_join(used, run_above(s, &bench, upper));
	used = box_join(used, run_below(s, &bench));
	draw_view_title(s->hand, vec(used.x0, used.y0 - s->hand.letter * 3),
		arena_printf(a, "%s on the bench", t->part->mark),
		scale_words(a, t->context->stair, 1 / scale));
	used.y0 -= s->hand.letter * 4;
	return used;
}

struct composition stringer_on_bench(const struct stringer_subject *t)
{
	struct box b = { 0, 0, t->shape.length, t->part->stringer->plank_width };

	return (struct composition){ compose_bench, t, b, 0 };
}
