/*
 * The cut list: every different piece, finished and rough.
 */
#include <string.h>

#include "base/text.h"
#include "lists/end_words.h"
#include "lists/group_words.h"
#include "lists/nominal.h"
#include "lists/table.h"

enum {
	CUT_MARK,
	CUT_PART,
	CUT_MAKE,
	CUT_SPARE,
	CUT_SPECIES,
	CUT_THICK,
	CUT_WIDE,
	CUT_LONG,
	CUT_GRAIN,
	CUT_ENDS,
	CUT_PIECES,
	CUT_NOMINAL,
	CUT_ROUGH_WIDE,
	CUT_ROUGH_LONG,
	CUT_SHOWN,
	CUT_CHANGED, /* left out where nothing is compared */
	CUT_COLUMNS
};

static const struct list_column columns[CUT_COLUMNS] = {
	[CUT_MARK] = { "Mark", "mark", LIST_TEXT, 0 },
	[CUT_PART] = { "Part", "part", LIST_TEXT, 44 },
	[CUT_MAKE] = { "Make", "make", LIST_COUNT, 0 },
	[CUT_SPARE] = { "Spare", "spare", LIST_COUNT, 0 },
	[CUT_SPECIES] = { "Species", "species", LIST_TEXT, 36 },
	[CUT_THICK] = { "Thick", "thickness", LIST_LENGTH, 0 },
	[CUT_WIDE] = { "Wide", "width", LIST_LENGTH, 0 },
	[CUT_LONG] = { "Long", "length", LIST_LENGTH, 0 },
	[CUT_GRAIN] = { "Grain", "grain", LIST_TEXT, 0 },
	[CUT_ENDS] = { "Ends", "ends", LIST_TEXT, 40 },
	[CUT_PIECES] = { "Saw out", "rough_pieces", LIST_COUNT, 0 },
	[CUT_NOMINAL] = { "out of", "nominal", LIST_LENGTH, 0 },
	[CUT_ROUGH_WIDE] = { "Rough wide", "rough_width", LIST_LENGTH, 0 },
	[CUT_ROUGH_LONG] = { "Rough long", "rough_length", LIST_LENGTH, 0 },
	[CUT_SHOWN] = { "Shown on", "sheet", LIST_TEXT, 30 },
	[CUT_CHANGED] = { "Changed", "changed", LIST_TEXT, 0 },
};

static const char note_sizes[] =
	"Finished sizes over all, from long point to long point, as the piece lies in its board: "
	"long along the grain; angles of the ends from square. "
	"Of what is glued up every board and ply is sawn out by itself, and the widths are those "
	"before jointing, rounded up: the panel is trimmed to its finished width.";

static const char note_on_edge[] =
	"On edge: out of a thinner board, ripped as wide as the piece is thick and turned up; the "
	"edge of the board is then what is seen from above.";

static const char note_in_row[] =
	"Off a length: too short to hold at the saw by itself; rough long is all of them, with "
	"kerfs and what is left to hold; what is glued up is glued and trimmed in that length.";

static const char *ends_words(struct arena *a, const struct part *p)
{
	const char *start = end_words(a, p->start), *end = end_words(a, p->end);

	if (p->stringer)
		return "see its sheet";
	return strcmp(start, end) == 0 ? start : arena_printf(a, "%s / %s", start, end);
}

/* What is too short to be held is cut off a length that several come out of. */
static const char *sawing_words(struct arena *a, const struct part *p, const struct blank *b)
{
	const char *ends = ends_words(a, p);

	if (!b || !b->row)
		return ends;
	if (b->row == 1)
		return arena_printf(a, "%s; off a length", ends);
	return arena_printf(a, "%s; %d%s off one length", ends, b->row,
		b->gang > 1 ? " strips" : "");
}

static const char *grain_words(enum grain grain)
{
	switch (grain) {
	case GRAIN_ALONG: return "along";
	case GRAIN_NONE: break;
	}
	return "either";
}

/* Does its face, as it is drawn, look up or down in the house? */
static bool lies_flat(const struct part *p)
{
	return fabs(p->places[0].w.z) > sqrt(0.5);
}

/* Turned in its board, a piece that lies flat stands on its edge; so does a strip for several whose
 * width is the board's thickness. */
