/*
 * Everything that reading a job says, as one text.
 */
#ifndef READ_SAID_H
#define READ_SAID_H

#include <stdio.h>
#include <stdlib.h>

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

#endif
