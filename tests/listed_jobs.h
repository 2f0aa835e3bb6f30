/*
 * Every demo job and every starter with its lists, made once for all tests of a program:
 * cmocka_run_group_tests(tests, make_jobs, free_jobs).
 */
#ifndef TESTS_LISTED_JOBS_H
#define TESTS_LISTED_JOBS_H

#include <glob.h>

#include "listed.h"

struct jobs {
	struct listed list[32];
	int n;
};

static inline int make_jobs(void **state)
{
	static struct jobs jobs;
	glob_t found = { 0 };

	assert_int_equal(glob("jobs/*.yaml", 0, NULL, &found), 0);
	assert_int_equal(glob("templates/starters/*.yaml", GLOB_APPEND, NULL, &found), 0);
	assert_in_range(found.gl_pathc, 1, 32);
	for (size_t i = 0; i < found.gl_pathc; i++)
		jobs.list[jobs.n++] = listed_file(found.gl_pathv[i]);
	globfree(&found);
	*state = &jobs;
	return 0;
}

static inline int free_jobs(void **state)
{
	const struct jobs *jobs = *state;

	for (int i = 0; i < jobs->n; i++)
		arena_free(jobs->list[i].built.arena);
	return 0;
}

static inline void with_every_job(void **state, void (*look)(const struct listed *l))
{
	const struct jobs *jobs = *state;

	for (int i = 0; i < jobs->n; i++) {
		assert_non_null(jobs->list[i].groups);
		look(&jobs->list[i]);
	}
}

static inline int column(const struct list *l, const char *key)
{
	int c = 0;

	while (strcmp(l->columns[c].key, key) != 0)
		assert_true(++c < l->column_count);
	return c;
}

static inline const struct list_cell *cell(const struct list *l, int row, const char *key)
{
	return &l->cells[row * l->column_count + column(l, key)];
}

/* Is the mark one of those of "2 N3, 1 N31"? */
static inline bool names(const char *pieces, const char *mark)
{
	size_t n = strlen(mark);

	for (const char *p = pieces; (p = strstr(p, mark)); p += n)
		if (p > pieces && p[-1] == ' ' && (p[n] == ',' || !p[n]))
			return true;
	return false;
}

static inline double sum(const struct list *l, const char *key)
{
	double total = 0;

	for (int r = 0; r < l->row_count; r++) {
		double v = cell(l, r, key)->number;
		total += isnan(v) ? 0 : v;
	}
	return total;
}

#endif
