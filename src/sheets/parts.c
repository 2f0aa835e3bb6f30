/*
 * The list of parts: every different piece, how many, its finished size, how its ends are cut.
 */
#include "draw/bounds.h"
#include "draw/dimension.h"
#include "lists/end_words.h"
#include "sheets/compose.h"
#include "sheets/marks.h"
#include "sheets/stands.h"
#include "sheets/tables.h"
#include "sheets/words.h"

#include <string.h>

#define COLUMNS 8
#define STEP_SMALLEST 12 /* a section of a step at less than 1 to so much tells nothing */

static const struct table_column columns[COLUMNS] = {
	{ "Mark", ALIGN_LEFT, 0 },
	{ "Part", ALIGN_LEFT, 0 },
	{ "Make", ALIGN_RIGHT, 0 },
	{ "Thick", ALIGN_RIGHT, 0 },
	{ "Wide", ALIGN_RIGHT, 0 },
	{ "Long", ALIGN_RIGHT, 0 },
	{ "Ends, notches", ALIGN_LEFT, 62 },
	{ "Material", ALIGN_LEFT, 40 },
};

static const char *baluster_ends(struct arena *a, const struct stair *s, const struct baluster *b)
{
	const char *rake = angle_letter(a, b->rake);

	if (b->rake < NEAR_ENOUGH)
		return "foot and top square";
	if (b->foot_rake > NEAR_ENOUGH)
		return arena_printf(a, "foot and top %s, each face %s", rake,
			inches_words(a, s, b->long_point));
	return arena_printf(a, "foot square, top %s; long point %s, short point %s", rake,
		inches_words(a, s, b->long_point), inches_words(a, s, b->short_point));
}

/* Angles from square, then what else must be known to make it.  A stringer's cuts are on its own
 * sheet. */
static const char *ends_words(struct arena *a, const struct stair *s, const struct part *p)
{
	if (p->stringer)
		return arena_printf(a, "see the sheets of %s", p->mark);
	if (p->baluster)
		return baluster_ends(a, s, p->baluster);
	const char *start = end_words(a, p->start), *end = end_words(a, p->end);
	return arena_printf(a, "%s / %s%s%s", start, end, p->note ? "; " : "",
		p->note ? p->note : "");
}

static int count_parts(const struct part *parts)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n += !part_is_existing(p);
	return n;
}

static struct table parts_table(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	int n = 0;
	const char **cells = NEW_N(a, const char *, COLUMNS *(count_parts(c->parts) + 1));

	for (const struct part *p = c->parts; p; p = p->next) {
		const char **row = cells + COLUMNS * n;
		if (part_is_existing(p))
			continue;
		row[0] = p->mark;
		row[1] = p->name;
		row[2] = arena_printf(a, "%d", p->count);
		struct part_size size = blanks_finished(c->blanks, p);
		row[3] = inches_words(a, s, size.thickness);
		row[4] = inches_words(a, s, size.width);
		row[5] = inches_words(a, s, size.length);
		row[6] = ends_words(a, s, p);
		row[7] = p->material;
		n++;
	}
	return (struct table){ "Parts", columns, COLUMNS, cells, n };
}

static bool has_returns(const struct stair *s)
{
	const struct flight *f = &s->flights[0];
	bool open = false;

	for (int i = 0; i < f->step_count; i++)
		open |= f->steps[i].open_left || f->steps[i].open_right;
	return open && s->job->stringers.open.kind != STRINGER_HOUSED &&
		s->job->treads.side_overhang > NEAR_ENOUGH;
}

static const char *profile_words(struct arena *a, const struct stair *s)
{
	const struct job_treads *t = &s->job->treads;
	const char *radius = radius_words(a, s, t->nosing_radius);

	switch (t->nosing_profile) {
	case NOSING_EASED: return arena_printf(a, "arrises rounded %s", radius);
	case NOSING_FULL_ROUND: return "edge a full round";
	case NOSING_HALF_ROUND:
		return arena_printf(a, "upper arris rounded %s, square below", radius);
	case NOSING_CHAMFER:
		return arena_printf(a, "arrises chamfered %s along either face, eased %s",
			inches_words(a, s, t->nosing_chamfer), radius);
	}
	return "";
}

