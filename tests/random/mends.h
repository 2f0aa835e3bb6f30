/*
 * Findings of jobs made up: what is said to mend a row mends it.
 */
#ifndef RANDOM_MENDS_H
#define RANDOM_MENDS_H

#include <stdint.h>

#include "pitchboard/arena.h"

/* What came of the mends of one job, checked against the edition that its seed falls on. */
struct mended {
	int met;     /* rows that were not met and are, once the job says what the finding says */
	int refused; /* jobs that cannot be built so: another key stands in the way */
	const char *why; /* a row that is not met even so; NULL: none */
};

struct mended mends_try(struct arena *a, const char *text, uint64_t seed);

#endif
