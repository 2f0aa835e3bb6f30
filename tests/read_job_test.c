/* What a job is once it is read: values, defaults, places, measurements. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <string.h>

#include "base/file.h"
#include "near.h"
#include "read_job.h"
#include "read_said.h"

#define IN(inches) ((inches)*25.4)

static const struct job *job_in(const char *path)
{
	struct file_result r = file_read(arena, path);

	assert_non_null(r.file);
	return job_of(arena_strndup(arena, (const char *)r.file->bytes, r.file->size));
}

#define METRIC                                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2718}\n"                                                             \
	"stair: {width: 900}\n"

/* 8 ft 11 in, US Navy NAVEDTRA 14044. */
static void a_bare_number_is_in_the_jobs_unit(void **state)
{
	const struct job *inches = job_of(SOUND "rail: {height: 36}\n");
	const struct job *metric = job_of(METRIC "rail: {height: 900}\n");

	(void)state;
	assert_true(inches->floors.total_rise == 2717.8);
	assert_true(inches->rail.height == 914.4);
	assert_true(metric->floors.total_rise == 2718);
	assert_true(metric->rail.height == 900);
}

static void the_unit_is_known_wherever_it_stands_in_the_file(void **state)
{
	const struct job *job = job_of("stair: {width: 900}\n"
				       "floors: {total_rise: 2718}\n"
				       "job: {name: Test, units: millimetres}\n"
				       "pitchboard: 1\n");

	(void)state;
	assert_true(job->stair.width == 900);
}

/* PS 20 dressed widths of nominal 6, 8, 10, 12 and 14; 5/4 hardwood surfaced two sides. */
static void defaults_are_the_trades_own_in_inches(void **state)
{
	const struct job *job = job_of(SOUND);
	static const double widths[] = { 5.5, 7.25, 9.25, 11.25, 13.25 };

	(void)state;
	assert_near(job->treads.thickness, IN(17.0 / 16), 1e-9);
	assert_near(job->opening.headroom, IN(80), 1e-9);
	assert_near(job->rail.height, IN(36), 1e-9);
	assert_int_equal(job->about.fraction, 16);
	assert_int_equal(job->stringers.stock_width_count, 5);
	for (int i = 0; i < 5; i++)
		assert_near(job->stringers.stock_widths[i], IN(widths[i]), 1e-9);
	assert_near(job->stringers.stock_lengths[0], IN(96), 1e-9);
	assert_near(job->stringers.stock_lengths[6], IN(240), 1e-9);
	assert_string_equal(job->sheets.paper, "Tabloid");
}

static void defaults_are_round_figures_in_millimetres(void **state)
{
	const struct job *job = job_of(METRIC);

	(void)state;
	assert_true(job->treads.thickness == 27);
	assert_true(job->opening.headroom == 2000);
	assert_true(job->stringers.wall.thickness == 45);
	assert_true(job->stringers.stock_lengths[0] == 2400);
	assert_int_equal(job->about.fraction, 1);
	assert_string_equal(job->sheets.paper, "A3");
}

static void a_stringers_usual_thickness_goes_by_its_kind(void **state)
{
	const struct job *job = job_of(SOUND "stringers: {wall: housed, open: sawtooth}\n");

	(void)state;
	assert_near(job->stringers.wall.thickness, IN(1.25), 1e-9);
	assert_near(job->stringers.open.thickness, IN(1.5), 1e-9);
}

static void some_sizes_follow_others_unless_given(void **state)
{
	const struct job *job = job_of(SOUND "treads: {nosing: 1\", side_overhang: 1 1/2\"}\n");
	const struct job *own = job_of(SOUND "treads: {nosing: 1\", return_past: 2\"}\n");

	(void)state;
	assert_near(job->treads.strip_width, IN(1.5), 1e-9);
	assert_near(job->treads.return_past, IN(1), 1e-9);
	assert_near(own->treads.return_past, IN(2), 1e-9);
}

static void a_thin_tread_gets_a_smaller_usual_radius(void **state)
{
	const struct job *job = job_of(SOUND "treads: {thickness: 3/4\"}\n");

	(void)state;
	assert_near(job->treads.nosing_radius, IN(0.375), 1e-9);
}

static void open_risers_are_nothing_thick(void **state)
{
	(void)state;
	assert_true(job_of(SOUND "risers: open\n")->risers.thickness == 0);
	assert_near(job_of(SOUND)->risers.thickness, IN(0.75), 1e-9);
}

