#include "lists/pack.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "lists/fillings.h"

#define TINY 1e-6
#define STEP 200 /* pieces put on a board, on trial, that count as one step */

/* Prices are found once for all pieces, or again for those left at every board, which costs work
 * but tells better. */
enum prices { PRICES_OF_ALL, PRICES_OF_THE_REST };

/* How many of the best fillings a board may try, and how many places down those lists one packing
 * may go altogether: first the best everywhere, then a few detours, at last everything. */
static const struct wave {
	enum prices prices;
	int fillings, detours;
	bool is_whole; /* everything is looked at, as far as the work goes */
} waves[] = {
	{ PRICES_OF_ALL, 1, 0, false },
	{ PRICES_OF_THE_REST, 1, 0, false },
	{ PRICES_OF_ALL, 4, 3, false },
	{ PRICES_OF_THE_REST, 4, 3, false },
	{ PRICES_OF_THE_REST, 300, 1 << 20, true },
};

enum { WAVES = sizeof(waves) / sizeof(*waves) };

struct search {
	const struct pack_problem *problem; /* longest piece first */
	const double *worth;                /* of all */
	long bound;
	struct wave wave;
	int steps, most_steps;
	int *left; /* pieces still to be had, by kind */
	int left_count;
	struct packed_board *now;
	struct packing best;
	struct arena *arena; /* of the best */
	long cost;
	bool is_cut_short; /* something was left unlooked at */
};

static void take(struct search *s, const struct packed_board *b, int sign)
{
	for (int i = 0; i < s->problem->piece_count; i++) {
		s->left[i] -= sign * b->counts[i];
		s->left_count -= sign * b->counts[i];
	}
	s->cost += sign * s->problem->stock[b->stock].cost;
}

static void keep(struct search *s, int boards)
{
	size_t n = (size_t)s->problem->piece_count;
	struct packed_board *kept = NEW_N(s->arena, struct packed_board, boards + 1);

	for (int i = 0; i < boards; i++) {
		int *counts = NEW_N(s->arena, int, n);
		memcpy(counts, s->now[i].counts, n * sizeof(*counts));
		kept[i] = (struct packed_board){ s->now[i].stock, counts };
	}
	s->best.boards = kept;
	s->best.count = boards;
	s->best.cost = s->cost;
}

static bool is_over(const struct search *s)
{
	return s->best.cost <= s->bound || s->steps >= s->most_steps;
}

/* The pieces left, as a problem of their own; `index` says which they are. */
static struct pack_problem rest_of(struct arena *a, const struct search *s, int *index)
{
	struct pack_piece *pieces = NEW_N(a, struct pack_piece, s->problem->piece_count);
	struct pack_problem rest = *s->problem;

	rest.pieces = pieces;
	rest.piece_count = 0;
	for (int i = 0; i < s->problem->piece_count; i++) {
		if (!s->left[i])
			continue;
		index[rest.piece_count] = i;
		pieces[rest.piece_count++] = (struct pack_piece){ s->problem->pieces[i].size,
			s->left[i], s->problem->pieces[i].grade };
	}
	return rest;
}

static const double *worth_of_rest(struct arena *a, const struct search *s)
{
	double *worth = NEW_N(a, double, s->problem->piece_count);
	int *index = NEW_N(a, int, s->problem->piece_count);
	struct pack_problem rest = rest_of(a, s, index);
	struct pack_prices prices = pack_prices_of(a, &rest);

	for (int i = 0; i < rest.piece_count; i++)
		worth[index[i]] = prices.worth[i];
	return worth;
}

/* Finding prices anew is work that grows with the square of the kinds. */
static const double *worth_now(struct search *s, struct arena *a)
{
	int kinds = s->problem->piece_count;

	if (s->wave.prices == PRICES_OF_ALL)
		return s->worth;
	s->steps += 4 + kinds * kinds / 8;
	return worth_of_rest(a, s);
}

/* What the next board may lose, if all of it is to be cheaper than the best. */
static double most_loss(const struct search *s, const double *worth)
{
	double rest = 0;

	for (int i = 0; i < s->problem->piece_count; i++)
		rest += s->left[i] * worth[i];
	return (double)(s->best.cost - 1 - s->cost) - rest + TINY;
}

static int longest(const int *counts)
{
	int i = 0;

	while (!counts[i])
		i++;
	return i;
}

