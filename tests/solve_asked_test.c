/*
 * What is asked of a layout comes before comfort: headroom, and the limits of an edition.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define JOB(comfort, segment, opening)                                                             \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2700}\n" comfort "stair: {width: 900, segments: [" segment "]}\n"    \
	"treads: {nosing: 25}\n"                                                                   \
	"risers: {thickness: 18}\n"                                                                \
	"opening: " opening "\n"

#define SHORT_OPENING "{length: 2550, floor_thickness: 250, headroom: 1900}"

static const struct layout_limit headroom_of_2000[] = {
	{ .bounds = { MEASURE_HEADROOM, 2000, INFINITY }, .from = "Test Code 1" },
};

struct solved {
	struct built built;
	const struct layout_option *chosen;
};

static struct solved solved_within(const char *yaml, const struct layout_limit *limits, int n)
{
	struct solved s = { .built = { .arena = arena_new() } };
	struct built *b = &s.built;
	const struct layout_limits all = { limits, n };
	diags_init(&b->diags, b->arena, "job.yaml", yaml);
	b->stair = stair_solve(b->arena, job_read(b->arena, yaml, &b->diags), &all, &b->diags);
	for (int i = 0; b->stair && i < b->stair->option_count; i++)
		if (b->stair->options[i].chosen)
			s.chosen = &b->stair->options[i];
	return s;
}

/* 15 risers of 180; the header is 14 x 250 + 18 = 3518 behind the first riser, the edge of the
 * opening 500; over it the nosing line stands 180 + 0.72 x 525 = 558, the ceiling 2450 - 558. */
static void every_layout_states_its_headroom(void **state)
{
	struct built b = built_from(
		JOB("", "{risers: 15}", "{length: 3018, floor_thickness: 250, headroom: 1000}"));
	const struct layout_option *o = &b.stair->options[0];
	double edge = 14 * o->unit_run + 18 - 3018;
	(void)state;
	assert_near(o->headroom, 2450 - 180 - 180 / o->unit_run * (edge + 25), 1e-6);
	assert_near(o->headroom, b.stair->headroom.least, 1e-9);
	arena_free(b.arena);
}

/* No run gives 2100 of headroom; 230 is the shortest that is comfortable, so it lacks least.
 * At 250, which is the more comfortable one, the headroom is less. */
static void a_headroom_that_nothing_gives_takes_the_shortest_comfortable_run(void **state)
{
	struct built b = built_from(JOB("comfort: {least_run: 230, most_run: 280, "
					"sum_least: 400}\n",
		"{risers: 15}", "{length: 2400, floor_thickness: 250, headroom: 2100}"));
	(void)state;
	assert_near(b.stair->options[0].unit_run, 230, 1e-9);
	assert_true(b.stair->options[0].headroom < 2100);
	arena_free(b.arena);
}

static void without_an_opening_no_layout_states_a_headroom(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\nstair: {width: 900}\n");
	(void)state;
	assert_near(b.stair->options[0].headroom, 0, 0);
	arena_free(b.arena);
}

/* 2700 / 15 = 180 and 270 are the most comfortable; 2850 of opening leave them
 * 2450 - 180 - 180 / 270 (14 x 270 + 18 - 2850 + 25), 1621 of headroom; 14 risers of 192.9
 * can have 240, which leave 2257 - 192.9 / 240 (13 x 240 + 18 - 2850 + 25) = 2005. */
static void a_layout_with_enough_headroom_wins_over_a_more_comfortable_one(void **state)
{
	struct built b = built_from(
		JOB("", "{kind: flight}", "{length: 2850, floor_thickness: 250, headroom: 2000}"));
	(void)state;
	assert_int_equal(b.stair->risers, 14);
	assert_int_equal(b.stair->headroom.state, HEADROOM_ENOUGH);
	arena_free(b.arena);
}