static void a_stair_without_segments_is_one_flight(void **state)
{
	const struct job *job = job_of(SOUND);

	(void)state;
	assert_int_equal(job->stair.segment_count, 1);
	assert_int_equal(job->stair.segments[0].kind, SEGMENT_FLIGHT);
	assert_int_equal(job->stair.segments[0].risers, 0);
	assert_int_equal(job->stringers.middle_count, -1);
}

static void a_word_stands_for_a_group_of_one_key(void **state)
{
	const struct job *job = job_of("pitchboard: 1\n"
				       "job: {name: Test}\n"
				       "floors: {total_rise: 107}\n"
				       "stair:\n"
				       "  width: 36\n"
				       "  left: open\n"
				       "  right: {side: open, from_step: 3, to_step: 9}\n");

	(void)state;
	assert_int_equal(job->stair.left.kind, SIDE_OPEN);
	assert_int_equal(job->stair.left.from_step, 1);
	assert_int_equal(job->stair.left.to_step, 0);
	assert_int_equal(job->stair.right.from_step, 3);
	assert_int_equal(job->stair.right.to_step, 9);
	assert_true(node_has(job->stair.left.src, "side"));
	assert_int_equal(node_pos(job->stair.left.src, "side").line, 6);
}

static void a_later_pass_can_point_at_the_file(void **state)
{
	const struct job *job = job_of(SOUND);
	struct pos width = node_pos(job->stair.src, "width");
	struct pos absent = node_pos(job->stair.src, "left");
	struct pos nowhere = node_pos(job->rail.src, "height");

	(void)state;
	assert_int_equal(width.line, 6);
	assert_int_equal(width.col, 10);
	assert_int_equal(absent.line, 5);
	assert_int_equal(nowhere.line, 0);
	assert_false(node_has(job->rail.src, "height"));
}

/* 7 1/64 was typed, so 64ths are lettered; where it was not, not even a sum of 64ths is. */
static void what_was_typed_is_lettered_as_it_was_typed(void **state)
{
	const struct job *fine = job_of(SOUND "rail: {height: 36 1/64\"}\n");

	(void)state;
	assert_int_equal(job_lettering(fine).finest, 64);
	/* the room round a newel is 1/32 unless given */
	assert_int_equal(job_lettering(job_of(SOUND)).finest, 32);
	assert_int_equal(job_lettering(job_of(METRIC)).finest, 1);
	assert_int_equal(job_lettering(job_of(METRIC "rail: {height: 900.5}\n")).finest, 2);
}

/* Half of a tread of 27 mm, or of 1 1/16", is on no graduation of its thickness. */
static void a_radius_is_lettered_as_half_a_thickness(void **state)
{
	struct arena *a = arena_new();
	struct lettering inches =
		job_radius_lettering(job_of(SOUND "treads: {newel_fit: 1/16\"}\n"));
	struct lettering metric = job_radius_lettering(job_of(METRIC));

	(void)state;
	assert_string_equal(length_letter_inches(a, inches, 17.0 / 32 * MM_PER_INCH), "17/32\"");
	assert_string_equal(length_letter_inches(a, metric, 13.5), "13.5");
	arena_free(a);
}

static const struct assumption *assumed(const struct job *job, const char *label)
{
	for (const struct assumption *a = job->assumptions; a; a = a->next)
		if (strcmp(a->label, label) == 0)
			return a;
	return NULL;
}

static void a_default_that_was_used_is_an_assumption(void **state)
{
	const struct assumption *nosing = assumed(job_of(SOUND), "nosing projection");

	(void)state;
	assert_non_null(nosing);
	assert_string_equal(nosing->value, "1 1/8\"");
	assert_int_equal(nosing->shown, SHOWN_PLAN | SHOWN_ELEVATION);
	assert_string_equal(assumed(job_of(METRIC), "nosing projection")->value, "25");
}

static void what_was_typed_is_no_assumption(void **state)
{
	const struct job *job = job_of(SOUND "treads: {nosing: 1 1/8\"}\n");

	(void)state;
	assert_null(assumed(job, "nosing projection"));
	assert_non_null(assumed(job, "return past the riser"));
}

