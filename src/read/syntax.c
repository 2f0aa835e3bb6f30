#include "read/syntax.h"

#include <stdbool.h>
#include <string.h>

#include "read/place.h"

struct site {
	struct arena *arena;
	const char *text;
	struct syntax_fault fault;
};

struct complaint {
	struct pos at;
	const char *text, *hint;
};

static bool speaks_of(const char *words, const char *of)
{
	return words && strstr(words, of);
}

static const char *line_start(const struct site *s, const char *p)
{
	const char *start = text_start(s->text);

	while (p > start && p[-1] != '\n')
		p--;
	return p;
}

/* The value in which a place lies, as typed: from behind its key to the end of the line, or of the
 * entry when the value stands between brackets. */
static const char *value_at(const struct site *s, struct pos at)
{
	const char *place = text_at(s->text, at);
	const char *value = line_start(s, place);
	bool bracketed = false;

	for (const char *p = value; p < place; p++) {
		bool opens = (*p == '{' || *p == '[') && p == value;
		bracketed = bracketed || opens;
		if (opens || (bracketed && *p == ','))
			value = p + 1;
		if (p[1] == ' ' && (*p == ':' || (*p == '-' && p == value)))
			value = p + 2;
		if (*value == ' ' && p == value)
			value++;
	}
	size_t n = (size_t)(place - value) + strcspn(place, bracketed ? ",]}\r\n" : "\r\n");
	return arena_strndup(s->arena, value, n);
}

/* 'text', with every ' in it doubled, as YAML wants it. */
static const char *quoted(struct arena *a, const char *value)
{
	char *out = NEW_N(a, char, strlen(value) * 2 + 3);
	char *end = out;

	*end++ = '\'';
	for (; *value; value++) {
		if (*value == '\'')
			*end++ = '\'';
		*end++ = *value;
	}
	*end = '\'';
	return out;
}

static const char *quote_it(const struct site *s, struct pos at)
{
	return arena_printf(s->arena, "quote it: %s", quoted(s->arena, value_at(s, at)));
}

/* The quote that was closed just before this place, or NULL. */
static const char *quote_before(const struct site *s, struct pos at)
{
	const char *p = text_at(s->text, at);
	const char *start = line_start(s, p);

	while (p > start && p[-1] == ' ')
		p--;
	return p > start && (p[-1] == '"' || p[-1] == '\'') ? p - 1 : NULL;
}

/* A quote runs to the next mark of its kind, however many lines that takes; NULL when it was
 * opened on the line on which it is closed. */
static const char *opened_above(const struct site *s, const char *quote)
{
	const char *start = line_start(s, quote);
	const char *p = quote;

	while (p > text_start(s->text) && *--p != *quote)
		;
	return p < start && *p == *quote ? p : NULL;
}

static struct complaint say_runs_on(const struct site *s, const char *opener, int line)
{
	size_t offset = (size_t)(opener - text_start(s->text));

	return (struct complaint){ place_of_byte(s->text, offset),
		arena_printf(s->arena, "this quote is closed only in line %d", line),
		"close it on the same line" };
}

/* "7 5/8"": the inch mark is the quote's end, and the quote behind it opens another. */
static struct complaint say_closed_quote(const struct site *s, struct pos at, const char *quote)
{
	const char *opener = opened_above(s, quote);

	if (opener)
		return say_runs_on(s, opener, at.line);
	const char *value = value_at(s, at);
	size_t n = strlen(value);
	bool is_mark = quote > s->text && quote[-1] >= '0' && quote[-1] <= '9';
	bool is_paired = n > 2 && value[n - 1] == *value;
	const char *bare = is_paired ? arena_strndup(s->arena, value + 1, n - 2) : value + 1;
	const char *text = "text goes on behind its closing quote";
	if (is_mark)
		text = *quote == '"' ? "the inch mark closed the quote"
				     : "the foot mark closed the quote";
	return (struct complaint){ at, text,
		is_mark || is_paired
			? arena_printf(s->arena, "leave the outer quotes out: %s", bare)
			: quote_it(s, at) };
}

static struct complaint say_open_quote(const struct site *s)
{
	struct pos at = s->fault.context_at;
	const char *quote = quote_before(s, at);

	if (quote)
		return say_closed_quote(s, at, quote);
	return (struct complaint){ at, "this quote is never closed", "close it on the same line" };
}

static struct complaint say_expected_key(const struct site *s)
{
	struct pos at = s->fault.at;
	const char *p = text_at(s->text, at);
	const char *quote = quote_before(s, at);

	if (quote)
		return say_closed_quote(s, at, quote);
	if (*p == ']' || *p == '}')
		return (struct complaint){ at, "this bracket was never opened", NULL };
	if (*p == '-' && (p[1] == ' ' || p[1] == '\n'))
		return (struct complaint){ at, "a list entry stands where a key was expected",
			"indent the list under its key" };
	return (struct complaint){ at, "this line's indentation fits no group above it",
		"keys of one group stand exactly under each other" };
}

/* A colon that ends a key: with a space or the line's end behind it. */
static bool has_colon(const char *from, const char *to)
{
	for (; from < to; from++)
		if (from[0] == ':' && (from[1] == ' ' || from[1] == '\n' || from[1] == '\r'))
			return true;
	return false;
}

/* The line on which this place lies has no colon that ends a key: `width:36"`. */
static struct complaint say_no_colon_at(const struct site *s, const char *place)
{
	const char *line = line_start(s, place) + strspn(line_start(s, place), " -");
	size_t n = strcspn(line, "\r\n"), key = strcspn(line, ":\r\n");
	const char *hint = "a key, a colon, a space, then the value";

