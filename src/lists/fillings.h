/*
 * All the ways to fill the next board.
 */
#ifndef LISTS_FILLINGS_H
#define LISTS_FILLINGS_H

#include "lists/pack.h"

/* One way to fill one board. */
struct filling {
	int stock;
	double loss; /* cost of the board less the worth of what is on it */
	const int *counts;
};

struct fillings {
	const struct filling *list; /* least loss first */
	int n;
	bool is_cut_short; /* there are more */
	int steps;         /* of work */
};

struct fillings_wanted {
	const struct pack_problem *problem; /* longest piece first */
	const double *worth;
	const int *left;  /* pieces still to be had, by kind; at least one */
	double most_loss; /* those that lose more are of no use */
	int most;         /* so many of the best */
};

/* Full boards that hold the longest piece left: some board must. */
struct fillings fillings_list(struct arena *a, const struct fillings_wanted *w);

#endif
