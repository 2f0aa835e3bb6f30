/*
 * Caps of newels: their shape, and how the saw is set for it.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built_refused.h"
#include "near.h"
#include "parts/solid.h"

#define JOB(side, newels, cap)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: " side ", segments: [{risers: 10, run: 250}]}\n"   \
	"treads: {thickness: 30, nosing: 10}\n"                                                    \
	"rail: {width: 57, depth: 60, height: 900}\n"                                              \
	"balusters: {section: 32, largest_gap: 120}\n"                                             \
	"newels: {section: 90" newels ", cap: {overhang: 15, quarter_round: 0, " cap "}}\n"

#define CAP(cap) JOB("open", "", cap)

static double degrees(double radians)
{
	return radians * 180 / PI;
}

static void a_cap_comes_on_top_of_the_height_over_the_rail(void **state)
{
	struct built b = built_from(CAP("kind: flat, thickness: 20"));
	(void)state;
	struct extent post = built_extent(built_part(&b, "newel", 0), 0);
	struct extent cap = built_extent(built_part(&b, "newel cap", 0), 0);
	struct slope_line nosing = flight_nosing_line(b.stair, &b.stair->flights[0]);
	assert_near(post.high.z, slope_at(nosing, post.high.x) + 900 + 75, 1e-9);
	assert_near(cap.low.z, post.high.z, 1e-9);
	assert_near(cap.high.z, post.high.z + 20, 1e-9);
	assert_near(cap.high.x - cap.low.x, 90 + 2 * 15, 1e-9);
	assert_near(cap.low.y, post.low.y - 15, 1e-9);
	arena_free(b.arena);
}

static void the_four_slopes_of_a_pyramid_meet_over_the_middle(void **state)
{
	struct built b = built_from(CAP("kind: pyramid, slope: 30, thickness: 18, shoulder: 0"));
	(void)state;
	const struct part *p = built_part(&b, "newel cap", 0);
	double rise = 60 * tan(PI / 6);
	assert_near(p->size.thickness, 18 + rise, 1e-9);
	assert_true(solids_contain(p->solids, vec3(60, 60, 18 + rise - 0.01)));
	assert_false(solids_contain(p->solids, vec3(60, 59, 18 + rise - 0.01)));
	/* half way down a slope, a hair to either side of it */
	assert_true(solids_contain(p->solids, vec3(30, 60, 18 + rise / 2 - 0.01)));
	assert_false(solids_contain(p->solids, vec3(30, 60, 18 + rise / 2 + 0.01)));
	arena_free(b.arena);
}

/* The underside against the fence, a side on the table: the cut comes in at the square edge's
 * upper line and out at the point, over the middle of the table's 120. */
static void a_block_is_sawn_with_the_blade_at_the_slope_and_half_the_width_high(void **state)
{
	struct built b = built_from(CAP("kind: pyramid, rise: 60, thickness: 18, shoulder: 4"));
	(void)state;
	const struct cap *c = built_part(&b, "newel cap", 0)->cap;
	assert_near(degrees(c->slope), 45, 1e-9); /* 60 up in 60 */
	assert_near(degrees(c->blade_tilt), 45, 1e-9);
	assert_near(c->blade_height, 60, 1e-9);
	assert_near(c->fence, 18, 1e-9);
	assert_near(c->height, 78, 1e-9);
	assert_near(c->slant, 60 * sqrt(2), 1e-9);
	arena_free(b.arena);
}

static void a_shoulder_leaves_a_ledge_and_the_slopes_where_they_were(void **state)
{
	struct built b = built_from(CAP("kind: pyramid, rise: 60, thickness: 18, shoulder: 4"));
	(void)state;
	const struct part *p = built_part(&b, "newel cap", 0);
	assert_near(p->cap->shoulder, 4, 1e-9);
	assert_near(p->cap->step, 4, 1e-9); /* at 45 degrees */
	assert_false(solids_contain(p->solids, vec3(3.9, 60, 18.1)));
	assert_true(solids_contain(p->solids, vec3(4.1, 60, 21.9)));
	assert_false(solids_contain(p->solids, vec3(4.1, 60, 22.2)));
	assert_true(solids_contain(p->solids, vec3(60, 60, 77.9)));
	arena_free(b.arena);
}

