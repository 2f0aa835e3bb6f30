/*
 * The opening in the upper floor: where its four edges lie, and how deep the floor is.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define JOB(left, right, more)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: " left ", right: " right                                        \
	", segments: [{risers: 10, run: 250}]}\n"                                                  \
	"risers: {thickness: 18}\n" more

static struct box opening_of(const char *yaml)
{
	struct built b = built_from(yaml);
	assert_non_null(b.stair);
	struct box opening = b.stair->opening;
	arena_free(b.arena);
	return opening;
}

static void it_reaches_back_from_the_header(void **state)
{
	struct box b =
		opening_of(JOB("wall", "open", "opening: {length: 2000, floor_thickness: 280}\n"));
	(void)state;
	assert_near(b.x1, 9 * 250 + 18, 1e-9);
	assert_near(b.x0, 9 * 250 + 18 - 2000, 1e-9);
}

static void without_a_width_it_is_as_wide_as_the_stair(void **state)
{
	struct box b = opening_of(JOB("wall", "open", ""));
	(void)state;
	assert_near(b.y0, 0, 1e-9);
	assert_near(b.y1, 900, 1e-9);
	assert_near(b.x0, b.x1, 1e-9); /* nothing is known of its length */
}

static void beside_a_wall_all_that_it_is_wider_lies_on_the_open_side(void **state)
{
	struct box right = opening_of(JOB("wall", "open", "opening: {width: 960}\n"));
	struct box left = opening_of(JOB("open", "wall", "opening: {width: 960}\n"));
	(void)state;
	assert_near(right.y0, -60, 1e-9);
	assert_near(right.y1, 900, 1e-9);
	assert_near(left.y0, 0, 1e-9);
	assert_near(left.y1, 960, 1e-9);
}

static void round_a_stair_open_on_both_sides_it_lies_in_the_middle(void **state)
{
	struct box b = opening_of(JOB("open", "open", "opening: {width: 960}\n"));
	(void)state;
	assert_near(b.y0, -30, 1e-9);
	assert_near(b.y1, 930, 1e-9);
}

static void between_two_walls_it_ends_at_the_walls(void **state)
{
	struct box b = opening_of(JOB("wall", "wall", "opening: {width: 960}\n"));
	(void)state;
	assert_near(b.y0, 0, 1e-9);
	assert_near(b.y1, 900, 1e-9);
}

static void the_floor_is_as_deep_as_its_ceiling_leaves(void **state)
{
	struct built given = built_from(JOB("wall", "open", "opening: {floor_thickness: 280}\n"));
	struct built measured =
		built_from(JOB("wall", "open", "opening: {ceiling_height: 1500}\n"));
	struct built silent = built_from(JOB("wall", "open", ""));
	(void)state;
	assert_near(given.stair->floor_depth, 280, 1e-9);
	assert_near(measured.stair->floor_depth, 300, 1e-9); /* 1800 - 1500 */
	assert_near(silent.stair->floor_depth, 0, 0);
	arena_free(given.arena);
	arena_free(measured.arena);
	arena_free(silent.arena);
}

/* The last tread comes up to the header itself. */
static void a_flush_head_has_no_riser_before_its_header(void **state)
{
	struct built b = built_from(JOB("wall", "open", "stringers: {head: flush}\n"));
	(void)state;
	assert_near(b.stair->flights[0].header_x, 10 * 250, 1e-9);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(it_reaches_back_from_the_header),
		cmocka_unit_test(without_a_width_it_is_as_wide_as_the_stair),
		cmocka_unit_test(beside_a_wall_all_that_it_is_wider_lies_on_the_open_side),
		cmocka_unit_test(round_a_stair_open_on_both_sides_it_lies_in_the_middle),
		cmocka_unit_test(between_two_walls_it_ends_at_the_walls),
		cmocka_unit_test(the_floor_is_as_deep_as_its_ceiling_leaves),
		cmocka_unit_test(a_flush_head_has_no_riser_before_its_header),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
