/*
 * Existing work: floors, header and walls that the stair is built into.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define JOB(side, more)                                                                            \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, lower_finish: 25, upper_finish: 20}\n"                         \
	"stair: {width: 900, left: wall, right: " side ", segments: [{risers: 10, run: 250}]}\n"   \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, landing_bearing: 90}\n"            \
	"risers: {thickness: 18}\n" more

static void it_has_no_marks_and_is_never_listed(void **state)
{
	struct built b = built_from(JOB("open", ""));
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		assert_int_equal(p->kind == &part_existing, p->mark[0] == '\0');
	arena_free(b.arena);
}

static void the_finish_stops_at_a_stair_that_stands_on_the_structure(void **state)
{
	struct built b = built_from(JOB("wall", "stringers: {foot: structural_floor}\n"));
	(void)state;
	struct extent e = built_extent(built_part(&b, "lower floor finish", 0), 0);
	assert_near(e.high.x, 0, 1e-9); /* the face of the first riser */
	assert_near(e.low.z, -25, 1e-9);
	assert_near(e.high.z, 0, 1e-9);
	arena_free(b.arena);
}

static void the_finish_runs_under_a_stair_that_stands_on_it(void **state)
{
	struct built b = built_from(JOB("wall", "stringers: {foot: finished_floor}\n"));
	(void)state;
	assert_true(built_extent(built_part(&b, "lower floor finish", 0), 0).high.x > 9 * 250);
	arena_free(b.arena);
}

static void the_header_stands_behind_the_last_riser(void **state)
{
	struct built b = built_from(JOB("wall", ""));
	(void)state;
	assert_near(built_extent(built_part(&b, "header", 0), 0).low.x, 9 * 250 + 18, 1e-9);
	assert_near(built_extent(built_part(&b, "upper floor finish", 0), 0).low.x,
		9 * 250 + 18 + 90, 1e-9); /* behind the nosing piece */
	arena_free(b.arena);
}

static void the_opening_ends_where_its_length_says(void **state)
{
	struct built b = built_from(JOB("wall", "opening: {length: 2000, floor_thickness: 280}\n"));
	(void)state;
	struct extent e = built_extent(built_part(&b, "upper floor over the foot", 0), 0);
	assert_near(e.high.x, 9 * 250 + 18 - 2000, 1e-9);
	assert_near(e.low.z, 1800 - 280, 1e-9);
	arena_free(b.arena);
}

static void a_wall_stands_at_each_side_that_is_not_open(void **state)
{
	struct built b = built_from(JOB("open", ""));
	(void)state;
	assert_non_null(built_part(&b, "wall left", 0));
	assert_null(built_part(&b, "wall right", 0));
	assert_near(built_extent(built_part(&b, "wall left", 0), 0).low.y, 900, 1e-9);
	arena_free(b.arena);
}

static void a_side_open_in_the_middle_has_a_wall_before_and_behind(void **state)
{
	struct built b = built_from(JOB("{side: open, from_step: 3, to_step: 6}", ""));
	(void)state;
	struct extent before = built_extent(built_part(&b, "wall right", 0), 0);
	struct extent behind = built_extent(built_part(&b, "wall right", 1), 0);
	assert_near(before.high.x, 500 - 25, 1e-9); /* the nosing of step 3 */
	assert_near(behind.low.x, 1500 + 25, 1e-9); /* the return of step 6 */
	assert_near(before.high.y, 0, 1e-9);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(it_has_no_marks_and_is_never_listed),
		cmocka_unit_test(the_finish_stops_at_a_stair_that_stands_on_the_structure),
		cmocka_unit_test(the_finish_runs_under_a_stair_that_stands_on_it),
		cmocka_unit_test(the_header_stands_behind_the_last_riser),
		cmocka_unit_test(the_opening_ends_where_its_length_says),
		cmocka_unit_test(a_wall_stands_at_each_side_that_is_not_open),
		cmocka_unit_test(a_side_open_in_the_middle_has_a_wall_before_and_behind),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
