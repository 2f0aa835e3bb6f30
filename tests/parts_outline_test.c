/*
 * Outlines: their arcs, and the box round them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "pitchboard/part.h"

static const double quarter = 0.41421356237309503; /* tan(90 degrees / 4) */

static void a_quarter_round_turns_about_the_middle_of_its_circle(void **state)
{
	struct corner_arc arc = corner_arc((struct corner){ { 10, 0 }, quarter }, vec(0, 10));
	(void)state;
	assert_near(arc.centre.x, 0, 1e-9);
	assert_near(arc.centre.y, 0, 1e-9);
	assert_near(arc.radius, 10, 1e-9);
	assert_near(arc.from, 0, 1e-12);
	assert_near(arc.to, PI / 2, 1e-12);
}

static void a_hollow_turns_the_other_way(void **state)
{
	struct corner_arc arc = corner_arc((struct corner){ { 10, 0 }, -quarter }, vec(0, 10));
	(void)state;
	assert_near(arc.centre.x, 10, 1e-9);
	assert_near(arc.centre.y, 10, 1e-9);
	assert_near(arc.to - arc.from, -PI / 2, 1e-12);
}

static void an_arc_passes_its_ends_and_its_middle(void **state)
{
	struct corner_arc arc = corner_arc((struct corner){ { 10, 0 }, quarter }, vec(0, 10));
	struct vec middle = corner_arc_point(arc, 0.5), end = corner_arc_point(arc, 1);
	(void)state;
	assert_near(middle.x, 10 * sqrt(0.5), 1e-9);
	assert_near(middle.y, 10 * sqrt(0.5), 1e-9);
	assert_near(end.x, 0, 1e-9);
	assert_near(end.y, 10, 1e-9);
}

/* A board 100 long whose right end is a half round of radius 20. */
static void the_box_round_an_outline_holds_its_arcs(void **state)
{
	static const struct corner corners[] = {
		{ { 0, 0 }, 0 },
		{ { 80, 0 }, 1 }, /* tan(180 degrees / 4) */
		{ { 80, 40 }, 0 },
		{ { 0, 40 }, 0 },
	};
	struct box b = outline_extent((struct outline){ corners, 4 });
	(void)state;
	assert_near(b.x0, 0, 1e-9);
	assert_near(b.y0, 0, 1e-9);
	assert_near(b.x1, 100, 1e-9);
	assert_near(b.y1, 40, 1e-9);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_quarter_round_turns_about_the_middle_of_its_circle),
		cmocka_unit_test(a_hollow_turns_the_other_way),
		cmocka_unit_test(an_arc_passes_its_ends_and_its_middle),
		cmocka_unit_test(the_box_round_an_outline_holds_its_arcs),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
