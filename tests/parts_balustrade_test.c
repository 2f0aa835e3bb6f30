/*
 * Newels, rail and balusters, and how equal pieces become one part.
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
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: " side ", segments: [{risers: 10, run: 250}]}\n"   \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32}\n"              \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {section: 90, above_rail: 70}\n"                                                  \
	"rail: {profile: square, width: 57, depth: 60, height: 900}\n"                             \
	"stringers: {open: sawtooth}\n" more

#define TWO "balusters: {section: 32, per_tread: 2, largest_gap: 120}\n"

static const double pitch = 0.6240230529767569; /* atan(180 / 250) */

static void a_rail_is_plumb_above_the_nosing_line(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	struct extent e = built_extent(rail, 0);
	struct slope_line nosing = flight_nosing_line(b.stair, &b.stair->flights[0]);
	/* its top at the upper end, where it meets the newel */
	assert_near(e.high.z, slope_at(nosing, e.high.x) + 900, 1e-9);
	assert_near(e.low.z, slope_at(nosing, e.low.x) + 900 - 60 / cos(pitch), 1e-9);
	arena_free(b.arena);
}

static void a_rail_is_as_long_as_from_long_point_to_long_point(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	/* from the bottom newel's back, 18, to the top newel's front, 2250 */
	assert_near(rail->size.length, (2250 - 18) / cos(pitch) + 60 * tan(pitch), 1e-9);
	assert_near(rail->start.bevel, pitch, 1e-12);
	assert_near(rail->end.bevel, pitch, 1e-12);
	arena_free(b.arena);
}

/* At its back face the bottom one, at its front face the top one. */
static void a_newel_stands_so_high_over_the_rail_where_it_meets_it(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	struct slope_line nosing = flight_nosing_line(b.stair, &b.stair->flights[0]);
	struct extent bottom = built_extent(built_part(&b, "newel", 0), 0);
	struct extent top = built_extent(built_part(&b, "newel", 1), 0);
	assert_near(bottom.high.z, slope_at(nosing, bottom.high.x) + 900 + 70, 1e-9);
	assert_near(top.high.z, slope_at(nosing, top.low.x) + 900 + 70, 1e-9);
	arena_free(b.arena);
}

static void the_top_newel_is_let_into_the_floor(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	struct extent e = built_extent(built_part(&b, "newel", 1), 0);
	assert_near(e.low.x, 2250, 1e-9);
	assert_near(e.low.z, 1770, 1e-9);
	arena_free(b.arena);
}

static void where_a_side_opens_a_newel_stands_on_the_tread(void **state)
{
	struct built b = built_from(JOB("{side: open, from_step: 4}", TWO));
	(void)state;
	struct extent newel = built_extent(built_part(&b, "newel", 0), 0);
	struct extent wall = built_extent(built_part(&b, "wall right", 0), 0);
	assert_near(newel.low.x, 750, 1e-9); /* face of riser 4 */
	assert_near(newel.low.z, 720, 1e-9);
	assert_near(wall.high.x, 750, 1e-9); /* there it ends, where the job says no more */
	arena_free(b.arena);
}

static void where_a_side_closes_the_rail_dies_into_the_wall(void **state)
{
	struct built b = built_from(JOB("{side: open, to_step: 5}", TWO));
	(void)state;
	struct extent rail = built_extent(built_part(&b, "rail", 0), 0);
	struct extent wall = built_extent(built_part(&b, "wall right", 0), 0);
	assert_near(rail.high.x, wall.low.x, 1e-9);
	assert_near(wall.low.x, 5 * 250 + 25, 1e-9); /* behind the return of tread 5 */
	assert_null(built_part(&b, "newel", 1));
	arena_free(b.arena);
}

static void the_first_baluster_of_every_tread_is_in_line_with_the_riser(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->baluster && i < p->count; i++) {
			double x = built_extent(p, i).low.x;
			double on_tread = x - 250 * floor(x / 250);
			assert_true(fabs(on_tread) < 1e-9 || fabs(on_tread - 125) < 1e-9);
		}
	arena_free(b.arena);
}

/* Two to a tread differ by half a rise (Hatfield, American House Carpenter). */
static void balusters_of_one_tread_differ_by_half_a_rise(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	const struct part *one = built_part(&b, "baluster", 0),
			  *other = built_part(&b, "baluster", 1);
	assert_near(fabs(one->baluster->long_point - other->baluster->long_point), 90, 1e-9);
	assert_near(one->baluster->long_point - one->baluster->short_point, 32 * 180.0 / 250, 1e-9);
	assert_null(built_part(&b, "baluster", 2));
	arena_free(b.arena);
}

static void no_baluster_stands_where_the_newel_does(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	/* 9 treads of 2, less the one that the bottom newel takes */
	assert_int_equal(built_count(&b, "baluster"), 17);
	arena_free(b.arena);
}

