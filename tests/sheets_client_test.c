/*
 * The client's set: plain words, no marks of pieces, a name that belongs to one set of drawings.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

#include <cmocka.h>

#include "issued.h"

/* The name of the set as the page to be signed prints it large. */
static const char *name_of(const struct issued *it)
{
	const struct mark *k = find_text(sheet_of(it, "C-801"), "Set ");

	assert_non_null(k);
	return k->text.text + strlen("Set ");
}

static void its_sheets_are_numbered_like_no_others(void **state)
{
	struct issued it = issue(STAIR(""));
	int n = 0;

	(void)state;
	for (const struct drawing *g = it.sheets; g; g = g->next, n++)
		assert_int_equal(strncmp(g->id, "C-", 2), 0);
	assert_true(n >= 5);
	arena_free(it.built.arena);
}

static void no_mark_of_a_piece_is_on_them(void **state)
{
	struct issued it = issue(STAIR("wall_rails: [{side: left}]\n"));

	(void)state;
	for (const struct drawing *g = it.sheets; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			for (const struct part *p = it.built.parts; p; p = p->next)
				if (k->kind == MARK_TEXT && !part_is_existing(p))
					assert_string_not_equal(k->text.text, p->mark);
	arena_free(it.built.arena);
}

static void one_name_is_on_every_page(void **state)
{
	struct issued it = issue(STAIR(""));
	const char *name = name_of(&it);

	(void)state;
	assert_int_equal(strlen(name), 12);
	for (const struct drawing *g = it.sheets; g; g = g->next)
		assert_non_null(find_text(g, name));
	arena_free(it.built.arena);
}

static void changes_name(const char *more, int wanted)
{
	struct issued was = issue(STAIR("")), is = issue(more);

	if ((strcmp(name_of(&was), name_of(&is)) != 0) != wanted)
		fail_msg("the name of the set %s with %s", wanted ? "stays" : "changes", more);
	arena_free(was.built.arena);
	arena_free(is.built.arena);
}

static void what_is_drawn_or_agreed_otherwise_changes_the_name(void **state)
{
	(void)state;
	changes_name(STAIR("material: {treads: walnut}\n"), 1);
	changes_name(STAIR("rail: {height: 36 1/2\"}\n"), 1);
	changes_name(STAIR("treads: {nosing_profile: full_round}\n"), 1);
	changes_name(STAIR("agreement: {not_included: [permit fees]}\n"), 1);
	changes_name(STAIR("agreement: {notes: [Paid in two parts.]}\n"), 1);
	changes_name(STAIR("measured: {by: X, date: 2026-01-02, sizes: [all]}\n"), 1);
	changes_name(STAIR("revisions: [{mark: B, date: 2026-01-02, text: other}]\n"), 1);
}

/* The stair with more said of the job it is of. */
static const char *with_about(struct arena *a, const char *about)
{
	const char *job = "job: {name: Test, client: Somebody}";
	const char *yaml = STAIR(""), *at = strstr(yaml, job);

	return arena_printf(a, "%.*sjob: {name: Test, client: Somebody, %s}%s", (int)(at - yaml),
		yaml, about, at + strlen(job));
}

/* Of the frame too: what is printed anywhere is part of what is signed. */
static void changes_name_with_about(const char *about)
{
	struct arena *a = arena_new();

	changes_name(with_about(a, about), 1);
	arena_free(a);
}

static void what_only_the_title_block_says_changes_the_name_too(void **state)
{
	(void)state;
	changes_name_with_about("number: X-2");
	changes_name_with_about("drawn_by: Y");
	changes_name_with_about("date: 2026-02-03");
	changes_name_with_about("shop: Z");
	changes_name_with_about("site: Elsewhere");
}

static void who_signs_is_named_however_long_the_name(void **state)
{
	struct arena *a = arena_new();
	const char *shop = "Board and Daughters and their Sons, builders of stairs";
	struct issued it = issue(with_about(a, arena_printf(a, "shop: '%s'", shop)));
	const struct mark *k = find_text(sheet_of(&it, "C-801"), "For the shop");
	const char *rest = shop;

	(void)state;
	assert_non_null(k);
	for (k = k->next; *rest; k = k->next) {
		assert_non_null(k);
		assert_int_equal(k->kind, MARK_TEXT);
		assert_int_equal(strncmp(rest, k->text.text, strlen(k->text.text)), 0);
		rest += strlen(k->text.text);
		rest += *rest == ' ';
	}
	arena_free(it.built.arena);
	arena_free(a);
}

static const char *name_with(struct built b, const struct stationery *st)
{
	const struct drawing *sheets = sheets_draw(b.arena, b.stair, b.parts,
		(struct issue){ .set = NULL }, st, six_tenths(), &b.diags);

	assert_non_null(sheets);
	return sheets->set;
}

static void another_sentence_in_the_margin_changes_the_name(void **state)
{
	struct built b = built_from(STAIR(""));
	const struct stationery *st = stationery_read(b.arena, "templates", &b.diags);
	struct stationery other = *st;
	struct sheet_set *sets = NEW_N(b.arena, struct sheet_set, st->set_count);

	(void)state;
	for (int i = 0; i < st->set_count; i++) {
		sets[i] = st->sets[i];
		sets[i].says = "For the client.";
	}
	other.sets = sets;
	assert_string_not_equal(name_with(b, st), name_with(b, &other));
	assert_string_equal(name_with(b, st), name_with(b, st));
	arena_free(b.arena);
}

static void what_the_client_does_not_see_leaves_the_name(void **state)
{
	(void)state;
	changes_name(STAIR("stock: {kerf: 0.1\"}\n"), 0);
}

static void choices_are_said_in_plain_words(void **state)
{
	struct issued it = issue(STAIR("treads: {nosing_profile: full_round}\n"
				       "newels: {cap: {kind: pyramid, slope: 30}}\n"
				       "material: {treads: red oak, finish: clear oil}\n"));

	(void)state;
	assert_non_null(find_text(sheet_of(&it, "C-801"), "fully rounded"));
	assert_non_null(find_text(sheet_of(&it, "C-801"), "pyramid, sloping 30"));
	assert_non_null(find_text(sheet_of(&it, "C-801"), "red oak"));
	assert_non_null(find_text(sheet_of(&it, "C-801"), "clear oil"));
	arena_free(it.built.arena);
}

static void what_there_is_none_of_is_no_choice(void **state)
{
	struct issued it = issue(STAIR("risers: {kind: open}\n"
				       "stringers: {open: {kind: housed}}\n"));

	(void)state;
	assert_non_null(find_text(sheet_of(&it, "C-801"), "open: you can see"));
	assert_null(find_text(sheet_of(&it, "C-801"), "closed: "));
	assert_null(find_text(sheet_of(&it, "C-801"), "Wall rail"));
	arena_free(it.built.arena);
}

static void exclusions_are_listed_until_others_are_named(void **state)
{
	struct issued usual = issue(STAIR(""));
	struct issued own = issue(STAIR("agreement: {not_included: [carpet, the old stair]}\n"));

	(void)state;
	assert_non_null(find_text(sheet_of(&usual, "C-801"), "electrical work"));
	assert_null(find_text(sheet_of(&own, "C-801"), "electrical work"));
	assert_non_null(find_text(sheet_of(&own, "C-801"), "the old stair"));
	arena_free(usual.built.arena);
	arena_free(own.built.arena);
}

static void a_material_that_names_its_finish_has_no_other(void **state)
{
	struct issued it = issue(STAIR("stringers: {open: {kind: housed}}\n"
				       "material: {stringers: 'pine, painted', finish: oil}\n"
				       "newels: {bottom: no, top: no}\n"
				       "infill: {kind: plain}\n"));
	const struct mark *stringers = find_text(sheet_of(&it, "C-201"), "pine");

	(void)state;
	assert_non_null(stringers);
	assert_string_equal(stringers->text.text, "pine");
	assert_string_equal(stringers->next->text.text, "painted");
	for (const struct mark *k = stringers->next; k && k->kind == MARK_TEXT; k = k->next)
		assert_string_not_equal(k->text.text, "oil");
	arena_free(it.built.arena);
}

static void open_measurements_are_named_in_plain_words(void **state)
{
	struct issued some = issue(STAIR("measured: {by: X, date: 2026-01-02, "
					 "sizes: [total_rise, opening_length]}\n"));
	struct issued all = issue(STAIR("measured: {by: X, date: 2026-01-02, sizes: [all]}\n"));

	(void)state;
	assert_true(is_said(&some, "NOT YET VERIFIED ON SITE"));
	assert_true(is_said(&some, "floor thickness"));
	assert_false(is_said(&all, "NOT YET VERIFIED"));
	assert_true(is_said(&all, "measured on site by X"));
	assert_true(is_said(&all, "site sizes verified, X, 2026-01-02"));
	arena_free(some.built.arena);
	arena_free(all.built.arena);
}

static void every_open_side_is_seen_and_a_closed_stair_is_cut(void **state)
{
	struct issued both = issue("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 107\"}\n"
				   "stair: {width: 36\", left: open, right: open}\n"
				   "sheets: {set: client}\n");
	struct issued none = issue("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 107\"}\n"
				   "stair: {width: 36\", left: wall, right: wall}\n"
				   "sheets: {set: client}\n");

	(void)state;
	assert_string_equal(sheet_of(&both, "C-201")->title, "From the right");
	assert_string_equal(sheet_of(&both, "C-202")->title, "From the left");
	assert_string_equal(sheet_of(&none, "C-201")->title, "Cut along the middle");
	assert_null(sheet_of(&none, "C-202"));
	arena_free(both.built.arena);
	arena_free(none.built.arena);
}

/* Does an edge of existing work run level over or under all of the lettering, no farther from it
 * than a floor is thick on paper? */
static bool is_by_floor(const struct drawing *g, const struct mark *text)
{
	const double wide = 20, near = 12 * 25.4 / 32; /* 12" at 3/8" to the foot */
	struct vec at = text->text.at;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_LINE || k->line.pen != PEN_EXISTING)
			continue;
		struct vec a = k->line.points[0], b = k->line.points[1];
		if (fabs(a.y - b.y) < 0.1 && fabs(a.y - at.y) < near && fmin(a.x, b.x) < at.x &&
			fmax(a.x, b.x) > at.x + wide)
			return true;
	}
	return false;
}