/* At 45 degrees the chart of power-saw manuals has mitre gauge 35.26, blade 30.00. */
static void a_mitred_pyramid_is_four_equal_pieces_on_a_plate(void **state)
{
	struct built b = built_from(
		CAP("kind: pyramid, build: mitred, slope: 45, thickness: 18, board: 12"));
	(void)state;
	const struct part *slope = built_part(&b, "newel cap slope", 0);
	assert_int_equal(slope->count, 2 * 4);
	assert_near(degrees(slope->cap->mitre_gauge), 35.26, 0.00501);
	assert_near(degrees(slope->cap->mitre_tilt), 30.00, 0.00501);
	assert_near(degrees(slope->start.mitre), 35.26, 0.00501);
	assert_near(slope->size.width, 60 * sqrt(2), 1e-9);
	assert_near(built_part(&b, "newel cap plate", 0)->size.thickness, 18, 1e-9);
	struct extent e = built_extent(slope, 0);
	struct extent plate = built_extent(built_part(&b, "newel cap plate", 0), 0);
	assert_near(e.low.z, plate.high.z, 1e-9);
	assert_near(e.high.z, plate.high.z + 60, 1e-9);
	arena_free(b.arena);
}

static void a_cap_may_be_on_the_bottom_newels_alone(void **state)
{
	struct built all = built_from(CAP("kind: chamfered"));
	struct built bottom = built_from(CAP("kind: chamfered, on: bottom"));
	(void)state;
	assert_int_equal(built_count(&all, "newel cap"), 2);
	assert_int_equal(built_count(&bottom, "newel cap"), 1);
	arena_free(all.arena);
	arena_free(bottom.arena);
}

