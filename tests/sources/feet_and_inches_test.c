/*
 * Feet and inches against exact fractions, with the sums that public handbooks carry out.
 *
 * The inch is 25.4 mm exactly (international yard and pound agreement, 1959).  Fractions are kept
 * here as whole numbers, so nothing in this file rounds.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <math.h>

#include "pitchboard/length.h"

static const struct lettering sixteenths = { UNITS_INCHES, 16, 64 };

static double mm(long long over, long long under)
{
	return (double)(over * 254) / (double)(under * 10);
}

/* Total rise as the handbook writes it, and divided into so many risers. */
static const struct layout {
	const char *total;
	long long inches, risers;
} layouts[] = {
	{ "8 ft 11 in", 107, 15 }, /* US Navy, NAVEDTRA 14044, ch. 6 */
	{ "7 ft 10 in", 94, 13 },  /* US Army, EN5156, paras 2-18 to 2-20 */
	{ "7 ft", 84, 12 },        /* Hodgson and Williams 1917, fig. 33 */
	{ "9 ft 4 in", 112, 16 },  /* Carpenters' Guide, figs 51 and 52 */
	{ "107 in", 107, 14 },     /* CMHC, Canadian Wood-Frame House Construction, fig. 139 */
};

enum { LAYOUTS = sizeof(layouts) / sizeof(*layouts) };

static void the_handbooks_total_rises_are_read_exactly(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	for (int i = 0; i < LAYOUTS; i++) {
		struct length_result r = length_read(a, layouts[i].total, UNITS_MILLIMETRES);
		assert_null(r.problem);
		assert_true(r.mm == mm(layouts[i].inches, 1));
	}
	arena_free(a);
}

/* 94/13 is 7.23; the Army manual says 7 1/4 for the square, and CMHC 7.64 for 107/14. */
static void unit_rises_are_lettered_to_the_nearest_graduation(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_string_equal(length_letter(a, sixteenths, mm(94, 13)), "7 1/4\"");
	assert_string_equal(length_letter(a, sixteenths, mm(107, 15)), "7 1/8\"");
	assert_string_equal(length_letter(a, sixteenths, mm(107, 14)), "7 5/8\"");
	assert_string_equal(length_letter(a, sixteenths, mm(84, 12)), "7\"");
	arena_free(a);
}

/* The nearest 16th to over/under inches, by whole numbers alone. */
static long long nearest_sixteenth(long long over, long long under)
{
	return (over * 32 + under) / (under * 2);
}

/* 13 times 7 1/4 is 94 1/4: positions are rounded each from the floor line, never step by step. */
static void running_positions_never_drift_from_the_exact_ones(void **state)
{
	(void)state;
	for (int i = 0; i < LAYOUTS; i++) {
		const struct layout *l = &layouts[i];
		for (long long n = 1; n <= l->risers; n++) {
			double at = mm(l->inches * n, l->risers);
			double lettered = length_lettered_value(sixteenths, at);
			assert_true(fabs(lettered -
					    mm(nearest_sixteenth(l->inches * n, l->risers), 16)) <
				1e-9);
		}
		assert_true(fabs(length_lettered_value(sixteenths, mm(l->inches, 1)) -
				    mm(l->inches, 1)) < 1e-9);
	}
}

/* Navy: 14 runs of 10 3/8 are 12 ft 1 1/4 (from memory).  Army: 12 of 10 1/2 are 10 ft 6.
 * Carpenters' Guide: 15 of 10 are 150 in, computed.  Hodgson and Williams: 11 of 9 1/2 are
 * 8 ft 8 1/2. */
static void total_runs_are_lettered_as_in_the_handbooks(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_string_equal(length_letter(a, sixteenths, mm(14 * 83, 8)), "12'-1 1/4\"");
	assert_string_equal(length_letter(a, sixteenths, mm(12 * 21, 2)), "10'-6\"");
	assert_string_equal(length_letter(a, sixteenths, mm(15 * 10, 1)), "12'-6\"");
	assert_string_equal(length_letter(a, sixteenths, mm(11 * 19, 2)), "8'-8 1/2\"");
	arena_free(a);
}

/* Every pair of 64ths and 16ths below a foot: typed, added and lettered as the exact fraction. */
static void sums_of_typed_lengths_are_the_exact_sums(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	for (long long i = 1; i < 12 * 64; i += 5)
		for (long long k = 1; k < 12 * 16; k += 7) {
			const char *first = arena_printf(a, "%lld %lld/64\"", i / 64, i % 64);
			const char *second = arena_printf(a, "%lld %lld/16\"", k / 16, k % 16);
			double sum = length_read(a, first, UNITS_INCHES).mm +
				length_read(a, second, UNITS_INCHES).mm;
			assert_string_equal(length_letter(a, sixteenths, sum),
				length_letter(a, sixteenths, mm(i + 4 * k, 64)));
		}
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_handbooks_total_rises_are_read_exactly),
		cmocka_unit_test(unit_rises_are_lettered_to_the_nearest_graduation),
		cmocka_unit_test(running_positions_never_drift_from_the_exact_ones),
		cmocka_unit_test(total_runs_are_lettered_as_in_the_handbooks),
		cmocka_unit_test(sums_of_typed_lengths_are_the_exact_sums),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
