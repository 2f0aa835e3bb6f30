/*
 * pitchboard: from a job file to dimensioned sheets and full-size templates.
 *
 * The commands are in files of their own; here are the words around them.
 */
#include "cli/command.h"
#include "pitchboard/version.h"

#include <signal.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stdio.h>
#include <string.h>

static const struct command *const commands[] = {
	&command_draw,
	&command_check,
	&command_keys,
	&command_list,
	&command_new,
	NULL,
};

void complain(const char *fmt, ...)
{
	va_list ap;

	va_start(ap, fmt);
	fputs("pitchboard: ", stderr);
	vfprintf(stderr, fmt, ap);
	fputc('\n', stderr);
	va_end(ap);
}

static void print_overview(FILE *to)
{
	fputs("usage: pitchboard COMMAND ...\n"
	      "Draws a stair from a job file: dimensioned sheets and full-size templates.\n\n",
		to);
	for (int i = 0; commands[i]; i++)
		fprintf(to, "  %-6s %-22s %s\n", commands[i]->name, commands[i]->operands,
			commands[i]->summary);
	fputs("\n"
	      "  pitchboard COMMAND --help   its options\n"
	      "  pitchboard --version\n\n"
	      "Exit status: 0 done; 1 drawn, with warnings to read; 2 the job or the command line\n"
	      "is wrong and nothing of it was drawn; 3 the machine failed.\n",
		to);
}

static void print_option(const struct option *o)
{
	char name[64];

	snprintf(name, sizeof(name), "--%s%s%s", o->name, o->value ? " " : "",
		o->value ? o->value : "");
	printf("  %c%c%c %-18s %s\n", o->letter ? '-' : ' ', o->letter ? o->letter : ' ',
		o->letter ? ',' : ' ', name, o->help);
}

static void print_help(const struct command *c)
{
	printf("usage: pitchboard %s [option ...] %s\n%s.\n\n", c->name, c->operands, c->summary);
	for (const struct option *o = c->options; o->name; o++)
		print_option(o);
	printf("  -h, %-18s %s\n", "--help", "this text");
	if (c->more)
		printf("\n%s", c->more);
}

static bool is_help(const char *word)
{
	return strcmp(word, "--help") == 0 || strcmp(word, "-h") == 0;
}

static const struct command *command_find(const char *name)
{
	for (int i = 0; commands[i]; i++)
		if (strcmp(commands[i]->name, name) == 0)
			return commands[i];
	return NULL;
}

static enum status command_run(struct arena *a, const struct command *c, int count,
	char *const *words)
{
	for (int i = 0; i < count && strcmp(words[i], "--") != 0; i++)
		if (is_help(words[i])) {
			print_help(c);
			return STATUS_DONE;
		}
	struct arguments args = arguments_read(a, c->options, count, words);
	if (args.problem) {
		complain("%s; try: pitchboard %s --help", args.problem, c->name);
		return STATUS_WRONG;
	}
	return c->run(a, &args);
}

static enum status run(struct arena *a, int argc, char *const *argv)
{
	if (argc < 2) {
		print_overview(stderr);
		return STATUS_WRONG;
	}
	if (is_help(argv[1])) {
		print_overview(stdout);
		return STATUS_DONE;
	}
	if (strcmp(argv[1], "--version") == 0) {
		printf("pitchboard %s\n", PITCHBOARD_VERSION);
		return STATUS_DONE;
	}
	const struct command *c = command_find(argv[1]);
	if (c)
		return command_run(a, c, argc - 2, argv + 2);
	complain("there is no command %s; try: pitchboard --help", argv[1]);
	return STATUS_WRONG;
}

/* Output that never arrived is not done, whatever the command thought. */
static enum status close_output(enum status status)
{
	if (fflush(stdout) == 0 && !ferror(stdout))
		return status;
	complain("what it printed could not be written out");
	return STATUS_MACHINE;
}

int main(int argc, char **argv)
{
	/* so that a file size limit is an answer of write(), as base/file.h asks */
	signal(SIGXFSZ, SIG_IGN);

	struct arena *a = arena_new();
	enum status status = close_output(run(a, argc, argv));

	arena_free(a);
	return (int)status;
}
