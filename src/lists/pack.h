/*
 * The least costly boards that yield all pieces: boards are ripped over their whole length into
 * strips, the strips cut to length.
 *
 *   +----------------------------------------------+
 *   | 40        | 40        | 31       |  ~ offcut |   a strip, as wide as its widest piece;
 *   +----------------------------------------------+   narrower ones are ripped once more
 *   | 22   | 22   | 22   | 22   | 22   |           |   a narrower strip
 *   +----------------------------------------------+
 *
 * Sizes and costs are whole numbers; who asks has added the saw's kerf to every
 * piece and to every board, for c pieces out of one strip need c - 1 kerfs, and so
 * do strips side by side.
 *
 * Two halves.  A bound from below: the linear relaxation over all ways of filling
 * a board, by column generation (Gilmore and Gomory 1961, 1965), its prices made
 * feasible in whole numbers, so that the bound holds whatever rounding did, and
 * raised to the next sum of boards' costs.  And a search board by board, the widest
 * piece left first, each filling weighed by what it loses against the prices of
 * what is left; it ends when nothing can be cheaper than what was found, or when its
 * work is used up.
 */
#ifndef LISTS_PACK_H
#define LISTS_PACK_H

#include <stdbool.h>

#include "pitchboard/arena.h"

struct pack_piece {
	long length, width;
	int count;
};

/* As many as are needed can be had. */
struct pack_stock {
	long length, width, cost;
};

struct pack_problem {
	const struct pack_piece *pieces;
	int piece_count;
	const struct pack_stock *stock;
	int stock_count;
	long work; /* at most, in steps */
};

/* How many of each piece there are on a strip. */
struct packed_strip {
	const int *counts;
};

/* Widest strip first. */
struct packed_board {
	int stock;
	const int *counts; /* of each piece, on all its strips */
	const struct packed_strip *strips;
	int strip_count;
};

/* So many kinds of pieces there are. */
struct packed_board packed_board_copy(struct arena *a, const struct packed_board *b, int kinds);

struct packing {
	const struct packed_board *boards;
	int count;
	long cost;
	long bound;     /* nothing can cost less */
	long work;      /* steps done */
	bool is_proved; /* nothing costs less than this */
};

/* Every piece must fit some stock: who asks has seen to that. */
struct packing pack_boards(struct arena *a, const struct pack_problem *p);

#endif
