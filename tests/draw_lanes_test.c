/*
 * Dimension chains in lanes, figures that do not fit their links, places pushed apart.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "draw/annotate.h"
#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "draw/running.h"
#include "near.h"
#include "six_tenths.h"

static struct arena *arena;
static struct drawing *g;

static int start(void **state)
{
	(void)state;
	arena = arena_new();
	g = drawing_new(arena, USE_SHEET, 300, 300);
	return 0;
}

static int stop(void **state)
{
	(void)state;
	arena_free(arena);
	return 0;
}

static struct dims around_a_view(void)
{
	return dims_begin(g, six_tenths(), 2.5, (struct box){ 100, 100, 200, 150 });
}

static const struct mark *find_text(const char *text)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && !strcmp(k->text.text, text))
			return k;
	fail_msg("no text \"%s\"", text);
	return NULL;
}

static void the_overall_lies_outside_its_links(void **state)
{
	(void)state;
	struct dims d = around_a_view();
	const struct dim_link all[] = { { 100, 200, 100, 100, "overall" } };
	const struct dim_link links[] = { { 100, 140, 100, 100, "left" },
		{ 140, 199, 100, 100, "right" } };

	dims_chain(&d, DIM_BELOW, all, 1);
	dims_chain(&d, DIM_BELOW, links, 2);
	dims_draw(&d);
	assert_true(find_text("overall")->text.at.y < find_text("left")->text.at.y - 5);
	assert_true(find_text("left")->text.at.y == find_text("right")->text.at.y);
	assert_int_equal(drawing_faults(arena, g, six_tenths(), NULL), 0);
}

static void a_figure_too_wide_for_the_last_link_goes_outside(void **state)
{
	(void)state;
	struct dims d = around_a_view();
	const struct dim_link links[] = { { 100, 195, 100, 100, "wide" },
		{ 195, 200, 100, 100, "11 15/16\"" } };

	dims_chain(&d, DIM_BELOW, links, 2);
	struct box used = dims_draw(&d);
	assert_true(find_text("11 15/16\"")->text.at.x > 200);
	assert_true(used.x1 > 200);
	assert_int_equal(drawing_faults(arena, g, six_tenths(), NULL), 0);
}

static void figures_too_wide_in_the_middle_are_lifted_clear_of_each_other(void **state)
{
	(void)state;
	struct dims d = around_a_view();
	const struct dim_link links[] = { { 100, 140, 100, 100, "first" },
		{ 140, 145, 100, 100, "3 15/16\"" }, { 145, 150, 100, 100, "4 15/16\"" },
		{ 150, 200, 100, 100, "last" } };

	dims_chain(&d, DIM_ABOVE, links, 4);
	dims_draw(&d);
	assert_int_equal(drawing_faults(arena, g, six_tenths(), NULL), 0);
}

static void upright_figures_read_from_the_right(void **state)
{
	(void)state;
	struct dims d = around_a_view();
	const struct dim_link l[] = { { 100, 150, 100, 100, "50" } };

	dims_chain(&d, DIM_LEFT, l, 1);
	dims_draw(&d);
	assert_near(find_text("50")->text.angle, PI / 2, 1e-9);
}

static void no_figure_is_ever_smaller_than_the_sheet_letters(void **state)
{
	(void)state;
	struct dims d = around_a_view();
	const struct dim_link l[] = { { 100, 101, 100, 100, "a very long figure" } };

	dims_chain(&d, DIM_BELOW, l, 1);
	dims_draw(&d);
	assert_near(find_text("a very long figure")->text.height, 2.5, 1e-9);
}

static void places_far_apart_stay_where_they_are(void **state)
{
	(void)state;
	double at[] = { 1, 11, 21 };

	spread(arena, at, 3, 5);
	assert_near(at[0], 1, 1e-9);
	assert_near(at[1], 11, 1e-9);
	assert_near(at[2], 21, 1e-9);
}

static void places_too_near_share_the_push(void **state)
{
	(void)state;
	double at[] = { 10, 11, 12 };

	/* least squares: the middle one stays, the outer ones move alike */
	spread(arena, at, 3, 5);
	assert_near(at[0], 6, 1e-9);
	assert_near(at[1], 11, 1e-9);
	assert_near(at[2], 16, 1e-9);
}