/* The run that gives just 2000: 192.857 (2850 - 18 - 25) / (2000 + 2700 - 2450) = 240.6 */
static void the_run_is_as_short_as_headroom_needs_and_no_shorter(void **state)
{
	struct built b = built_from(
		JOB("", "{risers: 14}", "{length: 2850, floor_thickness: 250, headroom: 2000}"));
	(void)state;
	assert_near(b.stair->flights[0].unit_run, 240, 1e-9); /* to the whole millimetre */
	arena_free(b.arena);
}

/* The ceiling at 2200 is high enough over the floor, but not over the first nosing, 180 up: with a
 * run of 250 the edge of the opening, 14 x 250 + 18 + 25 = 3543 from its header, is plumb over
 * that.
 */
static void an_edge_plumb_over_the_first_nosing_counts_from_that(void **state)
{
	struct built b = built_from(JOB("comfort: {sum_least: 400}\n", "{risers: 15}",
		"{length: 3543, floor_thickness: 500, headroom: 2032}"));
	(void)state;
	assert_near(b.stair->flights[0].unit_run, 249, 1e-9);
	assert_int_equal(b.stair->headroom.state, HEADROOM_ENOUGH);
	arena_free(b.arena);
}

static void where_none_has_enough_the_one_with_most_wins_and_says_so(void **state)
{
	struct built b = built_from(
		JOB("", "{kind: flight}", "{length: 2400, floor_thickness: 250, headroom: 2000}"));
	(void)state;
	for (int i = 0; i < b.stair->option_count; i++) {
		const struct layout_option *o = &b.stair->options[i];
		bool rises_in_limits = o->unit_rise <= 200 && o->unit_rise >= 150;
		assert_true(!rises_in_limits || o->headroom <= b.stair->headroom.least + 1e-6);
		if (o->chosen)
			assert_non_null(strstr(o->verdict, ", but headroom "));
	}
	arena_free(b.arena);
}

/* 13 risers of 207.7 are more than the 200 that are usual, and the only ones to reach 2000. */
static void an_edition_that_is_met_moves_the_usual_limits_of_comfort(void **state)
{
	struct solved s =
		solved_within(JOB("", "{kind: flight}", SHORT_OPENING), headroom_of_2000, 1);
	(void)state;
	assert_int_equal(s.chosen->risers, 13);
	assert_true(s.chosen->headroom >= 2000 - 1e-6);
	assert_non_null(strstr(s.chosen->verdict, "meets what the code asks, though rise 208 mm"));
	arena_free(s.built.arena);
}

static void limits_of_comfort_that_the_job_writes_stand_against_an_edition(void **state)
{
	struct solved s = solved_within(JOB("comfort: {most_rise: 200, least_run: 240}\n",
						"{kind: flight}", SHORT_OPENING),
		headroom_of_2000, 1);
	(void)state;
	assert_true(s.chosen->unit_rise <= 200);
	assert_non_null(strstr(s.chosen->verdict, "under the least, 2000 mm (Test Code 1)"));
	arena_free(s.built.arena);
}

static void without_an_edition_the_limits_of_comfort_stand(void **state)
{
	struct built b = built_from(JOB("", "{kind: flight}", SHORT_OPENING));
	(void)state;
	assert_true(b.stair->unit_rise <= 200);
	arena_free(b.arena);
}

static const struct layout_limit nosing_under_280 = {
	.bounds = { MEASURE_NOSING, 30, INFINITY },
	.where = { { MEASURE_RUN, -INFINITY, 280 } },
	.where_count = 1,
	.from = "Test Code 2",
};

/* Asked only of treads under 280 deep: 300 need no nosing. */
static void a_limit_counts_only_where_its_condition_holds(void **state)
{
	struct solved s =
		solved_within(JOB("", "{kind: flight}", "{length: 4000, floor_thickness: 250}"),
			&nosing_under_280, 1);
	(void)state;
	assert_true(s.chosen->unit_run > 280);
	arena_free(s.built.arena);
}

