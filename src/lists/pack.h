/*
 * The least costly boards that yield all pieces: one direction, exact.
 *
 * Sizes and costs are whole numbers; who asks has added the saw's kerf to every
 * piece and to every board, for c pieces out of one board need c - 1 kerfs.
 *
 * Two halves.  A bound from below: the linear relaxation over all ways of filling
 * a board, by column generation (Gilmore and Gomory 1961), its prices made
 * feasible in whole numbers, so that the bound holds whatever rounding did.  And a
 * search board by board, the longest piece left first, each filling weighed by
 * what it loses against those prices; it ends when nothing can be cheaper than
 * what was found, or when its work is used up.  Work is counted in steps, never in
 * time: the same job gives the same boards on every machine.
 */
#ifndef LISTS_PACK_H
#define LISTS_PACK_H

#include <stdbool.h>

#include "pitchboard/arena.h"

/* A piece goes only on stock of its grade or a higher one. */
struct pack_piece {
	long size;
	int count, grade;
};

/* As many as are needed can be had. */
struct pack_stock {
	long size, cost;
	int grade;
};

static inline bool pack_fits(const struct pack_piece *p, const struct pack_stock *s, long room)
{
	return p->size <= room && p->grade <= s->grade;
}

struct pack_problem {
	const struct pack_piece *pieces;
	int piece_count;
	const struct pack_stock *stock;
	int stock_count;
	int steps; /* of search, at most */
};

struct packed_board {
	int stock;
	const int *counts; /* how many of each piece */
};

struct packing {
	const struct packed_board *boards;
	int count;
	long cost;
	long bound; /* nothing can cost less */
	int steps;
	bool is_proved; /* nothing costs less than this */
};

/* Every piece must fit some stock: who asks has seen to that. */
struct packing pack_boards(struct arena *a, const struct pack_problem *p);

/* What a piece is worth, so that no filling of a board is worth more than the board costs: then
 * the worth of all pieces together is a bound. */
struct pack_prices {
	const double *worth;
	long bound;
};

struct pack_prices pack_prices_of(struct arena *a, const struct pack_problem *p);

#endif
