/*
 * What must hold for the parts of every stair, found from the placed solids and
 * not from the arithmetic that made them.
 */
#ifndef RANDOM_INVARIANTS_H
#define RANDOM_INVARIANTS_H

#include "pitchboard/part.h"

/* One rule; `broken` returns NULL while it holds, else what is wrong, in the arena. */
struct invariant {
	const char *name;
	const char *(*broken)(struct arena *a, const struct stair *s, const struct part *parts);
};

extern const struct invariant invariants[];
extern const int invariant_count;

#endif
