/*
 * What must hold for the mouldings of every stair.
 */
#ifndef RANDOM_MOULDINGS_H
#define RANDOM_MOULDINGS_H

#include "pitchboard/part.h"

/* NULL when every length lies against wood behind it and over or under it, else which does not. */
const char *mouldings_touch(struct arena *a, const struct stair *s, const struct part *parts);

#endif