static const char *nosing_words(struct arena *a, const struct stair *s)
{
	const struct job_treads *t = &s->job->treads;

	return arena_printf(a,
		"Treads: nosing %s beyond the riser's face, %s, front strip %s wide.",
		inches_words(a, s, t->nosing), profile_words(a, s),
		inches_words(a, s, t->strip_width));
}

/* How the waste of the nosings is sawn off: the same on every strip. */
static const char *waste_words(struct arena *a, const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		for (const struct feature *f = p->features; f; f = f->next)
			if (f->kind == FEATURE_WASTE)
				return arena_printf(a, "Nosings: %s.", f->text);
	return "";
}

static const char *moulding_words(const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		if (p->stuff == STUFF_MOULDING)
			return "Mouldings: run the profile on the edge of stock wide enough to "
			       "hold, then rip it off; never rout or rip a thin strip by hand. Cut "
			       "the end pieces off a length, and glue them on.";
	return "";
}

static const char *cross_rail_words(const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		if (strcmp(p->name, "newel cross rail") == 0)
			return "Cross rails of newels: grain across the newel. One that is higher "
			       "than long is glued to the core along the middle of its height "
			       "only, so that it can move.";
	return "";
}

static const char *return_words(struct arena *a, const struct stair *s)
{
	if (!has_returns(s))
		return "";
	return arena_printf(a,
		"Front and return strips are mitred 45° at the corner; a return runs on %s behind "
		"the riser above and is returned on itself.",
		inches_words(a, s, s->job->treads.return_past));
}

