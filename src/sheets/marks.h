/*
 * Marks lettered on what a section cuts, so that a detail can be read without its list.
 */
#ifndef SHEETS_MARKS_H
#define SHEETS_MARKS_H

#include "draw/view.h"
#include "sheets/balloons.h"

/* A place in the wood of the largest face of a part that is cut in the window; `some` is false when
 * none is. */
struct wood_shown {
	bool some;
	struct vec at; /* in the view */
};

struct wood_shown wood_cut(struct arena *a, const struct view *v, const struct part *p,
	struct box window);

/* Does a line of the view run along the outline of a cut face of another part? */
bool runs_along_cut(const struct view *v, const struct part *p, struct vec a, struct vec b);

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
