#include "sheets/piece_filing.h"

#include "draw/bounds.h"
#include "sheets/words.h"

#define COLUMN_LETTERS 40.0 /* least width of a column, in heights of a capital */
#define COLUMN_GAP 4.0

static void note_sheet(struct sheet *s)
{
	const struct stair *st = s->context->stair;
	struct arena *a = s->drawing->arena;
	bool inches = st->job->about.units == UNITS_INCHES;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL,
			"Finished sizes. Every position is measured from the circled corner; where "
			"a piece is broken out the figures are true. Broken lines: drilled from "
			"the far side, or inside." },
		{ NULL,
			arena_printf(a,
				"Views in third-angle projection. A hole is figured at its middle, "
				"a round at its centre. Holes that meet another piece's are "
				"figured finer where it matters: both, laid out by their figures, "
				"meet to %s.",
				inches ? "1/64\"" : "half a millimetre") },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static int part_count(const struct part *parts)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n++;
	return n;
}

/* One more, at the end. */
static struct open_sheet *open_sheet(struct filing *f)
{
	struct open_sheet *o = NEW(f->arena, struct open_sheet), **tail = &f->first;

	o->sheet = sheet_begin(f->arena, f->context, "Pieces");
	note_sheet(&o->sheet);
	o->sheet.drawing->scale = "as noted";
	o->pieces = NEW_N(f->arena, const struct part *, part_count(f->context->parts) + 1);
	while (*tail)
		tail = &(*tail)->next;
	*tail = o;
	return o;
}

/* All sheets are divided alike. */
static void divide(struct filing *f, const struct sheet *s)
{
	double room = box_width(s->room), least = COLUMN_LETTERS * s->hand.letter;
	int n = (int)((room + COLUMN_GAP) / (least + COLUMN_GAP));

	f->columns = n < 1 ? 1 : n > MOST_COLUMNS ? MOST_COLUMNS : n;
	f->column_width = (room + COLUMN_GAP) / f->columns - COLUMN_GAP;
	f->height = box_height(s->room);
}

double filing_width(const struct filing *f, int span)
{
	return span * (f->column_width + COLUMN_GAP) - COLUMN_GAP;
}

/* ---- places ---- */

/* How far down the columns from this one on are used. */
static double depth_at(const struct open_sheet *o, int column, int span)
{
	double deep = 0;

	for (int i = column; i < column + span; i++)
		deep = fmax(deep, o->used[i]);
	return deep;
}

/* Where a cell that goes on may stand: on this sheet from this column on, or on one after it. */
struct place {
	struct open_sheet *sheet; /* NULL: on none that is open */
	int column;
};

static int highest_column(const struct filing *f, struct place from, int span)
{
	int best = from.column;

	for (int i = best + 1; i + span <= f->columns; i++)
		if (depth_at(from.sheet, i, span) < depth_at(from.sheet, best, span) - NEAR_ENOUGH)
			best = i;
	return best;
}

/* Whatever it is, an empty sheet takes it. */
static bool has_room(const struct filing *f, struct place from, const struct fitted_cell *c)
{
	if (from.sheet->piece_count == 0)
		return true;
	if (from.column + c->span > f->columns)
		return false;
	double down = depth_at(from.sheet, highest_column(f, from, c->span), c->span);
	return down + c->cell.height <= f->height + NEAR_ENOUGH;
}

/* Takes up the columns; the first of them. */
static int take_room(const struct filing *f, struct place from, const struct fitted_cell *c)
{
	int column = highest_column(f, from, c->span);
	double down = depth_at(from.sheet, column, c->span);

	for (int i = column; i < column + c->span; i++)
		from.sheet->used[i] = down + c->cell.height + COLUMN_GAP;
	return column;
}

/* How many of these cells go on a sheet, one after the other, from the first of them on. */
static int count_fitting(const struct filing *f, struct place from, const struct fitted_cell *c,
	int n)
{
	struct open_sheet trial = *from.sheet;
	struct place at = { &trial, from.column };
	int i = 0;

	for (; i < n && has_room(f, at, &c[i]); i++) {
		at.column = take_room(f, at, &c[i]);
		trial.piece_count++;
	}
	return i;
}

/* The first place that takes all of them, on a new sheet where there is none. */
static struct place place_for(struct filing *f, struct place from, const struct fitted_cell *c,
	int n)
{
	while (from.sheet && count_fitting(f, from, c, n) < n)
		from = (struct place){ from.sheet->next, 0 };
	if (!from.sheet)
		from.sheet = open_sheet(f);
	return from;
}

/* Draws it there; where what goes on from it may stand. */
static struct place put(const struct filing *f, struct place from, const struct fitted_cell *c)
{
	struct open_sheet *o = from.sheet;
	int column = highest_column(f, from, c->span);
	struct box room = o->sheet.room;
	double x = room.x0 + column * (f->column_width + COLUMN_GAP);
	double y = room.y1 - depth_at(o, column, c->span);

	if (!cell_goes_in(&c->cell, &c->wish))
		o->sheet.drawing->runs_over = true;
	cell_draw_key(&c->cell, &c->wish);
	draw_box(o->sheet.drawing, PEN_TABLE,
		(struct box){ x, y - c->cell.height, x + filing_width(f, c->span), y });
	drawing_take(o->sheet.drawing, c->cell.drawing, vec(x, y));
	if (o->piece_count == 0 || o->pieces[o->piece_count - 1] != c->cell.part)
		o->pieces[o->piece_count++] = c->cell.part;
	return (struct place){ o, take_room(f, from, c) };
}

/* How many of them go on an empty sheet. */
static int count_on_empty(const struct filing *f, const struct fitted_cell *c, int n)
{
	struct open_sheet empty = { .piece_count = 0 };

	return count_fitting(f, (struct place){ &empty, 0 }, c, n);
}

void file_cells(struct filing *f, const struct fitted_cell *c, int n)
{
	struct place at = { f->first, 0 };

	while (n > 0) {
		int here = count_on_empty(f, c, n);
		at = place_for(f, at, c, here);
		for (int i = 0; i < here; i++)
			at = put(f, at, &c[i]);
		c += here;
		n -= here;
	}
}

struct filing filing_begin(struct arena *a, const struct sheet_context *c)
{
	struct filing f = { .context = c, .arena = a };

	divide(&f, &open_sheet(&f)->sheet);
	return f;
}
