/*
 * All the ways to fill the next board.
 */
#ifndef LISTS_FILLINGS_H
#define LISTS_FILLINGS_H

#include "lists/strips.h"

/* One way to fill one board. */
struct filling {
	struct packed_board board;
	long loss; /* cost of the board less the worth of what is on it, in worth */
};

struct fillings {
	const struct filling *list; /* least loss first */
	int n;
	bool is_cut_short; /* there are more */
};

struct fillings_wanted {
	const struct pack_problem *problem; /* widest piece first */
	struct strips *strips;
	struct work *work;
	long scale; /* worth of a unit of cost */
	const long *worth;
	const int *left; /* pieces still to be had, by kind; at least one */
	long most_loss;  /* those that lose more are of no use */
	int most;        /* so many of the best */
	int most_steps;
};

/* The best filling of boards of one kind, at the worth that strips are set to; none where it loses
 * more than is of use. */
struct fillings fillings_best(struct arena *a, const struct fillings_wanted *w, int stock);

/* Full boards that hold the widest piece left, of those the longest: some board must. */
struct fillings fillings_list(struct arena *a, const struct fillings_wanted *w);

#endif
