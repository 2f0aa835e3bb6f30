/*
 * The upper floor beside the opening, as a side view shows it.
 *
 * It stands before the stair and would hide it, and so it is not made where no
 * guard stands on it: its edges are dashed across what is seen.
 */
#ifndef SHEETS_FLOOR_EDGES_H
#define SHEETS_FLOOR_EDGES_H

#include "draw/view.h"
#include "pitchboard/sheet.h"

/* Within the window, in the view's own millimetres. */
void floor_edges_draw(struct drawing *g, const struct stair *s, const struct view *v, double scale,
	struct box window);

/* What the dashed lines are; "" where there are none. */
const char *floor_edges_note(const struct stair *s, const struct view *v);

#endif
