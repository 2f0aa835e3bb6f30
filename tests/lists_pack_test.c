/* Filling boards: exact, and honest where it is not. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <limits.h>

#include "lists/knapsack.h"
#include "lists/pack.h"
#include "random/dice.h"

enum { MOST = 9, STEPS = 200000 };

/* The pieces one by one, so that a set of them is a number's bits; and by their kinds. */
struct little {
	long sizes[MOST];
	int n;
	struct pack_piece pieces[MOST];
	int kinds;
	struct pack_stock stock[3];
	int stock_count;
};

static long size_of(const struct little *l, unsigned set)
{
	long size = 0;

	for (int i = 0; i < l->n; i++)
		size += set >> i & 1 ? l->sizes[i] : 0;
	return size;
}

static long cheapest_board(const struct little *l, unsigned set)
{
	long best = LONG_MAX, size = size_of(l, set);

	for (int j = 0; j < l->stock_count; j++)
		if (l->stock[j].size >= size && l->stock[j].cost < best)
			best = l->stock[j].cost;
	return best;
}

/* Over all ways to part the pieces into boards: every set by its best first board and the rest. */
static long by_trying_all(const struct little *l)
{
	long best[1 << MOST] = { 0 };

	for (unsigned set = 1; set < 1u << l->n; set++) {
		best[set] = LONG_MAX;
		for (unsigned board = set; board; board = (board - 1) & set) {
			long cost = cheapest_board(l, board);
			if (cost < LONG_MAX && best[set ^ board] < LONG_MAX &&
				cost + best[set ^ board] < best[set])
				best[set] = cost + best[set ^ board];
		}
	}
	return best[(1u << l->n) - 1];
}

static void add_piece(struct little *l, long size)
{
	int k = 0;

	l->sizes[l->n++] = size;
	while (k < l->kinds && l->pieces[k].size != size)
		k++;
	l->kinds += k == l->kinds;
	l->pieces[k].size = size;
	l->pieces[k].count++;
}

/* Every other one with many pieces alike. */
static struct little roll_little(struct dice *d)
{
	struct little l = { .stock_count = dice_count(d, 1, 3) };
	long step = dice_count(d, 0, 1) ? 15 : 1;

	for (int n = dice_count(d, 1, MOST); n > 0; n--)
		add_piece(&l, (dice_count(d, 10, 70) + step - 1) / step * step);
	for (int j = 0; j < l.stock_count; j++)
		l.stock[j] = (struct pack_stock){ j ? dice_count(d, 20, 100) : 100,
			dice_count(d, 5, 30), 0 };
	return l;
}

static void small_problems_come_out_as_by_trying_all(void **state)
{
	struct dice d = dice_from(11);

	(void)state;
	for (int i = 0; i < 300; i++) {
		struct arena *a = arena_new();
		struct little l = roll_little(&d);
		struct pack_problem p = { l.pieces, l.kinds, l.stock, l.stock_count, STEPS };
		struct packing k = pack_boards(a, &p);
		long best = by_trying_all(&l);
		assert_true(k.bound <= best);
		assert_true(k.is_proved);
		assert_int_equal(k.cost, best);
		arena_free(a);
	}
}

/* Three of 33 and two kerfs of 1 are 101: with a board one kerf longer they fit. */
static void c_pieces_out_of_one_board_need_one_kerf_less(void **state)
{
	struct arena *a = arena_new();
	const struct pack_piece pieces = { 33 + 1, 3, 0 };
	const struct pack_stock exact = { 101 + 1, 1, 0 }, short_by_one = { 100 + 1, 1, 0 };

	(void)state;
	assert_int_equal(pack_boards(a, &(struct pack_problem){ &pieces, 1, &exact, 1, STEPS })
				 .cost,
		1);
	assert_int_equal(pack_boards(a,
				 &(struct pack_problem){ &pieces, 1, &short_by_one, 1, STEPS })
				 .cost,
		2);
	arena_free(a);
}

static void a_dear_long_board_loses_against_two_cheap_short_ones(void **state)
{
	struct arena *a = arena_new();
	const struct pack_piece pieces = { 40, 4, 0 };
	const struct pack_stock stock[] = { { 80, 10, 0 }, { 160, 21, 0 } };

	(void)state;
	struct packing k = pack_boards(a, &(struct pack_problem){ &pieces, 1, stock, 2, STEPS });
	assert_int_equal(k.cost, 20);
	assert_true(k.is_proved);
	arena_free(a);
}

/* Without any work allowed there is still a packing, and a bound that holds. */
static void where_work_runs_out_the_gap_is_stated(void **state)
{
	struct dice d = dice_from(5);

	(void)state;
	for (int i = 0; i < 100; i++) {
		struct arena *a = arena_new();
		struct little l = roll_little(&d);
		struct packing k = pack_boards(a,
			&(struct pack_problem){ l.pieces, l.kinds, l.stock, l.stock_count, 0 });
		long best = by_trying_all(&l);
		assert_true(k.bound <= best && best <= k.cost);
		assert_int_equal(k.is_proved, k.cost <= k.bound);
		arena_free(a);
	}
}

static void the_same_question_gets_the_same_answer(void **state)
{
	struct dice d = dice_from(7);
	struct little l = roll_little(&d);
	struct pack_problem p = { l.pieces, l.kinds, l.stock, l.stock_count, STEPS };
	struct arena *a = arena_new();

	(void)state;
	struct packing one = pack_boards(a, &p), other = pack_boards(a, &p);
	assert_int_equal(one.steps, other.steps);
	assert_int_equal(one.count, other.count);
	for (int b = 0; b < one.count; b++)
		for (int i = 0; i < l.kinds; i++)
			assert_int_equal(one.boards[b].counts[i], other.boards[b].counts[i]);
	arena_free(a);
}

/* Worked by hand: room 10, sizes 6, 5, 5 of worth 9, 7, 7: the two smaller ones. */
static void the_fullest_board_need_not_hold_the_best_piece(void **state)
{
	struct arena *a = arena_new();
	const struct knapsack_item items[] = { { 6, 9, 1 }, { 5, 7, 2 } };

	(void)state;
	struct knapsack k = knapsack_fill(a, items, 2, 10);
	assert_int_equal(k.value, 14);
	assert_int_equal(k.counts[0], 0);
	assert_int_equal(k.counts[1], 2);
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(small_problems_come_out_as_by_trying_all),
		cmocka_unit_test(c_pieces_out_of_one_board_need_one_kerf_less),
		cmocka_unit_test(a_dear_long_board_loses_against_two_cheap_short_ones),
		cmocka_unit_test(where_work_runs_out_the_gap_is_stated),
		cmocka_unit_test(the_same_question_gets_the_same_answer),
		cmocka_unit_test(the_fullest_board_need_not_hold_the_best_piece),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
