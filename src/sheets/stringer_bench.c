/*
 * The stringer as it lies on the bench: upper edge away from you, foot to the left.
 */
#include "draw/bounds.h"
#include "draw/running.h"
#include "draw/shape.h"
#include "parts/outline.h"
#include "sheets/stringer_sheet.h"
#include "sheets/words.h"

static void draw_plank(struct sheet *s, const struct part *p, struct placing at, struct box cut)
{
	struct vec a = placing_at(at, vec(cut.x0, 0));
	struct vec b = placing_at(at, vec(cut.x1, p->stringer->plank_width));
	double beyond = 3; /* on paper: it runs on, by how much the list of facts says */

	draw_box(s->drawing, PEN_ABOVE, (struct box){ a.x - beyond, a.y, b.x + beyond, b.y });
}

/* Where a line at `x` along the plank first meets the piece from above or below. */
static struct running_mark mark_at(struct arena *a, const struct stair *s, struct placing at,
	struct vec corner)
{
	struct vec p = placing_at(at, corner);

	return (struct running_mark){ p.x, p.y, inches_words(a, s, corner.x) };
}

/* Corners along the upper edge: the ends of the piece there, and every riser cut meeting a tread
 * cut. */
static struct box run_above(struct sheet *s, const struct stringer_subject *t, struct placing at,
	double edge)
{
	const struct stringer *w = t->part->stringer;
	struct arena *a = s->drawing->arena;
	struct running_mark *m = NEW_N(a, struct running_mark, w->steps);

	for (int i = 0; i < w->steps; i++)
		m[i] = mark_at(a, t->context->stair, at, w->tread_corners[i]);
	return draw_running(s->hand, DIM_ABOVE, edge, m, w->steps);
}

static int by_place(struct running_mark *m, int n)
{
	for (int i = 1; i < n; i++)
		for (int k = i; k > 0 && m[k].at < m[k - 1].at; k--) {
			struct running_mark swap = m[k];
			m[k] = m[k - 1];
			m[k - 1] = swap;
		}
	return n;
}

/* Along the lower edge: the inner corners, and the corners of the two ends. */
static struct box run_below(struct sheet *s, const struct stringer_subject *t, struct placing at,
	double edge)
{
	const struct stringer *w = t->part->stringer;
	const struct outline *o = &t->part->outline;
	struct arena *a = s->drawing->arena;
	struct running_mark *m = NEW_N(a, struct running_mark, w->steps + o->n);
	int n = 0;

	for (int i = 0; i < w->steps; i++)
		m[n++] = mark_at(a, t->context->stair, at, w->inner_corners[i]);
	for (int i = 0; i < o->n; i++)
		if (o->corners[i].at.y < NEAR_ENOUGH * 1000)
			m[n++] = mark_at(a, t->context->stair, at, o->corners[i].at);
	return draw_running(s->hand, DIM_BELOW, edge, m, by_place(m, n));
}

/* Which end is which; the box grows by the words. */
static struct box letter_ends(struct sheet *s, struct box used, double height)
{
	struct hand h = s->hand;
	double y = (height - h.letter) / 2, gap = 2;
	double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, "head") + gap;

	draw_text(h.g, vec(used.x0 - gap, y), h.letter, ALIGN_RIGHT, "foot");
	draw_text(h.g, vec(used.x1 + gap, y), h.letter, ALIGN_LEFT, "head");
	used.x0 -= wide;
	used.x1 += wide;
	return used;
}

static void draw_far_face(struct sheet *s, const struct part *p, struct placing at)
{
	if (p->stringer->far_face.n)
		draw_outline(s->drawing, PEN_HIDDEN, p->stringer->far_face, at);
}

static void draw_grooves(struct sheet *s, const struct part *p, struct placing at)
{
	for (const struct feature *f = p->features; f; f = f->next)
		if (f->kind == FEATURE_GROOVE)
			draw_outline(s->drawing, PEN_OUTLINE, f->at, at);
}

static struct box compose_bench(struct sheet *s, const void *what, double scale)
{
	const struct stringer_subject *t = what;
	const struct part *p = t->part;
	struct placing at = { .scale = scale };
	struct box cut = outline_extent(p->outline);
	struct box used = { cut.x0 * scale - 3, 0, cut.x1 * scale + 3,
		p->stringer->plank_width * scale };

	draw_outline(s->drawing, PEN_OUTLINE, p->outline, at);
	draw_far_face(s, p, at);
	draw_grooves(s, p, at);
	draw_plank(s, p, at, cut);
	used = letter_ends(s, used, used.y1);
	used = box_join(used, run_above(s, t, at, used.y1));
	used = box_join(used, run_below(s, t, at, 0));
	draw_view_title(s->hand, vec(used.x0, used.y0 - s->hand.letter * 3),
		arena_printf(s->drawing->arena, "%s on the bench", p->mark),
		scale_letter(s->drawing->arena, 1 / scale, t->context->stair->job->about.units));
	used.y0 -= s->hand.letter * 4;
	return used;
}

struct composition stringer_on_bench(const struct stringer_subject *t)
{
	struct box b = outline_extent(t->part->outline);

	b.y1 = t->part->stringer->plank_width;
	return (struct composition){ compose_bench, t, b, 0 };
}
