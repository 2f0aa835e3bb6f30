/*
 * A sheet for every different stringer: the piece on the bench over its whole
 * width, and under it its two ends, one step, and its figures.
 */
#include "draw/bounds.h"
#include "sheets/stringer_bores.h"
#include "sheets/stringer_sheet.h"
#include "sheets/tables.h"
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

static const char *points_words(const struct stringer *w)
{
	if (w->kind == STRINGER_HOUSED)
		return "Front and back of a step are where the line of its tread's top meets the "
		       "two riser faces: the small circles.";
	return "Front and back of a step are the two ends of its tread cut.";
}

static const char *bores_words(const struct part *p)
{
	return p->bores ? "Small letters before a position: the middle of a hole or mortise, as "
			  "listed."
			: "";
}

static void note_sheet(struct sheet *s, const struct stringer_subject *t)
{
	const struct stair *st = t->context->stair;
	const struct stringer *w = t->part->stringer;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL,
			arena_printf(a, "%s. Crown edge away from you.",
				stringer_face_words(a, t->part)) },
		{ NULL,
			arena_printf(a,
				"Positions run along the plank from the low end of the piece (the "
				"open "
				"circle), and across it from its lower edge; mark each from zero. "
				"%s",
				points_words(w)) },
		{ NULL, bores_words(t->part) },
		{ NULL, rounding_words(a, st) },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_STRINGER) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

/* Which is laid first, the lower finish or the stair. */
static const char *laid_words(const struct job *job)
{
	if (job->floors.lower_finish <= 0)
		return "the stringer is cut for the floor it stands on";
	switch (job->stringers.foot) {
	case FOOT_STRUCTURAL:
		return "stringers, first riser and what it goes round stand on the structure; the "
		       "lower finish is laid after them, up to their faces";
	case FOOT_FINISHED:
		return "stringers, first riser and what it goes round stand on the lower finish, "
		       "which is laid before them";
	}
	return "";
}

/* The rises on the floors as they are built up, and what of it the stringer gets. */
static const char *floor_words(struct arena *a, const struct stair *s)
{
	const struct job_floors *f = &s->job->floors;
	const char *rises = arena_printf(a, "All rises are equal, %s, on the finished floors",
		length_words(a, s, s->unit_rise));

	if (f->lower_finish <= 0 && f->upper_finish <= 0)
		return arena_printf(a, "%s; no finish is given over the structural floors.", rises);
	return arena_printf(a,
		"Lower finish %s, upper finish %s over the structural floors. %s; %s.",
		length_words(a, s, f->lower_finish), length_words(a, s, f->upper_finish), rises,
		laid_words(s->job));
}

