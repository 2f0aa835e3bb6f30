/*
 * How many risers and how long a run: what is taken from the job, and what is chosen.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define HEAD                                                                                       \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"

static void given_risers_and_run_are_taken_as_they_are(void **state)
{
	struct built b =
		built_from(HEAD "floors: {total_rise: 2718}\n"
				"stair: {width: 900, segments: [{risers: 15, run: 250}]}\n");
	(void)state;
	assert_non_null(b.stair);
	assert_int_equal(b.stair->risers, 15);
	assert_int_equal(b.stair->treads, 14);
	assert_near(b.stair->unit_rise, 181.2, 1e-9); /* 2718 / 15, by hand */
	assert_near(b.stair->flights[0].total_run, 3500, 1e-9);
	assert_int_equal(b.stair->option_count, 0);
	arena_free(b.arena);
}

static void a_last_tread_flush_with_the_floor_is_one_tread_more(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2100}\n"
					 "stair: {width: 900, segments: [{risers: 12, run: 250}]}\n"
					 "stringers: {head: flush}\n");
	(void)state;
	assert_int_equal(b.stair->treads, 12);
	assert_near(b.stair->flights[0].total_run, 3000, 1e-9);
	assert_near(b.stair->flights[0].steps[11].level, 2100, 1e-9);
	arena_free(b.arena);
}

/* NAVEDTRA 14044 ch. 6: measured on structural floors, the difference of the finishes is added. */
static void a_structural_rise_is_corrected_by_both_finishes(void **state)
{
	struct built b =
		built_from(HEAD "floors: {structural_rise: 2700, lower_finish: 30, "
				"upper_finish: 20}\n"
				"stair: {width: 900, segments: [{risers: 15, run: 250}]}\n");
	(void)state;
	assert_near(b.stair->total_rise, 2690, 1e-9);
	assert_near(b.stair->lower_structural, -30, 1e-9);
	assert_near(b.stair->upper_structural, 2670, 1e-9);
	arena_free(b.arena);
}

static void levels_are_never_added_up_from_rounded_rises(void **state)
{
	struct built b =
		built_from("pitchboard: 1\njob: {name: Test, units: inches}\n"
			   "floors: {total_rise: 94\"}\n"
			   "stair: {width: 36\", segments: [{risers: 13, run: 10 1/2\"}]}\n");
	const struct flight *f = &b.stair->flights[0];
	(void)state;
	for (int i = 0; i < f->step_count; i++)
		assert_near(f->steps[i].level, 94 * 25.4 * (i + 1) / 13, 1e-9);
	assert_near(f->steps[11].level + b.stair->unit_rise, 94 * 25.4, 1e-9);
	arena_free(b.arena);
}

static const struct layout_option *chosen(const struct stair *s)
{
	for (int i = 0; i < s->option_count; i++)
		if (s->options[i].chosen)
			return &s->options[i];
	return NULL;
}

static void the_chosen_layout_says_why_it_won(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2700}\nstair: {width: 900}\n");
	(void)state;
	assert_non_null(b.stair);
	assert_int_equal(chosen(b.stair)->risers, b.stair->risers);
	assert_near(chosen(b.stair)->unit_run, b.stair->flights[0].unit_run, 0);
	assert_non_null(strstr(chosen(b.stair)->verdict, "chosen"));
	arena_free(b.arena);
}

static void every_other_layout_says_why_it_lost(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2700}\nstair: {width: 900}\n");
	(void)state;
	assert_true(b.stair->option_count > 2);
	for (int i = 0; i < b.stair->option_count; i++)
		assert_true(strlen(b.stair->options[i].verdict) > 10);
	/* 2700 / 13 and 2700 / 19, by hand; 150 to 200 when the job is silent */
	assert_string_equal(b.stair->options[0].verdict, "rise 208 mm is over the most, 200 mm");
	assert_string_equal(b.stair->options[b.stair->option_count - 1].verdict,
		"rise 142 mm is under the least, 150 mm");
	arena_free(b.arena);
}

static void the_run_that_there_is_shortens_the_chosen_run(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2700}\n"
					 "stair: {width: 900, segments: [{total_run: 3600}]}\n");
	(void)state;
	assert_non_null(b.stair);
	assert_true(b.stair->flights[0].total_run <= 3600 + 1e-9);
	arena_free(b.arena);
}

static void a_run_that_does_not_fit_is_refused_with_what_is_missing(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2700}\n"
					 "stair: {width: 900, segments: [{risers: 15, run: 260, "
					 "total_run: 3600}]}\n");
	(void)state;
	assert_null(b.stair);
	/* 14 x 260 = 3640 */
	assert_string_equal(built_complaint(&b),
		"14 steps of 260 mm need a run of 3640 mm: 40 mm more than total_run, 3600 mm");
	arena_free(b.arena);
}

