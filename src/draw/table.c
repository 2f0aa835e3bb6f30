#include "draw/table.h"

#include "draw/bounds.h"
#include "draw/place.h"

#define CELL_AIR 1.4 /* left and right of a cell's text */
#define ROW 1.75     /* height of a row of one line, of the height of a capital */
#define LINE 1.4     /* and of each further line */

/* A table measured: what it says, line by line, and how much room that takes. */
struct layout {
	double *widths;      /* of the columns */
	double *heights;     /* of the rows */
	struct lines *cells; /* row by row */
	double width, height;
};

static double text_width(struct hand h, enum letter_style style, const char *text)
{
	return text ? measure_width(h.measure, style, h.letter, text) : 0;
}

/* A list of pairs has no heads. */
static bool has_heads(const struct table *t)
{
	for (int i = 0; i < t->column_count; i++)
		if (*t->columns[i].head)
			return true;
	return false;
}

static struct lines lay_cell(struct hand h, const struct table_column *column, const char *text)
{
	double most = column->most > 0 ? column->most : INFINITY;

	return wrap_text(h.g->arena, h.measure, h.letter, most, text ? text : "");
}

static struct layout lay_table(struct hand h, const struct table *t)
{
	struct arena *a = h.g->arena;
	struct layout l = { NEW_N(a, double, t->column_count), NEW_N(a, double, t->row_count),
		NEW_N(a, struct lines, t->column_count * t->row_count), 0, 0 };

	for (int c = 0; c < t->column_count; c++)
		l.widths[c] = text_width(h, LETTER_BOLD, t->columns[c].head);
	for (int i = 0; i < t->column_count * t->row_count; i++) {
		int c = i % t->column_count, r = i / t->column_count;
		l.cells[i] = lay_cell(h, &t->columns[c], t->cells[i]);
		for (int k = 0; k < l.cells[i].n; k++)
			l.widths[c] = fmax(l.widths[c],
				text_width(h, LETTER_REGULAR, l.cells[i].line[k]));
		l.heights[r] =
			fmax(l.heights[r], h.letter * (ROW + LINE * fmax(0, l.cells[i].n - 1)));
	}
	for (int c = 0; c < t->column_count; c++)
		l.width += l.widths[c] += 2 * CELL_AIR;
	l.height = has_heads(t) ? h.letter * ROW : 0;
	for (int r = 0; r < t->row_count; r++)
		l.height += l.heights[r];
	return l;
}

static double title_room(struct hand h, const struct table *t)
{
	return t->title ? h.letter * 2 : 0;
}

static struct box size_of(struct hand h, const struct table *t, const struct layout *l)
{
	return (struct box){ 0, 0, fmax(l->width, text_width(h, LETTER_BOLD, t->title)),
		title_room(h, t) + l->height };
}

struct box table_size(struct hand h, const struct table *t)
{
	struct layout l = lay_table(h, t);

	return size_of(h, t, &l);
}

static double cell_x(double x, double width, enum align align)
{
	switch (align) {
	case ALIGN_LEFT: return x + CELL_AIR;
	case ALIGN_MIDDLE: return x + width / 2;
	case ALIGN_RIGHT: return x + width - CELL_AIR;
	}
	return x;
}

/* The base line of a row's first line. */
static double base_of(struct hand h, double top)
{
	return top - h.letter * (ROW + 1) / 2;
}

static void draw_heads(struct hand h, const struct table *t, const struct layout *l, struct vec at)
{
	for (int c = 0; c < t->column_count; c++) {
		const struct table_column *column = &t->columns[c];
		draw_text_styled(h.g,
			vec(cell_x(at.x, l->widths[c], column->align), base_of(h, at.y)), h.letter,
			0, column->align, LETTER_BOLD, column->head);
		at.x += l->widths[c];
	}
}

static void draw_row(struct hand h, const struct table *t, const struct layout *l, int row,
	struct vec at)
{
	for (int c = 0; c < t->column_count; c++) {
		const struct lines *cell = &l->cells[row * t->column_count + c];
		enum align align = t->columns[c].align;
		for (int k = 0; k < cell->n; k++)
			draw_text(h.g,
				vec(cell_x(at.x, l->widths[c], align),
					base_of(h, at.y) - k * LINE * h.letter),
				h.letter, align, cell->line[k]);
		at.x += l->widths[c];
	}
}

static void draw_rules(struct hand h, const struct table *t, const struct layout *l, struct vec at)
{
	double x = at.x, bottom = at.y - l->height;

	for (int c = 0; c <= t->column_count; c++) {
		draw_line(h.g, PEN_TABLE, vec(x, at.y), vec(x, bottom));
		x += c < t->column_count ? l->widths[c] : 0;
	}
	draw_line(h.g, PEN_TABLE, at, vec(at.x + l->width, at.y));
}

struct box draw_table(struct hand h, struct vec at, const struct table *t)
{
	struct layout l = lay_table(h, t);
	struct box size = size_of(h, t, &l);
	struct vec row = vec(at.x, at.y - title_room(h, t));

	if (t->title)
		draw_text_styled(h.g, vec(at.x, at.y - h.letter), h.letter, 0, ALIGN_LEFT,
			LETTER_BOLD, t->title);
	draw_rules(h, t, &l, row);
	if (has_heads(t)) {
		draw_heads(h, t, &l, row);
		row.y -= h.letter * ROW;
		draw_line(h.g, PEN_TABLE, row, vec(row.x + l.width, row.y));
	}
	for (int r = 0; r < t->row_count; r++) {
		draw_row(h, t, &l, r, row);
		row.y -= l.heights[r];
		draw_line(h.g, PEN_TABLE, row, vec(row.x + l.width, row.y));
	}
	return (struct box){ at.x, at.y - size.y1, at.x + size.x1, at.y };
}
