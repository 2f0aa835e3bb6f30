/*
 * Text that grows.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdio.h>
#include <string.h>

#include "base/text.h"

static struct text text;

static int start(void **state)
{
	(void)state;
	text = (struct text){ .arena = arena_new() };
	return 0;
}

static int stop(void **state)
{
	(void)state;
	arena_free(text.arena);
	return 0;
}

static void nothing_added_is_an_empty_text(void **state)
{
	(void)state;
	assert_string_equal(text_chars(&text), "");
}

static void a_long_text_keeps_its_beginning(void **state)
{
	(void)state;
	for (int i = 0; i < 5000; i++)
		text_put_char(&text, (char)('a' + i % 26));
	assert_int_equal(strlen(text_chars(&text)), 5000);
	assert_memory_equal(text_chars(&text), "abcdefghijklmnopqrstuvwxyzabc", 29);
}

static void words_are_joined_without_a_comma_at_either_end(void **state)
{
	(void)state;
	text_join(&text, ", ", "rise");
	text_join(&text, ", ", "run");
	text_join(&text, " or ", "pitch");
	assert_string_equal(text_chars(&text), "rise, run or pitch");
}

static void a_key_is_said_with_spaces(void **state)
{
	(void)state;
	assert_string_equal(text_spoken(text.arena, "floor_thickness"), "floor thickness");
	assert_string_equal(text_spoken(text.arena, "width"), "width");
}

static void thousandths_are_written_as_short_as_they_can_be(void **state)
{
	static const long values[] = { 0, 7, 50, 1250, -1250, -1, 3000, -12000, 1234567 };

	(void)state;
	for (size_t i = 0; i < sizeof(values) / sizeof(*values); i++) {
		text_join(&text, " ", "");
		text_put_thousandths(&text, values[i]);
	}
	assert_string_equal(text_chars(&text), "0 0.007 0.05 1.25 -1.25 -0.001 3 -12 1234.567");
}

static void numbers_are_written_to_both_ends_of_their_range(void **state)
{
	char wanted[64];

	(void)state;
	text_put_number(&text, INT32_MIN);
	text_put_char(&text, ' ');
	text_put_number(&text, 0);
	text_put_char(&text, ' ');
	text_put_number(&text, INT32_MAX);
	snprintf(wanted, sizeof(wanted), "%d 0 %d", INT32_MIN, INT32_MAX);
	assert_string_equal(text_chars(&text), wanted);
}

#define ON_A_NEW_TEXT(test) cmocka_unit_test_setup_teardown(test, start, stop)

int main(void)
{
	const struct CMUnitTest tests[] = {
		ON_A_NEW_TEXT(nothing_added_is_an_empty_text),
		ON_A_NEW_TEXT(a_long_text_keeps_its_beginning),
		ON_A_NEW_TEXT(words_are_joined_without_a_comma_at_either_end),
		ON_A_NEW_TEXT(a_key_is_said_with_spaces),
		ON_A_NEW_TEXT(thousandths_are_written_as_short_as_they_can_be),
		ON_A_NEW_TEXT(numbers_are_written_to_both_ends_of_their_range),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
