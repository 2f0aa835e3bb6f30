/*
 * What the findings say: the reason, the place, and a mend with a number.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

#include <cmocka.h>

#include "job_edit.h"
#include "near.h"
#include "rules_changes.h"

/* 16 risers of 7 in on a run of 10 in, between walls, under a ceiling at 102 in. */
#define GUIDE(risers, run, rest)                                                                   \
	"pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 112\"}\n"                          \
	"stair: {width: 37\", right: wall, segments: [{risers: " risers ", run: " run "}]}\n"      \
	"treads: {nosing: 1\"}\nrisers: {thickness: 3/4\"}\n" rest

#define OPENING(length) "opening: {length: " length ", ceiling_height: 102\"}\n"

static struct checked check(const char *job)
{
	struct checked c = checked_against("irc-2018", job, NULL, 0);

	assert_non_null(c.findings);
	return c;
}

static void mended_by(const char *job, const char *row, const char *mend)
{
	struct checked c = check(job);

	assert_string_equal(checked_row(&c, row)->mend, mend);
	arena_free(c.built.arena);
}

/* 112 in 14 is 8 in; in 15, 7.467 in; a riser more is a tread more. */
static void a_riser_too_high_is_mended_by_one_more(void **state)
{
	(void)state;
	mended_by(GUIDE("14", "10\"", ""), "riser_height",
		"15 risers make it 7 7/16\", and the run 10\" longer");
}

/* 16 3/8 in is 8.19 in twice and 5.46 in three times: DIN 18065 asks for 140 to 200 mm. */
static void where_no_number_of_risers_will_do_none_is_named(void **state)
{
	struct checked c = checked_against("din-18065-2020",
		"pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 16 3/8\"}\n"
		"stair: {width: 37\", right: wall, segments: [{risers: 2, run: 10\"}]}\n",
		NULL, 0);
	(void)state;
	assert_int_equal(checked_row(&c, "riser_height")->state, FINDING_NOT_MET);
	assert_string_equal(checked_row(&c, "riser_height")->mend, "5/16\" less");
	arena_free(c.built.arena);
}

/* 15 treads of a quarter inch more each. */
static void a_tread_too_short_is_mended_by_run(void **state)
{
	(void)state;
	mended_by(GUIDE("16", "9 3/4\"", ""), "tread_depth",
		"a unit run of 10\": the flight is 3 3/4\" longer");
}

/* 81 in at 131 3/4 in of opening (Carpenters' Guide); 4 in less of it cost 2.8 in: 78.2, and 1.8 in
 * are missing, which is 1.8 * 10 / 7 = 2.571 in along the flight: 2 9/16 in would be too little. */
static void headroom_is_mended_by_moving_the_edge_of_the_opening(void **state)
{
	struct checked c = check(GUIDE("16", "10\"", OPENING("127 3/4\"")));
	const struct finding *f = checked_row(&c, "headroom");
	(void)state;
	assert_near(f->value / 25.4, 78.2, 1e-9);
	assert_string_equal(f->place, "under the upper floor over the foot, over step 3");
	assert_string_equal(f->mend,
		"the edge of the opening 2 5/8\" further towards the foot of "
		"the stair, or a floor 1 13/16\" thinner");
	arena_free(c.built.arena);
}

/* A closed stringer runs on before the first riser, and the rail over it: no tread is there. */
static void what_passes_before_the_first_riser_is_told_at_the_floor(void **state)
{
	struct checked c = check(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\nfloors: {total_rise: 2600}\n"
		"stair: {width: 900, right: open, segments: [{risers: 14, run: 250}]}\n"
		"stringers: {open: housed}\nnewels: {section: 90}\n"
		"balusters: {largest_gap: 45, section: 20, thickness: 20, dowel: 8}\n");
	(void)state;
	assert_string_equal(checked_row(&c, "ball_between")->place,
		"right side, at the lower floor, at a newel");
	arena_free(c.built.arena);
}

static void a_flight_without_a_rail_is_told_how_many_risers_it_has(void **state)
{
	struct checked c = check(GUIDE("16", "10\"", ""));
	const struct finding *f = checked_row(&c, "rail_needed");
	(void)state;
	assert_int_equal(f->state, FINDING_NOT_MET);
	assert_string_equal(f->provided, "16 risers, no rail");
	assert_string_equal(f->mend, "a rail over 16 risers, on a wall or an open side");
	arena_free(c.built.arena);
}

