/*
 * The floor that level runs stand on, and what is said where there is none.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"

/* Newels of 90 stand with their middle on the rail's, which lies in over the balusters. */
static void where_no_width_of_the_opening_is_given_the_floor_keeps_clear_of_the_stair(void **state)
{
	struct built b =
		built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 1800}\n"
			   "stair: {width: 900, right: open, segments: [{risers: 10, run: 250}]}\n"
			   "newels: {section: 90}\n"
			   "rail: {level_runs: [{side: right, direction: back, length: 2000}]}\n");
	const struct part *floor = built_part(&b, "upper floor under the level rails", 0);
	double newels = INFINITY;
	(void)state;
	for (int i = 0; built_part(&b, "newel", i); i++)
		for (int k = 0; k < built_part(&b, "newel", i)->count; k++) {
			struct extent e = built_extent(built_part(&b, "newel", i), k);
			newels = e.low.z < 1000 ? fmin(newels, e.low.y) : newels;
		}
	assert_true(built_extent(floor, 0).high.y <= newels + 1e-9);
	assert_non_null(strstr(built_complaint(&b), "opening: no width is given"));
	arena_free(b.arena);
}

/* In an opening as wide as the stair the treads' returns of 32 stand in its edge. */
static void an_opening_too_narrow_for_its_stair_is_refused_with_the_width_it_takes(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"opening: {length: 2000, width: 920, floor_thickness: 300}\n"
		"stair: {width: 900, right: open, segments: [{risers: 10, run: 250}]}\n"
		"treads: {side_overhang: 32}\n"
		"newels: {section: 60}\n"
		"rail: {width: 57, level_runs: [{side: right, direction: back, length: 2000}]}\n");
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"opening.width: the floor under a level run would run 12 mm into the treads, rail "
		"or newels on the right");
	assert_string_equal(b.diags.first->hint, "write opening.width: 932 mm");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(
			where_no_width_of_the_opening_is_given_the_floor_keeps_clear_of_the_stair),
		cmocka_unit_test(
			an_opening_too_narrow_for_its_stair_is_refused_with_the_width_it_takes),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
