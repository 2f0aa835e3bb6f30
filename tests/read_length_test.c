/* Reading lengths. One inch is 25.4 mm exactly (international yard and pound agreement, 1959), so
 * every typed length is compared with its exact fraction. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <math.h>
#include <stdio.h>

#include "pitchboard/length.h"

#define LENGTH(list) (sizeof(list) / sizeof((list)[0]))

static double inches(long long over, long long under)
{
	return (double)(over * 254) / (double)(under * 10);
}

struct typed {
	const char *text;
	long long over, under; /* inches */
};

static void reads_as(const struct typed *list, size_t n, enum units bare)
{
	struct arena *a = arena_new();

	for (size_t i = 0; i < n; i++) {
		struct length_result r = length_read(a, list[i].text, bare);
		if (r.problem || r.mm != inches(list[i].over, list[i].under))
			fail_msg("%s: %s, %.9f", list[i].text, r.problem ? r.problem : "read",
				r.mm);
	}
	arena_free(a);
}

static void what_carpenters_type_is_read_exactly(void **state)
{
	static const struct typed list[] = {
		{ "7 5/8\"", 61, 8 },
		{ "7 5/8", 61, 8 },
		{ "7-5/8", 61, 8 },
		{ "7-5/8\"", 61, 8 },
		{ "10-1/2", 21, 2 },
		{ "5/8", 5, 8 },
		{ "7.625", 61, 8 },
		{ ".5", 1, 2 },
		{ "66.5\"", 133, 2 },
		{ "66.5 in", 133, 2 },
		{ "66.5in.", 133, 2 },
		{ "7 5/8 inches", 61, 8 },
		{ "1 inch", 1, 1 },
		{ "5'-6 1/2\"", 133, 2 },
		{ "5' 6 1/2\"", 133, 2 },
		{ "5' 6 1/2", 133, 2 },
		{ "5'6", 66, 1 },
		{ "5' 6", 66, 1 },
		{ "5' 6''", 66, 1 },
		{ "5'-6\"", 66, 1 },
		{ "5 ft 6 in", 66, 1 },
		{ "5 feet 6 1/2 inches", 133, 2 },
		{ "5 ft. 6 in.", 66, 1 },
		{ "5'", 60, 1 },
		{ "5 1/2'", 66, 1 },
		{ "5.5 ft", 66, 1 },
		{ "8'-0\"", 96, 1 },
		{ "5' - 6 1/2\"", 133, 2 },
		{ " 7 5/8\" ", 61, 8 },
		{ "0", 0, 1 },
		{ "1/64", 1, 64 },
		{ "3' .5\"", 73, 2 },
	};

	(void)state;
	reads_as(list, LENGTH(list), UNITS_INCHES);
}

static void typographic_marks_are_read_like_typed_ones(void **state)
{
	static const struct typed list[] = {
		{ "7 5/8\u201d", 61, 8 },
		{ "5\u2019-6 1/2\u201d", 133, 2 },
		{ "5\u2032 6\u2033", 66, 1 },
		{ "7\u215d\"", 61, 8 },
		{ "7 \u215d", 61, 8 },
		{ "\u00bd", 1, 2 },
		{ "5'-6\u00bd\"", 133, 2 },
		{ "7 5\u20448", 61, 8 },
		{ "5'\u20136\"", 66, 1 },
		{ "7\u00a05/8\"", 61, 8 },
	};

	(void)state;
	reads_as(list, LENGTH(list), UNITS_INCHES);
}