static void note_ends(struct sheet *s, const struct stringer_subject *t)
{
	const struct stair *st = t->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ "Floors", floor_words(a, st) },
		{ NULL, header_words(t->context->parts) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static const char *stringer_title(struct arena *a, const struct stringer_subject *t)
{
	switch (t->part->stringer->hand) {
	case STRINGER_EITHER_HAND: break;
	case STRINGER_RIGHT_HAND: return arena_printf(a, "Stringer %s, right", t->part->mark);
	case STRINGER_LEFT_HAND: return arena_printf(a, "Stringer %s, left", t->part->mark);
	}
	return arena_printf(a, "Stringer %s", t->part->mark);
}

/* A detail is drawn beside the tables only where it comes out readable. */
static bool has_room_for_step(const struct stringer_subject *t, struct box room)
{
	double letter = t->context->paper->lettering;

	return box_width(room) > 32 * letter && box_height(room) > 20 * letter;
}

/* Where it goes in at a scale that tells something. */
static bool draw_step(struct sheet *s, const struct stringer_subject *t)
{
	struct sheet trial = *s;

	if (!has_room_for_step(t, s->room))
		return false;
	trial.drawing = drawing_new(s->drawing->arena, s->drawing->use, s->drawing->width,
		s->drawing->height);
	trial.drawing->pens = s->drawing->pens;
	trial.hand.g = trial.drawing;
	sheet_compose(&trial, stringer_step(t), s->room, SET_TOP);
	if (trial.drawing->runs_over)
		return false;
	drawing_take(s->drawing, trial.drawing, vec(0, 0));
	return true;
}

/* The piece on the bench and, under it, its figures. */
static struct sheet begin_bench_sheet(struct arena *a, const struct stringer_subject *t,
	const char *title)
{
	struct sheet s = sheet_begin(a, t->context, title);

	note_sheet(&s, t);
	struct composed bench = sheet_compose(&s, stringer_on_bench(t), s.room, SET_TOP);
	s.drawing->scale = scale_words(a, t->context->stair, bench.ratio);
	s.room.y1 = bench.box.y0 - GAP;
	return s;
}

static struct sheet begin_figures_sheet(struct arena *a, const struct stringer_subject *t,
	const char *title)
{
	return sheet_begin(a, t->context, arena_printf(a, "%s, figures", title));
}

/* As large as it goes in, up to half size. */
static struct drawing *step_sheet(struct arena *a, const struct stringer_subject *t,
	const char *title)
{
	struct sheet s = sheet_begin(a, t->context, arena_printf(a, "%s, one step", title));
	struct composition alone = stringer_step(t);
	const struct note notes[] = { { "Notes", general_words(t->context->stair) },
		{ NULL, arena_printf(a, "%s.", stringer_face_words(a, t->part)) } };

	sheet_notes(&s, notes, sizeof(notes) / sizeof(*notes));
	alone.least_ratio = 2;
	struct composed step = sheet_compose(&s, alone, s.room, SET_CENTRED);
	s.drawing->scale = scale_words(a, t->context->stair, step.ratio);
	return s.drawing;
}

/* Figures that do not go in under the bench view go on to further sheets; one step is drawn on the
 * first that has room for it, else on a sheet of its own. */
static struct drawing *draw_bench_sheets(struct arena *a, const struct stringer_subject *t)
{
	const char *title = stringer_title(a, t);
	const struct table tables[] = { stringer_facts(a, t), stringer_bore_table(a, t),
		stringer_positions(a, t) };
	struct table_list rest = { tables, 3 };
	struct sheet s = begin_bench_sheet(a, t, title);
	struct drawing *first = s.drawing, *last = first;
	const char **shown = NEW_N(a, const char *, 2);
	bool step_drawn = t->part->stringer->steps < 2; /* it is drawn from the one before */

	*shown = t->part->mark;
	first->shows = shown;
	for (;;) {
		rest = sheet_tables(&s, rest, TABLES_RIGHT, box_width(s.room));
		step_drawn = step_drawn || draw_step(&s, t);
		if (!rest.n)
			break;
		s = begin_figures_sheet(a, t, title);
		last->next = s.drawing;
		last = s.drawing;
	}
	if (!step_drawn)
		last->next = step_sheet(a, t, title);
	return first;
}

static struct drawing *draw_detail_sheet(struct arena *a, const struct stringer_subject *t)
{
	struct sheet s =
		sheet_begin(a, t->context, arena_printf(a, "Stringer %s, ends", t->part->mark));

	note_ends(&s, t);
	struct box left = s.room, right = s.room;
	left.x1 = (s.room.x0 + s.room.x1 - GAP) / 2;
	right.x0 = left.x1 + GAP;
	struct composed foot = sheet_compose(&s, stringer_foot(t), left, SET_CENTRED);
	struct composed head = sheet_compose(&s, stringer_head(t), right, SET_CENTRED);
	s.drawing->scale = near_enough(foot.ratio, head.ratio)
		? scale_words(a, t->context->stair, foot.ratio)
		: "as noted";
	return s.drawing;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct drawing *first = NULL;

	for (const struct part *p = c->parts; p; p = p->next) {
		if (!p->stringer)
			continue;
		struct stringer_subject t = { c, p, &c->stair->flights[0], stringer_shape(a, p),
			section_through(a, c, p) };
		*drawings_end(&first) = draw_bench_sheets(a, &t);
		*drawings_end(&first) = draw_detail_sheet(a, &t);
	}
	return first;
}

const struct sheet_kind sheet_stringer = { "stringer", "S-4", draw };
