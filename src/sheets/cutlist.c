/*
 * The cut list, and what is counted from it: wood, mouldings, hardware, boards to buy.
 */
#include "sheets/list_sheet.h"

#include "draw/bounds.h"
#include "sheets/words.h"

static const char *const on_sheet[] = { "cut", "lumber", "buying", "mouldings", "hardware" };

enum { ON_SHEET = sizeof(on_sheet) / sizeof(*on_sheet) };

/* Proofs stand beside the diagrams. */
static void note_sheet(struct sheet *s, struct lists lists)
{
	struct note notes[8] = { { "Notes", general_words(s->drawing->arena, s->context->stair) } };
	int n = 1;

	n = list_notes(lists_find(lists, "cut"), NULL, notes, n);
	n = list_notes(lists_find(lists, "lumber"), NULL, notes, n);
	if (lists_find(lists, "mouldings")->row_count)
		n = list_notes(lists_find(lists, "mouldings"), NULL, notes, n);
	sheet_notes(s, notes, n);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, "Cut list");
	struct lists lists = sheet_lists(a, c);
	struct table tables[ON_SHEET];
	struct table_list rest = { tables, 0 };

	for (int i = 0; i < ON_SHEET; i++) {
		const struct list *l = lists_find(lists, on_sheet[i]);
		if (l->row_count)
			tables[rest.n++] = list_table(a, l);
	}
	note_sheet(&s, lists);
	rest = sheet_tables(&s, rest, TABLES_LEFT, box_width(s.room));
	s.drawing->next = sheets_of_tables(a, c, "Cut list, continued", rest);
	return s.drawing;
}

const struct sheet_kind sheet_cutlist = { "cutlist", "S-8", draw };
