/*
 * Fixings as a close-up shows them: dashed, through the wood that hides them.
 */
#ifndef SHEETS_CLOSEUP_HOLES_H
#define SHEETS_CLOSEUP_HOLES_H

#include "draw/view.h"
#include "pitchboard/part.h"

/* In the view: a rectangle along the hole; of one that is seen from its end, a circle. */
struct closeup_hole {
	struct vec corner[4];
	struct vec middle;
	double radius; /* 0: the rectangle */
};

struct closeup_holes {
	const struct closeup_hole *hole;
	int n;
};

/* Is this hole of this piece, mouth in the house, to be shown? */
typedef bool shows_hole_fn(const struct part *p, const struct bore *b, struct vec3 mouth,
	const void *with);

struct closeup_holes closeup_holes_find(struct arena *a, const struct part *parts,
	enum view_from from, shows_hole_fn *shows, const void *with);

void closeup_holes_draw(struct drawing *g, struct closeup_holes holes, struct box window,
	double scale);

#endif
