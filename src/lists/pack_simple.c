#include "lists/pack_simple.h"

#include <string.h>

static long common_divisor(const struct pack_problem *p)
{
	long divisor = 0;

	for (int j = 0; j < p->stock_count; j++)
		for (long a = p->stock[j].cost; a;) {
			long rest = divisor % a;
			divisor = a;
			a = rest;
		}
	return divisor > 0 ? divisor : 1;
}

/* Is there stock that does all that this does, at no more?  Of two alike the first is kept. */
static bool is_needless(const struct pack_problem *p, int j)
{
	const struct pack_stock *s = &p->stock[j];

	for (int k = 0; k < p->stock_count; k++) {
		const struct pack_stock *o = &p->stock[k];
		if (k == j || o->length < s->length || o->width < s->width || o->cost > s->cost)
			continue;
		bool is_alike =
			o->length == s->length && o->width == s->width && o->cost == s->cost;
		if (!is_alike || k < j)
			return true;
	}
	return false;
}

/* Sorted by insertion: equal ones stay as they came. */
static void sort_pieces(struct pack_piece *pieces, int *from, const struct pack_problem *p)
{
	for (int i = 0; i < p->piece_count; i++) {
		int at = i;
		for (; at > 0 && !pack_is_sorted(&pieces[at - 1], &p->pieces[i]); at--) {
			pieces[at] = pieces[at - 1];
			from[at] = from[at - 1];
		}
		pieces[at] = p->pieces[i];
		from[at] = i;
	}
}

struct pack_simple pack_simplify(struct arena *a, const struct pack_problem *p)
{
	struct pack_piece *pieces = NEW_N(a, struct pack_piece, p->piece_count + 1);
	struct pack_stock *stock = NEW_N(a, struct pack_stock, p->stock_count + 1);
	int *piece_from = NEW_N(a, int, p->piece_count + 1);
	int *stock_from = NEW_N(a, int, p->stock_count + 1), n = 0;
	struct pack_simple s = { *p, piece_from, stock_from, common_divisor(p) };

	sort_pieces(pieces, piece_from, p);
	for (int j = 0; j < p->stock_count; j++) {
		if (is_needless(p, j))
			continue;
		stock_from[n] = j;
		stock[n] = p->stock[j];
		stock[n++].cost /= s.unit;
	}
	s.problem.pieces = pieces;
	s.problem.stock = stock;
	s.problem.stock_count = n;
	return s;
}

static const int *counts_as_given(struct arena *a, const struct pack_simple *s, const int *counts)
{
	int *given = NEW_N(a, int, s->problem.piece_count + 1);

	for (int i = 0; i < s->problem.piece_count; i++)
		given[s->piece[i]] = counts[i];
	return given;
}

const struct packed_board *pack_as_given(struct arena *a, const struct pack_simple *s,
	const struct packed_board *boards, int count)
{
	struct packed_board *given = NEW_N(a, struct packed_board, count + 1);

	for (int b = 0; b < count; b++) {
		const struct packed_board *from = &boards[b];
		struct packed_strip *strips = NEW_N(a, struct packed_strip, from->strip_count + 1);
		for (int i = 0; i < from->strip_count; i++)
			strips[i].counts = counts_as_given(a, s, from->strips[i].counts);
		given[b] = (struct packed_board){ s->stock[from->stock],
			counts_as_given(a, s, from->counts), strips, from->strip_count };
	}
	return given;
}

static const int *copy_counts(struct arena *a, const int *counts, int kinds)
{
	int *copy = NEW_N(a, int, kinds + 1);

	memcpy(copy, counts, (size_t)kinds * sizeof(*copy));
	return copy;
}

struct packed_board packed_board_copy(struct arena *a, const struct packed_board *b, int kinds)
{
	struct packed_strip *strips = NEW_N(a, struct packed_strip, b->strip_count + 1);

	for (int i = 0; i < b->strip_count; i++)
		strips[i].counts = copy_counts(a, b->strips[i].counts, kinds);
	return (struct packed_board){ b->stock, copy_counts(a, b->counts, kinds), strips,
		b->strip_count };
}