/* Two to a tread of 11 1/4 in leave 5 5/8 less 1 1/4: no less than the 4 3/8 in that must not pass.
 */
static void balusters_that_leave_just_the_limit_are_mended_by_one_more(void **state)
{
	(void)state;
	mended_by("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 100\"}\n"
		  "stair: {width: 36\", left: open, right: wall, "
		  "segments: [{risers: 14, run: 11 1/4\"}]}\n"
		  "newels: {top: no, bottom: no}\n"
		  "balusters: {section: 1 1/4\", per_tread: 2, largest_gap: 4 3/8\"}\n",
		"ball_between", "3 balusters to a tread leave 2 1/2\" between them");
}

/* IRC R311.7.8.1: 34 in to 38 in.  The hand may go up by the other rail when this one is mended. */
static void a_rail_too_high_is_mended_together_with_one_too_low_on_the_other_side(void **state)
{
	struct checked c =
		check("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 112\"}\n"
		      "stair: {width: 37\", left: wall, right: open, "
		      "segments: [{risers: 16, run: 10\"}]}\n"
		      "rail: {height: 33\"}\nwall_rails: [{side: left, height: 39\"}]\n");
	const struct finding *f = checked_row(&c, "rail_height");
	(void)state;
	assert_string_equal(f->provided, "39\"");
	assert_int_equal(f->setting_count, 2);
	assert_string_equal(f->settings[0].path, "wall_rails[1].height");
	assert_string_equal(f->settings[0].value, "38\"");
	assert_string_equal(f->settings[1].path, "rail.height");
	assert_string_equal(f->settings[1].value, "34\"");
	arena_free(c.built.arena);
}

/* As a job is checked for its owner: the edition has its say in the layout too. */
static const struct finding *found(struct arena *a, const char *text, const char *row)
{
	struct diags d;

	diags_init(&d, a, "job.yaml", text);
	const struct job *job = job_read(a, text, &d);
	const struct rule_set *rules = rules_read(a, "templates", job, &d);
	const struct stair *s = stair_solve(a, job, rules_for_layout(a, rules), &d);
	const struct finding *f = code_check(a, s, parts_make(a, s, &d), rules, &d);
	while (f && strcmp(f->rule->row, row) != 0)
		f = f->next;
	assert_non_null(f);
	return f;
}

/* IRC 2018 R311.7.5.1: a ball of 4 in must not go through.  15 risers of 104 in leave 5 3/8 in
 * under treads of 1 9/16 in, 14 leave half an inch more; with the longer nosing that the bar needs,
 * headroom under the opening would have 14 chosen. */
static void a_nosing_that_is_made_longer_for_a_bar_keeps_the_risers_that_were_chosen(void **state)
{
	struct arena *a = arena_new();
	const char *text = "pitchboard: 1\njob: {name: Test}\ncode: irc-2018\n"
			   "floors: {total_rise: 104\"}\n"
			   "stair: {width: 37\", right: wall, segments: [{total_run: 172\"}]}\n"
			   "opening: {length: 135\", ceiling_height: 96\"}\n"
			   "treads: {thickness: 1 9/16\", nosing: 11/16\",\n"
			   "  nosing_profile: chamfer, nosing_radius: 25/32\"}\n"
			   "risers: {kind: open}\n";
	const struct finding *f = found(a, text, "riser_opening");
	(void)state;
	assert_int_equal(f->state, FINDING_NOT_MET);
	assert_string_equal(f->provided, "5 3/8\"");
	assert_string_equal(f->settings[1].path, "treads.nosing");
	for (int i = 0; i < f->setting_count; i++)
		text = job_edit(a, text, f->settings[i].path, f->settings[i].value);
	assert_int_not_equal(found(a, text, "riser_opening")->state, FINDING_NOT_MET);
	arena_free(a);
}

static void a_value_that_would_read_like_its_limit_is_said_finer(void **state)
{
	/* 7 3/4 in and 0.01 in over */
	struct checked c = check("pitchboard: 1\njob: {name: Test}\n"
				 "floors: {total_rise: 108.64 in}\n"
				 "stair: {width: 37\", segments: [{risers: 14, run: 10\"}]}\n");
	(void)state;
	assert_string_equal(checked_row(&c, "riser_height")->provided, "7 49/64\"");
	arena_free(c.built.arena);
}

