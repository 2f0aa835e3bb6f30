/*
 * Every open side of the stair as a client sees it: what the pieces are and what
 * they are made of, and the few sizes one asks for.  A stair between two walls is
 * cut along its middle instead.
 */
#include "draw/bounds.h"
#include "sheets/client.h"
#include "sheets/side_drafting.h"
#include "sheets/stands.h"
#include "sheets/words.h"

#define CLEAR 6.0 /* from the view to its words */

/* ---- the view ---- */

/* What stands over the steps is named at the foot of the stair, the rest under its head: there the
 * paper is empty. */
static struct box draw_words(const struct drafting *d, struct box around)
{
	struct hand h = d->sheet->hand;
	const struct view *v = &d->what->view;
	const struct label *list;
	bool right = side_high(d) == DIM_RIGHT;
	double floor = side_at(d, 0, 0).y + h.letter;
	double upper = side_at(d, 0, d->stair->total_rise).y - 2 * h.letter;
	double low = around.x0 - CLEAR, high = around.x1 + CLEAR;
	struct label_column over = { right ? LABELS_LEFT : LABELS_RIGHT, right ? low : high, floor,
		around.y1 };
	struct label_column under = { right ? LABELS_RIGHT : LABELS_LEFT, right ? high : low, floor,
		upper };
	int n = client_labels(h.g->arena, d->what->context, v, NAMED_OVER, d->scale, &list);

	around = box_join(around, labels_draw(h, list, n, over));
	n = client_labels(h.g->arena, d->what->context, v, NAMED_UNDER, d->scale, &list);
	return box_join(around, labels_draw(h, list, n, under));
}

static void add_floor_to_floor(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	const char *size = s->job->floors.structural_rise > 0 ? "structural_rise" : "total_rise";
	struct vec low = side_at(d, d->flight->total_run, 0);
	struct vec high = side_at(d, d->flight->total_run, s->total_rise);
	struct dim_link rise = { low.y, high.y, low.x, high.x,
		arena_printf(dims->drawing->arena, "%s floor to floor%s",
			length_words(dims->drawing->arena, s, s->total_rise),
			job_is_measured(s->job, size) ? "" : " (not verified)") };

	dims_chain(dims, side_high(d), &rise, 1);
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct side_view *v = what;
	struct drafting d = { s, v, v->context->stair, v->flight,
		flight_nosing_line(v->context->stair, v->flight), scale };
	struct box around = box_scale(v->view.box, scale);
	struct left_over left = { .n = 0 };

	view_draw(s->drawing, &v->view, (struct placing){ .scale = scale }, NULL);
	around = side_draw_heights(&d, around, &left);
	around = draw_words(&d, around);
	struct dims dims = dims_begin(s->drawing, s->hand.measure, s->hand.letter, around);
	for (int i = 0; i < left.n; i++)
		dims_chain(&dims, side_low(&d), &left.links[i], 1);
	add_floor_to_floor(&dims, &d);
	struct box used = side_draw_levels(&d, dims_draw(&dims));
	return draw_view_foot(s->hand, used, v->title, scale, d.stair->job->about.units);
}

/* ---- the sheet ---- */

static struct drawing *draw_sheet(struct arena *a, const struct side_view *v)
{
	struct sheet s = sheet_begin(a, v->context, v->title);
	const struct note notes[] = {
		{ "The steps", client_steps(a, v->context->stair) },
		{ "The figures", "Heights of rails are taken plumb over the edges of the treads." },
	};

	client_notes(&s, notes, sizeof(notes) / sizeof(*notes));
	struct composed done = sheet_compose(&s, (struct composition){ compose, v, v->view.box, 0 },
		s.room, SET_CENTRED);
	s.drawing->scale = scale_letter(a, done.ratio, v->context->stair->job->about.units);
	return s.drawing;
}

static struct drawing *draw_side(struct arena *a, const struct sheet_context *c,
	enum view_from from)
{
	struct side_view v = { .context = c,
		.flight = &c->stair->flights[0],
		.view = view_make(a, c->parts, (struct view_spec){ .from = from }),
		.title = from == VIEW_FROM_RIGHT ? "From the right" : "From the left" };

	return draw_sheet(a, &v);
}

static struct drawing *draw_cut(struct arena *a, const struct sheet_context *c)
{
	const struct flight *f = &c->stair->flights[0];
	struct view_spec spec = { .from = VIEW_FROM_RIGHT, .cut = true };
	struct vec3 through = frame_place(f->frame, vec3(0, section_y(a, c), 0));

	spec.at = vec3_dot(through, view_frame(spec.from).w);
	struct side_view v = { .context = c,
		.flight = f,
		.view = view_make(a, c->parts, spec),
		.title = "Cut along the middle" };
	return draw_sheet(a, &v);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	bool right = c->stair->job->stair.right.kind == SIDE_OPEN;
	bool left = c->stair->job->stair.left.kind == SIDE_OPEN;

	if (!right && !left)
		return draw_cut(a, c);
	struct drawing *first = right ? draw_side(a, c, VIEW_FROM_RIGHT) : NULL;
	struct drawing *other = left ? draw_side(a, c, VIEW_FROM_LEFT) : NULL;
	if (!first)
		return other;
	first->next = other;
	return first;
}

const struct sheet_kind sheet_client_elevation = { "client-elevation", "C-2", draw };
