/*
 * Words under the plan, of walls that stand out into the steps, and what it and the sheets of
 * newels say of rails.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "sheets/plan_walls.h"
#include "sheets_of.h"

#define STAIR(of, more)                                                                            \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 250}]}\n"       \
	"stringers: {wall: sawtooth, wall_gap: 100}\n"                                             \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, scribe: 3, notches: [" of          \
	"]}\n" more

#define MEASURED "measured: {by: T, date: 2026-11-01, sizes: [all]}\n"

static void assert_words(const char *job, const char *want)
{
	struct built b = built_from(job);
	assert_string_equal(plan_walls_words(b.arena, b.stair), want);
	arena_free(b.arena);
}

static void a_breast_is_given_with_the_sizes_that_it_is_measured_by(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: right, along: 70, from: 60, across: 600}", MEASURED),
		"Walls in the steps: right, 70 out and 600 along the stair, from 60 behind the "
		"nosing of step 4 on. Treads and risers are scribed to their faces; their sizes "
		"leave 3 there.");
}

static void sizes_that_nobody_measured_are_flagged(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: left, along: 70, across: 100}", ""),
		"Walls in the steps: left, 70 VIF out and 100 VIF along the stair, in the back "
		"corner of step 4. Treads and risers are scribed to their faces; their sizes leave "
		"3 there.");
}

static void that_plain_skirts_end_at_it_is_said(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: right, along: 70, from: 0, across: 275}",
			     MEASURED "skirts: {wall: plain}\n"),
		"Walls in the steps: right, 70 out and 275 along the stair, from the nosing of "
		"step 4 on. Treads and risers are scribed to their faces; their sizes leave 3 "
		"there. No skirt is on those: the skirts of their wall end there.");
}

static void one_at_the_back_and_a_stair_without_any_say_nothing(void **state)
{
	(void)state;
	assert_words(STAIR("{step: 4, at: back, along: 100, across: 60, from: 300}", ""), "");
	assert_words(STAIR("", ""), "");
}

static void a_level_rail_joined_out_of_lengths_is_figured_whole(void **state)
{
	struct built b =
		built_from("pitchboard: 1\n"
			   "job: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 2700}\n"
			   "opening: {length: 4100, width: 1300, floor_thickness: 300}\n"
			   "stair: {width: 1000, left: wall, right: open}\n"
			   "rail: {level_runs: [{side: right, direction: back, length: 4100}]}\n"
			   "stock: {lengths: [2 m, 2.4 m]}\n");
	const struct drawing *g = sheets_of(&b, &sheet_plan, 420, 297);

	(void)state;
	assert_int_equal(count_begun(g, "level rail 4100"), 1);
	assert_int_equal(count_begun(g, "level rail"), 1);
	arena_free(b.arena);
}

/* Whoever reads it: this one is the shop's. */
static void edges_of_the_opening_without_a_guard_are_told_under_the_plan(void **state)
{
	struct built bare =
		built_from("pitchboard: 1\n"
			   "job: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 2700}\n"
			   "opening: {length: 3500, width: 1300, floor_thickness: 300}\n"
			   "stair: {width: 1000, left: wall, right: open}\n");
	struct built walled =
		built_from("pitchboard: 1\n"
			   "job: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 2700}\n"
			   "opening: {length: 3500, width: 1000, walls: [right, left, foot],\n"
			   "  floor_thickness: 300}\n"
			   "stair: {width: 1000, left: wall, right: wall}\n");

	(void)state;
	assert_int_equal(count_begun(sheets_of(&bare, &sheet_plan, 420, 297),
				 "Opening in the upper floor"),
		1);
	assert_int_equal(count_begun(sheets_of(&walled, &sheet_plan, 420, 297),
				 "Opening in the upper floor"),
		0);
	arena_free(bare.arena);
	arena_free(walled.arena);
}

static void newels_without_a_rail_have_no_note_of_how_a_rail_meets_them(void **state)
{
	struct built none = built_from("pitchboard: 1\n"
				       "job: {name: Test, units: millimetres}\n"
				       "floors: {total_rise: 2700}\n"
				       "stair: {width: 1000, left: wall,\n"
				       "  right: {side: open, guard: by_others}}\n");
	const struct drawing *g = sheets_of(&none, &sheet_details, 420, 297);

	(void)state;
	assert_true(count_begun(g, "On a newel") == 1);
	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			assert_false(k->kind == MARK_TEXT && strstr(k->text.text, "rail's"));
	arena_free(none.arena);
}

/* Three carriages: the walking line runs over the middle one, where its mark stood. */
static void no_mark_of_a_stringer_stands_on_the_walking_line(void **state)
{
	struct built b =
		built_from("pitchboard: 1\n"
			   "job: {name: Test, units: inches}\n"
			   "floors: {total_rise: 107\"}\n"
			   "stair: {width: 40\", left: wall, right: {side: open, from_step: 5},\n"
			   "  segments: [{risers: 14, run: 10 1/4\"}]}\n"
			   "stringers: {wall_gap: 5 1/2\"}\n"
			   "skirts: {wall: none}\n");
	const struct drawing *g = sheets_of(&b, &sheet_plan, 432, 279);
	const struct vec *line = NULL;

	(void)state;
	for (const struct mark *k = g->first; k && !line; k = k->next)
		if (k->kind == MARK_LINE && k->line.pen == PEN_CENTRE)
			line = k->line.points;
	assert_non_null(line);
	assert_int_equal(count_begun(g, "S2"), 2);
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strncmp(k->text.text, "S2", 2) == 0)
			assert_true(
				k->text.at.y > line->y || k->text.at.y + k->text.height < line->y);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_breast_is_given_with_the_sizes_that_it_is_measured_by),
		cmocka_unit_test(sizes_that_nobody_measured_are_flagged),
		cmocka_unit_test(that_plain_skirts_end_at_it_is_said),
		cmocka_unit_test(one_at_the_back_and_a_stair_without_any_say_nothing),
		cmocka_unit_test(a_level_rail_joined_out_of_lengths_is_figured_whole),
		cmocka_unit_test(edges_of_the_opening_without_a_guard_are_told_under_the_plan),
		cmocka_unit_test(newels_without_a_rail_have_no_note_of_how_a_rail_meets_them),
		cmocka_unit_test(no_mark_of_a_stringer_stands_on_the_walking_line),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
