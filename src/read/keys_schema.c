/*
 * The key reference as JSON Schema, so that an editor completes and checks a
 * job while it is typed.
 *
 * It is no stricter than the reader: what a schema cannot say (that a length
 * lies in its range, that two keys exclude each other) is left to the program.
 */
#include <string.h>

#include "base/text.h"
#include "pitchboard/keys.h"
#include "read/keys_words.h"

/* A JSON string.  The tables hold no control characters. */
static const char *json(struct arena *a, const char *words)
{
	char *out = NEW_N(a, char, strlen(words) * 2 + 3);
	char *end = out;

	*end++ = '"';
	for (; *words; words++) {
		if (*words == '"' || *words == '\\')
			*end++ = '\\';
		*end++ = *words;
	}
	*end = '"';
	return out;
}

static void add_choices(struct arena *a, struct text *t, const struct choice *choices)
{
	text_add(t, "\"enum\": [");
	for (const struct choice *c = choices; c->word; c++)
		text_add(t, "%s%s", c == choices ? "" : ", ", json(a, c->word));
	text_add(t, "]");
}

static void add_group(struct arena *a, struct text *t, const struct group *g);

static void add_shorthand(struct arena *a, struct text *t, const struct group *g)
{
	if (!g->shorthand) {
		add_group(a, t, g);
		return;
	}
	const struct choice *choices = field_find(g, g->shorthand)->choices;
	text_add(t, "\"oneOf\": [{");
	if (choices)
		add_choices(a, t, choices);
	else
		text_add(t, "\"type\": \"string\"");
	text_add(t, "}, {");
	add_group(a, t, g);
	text_add(t, "}]");
}

static void add_list_of(struct text *t, const char *one)
{
	text_add(t, "\"oneOf\": [{%s}, {\"type\": \"array\", \"items\": {%s}}]", one, one);
}

static const char *date_form =
	"\"type\": \"string\", \"pattern\": \"^\\\\d{4}-\\\\d{2}-\\\\d{2}$\"";
static const char *length_form = "\"type\": [\"string\", \"number\"]";

static void add_texts(struct arena *a, struct text *t, const struct field *f)
{
	struct text one = { .arena = a };

	if (f->choices)
		add_choices(a, &one, f->choices);
	else
		text_add(&one, "\"type\": \"string\"");
	add_list_of(t, text_chars(&one));
}

static void add_form(struct arena *a, struct text *t, const struct field *f)
{
	switch (f->kind) {
	/* A job number may be all figures, and an empty line is no text at all. */
	case FIELD_TEXT: text_add(t, "\"type\": [\"string\", \"number\", \"null\"]"); break;
	case FIELD_DATE: text_add(t, "%s", date_form); break;
	case FIELD_LENGTH: text_add(t, "%s", length_form); break;
	case FIELD_NUMBER:
		text_add(t, "\"type\": \"number\", \"minimum\": %g, \"maximum\": %g", f->least,
			f->most);
		break;
	case FIELD_COUNT:
		text_add(t, "\"type\": \"integer\", \"minimum\": %g, \"maximum\": %g", f->least,
			f->most);
		break;
	case FIELD_CHOICE: add_choices(a, t, f->choices); break;
	/* YAML 1.1 makes true of yes, 1.2 leaves the word. */
	case FIELD_YES_NO: text_add(t, "\"enum\": [true, false, \"yes\", \"no\"]"); break;
	case FIELD_GROUP: add_shorthand(a, t, f->group); break;
	case FIELD_GROUPS:
		text_add(t, "\"type\": \"array\", \"items\": {");
		add_shorthand(a, t, f->group);
		text_add(t, "}");
		break;
	case FIELD_LENGTHS: add_list_of(t, length_form); break;
	case FIELD_TEXTS: add_texts(a, t, f); break;
	}
}

static const char *description(struct arena *a, const struct field *f)
{
	const char *usual = key_default(a, f);

	if (!*usual || f->required)
		return f->help;
	return arena_printf(a, "%s. Unless given: %s", f->help, usual);
}

static void add_required(struct arena *a, struct text *t, const struct group *g)
{
	const char *comma = "";

	text_add(t, ", \"required\": [");
	for (const struct field *f = g->fields; f->key; f++) {
		if (!f->required)
			continue;
		text_add(t, "%s%s", comma, json(a, f->key));
		comma = ", ";
	}
	text_add(t, "]");
}

/* The members of the object, without its braces. */
static void add_group(struct arena *a, struct text *t, const struct group *g)
{
	text_add(t, "\"type\": \"object\", \"additionalProperties\": false");
	add_required(a, t, g);
	text_add(t, ", \"properties\": {\n");
	for (const struct field *f = g->fields; f->key; f++) {
		text_add(t, "%s: {\"description\": %s, ", json(a, f->key),
			json(a, description(a, f)));
		add_form(a, t, f);
		text_add(t, "}%s\n", f[1].key ? "," : "");
	}
	text_add(t, "}");
}

const char *keys_schema(struct arena *a)
{
	struct text t = { .arena = a };

	text_add(&t,
		"{\"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n"
		"\"title\": \"A pitchboard job, version 1\",\n");
	add_group(a, &t, &keys_file);
	text_add(&t, "}\n");
	return text_chars(&t);
}
