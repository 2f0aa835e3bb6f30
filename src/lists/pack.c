#include "lists/pack.h"

#include <math.h>

#include "lists/fillings.h"
#include "lists/pack_begin.h"
#include "lists/pack_prices.h"
#include "lists/pack_simple.h"
#include "lists/rests.h"
#include "lists/sums.h"

#define MOST_STEPS 20000 /* in finding the fillings of one board */

/* Prices are found once for all pieces, or again for those left at every board, which costs work
 * but tells better; or what the relaxed problem cuts most is cut, and it is solved again. */
enum way { PRICES_OF_ALL, PRICES_OF_THE_REST, ROUND_DOWN };

/* How many of the best fillings a board may try, and how many places down those lists one packing
 * may go altogether: first the best everywhere, then a few detours, at last everything. */
static const struct wave {
	enum way way;
	int fillings, detours;
	double share; /* of the work, this wave and those before it */
} waves[] = {
	{ PRICES_OF_ALL, 1, 0, 0.05 },
	{ ROUND_DOWN, 1, 8, 0.3 },
	{ PRICES_OF_ALL, 4, 3, 0.35 },
	{ PRICES_OF_THE_REST, 4, 3, 0.5 },
	{ PRICES_OF_THE_REST, 300, 1 << 20, 1 },
};

enum { WAVES = sizeof(waves) / sizeof(*waves) };

struct search {
	const struct pack_problem *problem; /* widest piece first */
	struct pricing pricing;
	struct work work;
	struct sums sums;
	struct rests *rests;
	const long *worth; /* at the prices of all */
	long bound;
	struct wave wave;
	int *left; /* pieces still to be had, by kind */
	int left_count;
	struct packed_board *now;
	struct pack_start best;
	struct arena *arena; /* of the best */
	long cost, target;
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

/* The dearest packing that would be better than the best. */
static void set_target(struct search *s)
{
	s->target = s->best.cost - 1;
	while (s->target > 0 && sums_up(&s->sums, s->target) >= s->best.cost)
		s->target--;
}

static void keep(struct search *s, int boards)
{
	struct packed_board *kept = NEW_N(s->arena, struct packed_board, boards + 1);

	for (int i = 0; i < boards; i++)
		kept[i] = packed_board_copy(s->arena, &s->now[i], s->problem->piece_count);
	s->best = (struct pack_start){ kept, boards, s->cost };
	set_target(s);
}

static bool is_over(const struct search *s)
{
	return s->best.cost <= s->bound || work_is_over(&s->work);
}

/* What the next board may lose, if all of it is to be cheaper than the best. */
static long most_loss(const struct search *s, const long *worth)
{
	long rest = 0;

	for (int i = 0; i < s->problem->piece_count; i++)
		rest += s->left[i] * worth[i];
	return (s->target - s->cost) * s->pricing.scale - rest;
}

static void search(struct search *s, int board, int detours);

/* Tries the fillings of one board, the least loss first. */
static void try_fillings(struct search *s, struct arena *a, int board, int detours,
	const long *worth)
{
	const struct fillings_wanted wanted = { s->problem, s->pricing.strips, &s->work,
		s->pricing.scale, worth, s->left, most_loss(s, worth), s->wave.fillings,
		MOST_STEPS };
	struct fillings f = fillings_list(a, &wanted);

	s->is_cut_short |= f.is_cut_short;
	for (int i = 0; i < f.n && !is_over(s) && f.list[i].loss <= most_loss(s, worth); i++) {
		if (i > detours) {
			s->is_cut_short = true;
			return;
		}
		s->now[board] = f.list[i].board;
		take(s, &s->now[board], 1);
		search(s, board + 1, detours - i);
		take(s, &s->now[board], -1);
	}
}

/* What the rest is worth at the prices of all, and what was found when it was left before. */
static bool is_hopeless(const struct search *s, const struct rest *rest)
{
	long sum = 0;

	if (rest && s->cost + rest->least >= s->best.cost)
		return true;
	for (int i = 0; i < s->problem->piece_count; i++)
		sum += s->left[i] * s->worth[i];
	return sum > (s->target - s->cost) * s->pricing.scale;
}

static void search_rest(struct search *s, struct arena *a, int board, int detours,
	struct rest *rest)
{
	const long *worth = s->worth;

	if (s->wave.way == PRICES_OF_THE_REST) {
		struct pack_prices p =
			pack_prices_of(a, &s->pricing, s->left, s->best.cost - s->cost);
		long least = sums_up(&s->sums, p.bound);
		if (rest && least > rest->least)
			rest->least = least;
		if (sums_up(&s->sums, s->cost + least) >= s->best.cost)
			return;
		worth = p.worth;
	}
	try_fillings(s, a, board, detours, worth);
}

/* After a search that left nothing out the rest is known to cost so much that nothing is better. */
static void search(struct search *s, int board, int detours)
{
	if (!s->left_count) {
		if (s->cost < s->best.cost)
			keep(s, board);
		return;
	}
	struct rest *rest = rests_find(s->rests, s->left);
	if (is_hopeless(s, rest))
		return;
	bool was_cut_short = s->is_cut_short;
	struct arena *a = arena_new();
	s->is_cut_short = false;
	search_rest(s, a, board, detours, rest);
	if (rest && !s->is_cut_short && !is_over(s) && s->best.cost - s->cost > rest->least)
		rest->least = s->best.cost - s->cost;
	s->is_cut_short |= was_cut_short;
	arena_free(a);
}

/* ---- rounding the relaxed problem ---- */

/* Without the pieces that are done. */
static struct packed_board trim(struct search *s, const struct packed_board *b)
{
	int kinds = s->problem->piece_count;
	int *counts = NEW_N(s->arena, int, kinds + 1);
	struct packed_strip *strips = NEW_N(s->arena, struct packed_strip, b->strip_count + 1);

