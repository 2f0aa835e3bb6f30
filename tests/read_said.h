/*
 * Everything that reading a job says, as one text.
 */
#ifndef READ_SAID_H
#define READ_SAID_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "pitchboard/job.h"

/* A job with nothing wrong in it; faults are written behind it, from line 7 on. */
#define SOUND                                                                                      \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test}\n"                                                                      \
	"floors:\n"                                                                                \
	"  total_rise: 107\"\n"                                                                    \
	"stair:\n"                                                                                 \
	"  width: 36\"\n"

/* The printed problems of the job called job.yaml; to be freed. */
static inline char *said_of(const char *yaml)
{
	struct arena *a = arena_new();
	struct diags d;
	char *said = NULL;
	size_t size;
	FILE *to = open_memstream(&said, &size);

	diags_init(&d, a, "job.yaml", yaml);
	const struct job *job = job_read(a, yaml, &d);
	diags_print(&d, to);
	fputs(job ? "" : "refused\n", to);
	fclose(to);
	arena_free(a);
	return said;
}

/* What is typed, and what is said to it; the name is a sentence. */
struct said_case {
	const char *what, *yaml, *said;
};

static inline void says_it(void **state)
{
	const struct said_case *c = *state;
	char *said = said_of(c->yaml);

	assert_string_equal(said, c->said);
	free(said);
}

static inline int run_said_cases(const struct said_case *cases, size_t n)
{
	struct CMUnitTest *tests = calloc(n, sizeof(*tests));

	for (size_t i = 0; i < n; i++)
		tests[i] = (struct CMUnitTest){ cases[i].what, says_it, NULL, NULL,
			(void *)&cases[i] };
	int failed = _cmocka_run_group_tests("said", tests, n, NULL, NULL);
	free(tests);
	return failed;
}

#endif
