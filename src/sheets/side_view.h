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

/* Its sheet: the view with its steps, levels, lines and heights dimensioned, and beside it, where
 * there is room, the running positions of all steps. */
struct drawing *side_view_sheet(struct arena *a, const struct side_view *v);

#endif
