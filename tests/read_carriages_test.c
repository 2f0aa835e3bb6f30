/* How many carriages stand between the outer two stringers, and when that is a default. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <string.h>

#include "read_job.h"

static const struct assumption *assumed(const struct job *job, const char *label)
{
	for (const struct assumption *a = job->assumptions; a; a = a->next)
		if (strcmp(a->label, label) == 0)
			return a;
	return NULL;
}

/* 600 - 38 - 22.5 - 15 = 524.5 between the outer two: one carriage at 450, none at 600. */
static void carriages_are_spoken_of_only_where_there_are_some(void **state)
{
	const struct job *one = job_of("pitchboard: 1\n"
				       "job: {name: Test, units: millimetres}\n"
				       "floors: {total_rise: 2718}\n"
				       "stair: {width: 600}\n");
	const struct job *counted = job_of("pitchboard: 1\n"
					   "job: {name: Test, units: millimetres}\n"
					   "floors: {total_rise: 2718}\n"
					   "stair: {width: 600}\n"
					   "stringers: {middle_count: 0}\n");

	(void)state;
	assert_int_equal(job_carriages(one), 1);
	assert_non_null(assumed(one, "spacing of carriages, at most"));
	assert_non_null(assumed(one, "thickness of the middle carriages"));
	assert_int_equal(job_carriages(counted), 0);
	assert_null(assumed(counted, "spacing of carriages, at most"));
	assert_null(assumed(counted, "thickness of the middle carriages"));
}

/* Between walls, wedged: so wide, and what else is said. */
static const struct job *box_stair(const char *width, const char *more)
{
	return job_of(arena_printf(arena,
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2718}\n"
		"stair: {width: %s, left: wall, right: wall}\n"
		"stringers: {wall: {kind: housed, thickness: 30}%s\n",
		width, more));
}

/* The stringers stand 30 less than the width apart, centre to centre. */
static void housed_treads_span_a_metre_without_a_carriage(void **state)
{
	const struct job *narrow = box_stair("1030", "}"), *wide = box_stair("1032", "}");

	(void)state;
	assert_int_equal(job_carriages(narrow), 0);
	assert_int_equal(job_carriages(wide), 1);
	const struct assumption *span =
		assumed(narrow, "housed treads and risers span without a carriage, at most");
	assert_non_null(span);
	assert_string_equal(span->value, "1000");
	assert_null(assumed(wide, "spacing of carriages, at most"));
}

static void a_job_may_ask_for_carriages_under_them(void **state)
{
	(void)state;
	assert_int_equal(job_carriages(box_stair("900", ", spacing: 450}")), 1);
	assert_int_equal(job_carriages(box_stair("900", ", middle_count: 2}")), 2);
	assert_int_equal(job_carriages(box_stair("900", ", housed_span: 800}")), 1);
}

static void open_treads_between_housed_stringers_get_no_carriage(void **state)
{
	const struct job *job =
		box_stair("1200", "}\nrisers: {kind: open}\ntreads: {thickness: 40}");

	(void)state;
	assert_int_equal(job_carriages(job), 0);
	assert_null(assumed(job, "housed treads and risers span without a carriage, at most"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(carriages_are_spoken_of_only_where_there_are_some),
		cmocka_unit_test(housed_treads_span_a_metre_without_a_carriage),
		cmocka_unit_test(a_job_may_ask_for_carriages_under_them),
		cmocka_unit_test(open_treads_between_housed_stringers_get_no_carriage),
	};

	return cmocka_run_group_tests(tests, arena_open, arena_close);
}