static void a_step_out_of_its_place_is_named(void **state)
{
	struct checked c = checked_against("irc-2018", GUIDE("16", "10\"", ""), raise_step, 12.7);
	const struct finding *f = checked_row(&c, "riser_difference");
	(void)state;
	assert_int_equal(f->state, FINDING_NOT_MET);
	assert_string_equal(f->provided, "1\"");
	assert_string_equal(f->place, "riser 8, left end and riser 7, left end");
	arena_free(c.built.arena);
}

static void what_is_met_by_less_than_the_tolerance_is_near(void **state)
{
	struct checked c = check(GUIDE("16", "10 1/32\"", ""));
	struct checked d = check(GUIDE("16", "10 1/16\"", ""));
	(void)state;
	assert_int_equal(checked_row(&c, "tread_depth")->state, FINDING_NEAR);
	assert_int_equal(checked_row(&d, "tread_depth")->state, FINDING_MET);
	arena_free(c.built.arena);
	arena_free(d.built.arena);
}

/* 1/16 in against 0.01 in at least (IRC R311.7.8.5): less to spare than the tolerance of 1/16 in,
 * and still five times what is asked. */
static void a_tolerance_larger_than_the_limit_makes_nothing_near(void **state)
{
	struct checked c = check(GUIDE("16", "10\"",
		"wall_rails: [{side: left}]\n"
		"rail: {profile: square, width: 1 1/2\", depth: 1 1/2\", edge_radius: 1/16\"}\n"));
	(void)state;
	assert_int_equal(checked_row(&c, "rail_edge")->state, FINDING_MET);
	arena_free(c.built.arena);
}

static void what_a_job_does_not_show_is_not_checked(void **state)
{
	struct checked c = check(GUIDE("16", "10\"", ""));
	static const char *const rows[] = { "headroom", "foot_depth", "lighting", "glazing",
		"loads" };
	(void)state;
	for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
		const struct finding *f = checked_row(&c, rows[i]);
		assert_int_equal(f->state, FINDING_NOT_CHECKED);
		assert_true(*f->reason);
		assert_string_equal(f->provided, "");
	}
	arena_free(c.built.arena);
}

static void what_does_not_apply_says_why(void **state)
{
	struct checked c = check(GUIDE("16", "11\"", ""));
	const struct finding *f = checked_row(&c, "nosing_projection");
	(void)state;
	assert_int_equal(f->state, FINDING_NOT_APPLICABLE);
	assert_string_equal(f->reason,
		"only where tread depth, nosing to nosing: less than 11\"; here 11\"");
	arena_free(c.built.arena);
}

static void what_is_not_met_is_a_warning_at_its_key(void **state)
{
	struct checked c = check(GUIDE("16", "9 3/4\"", ""));
	(void)state;
	const struct diag *d = c.built.diags.first;
	while (!strstr(d->text, "R311.7.5.2"))
		d = d->next;
	assert_int_equal(d->level, DIAG_WARNING);
	assert_int_equal(d->at.line, 4);
	assert_string_equal(d->text,
		"IRC 2018 R311.7.5.2: tread depth, nosing to nosing is 9 "
		"3/4\", asked: at least 10\"; every step");
	arena_free(c.built.arena);
}

/* A limit in millimetres for a job in inches is said in both. */
static void a_limit_is_said_in_the_units_of_its_edition_first(void **state)
{
	struct checked c = checked_against("nbc-2020", GUIDE("16", "10\"", ""), NULL, 0);
	(void)state;
	assert_string_equal(checked_row(&c, "riser_height")->asked,
		"125 mm to 200 mm (4 59/64\" to 7 7/8\")");
	arena_free(c.built.arena);
}

/* A least that a place adds leaves the ball that must not pass where it was. */
static void limits_from_below_and_from_above_are_both_said(void **state)
{
	struct checked c = checked_against("{edition: irc-2018, amendments: [{row: riser_opening, "
					   "least: 1\", by: A. Body, date: 2026-10-01}]}",
		GUIDE("16", "10\"", ""), NULL, 0);
	(void)state;
	assert_string_equal(checked_row(&c, "riser_opening")->asked,
		"at least 1\" and less than 4\"");
	assert_string_equal(checked_row(&c, "rail_height")->asked, "34\" to 38\"");
	arena_free(c.built.arena);
}