/* 250 / 2 - 32 = 93 between two on a tread, but 125 - 18 = 107 from the newel's back. */
static void the_gap_at_a_newel_counts_too(void **state)
{
	struct built two = built_from(JOB("open", "balusters: {section: 32, largest_gap: 107}\n"));
	struct built three =
		built_from(JOB("open", "balusters: {section: 32, largest_gap: 106}\n"));
	(void)state;
	assert_int_equal(built_count(&two, "baluster"), 17);
	assert_int_equal(built_count(&three, "baluster"), 26);
	arena_free(two.arena);
	arena_free(three.arena);
}

/* The newel's back face lies at 18, the first baluster clear of it at 125; between two, 93. */
static void too_few_to_a_tread_are_drawn_and_told_the_number_it_takes(void **state)
{
	struct built b = built_from(
		JOB("open", "balusters: {section: 32, per_tread: 2, largest_gap: 99}\n"));
	(void)state;
	assert_non_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"balusters: 2 to a tread leave a gap of 107 mm beside the bottom newel, more than "
		"largest_gap, 99 mm");
	assert_string_equal(b.diags.first->hint, "write balusters.per_tread: 3");
	arena_free(b.arena);
}

static void balusters_that_run_into_the_nosing_above_are_refused(void **state)
{
	struct built b = built_from(JOB("open", "balusters: {section: 45, per_tread: 4}\n"));
	(void)state;
	assert_null(b.parts);
	/* 250 / 4 = 62.5; 45 + 25 = 70 */
	assert_string_equal(built_complaint(&b),
		"4 balusters of 45 mm to a tread: the last one runs 8 mm into the nosing above");
	arena_free(b.arena);
}

static void on_a_housed_stringer_balusters_stand_on_its_edge(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: open, segments: [{risers: 10, run: "
				    "250}]}\nstringers: {open: housed, margin: 40}\n"
				    "rail: {width: 57, depth: 60, height: 900}\n"
				    "risers: {thickness: 18}\n");
	(void)state;
	const struct part *p = built_part(&b, "baluster", 0);
	/* nosing line + margin below, rail above: 900 less both, square sizes divided by cos */
	assert_near(p->baluster->long_point, 900 - 60 / cos(pitch) - 40 / cos(pitch), 1e-9);
	assert_near(p->baluster->short_point, p->baluster->long_point, 1e-9);
	assert_near(p->baluster->foot_rake, pitch, 1e-12);
	assert_null(built_part(&b, "baluster", 1));
	arena_free(b.arena);
}

static void marks_count_up_the_stair_within_a_family(void **state)
{
	struct built b = built_from(JOB("open", TWO));
	(void)state;
	assert_string_equal(built_part(&b, "newel", 0)->mark, "N1");
	assert_string_equal(built_part(&b, "newel", 1)->mark, "N2");
	assert_string_equal(built_part(&b, "rail", 0)->mark, "H1");
	assert_string_equal(built_part(&b, "tread body", 0)->mark, "T1");
	assert_string_equal(built_part(&b, "lower floor", 0)->mark, "");
	arena_free(b.arena);
}

static void two_runs_make_the_same_parts(void **state)
{
	struct built one = built_from(JOB("open", TWO)), other = built_from(JOB("open", TWO));
	(void)state;
	assert_string_equal(parts_dump(one.arena, one.parts), parts_dump(other.arena, other.parts));
	assert_non_null(strstr(parts_dump(one.arena, one.parts), "B1 baluster"));
	arena_free(one.arena);
	arena_free(other.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_rail_is_plumb_above_the_nosing_line),
		cmocka_unit_test(a_rail_is_as_long_as_from_long_point_to_long_point),
		cmocka_unit_test(a_newel_stands_so_high_over_the_rail_where_it_meets_it),
		cmocka_unit_test(the_top_newel_is_let_into_the_floor),
		cmocka_unit_test(where_a_side_opens_a_newel_stands_on_the_tread),
		cmocka_unit_test(where_a_side_closes_the_rail_dies_into_the_wall),
		cmocka_unit_test(the_first_baluster_of_every_tread_is_in_line_with_the_riser),
		cmocka_unit_test(balusters_of_one_tread_differ_by_half_a_rise),
		cmocka_unit_test(no_baluster_stands_where_the_newel_does),
		cmocka_unit_test(the_gap_at_a_newel_counts_too),
		cmocka_unit_test(too_few_to_a_tread_are_drawn_and_told_the_number_it_takes),
		cmocka_unit_test(balusters_that_run_into_the_nosing_above_are_refused),
		cmocka_unit_test(on_a_housed_stringer_balusters_stand_on_its_edge),
		cmocka_unit_test(marks_count_up_the_stair_within_a_family),
		cmocka_unit_test(two_runs_make_the_same_parts),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
