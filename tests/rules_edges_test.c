/*
 * The edges of the opening in the upper floor, and of open steps: where nothing guards them.
 *
 * Ten risers of 180 mm; the header stands behind nine runs of 250 mm and a riser of 18 mm.  The
 * opening is 2400 mm long and goes 100 mm past the stair's open side, on the right; a newel is
 * 90 mm square.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "rules_changes.h"

#define STAIR(rise, opening, rail)                                                                 \
	"pitchboard: 1\njob: {name: Made up, units: millimetres}\nfloors: {total_rise: " rise      \
	"}\n"                                                                                      \
	"opening: {length: 2400, width: 1000, floor_thickness: 250" opening "}\n"                  \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"risers: {thickness: 18}\nnewels: {section: 90}\n"                                         \
	"rail: {level_runs: [" rail "]}\n"

#define BACK(length) "{side: right, direction: back, length: " length "}"
#define ACROSS(length) "{side: right, direction: across, length: " length ", end: wall}"

static struct checked check(const char *job)
{
	struct checked c =
		checked_row_against("approved-document-k-2013", "edge_guarded", job, NULL, 0);

	if (!c.findings)
		fail_msg("%s", built_complaint(&c.built));
	return c;
}

/* The rail and its newel behind the header end 90 mm and the rail's length before it; the newel at
 * its other end stands past the opening. */
static void an_opening_that_is_guarded_all_round_is_met(void **state)
{
	struct checked c =
		check(STAIR("1800", ", walls: [head]", BACK("2400") ", " ACROSS("1000")));
	(void)state;
	assert_int_equal(c.findings->state, FINDING_MET);
	arena_free(c.built.arena);
}

/* 1000 mm across, a wall on the left: all of it. */
static void a_lower_end_that_nothing_guards_is_told_with_its_length(void **state)
{
	struct checked c = check(STAIR("1800", ", walls: [head]", BACK("2400")));
	(void)state;
	assert_int_equal(c.findings->state, FINDING_NOT_MET);
	assert_near(c.findings->value, 1000, 1e-6);
	assert_string_equal(c.findings->place, "lower end of the opening, all 1000 mm");
	arena_free(c.built.arena);
}

/* 2400 less 90 and 1500. */
static void a_rail_that_stops_short_leaves_the_rest_bare(void **state)
{
	struct checked c = check(STAIR("1800", ", walls: [foot, head]", BACK("1500")));
	(void)state;
	assert_near(c.findings->value, 810, 1e-6);
	assert_string_equal(c.findings->place,
		"right edge of the opening, 810 mm beginning 1590 mm from the header");
	arena_free(c.built.arena);
}

static void every_bare_edge_is_named(void **state)
{
	struct checked c = check(STAIR("1800", ", walls: [head]", BACK("1500")));
	(void)state;
	assert_near(c.findings->value, 1000, 1e-6);
	assert_non_null(strstr(c.findings->place, "right edge of the opening, 810 mm"));
	assert_non_null(strstr(c.findings->place, "lower end of the opening, all 1000 mm"));
	arena_free(c.built.arena);
}

static void a_job_that_says_nothing_of_the_edge_is_not_checked(void **state)
{
	struct checked c = check(STAIR("1800", "", ""));
	(void)state;
	assert_int_equal(c.findings->state, FINDING_NOT_CHECKED);
	arena_free(c.built.arena);
}

/* The stair's own newel, 90 mm of it at most, stands before the right edge too. */
static void no_walls_at_all_is_something_said(void **state)
{
	struct checked c = check(STAIR("1800", ", walls: []", ""));
	(void)state;
	assert_int_equal(c.findings->state, FINDING_NOT_MET);
	assert_in_range((long)c.findings->value, 2400 - 90, 2400);
	arena_free(c.built.arena);
}

/* Approved Document K 1.41: a drop of more than 600 mm. */
static void a_low_floor_needs_no_guard(void **state)
{
	struct checked low = check(STAIR("600", ", walls: []", ""));
	struct checked high = check(STAIR("601", ", walls: []", ""));
	(void)state;
	assert_int_equal(low.findings->state, FINDING_NOT_APPLICABLE);
	assert_int_equal(high.findings->state, FINDING_NOT_MET);
	arena_free(low.built.arena);
	arena_free(high.built.arena);
}

/* ---- open steps ---- */

/* Steps of 180 mm: the fourth is the first over 600 mm. */
static void a_step_that_the_rail_leaves_out_is_found(void **state)
{
	struct checked c = checked_row_against("approved-document-k-2013", "guard_needed",
		STAIR("1800", "", ""), take_rails_away, 0);
	(void)state;
	assert_int_equal(c.findings->state, FINDING_NOT_MET);
	assert_near(c.findings->value, 9 * 180, 1e-6);
	assert_string_equal(c.findings->mend, "a guard from step 4 up");
	arena_free(c.built.arena);
}

static void push_rails(struct built *b, struct part *parts, double by)
{
	(void)b;
	for (struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			if (p->kind == &part_rail || p->kind == &part_newel)
				((struct frame *)&p->places[i])->origin.x += by;
}

/* The fifth step begins 1000 mm up the flight: guarded from 760 mm on all of it is, from 1200 mm on
 * the first 200 mm are not. */
static void a_step_is_guarded_only_along_all_its_length(void **state)
{
	struct checked c = checked_row_against("approved-document-k-2013", "guard_needed",
		STAIR("1800", "", ""), push_rails, 760);
	struct checked d = checked_row_against("approved-document-k-2013", "guard_needed",
		STAIR("1800", "", ""), push_rails, 1200);
	(void)state;
	assert_int_not_equal(c.findings->state, FINDING_NOT_MET);
	assert_int_equal(d.findings->state, FINDING_NOT_MET);
	assert_non_null(strstr(d.findings->place, "right side, step 5"));
	arena_free(c.built.arena);
	arena_free(d.built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(an_opening_that_is_guarded_all_round_is_met),
		cmocka_unit_test(a_lower_end_that_nothing_guards_is_told_with_its_length),
		cmocka_unit_test(a_rail_that_stops_short_leaves_the_rest_bare),
		cmocka_unit_test(every_bare_edge_is_named),
		cmocka_unit_test(a_job_that_says_nothing_of_the_edge_is_not_checked),
		cmocka_unit_test(no_walls_at_all_is_something_said),
		cmocka_unit_test(a_low_floor_needs_no_guard),
		cmocka_unit_test(a_step_that_the_rail_leaves_out_is_found),
		cmocka_unit_test(a_step_is_guarded_only_along_all_its_length),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
