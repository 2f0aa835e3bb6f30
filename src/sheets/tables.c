#include "sheets/tables.h"

#include <string.h>

#include "draw/bounds.h"

#define GAP 6.0      /* between tables, and between columns */
#define LEAST_ROWS 3 /* a table is not split for fewer */

#define NARROWER 0.95      /* of a table that is too wide the widest columns, by steps of so much */
#define LEAST_COLUMN 15.0  /* but none narrower than this */
#define MORE ", continued" /* at the end of a title */

/* A table, or some rows of it, in its column. */
struct piece {
	struct piece *next;
	struct table table;
	double x, top; /* from the room's left edge, below its upper one */
};

/* Columns stand side by side in a band; under a table that leaves no room beside it begins another
 * one. */
struct flow {
	struct sheet *sheet;
	double depth, most;
	struct piece *first, **tail;
	double top;     /* of the band */
	double deepest; /* end of what stands in it and above */
	double widest;  /* of the bands above it */
	double used;    /* of the column now filled, from the room's upper edge */
	double width;   /* of that column */
	double before;  /* width of the columns before it, with their gaps */
};

static const char *title_of_more(struct arena *a, const char *title)
{
	size_t n = strlen(title), more = strlen(MORE);

	if (n >= more && strcmp(title + n - more, MORE) == 0)
		return title;
	return arena_printf(a, "%s%s", title, MORE);
}

static struct table rows_of(struct arena *a, const struct table *t, int from, int n)
{
	struct table part = *t;

	part.cells += from * t->column_count;
	part.row_count = n;
	if (from > 0 && t->title)
		part.title = title_of_more(a, t->title);
	return part;
}

static double depth_of(const struct flow *f, const struct table *t)
{
	return box_height(table_size(f->sheet->hand, t));
}

static bool is_too_wide(const struct flow *f, const struct table *t)
{
	double width = fmax(f->width, box_width(table_size(f->sheet->hand, t)));

	return f->before + width > f->most + NEAR_ENOUGH;
}

/* How many rows from `from` on go into what is left of the column. */
static int rows_that_fit(const struct flow *f, const struct table *t, int from)
{
	int n = t->row_count - from;

	while (n > 0) {
		struct table part = rows_of(f->sheet->drawing->arena, t, from, n);
		if (f->used + depth_of(f, &part) <= f->depth + NEAR_ENOUGH)
			break;
		n--;
	}
	int left = t->row_count - from - n;
	if (left > 0 && left < LEAST_ROWS)
		n -= LEAST_ROWS - left;
	return n < LEAST_ROWS && left > 0 ? 0 : n;
}

static void put(struct flow *f, struct table part)
{
	struct piece *p = NEW(f->sheet->drawing->arena, struct piece);

	*p = (struct piece){ .table = part, .x = f->before, .top = f->used };
	*f->tail = p;
	f->tail = &p->next;
	f->used += depth_of(f, &part) + GAP;
	f->width = fmax(f->width, box_width(table_size(f->sheet->hand, &part)));
	f->deepest = fmax(f->deepest, f->used);
}

static double width_of(const struct flow *f)
{
	bool is_begun = f->width > 0 || f->before <= 0;

	return fmax(f->widest, f->before + f->width - (is_begun ? 0 : GAP));
}

static void next_band(struct flow *f)
{
	f->widest = width_of(f);
	f->top = f->used = f->deepest;
	f->before = f->width = 0;
}

static void next_column(struct flow *f)
{
	f->before += f->width + GAP;
	f->width = 0;
	f->used = f->top;
}

/* No paper of templates/papers.yaml is too small for a few rows of any table; one that a shop adds
 * may be.  Then they are set over what is in the way, or no number of sheets would do. */
static int put_anyway(struct flow *f, const struct table *t, int from)
{
	int left = t->row_count - from, n = left < LEAST_ROWS ? left : LEAST_ROWS;

	put(f, rows_of(f->sheet->drawing->arena, t, from, n));
	return n;
}

static bool is_whole_sheet(const struct flow *f)
{
	return !f->first && f->sheet->room.y1 >= f->sheet->top;
}

/* Nor does anything else stand at its foot: the next sheet has no more room for them. */
static bool is_empty_sheet(const struct flow *f)
{
	return is_whole_sheet(f) && f->sheet->room.y0 <= f->sheet->bottom;
}

