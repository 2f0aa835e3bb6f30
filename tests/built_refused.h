/*
 * Stairs that are not built, and the first thing that is said of them.
 */
#ifndef TESTS_BUILT_REFUSED_H
#define TESTS_BUILT_REFUSED_H

#include "built.h"

static inline void refused(const char *job, const char *complaint)
{
	struct built b = built_from(job);

	assert_null(b.parts);
	assert_string_equal(built_complaint(&b), complaint);
	arena_free(b.arena);
}

/* And the hint begins with what to write instead. */
static inline void refused_for(const char *job, const char *complaint, const char *mend)
{
	struct built b = built_from(job);

	refused(job, complaint);
	assert_int_equal(strncmp(b.diags.first->hint, mend, strlen(mend)), 0);
	arena_free(b.arena);
}

#endif
