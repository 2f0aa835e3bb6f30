/*
 * What reaches the ink: layers, whole and broken lines, runs of letters.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdio.h>
#include <string.h>

#include "near.h"
#include "with_faces.h"
#include "write/paint.h"

/* An ink that keeps what it is told as text. */
struct listing {
	struct ink base;
	FILE *to;
	int points; /* in the path */
};

static FILE *to(struct ink *ink)
{
	return ((struct listing *)ink)->to;
}

static void move(struct ink *ink, struct vec p)
{
	((struct listing *)ink)->points++;
	fprintf(to(ink), "move %.3f %.3f\n", p.x, p.y);
}

static void line(struct ink *ink, struct vec p)
{
	fprintf(to(ink), "line %.3f %.3f\n", p.x, p.y);
}

static void arc(struct ink *ink, struct arc a)
{
	fprintf(to(ink), "arc %.3f from %.3f to %.3f\n", a.radius, a.from, a.to);
}

static void close_path(struct ink *ink)
{
	fprintf(to(ink), "close\n");
}

static void stroke(struct ink *ink, struct stroke how)
{
	((struct listing *)ink)->points = 0;
	fprintf(to(ink), "stroke %.3f", how.width);
	for (int i = 0; i < how.dash_count; i++)
		fprintf(to(ink), " %.3f", how.dashes[i]);
	fprintf(to(ink), "\n");
}

static void fill(struct ink *ink, enum shade shade)
{
	static const char *const names[] = { "black", "grey", "middle", "light", "pale", "white" };
	struct listing *l = (struct listing *)ink;

	if (l->points)
		fprintf(l->to, "fill %s\n", names[shade]);
	l->points = 0;
}

static void letters(struct ink *ink, struct run r)
{
	fprintf(to(ink), "%d letters of face %d at %.3f %.3f\n", r.n, r.face, r.at.x, r.at.y);
}

static struct drawing *g;
static char text[4096];

static int new_drawing(void **state)
{
	(void)state;
	g = drawing_new(arena, USE_SHEET, 100, 100);
	return 0;
}

/* All that painting the drawing tells the ink. */
static const char *painted(void)
{
	static const struct ink_kind kind = { move, line, arc, close_path, stroke, fill, letters };
	struct listing ink = { { &kind }, fmemopen(text, sizeof(text), "w"), 0 };

	paint_drawing((struct canvas){ &ink.base, g, faces, arena });
	fclose(ink.to);
	return text;
}

static int count(const char *what)
{
	int n = 0;

	for (const char *s = strstr(painted(), what); s; s = strstr(s + 1, what))
		n++;
	return n;
}

static void square(enum shade shade, double at)
{
	draw_fill(g, shade,
		(const struct vec[]){ { at, at }, { at + 10, at }, { at + 10, at + 10 },
			{ at, at + 10 } },
		4);
}

/* Does `first` come before `then`? */
static void assert_order(const char *first, const char *then)
{
	const char *a = strstr(painted(), first), *b = strstr(text, then);

	assert_non_null(a);
	assert_non_null(b);
	assert_true(a < b);
}

static void lines_of_one_pen_are_one_stroke(void **state)
{
	(void)state;
	for (int i = 0; i < 50; i++)
		draw_line(g, PEN_OUTLINE, vec(i, 0), vec(i, 10));
	assert_int_equal(count("stroke"), 1);
}

static void a_white_fill_covers_what_was_drawn_before_it(void **state)
{
	(void)state;
	draw_line(g, PEN_OUTLINE, vec(1, 5), vec(99, 5));
	square(SHADE_WHITE, 0);
	assert_order("line 99.000 5.000", "fill white");
}

static void a_line_drawn_after_a_white_fill_lies_over_it(void **state)
{
	(void)state;
	draw_line(g, PEN_OUTLINE, vec(1, 5), vec(99, 5));
	square(SHADE_WHITE, 0);
	draw_line(g, PEN_OUTLINE, vec(2, 3), vec(98, 3));
	assert_order("line 99.000 5.000", "fill white");
	assert_order("fill white", "line 98.000 3.000");
}

