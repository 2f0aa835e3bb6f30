/*
 * The largest ball that passes through the balustrade.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "pitchboard/ball.h"

/* Nosings without projection or round: the triangle of riser, tread and nosing line is exact. */
#define STAIR(rise, run, more)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: inches}\n"                                                       \
	"floors: {total_rise: " rise "}\n"                                                         \
	"stair: {width: 36\", left: wall, right: open, segments: [{risers: 10, run: " run "}]}\n"  \
	"treads: {thickness: 1 1/4\", nosing: 0\", nosing_profile: half_round, "                   \
	"nosing_radius: 0\", side_overhang: 1 1/4\"}\n"                                            \
	"stringers: {open: sawtooth, least_throat: 2\"}\n" more

static const struct ball *ball_at(const struct built *b, enum ball_place place)
{
	const struct ball *k = balls_measure(b->arena, b->stair, b->parts);
	while (k && k->place != place)
		k = k->next;
	return k;
}

/* Inscribed circle of the triangle of rise R and run G: R + G - sqrt(R^2 + G^2); 5.098 in for
 * 7 3/4 by 10, 4.962 in for 7 by 11 (trade-facts 2.2, computed there). */
static void a_shoe_on_the_nosings_leaves_the_inscribed_circle(void **state)
{
	(void)state;
	struct built one = built_from(STAIR("77 1/2\"", "10\"", "infill: {shoe: yes}\n"));
	struct built other = built_from(STAIR("70\"", "11\"", "infill: {shoe: yes}\n"));
	assert_string_equal(built_complaint(&one), "");
	assert_near(ball_at(&one, BALL_TRIANGLE)->diameter / 25.4, 5.098, 0.001);
	assert_near(ball_at(&other, BALL_TRIANGLE)->diameter / 25.4, 4.962, 0.001);
	arena_free(one.arena);
	arena_free(other.arena);
}

/* Raised by v the triangle is larger by 1 + v / R: at 7 3/4 by 10 a ball of 6 in just passes at
 * 1.371 in (trade-facts 2.2, computed there). */
static void a_shoe_lifted_off_the_nosings_leaves_a_larger_one(void **state)
{
	(void)state;
	struct built b =
		built_from(STAIR("77 1/2\"", "10\"", "infill: {shoe: yes, shoe_lift: 1.371 in}\n"));
	assert_string_equal(built_complaint(&b), "");
	assert_near(ball_at(&b, BALL_TRIANGLE)->diameter / 25.4, 6.0, 0.001);
	arena_free(b.arena);
}

/* Three to a tread of 10 in, 1 1/4 in square: 10 / 3 - 1 1/4.  A limit that says "less than" is
 * held against it, so a hair too little would let the limit itself pass. */
static void between_balusters_it_is_the_clear_gap(void **state)
{
	(void)state;
	struct built b = built_from(STAIR("77 1/2\"", "10\"",
		"balusters: {section: 1 1/4\", per_tread: 3}\nnewels: {section: 3 1/2\"}\n"));
	const struct ball *ball = ball_at(&b, BALL_BETWEEN);
	assert_near(ball->diameter, (10 / 3.0 - 1.25) * 25.4, NEAR_ENOUGH);
	assert_true(ball->on_rake);
	assert_false(ball->on_left);
	arena_free(b.arena);
}

/* Three to a tread of 10 in, 1 1/4 in square, leave 10 / 3 - 1 1/4. */
#define BRACED(rows)                                                                               \
	STAIR("77 1/2\"", "10\"",                                                                  \
		"balusters: {section: 1 1/4\", per_tread: 3}\nnewels: {section: 3 1/2\"}\n"        \
		"infill: {kind: braced, cross_width: 1 1/2\", rows: [" rows "]}\n")

/* Heights are those of the middle over the tread, and half of 1 1/2 in is under it. */
static void a_cross_piece_near_the_tread_leaves_what_is_under_it(void **state)
{
	(void)state;
	struct built b = built_from(BRACED("{height: 2\", lie: level}"));
	assert_string_equal(built_complaint(&b), "");
	assert_near(ball_at(&b, BALL_UNDER_CROSS)->diameter, (2 - 0.75) * 25.4, 0.02);
	assert_near(ball_at(&b, BALL_OVER_CROSS)->diameter, (10 / 3.0 - 1.25) * 25.4, 0.02);
	assert_null(ball_at(&b, BALL_BETWEEN_CROSSES));
	arena_free(b.arena);
}

