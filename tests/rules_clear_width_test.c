/*
 * Clear width of a flight, over the rail and at it.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "pitchboard/width.h"

#define STAIR(SIDES, MORE)                                                                         \
	"pitchboard: 1\njob: {name: Made up, units: millimetres}\n"                                \
	"floors: {total_rise: 2660}\n"                                                             \
	"stair: {width: 1000, " SIDES ", segments: [{risers: 14, run: 260}]}\n" MORE

static struct clear_width measure(const struct built *b, enum clear_at at)
{
	return clear_width_measure(b->arena, b->stair, b->parts, at);
}

static void between_walls_without_a_rail_all_of_it_is_clear(void **state)
{
	struct built b = built_from(STAIR("left: wall, right: wall", ""));
	struct clear_width w = measure(&b, CLEAR_OVER_RAIL);

	(void)state;
	assert_near(w.right, 0, 1e-6);
	assert_near(w.left, 1000, 1e-6);
	arena_free(b.arena);
}

/* 40 clear and 50 wide: it reaches 90 in from the left-hand wall, and not at all over its top. */
static void a_rail_on_the_wall_narrows_it_at_the_rail_only(void **state)
{
	struct built b = built_from(STAIR("left: wall, right: wall",
		"wall_rails: [{side: left, clearance: 40, profile: square, width: 50, depth: "
		"60}]\n"));
	struct clear_width at_rail = measure(&b, CLEAR_AT_RAIL);
	struct clear_width over = measure(&b, CLEAR_OVER_RAIL);

	(void)state;
	assert_near(at_rail.left, 910, 1e-6);
	assert_near(over.left, 1000, 1e-6);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(between_walls_without_a_rail_all_of_it_is_clear),
		cmocka_unit_test(a_rail_on_the_wall_narrows_it_at_the_rail_only),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
