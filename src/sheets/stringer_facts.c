/*
 * What is said of a stringer in figures.
 */
#include <assert.h>

#include "sheets/stringer_sheet.h"
#include "sheets/words.h"

/* More than are ever said of one stringer. */
#define MOST_FACTS 24

/* Rows are added one by one; a fact without a value is left out. */
struct facts {
	struct arena *arena;
	const char **cells;
	int n;
};

static void fact(struct facts *f, const char *name, const char *value)
{
	if (!value)
		return;
	assert(f->n < MOST_FACTS);
	f->cells[2 * f->n] = name;
	f->cells[2 * f->n + 1] = value;
	f->n++;
}

static const char *foot_words(const struct stair *s)
{
	switch (s->job->stringers.foot) {
	case FOOT_STRUCTURAL: return "on the structural floor";
	case FOOT_FINISHED: return "on the finished floor";
	}
	return "";
}

static const char *head_words(const struct stair *s)
{
	switch (s->job->stringers.head) {
	case HEAD_BELOW_FLOOR: return "against the header, one rise below the floor";
	case HEAD_FLUSH: return "last tread flush with the floor";
	}
	return "";
}

/* Inside, behind the back of a riser that is thinner than the stringer. */
static const char *void_words(struct arena *a, const struct stair *s, const struct part *p)
{
	double wide = p->size.thickness - s->job->risers.thickness;

	if (s->job->risers.kind != RISER_BOARD || wide < NEAR_ENOUGH)
		return NULL;
	return arena_printf(a, "%s open at the inner face: glue in a three-cornered strip, %s",
		inches_words(a, s, wide), section_words(a, s, wide, wide));
}

static void cut_facts(struct facts *f, const struct stair *s, const struct part *p)
{
	const struct stringer *w = p->stringer;
	struct arena *a = f->arena;
	double plumb = PI / 2 - w->pitch;

	fact(f, "Unit rise / unit run",
		arena_printf(a, "%s / %s", length_words(a, s, w->unit_rise),
			length_words(a, s, w->unit_run)));
	fact(f, "Pitch", angle_letter(a, w->pitch));
	fact(f, "Level cuts, to the edge", angle_letter(a, w->pitch));
	fact(f, "Plumb cuts, to the edge", angle_letter(a, plumb));
	fact(f, "Framing square", square_words(a, s, w->unit_rise, w->unit_run));
	if (w->kind != STRINGER_MITRED)
		return;
	fact(f, "Riser cuts, bevel", "45° through, long point on the outer face");
	fact(f, "Behind the risers' mitres", void_words(a, s, p));
}

static const char *wedge_words(struct arena *a, const struct stair *s, const struct housing *h)
{
	return arena_printf(a, "1 in %g; tread %s long, %s thick; riser %s long, %s thick",
		h->taper, inches_words(a, s, h->tread_wedge.length),
		inches_words(a, s, h->tread_wedge.thick), inches_words(a, s, h->riser_wedge.length),
		inches_words(a, s, h->riser_wedge.thick));
}

static void housing_facts(struct facts *f, const struct stair *s, const struct stringer *w)
{
	const struct housing *h = w->housing;
	struct arena *a = f->arena;

	if (!h)
		return;
	fact(f, "Nosing line to upper edge", inches_words(a, s, w->margin));
	fact(f, "Housings, depth", inches_words(a, s, h->depth));
	if (h->riser_bottom > 0) {
		fact(f, "Tread housing, front / back",
			arena_printf(a, "%s / %s", inches_words(a, s, h->tread_front),
				inches_words(a, s, h->tread_back)));
		fact(f, "Riser housing, top / bottom",
			arena_printf(a, "%s / %s", inches_words(a, s, h->riser_top),
				inches_words(a, s, h->riser_bottom)));
		if (h->last_riser > 0)
			fact(f, "Last riser's housing",
				arena_printf(a, "%s wide along the head cut, %s up from the tread",
					inches_words(a, s, h->riser_top),
					inches_words(a, s, h->last_riser)));
		fact(f, "Wedges", wedge_words(a, s, h));
	} else {
		fact(f, "Tread housing", inches_words(a, s, h->tread_front));
		fact(f, "Wedges", "none: they would be seen from below");
	}
	fact(f, "Wood under the housings", inches_words(a, s, h->wood_left));
}