static void a_push_may_carry_the_next_along(void **state)
{
	(void)state;
	double at[] = { 0, 1, 7 };

	spread(arena, at, 3, 5);
	for (int i = 0; i < 2; i++)
		assert_true(at[i + 1] - at[i] >= 5 - 1e-9);
	/* the sum of the moves is nil where all three hang together */
	assert_near(at[0] + at[1] + at[2], 8, 1e-9);
}

static void running_figures_never_touch(void **state)
{
	(void)state;
	struct running_mark m[12];
	struct hand h = { g, six_tenths(), 2.5 };

	for (int i = 0; i < 12; i++)
		m[i] = (struct running_mark){ 100 + i * 1.5, 100, "145 11/16\"" };
	draw_running(h, DIM_ABOVE, 110, m, 12);
	assert_int_equal(drawing_faults(arena, g, six_tenths(), NULL), 0);
}

/* Six positions in 4 mm, beside a view: under it stand those along it. */
static void running_figures_beside_a_view_stand_apart_and_none_below_its_zero(void **state)
{
	(void)state;
	static const double at[] = { 100, 101, 101.5, 102, 103, 104 };
	struct running_mark m[6];
	struct hand h = { g, six_tenths(), 2.5 };

	for (int i = 0; i < 6; i++)
		m[i] = (struct running_mark){ at[i], 50, "1 1/16\"" };
	struct box took = draw_running(h, DIM_LEFT, 50, m, 6);
	assert_int_equal(drawing_faults(arena, g, six_tenths(), NULL), 0);
	assert_true(took.x1 <= 50 + 1e-9);
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT)
			assert_true(k->text.at.y + 2.5 / 2 >= 100 - 1e-9);
}

static void wrapped_lines_are_no_wider_than_asked(void **state)
{
	(void)state;
	struct lines l = wrap_text(arena, six_tenths(), 2.5, 30,
		"Crown side of the plank up, and a word-that-is-longer-than-a-line.");

	for (int i = 0; i < l.n; i++)
		assert_true(!strchr(l.line[i], ' ') || (double)strlen(l.line[i]) * 0.6 * 2.5 <= 30);
	assert_string_equal(l.line[0], "Crown side of the");
}

static void a_fraction_stays_with_its_whole_number(void **state)
{
	(void)state;
	/* 16 letters of 1.5 mm: the line would end after the 3 */
	struct lines l = wrap_text(arena, six_tenths(), 2.5, 16 * 1.5, "largest gap is 3 15/16\".");

	assert_string_equal(l.line[0], "largest gap is");
	assert_string_equal(l.line[1], "3 15/16\".");
}

static void a_figure_stays_with_its_unit(void **state)
{
	(void)state;
	/* 15 letters of 1.5 mm: the line would end after the 60 */
	struct lines l = wrap_text(arena, six_tenths(), 2.5, 15 * 1.5, "oval, 57 mm x 60 mm");

	assert_string_equal(l.line[0], "oval, 57 mm");
	assert_string_equal(l.line[1], "x 60 mm");
}

static void a_count_stays_with_its_mark(void **state)
{
	(void)state;
	/* 10 letters of 1.5 mm: the lines would end after the 12 and the 7 */
	struct lines l = wrap_text(arena, six_tenths(), 2.5, 10 * 1.5, "1 T3, 12 T4, 7 T6");

	assert_string_equal(l.line[0], "1 T3,");
	assert_string_equal(l.line[1], "12 T4,");
	assert_string_equal(l.line[2], "7 T6");
}

static void a_times_stays_with_what_follows(void **state)
{
	(void)state;
	/* 19 letters of 1.5 mm: the line would end after the 7 */
	struct lines l =
		wrap_text(arena, six_tenths(), 2.5, 19 * 1.5, "bolt, 1 of 3/8\" x 7 1/16\"");

	assert_string_equal(l.line[0], "bolt, 1 of 3/8\"");
	assert_string_equal(l.line[1], "x 7 1/16\"");
}

static void a_taken_spot_is_passed_over(void **state)
{
	(void)state;
	const struct spot spots[] = { { { 50, 50 }, ALIGN_LEFT, 0, SPOT_PLAIN },
		{ { 50, 60 }, ALIGN_LEFT, 0, SPOT_PLAIN } };

	draw_line(g, PEN_OUTLINE, vec(40, 51), vec(90, 51));
	assert_int_equal(place_text(g, six_tenths(), 2.5, spots, 2, "here"), 1);
}