	if (key > 0 && key + 1 < n)
		hint = arena_printf(s->arena, "a space is missing: %.*s: %.*s", (int)key, line,
			(int)(n - key - 1), line + key + 1);
	return (struct complaint){ place_of_byte(s->text, (size_t)(line - text_start(s->text))),
		"this line has no colon with a space after it", hint };
}

/* The end of the last line above a place that says anything. */
static const char *line_above(const struct site *s, const char *place)
{
	const char *start = text_start(s->text);
	const char *p = line_start(s, place);

	while (p > start && strchr(" \r\n", p[-1]))
		p--;
	return p;
}

static struct complaint say_unexpected_colon(const struct site *s)
{
	struct pos at = s->fault.at;
	const char *p = text_at(s->text, at);
	const char *above = line_above(s, p);

	if (has_colon(line_start(s, p), p))
		return (struct complaint){ at,
			"a text with a colon and a space in it must be quoted", quote_it(s, at) };
	if (has_colon(line_start(s, above), above))
		return (struct complaint){ at,
			"this line is indented deeper than the key above it, which has its value",
			"keys of one group stand exactly under each other" };
	return say_no_colon_at(s, above);
}

static struct complaint say_bad_start(const struct site *s)
{
	struct pos at = s->fault.at;
	const char *p = text_at(s->text, at);

	if (*p == '\t')
		return (struct complaint){ at, "a tab cannot indent a line", "use spaces" };
	return (struct complaint){ at,
		arena_printf(s->arena, "a value cannot begin with %c", *p ? *p : ' '),
		quote_it(s, at) };
}

static struct complaint say_block_text(const struct site *s)
{
	struct pos at = s->fault.context_at;

	return (struct complaint){ at,
		arena_printf(s->arena, "a value cannot begin with %c", *text_at(s->text, at)),
		quote_it(s, at) };
}

static struct complaint say_dash(const struct site *s)
{
	return (struct complaint){ s->fault.at,
		"a dash and a space begin a list entry, which cannot stand here",
		"put list entries on lines of their own; quote a text that begins with a dash" };
}

static struct complaint say_escape(const struct site *s)
{
	return (struct complaint){ s->fault.at, "inside \" \" a backslash has a meaning of its own",
		"use single quotes: ' '" };
}

static struct complaint say_open_bracket(const struct site *s)
{
	struct pos at = s->fault.context_at;
	char open = *text_at(s->text, at);
	const char *quote = quote_before(s, s->fault.at);

	if (quote)
		return say_closed_quote(s, s->fault.at, quote);
	if (*text_at(s->text, s->fault.at) == ':' && s->fault.at.line == at.line)
		return (struct complaint){ s->fault.at, "a colon cannot stand here",
			"put a comma between two entries; quote a text with a colon in it" };
	return (struct complaint){ at, arena_printf(s->arena, "this %c is never closed", open),
		open == '[' ? "close it with ]" : "close it with }" };
}

static struct complaint say_no_colon(const struct site *s)
{
	return say_no_colon_at(s, text_at(s->text, s->fault.context_at));
}

static struct complaint say_control(const struct site *s)
{
	return (struct complaint){ s->fault.at, "an invisible control character stands here",
		"delete it" };
}

static struct complaint say_encoding(const struct site *s)
{
	return (struct complaint){ s->fault.at, "this character is not UTF-8",
		"save the file as UTF-8" };
}

static struct complaint say_tab(const struct site *s)
{
	return (struct complaint){ s->fault.at, "a tab cannot indent a line", "use spaces" };
}

static struct complaint say_second_document(const struct site *s)
{
	return (struct complaint){ s->fault.at, "the job ended above this line",
		"one file holds one job" };
}

/* The parser's words, and what they mean to whoever typed the file.  First match wins. */
static const struct {
	const char *problem, *context; /* "": whatever it is */
	struct complaint (*say)(const struct site *s);
} rows[] = {
	{ "unexpected end of stream", "quoted scalar", say_open_quote },
	{ "document indicator", "quoted scalar", say_open_quote },
	{ "did not find expected key", "", say_expected_key },
	{ "did not find expected '-' indicator", "", say_expected_key },
	{ "mapping values are not allowed", "", say_unexpected_colon },
	{ "cannot start any token", "", say_bad_start },
	{ "tab character", "", say_tab },
	{ "expected comment or line break", "block scalar", say_block_text },
	{ "block sequence entries", "", say_dash },
	{ "escape character", "", say_escape },
	{ "expected ',' or", "", say_open_bracket },
	{ "could not find expected ':'", "", say_no_colon },
	{ "control characters", "", say_control },
	{ "UTF-8", "", say_encoding },
	{ "Unicode", "", say_encoding },
	{ "expected <document start>", "", say_second_document },
};

static struct complaint say(const struct site *s)
{
	const struct syntax_fault *f = &s->fault;

	for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++)
		if (speaks_of(f->problem, rows[i].problem) &&
			(!*rows[i].context || speaks_of(f->context, rows[i].context)))
			return rows[i].say(s);
	return (struct complaint){ f->at,
		arena_printf(s->arena, "this is not YAML: %s%s%s", f->context ? f->context : "",
			f->context ? ", " : "", f->problem ? f->problem : "no memory"),
		NULL };
}

void syntax_complain(struct diags *d, const char *text, struct syntax_fault fault)
{
	struct site site = { d->arena, text, fault };
	struct complaint c = say(&site);

	diag_error(d, c.at, c.hint, "%s", c.text);
}
