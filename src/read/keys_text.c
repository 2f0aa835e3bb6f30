/*
 * The key reference in words: for the terminal, and as Markdown.
 */
#include "pitchboard/keys.h"

#include <string.h>

#include "base/text.h"
#include "read/keys_words.h"

enum { KEY_COLUMN = 6, WIDTH = 80 };

/* Words in lines of at most WIDTH, each begun in KEY_COLUMN. */
static void add_wrapped(struct text *t, const char *words)
{
	size_t room = WIDTH - KEY_COLUMN;

	while (*words) {
		size_t n = strlen(words);
		if (n > room) {
			for (n = room; n > 0 && words[n] != ' '; n--)
				;
			n = n ? n : room;
		}
		text_add(t, "%*s%.*s\n", KEY_COLUMN, "", (int)n, words);
		words += n;
		words += strspn(words, " ");
	}
}

static void add_key(struct arena *a, struct text *t, const struct field *f)
{
	const char *kind = key_kind(a, f), *usual = key_default(a, f);

	text_add(t, "  %s\n", f->key);
	add_wrapped(t, f->help);
	if (f->required)
		add_wrapped(t, arena_printf(a, "%s, required", kind));
	else if (*usual)
		add_wrapped(t, arena_printf(a, "%s; unless given: %s", kind, usual));
	else
		add_wrapped(t, kind);
}

static void add_group(struct arena *a, struct text *t, const struct group *g)
{
	for (const struct field *f = g->fields; f->key; f++)
		if (!f->group)
			add_key(a, t, f);
	for (const struct field *f = g->fields; f->key; f++) {
		if (!f->group)
			continue;
		const char *path = field_path(a, g, f->key);
		text_add(t, "\n%s%s%s: %s\n", path, f->kind == FIELD_GROUPS ? " (list)" : "",
			f->required ? ", required" : "", f->help);
		if (f->group->shorthand)
			text_add(t, "  (%s: X stands for %s: {%s: X})\n", f->key, f->key,
				f->group->shorthand);
		add_group(a, t, f->group);
	}
}

const char *keys_text(struct arena *a)
{
	struct text t = { .arena = a };

	text_add(&t,
		"Keys of a job file\n\n"
		"A length is written 7 5/8\", 5'-6 1/2\", 66.5 in, 194 mm, 19.4 cm or 2.7 m;\n"
		"a bare number is in the unit of job.units.\n\n");
	add_group(a, &t, &keys_file);
	return text_chars(&t);
}

/* A cell of a table: its strokes would end it. */
static const char *cell(struct arena *a, const char *words)
{
	char *out = NEW_N(a, char, strlen(words) * 2 + 1);
	char *end = out;

	for (; *words; words++) {
		if (*words == '|')
			*end++ = '\\';
		*end++ = *words;
	}
	return out;
}

static void add_table(struct arena *a, struct text *t, const struct group *g)
{
	text_add(t, "| key | what it is | value | unless given |\n|---|---|---|---|\n");
	for (const struct field *f = g->fields; f->key; f++)
		text_add(t, "| `%s` | %s | %s | %s |\n", f->key, cell(a, f->help),
			cell(a, key_kind(a, f)), cell(a, key_default(a, f)));
	for (const struct field *f = g->fields; f->key; f++) {
		if (!f->group)
			continue;
		text_add(t, "\n**`%s`**\n\n", field_path(a, g, f->key));
		add_table(a, t, f->group);
	}
}

const char *keys_markdown(struct arena *a)
{
	struct text t = { .arena = a };

	add_table(a, &t, &keys_file);
	return text_chars(&t);
}
