/*
 * The cut list, and what is counted from it: wood, mouldings, hardware, boards to buy.
 */
#include "sheets/list_sheet.h"

#include "draw/bounds.h"
#include "sheets/words.h"

/* What is counted from it. */
static const char *const counted[] = { "lumber", "buying", "mouldings", "hardware" };

enum { COUNTED = sizeof(counted) / sizeof(*counted) };

/* On a small paper the cut list is two tables. */
static const char *const finished[] = { "mark", "part", "make", "species", "thickness", "width",
	"length", "grain", "ends", "sheet", NULL };
static const char *const rough[] = { "mark", "part", "make", "spare", "species", "rough_pieces",
	"nominal", "rough_width", "rough_length", NULL };

static int cut_tables(const struct sheet *s, const struct list *cut, struct table *tables)
{
	struct arena *a = s->drawing->arena;
	double width = box_width(s->room);

	tables[0] = table_narrowed(s->hand, list_table(a, cut, cut->title, NULL), width);
	if (box_width(table_size(s->hand, &tables[0])) <= width)
		return 1;
	tables[0] = table_narrowed(s->hand, list_table(a, cut, cut->title, finished), width);
	tables[1] = table_narrowed(s->hand, list_table(a, cut, "Rough sizes", rough), width);
	return 2;
}

/* Proofs stand beside the diagrams. */
static void note_sheet(struct sheet *s, struct lists lists)
{
	struct note notes[8] = { { "Notes", general_words(s->context->stair) } };
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
	struct table tables[COUNTED + 2];
	struct table_list rest = { tables, cut_tables(&s, lists_find(lists, "cut"), tables) };

	for (int i = 0; i < COUNTED; i++) {
		const struct list *l = lists_find(lists, counted[i]);
		if (l->row_count)
			tables[rest.n++] = table_narrowed(s.hand, list_table(a, l, l->title, NULL),
				box_width(s.room));
	}
	note_sheet(&s, lists);
	rest = sheet_tables(&s, rest, TABLES_LEFT, box_width(s.room));
	s.drawing->next = sheets_of_tables(a, c, "Cut list, continued", rest);
	return s.drawing;
}

const struct sheet_kind sheet_cutlist = { "cutlist", "S-8", draw };
