/*
 * Fixings: the holes they want, and how a shop asks for them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

#include <cmocka.h>

#include "near.h"
#include "parts/fixing.h"

/* 1/16 in: trade facts, from memory. */
static void a_dowel_leaves_room_for_glue_at_either_end(void **state)
{
	struct bore b = dowel_bore((struct dowel){ 10, 50, INFINITY, INFINITY });
	(void)state;
	assert_near(b.size.depth, 25 + 1.6, 1e-9);
	assert_near(b.mate.depth, 25 + 1.6, 1e-9);
	assert_near(b.fixing_length, 50, 1e-9);
}

static void where_one_piece_is_thin_the_other_takes_more_of_the_dowel(void **state)
{
	struct bore b = dowel_bore((struct dowel){ 10, 50, INFINITY, 12 });
	(void)state;
	assert_near(b.mate.depth, 12, 1e-9);
	assert_near(b.size.depth, 50 - (12 - 1.6) + 1.6, 1e-9);
	assert_near(b.fixing_length, 50, 1e-9);
}

static void a_dowel_without_room_is_cut_shorter(void **state)
{
	struct bore b = dowel_bore((struct dowel){ 10, 50, 12, 15 });
	(void)state;
	assert_near(b.fixing_length, 12 + 15 - 2 * 1.6, 1e-9);
}

static void a_fastener_is_the_longest_sold_that_stays_within(void **state)
{
	(void)state;
	assert_near(fastener_screw_within(8, 65, UNITS_INCHES).length, 2.5 * 25.4, 1e-9);
	assert_near(fastener_screw_within(8, 65, UNITS_MILLIMETRES).length, 60, 1e-9);
	assert_near(fastener_brad_within(18, 5, UNITS_INCHES).length, 0, 0);
}

static void assert_asked_for(enum units units, struct fastener f, const char *words)
{
	struct arena *a = arena_new();
	struct lettering how = { .units = units, .fraction = units == UNITS_INCHES ? 16 : 1 };
	struct bore b = fastener_bore(f, 10);
	assert_string_equal(fixing_size(a, how, &b), words);
	arena_free(a);
}

static void screws_go_by_their_number_and_brads_by_their_gauge(void **state)
{
	(void)state;
	for (int n = 6; n <= 14; n += 2) {
		char words[32];
		snprintf(words, sizeof(words), "#%d x 2\"", n);
		assert_asked_for(UNITS_INCHES, fastener_screw(n, 50.8), words);
	}
	assert_asked_for(UNITS_INCHES, fastener_brad(18, 31.75), "18 gauge x 1 1/4\"");
	assert_asked_for(UNITS_INCHES, fastener_brad(15, 50.8), "15 gauge x 2\"");
}

/* 19 gauge is not on the shelf: 18 is nearer to it than 21, and 20 nearer to 21. */
static void a_gauge_that_is_not_sold_becomes_the_nearest_that_is(void **state)
{
	(void)state;
	assert_asked_for(UNITS_INCHES, fastener_brad(19, 50.8), "18 gauge x 2\"");
	assert_asked_for(UNITS_INCHES, fastener_brad(20, 50.8), "21 gauge x 2\"");
	assert_asked_for(UNITS_INCHES, fastener_brad(17, 50.8), "18 gauge x 2\"");
}

static void in_millimetres_both_go_by_their_thickness(void **state)
{
	(void)state;
	assert_asked_for(UNITS_MILLIMETRES, fastener_screw(8, 60), "4 x 60");
	assert_asked_for(UNITS_MILLIMETRES, fastener_brad(18, 30), "1.2 x 30");
}

/* A third of a string of 20 mm is 6.67 mm: no cutter is that wide. */
static void a_mortise_is_as_wide_as_a_cutter_that_is_sold(void **state)
{
	(void)state;
	assert_near(bit_within(UNITS_MILLIMETRES, 12, 20.0 / 3), 6, 1e-9);
	assert_near(bit_within(UNITS_INCHES, 12.7, 1.0625 * MM_PER_INCH / 3),
		5.0 / 16 * MM_PER_INCH, 1e-9);
	assert_near(bit_within(UNITS_MILLIMETRES, 5.5, 20.0 / 3), 5.5, 1e-9);
}

/* 2.4 mm is the drill of 3/32 in: by 16ths it would read 1/8. */
static void a_drill_is_lettered_as_it_is_sold(void **state)
{
	struct arena *a = arena_new();
	struct lettering inches = bit_lettering((struct lettering){ UNITS_INCHES, 16, 0 });
	struct lettering metric = bit_lettering((struct lettering){ UNITS_MILLIMETRES, 1, 0 });

	(void)state;
	assert_string_equal(length_letter_inches(a, inches, 2.4), "3/32\"");
	assert_string_equal(length_letter_inches(a, metric, 2.4), "2.4");
	arena_free(a);
}

/* Dowels of 9/16 in or of 13 mm are not sold. */
static void a_dowel_is_one_that_is_sold(void **state)
{
	(void)state;
	assert_near(dowel_within(UNITS_INCHES, 15.875, 15) / MM_PER_INCH, 0.5, 1e-9);
	assert_near(dowel_within(UNITS_INCHES, 15.875, 16) / MM_PER_INCH, 0.625, 1e-9);
	assert_near(dowel_within(UNITS_MILLIMETRES, 16, 13.9), 12, 1e-9);
	assert_near(dowel_within(UNITS_MILLIMETRES, 10, 5), 0, 1e-9);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_dowel_is_one_that_is_sold),
		cmocka_unit_test(a_dowel_leaves_room_for_glue_at_either_end),
		cmocka_unit_test(where_one_piece_is_thin_the_other_takes_more_of_the_dowel),
		cmocka_unit_test(a_dowel_without_room_is_cut_shorter),
		cmocka_unit_test(a_fastener_is_the_longest_sold_that_stays_within),
		cmocka_unit_test(screws_go_by_their_number_and_brads_by_their_gauge),
		cmocka_unit_test(a_gauge_that_is_not_sold_becomes_the_nearest_that_is),
		cmocka_unit_test(in_millimetres_both_go_by_their_thickness),
		cmocka_unit_test(a_mortise_is_as_wide_as_a_cutter_that_is_sold),
		cmocka_unit_test(a_drill_is_lettered_as_it_is_sold),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
