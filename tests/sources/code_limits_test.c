/*
 * The limits in templates/rules against where they were taken from.
 *
 *   R   the text, or a verbatim copy of it, was read
 *   S   second hand: somebody's account of it was read
 *   M   from memory: the test holds the file to what was remembered, and to saying so
 *
 * Read for the IRC: Jefferson County (Colorado), verbatim pages of the 2018 code; Camden County NC,
 * ordinance 2019-08-01, for R312; the 2006 text for rails.  For England: a copy of Approved
 * Document K (2013), page by page.  For Australia: ABCB Housing Provisions part 11.2.  Second hand:
 * Ontario Regulation 332/12 and the CMHC book for Canada's 9.8; summaries of DIN 18065:2020-08.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "rules_checked.h"

#define R SOURCE_READ
#define S SOURCE_SECOND_HAND
#define M SOURCE_FROM_MEMORY
#define IN 25.4
#define NONE (-1.0)

struct known {
	const char *row;
	double least, most; /* NONE: no such limit; a strict limit counts as most */
	enum rule_source source;
	const char *section;
};

/* 34 to 38 in is 34 to 38 in, and not the rounded 864 to 965 mm. */
static const struct known irc_2018[] = {
	{ "riser_height", NONE, 7.75 * IN, R, "R311.7.5.1" },
	{ "riser_difference", NONE, 0.375 * IN, R, "R311.7.5.1" },
	{ "riser_opening", NONE, 4 * IN, M, "R311.7.5.1" },
	{ "tread_depth", 10 * IN, NONE, R, "R311.7.5.2" },
	{ "nosing_projection", 0.75 * IN, 1.25 * IN, S, "R311.7.5.3" },
	{ "nosing_difference", NONE, 0.375 * IN, M, "R311.7.5.3" },
	{ "nosing_radius", NONE, 0.5625 * IN, M, "R311.7.5.3" },
	{ "nosing_bevel", NONE, 0.5 * IN, M, "R311.7.5.3" },
	{ "winder_depth", 10 * IN, NONE, S, "R311.7.5.2.1" },
	{ "winder_narrow", 6 * IN, NONE, S, "R311.7.5.2.1" },
	{ "winder_difference", NONE, 0.375 * IN, R, "R311.7.5.2.1" },
	{ "flight_rise", NONE, 151 * IN, M, "R311.7.3" },
	{ "headroom", 80 * IN, NONE, R, "R311.7.2" },
	{ "clear_width", 36 * IN, NONE, R, "R311.7.1" },
	{ "clear_width_one_rail", 31.5 * IN, NONE, R, "R311.7.1" },
	{ "clear_width_two_rails", 27 * IN, NONE, R, "R311.7.1" },
	{ "rail_projection", NONE, 4.5 * IN, S, "R311.7.1" },
	{ "foot_depth", 36 * IN, NONE, M, "R311.7.6" },
	{ "head_depth", 36 * IN, NONE, M, "R311.7.6" },
	{ "foot_width_over", 0, NONE, M, "R311.7.6" },
	{ "head_door", 0, NONE, M, "R311.7.6" },
	{ "rail_height", 34 * IN, 38 * IN, R, "R311.7.8.1" },
	{ "wall_clearance", 1.5 * IN, NONE, R, "R311.7.8.3" },
	{ "rail_diameter", 1.25 * IN, 2 * IN, R, "R311.7.8.5" },
	{ "rail_perimeter", 4 * IN, NONE, R, "R311.7.8.5" },
	{ "rail_across", NONE, 2.25 * IN, R, "R311.7.8.5" },
	{ "rail_recess_start", NONE, 0.75 * IN, R, "R311.7.8.5" },
	{ "rail_recess_depth", 0.3125 * IN, NONE, R, "R311.7.8.5" },
	{ "rail_recess_within", NONE, 0.875 * IN, R, "R311.7.8.5" },
	{ "rail_edge", 0.01 * IN, NONE, M, "R311.7.8.5" },
	{ "rail_recess_height", 0.375 * IN, NONE, R, "R311.7.8.5" },
	{ "rail_recess_reach", 1.75 * IN, NONE, R, "R311.7.8.5" },
	{ "rail_recess_width", 1.25 * IN, 2.75 * IN, M, "R311.7.8.5" },
	{ "guard_needed", NONE, 30 * IN, R, "R312.1.1" },
	{ "guard_height", 34 * IN, NONE, R, "R312.1.2" },
	{ "ball_between", NONE, 4.375 * IN, R, "R312.1.3" },
	{ "ball_in_triangle", NONE, 6 * IN, R, "R312.1.3" },
	{ "edge_guarded", NONE, 4 * IN, R, "R312.1.1" },
	{ "floor_guard_height", 36 * IN, NONE, R, "R312.1.2" },
	{ "floor_ball", NONE, 4 * IN, R, "R312.1.3" },
	{ 0 },
};

