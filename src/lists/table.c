#include "lists/table.h"

#include <string.h>

#include "base/text.h"
#include "lists/group_words.h"

struct list_maker list_begin(struct arena *a, const struct stair *s, const char *name,
	const char *title, const struct list_column *columns, int column_count)
{
	struct list_maker m = { .arena = a, .lettering = job_lettering(s->job) };

	m.list = (struct list){ .name = name,
		.title = title,
		.columns = columns,
		.column_count = column_count };
	return m;
}

/* Room doubles. */
struct list_cell *list_row(struct list_maker *m)
{
	int n = m->list.column_count, at = m->list.row_count++;

	if (at == m->room) {
		m->room = m->room ? 2 * m->room : 16;
		struct list_cell *cells = NEW_N(m->arena, struct list_cell, m->room * n);
		if (at)
			memcpy(cells, m->cells, (size_t)(at * n) * sizeof(*cells));
		m->cells = cells;
		m->list.cells = cells;
	}
	for (int i = 0; i < n; i++)
		m->cells[at * n + i] = cell_none();
	return m->cells + at * n;
}

struct list_cell cell_none(void)
{
	return (struct list_cell){ "", NAN };
}

struct list_cell cell_text(const char *text)
{
	return (struct list_cell){ text, NAN };
}

struct list_cell cell_count(struct arena *a, int n)
{
	return (struct list_cell){ arena_printf(a, "%d", n), n };
}

struct list_cell cell_length(const struct list_maker *m, double mm)
{
	return (struct list_cell){ length_letter_inches(m->arena, m->lettering, mm), mm };
}

struct list_cell cell_feet(const struct list_maker *m, double mm)
{
	return (struct list_cell){ length_letter(m->arena, m->lettering, mm), mm };
}

struct list_cell cell_number(struct arena *a, double v, int places)
{
	return (struct list_cell){ arena_printf(a, "%.*f", places, text_tidy(v)), v };
}

struct list_cell cell_nominal(const struct list_maker *m, const struct cut_group *g)
{
	return (struct list_cell){ group_thickness(m->arena, m->lettering, g), g->nominal };
}
