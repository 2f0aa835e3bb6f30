/*
 * What counts as unreadable: lettering on lettering, lettering under a heavy line, a ring or a
 * fill, marks off the paper; and what does not.  Marks taken over, and drawings kept.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "one_arena.h"
#include "six_tenths.h"

static struct drawing *sheet(void)
{
	return drawing_new(arena, USE_SHEET, 100, 100);
}

static int faults(const struct drawing *g)
{
	return drawing_faults(arena, g, six_tenths(), NULL);
}

static void two_texts_apart_are_no_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "one");
	draw_text(g, vec(10, 14), 2.5, ALIGN_LEFT, "two");
	assert_int_equal(faults(g), 0);
}

static void two_texts_on_each_other_are_one_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "one");
	draw_text(g, vec(12, 11), 2.5, ALIGN_LEFT, "two");
	assert_int_equal(faults(g), 1);
}

static void turned_texts_are_judged_as_they_stand(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	/* their upright boxes overlap widely, the slanted words themselves do not */
	draw_text_styled(g, vec(10, 10), 2.5, PI / 4, ALIGN_LEFT, LETTER_REGULAR, "a long line");
	draw_text_styled(g, vec(16, 10), 2.5, PI / 4, ALIGN_LEFT, LETTER_REGULAR, "a long line");
	assert_int_equal(faults(g), 0);
}

static void a_heavy_line_through_a_text_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "crossed");
	draw_line(g, PEN_OUTLINE, vec(12, 5), vec(12, 20));
	assert_int_equal(faults(g), 1);
}

static void a_dimension_line_through_a_text_is_none(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "crossed");
	draw_line(g, PEN_DIM, vec(12, 5), vec(12, 20));
	assert_int_equal(faults(g), 0);
}

static void draw_white(struct drawing *g)
{
	const struct vec box[] = { { 8, 8 }, { 40, 8 }, { 40, 15 }, { 8, 15 } };

	draw_fill(g, SHADE_WHITE, box, 4);
}

static void a_line_knocked_out_under_a_text_is_none(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_line(g, PEN_OUTLINE, vec(12, 5), vec(12, 20));
	draw_white(g);
	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "crossed");
	assert_int_equal(faults(g), 0);
}

static void a_line_over_the_white_under_a_text_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_white(g);
	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "crossed");
	draw_line(g, PEN_OUTLINE, vec(12, 5), vec(12, 20));
	assert_int_equal(faults(g), 1);
}

/* A balloon: a white disc with a thin ring. */
static void a_ring_through_a_text_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "crossed");
	draw_circle(g, PEN_DIM, vec(8, 10), 4);
	assert_int_equal(faults(g), 1);
}

static void a_text_over_the_edge_of_the_white_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_white(g);
	draw_text(g, vec(36, 10), 2.5, ALIGN_LEFT, "crossed");
	assert_int_equal(faults(g), 1);
}

/* Wherever it was drawn: lettering is printed last, and black on black is nothing. */
static void a_text_on_an_arrow_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();
	const struct vec head[] = { { 10, 10 }, { 14, 9 }, { 14, 11 } };

	draw_text(g, vec(12, 10), 2.5, ALIGN_LEFT, "13");
	draw_fill(g, SHADE_BLACK, head, 3);
	assert_int_equal(faults(g), 1);
}

static void a_text_on_a_shade_is_none(void **state)
{
	(void)state;
	struct drawing *g = sheet();
	const struct vec board[] = { { 10, 5 }, { 14, 5 }, { 14, 20 }, { 10, 20 } };

	draw_fill(g, SHADE_LIGHT, board, 4);
	draw_text(g, vec(9, 10), 2.5, ALIGN_LEFT, "T1");
	assert_int_equal(faults(g), 0);
}

static void marks_that_are_raised_lie_over_the_rest(void **state)
{
	(void)state;
	struct drawing *g = sheet();
	struct mark_run run = { g->tail, NULL };

	draw_white(g);
	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "crossed");
	run.to = g->tail;
	draw_line(g, PEN_OUTLINE, vec(12, 5), vec(12, 20));
	drawing_raise(g, run);
	assert_int_equal(faults(g), 0);
	draw_line(g, PEN_OUTLINE, vec(12, 5), vec(12, 20));
	assert_int_equal(faults(g), 1);
}

static void a_heavy_arc_through_a_text_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_text(g, vec(36, 10), 2.5, ALIGN_LEFT, "crossed");
	draw_arc(g, PEN_OUTLINE, vec(40, 29), 18, PI, 2 * PI);
	assert_int_equal(faults(g), 1);
}

static void the_closing_side_of_a_polygon_counts(void **state)
{
	(void)state;
	struct drawing *g = sheet();
	const struct vec triangle[] = { { 12, 5 }, { 40, 5 }, { 12, 20 } };

	draw_text(g, vec(10, 12), 2.5, ALIGN_LEFT, "x");
	draw_text(g, vec(11.5, 16), 2.5, ALIGN_LEFT, "y");
	draw_polygon(g, PEN_CUT, triangle, 3);
	assert_int_equal(faults(g), 1);
}

