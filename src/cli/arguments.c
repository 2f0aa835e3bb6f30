/*
 * -q, -o DIR, -oDIR, --output DIR and --output=DIR, as every Unix user types them.
 */
#include "cli/arguments.h"

#include <stdbool.h>
#include <string.h>

/* The words still to be read. */
struct words {
	char *const *at;
	char *const *end;
};

static const char *next_word(struct words *w)
{
	return w->at < w->end ? *w->at++ : NULL;
}

/* `rest` is what was written in the same word, NULL: nothing; a value may also be the next word. */
static void take(struct arena *a, struct arguments *args, const struct option *options, int row,
	const char *rest, struct words *w)
{
	const struct option *o = &options[row];
	const char *value = rest;

	if (!o->value && rest) {
		args->problem = arena_printf(a, "--%s takes no value", o->name);
		return;
	}
	if (o->value && !value)
		value = next_word(w);
	if (o->value && (!value || !*value)) {
		args->problem = arena_printf(a, "--%s needs a %s", o->name, o->value);
		return;
	}
	args->values[row] = o->value ? value : "";
}

static void take_long(struct arena *a, struct arguments *args, const struct option *options,
	const char *word, struct words *w)
{
	size_t length = strcspn(word + 2, "=");
	const char *rest = word[2 + length] == '=' ? word + 2 + length + 1 : NULL;

	for (int i = 0; options[i].name; i++)
		if (strlen(options[i].name) == length &&
			strncmp(options[i].name, word + 2, length) == 0) {
			take(a, args, options, i, rest, w);
			return;
		}
	args->problem = arena_printf(a, "there is no option %s", word);
}

static void take_letters(struct arena *a, struct arguments *args, const struct option *options,
	const char *word, struct words *w)
{
	for (const char *letter = word + 1; *letter && !args->problem; letter++) {
		int i = 0;
		while (options[i].name && options[i].letter != *letter)
			i++;
		if (!options[i].name) {
			args->problem = arena_printf(a, "there is no option -%c", *letter);
			return;
		}
		bool takes_rest = options[i].value && letter[1];
		take(a, args, options, i, takes_rest ? letter + 1 : NULL, w);
		if (options[i].value)
			return;
	}
}

struct arguments arguments_read(struct arena *a, const struct option *options, int count,
	char *const *words)
{
	struct words w = { words, words + count };
	const char **operands = NEW_N(a, const char *, count + 1);
	struct arguments args = { .operands = operands };
	bool only_operands = false;

	for (const char *word; !args.problem && (word = next_word(&w));) {
		if (only_operands || word[0] != '-' || !word[1])
			operands[args.count++] = word;
		else if (strcmp(word, "--") == 0)
			only_operands = true;
		else if (word[1] == '-')
			take_long(a, &args, options, word, &w);
		else
			take_letters(a, &args, options, word, &w);
	}
	return args;
}
