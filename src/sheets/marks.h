/*
 * Marks lettered on what a section cuts, so that a detail can be read without its list.
 */
#ifndef SHEETS_MARKS_H
#define SHEETS_MARKS_H

#include "draw/annotate.h"
#include "draw/view.h"

/* On every cut face in the window that is large enough: the part's mark, or the name of existing
 * work.  The hatch under it is knocked out. */
void letter_marks(struct hand h, const struct view *v, double scale, struct box window);

#endif
