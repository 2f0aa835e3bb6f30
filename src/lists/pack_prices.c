/*
 * Prices of pieces by column generation.
 *
 * The relaxed problem is to fill boards in such ways, each any fraction of a time,
 * that every piece is made often enough, at least cost.  Its simplex method
 * needs one column a piece at a time; the next one to enter is the filling that is
 * worth most at the present prices, a knapsack.
 */
#include "lists/pack.h"

#include <math.h>

#include "lists/knapsack.h"

#define SCALE 1e9 /* prices as whole numbers: parts of the dearest board */
#define ENOUGH 1e-9

struct master {
	struct arena *arena;
	const struct pack_problem *problem;
	int n;
	double dearest;
	double *inverse; /* of the basis, row by row */
	double *costs;   /* of the fillings in the basis, in dearest boards */
	double *times;   /* how often each of them is cut */
	double *prices;  /* of the pieces */
};

static double dearest_of(const struct pack_problem *p)
{
	double dearest = 1;

	for (int j = 0; j < p->stock_count; j++)
		dearest = fmax(dearest, (double)p->stock[j].cost);
	return dearest;
}

static long fit(const struct pack_problem *p, int piece, int stock)
{
	long n = p->stock[stock].size / p->pieces[piece].size;

	if (p->pieces[piece].grade > p->stock[stock].grade)
		return 0;
	return n < p->pieces[piece].count ? n : p->pieces[piece].count;
}

/* Every piece on boards of its own, each on the kind that makes it cheapest. */
static struct master begin(struct arena *a, const struct pack_problem *p)
{
	int n = p->piece_count;
	struct master m = { .arena = a, .problem = p, .n = n, .dearest = dearest_of(p) };

	m.inverse = NEW_N(a, double, n *n);
	m.costs = NEW_N(a, double, n);
	m.times = NEW_N(a, double, n);
	m.prices = NEW_N(a, double, n);
	for (int i = 0; i < n; i++) {
		int best = -1;
		for (int j = 0; j < p->stock_count; j++)
			if (fit(p, i, j) > 0 &&
				(best < 0 ||
					(double)p->stock[j].cost / (double)fit(p, i, j) <
						(double)p->stock[best].cost /
							(double)fit(p, i, best)))
				best = j;
		double per = (double)fit(p, i, best);
		m.inverse[i * n + i] = 1 / per;
		m.costs[i] = (double)p->stock[best].cost / m.dearest;
		m.times[i] = p->pieces[i].count / per;
	}
	return m;
}

static void price(struct master *m)
{
	for (int k = 0; k < m->n; k++) {
		m->prices[k] = 0;
		for (int i = 0; i < m->n; i++)
			m->prices[k] += m->costs[i] * m->inverse[i * m->n + k];
	}
}

/* Prices as whole numbers. */
static long whole_price(const struct master *m, int i)
{
	return (long)(fmax(m->prices[i], 0) * SCALE);
}

/* The filling of one kind of stock that is worth most. */
static struct knapsack best_filling(const struct master *m, const struct pack_stock *stock)
{
	struct knapsack_item *items = NEW_N(m->arena, struct knapsack_item, m->n);

	for (int i = 0; i < m->n; i++) {
		const struct pack_piece *p = &m->problem->pieces[i];
		items[i] = (struct knapsack_item){ p->size, whole_price(m, i),
			pack_fits(p, stock, stock->size) ? p->count : 0 };
	}
	return knapsack_fill(m->arena, items, m->n, stock->size);
}

/* A filling, and what it is worth over the cost of its board. */
struct column {
	const int *counts;
	double cost, gain;
};

static struct column best_column(const struct master *m)
{
	struct column best = { 0 };

	for (int j = 0; j < m->problem->stock_count; j++) {
		struct knapsack k = best_filling(m, &m->problem->stock[j]);
		double cost = (double)m->problem->stock[j].cost / m->dearest, value = 0;
		for (int i = 0; i < m->n; i++)
			value += m->prices[i] * k.counts[i];
		if (value - cost > best.gain + ENOUGH)
			best = (struct column){ k.counts, cost, value - cost };
	}
	return best;
}

/* The column takes the place of the filling that runs out first. */
static bool enter(struct master *m, const struct column *c)
{
	int n = m->n, out = -1;
	double *along = NEW_N(m->arena, double, n);

	for (int i = 0; i < n; i++) {
		for (int k = 0; k < n; k++)
			along[i] += m->inverse[i * n + k] * c->counts[k];
		if (along[i] > ENOUGH &&
			(out < 0 || m->times[i] / along[i] < m->times[out] / along[out]))
			out = i;
	}
	if (out < 0)
		return false;
	double by = m->times[out] / along[out], pivot = along[out];
	for (int k = 0; k < n; k++)
		m->inverse[out * n + k] /= pivot;
	for (int i = 0; i < n; i++) {
		if (i == out)
			continue;
		m->times[i] -= along[i] * by;
		for (int k = 0; k < n; k++)
			m->inverse[i * n + k] -= along[i] * m->inverse[out * n + k];
	}
	m->times[out] = by;
	m->costs[out] = c->cost;
	return true;
}

/* Divides the prices by so much that no filling is worth more than its board costs, and adds them
 * up.  This holds for any prices, good or bad (Farley 1990). */
static struct pack_prices feasible(const struct master *m)
{
	const struct pack_problem *p = m->problem;
	double *worth = NEW_N(m->arena, double, m->n);
	double over = 0, sum = 0;

	for (int j = 0; j < p->stock_count; j++) {
		struct knapsack k = best_filling(m, &p->stock[j]);
		over = fmax(over, (double)k.value / (double)p->stock[j].cost);
	}
	for (int i = 0; i < m->n; i++) {
		worth[i] = (double)whole_price(m, i) / over;
		sum += worth[i] * p->pieces[i].count;
	}
	return (struct pack_prices){ worth, (long)ceil(sum * (1 - ENOUGH)) };
}

struct pack_prices pack_prices_of(struct arena *a, const struct pack_problem *p)
{
	struct master m = begin(a, p);
	int rounds = 20 * m.n + 50;

	price(&m);
	while (rounds-- > 0) {
		struct column c = best_column(&m);
		if (!c.counts || !enter(&m, &c))
			break;
		price(&m);
	}
	return feasible(&m);
}
