/*
 * Strips, and what they can be worth: the pieces of a problem are sorted widest first, so what goes
 * on a strip of some width is all pieces from a first one on.
 */
#ifndef LISTS_STRIPS_H
#define LISTS_STRIPS_H

#include "lists/pack.h"
#include "lists/work.h"

/* Of two alike in width the longest first. */
static inline bool pack_is_sorted(const struct pack_piece *a, const struct pack_piece *b)
{
	return a->width > b->width || (a->width == b->width && a->length >= b->length);
}

static inline bool pack_fits(const struct pack_piece *p, const struct pack_stock *s)
{
	return p->length <= s->length && p->width <= s->width;
}

/* The widths of strips that there are pieces for, the widest first. */
struct strip_widths {
	const long *at;
	const int *first; /* piece that goes on it; one more for the end of all */
	int n;
};

/* The best strips of every width and length of board, at the prices they were last set to. */
struct strips;

struct strips *strips_new(struct arena *a, const struct pack_problem *sorted, struct work *work);

struct strip_widths strips_widths(const struct strips *s);

/* `left`: so many of each piece there are to be had. */
void strips_set(struct strips *s, const long *worth, const int *left);

/* What strips no wider than `width`, side by side on so much of a board of that stock, can be worth
 * at most. */
long strips_side_by_side(struct strips *s, int stock, int width, long wide);

/* The fullest board of a kind, and what no board can exceed.  A strip may stand on it more often
 * than there are pieces for it.  What is on its strips holds until they are set anew. */
struct full_board {
	struct packed_board board;
	long value;
};

struct full_board strips_best_board(struct arena *a, struct strips *s, int stock);

#endif
