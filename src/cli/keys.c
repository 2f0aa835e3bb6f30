/*
 * pitchboard keys: what a job file may say, from the tables that read it.
 */
#include "pitchboard/keys.h"
#include "cli/command.h"

#include <stdio.h>

enum { KEYS_JSON, KEYS_MARKDOWN };

static const struct option options[] = {
	[KEYS_JSON] = { 0, "json", NULL, "as a JSON Schema, for editors that complete and check" },
	[KEYS_MARKDOWN] = { 0, "markdown", NULL, "as tables in Markdown" },
	{ 0 },
};

static enum status run_keys(struct arena *a, const struct arguments *args)
{
	if (args->count || (args->values[KEYS_JSON] && args->values[KEYS_MARKDOWN])) {
		complain("keys takes one of --json and --markdown, and nothing else");
		return STATUS_WRONG;
	}
	if (args->values[KEYS_JSON])
		fputs(keys_schema(a), stdout);
	else if (args->values[KEYS_MARKDOWN])
		fputs(keys_markdown(a), stdout);
	else
		fputs(keys_text(a), stdout);
	return STATUS_DONE;
}

const struct command command_keys = {
	.name = "keys",
	.operands = "",
	.summary = "print every key of a job file, with its range and default",
	.options = options,
	.run = run_keys,
};
