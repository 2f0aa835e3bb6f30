/*
 * Lists on sheets.
 */
#ifndef SHEETS_LIST_SHEET_H
#define SHEETS_LIST_SHEET_H

#include "sheets/tables.h"

struct lists sheet_lists(struct arena *a, const struct sheet_context *c);

/* A list as a table; columns that say nothing are left out.  `keys` ended by NULL: only these. */
struct table list_table(struct arena *a, const struct list *l, const char *title,
	const char *const *keys);

/* The same with its longest texts broken at less, until it is no wider than the room if it can. */
struct table table_narrowed(struct hand h, struct table t, double width);

/* Its notes as paragraphs, put behind those that are there; the new number of them. */
int list_notes(const struct list *l, const char *heading, struct note *notes, int n);

#endif
