/*
 * A sheet for the bench: every different piece in a cell of its own.
 *
 * A cell takes as few columns as its views need at a scale worth having, and
 * stands under what is already in them on the first sheet with room for it; it never
 * runs on to another sheet.
 */
#include "draw/bounds.h"
#include "sheets/piece_cell.h"
#include "sheets/words.h"

#define COLUMN_LETTERS 40.0 /* least width of a column, in heights of a capital */
#define COLUMN_GAP 4.0
#define MOST_COLUMNS 8

/* Of the key, in heights of a capital. */
#define KEY_WIDE 14.0
#define KEY_HIGH 10.0

#define NAMED 2 /* families in a title */

#define MOST_LAPS 8 /* in which a long piece is drawn */

#define SECTION 70.0 /* a section is drawn no larger, on paper */

/* A sheet as it fills. */
struct open_sheet {
	struct open_sheet *next;
	struct sheet sheet;
	double used[MOST_COLUMNS]; /* of each column, from the top */
	const struct part **pieces;
	int piece_count;
};

struct filing {
	const struct sheet_context *context;
	struct arena *arena;
	struct key_view key;
	struct open_sheet *first;
	int columns;
	double column_width, height;
	double newel_ratio; /* at which newels come out, where there is room: 5 for 1:5 */
};

/* Stringers have sheets of their own. */
static bool has_cell(const struct part *p)
{
	return !part_is_existing(p) && !p->stringer;
}

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

static double width_of(const struct filing *f, int span)
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

static int highest_place(const struct filing *f, const struct open_sheet *o, int span)
{
	int best = 0;

	for (int i = 1; i + span <= f->columns; i++)
		if (depth_at(o, i, span) < depth_at(o, best, span) - NEAR_ENOUGH)
			best = i;
	return best;
}

static bool has_room(const struct filing *f, const struct open_sheet *o, double height, int span)
{
	return o->piece_count == 0 ||
		depth_at(o, highest_place(f, o, span), span) + height <= f->height + NEAR_ENOUGH;
}

/* The first sheet that has room for it. */
static struct open_sheet *sheet_for(struct filing *f, double height, int span)
{
	for (struct open_sheet *o = f->first; o; o = o->next)
		if (has_room(f, o, height, span))
			return o;
	return open_sheet(f);
}

/* Both cells of one piece may come to stand on one sheet. */
static void put(const struct filing *f, struct open_sheet *o, const struct cell *c, int span)
{
	int column = highest_place(f, o, span);
	double down = depth_at(o, column, span);
	struct box room = o->sheet.room;
	double x = room.x0 + column * (f->column_width + COLUMN_GAP), y = room.y1 - down;

	draw_box(o->sheet.drawing, PEN_TABLE,
		(struct box){ x, y - c->height, x + width_of(f, span), y });
	drawing_take(o->sheet.drawing, c->drawing, vec(x, y));
	for (int i = column; i < column + span; i++)
		o->used[i] = down + c->height + COLUMN_GAP;
	if (o->piece_count == 0 || o->pieces[o->piece_count - 1] != c->part)
		o->pieces[o->piece_count++] = c->part;
}

/* ---- cells ---- */

/* A cell, what was wished of it, and over how many columns it came out. */
struct fitted_cell {
	struct cell_wish wish;
	struct cell cell;
	int span;
};

/* A newel has joints on all its sides: it gets more columns sooner than that it comes out slender,
 * or smaller than another newel of the job. */
static bool is_enough(const struct filing *f, const struct cell *c)
{
	return !c->part->newel || (!cell_is_slender(c) && c->ratio <= f->newel_ratio);
}

/* In the fewest columns in which the piece comes out at a scale worth having; where that is nowhere
 * enough, in the fewest that make it no smaller. */
static struct fitted_cell fit_cell(const struct filing *f, struct cell_wish wish)
{
	struct fitted_cell best = { .span = 0 };

	for (int span = 1; span < f->columns; span++) {
		wish.width = width_of(f, span);
		struct cell c = cell_make(&wish);
		if (!c.drawing)
			continue;
		if (is_enough(f, &c))
			return (struct fitted_cell){ wish, c, span };
		if (best.span == 0 || c.ratio < best.cell.ratio)
			best = (struct fitted_cell){ wish, c, span };
	}
	wish.width = width_of(f, f->columns);
	struct cell widest = cell_make_anyhow(&wish);
	if (best.span > 0 && (!widest.drawing || widest.ratio >= best.cell.ratio))
		return best;
	return (struct fitted_cell){ wish, widest, f->columns };
}

static void file_cell(struct filing *f, const struct fitted_cell *c)
{
	struct open_sheet *o = sheet_for(f, c->cell.height, c->span);

	if (!cell_goes_in(&c->cell, &c->wish))
		o->sheet.drawing->runs_over = true;
	cell_draw_key(&c->cell, &c->wish);
	put(f, o, &c->cell, c->span);
}

