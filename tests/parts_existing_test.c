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
	for (const struct part *p = b.parts; p; p = p->next) {
		assert_int_equal(p->kind == &part_existing, part_is_existing(p));
		assert_int_equal(p->existing != EXISTING_NONE, part_is_existing(p));
	}
	assert_int_equal(built_part(&b, "header", 0)->existing, EXISTING_HEADER);
	assert_int_equal(built_part(&b, "wall left", 0)->existing, EXISTING_WALL);
	arena_free(b.arena);
}

/* Its end in front of the newel. */
#define SEEN "; work the edge round its right end too, which is seen: the end first"

#define FLOORS(upper)                                                                              \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: " upper "}\n"                                    \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, landing_bearing: 90}\n"            \
	"risers: {thickness: 18}\n"

/* The header's face is at 2268. */
static void without_a_finish_the_nosing_is_let_into_the_structure(void **state)
{
	struct built b = built_from(FLOORS("0"));
	(void)state;
	struct extent header = built_extent(built_part(&b, "header", 0), 0);
	struct extent floor = built_extent(built_part(&b, "upper floor", 0), 0);
	struct extent nosing = built_extent(built_part(&b, "landing nosing", 0), 0);
	assert_null(built_part(&b, "upper floor finish", 0));
	assert_near(header.high.z, 1770, 1e-9); /* under the nosing */
	assert_near(header.high.x, nosing.high.x, 1e-9);
	assert_near(floor.low.x, 2268 + 90, 1e-9);
	assert_near(floor.high.z, b.stair->upper_structural, 1e-9);
	assert_string_equal(built_part(&b, "landing nosing", 0)->note,
		"let into the floor, flush: 30 mm deep, 90 mm back from the header" SEEN);
	assert_string_equal(built_part(&b, "header", 0)->note,
		"The header lies 30 mm lower than the floor, or is cut down by as much, and the "
		"subfloor ends 90 mm behind its face: the landing nosing is let in there, flush.");
	arena_free(b.arena);
}

static void a_nosing_thicker_than_the_finish_is_rebated_for_the_structure(void **state)
{
	struct built b = built_from(FLOORS("20"));
	(void)state;
	const struct part *nosing = built_part(&b, "landing nosing", 0);
	struct extent header = built_extent(built_part(&b, "header", 0), 0);
	struct extent finish = built_extent(built_part(&b, "upper floor finish", 0), 0);
	assert_near(header.high.z, 1780, 1e-9);
	assert_near(b.stair->upper_structural, 1780, 1e-9);
	assert_near(finish.low.z, 1780, 1e-9);
	assert_near(finish.low.x, built_extent(nosing, 0).high.x, 1e-9);
	assert_near(built_extent(nosing, 0).low.z, 1770, 1e-9); /* before the header */
	assert_string_equal(nosing->note,
		"rebated under, 10 mm deep, 90 mm wide from the back, for the structural "
		"floor" SEEN);
	/* whose foot is at 1770 */
	assert_string_equal(built_part(&b, "header", 0)->note,
		"The header is cut out 10 mm deep under a newel at the head: it goes as low as the "
		"landing nosing's underside.");
	assert_non_null(strstr(built_part(&b, "newel", 1)->note,
		"let 10 mm into the header, as low as the landing nosing's underside"));
	arena_free(b.arena);
}

static void a_nosing_thinner_than_the_finish_has_finish_under_it(void **state)
{
	struct built b = built_from(FLOORS("40"));
	(void)state;
	struct extent under = built_extent(built_part(&b, "upper floor finish", 0), 0);
	assert_near(built_extent(built_part(&b, "header", 0), 0).high.z, 1760, 1e-9);
	assert_near(under.low.z, 1760, 1e-9);
	assert_near(under.high.z, 1770, 1e-9);
	assert_near(under.low.x, 2268, 1e-9);
	assert_string_equal(built_part(&b, "landing nosing", 0)->note,
		"flush with the finish: pack it up 10 mm over the structure" SEEN);
	arena_free(b.arena);
}

static void a_wall_goes_on_past_the_upper_floor(void **state)
{
	struct built b = built_from(JOB("open", ""));
	(void)state;
	assert_near(built_extent(built_part(&b, "wall left", 0), 0).high.z, 1800 + 300, 1e-9);
	arena_free(b.arena);
}

