/*
 * What is cut out of which board, added up again.
 */
#ifndef RANDOM_BOARDS_H
#define RANDOM_BOARDS_H

#include "pitchboard/part.h"

/* NULL while every blank is cut as often as it is wanted, out of boards that hold it; else what is
 * wrong, in the arena. */
const char *boards_wrong(struct arena *a, const struct stair *s, const struct part *parts);

#endif
