/*
 * The job of a text that has nothing wrong in it.
 */
#ifndef TESTS_READ_JOB_H
#define TESTS_READ_JOB_H

#include <stdio.h>

#include "one_arena.h"
#include "pitchboard/job.h"

static const struct job *job_of(const char *yaml)
{
	struct diags d;

	diags_init(&d, arena, "job.yaml", yaml);
	const struct job *job = job_read(arena, yaml, &d);
	diags_print(&d, stderr);
	assert_non_null(job);
	return job;
}

#endif