static unsigned last_of(unsigned holds)
{
	if (!(holds & CELL_VIEWS))
		return holds & CELL_WORDS ? CELL_WORDS : CELL_ENDS;
	if (holds & ~CELL_VIEWS)
		return holds & ~CELL_VIEWS;
	return holds & CELL_EDGE ? CELL_EDGE : CELL_FACE;
}

/* One view of a long piece with nothing plain in it, a lap to a cell and in as few as will do;
 * false where it does not go in so either. */
static bool add_in_laps(struct filing *f, struct cell_wish wish)
{
	struct fitted_cell cells[MOST_LAPS];

	for (int n = 2; n <= MOST_LAPS; n++) {
		const struct piece_breaks *laps = piece_laps(f->arena, wish.sides->part, n);
		int made = 0;
		for (; made < n; made++) {
			wish.lap = laps[made];
			cells[made] = fit_cell(f, wish);
			if (!cell_is_worth_having(&cells[made].cell, &cells[made].wish))
				break;
		}
		if (made < n)
			continue;
		for (int i = 0; i < n; i++)
			file_cell(f, &cells[i]);
		return true;
	}
	return false;
}

static struct cell_wish wish_of(const struct filing *f, const struct piece_sides *sides,
	unsigned holds)
{
	return (struct cell_wish){ .sheet = &f->first->sheet,
		.key = &f->key,
		.sides = sides,
		.holds = holds,
		.lap = piece_unbroken(),
		.height = f->height,
		.section = SECTION };
}

/* In one cell; where that does not go in at any scale, what it holds last gets another. */
static void add(struct filing *f, const struct piece_sides *sides, unsigned holds)
{
	const struct cell_wish wish = wish_of(f, sides, holds);
	unsigned last = last_of(holds), before = holds & ~last;
	const struct fitted_cell c = fit_cell(f, wish);

	if (before == 0 || (c.cell.drawing && cell_goes_in(&c.cell, &c.wish))) {
		bool has_laps = (holds & CELL_VIEWS) && !cell_is_worth_having(&c.cell, &c.wish);
		if (!has_laps || !add_in_laps(f, wish))
			file_cell(f, &c);
		return;
	}
	add(f, sides, before);
	add(f, sides, last);
}

static void add_piece(struct filing *f, const struct part *p)
{
	const struct piece_sides sides = piece_sides(f->arena, p);

	add(f, &sides, cell_holds_all(p));
}

/* The largest scale at which any newel comes out by itself. */
static double newel_ratio(struct filing *f)
{
	double least = INFINITY;

	f->newel_ratio = INFINITY;
	for (const struct part *p = f->context->parts; p; p = p->next) {
		if (!p->newel)
			continue;
		const struct piece_sides sides = piece_sides(f->arena, p);
		const struct cell_wish wish = wish_of(f, &sides, cell_holds_all(p));
		const struct fitted_cell c = fit_cell(f, wish);
		if (c.cell.drawing && cell_goes_in(&c.cell, &c.wish))
			least = fmin(least, c.cell.ratio);
	}
	return least;
}

/* ---- the sheets ---- */

static const char *const *marks_of(struct arena *a, const struct open_sheet *o)
{
	const char **marks = NEW_N(a, const char *, o->piece_count + 1);

	for (int i = 0; i < o->piece_count; i++)
		marks[i] = o->pieces[i]->mark;
	return marks;
}

static bool was_named(const struct open_sheet *o, int before, const struct part_kind *kind)
{
	for (int i = 0; i < before; i++)
		if (o->pieces[i]->kind == kind)
			return true;
	return false;
}

/* The families on it, as they come: "Pieces: riser, tread, newel". */
static const char *title_of(struct arena *a, const struct open_sheet *o)
{
	const char *title = "Pieces", *between = ": ";
	int named = 0;

	for (int i = 0; i < o->piece_count; i++) {
		const struct part_kind *kind = o->pieces[i]->kind;
		if (was_named(o, i, kind))
			continue;
		if (named++ == NAMED)
			return arena_printf(a, "%s ...", title);
		title = arena_printf(a, "%s%s%s", title, between, kind->name);
		between = ", ";
	}
	return title;
}

static struct drawing *finish(struct filing *f)
{
	struct drawing *first = NULL, **tail = &first;

	for (struct open_sheet *o = f->first; o; o = o->next) {
		o->sheet.drawing->shows = marks_of(f->arena, o);
		o->sheet.drawing->title = title_of(f->arena, o);
		*tail = o->sheet.drawing;
		tail = &o->sheet.drawing->next;
	}
	return first;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct filing f = { .context = c, .arena = a };
	double letter = c->paper->lettering;

	f.key = key_view(a, c, KEY_WIDE * letter, KEY_HIGH * letter);
	divide(&f, &open_sheet(&f)->sheet);
	f.newel_ratio = newel_ratio(&f);
	for (const struct part *p = c->parts; p; p = p->next)
		if (has_cell(p))
			add_piece(&f, p);
	return finish(&f);
}

const struct sheet_kind sheet_pieces = { "pieces", "S-7", draw };
