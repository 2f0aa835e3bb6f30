#include "lists/fillings.h"

#include <math.h>
#include <string.h>

#define MOST_STEPS 20000

struct listing {
	struct arena *arena;
	const struct fillings_wanted *wanted;
	int kinds;
	int stock;
	int *counts;
	double most_loss; /* falls to the worst of a full list */
	struct filling *list;
	int n, steps;
	bool is_cut_short;
};

/* Is one of these left, and does it go on? */
static bool goes_on(const struct listing *l, int piece, long room)
{
	const struct pack_problem *p = l->wanted->problem;

	return l->wanted->left[piece] > l->counts[piece] &&
		pack_fits(&p->pieces[piece], &p->stock[l->stock], room);
}

static long size_of(const struct listing *l, int piece)
{
	return l->wanted->problem->pieces[piece].size;
}

static int left_of(const struct listing *l, int piece)
{
	return l->wanted->left[piece] - l->counts[piece];
}

/* Would a piece that is left still go on?  Then the board is not full. */
static bool holds_more(const struct listing *l, long room)
{
	for (int i = 0; i < l->kinds; i++)
		if (goes_on(l, i, room))
			return true;
	return false;
}

/* Into its place among the best; of two that lose alike the one found first goes before. */
static void keep(struct listing *l, double loss)
{
	int *counts = NEW_N(l->arena, int, l->kinds);
	int at = l->n < l->wanted->most ? l->n : l->n - 1;

	while (at > 0 && l->list[at - 1].loss > loss + 1e-9) {
		l->list[at] = l->list[at - 1];
		at--;
	}
	memcpy(counts, l->counts, (size_t)l->kinds * sizeof(*counts));
	l->list[at] = (struct filling){ l->stock, loss, counts };
	l->n += l->n < l->wanted->most;
	if (l->n == l->wanted->most)
		l->most_loss = fmin(l->most_loss, l->list[l->n - 1].loss - 1e-9);
}

/* What the room left can be worth at most, pieces cut up at will. */
static double most_worth(const struct listing *l, int i, long room)
{
	double best = 0;

	for (; i < l->kinds; i++)
		if (goes_on(l, i, room))
			best = fmax(best, l->wanted->worth[i] / (double)size_of(l, i));
	return best * (double)room;
}

/* Goes on with the kinds from `i` on: as many as fit first, then fewer. */
static void fill(struct listing *l, int i, long room, double loss)
{
	while (i < l->kinds && !goes_on(l, i, room))
		i++;
	if (loss - most_worth(l, i, room) > l->most_loss)
		return;
	if (i == l->kinds) {
		if (!holds_more(l, room))
			keep(l, loss);
		return;
	}
	if (++l->steps > MOST_STEPS) {
		l->is_cut_short = true;
		return;
	}
	long fit = room / size_of(l, i);
	int before = l->counts[i], most = left_of(l, i);
	for (int k = fit < most ? (int)fit : most; k >= 0; k--) {
		l->counts[i] = before + k;
		fill(l, i + 1, room - k * size_of(l, i), loss - k * l->wanted->worth[i]);
	}
	l->counts[i] = before;
}

struct fillings fillings_list(struct arena *a, const struct fillings_wanted *w)
{
	struct listing l = { .arena = a, .wanted = w, .kinds = w->problem->piece_count };
	int first = 0;

	l.most_loss = w->most_loss;
	l.list = NEW_N(a, struct filling, w->most + 1);
	l.counts = NEW_N(a, int, l.kinds);
	while (!w->left[first])
		first++;
	for (l.stock = 0; l.stock < w->problem->stock_count; l.stock++) {
		const struct pack_stock *b = &w->problem->stock[l.stock];
		if (!goes_on(&l, first, b->size))
			continue;
		l.counts[first] = 1;
		fill(&l, first, b->size - size_of(&l, first), (double)b->cost - w->worth[first]);
		l.counts[first] = 0;
	}
	/* a full list says nothing of those that lose more than its last */
	return (struct fillings){ l.list, l.n, l.is_cut_short || l.n == w->most, l.steps };
}
