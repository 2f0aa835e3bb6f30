/*
 * Every open side of the stair as a client sees it: what the pieces are and what
 * they are made of, and the few sizes one asks for.  A stair between two walls is
 * cut along its middle instead.
 */
#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/client.h"
#include "sheets/client_when.h"
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

/* ---- the floors, by their names ---- */

#define SLAB 150.0 /* what is shown of the lower floor */
#define EDGE 0.5   /* an edge so near to a level lies in it */

enum { FLOOR_PLACES = 9 };

/* Words on one line with others, and near them, would be read as one with them. */
static int spots_with_air(struct hand h, struct spot *spots, int n, double width)
{
	int kept = 0;

	for (int i = 0; i < n; i++) {
		struct vec at = vec(spots[i].at.x, spots[i].at.y + h.letter / 2);
		struct vec from = vec(at.x - 2 * h.letter, at.y);
		struct vec to = vec(at.x + width + 2 * h.letter, at.y);
		if (!stroke_strikes_text(h.g, h.measure, from, to, h.letter))
			spots[kept++] = spots[i];
	}
	return kept;
}

/* Is there floor there, and not its opening?  Its upper edge or its lower one is seen then. */
static bool is_floor_at(const struct drafting *d, double x, double top, double depth)
{
	const struct view *v = &d->what->view;

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		bool is_edge = fabs(s->a.y - top) < EDGE || fabs(s->a.y - top + depth) < EDGE;
		if (is_edge && fabs(s->a.y - s->b.y) < EDGE && part_is_existing(s->part) &&
			fmin(s->a.x, s->b.x) * d->scale <= x &&
			fmax(s->a.x, s->b.x) * d->scale >= x)
			return true;
	}
	return false;
}

/* In the floor where it is deep enough, from the head of the view to its foot; else over it. */
static void letter_floor(const struct drafting *d, struct box around, double top, double depth,
	const char *words)
{
	struct hand h = d->sheet->hand;
	double width = measure_width(h.measure, LETTER_REGULAR, h.letter, words);
	double y = side_at(d, 0, top).y, in = y - (depth * d->scale + h.letter) / 2,
	       over = y + h.letter / 2;
	double left = around.x0 + h.letter, right = around.x1 - h.letter - width;
	double at_head = side_high(d) == DIM_RIGHT ? right : left;
	double at_foot = side_high(d) == DIM_RIGHT ? left : right;
	struct spot spots[FLOOR_PLACES + 2];
	int n = 0;

	for (int i = 0; i < FLOOR_PLACES; i++) {
		double x = at_head + i / (FLOOR_PLACES - 1.0) * (at_foot - at_head);
		if (is_floor_at(d, x, top, depth) && is_floor_at(d, x + width, top, depth))
			spots[n++] = (struct spot){ vec(x, in), ALIGN_LEFT, 0, SPOT_KNOCKED_OUT };
	}
	for (int i = 0; i < 2; i++)
		spots[n++] = (struct spot){ vec(i ? at_foot : at_head, over), ALIGN_LEFT, 0,
			SPOT_PLAIN };
	n = spots_with_air(h, spots, n, width);
	place_text(h.g, h.measure, h.letter, spots, n, words);
}

static void letter_floors(const struct drafting *d, struct box around)
{
	const struct stair *s = d->stair;

	letter_floor(d, around, s->total_rise, s->floor_depth, "Upper floor");
	letter_floor(d, around, s->lower_structural, SLAB, "Lower floor");
}

/* Cut faces are drawn as heavily as edges: treads and risers on a small paper would be one black
 * zigzag. */
static void lighten(struct drawing *g)
{
	for (struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_LINE && k->line.pen == PEN_CUT)
			k->line.pen = PEN_OUTLINE;
}

/* Where what is overhead is in the view, and no guard stands in the way of the figure. */
static const char *headroom_words(const struct drafting *d)
{
	const struct stair *s = d->stair;

	if (s->headroom.state == HEADROOM_NOT_CHECKED || s->headroom.overhead_z > s->total_rise ||
		s->job->rail.level_run_count > 0)
		return "";
	return client_headroom_figure(d->sheet->drawing->arena, s);
}

/* A height that no place is found for in the view stands among the notes, and nowhere else. */
static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct side_view *v = what;
	struct drafting d = { s, v, v->context->stair, v->flight,
		flight_nosing_line(v->context->stair, v->flight), scale };
	struct box view = box_scale(v->view.box, scale);

	view_draw(s->drawing, &v->view, (struct placing){ .scale = scale }, NULL);
	lighten(s->drawing);
	struct box around = draw_words(&d, view);
	around = box_join(around, side_draw_heights(&d, headroom_words(&d), view));
	letter_floors(&d, view);
	struct dims dims = dims_begin(s->drawing, s->hand.measure, s->hand.letter, around);
	add_floor_to_floor(&dims, &d);
	return draw_view_foot(s->hand, dims_draw(&dims), v->title, scale,
		d.stair->job->about.units);
}

/* ---- the sheet ---- */

/* A closed stringer hides the treads that its rail is measured from. */
static const char *heights_words(struct arena *a, const struct sheet_context *c)
{
	const char *height = when_raked_rail(c)
		? arena_printf(a,
			  "The top of the rail is %s straight up from the edges of the "
			  "treads",
			  length_words(a, c->stair, c->stair->job->rail.height))
		: "Rails are measured straight up from the edges of the treads";

	return arena_printf(a, "%s%s.", height,
		when_housed(c) ? ", which lie behind the closed stringer" : "");
}

static struct drawing *draw_sheet(struct arena *a, const struct side_view *v)
{
	struct sheet s = sheet_begin(a, v->context, v->title);
	const struct note notes[] = {
		{ "Heights", heights_words(a, v->context) },
		{ NULL, client_headroom(a, v->context->stair) },
	};

	client_notes(&s, notes, sizeof(notes) / sizeof(*notes));
	struct composed done = sheet_compose(&s, (struct composition){ compose, v, v->view.box, 0 },
		s.room, SET_CENTRED);
	s.drawing->scale = scale_words(a, v->context->stair, done.ratio);
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
	struct side_view v = { .context = c,
		.flight = &c->stair->flights[0],
		.view = section_view(a, c, (struct box){ 0 }),
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
