/*
 * Prices of pieces by column generation.
 *
 * The relaxed problem is to fill boards in such ways, each any fraction of a time,
 * that every piece is made often enough, at least cost.  Its simplex method
 * needs one column a piece at a time; the next one to enter is the filling that is
 * worth most at the present prices: one that was met before, or else a new one,
 * from knapsacks of pieces on strips and of strips on boards.
 */
#include "lists/pack_prices.h"

#include <math.h>
#include <string.h>

#include "lists/fillings.h"

#define LARGE 1e9 /* worth of the dearest board */
#define ENOUGH 1e-9

#define FEW_STEPS 500 /* to fill a board */
#define MOST_STEPS 20000

enum { MOST_AT_ONCE = 20 };

long pack_scale(const struct pack_problem *p)
{
	long dearest = 1;

	for (int j = 0; j < p->stock_count; j++)
		dearest = p->stock[j].cost > dearest ? p->stock[j].cost : dearest;
	return (long)fmax(LARGE / (double)dearest, 1);
}

struct master {
	struct arena *arena;
	const struct pricing *with;
	const struct pack_problem *problem;
	const int *left;
	int n;
	double *inverse;                    /* of the basis, row by row */
	double *costs;                      /* of the fillings in the basis */
	double *times;                      /* how often each of them is cut */
	const struct packed_board **boards; /* the fillings; NULL: one of those it began with */
	double *prices;                     /* of the pieces */
	double *along;
	long *worth; /* the prices in whole numbers */
};

static double fit(const struct pack_problem *p, int piece, int stock)
{
	const struct pack_piece *one = &p->pieces[piece];
	const struct pack_stock *s = &p->stock[stock];

	long along = s->length / one->length, across = s->width / one->width;

	return (double)(along * across);
}

static double times_on_a_board(const struct master *m, int piece, int stock)
{
	return fmin(fit(m->problem, piece, stock), fmax(m->left[piece], 1));
}

static double cost_each(const struct master *m, int piece, int stock)
{
	return (double)m->problem->stock[stock].cost / times_on_a_board(m, piece, stock);
}

/* Every piece on boards of its own, each on the kind that makes it cheapest. */
static struct master begin(struct arena *a, const struct pricing *with, const int *left)
{
	const struct pack_problem *p = with->problem;
	int n = p->piece_count;
	struct master m = { .arena = a, .with = with, .problem = p, .left = left, .n = n };

	m.inverse = NEW_N(a, double, n *n);
	m.costs = NEW_N(a, double, n);
	m.times = NEW_N(a, double, n);
	m.prices = NEW_N(a, double, n);
	m.along = NEW_N(a, double, n);
	m.boards = NEW_N(a, const struct packed_board *, n);
	m.worth = NEW_N(a, long, n);
	for (int i = 0; i < n; i++) {
		int best = -1;
		for (int j = 0; j < p->stock_count; j++)
			if (pack_fits(&p->pieces[i], &p->stock[j]) &&
				(best < 0 || cost_each(&m, i, j) < cost_each(&m, i, best)))
				best = j;
		m.inverse[i * n + i] = 1 / times_on_a_board(&m, i, best);
		m.costs[i] = (double)p->stock[best].cost;
		m.times[i] = left[i] / times_on_a_board(&m, i, best);
	}
	return m;
}

static void price(struct master *m)
{
	for (int k = 0; k < m->n; k++)
		m->prices[k] = 0;
	for (int i = 0; i < m->n; i++)
		for (int k = 0; k < m->n; k++)
			m->prices[k] += m->costs[i] * m->inverse[i * m->n + k];
}

/* As often as it is of use. */
static int count_in(const struct master *m, const struct packed_board *c, int i)
{
	return c->counts[i] < m->left[i] ? c->counts[i] : m->left[i];
}

/* Is it worth more than its board costs? */
static bool gains(const struct master *m, const struct packed_board *c)
{
	double gain = -(double)m->problem->stock[c->stock].cost;

	for (int i = 0; i < m->n; i++)
		gain += m->prices[i] * count_in(m, c, i);
	return gain > 0;
}

static const struct packed_board *best_in_pool(const struct master *m)
{
	const struct column_pool *pool = m->with->pool;

	m->with->work->done += column_pool_count(pool) * m->n / 32;
	return column_pool_best(pool, m->prices, m->left, ENOUGH * LARGE / (double)m->with->scale);
}

