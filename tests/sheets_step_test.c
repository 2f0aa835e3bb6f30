/*
 * One step, in section and of every stringer: where the lists leave no room for it, it has a sheet
 * of its own.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "sheets_of.h"

static struct built walled(void)
{
	return built_from("pitchboard: 1\n"
			  "job: {name: Test, units: millimetres}\n"
			  "floors: {total_rise: 2700}\n"
			  "stair: {width: 900, left: wall, right: wall}\n");
}

/* On how many sheets these words stand. */
static int sheets_with(const struct drawing *g, const char *words)
{
	int n = 0;

	for (; g; g = g->next) {
		bool has = false;
		for (const struct mark *m = g->first; m; m = m->next)
			has |= m->kind == MARK_TEXT && strcmp(m->text.text, words) == 0;
		n += has;
	}
	return n;
}

static int count(const struct drawing *g)
{
	int n = 0;

	for (; g; g = g->next)
		n++;
	return n;
}

static void a_step_in_section_is_drawn_on_every_paper(void **state)
{
	struct built b = walled();
	(void)state;
	const struct drawing *large = sheets_of(&b, &sheet_parts, 841, 594);
	const struct drawing *small = sheets_of(&b, &sheet_parts, 297, 210);
	assert_int_equal(count(large), 1);
	assert_int_equal(sheets_with(large, "A step in section"), 1);
	assert_int_equal(sheets_with(small, "A step in section"), 1);
	assert_true(count(small) > 1);
	arena_free(b.arena);
}

static void one_step_of_a_stringer_is_drawn_on_every_paper(void **state)
{
	struct built b = walled();
	(void)state;
	for (double width = 240; width < 900; width += 60) {
		const struct drawing *g = sheets_of(&b, &sheet_stringer, width, width / 1.4);
		assert_int_equal(sheets_with(g, "S1 one step"), 1);
	}
	arena_free(b.arena);
}

/* Half of a plank of 295 mm, the widest there is, goes in on 420 by 220; a fifth would leave the
 * sheet nearly empty. */
static void one_step_on_a_sheet_of_its_own_is_as_large_as_goes_in(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, left: wall, right: open}\n"
				    "stringers: {open: {kind: mitred}}\n");
	(void)state;
	const struct drawing *g =
		titled(sheets_of(&b, &sheet_stringer, 420, 220), "Stringer S1, right, one step");
	assert_non_null(g);
	assert_string_equal(g->scale, "1:2");
	struct drawing alone = *g;
	alone.next = NULL;
	assert_int_equal(sheets_with(&alone, "Notes"), 1);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_step_in_section_is_drawn_on_every_paper),
		cmocka_unit_test(one_step_of_a_stringer_is_drawn_on_every_paper),
		cmocka_unit_test(one_step_on_a_sheet_of_its_own_is_as_large_as_goes_in),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