static bool is_asked_for_a_nosing(const char *risers)
{
	struct arena *a = arena_new();
	struct solved s =
		solved_within(arena_printf(a,
				      "pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				      "floors: {total_rise: 2700}\n"
				      "stair: {width: 900, segments: [{kind: flight}]}\n"
				      "treads: {nosing: 25}\nrisers: %s\n",
				      risers),
			&nosing_under_280, 1);
	bool any = false;
	for (int i = 0; i < s.built.stair->option_count; i++)
		any |= strstr(s.built.stair->options[i].verdict, "Test Code 2") != NULL;
	arena_free(s.built.arena);
	arena_free(a);
	return any;
}

/* IRC 2018 R311.7.5.3 asks none there (second hand): there is no face for it to stand out from. */
static void no_layout_is_asked_for_a_nosing_over_open_risers(void **state)
{
	(void)state;
	assert_true(is_asked_for_a_nosing("{thickness: 18}"));
	assert_false(is_asked_for_a_nosing("open"));
}

static const struct layout_limit limits_of_nothing[] = {
	{ .bounds = { MEASURE_NOSING, -INFINITY, 0 }, .from = "Test Code 3" },
	{ .bounds = { MEASURE_OPEN_RISERS, -INFINITY, 0 }, .from = "Test Code 4" },
};

static void is_said_to_miss(const char *risers, const struct layout_limit *limit, const char *words)
{
	struct arena *a = arena_new();
	struct solved s =
		solved_within(arena_printf(a,
				      "pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				      "floors: {total_rise: 2700}\n"
				      "stair: {width: 900, segments: [{risers: 15}]}\n"
				      "treads: {nosing: 25}\nrisers: %s\n",
				      risers),
			limit, 1);
	assert_non_null(strstr(s.chosen->verdict, words));
	arena_free(s.built.arena);
	arena_free(a);
}

static void a_limit_of_nothing_at_all_is_said_in_words(void **state)
{
	(void)state;
	is_said_to_miss("{thickness: 18}", &limits_of_nothing[0],
		"but nosing 25 mm is over the most, 0 mm (Test Code 3)");
	is_said_to_miss("open", &limits_of_nothing[1], "but the risers are open (Test Code 4)");
}

/* 17 risers of 158.8: 590 less two of them are more than the 260 allowed; 19 take 590 - 284. */
static void limits_of_comfort_that_leave_no_run_do_not_make_it_endless(void **state)
{
	struct built b = built_from(JOB("comfort: {most_run: 260}\n", "{kind: flight}",
		"{length: 4000, floor_thickness: 250, headroom: 1000}"));
	(void)state;
	for (int i = 0; i < b.stair->option_count; i++)
		assert_true(b.stair->options[i].unit_run < 320);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(limits_of_comfort_that_leave_no_run_do_not_make_it_endless),
		cmocka_unit_test(every_layout_states_its_headroom),
		cmocka_unit_test(a_headroom_that_nothing_gives_takes_the_shortest_comfortable_run),
		cmocka_unit_test(without_an_opening_no_layout_states_a_headroom),
		cmocka_unit_test(a_layout_with_enough_headroom_wins_over_a_more_comfortable_one),
		cmocka_unit_test(the_run_is_as_short_as_headroom_needs_and_no_shorter),
		cmocka_unit_test(an_edge_plumb_over_the_first_nosing_counts_from_that),
		cmocka_unit_test(where_none_has_enough_the_one_with_most_wins_and_says_so),
		cmocka_unit_test(an_edition_that_is_met_moves_the_usual_limits_of_comfort),
		cmocka_unit_test(limits_of_comfort_that_the_job_writes_stand_against_an_edition),
		cmocka_unit_test(without_an_edition_the_limits_of_comfort_stand),
		cmocka_unit_test(a_limit_counts_only_where_its_condition_holds),
		cmocka_unit_test(no_layout_is_asked_for_a_nosing_over_open_risers),
		cmocka_unit_test(a_limit_of_nothing_at_all_is_said_in_words),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
