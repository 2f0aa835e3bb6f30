/*
 * Outlines: is what a template is cut to the piece as it is seen from its own z?
 */
#ifndef RANDOM_OUTLINES_H
#define RANDOM_OUTLINES_H

#include "pitchboard/part.h"

/* NULL while the box round every outline is the box round its solids, and a convex outline holds
 * as much as their hull; else what is wrong. */
const char *outlines_hold(struct arena *a, const struct stair *s, const struct part *parts);

#endif
