/*
 * Lists on sheets.
 */
#ifndef SHEETS_LIST_SHEET_H
#define SHEETS_LIST_SHEET_H

#include "sheets/tables.h"

struct lists sheet_lists(struct arena *a, const struct sheet_context *c);

/* A list as a table; columns that say nothing are left out. */
struct table list_table(struct arena *a, const struct list *l);

/* Its notes as paragraphs, put behind those that are there; the new number of them. */
int list_notes(const struct list *l, const char *heading, struct note *notes, int n);

#endif