static void limits_that_leave_nothing_are_told_and_the_nearest_layout_drawn(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2700}\n"
					 "stair: {width: 900, segments: [{total_run: 2000}]}\n");
	(void)state;
	assert_non_null(b.stair);
	/* 2000 / 13 = 153.8, and least_run is 240 when the job is silent */
	assert_near(b.stair->flights[0].total_run, 2000, 1e-9);
	assert_string_equal(built_complaint(&b),
		"no layout keeps every limit of comfort: 14 risers of 193 mm and a unit run of "
		"154 mm come nearest, but unit run 154 mm is under the least, 240 mm");
	assert_string_equal(b.diags.first->hint,
		"write comfort.least_run: 153 mm, or give risers and run");
	arena_free(b.arena);
}

static void the_walking_line_runs_up_the_middle(void **state)
{
	struct built b =
		built_from(HEAD "floors: {total_rise: 2718}\n"
				"stair: {width: 900, segments: [{risers: 15, run: 250}]}\n");
	(void)state;
	assert_near(b.stair->walking_line[0].y, 450, 1e-9);
	assert_near(b.stair->walking_length, 3500, 1e-9);
	arena_free(b.arena);
}

static void the_nosing_line_touches_every_nosing(void **state)
{
	struct built b =
		built_from(HEAD "floors: {total_rise: 2718}\n"
				"stair: {width: 900, segments: [{risers: 15, run: 250}]}\n");
	const struct flight *f = &b.stair->flights[0];
	struct slope_line line = flight_nosing_line(b.stair, f);
	(void)state;
	for (int i = 0; i < f->step_count; i++)
		assert_near(slope_at(line, f->steps[i].nosing_x), f->steps[i].level, 1e-9);
	arena_free(b.arena);
}

static void a_side_is_open_only_between_the_steps_it_names(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2718}\n"
					 "stair: {width: 900, right: {side: open, from_step: 3, "
					 "to_step: 9}, segments: [{risers: 15, run: 250}]}\n");
	const struct step *steps = b.stair->flights[0].steps;
	(void)state;
	for (int i = 0; i < 14; i++) {
		assert_int_equal(steps[i].open_right, i + 1 >= 3 && i + 1 <= 9);
		assert_false(steps[i].open_left);
	}
	arena_free(b.arena);
}

static void a_step_that_is_not_there_cannot_be_open(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 2718}\n"
					 "stair: {width: 900, right: {side: open, from_step: 15}, "
					 "segments: [{risers: 15, run: 250}]}\n");
	(void)state;
	assert_null(b.stair);
	assert_string_equal(built_complaint(&b),
		"the right side is open from step 15, but the last step is 14");
	arena_free(b.arena);
}

static void the_dump_names_every_step(void **state)
{
	struct built b = built_from(HEAD "floors: {total_rise: 540}\n"
					 "stair: {width: 900, segments: [{risers: 3, run: 250}]}\n"
					 "treads: {nosing: 25}\n");
	(void)state;
	assert_non_null(b.stair);
	assert_string_equal(stair_dump(b.arena, b.stair),
		"stair: 3 risers of 180.0000 make 540.000, 2 treads, width 900.000\n"
		"structural floors: 0.000 and 540.000\n"
		"flight: 3 risers, 2 steps, unit run 250.000, total run 500.000, pitch 35.754\n"
		"  step 1: level 180.000, nosing -25.000, riser 0.000, open right\n"
		"  step 2: level 360.000, nosing 225.000, riser 250.000, open right\n"
		"walking line: 500.000\n"
		"headroom: not checked\n");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(given_risers_and_run_are_taken_as_they_are),
		cmocka_unit_test(a_last_tread_flush_with_the_floor_is_one_tread_more),
		cmocka_unit_test(a_structural_rise_is_corrected_by_both_finishes),
		cmocka_unit_test(levels_are_never_added_up_from_rounded_rises),
		cmocka_unit_test(the_chosen_layout_says_why_it_won),
		cmocka_unit_test(every_other_layout_says_why_it_lost),
		cmocka_unit_test(the_run_that_there_is_shortens_the_chosen_run),
		cmocka_unit_test(a_run_that_does_not_fit_is_refused_with_what_is_missing),
		cmocka_unit_test(limits_that_leave_nothing_are_told_and_the_nearest_layout_drawn),
		cmocka_unit_test(the_walking_line_runs_up_the_middle),
		cmocka_unit_test(the_nosing_line_touches_every_nosing),
		cmocka_unit_test(a_side_is_open_only_between_the_steps_it_names),
		cmocka_unit_test(a_step_that_is_not_there_cannot_be_open),
		cmocka_unit_test(the_dump_names_every_step),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