/* The numbers of the sections moved; that nothing else did is from memory. */
static const struct known irc_2024[] = {
	{ "riser_height", NONE, 7.75 * IN, R, "R318.7.5.1" },
	{ "headroom", 80 * IN, NONE, R, "R318.7.2" },
	{ "flight_rise", NONE, 151 * IN, M, "R318.7.3" },
	{ "ball_between", NONE, 4.375 * IN, R, "R321.1.3" },
	{ 0 },
};

static const struct known ibc_2021[] = {
	{ "riser_height", NONE, 7.75 * IN, S, "1011.5.2 exc. 3" },
	{ "tread_depth", 10 * IN, NONE, S, "1011.5.2 exc. 3" },
	{ "riser_difference", NONE, 0.375 * IN, M, "1011.5.4" },
	{ "nosing_radius", IN / 16, 0.5625 * IN, M, "1011.5.5" },
	{ "nosing_bevel", IN / 16, 0.5 * IN, M, "1011.5.5" },
	{ "flight_rise", NONE, 144 * IN, M, "1011.8" },
	{ "headroom", 80 * IN, NONE, M, "1011.3" },
	{ "foot_depth", 48 * IN, NONE, M, "1011.6" },
	{ "head_depth_over", 0, NONE, M, "1011.6" },
	{ "foot_door", 18 * IN, NONE, M, "1011.6" },
	{ "clear_width", 36 * IN, NONE, M, "1011.2" },
	{ "rail_projection", NONE, 4.5 * IN, S, "1014.8" },
	{ "rail_least_across", 1 * IN, NONE, M, "1014.3" },
	{ "rail_height", 34 * IN, 38 * IN, M, "1014.2" },
	{ "guard_needed", NONE, 30 * IN, S, "1015.2" },
	{ "edge_guarded", NONE, 4 * IN, M, "1015.2" },
	{ "ball_between", NONE, 4.375 * IN, M, "1015.4" },
	{ 0 },
};

static const struct known document_k[] = {
	{ "riser_height", 150, 220, R, "1.3, table 1.1" },
	{ "tread_depth", 220, 300, R, "1.3, table 1.1" },
	{ "pitch", NONE, 42 * PI / 180, R, "table 1.1, note 1" },
	{ "pace", 550, 700, R, "1.3" },
	{ "riser_opening", NONE, 100, M, "1.9" },
	{ "tread_overlap", 16, NONE, S, "1.9" },
	{ "headroom", 2000, NONE, S, "1.11" },
	{ "head_depth_over", 0, NONE, R, "1.19-1.24" },
	{ "foot_width_over", 0, NONE, R, "1.19-1.24" },
	{ "foot_door", 400, NONE, R, "1.19-1.24" },
	{ "flight_risers", NONE, 36, R, "1.18" },
	{ "winder_narrow", 50, NONE, S, "diagram 1.9" },
	{ "rail_height", 900, 1000, S, "1.36" },
	{ "guard_needed", NONE, 600, R, "1.41" },
	{ "edge_guarded", NONE, 100, R, "1.41" },
	{ "guard_height", 900, NONE, R, "diagram 3.1" },
	{ "ball_between", NONE, 100, R, "1.39" },
	{ 0 },
};

static const struct known canada[] = {
	{ "riser_height", 125, 200, S, "9.8.4.1" },
	{ "tread_depth", 255, 355, S, "9.8.4.1" },
	{ "riser_difference_adjacent", NONE, 5, M, "9.8.4.4" },
	{ "riser_difference", NONE, 10, M, "9.8.4.4" },
	{ "nosing_projection", NONE, 25, M, "9.8.4.2" },
	{ "nosing_radius", 6, 14, M, "9.8.4.8" },
	{ "nosing_bevel", 6, 14, M, "9.8.4.8" },
	{ "flight_rise", NONE, 3700, S, "9.8.3.3" },
	{ "clear_width", 860, NONE, S, "9.8.2.1" },
	{ "headroom", 1950, NONE, S, "9.8.2.2" },
	{ "head_depth", 860, NONE, S, "9.8.6" },
	{ "rail_height", 865, 1070, M, "9.8.7.4" },
	{ "edge_guarded", NONE, 100, M, "9.8.8.1" },
	{ "guard_height", 900, NONE, M, "9.8.8.3" },
	{ "ball_between", NONE, 100, S, "9.8.8.5" },
	{ "stringer_throat", 90, NONE, S, "9.8.9.4" },
	{ "stringer_width", 235, NONE, S, "9.8.9.4" },
	{ "stringer_thickness", 25, NONE, S, "9.8.9.4" },
	{ "stringer_spacing", NONE, 900, S, "9.8.9.4" },
	{ "tread_thickness", 25, NONE, S, "9.8.9.5" },
	{ "tread_thickness_open", 38, NONE, S, "9.8.9.5" },
	{ 0 },
};