static void a_line_far_from_a_white_fill_needs_no_layer_of_its_own(void **state)
{
	(void)state;
	draw_line(g, PEN_OUTLINE, vec(1, 5), vec(99, 5));
	square(SHADE_WHITE, 0);
	draw_line(g, PEN_OUTLINE, vec(50, 90), vec(98, 90));
	assert_int_equal(count("stroke"), 1);
}

static void a_frame_round_a_white_fill_is_not_over_it(void **state)
{
	(void)state;
	square(SHADE_WHITE, 40);
	draw_box(g, PEN_FRAME, (struct box){ 5, 5, 95, 95 });
	draw_line(g, PEN_FRAME, vec(0, 10), vec(30, 10));
	assert_int_equal(count("stroke"), 1);
}

static void a_shade_lies_under_the_lines(void **state)
{
	(void)state;
	draw_line(g, PEN_OUTLINE, vec(0, 5), vec(50, 5));
	square(SHADE_LIGHT, 0);
	assert_order("fill light", "stroke");
}

static void fills_drawn_either_way_round_do_not_cancel_out(void **state)
{
	(void)state;
	draw_fill(g, SHADE_BLACK, (const struct vec[]){ { 0, 0 }, { 9, 0 }, { 0, 9 } }, 3);
	draw_fill(g, SHADE_BLACK, (const struct vec[]){ { 0, 8 }, { 8, 0 }, { 0, 0 } }, 3);
	assert_non_null(
		strstr(painted(), "move 0.000 0.000\nline 8.000 0.000\nline 0.000 8.000\n"));
}

static void edges_that_meet_are_one_chain(void **state)
{
	(void)state;
	draw_line(g, PEN_OUTLINE, vec(0, 0), vec(10, 0));
	draw_line(g, PEN_OUTLINE, vec(10, 0), vec(10, 7));
	assert_int_equal(count("move"), 1);
}

static void a_chain_does_not_go_on_from_a_closed_shape(void **state)
{
	(void)state;
	draw_box(g, PEN_OUTLINE, (struct box){ 0, 0, 5, 5 });
	draw_line(g, PEN_OUTLINE, vec(0, 5), vec(0, 9));
	assert_int_equal(count("move"), 2);
}

/* The dashes of the only stroke. */
static int stroked_dashes(double dashes[MOST_DASHES])
{
	const char *s = strstr(painted(), "stroke ");
	double width;
	int used, n = 0;

	sscanf(s += 7, "%lf%n", &width, &used);
	for (s += used; *s == ' '; s += used)
		sscanf(s, "%lf%n", &dashes[n++], &used);
	return n;
}

static void a_broken_line_ends_in_a_whole_dash(void **state)
{
	double d[MOST_DASHES];

	(void)state;
	draw_line(g, PEN_HIDDEN, vec(0, 0), vec(33.3, 0));
	assert_int_equal(stroked_dashes(d), 2);
	double times = (33.3 - d[0]) / (d[0] + d[1]);
	assert_near(times, round(times), 0.01);
	assert_true(times >= 1);
}

static void a_broken_corner_has_a_whole_dash_on_either_side(void **state)
{
	(void)state;
	draw_polyline(g, PEN_HIDDEN, (const struct vec[]){ { 0, 0 }, { 20, 0 }, { 20, 13 } }, 3);
	assert_int_equal(count("stroke"), 2);
	assert_non_null(strstr(text, "move 20.000 0.000\nline 20.000 13.000\n"));
}

static void broken_edges_of_equal_steps_share_a_stroke(void **state)
{
	(void)state;
	for (int i = 0; i < 13; i++)
		draw_line(g, PEN_HIDDEN, vec(i * 7.1, 0), vec(i * 7.1, 20));
	assert_int_equal(count("stroke"), 1);
	assert_int_equal(count("move"), 13);
}

