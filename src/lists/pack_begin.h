/*
 * A packing to begin with.
 */
#ifndef LISTS_PACK_BEGIN_H
#define LISTS_PACK_BEGIN_H

#include "lists/pack.h"

struct pack_start {
	const struct packed_board *boards;
	int count;
	long cost;
};

/* On boards of one kind, as far as they hold the pieces. */
struct pack_start pack_begin(struct arena *a, const struct pack_problem *sorted, int stock);

#endif
