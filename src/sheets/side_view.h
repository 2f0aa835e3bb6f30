/*
 * A flight seen square to its side, whole or cut: what elevation and section share.
 */
#ifndef SHEETS_SIDE_VIEW_H
#define SHEETS_SIDE_VIEW_H

#include "draw/view.h"
#include "sheets/compose.h"

struct side_view {
	const struct sheet_context *context;
	const struct flight *flight;
	struct view view;
	const char *title;
};

/* The view with its steps, levels, lines and heights dimensioned. */
struct composition side_view_composition(const struct side_view *v);

/* The notes under it: balustrade, rounding, what was taken as default. */
void side_view_notes(struct sheet *s, const struct side_view *v);

#endif