static void note_sheet(struct sheet *s)
{
	const struct stair *st = s->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL,
			"Finished sizes; lengths over all, from long point to long point. Ends: "
			"the angle from square at either end, bevels through the thickness." },
		{ NULL, nosing_words(a, st) },
		{ NULL, waste_words(a, s->context->parts) },
		{ NULL, return_words(a, st) },
		{ NULL, moulding_words(s->context->parts) },
		{ NULL, cross_rail_words(s->context->parts) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

/* ---- a step in section ---- */

struct step_section {
	const struct sheet_context *context;
	const struct flight *flight;
	struct view view;
	struct box window;
};

/* What lies beyond would be fragments in so small a window. */
static struct view only_cuts(struct arena *a, struct view v)
{
	struct stroke *kept = NEW_N(a, struct stroke, v.stroke_count + 1);
	int n = 0;

	for (int i = 0; i < v.stroke_count; i++)
		if (v.strokes[i].pen == PEN_CUT)
			kept[n++] = v.strokes[i];
	v.strokes = kept;
	v.stroke_count = n;
	return v;
}

/* Where there are wedges, through the housing that they are in. */
static const struct part *any_wedge(const struct part *parts)
{
	while (parts && parts->kind != &part_wedge)
		parts = parts->next;
	return parts;
}

/* Else clear of the stringers: beside the middle of the flight. */
static struct vec3 cut_through(struct arena *a, const struct sheet_context *c)
{
	const struct part *wedge = any_wedge(c->parts);

	if (!wedge)
		return section_point(a, c);
	return frame_place(wedge->places[0],
		vec3(wedge->size.length / 2, 0, wedge->size.thickness / 2));
}

static struct step_section section_of(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	const struct flight *f = &s->flights[0];
	struct view_spec spec = { .from = VIEW_FROM_RIGHT, .cut = true };
	const struct step *step = &f->steps[f->step_count / 2];
	struct vec3 at = frame_place(f->frame, vec3(step->riser_x, 0, step->level));
	double around = s->job->treads.nosing + 40;

	spec.at = vec3_dot(cut_through(a, c), view_frame(spec.from).w);
	return (struct step_section){ c, f, only_cuts(a, view_make(a, c->parts, spec)),
		{ at.x - around, at.z - s->unit_rise - around, at.x + f->unit_run + around,
			at.z + around } };
}

static void step_dimensions(struct dims *d, const struct step_section *t, double scale)
{
	const struct stair *s = t->context->stair;
	const struct step *step = &t->flight->steps[t->flight->step_count / 2];
	struct arena *a = d->drawing->arena;
	double nose = step->nosing_x * scale, face = step->riser_x * scale;
	double top = step->level * scale, under = top - s->job->treads.thickness * scale;
	const struct dim_link along[] = {
		{ nose, face, top, top, inches_words(a, s, s->job->treads.nosing) },
		{ face, face + t->flight->unit_run * scale, top, top,
			inches_words(a, s, t->flight->unit_run) },
	};
	const struct dim_link up[] = {
		{ top - s->unit_rise * scale, under, nose, nose, NULL },
		{ under, top, nose, nose, inches_words(a, s, s->job->treads.thickness) },
	};
	const struct dim_link rise[] = { { top - s->unit_rise * scale, top, nose, nose,
		inches_words(a, s, s->unit_rise) } };

	if (s->job->treads.nosing > 0)
		dims_chain(d, DIM_ABOVE, along, 2);
	else
		dims_chain(d, DIM_ABOVE, along + 1, 1);
	dims_chain(d, DIM_LEFT, up, 2);
	dims_chain(d, DIM_LEFT, rise, 1);
}

/* Pieces too small for their mark bear it in a balloon beside the view, on its free side. */
static struct box draw_small_marks(struct hand h, struct marks_left small, struct box view)
{
	struct balloon_line line = { .along = { 0, 1 }, .out = { 1, 0 } };

	line.from = vec(view.x1 + 2 * balloon_radius(h), 0);
	line.length = box_height(view);
	line.shift = -2 * balloon_radius(h); /* or the leader to a cove lies on the tread */
	balloons_set(h, small.list, small.n, line);
	return box_join(view, balloons_draw(h, small.list, small.n));
}

static struct box compose_step(struct sheet *s, const void *what, double scale)
{
	const struct step_section *t = what;
	struct box w = t->window, used = box_scale(w, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);

	view_draw(s->drawing, &t->view, (struct placing){ .scale = scale }, &w);
	step_dimensions(&d, t, scale);
	used = box_join(dims_draw(&d),
		draw_small_marks(s->hand, letter_marks(s->hand, &t->view, scale, w),
			box_scale(w, scale)));
	return draw_view_foot(s->hand, used,
		any_wedge(t->context->parts) ? "A step in section, in the housing"
					     : "A step in section",
		scale, t->context->stair->job->about.units);
}

static struct composition step_composition(const struct step_section *t)
{
	return (struct composition){ compose_step, t, t->window, 2 };
}

static const char *step_scale(struct arena *a, const struct step_section *t, struct composed done)
{
	return scale_words(a, t->context->stair, done.ratio);
}

/* Beside the list, where there is room for it. */
static bool draw_step(struct sheet *s, const struct step_section *t)
{
	struct sheet trial = *s;

	if (box_width(s->room) <= 0 || box_height(s->room) <= 0)
		return false;
	trial.drawing = drawing_new(s->drawing->arena, s->drawing->use, s->drawing->width,
		s->drawing->height);
	trial.drawing->pens = s->drawing->pens;
	trial.hand.g = trial.drawing;
	struct composed done = sheet_compose(&trial, step_composition(t), s->room, SET_CENTRED);
	if (trial.drawing->runs_over || done.ratio > STEP_SMALLEST)
		return false;
	drawing_take(s->drawing, trial.drawing, vec(0, 0));
	s->drawing->scale = step_scale(s->drawing->arena, t, done);
	return true;
}

static struct drawing *step_sheet(struct arena *a, const struct step_section *t)
{
	struct sheet s = sheet_begin(a, t->context, "A step in section");
	struct composed done = sheet_compose(&s, step_composition(t), s.room, SET_CENTRED);

	s.drawing->scale = step_scale(a, t, done);
	return s.drawing;
}

/* The step is drawn on the first sheet of the list that has room for it, else on one of its own. */
static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	const struct table table = parts_table(a, c);
	const struct step_section step = section_of(a, c);
	struct table_list rest = { &table, 1 };
	struct sheet s = sheet_begin(a, c, "Parts");
	struct drawing *first = s.drawing, *last = first;
	bool step_drawn = false;

	note_sheet(&s);
	for (;;) {
		rest = sheet_tables(&s, rest, TABLES_LEFT, box_width(s.room));
		step_drawn = step_drawn || draw_step(&s, &step);
		if (!rest.n)
			break;
		s = sheet_begin(a, c, "Parts, continued");
		last->next = s.drawing;
		last = s.drawing;
	}
	if (!step_drawn)
		last->next = step_sheet(a, &step);
	return first;
}

const struct sheet_kind sheet_parts = { "parts", "S-5", draw };
