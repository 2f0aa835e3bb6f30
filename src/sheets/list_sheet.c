#include "sheets/list_sheet.h"

struct lists sheet_lists(struct arena *a, const struct sheet_context *c)
{
	const struct list_sources from = { c->stair, c->parts, c->blanks, c->cutting, c->sheets };

	return lists_make(a, &from);
}

static bool says_something(const struct list *l, int column)
{
	for (int r = 0; r < l->row_count; r++)
		if (*l->cells[r * l->column_count + column].text)
			return true;
	return false;
}

static enum align align_of(enum list_kind kind)
{
	return kind == LIST_TEXT ? ALIGN_LEFT : ALIGN_RIGHT;
}

struct table list_table(struct arena *a, const struct list *l)
{
	struct table_column *columns = NEW_N(a, struct table_column, l->column_count + 1);
	const char **cells = NEW_N(a, const char *, l->column_count * l->row_count + 1);
	int n = 0, kept = 0;

	for (int c = 0; c < l->column_count; c++)
		kept += says_something(l, c);
	for (int c = 0; c < l->column_count; c++) {
		const struct list_column *from = &l->columns[c];
		if (!says_something(l, c))
			continue;
		columns[n] = (struct table_column){ from->head, align_of(from->kind), from->most };
		for (int r = 0; r < l->row_count; r++)
			cells[r * kept + n] = l->cells[r * l->column_count + c].text;
		n++;
	}
	return (struct table){ l->title, columns, kept, cells, l->row_count };
}

int list_notes(const struct list *l, const char *heading, struct note *notes, int n)
{
	for (int i = 0; l->notes && l->notes[i]; i++)
		notes[n++] = (struct note){ i ? NULL : heading, l->notes[i] };
	return n;
}
