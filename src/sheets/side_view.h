/*
 * A flight seen square to its side, whole or cut: what elevation and section share.
 */
#ifndef SHEETS_SIDE_VIEW_H
#define SHEETS_SIDE_VIEW_H

#include "draw/view.h"
#include "sheets/compose.h"

/* What stands round the view. */
enum side_shows { SIDE_SIZES = 1, SIDE_MARKS = 2 };

struct side_view {
	const struct sheet_context *context;
	const struct flight *flight;
	struct view view;
	const char *title;
	unsigned shows; /* set by side_view_sheets */
};

/* Its sheets: the view with its steps, levels, lines and heights dimensioned and the marks of its
 * parts in balloons, and beside it, where there is room, the running positions of all steps.  Where
 * the balloons would make the view small they are on a sheet of their own. */
struct drawing *side_view_sheets(struct arena *a, const struct side_view *v);

#endif
