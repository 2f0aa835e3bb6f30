/*
 * The table of balls: every ball is judged by its own size, also where another one of its row is
 * too large.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "rules_checked.h"
#include "sheets/guard_balls.h"

/* Balusters 32 mm wide on a run of 250 mm: two to a tread leave 93 mm between them, one 218 mm. */
#define STAIR(per_tread, newels)                                                                   \
	"pitchboard: 1\njob: {name: Made up, units: millimetres}\nfloors: {total_rise: 1800}\n"    \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"newels: {bottom: " newels ", top: " newels "}\n"                                          \
	"balusters: {section: 32, largest_gap: 230, per_tread: " per_tread "}\n"

/* Approved Document K 1.39: less than 100 mm. */
enum { TOO_LARGE = 100, COLUMNS = 7, RESULT = 6 };

static void each_is_judged_by_its_size(const char *job, int not_met, int met)
{
	struct checked c = checked_against("approved-document-k-2013", job, NULL, 0);
	struct sheet_context s = { .stair = c.built.stair,
		.parts = c.built.parts,
		.findings = c.findings };
	struct guard_balls balls = guard_balls_find(c.built.arena, &s);
	struct table t = guard_balls_table(c.built.arena, &s, &balls);

	for (int i = 0; i < balls.n; i++) {
		bool is_met = strcmp(t.cells[COLUMNS * i + RESULT], "NOT MET") != 0;
		assert_int_equal(is_met, balls.list[i].ball->diameter < TOO_LARGE);
		met -= is_met;
		not_met -= !is_met;
	}
	assert_int_equal(met, 0);
	assert_int_equal(not_met, 0);
	arena_free(c.built.arena);
}

static void wide_gaps_are_not_met(void **state)
{
	(void)state;
	each_is_judged_by_its_size(STAIR("1", "no"), 1, 0);
}

static void narrow_gaps_are_met(void **state)
{
	(void)state;
	each_is_judged_by_its_size(STAIR("2", "no"), 0, 1);
}

/* Beside the newel at the foot is more room than between two balusters. */
static void of_one_row_the_larger_is_not_met_and_the_smaller_is(void **state)
{
	(void)state;
	each_is_judged_by_its_size(STAIR("2", "yes"), 1, 1);
}

/* Who names no code still reads what passes: two to a tread of 250 mm leave 93 mm. */
static void the_shop_reads_them_in_a_sentence_without_a_code(void **state)
{
	(void)state;
	struct built b = built_from(STAIR("2", "no"));
	struct sheet_context s = { .stair = b.stair, .parts = b.parts };

	assert_string_equal(guard_balls_words(b.arena, &s),
		"The largest ball that passes, measured on the model. Beside the steps: between "
		"balusters 93.");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(wide_gaps_are_not_met),
		cmocka_unit_test(narrow_gaps_are_met),
		cmocka_unit_test(of_one_row_the_larger_is_not_met_and_the_smaller_is),
		cmocka_unit_test(the_shop_reads_them_in_a_sentence_without_a_code),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