static void the_moulding_under_a_cap_is_mitred_round_the_post(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: open, segments: [{risers: 10, run: "
				    "250}]}\n"
				    "newels: {section: 90, cap: {kind: flat, overhang: 15, "
				    "quarter_round: 9}}\n");
	(void)state;
	const struct part *p = built_part(&b, "newel quarter-round", 0);
	assert_int_equal(p->count, 2 * 4);
	assert_int_equal(p->stuff, STUFF_MOULDING);
	assert_near(p->size.length, 90 + 2 * 9, 1e-9); /* long point to long point */
	assert_near(degrees(p->start.mitre), 45, 1e-9);
	struct extent e = built_extent(p, 0), cap = built_extent(built_part(&b, "newel cap", 0), 0);
	assert_near(e.high.z, cap.low.z, 1e-9);
	arena_free(b.arena);
}

static void a_rise_too_steep_for_the_block_is_refused(void **state)
{
	(void)state;
	/* atan(120 / 60) */
	refused(CAP("kind: pyramid, rise: 120"),
		"newels.cap: a rise of 120 mm on a cap 120 mm wide slopes 63 degrees: too steep "
		"for "
		"the block");
}

static void slope_and_rise_together_are_refused(void **state)
{
	(void)state;
	refused(CAP("kind: pyramid, rise: 30, slope: 20"),
		"newels.cap: slope and rise cannot both be given");
}

static void boards_too_thick_for_a_mitred_pyramid_are_refused(void **state)
{
	(void)state;
	/* 18 / sin 15 = 69.5 is more than half of 120 */
	refused(CAP("kind: pyramid, build: mitred, slope: 15, board: 18"),
		"newels.cap: four pieces of 18 mm, mitred at 15 degrees, do not fit on a cap 120 "
		"mm "
		"wide");
}

static void a_rail_that_would_run_into_the_cap_is_refused(void **state)
{
	(void)state;
	/* 15 out of the face it has risen by 15 * 180/250, 10.8 */
	refused_for(JOB("open", ", above_rail: 5", "kind: flat"),
		"newels.above_rail: with 5 mm the rail runs into the cap",
		"write newels.above_rail: 11 mm");
}

/* The wall ends over the face of riser 3, the nosing 10 in front of it. */
static void a_newel_at_the_end_of_a_wall_stands_as_far_off_as_its_cap_stands_out(void **state)
{
	struct built b = built_from(JOB("{side: open, from_step: 3}", "", "kind: flat"));
	(void)state;
	assert_non_null(b.parts);
	assert_near(built_extent(built_part(&b, "wall right", 0), 0).high.x, 2 * 250, 1e-9);
	assert_near(built_extent(built_part(&b, "newel cap", 0), 0).low.x, 2 * 250, 1e-9);
	assert_near(built_extent(built_part(&b, "newel", 0), 0).low.x, 2 * 250 + 15, 1e-9);
	arena_free(b.arena);
}

/* The level run begins at a newel of its own, half of it beyond the opening's edge: 160 out from
 * the limit of the stair, inside which, by 16, the stair's own stands: (160 + 45 + 16 - 90) / 2. */
static void caps_that_would_run_into_each_other_are_refused(void **state)
{
	(void)state;
	refused("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"opening: {length: 2400, width: 1060, floor_thickness: 250}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"
		"rail: {height: 900, level_runs: [{side: right, direction: back, length: 1200}]}\n"
		"balusters: {section: 32, largest_gap: 120}\n"
		"newels: {section: 90, cap: {kind: flat, overhang: 80}}\n",
		"newels.cap: with an overhang of 80 mm the caps of the newels at the head of the "
		"raked rail, on the right and at the beginning of a level run, on the right run "
		"into each other: there is room for 65 mm");
}

/* The run's end stands over the newel at the foot of the stair, as near to it on plan as the run's
 * beginning is to the one at the head; and longer it would stand there still. */
static void caps_on_two_floors_do_not_meet(void **state)
{
	(void)state;
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"opening: {length: 2400, width: 1060, floor_thickness: 250}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"
		"rail: {height: 900, level_runs: [{side: right, direction: back, length: 2350}]}\n"
		"balusters: {section: 32, largest_gap: 120}\n"
		"newels: {section: 90, cap: {kind: flat, overhang: 80}}\n");
	const struct diag *d = b.diags.first;
	assert_non_null(d);
	assert_non_null(strstr(d->text, "at the head of the raked rail"));
	assert_null(strstr(d->text, "at the foot of the raked rail"));
	assert_non_null(strstr(d->hint, "by from_edge of the level run"));
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_cap_comes_on_top_of_the_height_over_the_rail),
		cmocka_unit_test(the_four_slopes_of_a_pyramid_meet_over_the_middle),
		cmocka_unit_test(
			a_block_is_sawn_with_the_blade_at_the_slope_and_half_the_width_high),
		cmocka_unit_test(a_shoulder_leaves_a_ledge_and_the_slopes_where_they_were),
		cmocka_unit_test(a_mitred_pyramid_is_four_equal_pieces_on_a_plate),
		cmocka_unit_test(a_cap_may_be_on_the_bottom_newels_alone),
		cmocka_unit_test(the_moulding_under_a_cap_is_mitred_round_the_post),
		cmocka_unit_test(a_rise_too_steep_for_the_block_is_refused),
		cmocka_unit_test(slope_and_rise_together_are_refused),
		cmocka_unit_test(boards_too_thick_for_a_mitred_pyramid_are_refused),
		cmocka_unit_test(a_rail_that_would_run_into_the_cap_is_refused),
		cmocka_unit_test(
			a_newel_at_the_end_of_a_wall_stands_as_far_off_as_its_cap_stands_out),
		cmocka_unit_test(caps_that_would_run_into_each_other_are_refused),
		cmocka_unit_test(caps_on_two_floors_do_not_meet),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
