#include "sheets/tables.h"

#include "draw/bounds.h"

#define GAP 6.0      /* between tables, and between columns */
#define LEAST_ROWS 3 /* a table is not split for fewer */

/* A table, or some rows of it, in its column. */
struct piece {
	struct piece *next;
	struct table table;
	int column;
	double top; /* below the room's upper edge */
};

struct flow {
	struct sheet *sheet;
	double depth, most;
	struct piece *first, **tail;
	int column;
	double used;   /* of the column now filled */
	double width;  /* of that column */
	double before; /* width of the columns before it, with their gaps */
};

static struct table rows_of(struct arena *a, const struct table *t, int from, int n)
{
	struct table part = *t;

	part.cells += from * t->column_count;
	part.row_count = n;
	if (from > 0 && t->title)
		part.title = arena_printf(a, "%s, continued", t->title);
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
	return n < LEAST_ROWS && n < t->row_count - from ? 0 : n;
}

static void put(struct flow *f, struct table part)
{
	struct piece *p = NEW(f->sheet->drawing->arena, struct piece);

	*p = (struct piece){ .table = part, .column = f->column, .top = f->used };
	*f->tail = p;
	f->tail = &p->next;
	f->used += depth_of(f, &part) + GAP;
	f->width = fmax(f->width, box_width(table_size(f->sheet->hand, &part)));
}

static void next_column(struct flow *f)
{
	f->before += f->width + GAP;
	f->width = f->used = 0;
	f->column++;
}

/* The first row for which there was no room; row_count when all went in. */
static int flow_table(struct flow *f, const struct table *t)
{
	int from = 0;

	while (from < t->row_count) {
		int n = is_too_wide(f, t) ? 0 : rows_that_fit(f, t, from);
		if (n > 0) {
			put(f, rows_of(f->sheet->drawing->arena, t, from, n));
			from += n;
		}
		if (from == t->row_count)
			break;
		if (f->used == 0)
			return from;
		next_column(f);
	}
	return from;
}

static void draw_pieces(const struct flow *f, double width)
{
	struct box room = f->sheet->room;
	double x = room.x1 - width, column_width = 0;
	int column = 0;

	for (const struct piece *p = f->first; p; p = p->next) {
		if (p->column != column) {
			x += column_width + GAP;
			column_width = 0;
			column = p->column;
		}
		struct box b = draw_table(f->sheet->hand, vec(x, room.y1 - p->top), &p->table);
		column_width = fmax(column_width, box_width(b));
	}
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

struct table_list sheet_tables(struct sheet *s, struct table_list list, double most)
{
	struct flow f = { .sheet = s, .depth = box_height(s->room), .most = most };
	int i = 0, row = 0;

	f.tail = &f.first;
	for (; i < list.n; i++) {
		row = flow_table(&f, &list.tables[i]);
		if (row < list.tables[i].row_count)
			break;
	}
	double width = f.before + f.width - (f.width > 0 || f.before <= 0 ? 0 : GAP);
	draw_pieces(&f, width);
	if (width > 0)
		s->room.x1 -= width + GAP;
	return rest_of(s->drawing->arena, list, i, row);
}

struct drawing *sheets_of_tables(struct arena *a, const struct sheet_context *c, const char *title,
	struct table_list rest)
{
	struct drawing *first = NULL, **tail = &first;

	while (rest.n) {
		struct sheet s = sheet_begin(a, c, title);
		int tables = rest.n, rows = rest.tables[0].row_count;
		rest = sheet_tables(&s, rest, box_width(s.room));
		*tail = s.drawing;
		tail = &s.drawing->next;
		/* no paper of templates/papers.yaml is narrower than a table; one that a shop
		 * adds may be, and then what cannot be set is better left out than tried for ever
		 */
		if (rest.n == tables && rest.tables[0].row_count == rows)
			break;
	}
	return first;
}
