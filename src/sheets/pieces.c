/*
 * A sheet for the bench: every different piece in a cell of its own.
 *
 * A cell takes as few columns as its views need at a scale worth having.
 */
#include "sheets/piece_filing.h"

/* Of the key, in heights of a capital. */
#define KEY_WIDE 14.0
#define KEY_HIGH 10.0

#define NAMED 2 /* families in a title */

enum { MOST_LAPS = 8 }; /* in which a long piece is drawn */

/* Of a piece: its face and its edge in laps, ends, words. */
enum { MOST_CELLS = 2 * MOST_LAPS + 2 };

#define SECTION 70.0 /* a section is drawn no larger, on paper */

/* What all cells are made with, and the sheets they are filed on. */
struct bench {
	struct filing filing;
	struct key_view key;
	double newel_ratio; /* at which newels come out, where there is room: 5 for 1:5 */
};

/* Stringers have sheets of their own. */
static bool has_cell(const struct part *p)
{
	return !part_is_existing(p) && !p->stringer;
}

/* A newel has joints on all its sides: it gets more columns sooner than that it comes out slender,
 * or smaller than another newel of the job. */
static bool is_enough(const struct bench *b, const struct cell *c)
{
	return !c->part->newel || (!cell_is_slender(c) && c->ratio <= b->newel_ratio);
}

/* In the fewest columns in which the piece comes out at a scale worth having; where that is nowhere
 * enough, in the fewest that make it no smaller. */
static struct fitted_cell fit_cell(const struct bench *b, struct cell_wish wish)
{
	struct fitted_cell best = { .span = 0 };

	for (int span = 1; span < b->filing.columns; span++) {
		wish.width = filing_width(&b->filing, span);
		struct cell c = cell_make(&wish);
		if (!c.drawing)
			continue;
		if (is_enough(b, &c))
			return (struct fitted_cell){ wish, c, span };
		if (best.span == 0 || c.ratio < best.cell.ratio)
			best = (struct fitted_cell){ wish, c, span };
	}
	wish.width = filing_width(&b->filing, b->filing.columns);
	struct cell widest = cell_make_anyhow(&wish);
	if (best.span > 0 && (!widest.drawing || widest.ratio >= best.cell.ratio))
		return best;
	return (struct fitted_cell){ wish, widest, b->filing.columns };
}

/* All cells of one piece. */
struct piece_cells {
	struct fitted_cell list[MOST_CELLS];
	int n;
};

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
static bool add_in_laps(const struct bench *b, struct piece_cells *all, struct cell_wish wish)
{
	struct fitted_cell cells[MOST_LAPS];

	for (int n = 2; n <= MOST_LAPS; n++) {
		const struct piece_breaks *laps = piece_laps(b->filing.arena, wish.sides->part, n);
		int made = 0;
		for (; made < n; made++) {
			wish.lap = laps[made];
			cells[made] = fit_cell(b, wish);
			if (!cell_is_worth_having(&cells[made].cell, &cells[made].wish))
				break;
		}
		if (made < n)
			continue;
		for (int i = 0; i < n; i++)
			all->list[all->n++] = cells[i];
		return true;
	}
	return false;
}

static struct cell_wish wish_of(const struct bench *b, const struct piece_sides *sides,
	unsigned holds)
{
	return (struct cell_wish){ .sheet = &b->filing.first->sheet,
		.key = &b->key,
		.sides = sides,
		.holds = holds,
		.lap = piece_unbroken(),
		.height = b->filing.height,
		.section = SECTION };
}

/* Under the last lap of what is before it, where it does not cost that its scale. */
static bool add_to_lap(const struct bench *b, struct fitted_cell *lap, unsigned holds)
{
	struct cell_wish wish = lap->wish;

	if (piece_is_whole(&wish.lap))
		return false;
	wish.holds |= holds;
	const struct fitted_cell both = fit_cell(b, wish);
	if (!cell_is_worth_having(&both.cell, &both.wish) || both.cell.ratio > lap->cell.ratio)
		return false;
	*lap = both;
	return true;
}

/* In one cell; where that does not go in at any scale, what it holds last gets another. */
static void add(const struct bench *b, struct piece_cells *all, const struct piece_sides *sides,
	unsigned holds)
{
	const struct cell_wish wish = wish_of(b, sides, holds);
	unsigned last = last_of(holds), before = holds & ~last;
	const struct fitted_cell c = fit_cell(b, wish);

	if (before == 0 || (c.cell.drawing && cell_goes_in(&c.cell, &c.wish))) {
		bool has_laps = (holds & CELL_VIEWS) && !cell_is_worth_having(&c.cell, &c.wish);
		if (!has_laps || !add_in_laps(b, all, wish))
			all->list[all->n++] = c;
		return;
	}
	add(b, all, sides, before);
	if (!add_to_lap(b, &all->list[all->n - 1], last))
		add(b, all, sides, last);
}

static void add_piece(struct bench *b, const struct part *p)
{
	const struct piece_sides sides = piece_sides(b->filing.arena, p);
	struct piece_cells all = { .n = 0 };

	add(b, &all, &sides, cell_holds_all(p));
	file_cells(&b->filing, all.list, all.n);
}

/* The largest scale at which any newel comes out by itself. */
static double newel_ratio(struct bench *b)
{
	double least = INFINITY;

	b->newel_ratio = INFINITY;
	for (const struct part *p = b->filing.context->parts; p; p = p->next) {
		if (!p->newel)
			continue;
		const struct piece_sides sides = piece_sides(b->filing.arena, p);
		const struct cell_wish wish = wish_of(b, &sides, cell_holds_all(p));
		const struct fitted_cell c = fit_cell(b, wish);
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

static struct drawing *finish(const struct filing *f)
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
	struct bench b = { .filing = filing_begin(a, c) };
	double letter = c->paper->lettering;

	b.key = key_view(a, c, KEY_WIDE * letter, KEY_HIGH * letter);
	b.newel_ratio = newel_ratio(&b);
	for (const struct part *p = c->parts; p; p = p->next)
		if (has_cell(p))
			add_piece(&b, p);
	return finish(&b.filing);
}

const struct sheet_kind sheet_pieces = { "pieces", "S-7", draw };
