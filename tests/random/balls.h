/*
 * The largest balls through the balustrade, searched by brute force.
 */
#ifndef RANDOM_BALLS_H
#define RANDOM_BALLS_H

#include "pitchboard/part.h"

/* Every ball that is measured passes, and no larger one is found by trying everywhere. NULL while
 * all is well, else what is wrong, in the arena. */
const char *balls_agree(struct arena *a, const struct stair *s, const struct part *parts);

#endif
