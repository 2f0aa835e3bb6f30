/*
 * A packing to begin with: the widest piece that fits, of those the longest, again and again.
 */
#include "lists/pack_begin.h"

struct greedy {
	struct arena *arena;
	const struct pack_problem *problem;
	int *left, left_count;
	struct packed_board *boards;
	int count;
};

static int cheapest_that_holds(const struct pack_problem *p, long length, long width)
{
	int best = -1;

	for (int j = 0; j < p->stock_count; j++)
		if (p->stock[j].length >= length && p->stock[j].width >= width &&
			(best < 0 || p->stock[j].cost < p->stock[best].cost))
			best = j;
	return best;
}

/* Along a strip from its widest piece on; how much of its length it takes. */
static long fill_strip(struct greedy *g, int first, long room, int *counts)
{
	long used = 0;

	for (int i = first; i < g->problem->piece_count; i++) {
		long each = g->problem->pieces[i].length, fit = (room - used) / each;
		counts[i] = fit < g->left[i] ? (int)fit : g->left[i];
		used += counts[i] * each;
		g->left[i] -= counts[i];
		g->left_count -= counts[i];
	}
	return used;
}

static int first_that_fits(const struct greedy *g, long length, long width)
{
	for (int i = 0; i < g->problem->piece_count; i++)
		if (g->left[i] && g->problem->pieces[i].length <= length &&
			g->problem->pieces[i].width <= width)
			return i;
	return -1;
}

/* Fills one board of a kind; then it is cut down to the cheapest that holds what is on it. */
static void fill_board(struct greedy *g, const struct pack_stock *stock)
{
	const struct pack_problem *p = g->problem;
	struct packed_strip *strips = NEW_N(g->arena, struct packed_strip, g->left_count + 1);
	int *all = NEW_N(g->arena, int, p->piece_count + 1), n = 0;
	long wide = 0, longest = 0;

	for (;;) {
		int first = first_that_fits(g, stock->length, stock->width - wide);
		if (first < 0)
			break;
		int *counts = NEW_N(g->arena, int, p->piece_count + 1);
		long used = fill_strip(g, first, stock->length, counts);
		longest = used > longest ? used : longest;
		wide += p->pieces[first].width;
		strips[n++].counts = counts;
		for (int i = 0; i < p->piece_count; i++)
			all[i] += counts[i];
	}
	g->boards[g->count++] =
		(struct packed_board){ cheapest_that_holds(p, longest, wide), all, strips, n };
}

/* A board of this kind, or of the cheapest that holds the widest piece left. */
static int stock_for(const struct greedy *g, int wanted)
{
	const struct pack_problem *p = g->problem;
	int first = 0;

	while (!g->left[first])
		first++;
	const struct pack_piece *one = &p->pieces[first];
	if (one->length <= p->stock[wanted].length && one->width <= p->stock[wanted].width)
		return wanted;
	return cheapest_that_holds(p, one->length, one->width);
}

struct pack_start pack_begin(struct arena *a, const struct pack_problem *sorted, int stock)
{
	struct greedy g = { .arena = a, .problem = sorted };
	struct pack_start start = { 0 };

	g.left = NEW_N(a, int, sorted->piece_count + 1);
	for (int i = 0; i < sorted->piece_count; i++) {
		g.left[i] = sorted->pieces[i].count;
		g.left_count += g.left[i];
	}
	g.boards = NEW_N(a, struct packed_board, g.left_count + 1);
	while (g.left_count)
		fill_board(&g, &sorted->stock[stock_for(&g, stock)]);
	start.boards = g.boards;
	start.count = g.count;
	for (int i = 0; i < g.count; i++)
		start.cost += sorted->stock[g.boards[i].stock].cost;
	return start;
}
