/*
 * The problem as it is searched: widest piece first, no needless stock, and costs in the largest
 * unit in which they are whole, so that what is cheaper is cheaper by one.
 */
#ifndef LISTS_PACK_SIMPLE_H
#define LISTS_PACK_SIMPLE_H

#include "lists/strips.h"

struct pack_simple {
	struct pack_problem problem;
	const int *piece; /* each piece: which of those given */
	const int *stock;
	long unit;
};

struct pack_simple pack_simplify(struct arena *a, const struct pack_problem *p);

/* Boards with pieces and stock as they were given. */
const struct packed_board *pack_as_given(struct arena *a, const struct pack_simple *s,
	const struct packed_board *boards, int count);

#endif
