/*
 * Marks lettered on what a section cuts, so that a detail can be read without its list.
 */
#ifndef SHEETS_MARKS_H
#define SHEETS_MARKS_H

#include "draw/view.h"
#include "sheets/balloons.h"

/* Marks that no face of theirs is large enough for: each points into the first one. */
struct marks_left {
	struct leader *list;
	int n;
};

/* On every cut face in the window that is large enough: the part's mark, or the name of existing
 * work.  The hatch under it is knocked out.  What is left over is for balloons. */
struct marks_left letter_marks(struct hand h, const struct view *v, double scale,
	struct box window);

#endif