static void a_default_that_cannot_matter_is_no_assumption(void **state)
{
	const struct job *walled = job_of("pitchboard: 1\n"
					  "job: {name: Test}\n"
					  "floors: {total_rise: 107}\n"
					  "stair: {width: 36, left: wall, right: wall}\n");

	(void)state;
	assert_null(assumed(walled, "rail height"));
	assert_null(assumed(walled, "depth of housings"));
	assert_non_null(assumed(walled, "scribing allowance at walls"));
	assert_null(assumed(job_of(SOUND "risers: open\n"), "riser thickness"));
}

/* The guard of the flight is somebody else's, the one at the upper floor is made here. */
static void a_level_run_is_filled_by_default_where_others_guard_the_steps(void **state)
{
	static const char others[] =
		"pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 107}\n"
		"stair: {width: 36, left: wall, right: {side: open, guard: by_others}}\n";
	const struct job *steps = job_of(others);
	const struct job *run = job_of(arena_printf(arena,
		"%srail: {level_runs: [{side: right, direction: back, length: 60}]}\n", others));

	(void)state;
	assert_null(assumed(steps, "largest gap in the balustrade"));
	assert_non_null(assumed(run, "largest gap in the balustrade"));
}

static const char *unmeasured(const struct job *job)
{
	const char *const *names;
	const char *all = "";
	int n = job_unmeasured(arena, job, &names);

	for (int i = 0; i < n; i++)
		all = arena_printf(arena, "%s%s ", all, names[i]);
	return all;
}

static void sizes_are_open_until_they_are_said_to_be_measured(void **state)
{
	static const char opening[] = SOUND "opening: {length: 10', floor_thickness: 11\"}\n";
	const char *some = arena_printf(arena,
		"%smeasured: {by: me, date: 2026-11-01, "
		"sizes: [total_rise, opening_length]}\n",
		opening);
	const char *all = arena_printf(arena,
		"%smeasured: {by: me, date: 2026-11-01, sizes: [all]}\n", opening);

	(void)state;
	assert_string_equal(unmeasured(job_of(opening)),
		"total_rise opening_length floor_thickness ");
	assert_string_equal(unmeasured(job_of(some)), "floor_thickness ");
	assert_string_equal(unmeasured(job_of(all)), "");
	assert_true(job_is_measured(job_of(some), "total_rise"));
	assert_false(job_is_measured(job_of(some), "floor_thickness"));
}

static void notches_are_measured_on_site_where_there_are_any(void **state)
{
	static const char cut_out[] =
		SOUND "treads: {notches: [{step: 3, at: left, along: 3\", across: 4\"}]}\n";
	const char *taken = arena_printf(arena,
		"%smeasured: {by: me, date: 2026-11-01, sizes: [total_rise, notches]}\n", cut_out);

	(void)state;
	assert_string_equal(unmeasured(job_of(cut_out)), "total_rise notches ");
	assert_string_equal(unmeasured(job_of(taken)), "");
}

static void the_width_is_measured_only_between_walls(void **state)
{
	static const char form[] = "pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 107}\n"
				   "stair: {width: 36, left: wall, right: %s}\n";

	(void)state;
	assert_string_equal(unmeasured(job_of(arena_printf(arena, form, "wall"))),
		"total_rise width ");
	assert_string_equal(unmeasured(job_of(arena_printf(arena, form, "open"))), "total_rise ");
	assert_string_equal(unmeasured(job_of(
				    arena_printf(arena, form, "{side: open, from_step: 6}"))),
		"total_rise width ");
}

/* 14 risers, 13 treads: open to the thirteenth is open all the way. */
static void a_side_that_is_open_to_the_last_step_stands_free(void **state)
{
	static const char form[] =
		"pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 107}\n"
		"stair: {width: 36, left: wall, right: {side: open, to_step: %d}, "
		"segments: [{risers: 14, run: 10}]}\n";

	(void)state;
	assert_string_equal(unmeasured(job_of(arena_printf(arena, form, 13))), "total_rise ");
	assert_string_equal(unmeasured(job_of(arena_printf(arena, form, 12))), "total_rise width ");
}

static void a_measured_structural_rise_makes_the_finished_one_measured(void **state)
{
	const struct job *job = job_of("pitchboard: 1\n"
				       "job: {name: Test}\n"
				       "floors: {structural_rise: 107\", lower_finish: 1\", "
				       "upper_finish: 3/4\"}\n"
				       "stair: {width: 36}\n"
				       "measured: {by: me, date: 2026-11-01, "
				       "sizes: structural_rise}\n");

	(void)state;
	assert_true(job_is_measured(job, "total_rise"));
	assert_string_equal(unmeasured(job), "");
}