static void two_rows_leave_what_is_between_them(void **state)
{
	(void)state;
	struct built b =
		built_from(BRACED("{height: 12\", lie: level}, {height: 15\", lie: level}"));
	assert_string_equal(built_complaint(&b), "");
	assert_near(ball_at(&b, BALL_BETWEEN_CROSSES)->diameter, (15 - 12 - 1.5) * 25.4, 0.02);
	arena_free(b.arena);
}

/* 4 in plumb between the middles of two that rise 7 3/4 in 10: so far apart, square to them, less
 * their width; the balusters leave more. */
static void two_rows_on_the_rake_leave_what_is_square_to_them(void **state)
{
	(void)state;
	struct built b = built_from(BRACED("{height: 12\"}, {height: 16\"}"));
	assert_string_equal(built_complaint(&b), "");
	assert_near(ball_at(&b, BALL_BETWEEN_CROSSES)->diameter,
		(4 * 10 / hypot(10, 7.75) - 1.5) * 25.4, 0.02);
	arena_free(b.arena);
}

/* Bars are as far apart as is written, square to them. */
static void between_bars_it_is_the_gap_square_to_them(void **state)
{
	(void)state;
	struct built b = built_from(STAIR("77 1/2\"", "10\"", "infill: {kind: bars, bars: 7}\n"));
	assert_string_equal(built_complaint(&b), "");
	double cosine = 10 / sqrt(10 * 10 + 7.75 * 7.75);
	double height = 36 * cosine - 2.375; /* nosing line to the rail's underside */
	double gap = (height - 7 * 1.25) / 8;
	assert_near(fmax(ball_at(&b, BALL_BETWEEN)->diameter, 0) / 25.4, gap, 0.001);
	arena_free(b.arena);
}

/* A panel leaves nothing but its triangle. */
static void a_panel_lets_nothing_through_above_the_shoe(void **state)
{
	(void)state;
	struct built b = built_from(STAIR("77 1/2\"", "10\"", "infill: panel\n"));
	assert_string_equal(built_complaint(&b), "");
	for (const struct ball *k = balls_measure(b.arena, b.stair, b.parts); k; k = k->next)
		assert_true(k->place == BALL_TRIANGLE || k->diameter < 4);
	arena_free(b.arena);
}

static void the_place_is_where_the_circle_is_empty(void **state)
{
	(void)state;
	struct built b = built_from(STAIR("77 1/2\"", "10\"", "infill: {shoe: yes}\n"));
	const struct ball *ball = ball_at(&b, BALL_TRIANGLE);
	/* as far from the tread as from the riser */
	double r = ball->diameter / 2, step = floor(ball->at.z / (7.75 * 25.4)) * 7.75 * 25.4;
	assert_near(ball->at.z - step, r, 0.02);
	double riser = ceil(ball->at.x / 254) * 254;
	assert_near(riser - ball->at.x, r, 0.02);
	assert_int_equal(ball->step, (int)lround(riser / 254));
	arena_free(b.arena);
}

static void the_place_is_named_by_what_the_job_is_filled_in_with(void **state)
{
	(void)state;
	struct built bars = built_from(STAIR("77 1/2\"", "10\"", "infill: {kind: bars}\n"));
	struct built panel = built_from(STAIR("77 1/2\"", "10\"", "infill: {kind: panel}\n"));
	struct built braced = built_from(STAIR("77 1/2\"", "10\"", "infill: {kind: braced}\n"));
	assert_string_equal(ball_place_name(bars.stair->job, BALL_BETWEEN), "between bars");
	assert_string_equal(ball_place_name(panel.stair->job, BALL_BETWEEN), "between panels");
	assert_string_equal(ball_place_name(braced.stair->job, BALL_BETWEEN), "between balusters");
	arena_free(bars.arena);
	arena_free(panel.arena);
	arena_free(braced.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_shoe_on_the_nosings_leaves_the_inscribed_circle),
		cmocka_unit_test(a_shoe_lifted_off_the_nosings_leaves_a_larger_one),
		cmocka_unit_test(between_balusters_it_is_the_clear_gap),
		cmocka_unit_test(a_cross_piece_near_the_tread_leaves_what_is_under_it),
		cmocka_unit_test(two_rows_leave_what_is_between_them),
		cmocka_unit_test(two_rows_on_the_rake_leave_what_is_square_to_them),
		cmocka_unit_test(between_bars_it_is_the_gap_square_to_them),
		cmocka_unit_test(a_panel_lets_nothing_through_above_the_shoe),
		cmocka_unit_test(the_place_is_where_the_circle_is_empty),
		cmocka_unit_test(the_place_is_named_by_what_the_job_is_filled_in_with),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