static bool is_on_edge(const struct blank *b)
{
	return b && b->is_turned && (b->gang > 1 || lies_flat(b->part));
}

static const char *shown_on(struct arena *a, const struct part *p, const struct list_sources *from)
{
	const struct drawing *const lists[2] = { from->sheets, from->templates };
	struct text t = { .arena = a };

	for (int i = 0; i < 2; i++)
		for (const struct drawing *g = lists[i]; g; g = g->next)
			if (drawing_shows(g, p->mark))
				text_join(&t, ", ", g->id);
	return text_chars(&t);
}

static void set_rough(struct list_maker *m, struct list_cell *row, const struct blank *b)
{
	row[CUT_SPARE] = b->spares ? cell_count(m->arena, b->spares) : cell_none();
	row[CUT_PIECES] = cell_count(m->arena, blank_count(b));
	row[CUT_ROUGH_WIDE] = cell_length(m, b->rough_width);
	row[CUT_ROUGH_LONG] = cell_length(m, b->rough_length);
	row[CUT_NOMINAL] = (struct list_cell){ b->stuff == STUFF_BOARD
			? nominal_letter(m->arena, m->lettering, b->nominal)
			: length_letter_inches(m->arena, m->lettering, b->thickness),
		b->stuff == STUFF_BOARD ? b->nominal : b->thickness };
}

/* "T3 rev B": the revision that the sheets are issued as. */
static const char *mark_words(struct arena *a, const struct list_sources *from,
	const struct part *p)
{
	const struct job *job = from->stair->job;

	if (from->telling != CHANGES_BY_MARK || !part_has_changed(from->changes, p))
		return p->mark;
	if (!job->revision_count)
		return arena_printf(a, "%s changed", p->mark);
	return arena_printf(a, "%s rev %s", p->mark, job->revisions[job->revision_count - 1].mark);
}

static void add(struct list_maker *m, const struct list_sources *from, const struct part *p,
	const struct blank *b)
{
	struct list_cell *row = list_row(m);
	struct part_size size = blanks_finished(from->blanks, p);

	row[CUT_MARK] = cell_text(mark_words(m->arena, from, p));
	row[CUT_PART] = cell_text(p->name);
	row[CUT_MAKE] = cell_count(m->arena, p->count);
	row[CUT_SPECIES] = cell_text(p->material);
	row[CUT_THICK] = cell_length(m, size.thickness);
	row[CUT_WIDE] = cell_length(m, size.width);
	row[CUT_LONG] = cell_length(m, size.length);
	row[CUT_GRAIN] = cell_text(is_on_edge(b) ? "along, on edge" : grain_words(p->grain));
	row[CUT_ENDS] = cell_text(sawing_words(m->arena, p, b));
	row[CUT_SHOWN] = cell_text(shown_on(m->arena, p, from));
	if (from->telling == CHANGES_BY_COLUMN)
		row[CUT_CHANGED] = cell_text(part_has_changed(from->changes, p) ? "yes" : "no");
	if (b)
		set_rough(m, row, b);
}

static const char *const *notes_for(struct arena *a, const struct job *job,
	const struct blank *blanks)
{
	const char **notes = NEW_N(a, const char *, 5);
	bool on_edge = false, in_row = false, moulded = false;
	int n = 0;

	for (const struct blank *b = blanks; b; b = b->next) {
		on_edge |= is_on_edge(b) && b->gang <= 1;
		in_row |= b->row > 0;
		moulded |= b->stuff == STUFF_MOULDING;
	}
	notes[n++] = note_sizes;
	if (on_edge)
		notes[n++] = note_on_edge;
	if (in_row)
		notes[n++] = note_in_row;
	if (moulded)
		notes[n++] = moulding_note(a, job);
	return notes;
}

struct list list_cut(struct arena *a, const struct list_sources *from)
{
	int wanted = from->telling == CHANGES_BY_COLUMN ? CUT_COLUMNS : CUT_CHANGED;
	struct list_maker m = list_begin(a, from->stair, "cut", "Cut list", columns, wanted);

	for (const struct part *p = from->parts; p; p = p->next) {
		const struct blank *b = from->blanks;
		while (b && b->part != p)
			b = b->next;
		if (!part_is_existing(p))
			add(&m, from, p, b);
	}
	m.list.notes = notes_for(a, from->stair->job, from->blanks);
	return m.list;
}
