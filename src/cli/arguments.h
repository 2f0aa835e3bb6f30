/*
 * The command line, read against a table of options.
 */
#ifndef CLI_ARGUMENTS_H
#define CLI_ARGUMENTS_H

#include "pitchboard/arena.h"

enum { MOST_OPTIONS = 8 };

/* One option; a table of them ends with an empty row. */
struct option {
	char letter;       /* -o; 0: it has none */
	const char *name;  /* --output */
	const char *value; /* what its value is called in the help; NULL: a switch */
	const char *help;
};

struct arguments {
	const char *values[MOST_OPTIONS]; /* by row; NULL: not given; "": a switch that was */
	const char *const *operands;
	int count;
	const char *problem; /* NULL: it was read.  Else what is wrong with it */
};

/* `words` are the words after the command's name.  Options may stand anywhere before `--`. */
struct arguments arguments_read(struct arena *a, const struct option *options, int count,
	char *const *words);

#endif
