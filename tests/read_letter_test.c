/* Lettering of lengths and angles. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <math.h>

#include "pitchboard/length.h"
#include "pitchboard/vec.h"

static const struct lettering sixteenths = { UNITS_INCHES, 16, 0 };

static void letters(struct lettering how, double mm, const char *expected)
{
	struct arena *a = arena_new();

	assert_string_equal(length_letter(a, how, mm), expected);
	arena_free(a);
}

/* The hyphen between feet and inches and the zero inch that is kept: the survey manuals of the
 * US National Park Service write 3'-10 1/4"; zero inches as 8'-0" from memory. */
static void feet_are_written_from_twelve_inches_on(void **state)
{
	(void)state;
	letters(sixteenths, 7.625 * 25.4, "7 5/8\"");
	letters(sixteenths, 46.25 * 25.4, "3'-10 1/4\"");
	letters(sixteenths, 11.9375 * 25.4, "11 15/16\"");
	letters(sixteenths, 12 * 25.4, "1'-0\"");
	letters(sixteenths, 96 * 25.4, "8'-0\"");
	letters(sixteenths, 60.5 * 25.4, "5'-0 1/2\"");
	letters(sixteenths, 66.5 * 25.4, "5'-6 1/2\"");
	letters(sixteenths, 0.5 * 25.4, "1/2\"");
	letters(sixteenths, 0, "0\"");
}

static void what_rounds_up_to_a_foot_is_written_as_a_foot(void **state)
{
	(void)state;
	letters(sixteenths, 11.99 * 25.4, "1'-0\"");
	letters(sixteenths, 23.99 * 25.4, "2'-0\"");
}

/* 107/14: the unit rise of trade tables' worked examples, computed. */
static void a_computed_length_is_rounded_to_the_jobs_fraction(void **state)
{
	const struct lettering thirty_seconds = { UNITS_INCHES, 32, 0 };
	const struct lettering eighths = { UNITS_INCHES, 8, 0 };

	(void)state;
	letters(sixteenths, 107.0 / 14 * 25.4, "7 5/8\"");
	letters(thirty_seconds, 107.0 / 14 * 25.4, "7 21/32\"");
	letters(eighths, 94.0 / 13 * 25.4, "7 1/4\"");
}

static void a_length_on_the_finest_graduation_is_not_rounded(void **state)
{
	(void)state;
	letters((struct lettering){ UNITS_INCHES, 16, 64 }, 7.015625 * 25.4, "7 1/64\"");
	letters((struct lettering){ UNITS_INCHES, 8, 16 }, 1.0625 * 25.4, "1 1/16\"");
	letters((struct lettering){ UNITS_MILLIMETRES, 1, 2 }, 19.5, "19.5");
}

/* A computed 24 25/64 in a job in which nobody spoke of 64ths. */
static void a_length_on_a_graduation_finer_than_that_is_rounded(void **state)
{
	(void)state;
	letters(sixteenths, 24.390625 * 25.4, "2'-0 3/8\"");
	letters((struct lettering){ UNITS_INCHES, 16, 32 }, 24.390625 * 25.4, "2'-0 3/8\"");
	letters((struct lettering){ UNITS_MILLIMETRES, 1, 0 }, 19.4, "19");
	letters((struct lettering){ UNITS_MILLIMETRES, 1, 2 }, 19.4, "19");
}

static void a_length_lies_on_the_coarsest_graduation_it_can(void **state)
{
	(void)state;
	assert_int_equal(length_graduation(UNITS_INCHES, 7 * 25.4), 1);
	assert_int_equal(length_graduation(UNITS_INCHES, 7.625 * 25.4), 8);
	assert_int_equal(length_graduation(UNITS_INCHES, 7.015625 * 25.4), 64);
	assert_int_equal(length_graduation(UNITS_INCHES, 194), 1); /* on none */
	assert_int_equal(length_graduation(UNITS_MILLIMETRES, 19.5), 2);
	assert_int_equal(length_graduation(UNITS_MILLIMETRES, 25.4), 10);
}

static void millimetres_carry_no_unit(void **state)
{
	const struct lettering whole = { UNITS_MILLIMETRES, 1, 0 };
	const struct lettering halves = { UNITS_MILLIMETRES, 2, 0 };
	const struct lettering tenths = { UNITS_MILLIMETRES, 10, 0 };

	(void)state;
	letters(whole, 194, "194");
	letters(whole, 2718.0 / 14, "194");
	letters(halves, 181.3, "181.5");
	letters(halves, 181.27, "181.5");
	letters(tenths, 2718.0 / 14, "194.1");
	letters(whole, 12345, "12345");
}

static void nothing_below_zero_is_lettered_as_minus_nothing(void **state)
{
	(void)state;
	letters(sixteenths, -0.001, "0\"");
	letters(sixteenths, -1.25 * 25.4, "-1 1/4\"");
	letters(sixteenths, -13 * 25.4, "-1'-1\"");
	letters((struct lettering){ UNITS_MILLIMETRES, 1, 0 }, -0.2001, "0");
	letters((struct lettering){ UNITS_MILLIMETRES, 1, 0 }, -40, "-40");
}

static void running_positions_stay_in_inches(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_string_equal(length_letter_inches(a, sixteenths, 145.25 * 25.4), "145 1/4\"");
	arena_free(a);
}

static void the_lettered_value_is_what_the_figure_says(void **state)
{
	(void)state;
	assert_true(
		fabs(length_lettered_value(sixteenths, 107.0 / 14 * 25.4) - 7.625 * 25.4) < 1e-9);
	assert_true(length_lettered_value((struct lettering){ UNITS_MILLIMETRES, 1, 0 }, 194.14) ==
		194);
	assert_true(fabs(length_lettered_value(sixteenths, -1.01 * 25.4) + 25.4) < 1e-9);
}

/* WAC 296-24-74010, reprint of OSHA table D-1: rise 7 1/2, run 10 is 36 deg 52 min. */
static void an_angle_is_lettered_to_a_tenth_of_a_degree(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_string_equal(angle_letter(a, atan2(7.5, 10)), "36.9\u00b0");
	assert_string_equal(angle_letter(a, PI / 4), "45.0\u00b0");
	assert_string_equal(angle_letter(a, -PI / 4), "-45.0\u00b0");
	assert_string_equal(angle_letter(a, -0.0001), "0.0\u00b0");
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(feet_are_written_from_twelve_inches_on),
		cmocka_unit_test(what_rounds_up_to_a_foot_is_written_as_a_foot),
		cmocka_unit_test(a_computed_length_is_rounded_to_the_jobs_fraction),
		cmocka_unit_test(a_length_on_the_finest_graduation_is_not_rounded),
		cmocka_unit_test(a_length_on_a_graduation_finer_than_that_is_rounded),
		cmocka_unit_test(a_length_lies_on_the_coarsest_graduation_it_can),
		cmocka_unit_test(millimetres_carry_no_unit),
		cmocka_unit_test(nothing_below_zero_is_lettered_as_minus_nothing),
		cmocka_unit_test(running_positions_stay_in_inches),
		cmocka_unit_test(the_lettered_value_is_what_the_figure_says),
		cmocka_unit_test(an_angle_is_lettered_to_a_tenth_of_a_degree),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
