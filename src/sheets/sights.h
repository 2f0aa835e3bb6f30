/*
 * What is seen of the pieces in a view, and where on it a leader points.
 */
#ifndef SHEETS_SIGHTS_H
#define SHEETS_SIGHTS_H

#include "draw/view.h"
#include "sheets/leaders.h"

struct sights {
	struct leader *list; /* to an edge of each piece, its mark for text */
	int n;
};

/* Of what is made and wants a balloon, in the order of the parts, in the view's own millimetres on
 * paper; they point apart from each other, as far as may be. */
struct sights sights_of(struct arena *a, const struct part *parts, const struct view *v,
	double scale);

/* An edge of something to be made, and not behind other wood. */
bool sight_is_seen(const struct stroke *s);

#endif
