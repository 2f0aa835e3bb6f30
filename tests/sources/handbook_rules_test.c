/*
 * The stairs of public handbooks before a plan checker: which of them would pass today, and where
 * they would not.
 *
 * Sizes are from the handbooks as in stair_layouts_test.c, [R] read, [M] from memory; the outcome
 * is worked out by hand against limits that were read: IRC 2018 asks for a rise of 7 3/4 in at most
 * and a run of 10 in at least, Approved Document K for 220 mm at most, 220 to 300 mm, 42 degrees
 * and twice rise plus going of 550 to 700 mm.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "rules_checked.h"

struct layout_of {
	double total, run;
	int risers;
	const char *unit;
	const char *more; /* opening and floors */
};

static struct checked before(const char *edition, struct layout_of l)
{
	struct arena *a = arena_new();
	struct checked c = checked_against(edition,
		arena_printf(a,
			"pitchboard: 1\njob: {name: Handbook}\nfloors: {total_rise: %.4f %s}\n"
			"stair: {width: 1000 mm, right: wall, segments: [{risers: %d, run: %.4f "
			"%s}]}\n%s",
			l.total, l.unit, l.risers, l.run, l.unit, l.more ? l.more : ""),
		NULL, 0);

	arena_free(a);
	assert_non_null(c.findings);
	return c;
}

static void outcome_is(const char *edition, struct layout_of l, const char *row,
	enum finding_state state, const char *provided)
{
	struct checked c = before(edition, l);
	const struct finding *f = checked_row(&c, row);

	assert_non_null(f);
	assert_string_equal(finding_word(f->state), finding_word(state));
	assert_string_equal(f->provided, provided);
	arena_free(c.built.arena);
}

/* NAVEDTRA 14044: 107 in, 15 risers [R], run 10 3/8 in [M]: within both limits. */
static void the_navy_s_stair_meets_the_irc(void **state)
{
	const struct layout_of navy = { 107, 10.375, 15, "in", NULL };
	(void)state;
	outcome_is("irc-2018", navy, "riser_height", FINDING_MET, "7 1/8\"");
	outcome_is("irc-2018", navy, "tread_depth", FINDING_MET, "10 3/8\"");
}

/* EN5156: 94 in, 13 risers, tread 10 1/2 in [R]. */
static void the_army_s_stair_meets_the_irc(void **state)
{
	const struct layout_of army = { 94, 10.5, 13, "in", NULL };
	(void)state;
	outcome_is("irc-2018", army, "riser_height", FINDING_MET, "7 1/4\"");
	outcome_is("irc-2018", army, "tread_depth", FINDING_MET, "10 1/2\"");
}

/* Hodgson and Williams (1917), fig. 33: 12 risers of 7 in, treads of 9 1/2 in [R]: the treads of
 * 1917 are half an inch short of what is asked now. */
static void the_treads_of_1917_are_too_short_for_the_irc(void **state)
{
	const struct layout_of hodgson = { 84, 9.5, 12, "in", NULL };
	(void)state;
	outcome_is("irc-2018", hodgson, "riser_height", FINDING_MET, "7\"");
	outcome_is("irc-2018", hodgson, "tread_depth", FINDING_NOT_MET, "9 1/2\"");
}

/* Carpenters' Guide, figs 51 and 52: 112 in in 16, run 10 in; header plumb over the third nosing,
 * ceiling at 102 in: 81 in of headroom [R], an inch more than is asked. */
static void the_carpenters_guide_has_its_headroom(void **state)
{
	const struct layout_of guide = { 112, 10, 16, "in",
		"treads: {nosing: 1\"}\nrisers: {thickness: 3/4\"}\n"
		"opening: {length: 131 3/4\", ceiling_height: 102\"}\n" };
	(void)state;
	outcome_is("irc-2018", guide, "headroom", FINDING_MET, "81\"");
	outcome_is("irc-2018", guide, "tread_depth", FINDING_NEAR, "10\"");
}

/* CMHC: 2718 mm in 15 rises 181.2 mm [R], under the 200 mm of the national code; the code of 2010
 * let runs of 210 mm, that of 2020 asks for 255 mm (CHBA note [R]). */
static void the_canadian_book_rises_as_the_code_lets_it(void **state)
{
	const struct layout_of cmhc = { 2718, 210, 15, "mm", NULL };
	(void)state;
	outcome_is("nbc-2020", cmhc, "riser_height", FINDING_MET, "7 1/8\"");
	outcome_is("nbc-2020", cmhc, "tread_depth", FINDING_NOT_MET, "8 1/4\"");
}

/* Joinery lesson: 6 rises of 175 mm, 5 goings of 290 mm, 2R + G = 640, "ok in 550 to 700" [R]. */
static void the_joinery_lesson_meets_document_k(void **state)
{
	struct layout_of lesson = { 1050, 290, 6, "mm", NULL };
	struct checked c = before("approved-document-k-2013", lesson);
	static const char *const rows[] = { "riser_height", "tread_depth", "pace", "pitch" };
	(void)state;
	for (int i = 0; i < 4; i++)
		assert_int_equal(checked_row(&c, rows[i])->state, FINDING_MET);
	assert_near(checked_row(&c, "pace")->value, 640, 1e-6);
	arena_free(c.built.arena);
}

/* Vitruvius's 3 : 4 : 5, rise 108, run 144 in 16 [C]: 36.87 degrees and 6 3/4 by 9 in, too short
 * for the IRC, within the pitch of Document K. */
static void the_stair_of_vitruvius_is_not_too_steep(void **state)
{
	const struct layout_of vitruvius = { 108, 9, 16, "in", "stringers: {head: flush}\n" };
	(void)state;
	outcome_is("irc-2018", vitruvius, "tread_depth", FINDING_NOT_MET, "9\"");
	outcome_is("approved-document-k-2013", vitruvius, "pitch", FINDING_MET, "36.9\u00b0");
	outcome_is("approved-document-k-2013", vitruvius, "tread_depth", FINDING_MET, "9\"");
}

/* Old 29 CFR 1910.24, table D-1: 8 by 9 1/2 in is 40 degrees 6 minutes [R]: within 42 degrees, but
 * 8 in is more than 7 3/4 in. */
static void a_factory_stair_of_1910_24_is_too_high_for_a_house(void **state)
{
	const struct layout_of steep = { 112, 9.5, 14, "in", NULL };
	(void)state;
	outcome_is("irc-2018", steep, "riser_height", FINDING_NOT_MET, "8\"");
	outcome_is("approved-document-k-2013", steep, "pitch", FINDING_MET, "40.1\u00b0");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_navy_s_stair_meets_the_irc),
		cmocka_unit_test(the_army_s_stair_meets_the_irc),
		cmocka_unit_test(the_treads_of_1917_are_too_short_for_the_irc),
		cmocka_unit_test(the_carpenters_guide_has_its_headroom),
		cmocka_unit_test(the_canadian_book_rises_as_the_code_lets_it),
		cmocka_unit_test(the_joinery_lesson_meets_document_k),
		cmocka_unit_test(the_stair_of_vitruvius_is_not_too_steep),
		cmocka_unit_test(a_factory_stair_of_1910_24_is_too_high_for_a_house),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
