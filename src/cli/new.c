/*
 * pitchboard new: a job file to begin from, out of templates/starters.
 */
#include "cli/command.h"
#include "cli/files.h"

#include <glob.h>
#include <stdio.h>
#include <string.h>

enum { NEW_TEMPLATES };

static const struct option options[] = {
	[NEW_TEMPLATES] = { 0, "templates", "DIR", "the folder that holds starters/" },
	{ 0 },
};

/* The names of the starters there are, one a line, in the order of the alphabet. */
static void print_names(struct arena *a, const char *dir)
{
	glob_t found;

	if (glob(arena_printf(a, "%s/starters/*.yaml", dir), 0, NULL, &found) != 0)
		return;
	for (size_t i = 0; i < found.gl_pathc; i++) {
		const char *name = strrchr(found.gl_pathv[i], '/') + 1;
		fprintf(stderr, "  %.*s\n", (int)strcspn(name, "."), name);
	}
	globfree(&found);
}

static enum status run_new(struct arena *a, const struct arguments *args)
{
	const char *dir = templates_find(a, args->values[NEW_TEMPLATES]);
	const char *name = args->count ? args->operands[0] : "first";

	if (!dir)
		return STATUS_MACHINE;
	struct text_result starter = { 0 };
	if (args->count <= 1 && !strchr(name, '/'))
		starter = text_read(a, arena_printf(a, "%s/starters/%s.yaml", dir, name));
	if (!starter.text) {
		complain("new takes the name of one starter; there are:");
		print_names(a, dir);
		return STATUS_WRONG;
	}
	fputs(starter.text, stdout);
	return STATUS_DONE;
}

const struct command command_new = {
	.name = "new",
	.operands = "[NAME]",
	.summary = "print a job file to begin from",
	.options = options,
	.more = "  pitchboard new >my-stair.yaml\n\n"
		"Without a NAME it is the shortest one.  A NAME that is not there prints the "
		"names that are.\n",
	.run = run_new,
};
