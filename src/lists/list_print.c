/*
 * A list for a terminal, as CSV, as JSON.
 */
#include <string.h>

#include "base/text.h"
#include "pitchboard/list.h"

static const struct list_cell *cell_at(const struct list *l, int row, int column)
{
	return &l->cells[row * l->column_count + column];
}

/* ---- text ---- */

static void put_padded(struct text *t, const char *word, int width, enum list_kind kind)
{
	int pad = width - text_columns(word);

	text_put_blanks(t, kind == LIST_TEXT ? 0 : pad);
	text_put(t, word);
	text_put_blanks(t, kind == LIST_TEXT ? pad : 0);
}

static int column_width(const struct list *l, int column)
{
	int most = text_columns(l->columns[column].head);

	for (int r = 0; r < l->row_count; r++) {
		int w = text_columns(cell_at(l, r, column)->text);
		most = w > most ? w : most;
	}
	return most;
}

/* No blanks at the end of a line. */
static void end_line(struct text *t)
{
	while (t->length && t->chars[t->length - 1] == ' ')
		t->chars[--t->length] = '\0';
	text_put_char(t, '\n');
}

const char *list_text(struct arena *a, const struct list *l)
{
	struct text t = { .arena = a };
	int *widths = NEW_N(a, int, l->column_count + 1);

	text_add(&t, "%s\n\n", l->title);
	for (int r = -1; r < l->row_count; r++) {
		for (int c = 0; c < l->column_count; c++) {
			const char *word = r < 0 ? l->columns[c].head : cell_at(l, r, c)->text;
			widths[c] = widths[c] ? widths[c] : column_width(l, c);
			text_put(&t, c ? "  " : "");
			put_padded(&t, word, widths[c], l->columns[c].kind);
		}
		end_line(&t);
	}
	for (int i = 0; l->notes && l->notes[i]; i++)
		text_add(&t, "%s%s\n", i ? "" : "\n", l->notes[i]);
	text_put_char(&t, '\n');
	return text_chars(&t);
}

/* ---- numbers ---- */

static bool is_number(enum list_kind kind)
{
	return kind == LIST_COUNT || kind == LIST_NUMBER;
}

static const char *number_text(struct arena *a, double v)
{
	return isnan(v) ? "" : arena_printf(a, "%.10g", round(v * 1e4) / 1e4);
}

/* ---- CSV, RFC 4180 ---- */

static void put_field(struct text *t, const char *word)
{
	if (!strpbrk(word, ",\"\r\n")) {
		text_put(t, word);
		return;
	}
	text_put_char(t, '"');
	for (; *word; word++) {
		if (*word == '"')
			text_put_char(t, '"');
		text_put_char(t, *word);
	}
	text_put_char(t, '"');
}

/* A length is two fields: as lettered, and in millimetres. */
static void put_csv_cell(struct text *t, struct arena *a, const struct list *l, int row, int c)
{
	const struct list_column *column = &l->columns[c];
	const char *number = row < 0 ? "" : number_text(a, cell_at(l, row, c)->number);

	text_put(t, c ? "," : "");
	if (row < 0)
		text_put(t, column->key);
	else
		put_field(t, is_number(column->kind) ? number : cell_at(l, row, c)->text);
	if (column->kind != LIST_LENGTH)
		return;
	if (row < 0)
		text_add(t, ",%s_mm", column->key);
	else
		text_add(t, ",%s", number);
}

const char *list_csv(struct arena *a, const struct list *l)
{
	struct text t = { .arena = a };

	for (int r = -1; r < l->row_count; r++) {
		for (int c = 0; c < l->column_count; c++)
			put_csv_cell(&t, a, l, r, c);
		text_put(&t, "\r\n");
	}
	return text_chars(&t);
}

/* ---- JSON ---- */

static void put_string(struct text *t, const char *word)
{
	text_put_char(t, '"');
	for (; *word; word++) {
		unsigned char c = (unsigned char)*word;
		if (c == '"' || c == '\\')
			text_add(t, "\\%c", c);
		else if (c < ' ')
			text_add(t, "\\u%04x", c);
		else
			text_put_char(t, *word);
	}
	text_put_char(t, '"');
}

static void put_json_cell(struct text *t, struct arena *a, const struct list *l, int row, int c)
{
	const struct list_column *column = &l->columns[c];
	const struct list_cell *cell = cell_at(l, row, c);
	const char *number = isnan(cell->number) ? "null" : number_text(a, cell->number);

	text_put(t, c ? ", " : "");
	put_string(t, column->key);
	text_put(t, ": ");
	if (is_number(column->kind))
		text_put(t, number);
	else
		put_string(t, cell->text);
	if (column->kind == LIST_LENGTH)
		text_add(t, ", \"%s_mm\": %s", column->key, number);
}

static void put_rows(struct text *t, struct arena *a, const struct list *l)
{
	for (int r = 0; r < l->row_count; r++) {
		text_put(t, r ? ",\n    {" : "\n    {");
		for (int c = 0; c < l->column_count; c++)
			put_json_cell(t, a, l, r, c);
		text_put_char(t, '}');
	}
}

const char *lists_json(struct arena *a, struct lists l)
{
	struct text t = { .arena = a };

	text_put(&t, "{\n");
	for (int i = 0; i < l.n; i++) {
		text_add(&t, "%s  \"%s\": [", i ? ",\n" : "", l.lists[i].name);
		put_rows(&t, a, &l.lists[i]);
		text_put(&t, l.lists[i].row_count ? "\n  ]" : "]");
	}
	text_put(&t, "\n}\n");
	return text_chars(&t);
}
