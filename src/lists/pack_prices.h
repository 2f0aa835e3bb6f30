/*
 * What pieces are worth, so that no filling of a board is worth more than the board costs: then the
 * worth of all pieces together is a bound from below on what their boards cost.
 */
#ifndef LISTS_PACK_PRICES_H
#define LISTS_PACK_PRICES_H

#include "lists/column_pool.h"
#include "lists/strips.h"

/* A board that is cut any fraction of a time. */
struct relaxed_board {
	const struct packed_board *board;
	double times;
};

struct pack_prices {
	const long *worth; /* of each piece, in `scale` to a unit of cost */
	long bound;        /* in units of cost */
	const struct relaxed_board
		*boards; /* that come to about the bound, the most often cut first */
	int board_count;
};

struct pricing {
	const struct pack_problem *problem; /* widest piece first */
	struct strips *strips;
	struct column_pool *pool;
	struct work *work;
	long scale;
};

/* Of so many pieces as are left.  A bound as high as `enough` need not be raised. */
struct pack_prices pack_prices_of(struct arena *a, const struct pricing *with, const int *left,
	long enough);

/* Worth of a unit of cost, so that a board's is a large whole number. */
long pack_scale(const struct pack_problem *p);

#endif
