#include "sheets/list_sheet.h"

#include <string.h>

#include "draw/bounds.h"

#define NARROWEST 20.0 /* a text is not broken at less */
#define STEP 4.0

struct lists sheet_lists(struct arena *a, const struct sheet_context *c)
{
	const struct list_sources from = { c->stair, c->parts, c->blanks, c->cutting, c->sheets,
		c->templates, c->changes, CHANGES_BY_MARK };

	return lists_make(a, &from);
}

static bool is_wanted(const char *key, const char *const *keys)
{
	for (int i = 0; keys && keys[i]; i++)
		if (strcmp(keys[i], key) == 0)
			return true;
	return !keys;
}

static bool is_shown(const struct list *l, int column, const char *const *keys)
{
	for (int r = 0; r < l->row_count; r++)
		if (*l->cells[r * l->column_count + column].text)
			return is_wanted(l->columns[column].key, keys);
	return false;
}

static enum align align_of(enum list_kind kind)
{
	return kind == LIST_TEXT ? ALIGN_LEFT : ALIGN_RIGHT;
}

struct table list_table(struct arena *a, const struct list *l, const char *title,
	const char *const *keys)
{
	struct table_column *columns = NEW_N(a, struct table_column, l->column_count + 1);
	const char **cells = NEW_N(a, const char *, l->column_count * l->row_count + 1);
	int n = 0, kept = 0;

	for (int c = 0; c < l->column_count; c++)
		kept += is_shown(l, c, keys);
	for (int c = 0; c < l->column_count; c++) {
		const struct list_column *from = &l->columns[c];
		if (!is_shown(l, c, keys))
			continue;
		columns[n] = (struct table_column){ from->head, align_of(from->kind), from->most };
		for (int r = 0; r < l->row_count; r++)
			cells[r * kept + n] = l->cells[r * l->column_count + c].text;
		n++;
	}
	return (struct table){ title, columns, kept, cells, l->row_count };
}

/* The column that is broken at the most; -1: none that may be broken at less. */
static int widest_column(const struct table *t)
{
	int widest = -1;

	for (int c = 0; c < t->column_count; c++)
		if (t->columns[c].most >= NARROWEST + STEP &&
			(widest < 0 || t->columns[c].most > t->columns[widest].most))
			widest = c;
	return widest;
}

struct table table_narrowed(struct hand h, struct table t, double width)
{
	struct table_column *columns = NEW_N(h.g->arena, struct table_column, t.column_count + 1);

	for (int c = 0; c < t.column_count; c++)
		columns[c] = t.columns[c];
	t.columns = columns;
	for (int c; box_width(table_size(h, &t)) > width && (c = widest_column(&t)) >= 0;)
		columns[c].most -= STEP;
	return t;
}

int list_notes(const struct list *l, const char *heading, struct note *notes, int n)
{
	for (int i = 0; l->notes && l->notes[i]; i++)
		notes[n++] = (struct note){ i ? NULL : heading, l->notes[i] };
	return n;
}
