/*
 * The library in a process whose locale writes a comma where a point is meant.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "pitchboard/job.h"

static const char yaml[] = "pitchboard: 1\n"
			   "job: {name: Comma, units: millimetres}\n"
			   "floors: {total_rise: 2702.5}\n"
			   "stair: {width: 900}\n"
			   "stringers: {wedge_taper: 12.75}\n";

static struct arena *arena;

/* Made here, for few machines have one, out of the sources that `make deps` installs. */
static int take_a_locale_with_a_comma(void **state)
{
	const char *dir = getenv("TMPDIR");

	(void)state;
	arena = arena_new();
	dir = dir ? dir : "/tmp";
	int made = system(
		arena_printf(arena, "localedef -i de_DE -f UTF-8 '%s/comma' >/dev/null 2>&1", dir));
	setenv("LOCPATH", dir, 1);
	if (made == 0 && setlocale(LC_NUMERIC, "comma"))
		return 0;
	fprintf(stderr,
		"no locale with a comma could be made: is the package \"locales\" there?\n");
	return -1;
}

static int stop(void **state)
{
	(void)state;
	arena_free(arena);
	return 0;
}

static int has_a_comma(void)
{
	char host[8];

	snprintf(host, sizeof(host), "%.1f", 2.5);
	return strcmp(host, "2,5") == 0;
}

static void a_point_is_written(void **state)
{
	(void)state;
	assert_true(has_a_comma());
	assert_string_equal(arena_printf(arena, "%.1f", 2.5), "2.5");
}

static void a_point_is_read(void **state)
{
	struct diags d;

	(void)state;
	assert_true(has_a_comma());
	diags_init(&d, arena, "job.yaml", yaml);
	const struct job *job = job_read(arena, yaml, &d);
	assert_non_null(job);
	assert_true(job->stringers.wedge_taper == 12.75);
	assert_true(job->floors.total_rise == 2702.5);
}

static void the_process_keeps_its_locale(void **state)
{
	(void)state;
	assert_true(has_a_comma());
	arena_printf(arena, "%.1f", 2.5);
	assert_true(has_a_comma());
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_point_is_written),
		cmocka_unit_test(a_point_is_read),
		cmocka_unit_test(the_process_keeps_its_locale),
	};

	return cmocka_run_group_tests(tests, take_a_locale_with_a_comma, stop);
}
