/*
 * Stairs worked out in public handbooks, against ours.
 *
 *   [R] read in a stored copy of the source
 *   [M] from memory
 *   [C] computed from the source's inputs by the rule it gives
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

struct worked {
	const char *unit; /* of all lengths in the row */
	const char *head;
	double total_rise;
	int risers;
	double run;
	/* the answers */
	double rise;
	int treads;
	double total_run;
};

static double in_mm(const struct worked *w, double v)
{
	double unit = strcmp(w->unit, "in") == 0 ? 25.4 : strcmp(w->unit, "cm") == 0 ? 10 : 1;
	return v * unit;
}

static struct built build(const struct worked *w)
{
	struct arena *a = arena_new();
	const char *yaml = arena_printf(a,
		"pitchboard: 1\njob: {name: Handbook, units: millimetres}\n"
		"floors: {total_rise: %.4f %s}\n"
		"stair: {width: 900 mm, left: wall, right: wall, "
		"segments: [{risers: %d, run: %.4f %s}]}\n"
		"stringers: {head: %s}\n",
		w->total_rise, w->unit, w->risers, w->run, w->unit, w->head);
	struct built b = built_from(yaml);
	arena_free(a);
	return b;
}

/* Rise, treads and total run as the handbook has them, to the last figure it prints. */
static void agrees(struct worked w, double to)
{
	struct built b = build(&w);
	assert_non_null(b.stair);
	assert_near(b.stair->unit_rise, in_mm(&w, w.rise), in_mm(&w, to));
	assert_int_equal(b.stair->treads, w.treads);
	assert_near(b.stair->flights[0].total_run, in_mm(&w, w.total_run), in_mm(&w, to));
	arena_free(b.arena);
}

/* NAVEDTRA 14044 (Builder), ch. 6, figs 6-14 and 6-15: 8 ft 11 in by 7 gives 15 risers [R] of
 * 7 2/15 [C]; run 17 1/2 - 7 1/8 and total run [M]. */
static void navy_builder(void **state)
{
	(void)state;
	agrees((struct worked){ "in", "below_floor", 107, 15, 10.375, 7.1333, 14, 145.25 }, 5e-5);
}

/* US Army subcourse EN5156 Carpentry II (1995), paras 2-18 to 2-20 [R]. */
static void army_carpentry(void **state)
{
	(void)state;
	agrees((struct worked){ "in", "below_floor", 94, 13, 10.5, 7.23, 12, 126 }, 5e-3);
}

/* Hodgson & Williams, Stair-Building and the Steel Square (1917), "Laying Out", fig. 33 [R]. */
static void hodgson_and_williams(void **state)
{
	(void)state;
	agrees((struct worked){ "in", "below_floor", 84, 12, 9.5, 7, 11, 104.5 }, 1e-6);
}

/* Carpenters' Guide (chestofbooks reprint), "Stairs", figs 51 and 52 [R]; total run [C]. */
static void carpenters_guide(void **state)
{
	(void)state;
	agrees((struct worked){ "in", "below_floor", 112, 16, 10, 7, 15, 150 }, 1e-6);
}

/* CMHC, Canadian Wood-Frame House Construction, "Stairway design": 2718 mm in 15 [R].  The book
 * prints 192 mm for 14, beside 7.64 in; 2718 / 14 is 194.1 [C]. */
static void canadian_wood_frame_house(void **state)
{
	(void)state;
	agrees((struct worked){ "mm", "below_floor", 2718, 15, 250, 181.2, 14, 3500 }, 1e-6);
	agrees((struct worked){ "mm", "below_floor", 2718, 14, 250, 194.1, 13, 3250 }, 0.05);
	agrees((struct worked){ "in", "below_floor", 107, 14, 10, 7.643, 13, 130 }, 5e-4);
}

/* Carpentry lesson basiccarpentrytechniques.com/Stairs4.html, fig. 46: 12 risers, 12 treads [R]. */
static void carpentry_lesson_with_a_flush_top(void **state)
{
	(void)state;
	agrees((struct worked){ "mm", "flush", 2100, 12, 250, 175, 12, 3000 }, 1e-6);
}

/* mathsmagiques.fr, "Tracé": 2.50 m over 3.60 m in 14 [R]. */
static void french_school_page(void **state)
{
	(void)state;
	agrees((struct worked){ "cm", "below_floor", 250, 14, 360.0 / 13, 17.857, 13, 360 }, 5e-4);
}

/* Joinery lesson (slideplayer 2561333): 1.050 by 1.450 m, 6 risers, 5 goings of 290 [R]. */
static void joinery_slides(void **state)
{
	(void)state;
	agrees((struct worked){ "mm", "below_floor", 1050, 6, 290, 175, 5, 1450 }, 1e-6);
}

static double line_length(const struct stair *s, double risers, double runs)
{
	return hypot(s->unit_rise * risers, s->flights[0].unit_run * runs);
}