static double loss_of(const struct search *s, const struct packed_board *b)
{
	double loss = (double)s->problem->stock[b->stock].cost;

	for (int i = 0; i < s->problem->piece_count; i++)
		loss -= b->counts[i] * s->worth[i];
	return loss;
}

/* A fixed order of all fillings: by what they lose at the prices of all, then as they come. */
static bool goes_before(const struct search *s, const struct packed_board *a,
	const struct packed_board *b)
{
	double loss_a = loss_of(s, a), loss_b = loss_of(s, b);

	if (loss_a != loss_b)
		return loss_a < loss_b;
	if (a->stock != b->stock)
		return a->stock < b->stock;
	for (int i = 0; i < s->problem->piece_count; i++)
		if (a->counts[i] != b->counts[i])
			return a->counts[i] > b->counts[i];
	return false;
}

/* Boards whose longest piece is the same may be cut in any order: one order is enough to look at.
 * Not so where only the best fillings are tried, for that order may not be among them. */
static bool is_repeat(const struct search *s, int board)
{
	const struct packed_board *b = &s->now[board];

	return s->wave.is_whole && board > 0 && longest(b->counts) == longest(b[-1].counts) &&
		goes_before(s, b, b - 1);
}

static void search(struct search *s, int board, int detours);

/* Tries the fillings of one board, the least loss first. */
static void try_fillings(struct search *s, struct arena *a, int board, int detours)
{
	const double *worth = worth_now(s, a);
	const struct fillings_wanted wanted = { s->problem, worth, s->left, most_loss(s, worth),
		s->wave.fillings };
	struct fillings f = fillings_list(a, &wanted);

	s->steps += 1 + f.steps / STEP;
	s->is_cut_short |= f.is_cut_short;
	for (int i = 0; i < f.n && !is_over(s) && f.list[i].loss <= most_loss(s, worth); i++) {
		if (i > detours) {
			s->is_cut_short = true;
			return;
		}
		s->now[board] = (struct packed_board){ f.list[i].stock, f.list[i].counts };
		if (is_repeat(s, board))
			continue;
		take(s, &s->now[board], 1);
		search(s, board + 1, detours - i);
		take(s, &s->now[board], -1);
	}
}

static void search(struct search *s, int board, int detours)
{
	if (!s->left_count) {
		if (s->cost < s->best.cost)
			keep(s, board);
		return;
	}
	struct arena *a = arena_new();
	try_fillings(s, a, board, detours);
	arena_free(a);
}

/* ---- to begin with: the longest piece that fits, again and again ---- */

static int cheapest_that_holds(const struct pack_problem *p, long size, int grade)
{
	int best = -1;

	for (int j = 0; j < p->stock_count; j++)
		if (p->stock[j].size >= size && p->stock[j].grade >= grade &&
			(best < 0 || p->stock[j].cost < p->stock[best].cost))
			best = j;
	return best;
}

/* Fills one board of a kind, or of the cheapest that holds the longest piece left; then the board
 * is cut down to the cheapest that holds what is on it. */
static void fill_board(struct search *s, int board, int stock)
{
	const struct pack_problem *p = s->problem;
	int *counts = NEW_N(s->arena, int, p->piece_count), first = 0, grade = 0;
	long used = 0;

	while (!s->left[first])
		first++;
	const struct pack_piece *longest = &p->pieces[first];
	if (!pack_fits(longest, &p->stock[stock], p->stock[stock].size))
		stock = cheapest_that_holds(p, longest->size, longest->grade);
	for (int i = first; i < p->piece_count; i++) {
		const struct pack_piece *one = &p->pieces[i];
		long room = p->stock[stock].size - used, fit = room / one->size;
		if (!s->left[i] || !pack_fits(one, &p->stock[stock], room))
			continue;
		counts[i] = fit < s->left[i] ? (int)fit : s->left[i];
		used += counts[i] * one->size;
		grade = one->grade > grade ? one->grade : grade;
	}
	s->now[board] = (struct packed_board){ cheapest_that_holds(p, used, grade), counts };
	take(s, &s->now[board], 1);
}

static void first_fit(struct search *s, int stock)
{
	int board = 0;

	while (s->left_count)
		fill_board(s, board++, stock);
	if (!s->best.boards || s->cost < s->best.cost)
		keep(s, board);
	while (board > 0)
		take(s, &s->now[--board], -1);
}

/* ---- the whole ---- */

struct sorted {
	struct pack_piece piece;
	int index;
};

