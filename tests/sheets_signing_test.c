/*
 * What must not mislead who signs a client's set.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

#include <cmocka.h>

#include "issued.h"

static void a_default_is_passed_off_as_nobodys_choice(void **state)
{
	struct issued none = issue(STAIR("")),
		      some = issue(STAIR("material: {treads: ash, "
					 "risers: pine, stringers: pine, "
					 "balustrade: ash, finish: oil}\n"));

	(void)state;
	assert_true(is_said(&none, "Still to choose"));
	assert_non_null(find_text(sheet_of(&none, "C-801"), "wood NOT CHOSEN YET"));
	assert_non_null(find_text(sheet_of(&none, "C-801"), "finish NOT CHOSEN YET"));
	assert_false(is_said(&none, "hardwood"));
	assert_false(is_said(&none, "as agreed"));
	assert_false(is_said(&some, "NOT CHOSEN YET"));
	assert_false(is_said(&some, "Still to choose"));
	arena_free(none.built.arena);
	arena_free(some.built.arena);
}

static void headroom_that_rests_on_a_guess_is_said_to(void **state)
{
	struct issued guessed = issue(STAIR("measured: {by: X, date: 2026-01-02, "
					    "sizes: [total_rise, opening_length]}\n"));
	struct issued known = issue(STAIR("measured: {by: X, date: 2026-01-02, sizes: [all]}\n"));

	(void)state;
	assert_true(is_said(&guessed, "NOT VERIFIED: it"));
	assert_false(is_said(&known, "NOT VERIFIED: it"));
	assert_true(is_said(&known, "Least headroom over the steps"));
	arena_free(guessed.built.arena);
	arena_free(known.built.arena);
}

/* Nobody measures the width of a stair that has an open side: it is chosen. */
static void the_width_beside_an_open_side_is_not_to_be_verified(void **state)
{
	struct issued it = issue(STAIR(""));

	(void)state;
	assert_non_null(find_text(sheet_of(&it, "C-101"), "3'-0\" wide"));
	assert_false(is_said(&it, "VIF"));
	arena_free(it.built.arena);
}

static void an_edge_upstairs_without_a_guard_is_told(void **state)
{
	struct issued bare = issue(STAIR(""));
	struct issued walled = issue("pitchboard: 1\n"
				     "job: {name: Test}\n"
				     "floors: {total_rise: 107\"}\n"
				     "opening: {length: 122\", floor_thickness: 11\", "
				     "walls: [left, right, foot, head]}\n"
				     "stair: {width: 36\", left: wall, right: open}\n"
				     "sheets: {set: client}\n");

	(void)state;
	assert_true(is_said(&bare, "must be guarded"));
	assert_non_null(find_text(sheet_of(&bare, "C-801"), "guards around the opening"));
	assert_false(is_said(&walled, "must be guarded"));
	assert_null(find_text(sheet_of(&walled, "C-801"), "guards around the opening"));
	arena_free(bare.built.arena);
	arena_free(walled.built.arena);
}

static void the_page_to_be_signed_names_shop_date_and_sheets(void **state)
{
	struct issued it = issue("pitchboard: 1\n"
				 "job: {name: Test, client: Somebody, shop: Bench Ltd, "
				 "shop_address: 1 Yard, date: 2026-01-02}\n"
				 "revisions: [{mark: C, date: 2026-03-04, text: later}]\n"
				 "floors: {total_rise: 107\"}\n"
				 "stair: {width: 36\", left: wall, right: open}\n"
				 "sheets: {set: client}\n");
	const struct drawing *page = sheet_of(&it, "C-801");

	(void)state;
	assert_non_null(find_text(page, "Bench Ltd"));
	assert_non_null(find_text(page, "2026-03-04"));
	assert_non_null(find_text(page, "C-901"));
	assert_true(is_said(&it, "1 Yard"));
	assert_false(is_said(&it, "2026-01-02"));
	arena_free(it.built.arena);
}

static int warnings_of(const char *yaml, const char *about)
{
	struct issued it = issue(yaml);
	int n = 0;

	for (const struct diag *d = it.built.diags.first; d; d = d->next)
		n += strstr(d->text, about) != NULL;
	arena_free(it.built.arena);
	return n;
}

