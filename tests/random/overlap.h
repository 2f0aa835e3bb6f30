/*
 * Do the solids of different parts run into each other?
 *
 * Every solid is taken apart into convex pieces, placed in the house, and any
 * two pieces of different placed parts are measured: how far one would have to
 * be moved to be clear of the other.
 */
#ifndef RANDOM_OVERLAP_H
#define RANDOM_OVERLAP_H

#include "pitchboard/part.h"

/* One part in one of its places. */
struct placed {
	const struct part *part;
	int place;
};

struct overlap {
	struct placed one, other;
	double depth; /* 0: nothing overlaps more than was allowed */
};

/* The deepest overlap of any two placed parts, when it is deeper than `allowed`. */
struct overlap overlap_find(struct arena *a, const struct part *parts, double allowed);

/* How deep one part in one place, moved by so much, runs into another in another. */
double overlap_between(struct arena *a, struct placed one, struct vec3 moved, struct placed other);

#endif
