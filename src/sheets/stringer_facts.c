/*
 * What is said of a stringer in figures.
 */
#include "sheets/stringer_sheet.h"
#include "sheets/words.h"

static const char *const kind_words[] = {
	[STRINGER_SAWTOOTH] = "sawtooth carriage",
	[STRINGER_MITRED] = "mitred open stringer",
	[STRINGER_HOUSED] = "housed closed stringer",
};

static const char *plank_words(struct arena *a, const struct stair *s, const struct part *p)
{
	const struct stringer *w = p->stringer;
	const char *length = w->plank_length > 0
		? length_words(a, s, w->plank_length)
		: arena_printf(a, "over %s, no stock so long", length_words(a, s, w->cut_length));

	return arena_printf(a, "%s x %s", section_words(a, s, p->size.thickness, w->plank_width),
		length);
}

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

static void cut_facts(struct facts *f, const struct stair *s, const struct stringer *w)
{
	struct arena *a = f->arena;
	double plumb = PI / 2 - w->pitch;

	fact(f, "Unit rise / unit run",
		arena_printf(a, "%s / %s", length_words(a, s, w->unit_rise),
			length_words(a, s, w->unit_run)));
	fact(f, "Pitch", angle_letter(a, w->pitch));
	fact(f, "Level cuts, to the edge", angle_letter(a, w->pitch));
	fact(f, "Plumb cuts, to the edge", angle_letter(a, plumb));
	fact(f, "Framing square", square_words(a, s, w->unit_rise, w->unit_run));
	if (w->kind == STRINGER_MITRED)
		fact(f, "Riser cuts, bevel", "45° through, long point on the outer face");
}

static void housing_facts(struct facts *f, const struct stair *s, const struct stringer *w)
{
	const struct job_stringers *job = &s->job->stringers;
	struct arena *a = f->arena;

	if (w->kind != STRINGER_HOUSED)
		return;
	fact(f, "Nosing line to upper edge", length_words(a, s, w->margin));
	fact(f, "Housing, depth", length_words(a, s, job->housing_depth));
	fact(f, "Wedges, taper", arena_printf(a, "1 in %g", job->wedge_taper));
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
		{ "", ALIGN_LEFT, 0 } };
	const struct stair *s = t->context->stair;
	const struct stringer *w = t->part->stringer;
	struct facts f = { .arena = a, .cells = NEW_N(a, const char *, 2 * 20) };

	fact(&f, "Kind", kind_words[w->kind]);
	fact(&f, "Make", arena_printf(a, "%d", t->part->count));
	fact(&f, "Material", t->part->material);
	fact(&f, "Plank", plank_words(a, s, t->part));
	fact(&f, "Length cut from it", length_words(a, s, w->cut_length));
	if (w->kind != STRINGER_HOUSED)
		fact(&f, "Throat left / wanted",
			arena_printf(a, "%s / %s", length_words(a, s, w->throat),
				length_words(a, s, w->least_throat)));
	cut_facts(&f, s, w);
	housing_facts(&f, s, w);
	end_facts(&f, s, w);
	return (struct table){ .title = arena_printf(a, "%s: sizes and cuts", t->part->mark),
		.columns = columns,
		.column_count = 2,
		.cells = f.cells,
		.row_count = f.n };
}

struct table stringer_positions(struct arena *a, const struct stringer_subject *t)
{
	static const struct table_column columns[] = { { "Step", ALIGN_RIGHT, 0 },
		{ "Upper: along", ALIGN_RIGHT, 0 }, { "across", ALIGN_RIGHT, 0 },
		{ "Lower: along", ALIGN_RIGHT, 0 }, { "across", ALIGN_RIGHT, 0 } };
	const struct stair *s = t->context->stair;
	const struct stringer *w = t->part->stringer;
	const char **cells = NEW_N(a, const char *, 5 * w->steps);

	for (int i = 0; i < w->steps; i++) {
		cells[5 * i] = arena_printf(a, "%d", t->flight->first_step + i);
		cells[5 * i + 1] = inches_words(a, s, w->tread_corners[i].x);
		cells[5 * i + 2] = inches_words(a, s, w->tread_corners[i].y);
		cells[5 * i + 3] = inches_words(a, s, w->inner_corners[i].x);
		cells[5 * i + 4] = inches_words(a, s, w->inner_corners[i].y);
	}
	return (struct table){ .title = arena_printf(a,
				       "%s: corners, from the low end and the lower edge",
				       t->part->mark),
		.columns = columns,
		.column_count = 5,
		.cells = cells,
		.row_count = w->steps };
}
