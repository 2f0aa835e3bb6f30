/*
 * The fullest board: which pieces, of those wanted, are worth most on a length.
 *
 * A knapsack is loaded once with what pieces are worth, and then filled for one
 * room after the other.
 */
#ifndef LISTS_KNAPSACK_H
#define LISTS_KNAPSACK_H

#include "lists/work.h"
#include "pitchboard/arena.h"

/* One kind of piece.  Sizes are whole numbers, so that a fit is never a matter of rounding. */
struct knapsack_item {
	long size, value;
	int most; /* how many are to be had */
};

struct knapsack;

/* For so many kinds of pieces at most. */
struct knapsack *knapsack_new(struct arena *a, int most_items, struct work *work);

void knapsack_load(struct knapsack *k, const struct knapsack_item *items, int n);

/* Of the items from `first` on.  `counts`, one for each item, holds a filling that fits, or zeros,
 * and gets the best one found.  No filling is worth more than what is returned: exactly the best
 * one's worth, by branch and bound, unless work ran out. */
long knapsack_fill(struct knapsack *k, int first, long room, int *counts);

/* What fills the room at most, no filling asked for. */
long knapsack_worth(struct knapsack *k, int first, long room);

#endif