/* A table is split only where a fresh column would not hold it whole. */
static bool wants_fresh_column(const struct flow *f, const struct table *t)
{
	double beyond = f->before + f->width + GAP + box_width(table_size(f->sheet->hand, t));

	return f->used > f->top && f->used + depth_of(f, t) > f->depth &&
		f->top + depth_of(f, t) <= f->depth && beyond <= f->most;
}

/* There is no room beside what stands in the band, but for two such under it. */
static bool wants_band(const struct flow *f, const struct table *t)
{
	double width = box_width(table_size(f->sheet->hand, t));

	return f->used > f->top && f->before <= 0 && f->width + GAP + width > f->most &&
		2 * width + GAP <= f->most;
}

static struct table with_columns_within(struct arena *a, const struct table *t, double most)
{
	struct table_column *columns = NEW_N(a, struct table_column, t->column_count);
	struct table narrow = *t;

	for (int i = 0; i < t->column_count; i++) {
		columns[i] = t->columns[i];
		if (columns[i].most <= 0 || columns[i].most > most)
			columns[i].most = most;
	}
	narrow.columns = columns;
	return narrow;
}

/* Its widest columns wrapped as often as it takes to go in. */
static struct table fitted(const struct flow *f, const struct table *t)
{
	struct table narrow = *t;

	for (double column = f->most; column > LEAST_COLUMN; column *= NARROWER) {
		if (box_width(table_size(f->sheet->hand, &narrow)) <= f->most)
			break;
		narrow = with_columns_within(f->sheet->drawing->arena, t, column);
	}
	return narrow;
}

/* The first row for which there was no room; row_count when all went in. */
static int flow_table(struct flow *f, const struct table *table)
{
	struct table narrow = is_whole_sheet(f) ? fitted(f, table) : *table;
	const struct table *t = &narrow;
	int from = 0;

	if (wants_band(f, t))
		next_band(f);
	if (wants_fresh_column(f, t))
		next_column(f);
	while (from < t->row_count) {
		int n = is_too_wide(f, t) ? 0 : rows_that_fit(f, t, from);
		if (n > 0) {
			put(f, rows_of(f->sheet->drawing->arena, t, from, n));
			from += n;
		}
		if (from == t->row_count)
			break;
		if (is_empty_sheet(f))
			from += put_anyway(f, t, from);
		if (f->used <= f->top)
			return from;
		next_column(f);
	}
	return from;
}

static void draw_pieces(const struct flow *f, double x)
{
	for (const struct piece *p = f->first; p; p = p->next)
		draw_table(f->sheet->hand, vec(x + p->x, f->sheet->room.y1 - p->top), &p->table);
}

/* What was not set: the rest of the table that ran over, then the tables after it. */
static struct table_list rest_of(struct arena *a, struct table_list list, int i, int row)
{
	struct table *rest = NEW_N(a, struct table, list.n);
	int n = 0;

	if (i == list.n)
		return (struct table_list){ NULL, 0 };
	rest[n++] = rows_of(a, &list.tables[i], row, list.tables[i].row_count - row);
	while (++i < list.n)
		rest[n++] = list.tables[i];
	return (struct table_list){ rest, n };
}

struct table_list sheet_tables(struct sheet *s, struct table_list list, enum table_side side,
	double most)
{
	struct flow f = { .sheet = s, .depth = box_height(s->room), .most = most };
	int i = 0, row = 0;

	f.tail = &f.first;
	for (; i < list.n; i++) {
		row = flow_table(&f, &list.tables[i]);
		if (row < list.tables[i].row_count)
			break;
	}
	double width = width_of(&f);
	draw_pieces(&f, side == TABLES_LEFT ? s->room.x0 : s->room.x1 - width);
	if (width > 0 && side == TABLES_LEFT)
		s->room.x0 += width + GAP;
	if (width > 0 && side == TABLES_RIGHT)
		s->room.x1 -= width + GAP;
	return rest_of(s->drawing->arena, list, i, row);
}

struct drawing *sheets_of_tables(struct arena *a, const struct sheet_context *c, const char *title,
	struct table_list rest)
{
	struct drawing *first = NULL, **tail = &first;

	while (rest.n) {
		struct sheet s = sheet_begin(a, c, title);
		rest = sheet_tables(&s, rest, TABLES_LEFT, box_width(s.room));
		*tail = s.drawing;
		tail = &s.drawing->next;
	}
	return first;
}
