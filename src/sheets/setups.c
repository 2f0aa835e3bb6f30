/*
 * Set-ups of the machines, with the cautions for short pieces.
 */
#include "sheets/list_sheet.h"

#include "draw/bounds.h"

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	const struct list *l = lists_find(sheet_lists(a, c), "setups");
	struct sheet s = sheet_begin(a, c, "Set-ups");
	struct note notes[8];

	sheet_notes(&s, notes, list_notes(l, "Notes", notes, 0));
	const struct table table =
		table_narrowed(s.hand, list_table(a, l, l->title, NULL), box_width(s.room));
	struct table_list rest = { &table, 1 };
	rest = sheet_tables(&s, rest, TABLES_LEFT, box_width(s.room));
	s.drawing->next = sheets_of_tables(a, c, "Set-ups, continued", rest);
	return s.drawing;
}

const struct sheet_kind sheet_setups = { "setups", "S-8", draw };
