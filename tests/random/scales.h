/*
 * The measure of overlaps, tried on solids whose overlaps are known.
 */
#ifndef RANDOM_SCALES_H
#define RANDOM_SCALES_H

#include "pitchboard/arena.h"

/* NULL while every known overlap is measured right, else which is not. */
const char *scales_wrong(struct arena *a);

#endif
