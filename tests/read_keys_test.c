/* The key reference: every key is in it, and the schema is JSON. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <string.h>

#include "pitchboard/keys.h"
#include "read/keys_table.h"

/* Past one JSON value (RFC 8259), or NULL: as much of the grammar as there is but for \u and
 * exponents, which the schema has no use for. */
static const char *past_value(const char *p);

static const char *past_space(const char *p)
{
	return p + strspn(p, " \t\r\n");
}

static const char *past_string(const char *p)
{
	if (*p++ != '"')
		return NULL;
	for (; *p != '"'; p++) {
		if ((unsigned char)*p < ' ')
			return NULL;
		if (*p == '\\' && (!*++p || !strchr("\"\\/bfnrt", *p)))
			return NULL;
	}
	return p + 1;
}

static const char *past_member(const char *p)
{
	p = past_string(p);
	if (!p)
		return NULL;
	p = past_space(p);
	return *p == ':' ? past_value(p + 1) : NULL;
}

/* Behind the opening bracket: entries with commas between, then the closing bracket. */
static const char *past_entries(const char *p, char close, const char *(*past_entry)(const char *))
{
	p = past_space(p);
	if (*p == close)
		return p + 1;
	for (;;) {
		p = past_entry(past_space(p));
		if (!p)
			return NULL;
		p = past_space(p);
		if (*p == close)
			return p + 1;
		if (*p++ != ',')
			return NULL;
	}
}

static const char *past_word(const char *p)
{
	static const char *const words[] = { "true", "false", "null" };
	size_t figures = strspn(p, "-0123456789.");

	for (size_t i = 0; i < 3; i++)
		if (strncmp(p, words[i], strlen(words[i])) == 0)
			return p + strlen(words[i]);
	return figures ? p + figures : NULL;
}

static const char *past_value(const char *p)
{
	p = past_space(p);
	switch (*p) {
	case '{': return past_entries(p + 1, '}', past_member);
	case '[': return past_entries(p + 1, ']', past_value);
	case '"': return past_string(p);
	default: return past_word(p);
	}
}

static void the_schema_is_json(void **state)
{
	struct arena *a = arena_new();
	const char *end = past_value(keys_schema(a));

	(void)state;
	assert_non_null(end);
	assert_string_equal(end, "\n");
	arena_free(a);
}

static void the_schema_names_its_draft(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_non_null(strstr(keys_schema(a),
		"\"$schema\": \"https://json-schema.org/draft/2020-12/schema\""));
	arena_free(a);
}

static int missing(struct arena *a, const struct group *g, const char *text, const char *form)
{
	int n = 0;

	for (const struct field *f = g->fields; f->key; f++) {
		if (!strstr(text, arena_printf(a, "%s", f->help)) ||
			!strstr(text, arena_printf(a, "%s%s", form, f->key)))
			n++;
		if (f->group)
			n += missing(a, f->group, text, form);
	}
	return n;
}

static void every_key_is_in_the_schema_and_in_the_table(void **state)
{
	struct arena *a = arena_new();

	(void)state;
	assert_int_equal(missing(a, &keys_file, keys_schema(a), "\""), 0);
	assert_int_equal(missing(a, &keys_file, keys_markdown(a), "| `"), 0);
	arena_free(a);
}

static void the_text_fits_a_terminal(void **state)
{
	struct arena *a = arena_new();
	const char *text = keys_text(a);

	(void)state;
	for (const char *p = text; *p; p += strcspn(p, "\n") + 1)
		assert_in_range(strcspn(p, "\n"), 0, 80);
	assert_non_null(strstr(text, "  total_rise\n      finished floor to finished floor\n"));
	arena_free(a);
}

static void every_row_has_help(const struct group *g)
{
	for (const struct field *f = g->fields; f->key; f++) {
		assert_non_null(f->help);
		assert_true(strlen(f->help) > 0);
		if (f->group)
			every_row_has_help(f->group);
	}
}

static void no_key_is_without_help(void **state)
{
	(void)state;
	every_row_has_help(&keys_file);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_schema_is_json),
		cmocka_unit_test(the_schema_names_its_draft),
		cmocka_unit_test(every_key_is_in_the_schema_and_in_the_table),
		cmocka_unit_test(the_text_fits_a_terminal),
		cmocka_unit_test(no_key_is_without_help),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