/* Sums that public handbooks carry out between feet and inches. */
static void feet_become_inches_as_in_the_handbooks(void **state)
{
	static const struct typed list[] = {
		{ "8' 11\"", 107, 1 },     /* US Navy, NAVEDTRA 14044, ch. 6 */
		{ "12'-1 1/4\"", 581, 4 }, /* the same, total run, from memory */
		{ "7' 10\"", 94, 1 },      /* US Army, EN5156, para 2-18 */
		{ "10' 6\"", 126, 1 },     /* the same, total run */
		{ "8' 8 1/2\"", 209, 2 },  /* Hodgson and Williams 1917, fig. 33 */
		{ "9' 4\"", 112, 1 },      /* Carpenters' Guide, figs 51 and 52 */
		{ "6' 9\"", 81, 1 },       /* the same, headroom */
		{ "7' 2\"", 86, 1 },       /* ICS Building Construction vol. 3, headroom */
		{ "3' 5\"", 41, 1 },       /* the same, width of the well hole */
	};

	(void)state;
	reads_as(list, LENGTH(list), UNITS_MILLIMETRES);
}

static void metric_units_are_read_exactly(void **state)
{
	static const struct {
		const char *text;
		double mm;
	} list[] = { { "194", 194 }, { "194 mm", 194 }, { "194mm", 194 }, { "19.4 cm", 194 },
		{ "2.7 m", 2700 }, { "0.1 mm", 0.1 }, { "12.7", 12.7 } };
	struct arena *a = arena_new();

	(void)state;
	for (size_t i = 0; i < LENGTH(list); i++) {
		struct length_result r = length_read(a, list[i].text, UNITS_MILLIMETRES);
		assert_null(r.problem);
		assert_true(r.mm == list[i].mm);
	}
	arena_free(a);
}

static void a_unit_goes_before_the_jobs_own(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_true(length_read(a, "1\"", UNITS_MILLIMETRES).mm == 25.4);
	assert_true(length_read(a, "25.4 mm", UNITS_INCHES).mm == 25.4);
	assert_true(length_read(a, "1", UNITS_MILLIMETRES).mm == 1);
	assert_true(length_read(a, "1", UNITS_INCHES).mm == 25.4);
	arena_free(a);
}

static const char rule[] = "halves, quarters, eighths, 16ths, 32nds and 64ths are read; else "
			   "use a decimal point";
static const char marks[] = "feet and inches look like 5'-6 1/2\", the inch mark behind the "
			    "fraction";
static const char looks[] = "a length looks like 7 5/8\", 5'-6 1/2\" or 194 mm";
static const struct {
	const char *text, *problem, *hint;
} refusals[] = {
	{ "75/8", "\"75/8\" was read as 9 3/8\"", "did you mean 7 5/8\"?" },
	{ "711/16\"", "\"711/16\"\" was read as 44 7/16\"", "did you mean 7 11/16\"?" },
	{ "9/8", "\"9/8\" was read as 1 1/8\"", "write 1 1/8\"" },
	{ "7 9/8", "\"7 9/8\": the fraction 9/8 is not less than one", NULL },
	{ "7 1/3", "\"7 1/3\": a rule has no division of 1/3", rule },
	{ "7 1/128", "\"7 1/128\": a rule has no division of 1/128", rule },
	{ "1/0", "\"1/0\" divides by zero", NULL },
	{ "7 5/", "\"7 5/\": the fraction has no lower figure", NULL },
	{ "5-6", "\"5-6\" is ambiguous",
		"write feet and inches as 5'-6\", inches and a fraction as 5 3/4\"" },
	{ "-3", "\"-3\" is negative", "a length here is never below zero" },
	{ "19,4 cm", "\"19,4 cm\" has a comma", "write a decimal point" },
	{ "5' 200 mm", "\"5' 200 mm\" mixes feet or inches with metric units",
		"one length, one system" },
	{ "7 5/8\" 12 mm", "\"7 5/8\" 12 mm\" mixes feet or inches with metric units",
		"one length, one system" },
	{ "5' 14\"", "\"5' 14\"\" has twelve inches or more after the feet",
		"inches after feet stay under twelve: check the figures" },
	{ "5.5' 3\"", "\"5.5' 3\"\" gives inches after a part of a foot",
		"write whole feet, then inches" },
	{ "7 5/8\" pine", "\"7 5/8\" pine\": cannot read \"pine\"",
		"the length alone; behind a space and # you may say what you like" },
	{ "7 5/8 5/8", "\"7 5/8 5/8\": cannot read \"5/8\"", marks },
	{ "7\" 5/8", "\"7\" 5/8\": cannot read \"5/8\"", marks },
	{ "5 6", "\"5 6\": cannot read \"6\"", marks },
	{ "0x1F", "\"0x1F\": cannot read \"x1F\"", NULL },
	{ "1e3", "\"1e3\": cannot read \"e3\"", NULL },
	{ "nan", "\"nan\" is not a length", looks },
	{ "inf", "\"inf\" is not a length", looks },
	{ "tall", "\"tall\" is not a length", looks },
	{ "", "no length is given", looks },
	{ "123456789", "\"123456789\" has too many figures",
		"at most 7 figures, and 4 behind a decimal point" },
};

