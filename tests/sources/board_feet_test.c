/*
 * Board feet, and the quarter system, against dealers' tables.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <math.h>

#include "lists/nominal.h"
#include "pitchboard/list.h"

#define IN(inches) ((inches)*MM_PER_INCH)

static double feet(double thick, double wide, double inches_long)
{
	return board_feet(IN(thick), IN(wide), IN(inches_long));
}

static void a_board_of_one_by_six_by_eight_feet_is_four_board_feet(void **state)
{
	(void)state;
	assert_true(fabs(feet(1, 6, 96) - 4) < 1e-9);
}

static void five_quarter_counts_a_quarter_more(void **state)
{
	(void)state;
	assert_true(fabs(feet(1.25, 6, 96) - 5) < 1e-9);
}

/* 5/4 x 11 1/4 x 42: 4.1016, worked by hand from thickness x width x length / 144. */
static void a_five_quarter_tread_is_four_board_feet_and_a_tenth(void **state)
{
	(void)state;
	assert_true(fabs(feet(1.25, 11.25, 42) - 4.1016) < 5e-5);
}

static void stuff_thinner_than_an_inch_counts_as_an_inch(void **state)
{
	(void)state;
	assert_true(fabs(feet(0.75, 6, 96) - 4) < 1e-9);
}

/* Hardwood surfaced on two sides, the same figures in two dealers' tables. */
static const struct quarter {
	double rough, surfaced;
} quarters[] = { { 1, 13.0 / 16 }, { 1.25, 1 + 1.0 / 16 }, { 1.5, 1 + 5.0 / 16 }, { 2, 1.75 },
	{ 3, 2.75 }, { 4, 3.75 } };

enum { QUARTERS = sizeof(quarters) / sizeof(*quarters) };

static double bought_for(double inches)
{
	return nominal_board(UNITS_INCHES, IN(inches), 0).bought;
}

static void a_finished_thickness_comes_out_of_the_quarter_that_the_tables_name(void **state)
{
	(void)state;
	for (int i = 0; i < QUARTERS; i++)
		assert_true(fabs(bought_for(quarters[i].surfaced) - IN(quarters[i].rough)) < 1e-9);
}

static void a_sixty_fourth_more_takes_the_next_quarter(void **state)
{
	(void)state;
	for (int i = 0; i + 1 < QUARTERS; i++)
		assert_true(bought_for(quarters[i].surfaced + 1.0 / 64) > IN(quarters[i].rough));
	assert_true(bought_for(3.75 + 1.0 / 64) <= 0);
}

/* American Softwood Lumber Standard PS 20, dry. */
static const struct plank {
	double dressed, nominal;
} widths[] = { { 1.5, 2 }, { 2.5, 3 }, { 3.5, 4 }, { 4.5, 5 }, { 5.5, 6 }, { 7.25, 8 },
	{ 9.25, 10 }, { 11.25, 12 }, { 13.25, 14 } },
  thicknesses[] = { { 0.75, 1 }, { 1, 1.25 }, { 1.25, 1.5 }, { 1.5, 2 }, { 2.5, 3 }, { 3.5, 4 } };

static void planks_are_counted_in_the_nominal_size_of_ps_20(void **state)
{
	(void)state;
	for (int i = 0; i < (int)(sizeof(widths) / sizeof(*widths)); i++)
		assert_true(fabs(nominal_plank_width(UNITS_INCHES, IN(widths[i].dressed)) -
				    IN(widths[i].nominal)) < 1e-9);
	for (int i = 0; i < (int)(sizeof(thicknesses) / sizeof(*thicknesses)); i++)
		assert_true(fabs(nominal_plank_thickness(UNITS_INCHES, IN(thicknesses[i].dressed)) -
				    IN(thicknesses[i].nominal)) < 1e-9);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_board_of_one_by_six_by_eight_feet_is_four_board_feet),
		cmocka_unit_test(five_quarter_counts_a_quarter_more),
		cmocka_unit_test(a_five_quarter_tread_is_four_board_feet_and_a_tenth),
		cmocka_unit_test(stuff_thinner_than_an_inch_counts_as_an_inch),
		cmocka_unit_test(
			a_finished_thickness_comes_out_of_the_quarter_that_the_tables_name),
		cmocka_unit_test(a_sixty_fourth_more_takes_the_next_quarter),
		cmocka_unit_test(planks_are_counted_in_the_nominal_size_of_ps_20),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