static void end_facts(struct facts *f, const struct stair *s, const struct stringer *w)
{
	struct arena *a = f->arena;

	fact(f, "Foot", foot_words(s));
	fact(f, "Head", head_words(s));
	if (w->kind != STRINGER_HOUSED) {
		fact(f, "First rise, as cut", length_words(a, s, w->first_rise_cut));
		fact(f, w->drop < 0 ? "Added at the foot" : "Off the foot (drop)",
			length_words(a, s, fabs(w->drop)));
	}
	fact(f, "First rise, finished", length_words(a, s, w->first_rise_finished));
	fact(f, "Last rise, finished", length_words(a, s, w->last_rise_finished));
}

struct table stringer_facts(struct arena *a, const struct stringer_subject *t)
{
	static const struct table_column columns[] = { { "", ALIGN_LEFT, 0 },
		{ "", ALIGN_LEFT, 66 } };
	const struct stair *s = t->context->stair;
	const struct stringer *w = t->part->stringer;
	struct facts f = { .arena = a, .cells = NEW_N(a, const char *, 2 * MOST_FACTS) };

	fact(&f, "Kind", stringer_kind_words(w->kind));
	if (w->hand != STRINGER_EITHER_HAND)
		fact(&f, "Hand", stringer_hand_words(w->hand));
	fact(&f, "Make", arena_printf(a, "%d", t->part->count));
	fact(&f, "Material", t->part->material);
	fact(&f, "Plank", stringer_plank_words(a, s, t->part));
	fact(&f, "Length cut from it", length_words(a, s, w->cut_length));
	if (w->kind != STRINGER_HOUSED)
		fact(&f, "Throat left / wanted",
			arena_printf(a, "%s / %s", length_words(a, s, w->throat),
				length_words(a, s, w->least_throat)));
	cut_facts(&f, s, t->part);
	housing_facts(&f, s, w);
	end_facts(&f, s, w);
	return (struct table){ .title = arena_printf(a, "%s: sizes and cuts", t->part->mark),
		.columns = columns,
		.column_count = 2,
		.cells = f.cells,
		.row_count = f.n };
}

/* Is this corner of the piece one of the steps'? */
static bool is_step_corner(const struct stringer *w, struct vec corner)
{
	for (int i = 0; i < w->steps; i++)
		if (vec_near(w->tread_corners[i], corner) || vec_near(w->inner_corners[i], corner))
			return true;
	return false;
}

/* A row: front and back of a step, or one corner of an end. */
static void position_row(struct arena *a, const struct stair *s, const char **row, const char *name,
	const struct vec *front, const struct vec *back)
{
	row[0] = name;
	row[1] = inches_words(a, s, front->x);
	row[2] = inches_words(a, s, front->y);
	row[3] = back ? inches_words(a, s, back->x) : "";
	row[4] = back ? inches_words(a, s, back->y) : "";
}

/* The corners of the two ends: foot, thrust block notch, head. */
static int end_rows(struct arena *a, const struct stringer_subject *t, const char **rows)
{
	const struct outline *o = &t->part->outline;
	double middle = t->shape.length / 2;
	int n = 0;

	for (int i = 0; i < o->n; i++) {
		struct vec corner = o->corners[i].at;
		if (!is_step_corner(t->part->stringer, corner))
			position_row(a, t->context->stair, rows + 5 * n++,
				corner.x < middle ? "foot" : "head", &corner, NULL);
	}
	return n;
}

struct table stringer_positions(struct arena *a, const struct stringer_subject *t)
{
	static const struct table_column columns[] = { { "Step", ALIGN_RIGHT, 0 },
		{ "Front, along", ALIGN_RIGHT, 0 }, { "across", ALIGN_RIGHT, 0 },
		{ "Back, along", ALIGN_RIGHT, 0 }, { "across", ALIGN_RIGHT, 0 } };
	const struct stringer *w = t->part->stringer;
	const char **cells = NEW_N(a, const char *, 5 * (w->steps + t->part->outline.n));
	int n = end_rows(a, t, cells);

	for (int i = 0; i < w->steps; i++)
		position_row(a, t->context->stair, cells + 5 * n++,
			arena_printf(a, "%d", t->flight->first_step + i), &w->tread_corners[i],
			&w->inner_corners[i]);
	return (struct table){ .title = arena_printf(a, "%s: positions", t->part->mark),
		.columns = columns,
		.column_count = 5,
		.cells = cells,
		.row_count = n };
}
