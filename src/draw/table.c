#include "draw/table.h"

#include "draw/bounds.h"

#define CELL_AIR 1.4 /* left and right of a cell's text */
#define ROW 1.75     /* pitch of rows, of the height of a capital */

static double text_width(struct hand h, enum letter_style style, const char *text)
{
	return text ? measure_width(h.measure, style, h.letter, text) : 0;
}

static double column_width(struct hand h, const struct table *t, int column)
{
	double w = text_width(h, LETTER_BOLD, t->columns[column].head);

	for (int r = 0; r < t->row_count; r++)
		w = fmax(w, text_width(h, LETTER_REGULAR, t->cells[r * t->column_count + column]));
	return w + 2 * CELL_AIR;
}

/* A list of pairs has no heads. */
static int head_rows(const struct table *t)
{
	for (int i = 0; i < t->column_count; i++)
		if (*t->columns[i].head)
			return 1;
	return 0;
}

static double title_room(struct hand h, const struct table *t)
{
	return t->title ? h.letter * 2 : 0;
}

struct box table_size(struct hand h, const struct table *t)
{
	struct box b = { 0 };

	for (int i = 0; i < t->column_count; i++)
		b.x1 += column_width(h, t, i);
	if (t->title)
		b.x1 = fmax(b.x1, text_width(h, LETTER_BOLD, t->title));
	b.y1 = title_room(h, t) + (t->row_count + head_rows(t)) * h.letter * ROW;
	return b;
}

static void draw_cell(struct hand h, double x, double w, double base, enum align align,
	enum letter_style style, const char *text)
{
	double at = align == ALIGN_LEFT ? x + CELL_AIR
		: align == ALIGN_MIDDLE ? x + w / 2
					: x + w - CELL_AIR;

	draw_text_styled(h.g, vec(at, base), h.letter, 0, align, style, text);
}

static void draw_column(struct hand h, const struct table *t, int column, double x, double top)
{
	double w = column_width(h, t, column), row = h.letter * ROW;
	double base = top - row + (row - h.letter) / 2;
	enum align align = t->columns[column].align;

	draw_cell(h, x, w, base, align, LETTER_BOLD, t->columns[column].head);
	for (int r = 0; r < t->row_count; r++)
		draw_cell(h, x, w, base - (r + head_rows(t)) * row, align, LETTER_REGULAR,
			t->cells[r * t->column_count + column]);
}

struct box draw_table(struct hand h, struct vec at, const struct table *t)
{
	struct box size = table_size(h, t);
	struct box b = { at.x, at.y - size.y1, at.x + size.x1, at.y };
	double top = at.y - title_room(h, t), row = h.letter * ROW, x = at.x, right = at.x;

	if (t->title)
		draw_text_styled(h.g, vec(at.x, at.y - h.letter), h.letter, 0, ALIGN_LEFT,
			LETTER_BOLD, t->title);
	for (int i = 0; i < t->column_count; i++)
		right += column_width(h, t, i);
	for (int i = 0; i < t->column_count; i++) {
		draw_column(h, t, i, x, top);
		draw_line(h.g, PEN_TABLE, vec(x, top), vec(x, b.y0));
		x += column_width(h, t, i);
	}
	draw_line(h.g, PEN_TABLE, vec(right, top), vec(right, b.y0));
	for (int r = 0; r <= t->row_count + head_rows(t); r++)
		draw_line(h.g, PEN_TABLE, vec(at.x, top - r * row), vec(right, top - r * row));
	return b;
}
