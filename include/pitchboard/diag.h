/*
 * What is wrong with one job file.
 *
 * A pass adds what it finds and goes on, so that one run reports every problem.
 * A message says what was read, what was expected and how to mend it; it names
 * the key of the job file, never a name of this source.
 *
 * Printed form, in file order:
 *
 *   alder-lane.yaml:14:9: error: unknown key "raiser_height" in stair
 *      14 |   raiser_height: 7 5/8"
 *         |   ^ did you mean "unit_rise"?
 */
#ifndef PITCHBOARD_DIAG_H
#define PITCHBOARD_DIAG_H

#include <stdio.h>

#include "pitchboard/arena.h"

/* A place in the job file, counted from 1 as editors count, columns in
 * characters (not bytes).  Zero is nowhere. */
struct pos {
	int line, col;
};

enum diag_level { DIAG_ERROR, DIAG_WARNING };

struct diag {
	struct diag *next;
	enum diag_level level;
	struct pos at;
	const char *text;
	const char *hint; /* printed under the caret; NULL: none */
};

struct diags {
	struct arena *arena;
	const char *file;   /* as the user named it */
	const char *source; /* the file's text, for the line under the message; may be NULL */
	struct diag *first; /* kept in file order; equal places in order of adding */
	int errors, warnings;
};

void diags_init(struct diags *d, struct arena *a, const char *file, const char *source);

void diag_error(struct diags *d, struct pos at, const char *hint, const char *fmt, ...)
	__attribute__((format(printf, 4, 5)));
void diag_warning(struct diags *d, struct pos at, const char *hint, const char *fmt, ...)
	__attribute__((format(printf, 4, 5)));

void diags_print(const struct diags *d, FILE *to);

#endif
