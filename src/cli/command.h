/*
 * The commands of the program, one small file each.
 *
 * A command lives whole in src/cli/NAME.c and ends in one row; main.c lists the
 * rows.  Commands and main are the only code that prints.
 */
#ifndef CLI_COMMAND_H
#define CLI_COMMAND_H

#include "cli/arguments.h"

/* The exit status, worst last: of several jobs the worst one counts. */
enum status {
	STATUS_DONE,
	STATUS_FINDINGS, /* drawn, but there are warnings to read */
	STATUS_WRONG,    /* the job, or the command line, is wrong: nothing was drawn */
	STATUS_MACHINE,  /* the machine failed: disk full, no permission, files missing */
};

struct command {
	const char *name;
	const char *operands; /* as the usage line shows them */
	const char *summary;  /* one line */
	const struct option *options;
	const char *more; /* paragraphs under the options, or NULL */
	enum status (*run)(struct arena *a, const struct arguments *args);
};

extern const struct command command_check, command_draw, command_keys, command_list, command_new;

/* One line on the error stream, after the program's name. */
void complain(const char *fmt, ...) __attribute__((format(printf, 1, 2)));

#endif
