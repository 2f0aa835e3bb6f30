/*
 * Fillings of boards that were found for one set of pieces and are tried again for another.
 */
#ifndef LISTS_COLUMN_POOL_H
#define LISTS_COLUMN_POOL_H

#include "lists/pack.h"

struct column_pool;

struct column_pool *column_pool_new(struct arena *a, const struct pack_problem *p);

/* A copy of it, as long as there is room. */
void column_pool_add(struct column_pool *pool, const struct packed_board *b);

int column_pool_count(const struct column_pool *pool);

/* The filling that is worth most over the cost of its board, and more than `least`; of two alike
 * the older one; NULL: there is none.  No more of a piece counts than is left. */
const struct packed_board *column_pool_best(const struct column_pool *pool, const double *prices,
	const int *left, double least);

#endif
