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

enum { MOST = 9, WORK = 2000000 };

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
		if (l->stock[j].length >= size && l->stock[j].cost < best)
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
	while (k < l->kinds && l->pieces[k].length != size)
		k++;
	l->kinds += k == l->kinds;
	l->pieces[k].length = size;
	l->pieces[k].width = 1;
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
		l.stock[j] = (struct pack_stock){ j ? dice_count(d, 20, 100) : 100, 1,
			dice_count(d, 5, 30) };
	return l;
}

static void small_problems_come_out_as_by_trying_all(void **state)
{
	struct dice d = dice_from(11);

	(void)state;
	for (int i = 0; i < 300; i++) {
		struct arena *a = arena_new();
		struct little l = roll_little(&d);
		struct pack_problem p = { l.pieces, l.kinds, l.stock, l.stock_count, WORK };
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
	const struct pack_piece pieces = { 33 + 1, 1, 3 };
	const struct pack_stock exact = { 101 + 1, 1, 1 }, short_by_one = { 100 + 1, 1, 1 };

	(void)state;
	assert_int_equal(pack_boards(a, &(struct pack_problem){ &pieces, 1, &exact, 1, WORK }).cost,
		1);
	assert_int_equal(pack_boards(a,
				 &(struct pack_problem){ &pieces, 1, &short_by_one, 1, WORK })
				 .cost,
		2);
	arena_free(a);
}

static void a_dear_long_board_loses_against_two_cheap_short_ones(void **state)
{
	struct arena *a = arena_new();
	const struct pack_piece pieces = { 40, 1, 4 };
	const struct pack_stock stock[] = { { 80, 1, 10 }, { 160, 1, 21 } };

	(void)state;
	struct packing k = pack_boards(a, &(struct pack_problem){ &pieces, 1, stock, 2, WORK });
	assert_int_equal(k.cost, 20);
	assert_true(k.is_proved);
	arena_free(a);
}

/* Of the cheap board's cost a piece is less than one in 1e9 of the dear one's.  By their area,
 * 2951000 in boards of 900000, the pieces need four of the cheap ones. */
static void a_board_dear_beyond_measure_leaves_the_cheap_ones_their_worth(void **state)
{
	struct arena *a = arena_new();
	const struct pack_piece pieces[] = { { 900, 40, 38 }, { 700, 30, 50 }, { 650, 20, 41 } };
	const struct pack_stock stock[] = { { 3000, 300, 1 }, { 12000, 310, 400000000 } };

	(void)state;
	struct packing k = pack_boards(a, &(struct pack_problem){ pieces, 3, stock, 2, WORK });
	assert_int_equal(k.cost, 4);
	assert_true(k.bound >= 0 && k.bound <= 4);
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
	struct pack_problem p = { l.pieces, l.kinds, l.stock, l.stock_count, WORK };
	struct arena *a = arena_new();

	(void)state;
	struct packing one = pack_boards(a, &p), other = pack_boards(a, &p);
	assert_int_equal(one.work, other.work);
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
	struct work work = { 0, 100 };
	struct knapsack *k = knapsack_new(a, 2, &work);
	int counts[2] = { 0 };

	(void)state;
	knapsack_load(k, items, 2);
	assert_int_equal(knapsack_fill(k, 0, 10, counts), 14);
	assert_int_equal(counts[0], 0);
	assert_int_equal(counts[1], 2);
	arena_free(a);
}

/* Many fillings take up the same room, so that branch and bound alone does not end: pieces worth as
 * much as they are long, all even, and an odd room. */
static void a_room_that_no_filling_fills_is_still_filled_exactly(void **state)
{
	enum { KINDS = 20 };
	struct arena *a = arena_new();
	struct work work = { 0, 1000000 };
	struct knapsack *k = knapsack_new(a, KINDS, &work);
	struct knapsack_item items[KINDS];
	int counts[KINDS] = { 0 };
	long value = 0;

	(void)state;
	for (int i = 0; i < KINDS; i++)
		items[i] = (struct knapsack_item){ 100 + 2 * i, 100 + 2 * i, 5 };
	knapsack_load(k, items, KINDS);
	assert_int_equal(knapsack_fill(k, 0, 1501, counts), 1500);
	for (int i = 0; i < KINDS; i++)
		value += counts[i] * items[i].value;
	assert_int_equal(value, 1500);
	arena_free(a);
}

/* Without work the answer is what pieces cut up at will would be worth. */
static void where_work_runs_out_a_knapsack_is_worth_no_less(void **state)
{
	struct arena *a = arena_new();
	const struct knapsack_item items[] = { { 6, 9, 1 }, { 5, 7, 2 } };
	struct work work = { 0, 0 };
	struct knapsack *k = knapsack_new(a, 2, &work);

	(void)state;
	knapsack_load(k, items, 2);
	assert_true(knapsack_worth(k, 0, 10) >= 14);
	arena_free(a);
}

/* ---- strips ---- */

/* A board of 10 x 10 of cost 1: strips of 6 and 4 wide, on the wide one a narrow piece ripped once
 * more.  By hand: 6 x 6 and 4 x 4 beside it on the strip of 6, 10 x 4 on the other: one board. */
static void a_narrow_piece_goes_on_a_wide_strip(void **state)
{
	struct arena *a = arena_new();
	const struct pack_piece pieces[] = { { 4, 4, 1 }, { 10, 4, 1 }, { 6, 6, 1 } };
	const struct pack_stock stock = { 10, 10, 1 };

	(void)state;
	struct packing k = pack_boards(a, &(struct pack_problem){ pieces, 3, &stock, 1, WORK });
	assert_int_equal(k.cost, 1);
	assert_true(k.is_proved);
	assert_int_equal(k.boards[0].strip_count, 2);
	assert_int_equal(k.boards[0].strips[0].counts[0], 1);
	assert_int_equal(k.boards[0].strips[0].counts[2], 1);
	assert_int_equal(k.boards[0].strips[1].counts[1], 1);
	arena_free(a);
}

/* Pieces of a set on strips of one length: how wide a board it takes at least, by all ways to part
 * them into strips. */
static void set_least_widths(const struct pack_piece *one_each, int n, long length, long *least)
{
	least[0] = 0;
	for (unsigned set = 1; set < 1u << n; set++) {
		least[set] = LONG_MAX;
		for (unsigned strip = set; strip; strip = (strip - 1) & set) {
			long used = 0, wide = 0;
			for (int i = 0; i < n; i++) {
				if (!(strip >> i & 1))
					continue;
				used += one_each[i].length;
				wide = one_each[i].width > wide ? one_each[i].width : wide;
			}
			if (used <= length && least[set ^ strip] < LONG_MAX &&
				wide + least[set ^ strip] < least[set])
				least[set] = wide + least[set ^ strip];
		}
	}
}

static long cheapest_of_all(const struct pack_problem *p)
{
	struct pack_piece each[MOST];
	long board[1 << MOST], best[1 << MOST] = { 0 }, least[1 << MOST];
	int n = 0;

	for (int i = 0; i < p->piece_count; i++)
		for (int k = 0; k < p->pieces[i].count; k++)
			each[n++] = p->pieces[i];
	for (unsigned set = 0; set < 1u << n; set++)
		board[set] = LONG_MAX;
	for (int j = 0; j < p->stock_count; j++) {
		set_least_widths(each, n, p->stock[j].length, least);
		for (unsigned set = 0; set < 1u << n; set++)
			if (least[set] <= p->stock[j].width && p->stock[j].cost < board[set])
				board[set] = p->stock[j].cost;
	}
	for (unsigned set = 1; set < 1u << n; set++) {
		best[set] = LONG_MAX;
		for (unsigned one = set; one; one = (one - 1) & set)
			if (board[one] < LONG_MAX && best[set ^ one] < LONG_MAX &&
				board[one] + best[set ^ one] < best[set])
				best[set] = board[one] + best[set ^ one];
	}
	return best[(1u << n) - 1];
}

static void boards_with_strips_come_out_as_by_trying_all(void **state)
{
	struct dice d = dice_from(23);

	(void)state;
	for (int n = 0; n < 300; n++) {
		struct arena *a = arena_new();
		struct pack_piece pieces[4];
		struct pack_stock stock[3];
		struct pack_problem p = { pieces, dice_count(&d, 1, 4), stock, dice_count(&d, 1, 3),
			WORK };
		for (int i = 0; i < p.piece_count; i++)
			pieces[i] = (struct pack_piece){ dice_count(&d, 5, 40),
				dice_count(&d, 2, 10), dice_count(&d, 1, 2) };
		for (int j = 0; j < p.stock_count; j++)
			stock[j] = (struct pack_stock){ dice_count(&d, 40, 80),
				dice_count(&d, 10, 20), dice_count(&d, 20, 60) };
		struct packing k = pack_boards(a, &p);
		assert_int_equal(k.cost, cheapest_of_all(&p));
		assert_true(k.is_proved);
		arena_free(a);
	}
}

static struct pack_problem roll_boards(struct dice *d, struct pack_piece *pieces,
	struct pack_stock *stock)
{
	int kinds = dice_count(d, 1, 6), boards = dice_count(d, 1, 3);

	for (int i = 0; i < kinds; i++)
		pieces[i] = (struct pack_piece){ dice_count(d, 5, 40), dice_count(d, 2, 10),
			dice_count(d, 1, 6) };
	for (int j = 0; j < boards; j++)
		stock[j] = (struct pack_stock){ dice_count(d, 40, 100), dice_count(d, 10, 20),
			dice_count(d, 20, 60) };
	return (struct pack_problem){ pieces, kinds, stock, boards, WORK };
}

static void check_strips(const struct pack_problem *p, const struct packed_board *b, int *made)
{
	long wide = 0;

	for (int k = 0; k < b->strip_count; k++) {
		long length = 0, width = 0;
		for (int i = 0; i < p->piece_count; i++) {
			int n = b->strips[k].counts[i];
			length += n * p->pieces[i].length;
			width = n && p->pieces[i].width > width ? p->pieces[i].width : width;
			made[i] += n;
		}
		wide += width;
		assert_true(length <= p->stock[b->stock].length);
	}
	assert_true(wide <= p->stock[b->stock].width);
}

static void no_strip_and_no_board_holds_more_than_its_size(void **state)
{
	struct dice d = dice_from(3);

	(void)state;
	for (int n = 0; n < 200; n++) {
		struct arena *a = arena_new();
		struct pack_piece pieces[6];
		struct pack_stock stock[3];
		struct pack_problem p = roll_boards(&d, pieces, stock);
		struct packing k = pack_boards(a, &p);
		int made[6] = { 0 };
		long cost = 0;
		for (int b = 0; b < k.count; b++) {
			check_strips(&p, &k.boards[b], made);
			cost += stock[k.boards[b].stock].cost;
		}
		for (int i = 0; i < p.piece_count; i++)
			assert_int_equal(made[i], pieces[i].count);
		assert_int_equal(cost, k.cost);
		assert_true(k.bound <= k.cost);
		arena_free(a);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(small_problems_come_out_as_by_trying_all),
		cmocka_unit_test(c_pieces_out_of_one_board_need_one_kerf_less),
		cmocka_unit_test(a_dear_long_board_loses_against_two_cheap_short_ones),
		cmocka_unit_test(a_board_dear_beyond_measure_leaves_the_cheap_ones_their_worth),
		cmocka_unit_test(where_work_runs_out_the_gap_is_stated),
		cmocka_unit_test(the_same_question_gets_the_same_answer),
		cmocka_unit_test(the_fullest_board_need_not_hold_the_best_piece),
		cmocka_unit_test(a_room_that_no_filling_fills_is_still_filled_exactly),
		cmocka_unit_test(where_work_runs_out_a_knapsack_is_worth_no_less),
		cmocka_unit_test(a_narrow_piece_goes_on_a_wide_strip),
		cmocka_unit_test(boards_with_strips_come_out_as_by_trying_all),
		cmocka_unit_test(no_strip_and_no_board_holds_more_than_its_size),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
