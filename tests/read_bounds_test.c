/* A job file that no person writes does no harm. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_said.h"

static void says(const char *yaml, const char *problem)
{
	char *said = said_of(yaml);

	assert_non_null(strstr(said, problem));
	free(said);
}

static void nesting_is_bounded(void **state)
{
	enum { DEPTH = 300 };
	char *yaml = calloc(1, sizeof(SOUND) + 2 * DEPTH + 16);

	(void)state;
	char *end = yaml + sprintf(yaml, "%streads: ", SOUND);
	memset(end, '[', DEPTH);
	memset(end + DEPTH, ']', DEPTH);
	says(yaml, "error: groups and lists are nested too deeply\n");
	free(yaml);
}

static void size_is_bounded(void **state)
{
	size_t size = (1 << 20) + 1;
	char *yaml = malloc(size + 1);

	(void)state;
	memset(yaml, '#', size);
	yaml[size] = '\0';
	says(yaml, "error: the file is larger than 1 MiB\n");
	free(yaml);
}

/* A hundred thousand keys would take a minute to compare with each other. */
static void the_number_of_keys_is_bounded(void **state)
{
	enum { KEYS = 100000, LONGEST = 10 };
	char *yaml = malloc(KEYS * LONGEST);
	char *end = yaml;

	(void)state;
	for (int i = 0; i < KEYS; i++)
		end += sprintf(end, "k%d:\n", i);
	says(yaml, "error: this is more than a job can hold\n");
	free(yaml);
}

/* An alias may point at its own ancestor. */
static void a_ring_of_aliases_is_refused(void **state)
{
	(void)state;
	says(SOUND "treads: &ring\n  nosing: *ring\n",
		"a value cannot begin with * (a YAML alias)");
}

static void a_key_as_long_as_the_file_is_only_unknown(void **state)
{
	enum { LENGTH = 900 };
	char key[LENGTH + 1];
	char yaml[sizeof(SOUND) + LENGTH + 8];

	(void)state;
	memset(key, 'k', LENGTH);
	key[LENGTH] = '\0';
	sprintf(yaml, "%s%s: 1\n", SOUND, key);
	says(yaml, "error: unknown key \"kkk");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(nesting_is_bounded),
		cmocka_unit_test(size_is_bounded),
		cmocka_unit_test(the_number_of_keys_is_bounded),
		cmocka_unit_test(a_ring_of_aliases_is_refused),
		cmocka_unit_test(a_key_as_long_as_the_file_is_only_unknown),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