static void a_mark_off_the_paper_is_a_fault(void **state)
{
	(void)state;
	struct drawing *g = sheet();

	draw_line(g, PEN_DIM, vec(50, 50), vec(101, 50));
	assert_int_equal(faults(g), 1);
}

static void the_report_names_what_touches(void **state)
{
	(void)state;
	struct drawing *g = sheet();
	const char *report;

	g->id = "S-101";
	draw_text(g, vec(10, 10), 2.5, ALIGN_LEFT, "one");
	draw_text(g, vec(12, 11), 2.5, ALIGN_LEFT, "two");
	drawing_faults(arena, g, six_tenths(), &report);
	assert_string_equal(report, "S-101: texts touch: \"one\" and \"two\"\n");
}

static void taking_marks_over_moves_them(void **state)
{
	(void)state;
	struct drawing *g = sheet(), *from = sheet();

	draw_line(g, PEN_DIM, vec(1, 1), vec(2, 1));
	draw_line(from, PEN_DIM, vec(1, 1), vec(2, 1));
	drawing_take(g, from, vec(10, 20));
	draw_line(g, PEN_DIM, vec(5, 5), vec(6, 5));
	assert_string_equal(drawing_dump(arena, g),
		"drawing - \"\" 100 x 100\nline dimension 1,1 2,1\nline dimension 11,21 12,21\n"
		"line dimension 5,5 6,5\n");
	assert_int_equal(g->mark_count, 3);
	assert_int_equal(from->mark_count, 0);
}

/* Built with the sanitizers, a word or point left behind in the other arena ends the test. */
static void kept_drawings_outlive_the_arena_they_were_made_in(void **state)
{
	(void)state;
	const struct vec corners[] = { { 1, 1 }, { 9, 1 }, { 9, 5 } };
	struct arena *scratch = arena_new();
	const char *shows[] = { arena_strdup(scratch, "T1"), NULL };
	struct drawing *g = drawing_new(scratch, USE_SHEET, 100, 100);

	g->id = arena_strdup(scratch, "S-101");
	g->title = arena_strdup(scratch, "Plan");
	g->shows = shows;
	g->next = drawing_new(scratch, USE_ROLL, 5, 5);
	draw_polygon(g, PEN_DIM, corners, 3);
	draw_fill(g, SHADE_GREY, corners, 3);
	draw_circle(g, PEN_DIM, vec(4, 4), 2);
	draw_text(g, vec(7, 7), 2.5, ALIGN_LEFT, "seven");
	struct drawing *kept = drawings_keep(arena, g);
	const char *dump = drawing_dump(arena, g);
	arena_free(scratch);

	assert_string_equal(drawing_dump(arena, kept), dump);
	assert_string_equal(kept->shows[0], "T1");
	assert_int_equal(kept->mark_count, 4);
	assert_int_equal(kept->next->use, USE_ROLL);
	assert_null(kept->next->next);
	draw_text(kept, vec(1, 2), 2.5, ALIGN_LEFT, "more");
	assert_string_equal(drawing_dump(arena, kept),
		arena_printf(arena, "%stext 1,2 2.5 left turned 0 \"more\"\n", dump));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(two_texts_apart_are_no_fault),
		cmocka_unit_test(two_texts_on_each_other_are_one_fault),
		cmocka_unit_test(turned_texts_are_judged_as_they_stand),
		cmocka_unit_test(a_heavy_line_through_a_text_is_a_fault),
		cmocka_unit_test(a_dimension_line_through_a_text_is_none),
		cmocka_unit_test(a_line_knocked_out_under_a_text_is_none),
		cmocka_unit_test(a_line_over_the_white_under_a_text_is_a_fault),
		cmocka_unit_test(a_ring_through_a_text_is_a_fault),
		cmocka_unit_test(a_text_over_the_edge_of_the_white_is_a_fault),
		cmocka_unit_test(a_text_on_an_arrow_is_a_fault),
		cmocka_unit_test(a_text_on_a_shade_is_none),
		cmocka_unit_test(marks_that_are_raised_lie_over_the_rest),
		cmocka_unit_test(a_heavy_arc_through_a_text_is_a_fault),
		cmocka_unit_test(the_closing_side_of_a_polygon_counts),
		cmocka_unit_test(a_mark_off_the_paper_is_a_fault),
		cmocka_unit_test(the_report_names_what_touches),
		cmocka_unit_test(taking_marks_over_moves_them),
		cmocka_unit_test(kept_drawings_outlive_the_arena_they_were_made_in),
	};

	return cmocka_run_group_tests(tests, arena_open, arena_close);
}
