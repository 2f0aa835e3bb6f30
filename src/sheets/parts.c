/*
 * The list of parts: every different piece, how many, its finished size, how its ends are cut.
 */
#include "draw/bounds.h"
#include "sheets/tables.h"
#include "sheets/words.h"

#define COLUMNS 8

static const struct table_column columns[COLUMNS] = {
	{ "Mark", ALIGN_LEFT, 0 },
	{ "Part", ALIGN_LEFT, 0 },
	{ "Make", ALIGN_RIGHT, 0 },
	{ "Thick", ALIGN_RIGHT, 0 },
	{ "Wide", ALIGN_RIGHT, 0 },
	{ "Long", ALIGN_RIGHT, 0 },
	{ "Ends", ALIGN_LEFT, 62 },
	{ "Material", ALIGN_LEFT, 40 },
};

static const char *one_end(struct arena *a, struct end_cut cut)
{
	if (cut.bevel > NEAR_ENOUGH)
		return arena_printf(a, "bevel %s", angle_letter(a, cut.bevel));
	if (cut.mitre > NEAR_ENOUGH)
		return angle_letter(a, cut.mitre);
	return "square";
}

static const char *baluster_ends(struct arena *a, const struct stair *s, const struct baluster *b)
{
	const char *foot = b->foot_rake > NEAR_ENOUGH ? angle_letter(a, b->foot_rake) : "square";

	return arena_printf(a, "foot %s, top %s; long point %s, short point %s", foot,
		angle_letter(a, b->rake), inches_words(a, s, b->long_point),
		inches_words(a, s, b->short_point));
}

/* Angles from square.  A stringer's cuts are on its own sheet. */
static const char *ends_words(struct arena *a, const struct stair *s, const struct part *p)
{
	if (p->stringer)
		return arena_printf(a, "see the sheets of %s", p->mark);
	if (p->baluster)
		return baluster_ends(a, s, p->baluster);
	const char *start = one_end(a, p->start), *end = one_end(a, p->end);
	return arena_printf(a, "%s / %s", start, end);
}

static int count_parts(const struct part *parts)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n += *p->mark != 0;
	return n;
}

static struct table parts_table(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	int n = 0;
	const char **cells = NEW_N(a, const char *, COLUMNS *(count_parts(c->parts) + 1));

	for (const struct part *p = c->parts; p; p = p->next) {
		const char **row = cells + COLUMNS * n;
		if (!*p->mark)
			continue;
		row[0] = p->mark;
		row[1] = p->name;
		row[2] = arena_printf(a, "%d", p->count);
		row[3] = inches_words(a, s, p->size.thickness);
		row[4] = inches_words(a, s, p->size.width);
		row[5] = inches_words(a, s, p->size.length);
		row[6] = ends_words(a, s, p);
		row[7] = p->material;
		n++;
	}
	return (struct table){ "Parts", columns, COLUMNS, cells, n };
}

static void note_sheet(struct sheet *s)
{
	const struct stair *st = s->context->stair;
	struct arena *a = s->drawing->arena;
	const struct job_treads *treads = &st->job->treads;
	const struct note notes[] = {
		{ "Notes", general_words(a, st) },
		{ NULL,
			"Finished sizes; lengths over all, from long point to long point. Ends: "
			"the "
			"angle from square at either end, bevels through the thickness." },
		{ NULL,
			arena_printf(a,
				"Treads: nosing %s beyond the riser's face, arrises rounded %s. "
				"Front and "
				"return strips are mitred 45° at the corner; a return runs on %s "
				"behind the "
				"riser above and is returned on itself.",
				length_words(a, st, treads->nosing),
				length_words(a, st, treads->nosing_radius),
				length_words(a, st, treads->return_past)) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	const struct table table = parts_table(a, c);
	struct table_list rest = { &table, 1 };
	struct drawing *first = NULL, **tail = &first;

	while (rest.n) {
		struct sheet s = sheet_begin(a, c, first ? "Parts, continued" : "Parts");
		if (!first)
			note_sheet(&s);
		rest = sheet_tables(&s, rest, TABLES_LEFT, box_width(s.room));
		*tail = s.drawing;
		tail = &s.drawing->next;
	}
	return first;
}

const struct sheet_kind sheet_parts = { "parts", "S-5", draw };
