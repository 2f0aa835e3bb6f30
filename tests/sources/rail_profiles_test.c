/*
 * Rail profiles against plain geometry and against what IRC 2018 R311.7.8.5 asks of a rail that can
 * be grasped; the length of a rail against a worked stair.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "parts/profile.h"

#define IN(x) ((x)*25.4)

static struct rail_profile struck(struct arena *a, struct profile_sizes z)
{
	assert_null(profile_fault_of(z).key);
	return profile_make(a, z);
}

/* pi times 1 1/2 is 4.712. */
static void a_round_rail_is_pi_diameters_about(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct rail_profile p =
		struck(a, (struct profile_sizes){ PROFILE_ROUND, IN(1.5), IN(1.5), 0, 0 });
	assert_near(p.perimeter, IN(4.712), IN(0.0005));
	assert_near(p.diameter, IN(1.5), 1e-9);
	assert_near(p.largest, IN(1.5), 1e-9);
	assert_near(p.edge_radius, IN(0.75), 1e-9);
	arena_free(a);
}

/* Each eased corner saves two radii and costs a quarter of a circle. */
static void a_square_rail_loses_eight_radii_and_gains_a_circle(void **state)
{
	struct arena *a = arena_new();
	struct profile_sizes z = { PROFILE_SQUARE, 57, 60, 5, 0 };
	(void)state;
	struct rail_profile p = struck(a, z);
	assert_near(p.perimeter, 2 * (57 + 60) - 8 * 5 + 2 * PI * 5, 1e-9);
	/* from one corner's round to the opposite one's */
	assert_near(p.largest, hypot(47, 50) + 2 * 5, 1e-4);
	assert_near(p.edge_radius, 5, 1e-9);
	assert_near(p.flat, 47, 1e-9);
	z.edge_radius = 0;
	assert_near(struck(a, z).edge_radius, 0, 1e-12);
	arena_free(a);
}

/* The chord where a circle of radius 25 is cut 18 from its centre: 2 sqrt(25 25 - 18 18). */
static void a_round_rail_is_flat_where_it_is_cut(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct rail_profile p = struck(a, (struct profile_sizes){ PROFILE_ROUND, 50, 43, 0, 0 });
	assert_near(p.flat, 2 * sqrt(25.0 * 25 - 18 * 18), 1e-9);
	assert_near(p.diameter, 0, 1e-12);
	assert_near(p.width, 50, 1e-9);
	assert_near(p.depth, 43, 1e-9);
	arena_free(a);
}

/* Type I, not round: perimeter of 4 to 6 1/4 in and no more than 2 1/4 in across (read); edges of
 * 0.01 in or more (from memory). */
static void the_usual_flat_oval_can_be_grasped_as_type_i(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct rail_profile p =
		struck(a, (struct profile_sizes){ PROFILE_FLAT_OVAL, IN(2.25), IN(1.375), 0, 0 });
	assert_true(p.perimeter >= IN(4) && p.perimeter <= IN(6.25));
	assert_true(p.largest <= IN(2.25) + 1e-6);
	assert_true(p.edge_radius >= IN(0.01));
	assert_near(p.recess.depth, 0, 1e-12);
	arena_free(a);
}

/* Type II, a perimeter over 6 1/4 in: the recess starts within 3/4 in of the tallest part, is 5/16
 * deep within 7/8 under the widest, and goes on so for 3/8 to 1 3/4 in or more under the top
 * (read); 1 1/4 to 2 3/4 in wide above it (from memory). */
static void the_usual_moulded_rail_can_be_grasped_as_type_ii(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct rail_profile p = struck(a,
		(struct profile_sizes){ PROFILE_MOULDED, IN(2.25), IN(2.375), IN(0.125),
			IN(0.375) });
	struct rail_recess r = rail_recess_at_least(&p, IN(5.0 / 16));
	assert_true(p.perimeter > IN(6.25));
	assert_true(r.start <= IN(0.75));
	assert_true(r.from - r.start <= IN(0.875));
	assert_true(r.to - r.from >= IN(0.375));
	assert_true(r.to >= IN(1.75));
	assert_true(r.width_above >= IN(1.25) && r.width_above <= IN(2.75));
	assert_true(p.edge_radius >= IN(0.01));
	arena_free(a);
}

