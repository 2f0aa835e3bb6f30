/*
 * Headroom, measured plumb from the nosing line.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define JOB                                                                                        \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: inches}\n"                                                       \
	"floors: {total_rise: 112\"}\n"                                                            \
	"stair: {width: 36\", segments: [{risers: 16, run: 10\"}]}\n"                              \
	"treads: {nosing: 1\"}\n"                                                                  \
	"risers: {thickness: 3/4\"}\n"

static void without_an_opening_headroom_is_not_checked(void **state)
{
	struct built b = built_from(JOB);
	(void)state;
	assert_int_equal(b.stair->headroom.state, HEADROOM_NOT_CHECKED);
	arena_free(b.arena);
}

/* The header stands at 150 3/4 in; an opening as long as that less 19 has its edge over the third
 * nosing, 21 in high: 102 - 21 = 81, as the Carpenters' Guide works it ("Stairs", figs 51-52). */
static void the_least_headroom_is_under_the_edge_of_the_opening(void **state)
{
	struct built b = built_from(
		JOB "opening: {length: 131 3/4\", ceiling_height: 102\", headroom: 80\"}\n");
	const struct headroom *h = &b.stair->headroom;
	(void)state;
	assert_int_equal(h->state, HEADROOM_ENOUGH);
	assert_near(b.stair->opening.x0 / 25.4, 19, 1e-9);
	assert_near(h->nosing_z / 25.4, 21, 1e-9);
	assert_near(h->least / 25.4, 81, 1e-9);
	arena_free(b.arena);
}

static void headroom_below_what_is_wanted_is_short(void **state)
{
	struct built b =
		built_from(JOB "opening: {length: 130\", ceiling_height: 102\", headroom: 80\"}\n");
	(void)state;
	/* 1 3/4 in nearer the top costs 1 3/4 * 7 / 10 in */
	assert_int_equal(b.stair->headroom.state, HEADROOM_SHORT);
	assert_near(b.stair->headroom.least / 25.4, 81 - 1.75 * 0.7, 1e-9);
	arena_free(b.arena);
}

static void a_low_ceiling_above_counts_at_the_upper_floor(void **state)
{
	struct built b = built_from(JOB "opening: {length: 12', ceiling_height: 102\", "
					"upper_ceiling_height: 78\", headroom: 80\"}\n");
	const struct headroom *h = &b.stair->headroom;
	(void)state;
	assert_int_equal(h->state, HEADROOM_SHORT);
	assert_near(h->least / 25.4, 78, 1e-9);
	assert_near(h->x / 25.4, 149, 1e-9); /* nosing of the upper floor: 150 - 1 */
	arena_free(b.arena);
}

static void an_opening_longer_than_the_stair_is_measured_from_the_floor(void **state)
{
	struct built b =
		built_from(JOB "opening: {length: 160\", ceiling_height: 102\", headroom: 80\"}\n");
	(void)state;
	assert_near(b.stair->headroom.least / 25.4, 102, 1e-9);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(without_an_opening_headroom_is_not_checked),
		cmocka_unit_test(the_least_headroom_is_under_the_edge_of_the_opening),
		cmocka_unit_test(headroom_below_what_is_wanted_is_short),
		cmocka_unit_test(a_low_ceiling_above_counts_at_the_upper_floor),
		cmocka_unit_test(an_opening_longer_than_the_stair_is_measured_from_the_floor),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
