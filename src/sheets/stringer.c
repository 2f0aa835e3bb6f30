/*
 * A sheet for every different stringer: the piece on the bench over its whole
 * width, and under it its two ends, one step, and its figures.
 */
#include "draw/bounds.h"
#include "sheets/stringer_sheet.h"
#include "sheets/words.h"

#define GAP 8.0

/* Where a stringer is cut to be shown: through its middle, a housed one through its grooves. */
static double cut_depth(const struct sheet_context *c, const struct part *p)
{
	double thickness = p->size.thickness, y = p->places[0].origin.y;
	double groove = c->stair->job->stringers.housing_depth / 2;

	if (p->stringer->kind != STRINGER_HOUSED)
		return thickness / 2;
	/* the face upward on the bench looks to the right: inner on the left-hand stringer */
	return y > c->stair->width / 2 ? thickness - groove : groove;
}

static struct view section_through(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	struct vec3 middle = frame_place(p->places[0], vec3(0, 0, cut_depth(c, p)));
	struct view_spec spec = { .from = VIEW_FROM_RIGHT, .cut = true };
	struct frame eye = view_frame(spec.from);

	spec.at = vec3_dot(middle, eye.w);
	return view_make(a, c->parts, spec);
}

static void note_sheet(struct sheet *s, const struct stringer_subject *t)
{
	const struct stair *st = t->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(a, st) },
		{ NULL,
			"Crown side of the plank up. Positions run from the low end of the piece "
			"along the plank, and from its lower edge across it; mark each from "
			"zero." },
		{ NULL, rounding_words(a, st) },
		{ NULL, t->part->note },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_STRINGER) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

/* Tables stand at the right, one under the other where the height allows, else side by side. */
static double draw_tables(struct sheet *s, const struct stringer_subject *t, struct box room)
{
	struct arena *a = s->drawing->arena;
	struct table facts = stringer_facts(a, t), positions = stringer_positions(a, t);
	struct box f = table_size(s->hand, &facts), p = table_size(s->hand, &positions);
	bool stacked = f.y1 + GAP + p.y1 <= box_height(room);
	double width = stacked ? fmax(f.x1, p.x1) : f.x1 + GAP + p.x1;
	double x = room.x1 - width;

	draw_table(s->hand, vec(x, room.y1), &facts);
	if (stacked)
		draw_table(s->hand, vec(x, room.y1 - f.y1 - GAP), &positions);
	else
		draw_table(s->hand, vec(x + f.x1 + GAP, room.y1), &positions);
	return width;
}

static struct box third(struct box room, int i)
{
	double w = (box_width(room) - 2 * GAP) / 3, x = room.x0 + i * (w + GAP);

	return (struct box){ x, room.y0, x + w, room.y1 };
}

static struct drawing *draw_sheet(struct arena *a, const struct stringer_subject *t)
{
	struct sheet s = sheet_begin(a, t->context, arena_printf(a, "Stringer %s", t->part->mark));
	enum units units = t->context->stair->job->about.units;

	note_sheet(&s, t);
	struct composed bench = sheet_compose(&s, stringer_on_bench(t), s.room, SET_TOP);
	s.drawing->scale = scale_letter(a, bench.ratio, units);
	struct box below = s.room;
	below.y1 = bench.box.y0 - GAP;
	below.x1 -= draw_tables(&s, t, below) + GAP;
	sheet_compose(&s, stringer_foot(t), third(below, 0), SET_TOP);
	if (t->part->stringer->steps > 1)
		sheet_compose(&s, stringer_step(t), third(below, 1), SET_TOP);
	sheet_compose(&s, stringer_head(t), third(below, 2), SET_TOP);
	return s.drawing;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct drawing *first = NULL, **tail = &first;

	for (const struct part *p = c->parts; p; p = p->next) {
		if (!p->stringer)
			continue;
		struct stringer_subject t = { c, p, &c->stair->flights[0],
			section_through(a, c, p) };
		*tail = draw_sheet(a, &t);
		tail = &(*tail)->next;
	}
	return first;
}

const struct sheet_kind sheet_stringer = { "stringer", "S-4", draw };
