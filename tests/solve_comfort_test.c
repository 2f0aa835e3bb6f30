/*
 * The limits of comfort: what is said of layouts inside and outside them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"

/* When the job is silent a rise is 150 to 200, a run 240 to 300, twice rise plus run 590 to 650,
 * rise plus run 430 to 490 mm; in inches 6 1/2 to 7 3/4, 10 to 12, 24 to 25 1/2, 17 to 18. */
#define METRIC(rise, segment)                                                                      \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: " rise "}\n"                                                         \
	"stair:\n"                                                                                 \
	"  width: 900\n"                                                                           \
	"  segments: [" segment "]\n"                                                              \
	"stringers: {least_throat: 60}\n"

#define INCHES(rise)                                                                               \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test}\n"                                                                      \
	"floors: {total_rise: " rise "}\n"                                                         \
	"stair: {width: 36\"}\n"

static void warns(const char *yaml, int col, const char *text, const char *hint)
{
	struct built b = built_from(yaml);
	assert_non_null(b.stair);
	assert_int_equal(b.diags.warnings, 1);
	assert_int_equal(b.diags.first->at.line, 6);
	assert_int_equal(b.diags.first->at.col, col);
	assert_string_equal(b.diags.first->text, text);
	assert_string_equal(b.diags.first->hint, hint);
	arena_free(b.arena);
}

/* 1010 / 5 = 202, 1010 / 6 = 168.3 */
static void given_risers_that_are_too_high_are_warned_of(void **state)
{
	(void)state;
	warns(METRIC("1010", "{risers: 5, run: 240}"), 23,
		"risers: with 5 the rise 202 mm is over the most, 200 mm",
		"6 risers make it 168 mm; or change the limit under comfort");
}

/* 2700 / 19 = 142.1, 2700 / 18 = 150 */
static void given_risers_that_are_too_low_are_warned_of(void **state)
{
	(void)state;
	warns(METRIC("2700", "{risers: 19, run: 300}"), 23,
		"risers: with 19 the rise 142 mm is under the least, 150 mm",
		"18 risers make it 150 mm; or change the limit under comfort");
}

static void a_given_run_that_is_too_short_is_warned_of(void **state)
{
	(void)state;
	warns(METRIC("2700", "{risers: 15, run: 230}"), 32,
		"run: unit run 230 mm is under the least, 240 mm",
		"10 mm more run would do; or change the limit under comfort");
}

/* 2 x 180 + 300 = 660 */
static void a_given_run_with_too_long_a_pace_is_warned_of(void **state)
{
	(void)state;
	warns(METRIC("2700", "{risers: 15, run: 300}"), 32,
		"run: twice rise plus run 660 mm is over the most, 650 mm",
		"10 mm less run would do; or change the limit under comfort");
}

static void what_lies_within_the_limits_is_not_spoken_of(void **state)
{
	struct built b = built_from(METRIC("2700", "{risers: 15, run: 270}"));
	(void)state;
	assert_non_null(b.stair);
	assert_null(b.diags.first);
	arena_free(b.arena);
}

static const char *verdict(const struct built *b, int risers)
{
	for (int i = 0; i < b->stair->option_count; i++)
		if (b->stair->options[i].risers == risers)
			return b->stair->options[i].verdict;
	return "";
}

/* 103 3/4 / 16 = 6.484, which is 6 1/2 to the sixteenth. */
static void a_figure_lettered_like_its_limit_is_said_finer(void **state)
{
	struct built b = built_from(INCHES("103 3/4\""));
	(void)state;
	assert_string_equal(verdict(&b, 16), "rise 6 31/64\" is under the least, 6 1/2\"");
	arena_free(b.arena);
}

/* 2699.7 / 18 = 149.98, which is 150.0 to the tenth. */
static void a_figure_like_its_limit_to_the_finest_is_just_outside(void **state)
{
	struct built b = built_from(METRIC("2699.7", "{kind: flight}"));
	(void)state;
	assert_string_equal(verdict(&b, 18), "rise 150 mm is just under the least, 150 mm");
	arena_free(b.arena);
}

static void verdicts_are_in_inches_and_never_in_feet(void **state)
{
	struct built b = built_from(INCHES("107\""));
	(void)state;
	assert_true(b.stair->option_count > 2);
	for (int i = 0; i < b.stair->option_count; i++)
		assert_null(strchr(b.stair->options[i].verdict, '\''));
	arena_free(b.arena);
}

static void the_chosen_layout_says_when_its_headroom_is_short(void **state)
{
	struct built b = built_from(
		METRIC("2700", "{kind: flight}") "opening: {length: 2400, floor_thickness: 300, "
						 "headroom: 2000}\n");
	(void)state;
	assert_int_equal(b.stair->headroom.state, HEADROOM_SHORT);
	assert_non_null(strstr(verdict(&b, b.stair->risers),
		arena_printf(b.arena, "but headroom %.0f mm is under the least, 2000 mm (wanted)",
			b.stair->headroom.least)));
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(given_risers_that_are_too_high_are_warned_of),
		cmocka_unit_test(given_risers_that_are_too_low_are_warned_of),
		cmocka_unit_test(a_given_run_that_is_too_short_is_warned_of),
		cmocka_unit_test(a_given_run_with_too_long_a_pace_is_warned_of),
		cmocka_unit_test(what_lies_within_the_limits_is_not_spoken_of),
		cmocka_unit_test(a_figure_lettered_like_its_limit_is_said_finer),
		cmocka_unit_test(a_figure_like_its_limit_to_the_finest_is_just_outside),
		cmocka_unit_test(verdicts_are_in_inches_and_never_in_feet),
		cmocka_unit_test(the_chosen_layout_says_when_its_headroom_is_short),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