/* The column takes the place of the filling that runs out first. */
static bool enter(struct master *m, const struct packed_board *c)
{
	int n = m->n, out = -1;
	double *along = m->along;

	for (int i = 0; i < n; i++) {
		along[i] = 0;
		for (int k = 0; k < n; k++)
			along[i] += m->inverse[i * n + k] * count_in(m, c, k);
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
	m->boards[out] = c;
	m->costs[out] = (double)m->problem->stock[c->stock].cost;
	m->with->work->done += 1 + n * n / 16;
	return true;
}

static bool is_too_much(const struct master *m, const int *counts, const int *left)
{
	for (int i = 0; i < m->n; i++)
		if (counts[i] > left[i])
			return true;
	return false;
}

/* Where a strip stands on the board more often than there are pieces for it, the strips are chosen
 * anew, with what is left.  While that finds a filling that gains it need not be the best: what the
 * first answer was is still a bound. */
static struct full_board best_board(const struct master *m, const int *left, int stock)
{
	const struct pricing *with = m->with;
	struct full_board b = strips_best_board(m->arena, with->strips, stock);
	long cost = m->problem->stock[stock].cost * with->scale;

	if (b.value <= cost || !is_too_much(m, b.board.counts, left))
		return b;
	struct fillings_wanted wanted = { m->problem, with->strips, with->work, with->scale,
		m->worth, left, -1, 1, FEW_STEPS };
	struct fillings f = fillings_best(m->arena, &wanted, stock);
	if (!f.n && f.is_cut_short) {
		wanted.most_steps = MOST_STEPS;
		f = fillings_best(m->arena, &wanted, stock);
	}
	if (f.n)
		b.board = f.list[0].board;
	if (!f.is_cut_short)
		b.value = f.n ? cost - f.list[0].loss : cost;
	return b;
}

/* What no board exceeds, over its cost in the same units, and what is on the best board. */
struct filled {
	double over;
	const int *counts; /* NULL: no piece is worth anything */
};

/* The best filling of each kind of board at these prices, into the pool where it gains. */
static struct filled fill_boards(struct master *m, const int *left)
{
	const struct pricing *with = m->with;
	struct filled best = { 0, NULL };

	strips_set(with->strips, m->worth, left);
	for (int j = 0; j < m->problem->stock_count; j++) {
		struct full_board b = best_board(m, left, j);
		double cost = (double)(m->problem->stock[j].cost * with->scale);
		struct filled now = { (double)b.value / cost, b.board.counts };
		if (gains(m, &b.board))
			column_pool_add(with->pool, &b.board);
		if (now.over > best.over)
			best = now;
	}
	return best;
}

/* Is there more to gain from the pieces that are not on the best board? */
static bool is_worth_more(struct filled f)
{
	return f.counts && f.over > 1 + ENOUGH;
}

/* New fillings: the best, then the best without the pieces on that one, and so on: fillings that
 * have nothing in common help the most. */
static double generate(struct master *m)
{
	int *left = NEW_N(m->arena, int, m->n + 1);

	for (int i = 0; i < m->n; i++) {
		m->worth[i] = (long)(fmax(m->prices[i], 0) * (double)m->with->scale);
		left[i] = m->worth[i] ? m->left[i] : 0;
	}
	const struct filled first = fill_boards(m, left);
	struct filled f = first;
	for (int k = 0; k < MOST_AT_ONCE && is_worth_more(f); k++) {
		for (int i = 0; i < m->n; i++)
			left[i] = f.counts[i] ? 0 : left[i];
		f = fill_boards(m, left);
	}
	return first.over;
}

/* Divided by what boards are over their cost no filling is worth more than its board costs.  This
 * holds for any prices, good or bad (Farley 1990).  Beside a board that is dear beyond measure no
 * piece may come to one unit of worth: then nothing is known. */
static struct pack_prices feasible(const struct master *m, double over)
{
	long *worth = NEW_N(m->arena, long, m->n + 1), scale = m->with->scale, sum = 0;

	if (over <= 0)
		return (struct pack_prices){ .worth = worth };
	for (int i = 0; i < m->n; i++) {
		worth[i] = (long)((double)m->worth[i] / over * (1 - 1e-15));
		sum += worth[i] * m->left[i];
	}
	long bound = (long)ceil((double)sum / (double)scale * (1 - ENOUGH) - ENOUGH);
	return (struct pack_prices){ .worth = worth, .bound = bound };
}

static double objective(const struct master *m)
{
	double sum = 0;

	for (int i = 0; i < m->n; i++)
		sum += m->costs[i] * m->times[i];
	return sum;
}

/* The fillings in the basis. */
static void set_boards(struct pack_prices *p, const struct master *m)
{
	struct relaxed_board *list = NEW_N(m->arena, struct relaxed_board, m->n + 1);

	for (int i = 0; i < m->n; i++) {
		if (!m->boards[i] || m->times[i] < 1e-6)
			continue;
		int at = p->board_count++;
		for (; at > 0 && list[at - 1].times < m->times[i]; at--)
			list[at] = list[at - 1];
		list[at] = (struct relaxed_board){ m->boards[i], m->times[i] };
	}
	p->boards = list;
}

struct pack_prices pack_prices_of(struct arena *a, const struct pricing *with, const int *left,
	long enough)
{
	struct master m = begin(a, with, left);
	struct pack_prices best = { .worth = NEW_N(a, long, m.n + 1) };

	for (int rounds = 20 * m.n + 50; rounds > 0; rounds--) {
		price(&m);
		const struct packed_board *c = best_in_pool(&m);
		if (!c) {
			int met = column_pool_count(with->pool);
			struct pack_prices now = feasible(&m, generate(&m));
			if (now.bound > best.bound || !best.bound)
				best = now;
			if (best.bound >= enough || (double)best.bound >= objective(&m) - 1e-6 ||
				column_pool_count(with->pool) == met || work_is_over(with->work))
				break;
			c = best_in_pool(&m);
		}
		if (!c || !enter(&m, c))
			break;
	}
	set_boards(&best, &m);
	return best;
}