	for (int k = 0; k < b->strip_count; k++) {
		int *on_strip = NEW_N(s->arena, int, kinds + 1);
		strips[k].counts = on_strip;
		for (int i = 0; i < kinds; i++) {
			int left = s->left[i] - counts[i], n = b->strips[k].counts[i];
			on_strip[i] = n < left ? n : left;
			counts[i] += on_strip[i];
		}
	}
	return (struct packed_board){ b->stock, counts, strips, b->strip_count };
}

/* As many whole boards as are cut of one filling, but one at least; the boards there are then. */
static int take_relaxed(struct search *s, const struct relaxed_board *r, int board)
{
	int times = (int)fmax(floor(r->times + 1e-6), 1);

	for (; times > 0 && s->left_count; times--) {
		s->now[board] = trim(s, r->board);
		take(s, &s->now[board++], 1);
	}
	return board;
}

/* Always the filling that is cut most, but the one after it at one place. */
static void round_down(struct search *s, int detour)
{
	int board = 0;

	for (int k = 0; s->left_count && !is_over(s); k++) {
		struct arena *a = arena_new();
		struct pack_prices p =
			pack_prices_of(a, &s->pricing, s->left, s->best.cost - s->cost);
		bool ends = sums_up(&s->sums, s->cost + p.bound) >= s->best.cost;
		if (!ends && p.board_count) {
			int which = k == detour && p.board_count > 1;
			board = take_relaxed(s, &p.boards[which], board);
		}
		ends |= !p.board_count;
		arena_free(a);
		if (ends)
			break;
	}
	if (!s->left_count && s->cost < s->best.cost)
		keep(s, board);
	while (board > 0)
		take(s, &s->now[--board], -1);
}

/* ---- the whole ---- */

static void begin_with(struct search *s, struct pack_start start)
{
	if (!s->best.boards || start.cost < s->best.cost)
		s->best = start;
	for (int i = 0; i < start.count; i++)
		column_pool_add(s->pricing.pool, &start.boards[i]);
}

static void begin(struct search *s)
{
	const struct pack_problem *p = s->problem;

	s->left = NEW_N(s->arena, int, p->piece_count + 1);
	for (int i = 0; i < p->piece_count; i++) {
		s->left[i] = p->pieces[i].count;
		s->left_count += s->left[i];
	}
	s->now = NEW_N(s->arena, struct packed_board, s->left_count + 1);
	s->pricing = (struct pricing){ p, strips_new(s->arena, p, &s->work),
		column_pool_new(s->arena, p), &s->work, pack_scale(p) };
	for (int j = 0; j < p->stock_count; j++)
		begin_with(s, pack_begin(s->arena, p, j));
	s->sums = sums_of(s->arena, p, s->best.cost);
	set_target(s);
	struct pack_prices all = pack_prices_of(s->arena, &s->pricing, s->left, s->best.cost);
	s->worth = all.worth;
	s->bound = sums_up(&s->sums, all.bound);
}

static void go_once(struct search *s)
{
	if (s->wave.way != ROUND_DOWN) {
		search(s, 0, s->wave.detours);
		return;
	}
	s->is_cut_short = true;
	for (int k = -1; k < s->wave.detours && !is_over(s); k++)
		round_down(s, k);
}

static void go(struct search *s)
{
	long from = s->work.done, to = s->problem->work;

	s->rests = rests_new(s->arena, s->problem->piece_count);
	for (int w = 0; w < WAVES && s->best.cost > s->bound; w++) {
		s->wave = waves[w];
		s->is_cut_short = false;
		s->work.most = from + (long)((double)(to - from) * waves[w].share);
		go_once(s);
		if (!s->is_cut_short && !work_is_over(&s->work))
			s->bound = s->best.cost;
	}
}

struct packing pack_boards(struct arena *a, const struct pack_problem *p)
{
	struct arena *scratch = arena_new();
	const struct pack_simple simple = pack_simplify(scratch, p);
	struct search s = { .problem = &simple.problem, .arena = scratch };

	s.work.most = p->work;
	begin(&s);
	if (s.best.cost > s.bound)
		go(&s);
	struct packing k = { pack_as_given(a, &simple, s.best.boards, s.best.count), s.best.count,
		s.best.cost * simple.unit, s.bound * simple.unit, s.work.done,
		s.best.cost <= s.bound };
	arena_free(scratch);
	return k;
}
