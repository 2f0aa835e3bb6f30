/*
 * Pieces that were left before, and what their boards are known to cost at least: many ways lead to
 * the same rest.
 */
#ifndef LISTS_RESTS_H
#define LISTS_RESTS_H

#include "pitchboard/arena.h"

struct rests;

/* Of so many kinds of pieces. */
struct rests *rests_new(struct arena *a, int kinds);

struct rest {
	int *left;  /* NULL: nothing is here yet */
	long least; /* its boards cost no less */
};

/* The one with so many pieces left, made with `least` 0 if it is new; NULL when there is no more
 * room. */
struct rest *rests_find(struct rests *r, const int *left);

#endif