static void a_set_without_a_date_or_an_address_is_warned_of(void **state)
{
	(void)state;
	assert_int_equal(warnings_of(STAIR(""), "says nothing of"), 1);
	assert_int_equal(warnings_of("pitchboard: 1\n"
				     "job: {name: T, client: S, site: H, shop: B, date: "
				     "2026-01-02}\n"
				     "floors: {total_rise: 107\"}\n"
				     "stair: {width: 36\", left: wall, right: open}\n"
				     "sheets: {set: client}\n",
				 "says nothing of"),
		0);
}

static struct issued issue_since(const struct issued *was, const char *yaml)
{
	struct issued it = { built_from(yaml), NULL };
	const struct stationery *st = stationery_read(it.built.arena, "templates", &it.built.diags);
	struct earlier earlier = { was->built.stair, was->built.parts };
	const struct change *changes =
		changes_find(it.built.arena, earlier, it.built.stair, it.built.parts);

	it.sheets = sheets_draw(it.built.arena, it.built.stair, it.built.parts,
		(struct issue){ .changes = changes, .earlier = was->sheets, .was = earlier }, st,
		six_tenths(), &it.built.diags);
	assert_non_null(it.sheets);
	return it;
}

static void a_later_set_says_what_it_was_before(void **state)
{
	struct issued was = issue(STAIR("material: {treads: white oak}\n"));
	struct issued it = issue_since(&was,
		STAIR("material: {treads: cherry}\n"
		      "revisions: [{mark: B, date: 2026-03-04, text: other wood}]\n"));

	(void)state;
	assert_true(is_said(&it, "This set replaces set"));
	assert_true(is_said(&it, "Treads: cherry, was white oak"));
	assert_false(is_said(&it, "Balusters: "));
	assert_non_null(find_text(sheet_of(&it, "C-801"), "Changed"));
	assert_true(is_said(&it, "A cloud with a letter"));
	arena_free(was.built.arena);
	arena_free(it.built.arena);
}

static void a_first_set_says_nothing_of_changes(void **state)
{
	struct issued it = issue(STAIR(""));

	(void)state;
	assert_false(is_said(&it, "This set replaces"));
	assert_false(is_said(&it, "A cloud with"));
	assert_null(find_text(sheet_of(&it, "C-801"), "Changed"));
	arena_free(it.built.arena);
}

static void wall_rails_are_told_apart(void **state)
{
	struct issued it = issue("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 107\"}\n"
				 "stair: {width: 36\", left: wall, right: wall}\n"
				 "wall_rails: [{side: left}, {side: right, from_step: 3}]\n"
				 "sheets: {set: client}\n");

	(void)state;
	assert_true(is_said(&it, "on the right from step 3"));
	assert_non_null(find_text(sheet_of(&it, "C-801"), "Wall rail, left"));
	assert_non_null(find_text(sheet_of(&it, "C-801"), "Wall rail, right"));
	arena_free(it.built.arena);
}

/* Back along the opening, and across its foot to the wall on the left. */
#define GUARD(length)                                                                              \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2775}\n"                                                             \
	"opening: {length: 3400, width: 1065, floor_thickness: 290}\n"                             \
	"stair: {width: 1000, left: wall, right: open, "                                           \
	"segments: [{kind: flight, risers: 15, run: 265}]}\n"                                      \
	"stringers: {open: {kind: housed}}\n"                                                      \
	"rail: {width: 60, level_runs: [{side: right, direction: back, length: 3440}, "            \
	"{side: right, direction: across, end: wall, length: " length "}]}\n"                      \
	"sheets: {set: client}\n"

static void a_guard_that_stops_short_of_its_wall_is_warned_of(void **state)
{
	(void)state;
	assert_int_equal(warnings_of(GUARD("800"), "short of it"), 1);
	assert_int_equal(warnings_of(GUARD("1065"), "short of it"), 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_default_is_passed_off_as_nobodys_choice),
		cmocka_unit_test(headroom_that_rests_on_a_guess_is_said_to),
		cmocka_unit_test(the_width_beside_an_open_side_is_not_to_be_verified),
		cmocka_unit_test(an_edge_upstairs_without_a_guard_is_told),
		cmocka_unit_test(the_page_to_be_signed_names_shop_date_and_sheets),
		cmocka_unit_test(a_set_without_a_date_or_an_address_is_warned_of),
		cmocka_unit_test(a_later_set_says_what_it_was_before),
		cmocka_unit_test(a_first_set_says_nothing_of_changes),
		cmocka_unit_test(wall_rails_are_told_apart),
		cmocka_unit_test(a_guard_that_stops_short_of_its_wall_is_warned_of),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
