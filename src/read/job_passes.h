/*
 * What happens to a job once its keys are read.
 */
#ifndef READ_JOB_PASSES_H
#define READ_JOB_PASSES_H

#include "read/keys_table.h"

/* Problems between one key and another that need no geometry. */
void job_check(struct arena *a, const struct job_file *f, struct diags *d);

/* Doors at landings that have no place there. */
void job_landings_check(const struct job *job, struct diags *d);

/* The defaults that were used and matter in this job, in the order of the tables. */
const struct assumption *job_assumptions(struct arena *a, const struct job_file *f);

/* Is this measurement given in the job at all? */
bool job_size_is_given(const struct job *job, const char *size);

#endif
