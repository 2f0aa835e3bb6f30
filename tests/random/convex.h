/*
 * Convex pieces: solids taken apart, and how deep two pieces overlap.
 */
#ifndef RANDOM_CONVEX_H
#define RANDOM_CONVEX_H

#include "pitchboard/part.h"

/* Two faces of n corners; convex. */
struct convex {
	struct convex *next;
	int n;
	struct vec3 *a, *b;
	struct vec3 low, high; /* the box round it */
	int owner;             /* for whoever asks */
};

/* The pieces of a part's solids, placed and then moved. */
struct convex *convex_pieces(struct arena *a, const struct part *p, struct frame at,
	struct vec3 moved);

/* The least distance by which one must be moved to be clear of the other; 0 when it is. Only
 * overlaps deeper than `allowed` are measured to the end. */
double convex_depth(const struct convex *one, const struct convex *other, double allowed);

#endif
