/*
 * Landings and their doors on plan: how much floor a swinging leaf leaves before the stair.
 *
 * The stair is 900 mm wide between a wall on the left and an open side; ten risers, nine runs of
 * 250 mm.  The landing at its foot is 1200 mm deep and 1300 mm wide: 400 mm past the open side.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "pitchboard/landing.h"

#define STAIR(landings)                                                                            \
	"pitchboard: 1\njob: {name: Made up, units: millimetres}\nfloors: {total_rise: 1800}\n"    \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"landings: {" landings "}\n"

#define AT_FOOT(door) STAIR("foot: {depth: 1200, width: 1300, doors: [{" door "}]}")

static double clear_at(const char *job, enum landing_place place)
{
	struct built b = built_from(job);

	if (!b.stair)
		fail_msg("%s", built_complaint(&b));
	double clear = door_clear(b.stair, place, &b.stair->job->landings.at[place].doors[0]);
	arena_free(b.arena);
	return clear;
}

static void a_landing_is_wider_on_the_open_side(void **state)
{
	struct built b = built_from(STAIR("foot: {depth: 1200, width: 1300}"));
	struct box l = landing_box(b.stair, LANDING_FOOT);
	(void)state;
	assert_near(l.x0, -1200, 1e-9);
	assert_near(l.x1, 0, 1e-9);
	assert_near(l.y0, -400, 1e-9);
	assert_near(l.y1, 900, 1e-9);
	arena_free(b.arena);
}

static double head_from(const char *left)
{
	struct arena *a = arena_new();
	struct built b = built_from(arena_printf(a,
		"pitchboard: 1\njob: {name: Made up, units: millimetres}\n"
		"floors: {total_rise: 1800}\nstair: {width: 900, left: %s, right: open, segments: "
		"[{risers: 10, run: 250}]}\nlandings: {head: {depth: 1000, width: 1300}}\n",
		left));
	double y0 = landing_box(b.stair, LANDING_HEAD).y0;
	arena_free(b.arena);
	arena_free(a);
	return y0;
}

/* Nine steps: open to the ninth is open to the top. */
static void a_side_that_is_open_to_the_last_step_has_no_wall_at_the_head(void **state)
{
	(void)state;
	assert_near(head_from("open"), -200, 1e-9);
	assert_near(head_from("{side: open, to_step: 9}"), -200, 1e-9);
	assert_near(head_from("{side: open, to_step: 8}"), -400, 1e-9);
}

/* The leaf of 800 mm comes within 1200 - 800 of the riser. */
static void a_door_in_the_end_wall_leaves_the_depth_less_its_leaf(void **state)
{
	(void)state;
	assert_near(clear_at(AT_FOOT("wall: end, hinge: 500, leaf: 800"), LANDING_FOOT), 400, 1e-9);
}

/* Its hinge is 300 mm beside the stair: there the leaf reaches sqrt(500^2 - 300^2) = 400 mm. */
static void beside_the_stair_only_what_reaches_into_its_width_counts(void **state)
{
	(void)state;
	assert_near(clear_at(AT_FOOT("wall: end, hinge: 100, leaf: 500"), LANDING_FOOT), 800, 1e-9);
	assert_true(clear_at(AT_FOOT("wall: end, hinge: 350, leaf: 350, lies: nearer"),
			    LANDING_FOOT) == INFINITY);
}

static void in_a_side_wall_the_hinge_or_the_leaf_is_nearest(void **state)
{
	(void)state;
	assert_near(clear_at(AT_FOOT("wall: left, hinge: 300, leaf: 700"), LANDING_FOOT), 300,
		1e-9);
	assert_near(clear_at(AT_FOOT("wall: left, hinge: 1000, leaf: 700, lies: nearer"),
			    LANDING_FOOT),
		300, 1e-9);
}

static void a_door_may_swing_over_the_steps(void **state)
{
	(void)state;
	assert_near(clear_at(STAIR("head: {depth: 1000, width: 900, doors: [{wall: left, hinge: "
				   "500, leaf: 700, lies: nearer}]}"),
			    LANDING_HEAD),
		-200, 1e-9);
}

static void a_door_that_opens_out_leaves_all_of_it(void **state)
{
	(void)state;
	assert_true(clear_at(AT_FOOT("wall: end, hinge: 500, leaf: 800, opens: out"),
			    LANDING_FOOT) == INFINITY);
}

static void a_door_without_a_place_is_refused(void **state)
{
	static const char *const jobs[] = {
		STAIR("foot: {width: 1300, doors: [{wall: end, hinge: 100, leaf: 800}]}"),
		STAIR("head: {depth: 1300, doors: [{wall: right, hinge: 100, leaf: 800}]}"),
		AT_FOOT("wall: end, hinge: 600, leaf: 800"),
		AT_FOOT("wall: right, hinge: 500, leaf: 800"),
	};
	(void)state;
	for (size_t i = 0; i < sizeof(jobs) / sizeof(jobs[0]); i++) {
		struct built b = built_from(jobs[i]);
		assert_null(b.stair);
		assert_non_null(strstr(built_complaint(&b), "landings.doors"));
		arena_free(b.arena);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_landing_is_wider_on_the_open_side),
		cmocka_unit_test(a_side_that_is_open_to_the_last_step_has_no_wall_at_the_head),
		cmocka_unit_test(a_door_in_the_end_wall_leaves_the_depth_less_its_leaf),
		cmocka_unit_test(beside_the_stair_only_what_reaches_into_its_width_counts),
		cmocka_unit_test(in_a_side_wall_the_hinge_or_the_leaf_is_nearest),
		cmocka_unit_test(a_door_may_swing_over_the_steps),
		cmocka_unit_test(a_door_that_opens_out_leaves_all_of_it),
		cmocka_unit_test(a_door_without_a_place_is_refused),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