/* As far past the corners of the opening on the open side as past the stair without a width. */
static void the_floor_keeps_clear_of_the_openings_width(void **state)
{
	struct built b = built_from(
		JOB("open", "opening: {length: 2000, width: 960, floor_thickness: 280}\n"));
	(void)state;
	assert_near(built_extent(built_part(&b, "header", 0), 0).low.y, -60 - 300, 1e-9);
	assert_near(built_extent(built_part(&b, "upper floor over the foot", 0), 0).low.y,
		-60 - 300, 1e-9);
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
	assert_near(before.high.x, 500, 1e-9);      /* the face of riser 3 */
	assert_near(behind.low.x, 1500 + 25, 1e-9); /* the return of step 6 */
	assert_near(before.high.y, 0, 1e-9);
	arena_free(b.arena);
}

/* Its head is at 1775, where the nosing line is at 180 + 1800 x 18/25 = 1476: the rail ends 900
 * over that, and the ceiling is at 1520. */
#define GUARDED(width, end)                                                                        \
	JOB("{side: open, to_step: " end "}",                                                      \
		"opening: {length: 2000, width: " width ", floor_thickness: 280}\n"                \
		"rail: {height: 900, level_runs: [{side: right, direction: back, length: "         \
		"1500}]}\n")

static void a_wall_goes_up_in_the_opening_as_high_as_it_holds_the_rail(void **state)
{
	struct built b = built_from(GUARDED("1020", "7"));
	struct extent wall = built_extent(built_part(&b, "wall right", 0), 0);
	(void)state;
	assert_near(wall.low.x, 1775, 1e-9);
	assert_near(wall.high.z, 1476 + 900 + 150, 1e-9);
	assert_string_equal(built_complaint(&b), "");
	arena_free(b.arena);
}

/* The floor beside the stair ends 120 out: the wall goes up before it, but not into a cap. */
static void a_wall_does_not_go_up_into_the_cap_of_a_guards_newel(void **state)
{
	struct built b =
		built_from(GUARDED("1020", "7") "newels: {cap: {kind: flat, overhang: 12}}\n");
	(void)state;
	assert_near(built_extent(built_part(&b, "wall right", 0), 0).high.z, 1520, 1e-9);
	arena_free(b.arena);
}

/* A partition is taken to be 115 thick. */
static void where_a_floor_is_in_its_way_the_rail_is_said_to_have_no_wall(void **state)
{
	struct built b = built_from(GUARDED("1000", "7"));
	struct extent wall = built_extent(built_part(&b, "wall right", 0), 0);
	(void)state;
	assert_near(wall.high.z, 1520, 1e-9);
	assert_string_equal(built_complaint(&b),
		"rail: on the right its end stands 856 mm over the ceiling, under the floor of a "
		"guard: no wall is known there that holds it");
	arena_free(b.arena);
}

/* At 525 the nosing line is at 576. */
static void a_rail_that_ends_under_the_ceiling_ends_at_a_wall(void **state)
{
	struct built b = built_from(GUARDED("1000", "2"));
	struct extent wall = built_extent(built_part(&b, "wall right", 0), 0);
	(void)state;
	assert_near(wall.high.z, 1520, 1e-9);
	assert_string_equal(built_complaint(&b), "");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_wall_goes_up_in_the_opening_as_high_as_it_holds_the_rail),
		cmocka_unit_test(a_wall_does_not_go_up_into_the_cap_of_a_guards_newel),
		cmocka_unit_test(where_a_floor_is_in_its_way_the_rail_is_said_to_have_no_wall),
		cmocka_unit_test(a_rail_that_ends_under_the_ceiling_ends_at_a_wall),
		cmocka_unit_test(it_has_no_marks_and_is_never_listed),
		cmocka_unit_test(without_a_finish_the_nosing_is_let_into_the_structure),
		cmocka_unit_test(a_nosing_thicker_than_the_finish_is_rebated_for_the_structure),
		cmocka_unit_test(a_nosing_thinner_than_the_finish_has_finish_under_it),
		cmocka_unit_test(a_wall_goes_on_past_the_upper_floor),
		cmocka_unit_test(the_floor_keeps_clear_of_the_openings_width),
		cmocka_unit_test(the_finish_stops_at_a_stair_that_stands_on_the_structure),
		cmocka_unit_test(the_finish_runs_under_a_stair_that_stands_on_it),
		cmocka_unit_test(the_header_stands_behind_the_last_riser),
		cmocka_unit_test(the_opening_ends_where_its_length_says),
		cmocka_unit_test(a_wall_stands_at_each_side_that_is_not_open),
		cmocka_unit_test(a_side_open_in_the_middle_has_a_wall_before_and_behind),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
