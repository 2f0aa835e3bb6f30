/*
 * Headroom: plumb from the nosing line to what is overhead.
 */
#ifndef SOLVE_HEADROOM_H
#define SOLVE_HEADROOM_H

#include "pitchboard/stair.h"

struct headroom headroom_find(const struct stair *s);

#endif