/* The program checks; it does not say more. */
static void no_finding_says_more_than_it_knows(void **state)
{
	static const char *const words[] = { "approved ", "safe ", "is safe", "complies",
		"compliant", "compliance" };
	struct built b = built_from(GUIDE("16", "10\"", ""));
	const char *const *name = rules_names(b.arena, "templates");
	(void)state;
	for (; *name; name++) {
		struct checked c = checked_against(*name, GUIDE("16", "10\"", ""), NULL, 0);
		const char *text = findings_text(c.built.arena, c.findings);
		const char *json = findings_json(c.built.arena, c.findings, "job.yaml");
		for (size_t i = 0; i < sizeof(words) / sizeof(words[0]); i++) {
			assert_null(strstr(text, words[i]));
			assert_null(strstr(json, words[i]));
		}
		assert_non_null(strstr(text, "met as entered"));
		arena_free(c.built.arena);
	}
	arena_free(b.arena);
}

/* 112 in up on one side that is open, where somebody else's guard will stand. */
static void a_guard_by_others_is_not_checked_and_never_met(void **state)
{
	static const char *const rows[] = { "rail_needed", "rail_height", "guard_needed",
		"guard_height" };
	struct checked c =
		check("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 112\"}\n"
		      "stair: {width: 37\", left: {side: open, guard: by_others}, right: wall,\n"
		      "  segments: [{risers: 16, run: 10\"}]}\n");
	(void)state;
	for (size_t i = 0; i < sizeof(rows) / sizeof(*rows); i++) {
		const struct finding *f = checked_row(&c, rows[i]);
		assert_int_equal(f->state, FINDING_NOT_CHECKED);
		assert_string_equal(f->reason, "the guard of an open side is by others");
	}
	arena_free(c.built.arena);
}

/* 250 / 2 - 32 leave 93 between balusters: what is too much is beside a newel, 12 of it in its
 * panel. */
static void a_ball_that_goes_into_a_newels_panel_is_said_to(void **state)
{
	struct checked c = checked_against("approved-document-k-2013",
		"pitchboard: 1\njob: {name: Made up, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"
		"newels: {build: panelled, section: 120, panels: {strip_thickness: 12}}\n"
		"balusters: {section: 32, per_tread: 2}\n",
		NULL, 0);
	(void)state;
	assert_int_equal(checked_row(&c, "ball_between")->state, FINDING_NOT_MET);
	assert_non_null(strstr(checked_row(&c, "ball_between")->mend, "newel's panel"));
	arena_free(c.built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_ball_that_goes_into_a_newels_panel_is_said_to),
		cmocka_unit_test(a_guard_by_others_is_not_checked_and_never_met),
		cmocka_unit_test(a_riser_too_high_is_mended_by_one_more),
		cmocka_unit_test(where_no_number_of_risers_will_do_none_is_named),
		cmocka_unit_test(a_tread_too_short_is_mended_by_run),
		cmocka_unit_test(headroom_is_mended_by_moving_the_edge_of_the_opening),
		cmocka_unit_test(what_passes_before_the_first_riser_is_told_at_the_floor),
		cmocka_unit_test(a_flight_without_a_rail_is_told_how_many_risers_it_has),
		cmocka_unit_test(balusters_that_leave_just_the_limit_are_mended_by_one_more),
		cmocka_unit_test(
			a_rail_too_high_is_mended_together_with_one_too_low_on_the_other_side),
		cmocka_unit_test(
			a_nosing_that_is_made_longer_for_a_bar_keeps_the_risers_that_were_chosen),
		cmocka_unit_test(a_value_that_would_read_like_its_limit_is_said_finer),
		cmocka_unit_test(a_step_out_of_its_place_is_named),
		cmocka_unit_test(what_is_met_by_less_than_the_tolerance_is_near),
		cmocka_unit_test(a_tolerance_larger_than_the_limit_makes_nothing_near),
		cmocka_unit_test(what_a_job_does_not_show_is_not_checked),
		cmocka_unit_test(what_does_not_apply_says_why),
		cmocka_unit_test(what_is_not_met_is_a_warning_at_its_key),
		cmocka_unit_test(a_limit_is_said_in_the_units_of_its_edition_first),
		cmocka_unit_test(limits_from_below_and_from_above_are_both_said),
		cmocka_unit_test(no_finding_says_more_than_it_knows),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