static void a_ring_is_passed_over_as_lettering_is(void **state)
{
	(void)state;
	const struct spot spots[] = { { { 50, 50 }, ALIGN_LEFT, 0, SPOT_PLAIN },
		{ { 50, 60 }, ALIGN_LEFT, 0, SPOT_PLAIN } };

	draw_circle(g, PEN_DIM, vec(53, 51), 3);
	draw_line(g, PEN_HATCH, vec(40, 61), vec(90, 61));
	assert_int_equal(place_text(g, six_tenths(), 2.5, spots, 2, "here"), 1);
}

/* 4 letters of 1.5 mm from 50 to 56, their capitals from 50 up to 52.5. */
static void a_stroke_strikes_what_its_width_runs_into(void **state)
{
	(void)state;
	struct measure m = six_tenths();

	draw_text(g, vec(50, 50), 2.5, ALIGN_LEFT, "here");
	assert_true(stroke_strikes_text(g, m, vec(53, 20), vec(53, 80), 1));
	assert_true(stroke_strikes_text(g, m, vec(57, 20), vec(57, 80), 3));
	assert_false(stroke_strikes_text(g, m, vec(57, 20), vec(57, 80), 1));
	assert_false(stroke_strikes_text(g, m, vec(53, 54), vec(53, 80), 1));
}

static void only_heavy_lines_count_as_crossing_a_box(void **state)
{
	(void)state;
	const struct box b = { 50, 50, 60, 55 };

	draw_line(g, PEN_DIM, vec(40, 52), vec(90, 52));
	draw_line(g, PEN_OUTLINE, vec(40, 60), vec(90, 60));
	assert_false(heavy_line_crosses(g, b));
	draw_line(g, PEN_OUTLINE, vec(55, 20), vec(55, 52));
	assert_true(heavy_line_crosses(g, b));
}

/* A title of 5 letters of 3.5 mm and "1:10" of 2.5 mm, 4 mm apart, are 20.5 mm; the bar is 70. */
static void a_narrow_view_has_its_bar_under_its_title(void **state)
{
	(void)state;
	struct hand h = { g, six_tenths(), 2.5 };
	const struct box view = { 0, 100, 40, 150 };
	struct box row = draw_view_foot(h, view, "Guard", 0.1, UNITS_MILLIMETRES);
	struct box column = draw_view_foot_narrow(h, view, "Guard", 0.1, UNITS_MILLIMETRES);

	assert_true(box_width(column) < box_width(row) - 20);
	assert_true(column.y0 < row.y0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test_setup_teardown(the_overall_lies_outside_its_links, start, stop),
		cmocka_unit_test_setup_teardown(a_figure_too_wide_for_the_last_link_goes_outside,
			start, stop),
		cmocka_unit_test_setup_teardown(
			figures_too_wide_in_the_middle_are_lifted_clear_of_each_other, start, stop),
		cmocka_unit_test_setup_teardown(upright_figures_read_from_the_right, start, stop),
		cmocka_unit_test_setup_teardown(no_figure_is_ever_smaller_than_the_sheet_letters,
			start, stop),
		cmocka_unit_test_setup_teardown(places_far_apart_stay_where_they_are, start, stop),
		cmocka_unit_test_setup_teardown(places_too_near_share_the_push, start, stop),
		cmocka_unit_test_setup_teardown(a_push_may_carry_the_next_along, start, stop),
		cmocka_unit_test_setup_teardown(running_figures_never_touch, start, stop),
		cmocka_unit_test_setup_teardown(
			running_figures_beside_a_view_stand_apart_and_none_below_its_zero, start,
			stop),
		cmocka_unit_test_setup_teardown(wrapped_lines_are_no_wider_than_asked, start, stop),
		cmocka_unit_test_setup_teardown(a_fraction_stays_with_its_whole_number, start,
			stop),
		cmocka_unit_test_setup_teardown(a_figure_stays_with_its_unit, start, stop),
		cmocka_unit_test_setup_teardown(a_count_stays_with_its_mark, start, stop),
		cmocka_unit_test_setup_teardown(a_times_stays_with_what_follows, start, stop),
		cmocka_unit_test_setup_teardown(a_taken_spot_is_passed_over, start, stop),
		cmocka_unit_test_setup_teardown(a_ring_is_passed_over_as_lettering_is, start, stop),
		cmocka_unit_test_setup_teardown(only_heavy_lines_count_as_crossing_a_box, start,
			stop),
		cmocka_unit_test_setup_teardown(a_narrow_view_has_its_bar_under_its_title, start,
			stop),
		cmocka_unit_test_setup_teardown(a_stroke_strikes_what_its_width_runs_into, start,
			stop),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