static void every_refusal_says_what_was_read_and_how_to_mend_it(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	for (size_t i = 0; i < LENGTH(refusals); i++) {
		struct length_result r = length_read(a, refusals[i].text, UNITS_INCHES);
		assert_non_null(r.problem);
		assert_string_equal(r.problem, refusals[i].problem);
		if (refusals[i].hint)
			assert_string_equal(r.hint, refusals[i].hint);
		else if (r.hint)
			fail_msg("%s: hint %s", refusals[i].text, r.hint);
	}
	arena_free(a);
}

static void a_fraction_in_a_job_of_millimetres_lacks_its_inch_mark(void **state)
{
	struct arena *a = arena_new();
	struct length_result r = length_read(a, "7 5/8", UNITS_MILLIMETRES);

	(void)state;
	assert_string_equal(r.problem, "\"7 5/8\" is a fraction of a millimetre");
	assert_string_equal(r.hint, "an inch mark is missing, or the job's units are wrong");
	arena_free(a);
}

/* To 40 feet, every 64th of an inch: what is lettered reads back as the very same length. */
static void every_graduation_comes_back_as_it_was_typed(void **state)
{
	const struct lettering typed = { UNITS_INCHES, 16, 64 };
	struct arena *a = arena_new();

	(void)state;
	for (long long n = 0; n <= 40 * 12 * 64; n++) {
		double mm = inches(n, 64);
		const char *feet = length_letter(a, typed, mm);
		const char *plain = length_letter_inches(a, typed, mm);
		if (length_read(a, feet, UNITS_INCHES).mm != mm ||
			length_read(a, plain, UNITS_INCHES).mm != mm)
			fail_msg("%lld/64 in became %s and %s", n, feet, plain);
	}
	arena_free(a);
}

static void every_tenth_of_a_millimetre_comes_back_as_it_was_typed(void **state)
{
	const struct lettering typed = { UNITS_MILLIMETRES, 1, 10 };
	struct arena *a = arena_new();

	(void)state;
	for (int n = 0; n <= 60000; n += 7) {
		double mm = n / 10.0;
		const char *text = length_letter(a, typed, mm);
		if (length_read(a, text, UNITS_MILLIMETRES).mm != mm)
			fail_msg("%d/10 mm became %s", n, text);
	}
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(what_carpenters_type_is_read_exactly),
		cmocka_unit_test(typographic_marks_are_read_like_typed_ones),
		cmocka_unit_test(feet_become_inches_as_in_the_handbooks),
		cmocka_unit_test(metric_units_are_read_exactly),
		cmocka_unit_test(a_unit_goes_before_the_jobs_own),
		cmocka_unit_test(every_refusal_says_what_was_read_and_how_to_mend_it),
		cmocka_unit_test(a_fraction_in_a_job_of_millimetres_lacks_its_inch_mark),
		cmocka_unit_test(every_graduation_comes_back_as_it_was_typed),
		cmocka_unit_test(every_tenth_of_a_millimetre_comes_back_as_it_was_typed),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