static void a_short_hidden_edge_is_not_lost_in_a_gap(void **state)
{
	double d[MOST_DASHES];

	(void)state;
	draw_line(g, PEN_HIDDEN, vec(0, 0), vec(0.9, 0));
	assert_int_equal(stroked_dashes(d), 0);
}

static void a_broken_curve_is_not_broken_at_its_points(void **state)
{
	struct vec points[40];

	(void)state;
	for (int i = 0; i < 40; i++)
		points[i] = vec(50 + 30 * cos(i * 0.05), 50 + 30 * sin(i * 0.05));
	draw_polyline(g, PEN_CENTRE, points, 40);
	assert_int_equal(count("stroke"), 1);
}

static void a_circle_goes_all_the_way_round(void **state)
{
	(void)state;
	draw_circle(g, PEN_OUTLINE, vec(50, 50), 10);
	assert_non_null(strstr(painted(), "arc 10.000 from 0.000 to 6.283\nclose\n"));
}

static void a_foreign_letter_splits_a_word_into_three_runs(void **state)
{
	(void)state;
	draw_text(g, vec(10, 20), 2.5, ALIGN_LEFT, "Đorđe");
	assert_non_null(strstr(painted(),
		"1 letters of face 2 at 10.000 20.000\n"
		"2 letters of face 0"));
	assert_int_equal(count("letters"), 4);
}

static void a_centred_text_is_as_long_on_either_side(void **state)
{
	(void)state;
	draw_text(g, vec(50, 20), 2.5, ALIGN_MIDDLE, "77");
	/* B612 Regular: 7 is 1300 wide where H is 1520 high */
	assert_non_null(strstr(painted(),
		arena_printf(arena, "2 letters of face 0 at %.3f 20.000", 50 - 2.5 * 1300 / 1520)));
}

static void lettering_lies_over_everything(void **state)
{
	(void)state;
	draw_text(g, vec(1, 1), 2.5, ALIGN_LEFT, "7");
	square(SHADE_WHITE, 0);
	draw_line(g, PEN_OUTLINE, vec(0, 0), vec(50, 50));
	assert_order("stroke", "letters");
	assert_order("fill white", "letters");
}

#define ON_A_NEW_DRAWING(test) cmocka_unit_test_setup(test, new_drawing)

int main(void)
{
	const struct CMUnitTest tests[] = {
		ON_A_NEW_DRAWING(lines_of_one_pen_are_one_stroke),
		ON_A_NEW_DRAWING(a_white_fill_covers_what_was_drawn_before_it),
		ON_A_NEW_DRAWING(a_line_drawn_after_a_white_fill_lies_over_it),
		ON_A_NEW_DRAWING(a_line_far_from_a_white_fill_needs_no_layer_of_its_own),
		ON_A_NEW_DRAWING(a_frame_round_a_white_fill_is_not_over_it),
		ON_A_NEW_DRAWING(a_shade_lies_under_the_lines),
		ON_A_NEW_DRAWING(fills_drawn_either_way_round_do_not_cancel_out),
		ON_A_NEW_DRAWING(edges_that_meet_are_one_chain),
		ON_A_NEW_DRAWING(a_chain_does_not_go_on_from_a_closed_shape),
		ON_A_NEW_DRAWING(a_broken_line_ends_in_a_whole_dash),
		ON_A_NEW_DRAWING(a_broken_corner_has_a_whole_dash_on_either_side),
		ON_A_NEW_DRAWING(broken_edges_of_equal_steps_share_a_stroke),
		ON_A_NEW_DRAWING(a_short_hidden_edge_is_not_lost_in_a_gap),
		ON_A_NEW_DRAWING(a_broken_curve_is_not_broken_at_its_points),
		ON_A_NEW_DRAWING(a_circle_goes_all_the_way_round),
		ON_A_NEW_DRAWING(a_foreign_letter_splits_a_word_into_three_runs),
		ON_A_NEW_DRAWING(a_centred_text_is_as_long_on_either_side),
		ON_A_NEW_DRAWING(lettering_lies_over_everything),
	};

	return cmocka_run_group_tests(tests, take_faces, drop_faces);
}