static void the_upper_floor_is_named_where_there_is_floor(void **state)
{
	struct issued it = issue("pitchboard: 1\n"
				 "job: {name: Test, client: Somebody, units: inches}\n"
				 "floors: {total_rise: 11' 4\"}\n"
				 "opening: {length: 13', width: 4' 4\", floor_thickness: 12\",\n"
				 "  upper_ceiling_height: 8'}\n"
				 "stair: {width: 42\", left: wall,\n"
				 "  right: {side: open, guard: by_others},\n"
				 "  segments: [{kind: flight, risers: 18, run: 10\"}]}\n"
				 "stringers: {wall: sawtooth, open: {kind: mitred}}\n"
				 "wall_rails: [{side: left, profile: moulded}]\n"
				 "sheets: {set: client}\n");
	const struct drawing *g = sheet_of(&it, "C-201");
	const struct mark *name = find_text(g, "Upper floor");

	(void)state;
	assert_non_null(name);
	assert_true(is_by_floor(g, name));
	arena_free(it.built.arena);
}

/* "The program never says approved, safe or complies": issue 4, section 5. */
static void it_never_says_that_it_approves(void **state)
{
	static const char *const never[] = { "approved", "Approved", " safe", "Safe", "complies",
		"compliant" };
	struct issued it = issue(STAIR("wall_rails: [{side: left}]\n"));

	(void)state;
	for (size_t i = 0; i < sizeof(never) / sizeof(*never); i++)
		assert_false(is_said(&it, never[i]));
	assert_true(is_said(&it, "Not for a permit"));
	arena_free(it.built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(its_sheets_are_numbered_like_no_others),
		cmocka_unit_test(no_mark_of_a_piece_is_on_them),
		cmocka_unit_test(one_name_is_on_every_page),
		cmocka_unit_test(what_is_drawn_or_agreed_otherwise_changes_the_name),
		cmocka_unit_test(what_only_the_title_block_says_changes_the_name_too),
		cmocka_unit_test(who_signs_is_named_however_long_the_name),
		cmocka_unit_test(another_sentence_in_the_margin_changes_the_name),
		cmocka_unit_test(what_the_client_does_not_see_leaves_the_name),
		cmocka_unit_test(choices_are_said_in_plain_words),
		cmocka_unit_test(what_there_is_none_of_is_no_choice),
		cmocka_unit_test(exclusions_are_listed_until_others_are_named),
		cmocka_unit_test(a_material_that_names_its_finish_has_no_other),
		cmocka_unit_test(open_measurements_are_named_in_plain_words),
		cmocka_unit_test(every_open_side_is_seen_and_a_closed_stair_is_cut),
		cmocka_unit_test(the_upper_floor_is_named_where_there_is_floor),
		cmocka_unit_test(it_never_says_that_it_approves),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
