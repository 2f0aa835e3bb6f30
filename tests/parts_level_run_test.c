/*
 * Level runs on the upper floor, the floor they stand on, and what is said where there is none.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "pitchboard/rail.h"
#include "railed.h"

static void a_level_run_goes_on_from_the_top_newel(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: on, length: 700, height: 950}]}\n"));
	(void)state;
	struct extent rail = built_extent(built_part(&b, "level rail", 0), 0);
	/* the top newel stands from 2250 to 2340 */
	assert_near(rail.low.x, 2340, 1e-9);
	assert_near(rail.high.x, 2340 + 700, 1e-9);
	assert_near(rail.high.z, 1800 + 950, 1e-9);
	assert_near(rail.low.z, 1800 + 950 - 60, 1e-9);
	assert_int_equal(built_count(&b, "newel"), 3);
	arena_free(b.arena);
}

static void a_run_back_guards_the_opening_from_the_floor_beside_it(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: back, length: 2000}]}\n"));
	(void)state;
	struct extent rail = built_extent(built_part(&b, "level rail", 0), 0);
	/* on the right the opening is 300 wider; the rail's middle is half a newel from its edge */
	assert_near((rail.low.y + rail.high.y) / 2, -300 - 45, 1e-9);
	assert_near(rail.high.x, 2268, 1e-9);
	assert_near(rail.low.x, 268, 1e-9);
	assert_non_null(built_part(&b, "upper floor under the level rails", 0));
	arena_free(b.arena);
}

static void runs_of_a_chain_share_the_newel_at_their_corner(void **state)
{
	struct built b = with(JOB("open", "open",
		RAIL ", level_runs: [{side: right, direction: back, length: 2000},\n"
		     "  {side: right, direction: across, length: 600, end: wall}]}\n"));
	(void)state;
	/* two on each side of the flight, and one at either end of the run back */
	assert_int_equal(built_count(&b, "newel"), 6);
	struct extent across = built_extent(built_part(&b, "level rail", 1), 0);
	/* from the left face of the corner newel, whose right face lies 90 beyond the edge */
	assert_near(across.low.y, -150, 1e-9);
	assert_near(across.high.y, -150 + 600, 1e-9);
	arena_free(b.arena);
}

static void a_newel_is_as_high_as_the_higher_of_its_two_rails_asks(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: on, length: 700, height: 1100}]}\n"));
	double highest = -INFINITY;
	(void)state;
	for (int i = 0; built_part(&b, "newel", i); i++)
		for (int k = 0; k < built_part(&b, "newel", i)->count; k++)
			highest = fmax(highest, built_extent(built_part(&b, "newel", i), k).high.z);
	assert_near(highest, 1800 + 1100 + 70, 1e-9);
	arena_free(b.arena);
}

/* Cut and drilled alike: but what is told of a part is told of all its places. */
static void equal_rails_at_two_heights_are_two_parts(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: on, length: 700, height: 950},\n"
		     "  {side: right, direction: out, length: 700, height: 1050},\n"
		     "  {side: right, direction: out, length: 700, height: 1050}]}\n"));
	(void)state;
	for (int i = 0; i < 2; i++) {
		const struct part *p = built_part(&b, "level rail", i);
		assert_non_null(p);
		assert_int_equal(p->count, i + 1);
		assert_near(p->size.length, 700, 1e-9);
		assert_near(p->rail->height, i == 0 ? 950 : 1050, 1e-9);
		for (int k = 0; k < p->count; k++)
			assert_near(built_extent(p, k).high.z, p->rail->foot.top, 1e-9);
	}
	arena_free(b.arena);
}

static void a_level_run_that_cannot_stand_is_refused(void **state)
{
	(void)state;
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: across, length: 700}]}\n"),
		"rail.level_runs[1]: a run across the head of the stair bars the way");
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: back, length: 900},\n"
			     "  {side: right, direction: across, length: 700}]}\n"),
		"rail.level_runs[2]: this run stands over the opening");
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: on, length: 900, end: wall},"
			     "\n  {side: right, direction: out, length: 700}]}\n"),
		"rail.level_runs[2]: the run before this one ends at a wall, there is no newel to "
		"go on from");
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: on, length: 900},\n"
			     "  {side: right, direction: back, length: 700}]}\n"),
		"rail.level_runs[2]: this run goes back over the one before it");
}

/* Across to where the run back on the other side ends: both have a newel there. */
static void runs_that_meet_are_both_named(void **state)
{
	(void)state;
	refused(JOB("open", "open",
			RAIL ", level_runs: [{side: right, direction: back, length: 2000},\n"
			     "  {side: right, direction: across, length: 1200},\n"
			     "  {side: left, direction: back, length: 2000}]}\n"),
		"rail.level_runs[3]: this run and rail.level_runs[2] run into each other");
}

/* Across before the opening's far end, and back from there: both are over it. */
static void every_level_run_without_a_floor_is_told(void **state)
{
	(void)state;
	struct built b = built_from(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: back, length: 900},\n"
		     "  {side: right, direction: across, length: 700},\n"
		     "  {side: right, direction: back, length: 300}]}\n"));
	int told = 0;
	for (const struct diag *d = b.diags.first; d; d = d->next)
		told += strstr(d->text, "this run stands over the opening") != NULL;
	assert_int_equal(told, 2);
	arena_free(b.arena);
}

/* 120 wide, beside newels of 90 without caps: the floor ends where the widest of the wood does. */
static void the_floor_keeps_clear_of_wide_infill_too(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, right: open, segments: [{risers: 10, run: "
		"250}]}\n"
		"newels: {bottom: no, section: 90}\n"
		"infill: {kind: panel, shoe: no, subrail: no, fillets: yes, panel_held: ends, "
		"strip_width: 120}\n"
		"rail: {level_runs: [{side: right, direction: back, length: "
		"2000}]}\n");
	const struct part *floor = built_part(&b, "upper floor under the level rails", 0);
	(void)state;
	for (int i = 0; built_part(&b, "stile", i); i++)
		for (int k = 0; k < built_part(&b, "stile", i)->count; k++) {
			struct extent e = built_extent(built_part(&b, "stile", i), k);
			if (e.low.z < 1800)
				assert_true(built_extent(floor, 0).high.y <= e.low.y + 1e-9);
		}
	assert_non_null(built_part(&b, "stile", 0));
	arena_free(b.arena);
}

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
		cmocka_unit_test(a_level_run_goes_on_from_the_top_newel),
		cmocka_unit_test(a_run_back_guards_the_opening_from_the_floor_beside_it),
		cmocka_unit_test(runs_of_a_chain_share_the_newel_at_their_corner),
		cmocka_unit_test(a_newel_is_as_high_as_the_higher_of_its_two_rails_asks),
		cmocka_unit_test(equal_rails_at_two_heights_are_two_parts),
		cmocka_unit_test(a_level_run_that_cannot_stand_is_refused),
		cmocka_unit_test(runs_that_meet_are_both_named),
		cmocka_unit_test(every_level_run_without_a_floor_is_told),
		cmocka_unit_test(the_floor_keeps_clear_of_wide_infill_too),
		cmocka_unit_test(
			where_no_width_of_the_opening_is_given_the_floor_keeps_clear_of_the_stair),
		cmocka_unit_test(
			an_opening_too_narrow_for_its_stair_is_refused_with_the_width_it_takes),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
