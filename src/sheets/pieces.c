/*
 * A sheet for the bench: every different piece in a cell of its own.
 *
 * A cell takes as few columns as its views need at a scale worth having, and
 * stands under what is already in them; it never runs on to another sheet.
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

#define SECTION 70.0 /* a section is drawn no larger, on paper */

/* The sheets as they fill. */
struct filing {
	const struct sheet_context *context;
	struct arena *arena;
	struct key_view key;
	struct drawing *first, **tail;
	struct sheet sheet;
	int columns;
	double column_width;
	double used[MOST_COLUMNS]; /* of each column, from the top */
	const char **marks;        /* of the pieces on this sheet */
	int mark_count;
};

/* Stringers have sheets of their own. */
static bool has_cell(const struct part *p)
{
	return !part_is_existing(p) && !p->stringer;
}

static void note_sheet(struct sheet *s)
{
	const struct stair *st = s->context->stair;
	const struct note notes[] = {
		{ "Notes", general_words(s->drawing->arena, st) },
		{ NULL,
			"Finished sizes. Every position is measured from the circled corner; where "
			"a piece is broken out the figures are true. Broken lines: drilled from "
			"the far side, or inside." },
		{ NULL, "Views in third-angle projection. A hole is figured at its middle." },
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

static void open_sheet(struct filing *f)
{
	f->sheet = sheet_begin(f->arena, f->context, "Pieces");
	note_sheet(&f->sheet);
	double room = box_width(f->sheet.room), least = COLUMN_LETTERS * f->sheet.hand.letter;
	int n = (int)((room + COLUMN_GAP) / (least + COLUMN_GAP));
	f->columns = n < 1 ? 1 : n > MOST_COLUMNS ? MOST_COLUMNS : n;
	f->column_width = (room + COLUMN_GAP) / f->columns - COLUMN_GAP;
	for (int i = 0; i < MOST_COLUMNS; i++)
		f->used[i] = 0;
	f->marks = NEW_N(f->arena, const char *, part_count(f->context->parts) + 1);
	f->mark_count = 0;
	f->sheet.drawing->shows = f->marks;
	f->sheet.drawing->scale = "as noted";
	*f->tail = f->sheet.drawing;
	f->tail = &f->sheet.drawing->next;
}

static double width_of(const struct filing *f, int span)
{
	return span * (f->column_width + COLUMN_GAP) - COLUMN_GAP;
}

/* How far down the columns from this one on are used. */
static double depth_at(const struct filing *f, int column, int span)
{
	double deep = 0;

	for (int i = column; i < column + span; i++)
		deep = fmax(deep, f->used[i]);
	return deep;
}

static int highest_place(const struct filing *f, int span)
{
	int best = 0;

	for (int i = 1; i + span <= f->columns; i++)
		if (depth_at(f, i, span) < depth_at(f, best, span) - NEAR_ENOUGH)
			best = i;
	return best;
}

static void put(struct filing *f, const struct cell *c, int span)
{
	int column = highest_place(f, span);
	double down = depth_at(f, column, span);
	struct box room = f->sheet.room;
	double x = room.x0 + column * (f->column_width + COLUMN_GAP), y = room.y1 - down;

	draw_box(f->sheet.drawing, PEN_TABLE,
		(struct box){ x, y - c->height, x + width_of(f, span), y });
	drawing_take(f->sheet.drawing, c->drawing, vec(x, y));
	for (int i = column; i < column + span; i++)
		f->used[i] = down + c->height + COLUMN_GAP;
	f->marks[f->mark_count++] = c->part->mark;
}

/* The fewest columns in which the piece comes out at a scale worth having. */
static struct cell cell_for(struct filing *f, const struct part *p, int *span)
{
	struct cell_wish wish = { .sheet = &f->sheet, .key = &f->key, .part = p };

	wish.height = box_height(f->sheet.room);
	wish.section = SECTION;
	for (*span = 1; *span < f->columns; ++*span) {
		wish.width = width_of(f, *span);
		struct cell c = cell_make(&wish);
		if (c.drawing)
			return c;
	}
	wish.width = width_of(f, *span);
	return cell_make_anyhow(&wish);
}

static void add(struct filing *f, const struct part *p)
{
	int span;
	double height = box_height(f->sheet.room);
	struct cell c = cell_for(f, p, &span);

	if (depth_at(f, highest_place(f, span), span) + c.height > height + NEAR_ENOUGH &&
		f->mark_count > 0)
		open_sheet(f);
	if (c.height > height + NEAR_ENOUGH || c.width > width_of(f, span) + NEAR_ENOUGH)
		f->sheet.drawing->is_too_small = 1;
	put(f, &c, span);
}

/* "Pieces T1 to T6" */
static void name_sheets(struct arena *a, struct drawing *list)
{
	for (struct drawing *g = list; g; g = g->next) {
		const char *const *last = g->shows;
		while (last[0] && last[1])
			last++;
		if (g->shows[0])
			g->title = arena_printf(a, "Pieces %s to %s", g->shows[0], *last);
	}
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct filing f = { .context = c, .arena = a, .tail = &f.first };
	double letter = c->paper->lettering;

	f.key = key_view(a, c, KEY_WIDE * letter, KEY_HIGH * letter);
	open_sheet(&f);
	for (const struct part *p = c->parts; p; p = p->next)
		if (has_cell(p))
			add(&f, p);
	name_sheets(a, f.first);
	return f.first;
}

const struct sheet_kind sheet_pieces = { "pieces", "S-7", draw };