/* It is as deep as it was asked to be, and no deeper. */
static void a_recess_is_measured_as_deep_as_it_was_struck(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct rail_profile p = struck(a, (struct profile_sizes){ PROFILE_MOULDED, 57, 60, 3, 10 });
	struct rail_recess deeper = rail_recess_at_least(&p, 10.1);
	assert_near(p.recess.depth, 10, 1e-9);
	assert_near(deeper.to - deeper.from, 0, 1e-9);
	assert_near(p.depth, 60, 1e-9);
	assert_near(p.width, 57, 1e-9);
	arena_free(a);
}

static void a_moulded_rail_too_shallow_for_its_recess_is_refused(void **state)
{
	(void)state;
	struct profile_fault wrong =
		profile_fault_of((struct profile_sizes){ PROFILE_MOULDED, 57, 20, 2, 10 });
	assert_string_equal(wrong.key, "recess");
	wrong = profile_fault_of((struct profile_sizes){ PROFILE_MOULDED, 40, 60, 3, 14 });
	assert_string_equal(wrong.key, "recess");
	assert_near(wrong.most, 12, 1e-9);
}

/* US Army Subcourse EN5156, paras 2-18 to 2-20: 94 in on 13 risers and 12 treads of 10 1/2 in;
 * twelve steps on the slope are 152.99 in (12 times 12.7489).  With no newels the rail is cut plumb
 * over the first riser and over the last; its long points lie apart by the depth's share more. */
static void a_rail_over_twelve_steps_is_twelve_step_diagonals_long(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Army, units: inches}\nfloors: {total_rise: 94\"}\n"
		"stair: {width: 36\", left: wall, right: open, segments: [{risers: 13, run: 10 "
		"1/2\"}]}\n"
		"newels: {bottom: no, top: no}\n"
		"rail: {profile: square, width: 2 1/4\", depth: 2 3/8\"}\n");
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	assert_non_null(rail);
	double lap = rail->size.thickness * tan(rail->rail->pitch);
	assert_near(rail->size.length - lap, IN(152.99), IN(0.005));
	assert_near(rail->rail->between, IN(126), 1e-6);
	arena_free(b.arena);
}

/* Half circles close it: two flats of 100 - 30, and a circle of 30 about. */
static void a_flat_oval_rail_much_wider_than_deep_ends_in_half_rounds(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct rail_profile p =
		struck(a, (struct profile_sizes){ PROFILE_FLAT_OVAL, 100, 30, 3, 0 });
	assert_near(p.flat, 70, 1e-9);
	assert_near(p.perimeter, 2 * 70 + PI * 30, 1e-9);
	assert_near(p.edge_radius, 15, 1e-9);
	assert_near(p.recess.depth, 0, 1e-12);
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_round_rail_is_pi_diameters_about),
		cmocka_unit_test(a_square_rail_loses_eight_radii_and_gains_a_circle),
		cmocka_unit_test(a_round_rail_is_flat_where_it_is_cut),
		cmocka_unit_test(the_usual_flat_oval_can_be_grasped_as_type_i),
		cmocka_unit_test(the_usual_moulded_rail_can_be_grasped_as_type_ii),
		cmocka_unit_test(a_recess_is_measured_as_deep_as_it_was_struck),
		cmocka_unit_test(a_moulded_rail_too_shallow_for_its_recess_is_refused),
		cmocka_unit_test(a_rail_over_twelve_steps_is_twelve_step_diagonals_long),
		cmocka_unit_test(a_flat_oval_rail_much_wider_than_deep_ends_in_half_rounds),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
