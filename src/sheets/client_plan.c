/*
 * The client's plan: the stair from straight above, its width and its length.
 */
#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "sheets/client.h"
#include "sheets/compose.h"
#include "sheets/plan_lines.h"
#include "sheets/words.h"

#define CLEAR 6.0 /* from the view to its words */

enum { UP_SPOTS = 5 };

/* Before the first step, where no balustrade of the floor above stands in the way; else over the
 * line, on one of the first treads. */
static void letter_up(struct hand h, const struct plan *p, struct vec start, double scale)
{
	struct spot spots[UP_SPOTS];
	double big = h.letter * 1.4, before = p->context->stair->job->treads.nosing * scale + 4;

	spots[0] = (struct spot){ vec(start.x - before, start.y - big / 2), ALIGN_RIGHT, 0,
		SPOT_PLAIN };
	for (int i = 1; i < UP_SPOTS; i++)
		spots[i] = (struct spot){ plan_at(p, (i - 0.55) * p->flight->unit_run,
						  p->context->stair->width * 0.56, scale),
			ALIGN_MIDDLE, 0, SPOT_PLAIN };
	place_text(h.g, h.measure, big, spots, UP_SPOTS, "UP");
}

/* Along the way one walks; the box of what stands before it. */
static struct box draw_way_up(struct hand h, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	int n = s->walking_line_count;
	struct vec *line = NEW_N(h.g->arena, struct vec, n);
	double big = h.letter * 1.4;

	for (int i = 0; i < n; i++)
		line[i] = vec_scale(s->walking_line[i], scale);
	draw_polyline(h.g, PEN_CENTRE, line, n);
	draw_arrow_head(h.g, line[n - 1], vec_sub(line[n - 1], line[n - 2]), big);
	letter_up(h, p, line[0], scale);
	return box_add(box_empty(), vec(line[0].x - 6 * h.letter, line[0].y));
}

enum { MOST_LABELS = 16 };

/* Over the plan what lies in its upper half, under it the rest: so no leader runs along a rail. */
static struct box draw_words(struct hand h, const struct plan *p, struct box around, double scale)
{
	const struct view *const views[] = { &p->whole, &p->walls };
	struct arena *a = h.g->arena;
	struct label *over = NEW_N(a, struct label, MOST_LABELS);
	struct label *under = NEW_N(a, struct label, MOST_LABELS);
	double middle = plan_at(p, 0, p->context->stair->width / 2, scale).y;
	int above = 0, below = 0;

	for (int v = 0; v < 2; v++) {
		const struct label *list;
		int n = client_labels(a, p->context, views[v], NAMED_ON_PLAN, scale, &list);
		for (int i = 0; i < n && above + below < MOST_LABELS; i++)
			if (list[i].points_at.y > middle)
				over[above++] = list[i];
			else
				under[below++] = list[i];
	}
	/* under it between the extension lines of the length */
	double from = plan_at(p, 0, 0, scale).x + h.letter;
	double to = plan_at(p, p->flight->total_run, 0, scale).x - h.letter;
	struct label_row low = { LABELS_BELOW, around.y0 - CLEAR, from, to };
	struct label_row high = { LABELS_ABOVE, around.y1 + CLEAR, 0, 0 };
	around = box_join(around, label_row_draw(h, under, below, low));
	return box_join(around, label_row_draw(h, over, above, high));
}

static struct box draw_sizes(struct hand h, const struct plan *p, struct box around, double scale)
{
	const struct stair *s = p->context->stair;
	const struct flight *f = p->flight;
	struct arena *a = h.g->arena;
	struct dims d = dims_begin(h.g, h.measure, h.letter, around);
	struct vec low = plan_at(p, 0, 0, scale), high = plan_at(p, f->total_run, s->width, scale);
	struct dim_link length = { low.x, high.x, low.y, low.y,
		arena_printf(a, "%s long", length_words(a, s, f->total_run)) };
	struct dim_link width = { low.y, high.y, low.x, low.x,
		arena_printf(a, "%s wide", client_measured(a, s, "width", s->width)) };

	dims_chain(&d, DIM_BELOW, &length, 1);
	dims_chain(&d, DIM_LEFT, &width, 1);
	return dims_draw(&d);
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct plan *p = what;
	struct box around = box_scale(plan_box(p), scale);

	plan_draw_from_above(s->drawing, p, scale);
	around = box_join(around, draw_way_up(s->hand, p, scale));
	around = draw_words(s->hand, p, around, scale);
	around = draw_sizes(s->hand, p, around, scale);
	return draw_view_foot(s->hand, around, "From above", scale,
		p->context->stair->job->about.units);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct plan p = plan_make(a, c);
	struct sheet s = sheet_begin(a, c, "From above");
	const struct note notes[] = {
		{ "The arrow points up", client_steps(a, c->stair) },
		{ NULL, "Dashed: the edge of the opening in the floor above." },
	};

	client_notes(&s, notes, 2);
	struct composed done = sheet_compose(&s,
		(struct composition){ compose, &p, plan_box(&p), 0 }, s.room, SET_CENTRED);
	s.drawing->scale = scale_words(a, c->stair, done.ratio);
	return s.drawing;
}

const struct sheet_kind sheet_client_plan = { "client-plan", "C-1", draw };