/* Vitruvius IX, preface 8: height 3, run 4, stringer 5 [R]; 108, 144, 180 [C]. */
static void vitruvius_three_four_five(void **state)
{
	struct worked w = { "in", "flush", 108, 16, 9, 6.75, 16, 144 };
	struct built b = build(&w);
	(void)state;
	assert_near(line_length(b.stair, 16, 16) / 25.4, 180, 1e-9);
	assert_near(b.stair->flights[0].pitch * 180 / PI, 36.870, 5e-4);
	arena_free(b.arena);
}

/* The lesson's stringer: 3662 mm [R], of 2100 by 3000. */
static void stringer_of_the_carpentry_lesson(void **state)
{
	struct worked w = { "mm", "flush", 2100, 12, 250, 175, 12, 3000 };
	struct built b = build(&w);
	(void)state;
	assert_near(line_length(b.stair, 12, 12), 3662, 0.5);
	arena_free(b.arena);
}

/* EN5156: hypotenuse of 94 by 126 in [R], 157.20 [C]. */
static void stringer_of_the_army_carpentry(void **state)
{
	struct worked w = { "in", "below_floor", 94, 13, 10.5, 7.23, 12, 126 };
	struct built b = build(&w);
	(void)state;
	assert_near(line_length(b.stair, 13, 12) / 25.4, 157.20, 5e-3);
	arena_free(b.arena);
}

/* Step diagonals along our stringer: Hodgson & Williams 11.8004 and the Navy's bridge measure
 * 12.586, both [C]. */
static void corners_of_the_stringer_are_a_bridge_measure_apart(void **state)
{
	const struct worked w[2] = {
		{ "in", "below_floor", 84, 12, 9.5, 7, 11, 104.5 },
		{ "in", "below_floor", 106.875, 15, 10.375, 7.125, 14, 145.25 },
	};
	const double apart[2] = { 11.8004, 12.586 };
	(void)state;
	for (int i = 0; i < 2; i++) {
		struct built b = build(&w[i]);
		const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
		assert_near((g->tread_corners[1].x - g->tread_corners[0].x) / 25.4, apart[i], 5e-4);
		arena_free(b.arena);
	}
}

static int risers_chosen(const char *rest)
{
	struct arena *a = arena_new();
	struct built b = built_from(arena_printf(a, "pitchboard: 1\n%s", rest));
	int n = b.stair ? b.stair->risers : 0;
	arena_free(b.arena);
	arena_free(a);
	return n;
}

/* EN5156: 94 in by the closest to 7 gives 13; rule 1, two risers and a tread make 25 in [R]. */
static void the_army_rule_chooses_thirteen(void **state)
{
	(void)state;
	assert_int_equal(risers_chosen("job: {name: Army, units: inches}\n"
				       "floors: {total_rise: 94\"}\n"
				       "comfort: {step_wanted: 25\", sum_most: 19\"}\n"
				       "stair: {width: 36\", right: wall, segments: [{run: 10 "
				       "1/2\"}]}\n"),
		13);
}

/* NAVEDTRA 14044: 107 in by 7 gives 15 [R]; rise and run add up to 17 1/2 [M]. */
static void the_navy_rule_chooses_fifteen(void **state)
{
	(void)state;
	assert_int_equal(risers_chosen("job: {name: Navy, units: inches}\n"
				       "floors: {total_rise: 107\"}\n"
				       "stair: {width: 36\", right: wall, segments: [{run: 10 "
				       "3/8\"}]}\n"),
		15);
}

/* mathsmagiques.fr: 2.09 m over 2.30 m; 10 steps give a pace of 67.3, 11 give 61.0, within 60 and
 * 64: 11 [R]. */
static void the_french_band_chooses_eleven(void **state)
{
	(void)state;
	assert_int_equal(risers_chosen("job: {name: Pas, units: millimetres}\n"
				       "floors: {total_rise: 2090}\n"
				       "comfort: {step_least: 600, step_most: 640, step_wanted: "
				       "620, least_run: 220, sum_least: 400}\n"
				       "stair: {width: 900, right: wall, segments: [{total_run: "
				       "2300}]}\n"),
		11);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(navy_builder),
		cmocka_unit_test(army_carpentry),
		cmocka_unit_test(hodgson_and_williams),
		cmocka_unit_test(carpenters_guide),
		cmocka_unit_test(canadian_wood_frame_house),
		cmocka_unit_test(carpentry_lesson_with_a_flush_top),
		cmocka_unit_test(french_school_page),
		cmocka_unit_test(joinery_slides),
		cmocka_unit_test(vitruvius_three_four_five),
		cmocka_unit_test(stringer_of_the_carpentry_lesson),
		cmocka_unit_test(stringer_of_the_army_carpentry),
		cmocka_unit_test(corners_of_the_stringer_are_a_bridge_measure_apart),
		cmocka_unit_test(the_army_rule_chooses_thirteen),
		cmocka_unit_test(the_navy_rule_chooses_fifteen),
		cmocka_unit_test(the_french_band_chooses_eleven),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