static const struct known australia[] = {
	{ "riser_height", 115, 190, R, "11.2.2, table 11.2.2" },
	{ "tread_depth", 240, 355, R, "11.2.2, table 11.2.2" },
	{ "pace", 550, 700, R, "11.2.2, table 11.2.2" },
	{ "riser_difference_adjacent", NONE, 5, R, "11.2.2" },
	{ "riser_difference", NONE, 10, R, "11.2.2" },
	{ "flight_risers", 2, 18, R, "11.2.2" },
	{ "riser_opening", NONE, 125, R, "11.2.2" },
	{ "foot_depth", 750, NONE, M, "11.2.5" },
	{ "headroom", 2000, NONE, M, "10.3.1" },
	{ "edge_guarded", NONE, 125, M, "11.3.3" },
	{ "guard_height", 865, NONE, M, "11.3.4" },
	{ "ball_between", NONE, 125, M, "11.3.4" },
	{ "floor_guard_height", 1000, NONE, M, "11.3.4" },
	{ 0 },
};

static const struct known din[] = {
	{ "riser_height", 140, 200, S, "table 1" },
	{ "tread_depth", 230, 370, S, "table 1" },
	{ "usable_width", 800, NONE, S, "table 1" },
	{ "headroom", 2000, NONE, S, "6.6" },
	{ "flight_risers", NONE, 18, S, "6.1" },
	{ "pace", 590, 650, M, "6.2" },
	{ "riser_difference_adjacent", NONE, 5, S, "6.5" },
	{ "nosing_projection", 30, NONE, M, "6.3" },
	{ "rail_height", 800, 1150, M, "6.9" },
	{ "guard_needed", NONE, 1000, M, "6.8; building regulations of the states" },
	{ "edge_guarded", NONE, 120, M, "6.8; building regulations of the states" },
	{ "guard_height", 900, NONE, M, "6.8" },
	{ 0 },
};

#define ANY_JOB                                                                                    \
	"pitchboard: 1\njob: {name: Any}\nfloors: {total_rise: 107\"}\nstair: {width: 36\"}\n"

static void same_limit(const struct rule *r, struct limit l, double wanted)
{
	if ((wanted == NONE) != (!l.text || !*l.text))
		fail_msg("%s: a limit too many or too few", r->row);
	if (wanted != NONE)
		assert_near(l.value, wanted, 1e-9);
}

static void agrees(const struct checked *c, const struct known *k)
{
	const struct finding *f = checked_row(c, k->row);

	assert_non_null(f);
	const struct bounds *b = &f->rule->bounds;
	bool is_strict = b->below.text && *b->below.text;
	same_limit(f->rule, b->least, k->least);
	same_limit(f->rule, is_strict ? b->below : b->most, k->most);
	assert_int_equal(f->rule->source, k->source);
	assert_string_equal(f->rule->section, k->section);
}

static void edition_agrees(const char *edition, const struct known *known)
{
	struct checked c = checked_against(edition, ANY_JOB, NULL, 0);

	assert_non_null(c.findings);
	for (; known->row; known++)
		agrees(&c, known);
	arena_free(c.built.arena);
}

static void the_irc_of_2018(void **state)
{
	(void)state;
	edition_agrees("irc-2018", irc_2018);
}

static void the_irc_of_2021_has_the_limits_of_2018(void **state)
{
	(void)state;
	edition_agrees("irc-2021", irc_2018);
}

static void the_irc_of_2024_has_other_section_numbers(void **state)
{
	(void)state;
	edition_agrees("irc-2024", irc_2024);
}

static void the_ibc_in_dwellings(void **state)
{
	(void)state;
	edition_agrees("ibc-2021", ibc_2021);
}

static void england_s_document_k(void **state)
{
	(void)state;
	edition_agrees("approved-document-k-2013", document_k);
}

static void canada_s_section_9_8(void **state)
{
	(void)state;
	edition_agrees("nbc-2020", canada);
}

static void australia_s_housing_provisions(void **state)
{
	(void)state;
	edition_agrees("ncc-2022", australia);
}

static void germany_s_din_18065(void **state)
{
	(void)state;
	edition_agrees("din-18065-2020", din);
}

/* What was read in the text of 2018 was not read in that of 2021, and the program says so. */
static void a_limit_that_is_carried_over_says_where_it_was_read(void **state)
{
	struct checked c = checked_against("irc-2021", ANY_JOB, NULL, 0);
	(void)state;
	assert_string_equal(checked_row(&c, "headroom")->source,
		"read in IRC 2018; carried over from memory");
	assert_string_equal(checked_row(&c, "flight_rise")->source, "from memory");
	arena_free(c.built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_irc_of_2018),
		cmocka_unit_test(the_irc_of_2021_has_the_limits_of_2018),
		cmocka_unit_test(the_irc_of_2024_has_other_section_numbers),
		cmocka_unit_test(the_ibc_in_dwellings),
		cmocka_unit_test(england_s_document_k),
		cmocka_unit_test(canada_s_section_9_8),
		cmocka_unit_test(australia_s_housing_provisions),
		cmocka_unit_test(germany_s_din_18065),
		cmocka_unit_test(a_limit_that_is_carried_over_says_where_it_was_read),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