static int by_size(const void *pa, const void *pb)
{
	const struct sorted *a = pa, *b = pb;

	if (a->piece.size != b->piece.size)
		return a->piece.size > b->piece.size ? -1 : 1;
	return a->index - b->index;
}

static struct sorted *sorted_pieces(struct arena *a, const struct pack_problem *p)
{
	struct sorted *s = NEW_N(a, struct sorted, p->piece_count + 1);

	for (int i = 0; i < p->piece_count; i++)
		s[i] = (struct sorted){ p->pieces[i], i };
	qsort(s, (size_t)p->piece_count, sizeof(*s), by_size);
	return s;
}

static struct search search_begin(struct arena *a, const struct pack_problem *p)
{
	struct search s = { .problem = p, .arena = a };
	struct arena *scratch = arena_new();
	struct pack_prices prices = pack_prices_of(scratch, p);
	double *worth = NEW_N(a, double, p->piece_count + 1);

	s.left = NEW_N(a, int, p->piece_count + 1);
	for (int i = 0; i < p->piece_count; i++) {
		worth[i] = prices.worth[i];
		s.left[i] = p->pieces[i].count;
		s.left_count += s.left[i];
	}
	s.worth = worth;
	s.bound = prices.bound;
	s.now = NEW_N(a, struct packed_board, s.left_count + 1);
	arena_free(scratch);
	return s;
}

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
		if (k == j || o->size < s->size || o->grade < s->grade || o->cost > s->cost)
			continue;
		bool is_alike = o->size == s->size && o->grade == s->grade && o->cost == s->cost;
		if (!is_alike || k < j)
			return true;
	}
	return false;
}

/* The problem as it is searched: longest piece first, no needless stock, and costs in the largest
 * unit in which they are whole, so that what is cheaper is cheaper by one. */
struct simplified {
	struct pack_problem problem;
	const struct sorted *order; /* of the pieces */
	const int *stock;           /* which of those given */
	long unit;
};

static struct simplified simplify(struct arena *a, const struct pack_problem *p)
{
	struct pack_piece *pieces = NEW_N(a, struct pack_piece, p->piece_count + 1);
	struct pack_stock *stock = NEW_N(a, struct pack_stock, p->stock_count + 1);
	int *from = NEW_N(a, int, p->stock_count + 1), n = 0;
	struct simplified s = { *p, sorted_pieces(a, p), from, common_divisor(p) };

	for (int i = 0; i < p->piece_count; i++)
		pieces[i] = s.order[i].piece;
	for (int j = 0; j < p->stock_count; j++) {
		if (is_needless(p, j))
			continue;
		from[n] = j;
		stock[n] = p->stock[j];
		stock[n++].cost /= s.unit;
	}
	s.problem.pieces = pieces;
	s.problem.stock = stock;
	s.problem.stock_count = n;
	return s;
}

static void go(struct search *s)
{
	for (int j = 0; j < s->problem->stock_count; j++)
		first_fit(s, j);
	for (int w = 0; w < WAVES && s->best.cost > s->bound; w++) {
		s->wave = waves[w];
		s->is_cut_short = false;
		s->most_steps = s->problem->steps * (w + 1) / WAVES;
		search(s, 0, waves[w].detours);
		if (!s->is_cut_short && s->steps < s->most_steps)
			s->bound = s->best.cost;
	}
}

/* Counts and stock in the order in which they were given. */
static const struct packed_board *as_given(struct arena *a, const struct packing *k,
	const struct simplified *s)
{
	struct packed_board *boards = NEW_N(a, struct packed_board, k->count + 1);

	for (int b = 0; b < k->count; b++) {
		int *counts = NEW_N(a, int, s->problem.piece_count + 1);
		for (int i = 0; i < s->problem.piece_count; i++)
			counts[s->order[i].index] = k->boards[b].counts[i];
		boards[b] = (struct packed_board){ s->stock[k->boards[b].stock], counts };
	}
	return boards;
}

struct packing pack_boards(struct arena *a, const struct pack_problem *p)
{
	const struct simplified simple = simplify(a, p);
	struct search s = search_begin(a, &simple.problem);

	go(&s);
	struct packing best = s.best;
	best.boards = as_given(a, &s.best, &simple);
	best.cost *= simple.unit;
	best.bound = s.bound * simple.unit;
	best.steps = s.steps;
	best.is_proved = s.best.cost <= s.bound;
	return best;
}
