#include "lists/column_pool.h"

enum { MOST = 500 };

struct column_pool {
	struct arena *arena;
	const struct pack_problem *problem;
	struct packed_board list[MOST];
	int *counts; /* on the boards of the list, piece by piece: all boards are weighed at once */
	int n;
};

struct column_pool *column_pool_new(struct arena *a, const struct pack_problem *p)
{
	struct column_pool *pool = NEW(a, struct column_pool);

	pool->arena = a;
	pool->problem = p;
	pool->counts = NEW_N(a, int, p->piece_count *MOST);
	return pool;
}

void column_pool_add(struct column_pool *pool, const struct packed_board *b)
{
	const int kinds = pool->problem->piece_count;

	if (pool->n == MOST)
		return;
	for (int i = 0; i < kinds; i++)
		pool->counts[i * MOST + pool->n] = b->counts[i];
	pool->list[pool->n++] = packed_board_copy(pool->arena, b, kinds);
}

int column_pool_count(const struct column_pool *pool)
{
	return pool->n;
}

/* Worth of every filling over the cost of its board: most of the work on prices. */
static void weigh(const struct column_pool *pool, const double *prices, const int *left,
	double *gains)
{
	for (int k = 0; k < pool->n; k++)
		gains[k] = -(double)pool->problem->stock[pool->list[k].stock].cost;
	for (int i = 0; i < pool->problem->piece_count; i++) {
		const int *counts = pool->counts + i * MOST;
		for (int k = 0; left[i] && k < pool->n; k++)
			gains[k] += prices[i] * (counts[k] < left[i] ? counts[k] : left[i]);
	}
}

const struct packed_board *column_pool_best(const struct column_pool *pool, const double *prices,
	const int *left, double least)
{
	const struct packed_board *best = NULL;
	double gains[MOST];

	weigh(pool, prices, left, gains);
	for (int k = 0; k < pool->n; k++)
		if (gains[k] > least) {
			best = &pool->list[k];
			least = gains[k];
		}
	return best;
}
