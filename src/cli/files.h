/*
 * Files that the command line reads: job files, and the folder of templates.
 */
#ifndef CLI_FILES_H
#define CLI_FILES_H

#include "pitchboard/diag.h"

struct text_result {
	const char *text;    /* the whole file; NULL when it could not be had */
	const char *problem; /* why, in words */
};

/* Text of at most 1 MiB: no job is longer, and a wrong file name may be anything. */
struct text_result text_read(struct arena *a, const char *path);

/* Text of a job file, and `d` ready for what is wrong with it; NULL after a complaint. */
const char *job_text(struct arena *a, const char *path, struct diags *d);

/* The folder of papers, title block, sets, starters and fonts: `asked` when given, else the one
 * that belongs to the running program, in its source tree or as installed.  NULL after a complaint.
 */
const char *templates_find(struct arena *a, const char *asked);

#endif
