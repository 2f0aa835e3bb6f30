/*
 * Handrails in section with their numbers, their brackets, and how they end at walls.
 */
#ifndef SHEETS_HANDRAILS_H
#define SHEETS_HANDRAILS_H

#include "sheets/compose.h"

enum { MOST_HANDRAIL_DETAILS = 12 };

/* Writes what there is to show of them, none where the stair has no rail; how many. */
int handrail_details(struct arena *a, const struct sheet_context *c, struct composition *list);

#endif
