/*
 * Cutting lines at the edge of a window, so that a page holds only what it shows.
 */
#ifndef DRAW_CLIP_H
#define DRAW_CLIP_H

#include <stdbool.h>

#include "pitchboard/arena.h"
#include "pitchboard/shape.h"

/* The piece of a-b inside the window; `some` is false when there is none. */
struct clipped {
	bool some;
	struct vec a, b;
};

struct clipped clip_segment(struct box window, struct vec a, struct vec b);

/* A run of points: a polygon when closed, else a line. */
struct chain {
	struct chain *next;
	const struct vec *points;
	int n;
	bool closed;
};

/* The pieces of a chain inside the window, in the chain's order; each as long as it is unbroken. */
struct chain *clip_chain(struct arena *a, struct box window, struct chain whole);

/* An outline as a polygon: its arcs in straight pieces that leave them by less than 0.001 mm. */
struct chain outline_chain(struct arena *a, struct outline o);

#endif
