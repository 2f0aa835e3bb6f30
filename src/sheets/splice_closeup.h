/*
 * Close-ups of the joints of pieces made in lengths, level as on the bench: one a family.
 */
#ifndef SHEETS_SPLICE_CLOSEUP_H
#define SHEETS_SPLICE_CLOSEUP_H

#include "sheets/closeup.h"

enum { MOST_SPLICES = 4 };

/* Writes at most MOST_SPLICES; how many. */
int splice_closeups(struct arena *a, const struct sheet_context *c, struct closeup *list);

#endif
