/*
 * Job files made up from a seed, over all that the format can say.
 */
#ifndef RANDOM_RANDOM_JOB_H
#define RANDOM_RANDOM_JOB_H

#include <stdint.h>

#include "pitchboard/arena.h"

/* The text of a job file.  Most are sound; some ask for what does not go together, and must be
 * refused with a reason. */
const char *random_job(struct arena *a, uint64_t seed);

#endif