static void the_fingerprint_follows_every_byte(void **state)
{
	const char *one = job_of(SOUND)->fingerprint;

	(void)state;
	assert_int_equal(strlen(one), 12);
	assert_string_equal(one, job_of(SOUND)->fingerprint);
	assert_string_not_equal(one, job_of(SOUND "\n")->fingerprint);
}

static void bytes_of_a_name_come_through_untouched(void **state)
{
	const struct job *job = job_of("\xef\xbb\xbfpitchboard: 1\r\n"
				       "job: {name: \u0141ukasz \u0150sz}\r\n"
				       "floors: {total_rise: 107}\r\n"
				       "stair: {width: 36}\r\n");

	(void)state;
	assert_string_equal(job->about.name, "\u0141ukasz \u0150sz");
}

static void newels_are_spoken_of_only_where_there_are_some(void **state)
{
	const struct job *without = job_of(SOUND "newels: {bottom: no, top: no}\n");

	(void)state;
	assert_non_null(assumed(job_of(SOUND), "newels, square"));
	assert_null(assumed(without, "newels, square"));
	assert_null(assumed(without, "newel top over the rail"));
	assert_non_null(assumed(without, "balusters, square"));
}

static void the_full_starter_leaves_nothing_assumed(void **state)
{
	(void)state;
	assert_null(job_in("templates/starters/full.yaml")->assumptions);
}

static void the_demo_jobs_show_all_three_kinds_of_stringer(void **state)
{
	const struct job *alder = job_in("jobs/alder-lane.yaml");
	const struct job *kiln = job_in("jobs/kiln-yard.yaml");

	(void)state;
	assert_int_equal(alder->stringers.wall.kind, STRINGER_SAWTOOTH);
	assert_int_equal(alder->stringers.open.kind, STRINGER_MITRED);
	assert_int_equal(kiln->stringers.open.kind, STRINGER_HOUSED);
	assert_string_equal(unmeasured(alder), "floor_thickness ");
	assert_string_equal(unmeasured(kiln), "");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_bare_number_is_in_the_jobs_unit),
		cmocka_unit_test(the_unit_is_known_wherever_it_stands_in_the_file),
		cmocka_unit_test(defaults_are_the_trades_own_in_inches),
		cmocka_unit_test(defaults_are_round_figures_in_millimetres),
		cmocka_unit_test(a_stringers_usual_thickness_goes_by_its_kind),
		cmocka_unit_test(some_sizes_follow_others_unless_given),
		cmocka_unit_test(a_thin_tread_gets_a_smaller_usual_radius),
		cmocka_unit_test(open_risers_are_nothing_thick),
		cmocka_unit_test(a_stair_without_segments_is_one_flight),
		cmocka_unit_test(a_word_stands_for_a_group_of_one_key),
		cmocka_unit_test(a_later_pass_can_point_at_the_file),
		cmocka_unit_test(what_was_typed_is_lettered_as_it_was_typed),
		cmocka_unit_test(a_radius_is_lettered_as_half_a_thickness),
		cmocka_unit_test(a_default_that_was_used_is_an_assumption),
		cmocka_unit_test(what_was_typed_is_no_assumption),
		cmocka_unit_test(a_default_that_cannot_matter_is_no_assumption),
		cmocka_unit_test(a_level_run_is_filled_by_default_where_others_guard_the_steps),
		cmocka_unit_test(sizes_are_open_until_they_are_said_to_be_measured),
		cmocka_unit_test(notches_are_measured_on_site_where_there_are_any),
		cmocka_unit_test(the_width_is_measured_only_between_walls),
		cmocka_unit_test(a_side_that_is_open_to_the_last_step_stands_free),
		cmocka_unit_test(a_measured_structural_rise_makes_the_finished_one_measured),
		cmocka_unit_test(the_fingerprint_follows_every_byte),
		cmocka_unit_test(bytes_of_a_name_come_through_untouched),
		cmocka_unit_test(newels_are_spoken_of_only_where_there_are_some),
		cmocka_unit_test(the_full_starter_leaves_nothing_assumed),
		cmocka_unit_test(the_demo_jobs_show_all_three_kinds_of_stringer),
	};

	return cmocka_run_group_tests(tests, arena_open, arena_close);
}
