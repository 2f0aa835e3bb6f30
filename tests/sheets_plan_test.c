/*
 * Words under the plan: what of the walls stands out into the steps.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "sheets/plan_walls.h"

#define STAIR(of, more)                                                                            \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 250}]}\n"       \
	"stringers: {wall: sawtooth, wall_gap: 100}\n"                                             \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, scribe: 3, notches: [" of          \
	"]}\n" more

#define MEASURED "measured: {by: T, date: 2026-11-01, sizes: [all]}\n"

static void assert_words(const char *job, const char *want)
{
	struct built b = built_from(job);
	assert_string_equal(plan_walls_words(b.arena, b.stair), want);
	arena_free(b.arena);
}

static void a_breast_is_given_with_the_sizes_that_it_is_measured_by(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: right, along: 70, from: 60, across: 600}", MEASURED),
		"Walls in the steps: right, 70 out and 600 along the stair, from 60 "
		"behind "
		"the nosing of step 4 on. Treads and risers are scribed to their faces; their "
		"sizes "
		"leave 3 there.");
}

static void sizes_that_nobody_measured_are_flagged(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: left, along: 70, across: 100}", ""),
		"Walls in the steps: left, 70 VIF out and 100 VIF along the stair, in the "
		"back "
		"corner of step 4. Treads and risers are scribed to their faces; their sizes leave "
		"3 there.");
}

static void that_plain_skirts_end_at_it_is_said(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: right, along: 70, from: 0, across: 275}",
			     MEASURED "skirts: {wall: plain}\n"),
		"Walls in the steps: right, 70 out and 275 along the stair, from the nosing "
		"of "
		"step 4 on. Treads and risers are scribed to their faces; their sizes leave 3 "
		"there. No skirt is on those: the skirts of their wall end there.");
}

static void one_at_the_back_and_a_stair_without_any_say_nothing(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: back, along: 100, across: 60, from: 300}", ""), "");
	assert_words(STAIR("", ""), "");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_breast_is_given_with_the_sizes_that_it_is_measured_by),
		cmocka_unit_test(sizes_that_nobody_measured_are_flagged),
		cmocka_unit_test(that_plain_skirts_end_at_it_is_said),
		cmocka_unit_test(one_at_the_back_and_a_stair_without_any_say_nothing),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
