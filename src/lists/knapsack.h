/*
 * The fullest board: which pieces, of those wanted, are worth most on a length.
 */
#ifndef LISTS_KNAPSACK_H
#define LISTS_KNAPSACK_H

#include "pitchboard/arena.h"

/* One kind of piece.  Sizes are whole numbers, so that a fit is never a matter of rounding. */
struct knapsack_item {
	long size, value;
	int most; /* how many are to be had */
};

struct knapsack {
	long value; /* no choice is worth more: exactly the best one, unless work ran out */
	const int *counts;
};

/* By branch and bound within a fixed amount of work. */
struct knapsack knapsack_fill(struct arena *a, const struct knapsack_item *items, int n, long room);

#endif
