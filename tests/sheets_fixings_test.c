/*
 * Typical fixings: each way in which a newel's foot is held has its close-up, and what holds is
 * drawn where it is.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "sheets/closeup.h"
#include "sheets_of.h"

/* Before a stringer, at its head, and on the gallery's floor: the last two of three there alike. */
static void every_way_in_which_a_foot_is_held_is_shown_once(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2700, upper_finish: 20}\n"
		"opening: {length: 3000, width: 1100, floor_thickness: 300}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 15, run: 250}]}\n"
		"wall_rails: [{side: left}]\n"
		"rail: {level_runs: [{side: right, direction: back, length: 1200},\n"
		"  {side: right, direction: out, length: 900}]}\n");
	(void)state;
	assert_int_equal(built_count(&b, "newel"), 5);
	const struct drawing *g = sheets_of(&b, &sheet_fixings, 420, 297);
	assert_int_equal(count_begun(g, "Foot of newel"), 3);
	assert_int_equal(count_begun(g, "Rail to newel"), 1);
	assert_int_equal(count_begun(g, "In the newel, up from its foot: rail bolt "), 1);
	assert_int_equal(count_begun(g, "Bracket G1"), 1);
	arena_free(b.arena);
}

/* Does an edge stand plumb there, 10 mm high or more on paper? */
static bool has_edge(const struct drawing *g, double x)
{
	for (const struct mark *m = g->first; m; m = m->next)
		if (m->kind == MARK_LINE && m->line.pen == PEN_OUTLINE &&
			fabs(m->line.points[0].x - x) < 1e-6 &&
			fabs(m->line.points[1].x - x) < 1e-6 &&
			fabs(m->line.points[1].y - m->line.points[0].y) > 10)
			return true;
	return false;
}

/* Dimension lines under a figure that end under two edges. */
static int sizes_from_edge_to_edge(const struct drawing *g, const char *figure)
{
	int n = 0;

	for (const struct mark *t = g->first; t; t = t->next)
		for (const struct mark *m = g->first; m; m = m->next) {
			if (t->kind != MARK_TEXT || strcmp(t->text.text, figure) != 0 ||
				m->kind != MARK_LINE || m->line.pen != PEN_DIM)
				continue;
			struct vec a = m->line.points[0], b = m->line.points[1];
			bool is_under = fabs(a.y - b.y) < 1e-9 && fabs(a.y - t->text.at.y) < 2 &&
				fabs((a.x + b.x) / 2 - t->text.at.x) < 1e-6;
			n += is_under && has_edge(g, a.x) && has_edge(g, b.x);
		}
	return n;
}

/* Its core is thinner than the newel by the strips on both sides. */
static void the_width_of_a_panelled_newel_stands_under_its_faces(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2700}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 15, run: 250}]}\n"
		"newels: {section: 123, build: panelled, panels: {strip_thickness: 12}}\n");
	(void)state;
	assert_near(built_part(&b, "newel core", 0)->size.width, 123 - 2 * 12, 1e-9);
	const struct drawing *g = sheets_of(&b, &sheet_fixings, 600, 420);
	assert_int_equal(sizes_from_edge_to_edge(g, "123"), count_begun(g, "123"));
	assert_true(count_begun(g, "123") >= 2);
	arena_free(b.arena);
}

static bool shows_all(const struct part *p, const struct bore *b, struct vec3 mouth,
	const void *with)
{
	(void)p;
	(void)b;
	(void)mouth;
	(void)with;
	return true;
}

/* A post at 500 along, 2000 up, with a hole of 10 by 90 up its foot for a bolt of 180. */
static void a_bolt_is_drawn_on_into_what_is_not_drilled_here(void **state)
{
	struct arena *a = arena_new();
	const struct frame place = { { 500, 0, 2000 }, { 0, 0, 1 }, { 1, 0, 0 }, { 0, 1, 0 } };
	struct bore b = { .fixing = FIXING_NEWEL_BOLT, .fixing_length = 180 };
	struct part post = { .places = &place, .count = 1, .bores = &b };
	double low = INFINITY, high = -INFINITY, left = INFINITY, right = -INFINITY;
	(void)state;
	b.at = (struct frame){ { 0, 45, 45 }, { 0, 1, 0 }, { 0, 0, -1 }, { -1, 0, 0 } };
	b.size = (struct bore_size){ BORE_HOLE, 10, 10, 90 };
	struct closeup_holes found = closeup_holes_find(a, &post, VIEW_FROM_RIGHT, shows_all, NULL);
	assert_int_equal(found.n, 1);
	assert_near(found.hole[0].radius, 0, 1e-12);
	for (int i = 0; i < 4; i++) {
		low = fmin(low, found.hole[0].corner[i].y);
		high = fmax(high, found.hole[0].corner[i].y);
		left = fmin(left, found.hole[0].corner[i].x);
		right = fmax(right, found.hole[0].corner[i].x);
	}
	assert_near(low, 2000 - 90, 1e-9);
	assert_near(high, 2000 + 90, 1e-9);
	assert_near(left, 500 + 45 - 5, 1e-9);
	assert_near(right, 500 + 45 + 5, 1e-9);
	arena_free(a);
}

static void a_hole_along_the_line_of_sight_is_a_circle(void **state)
{
	struct arena *a = arena_new();
	const struct frame place = frame_house();
	struct bore b = { .fixing = FIXING_BOLT };
	struct part post = { .places = &place, .count = 1, .bores = &b };
	(void)state;
	b.at = (struct frame){ { 30, 0, 70 }, { 1, 0, 0 }, { 0, 0, 1 }, { 0, -1, 0 } };
	b.size = (struct bore_size){ BORE_HOLE, 12, 12, 90 };
	struct closeup_holes found = closeup_holes_find(a, &post, VIEW_FROM_RIGHT, shows_all, NULL);
	assert_near(found.hole[0].radius, 6, 1e-12);
	assert_near(found.hole[0].middle.x, 30, 1e-9);
	assert_near(found.hole[0].middle.y, 70, 1e-9);
	arena_free(a);
}

/* 60 letters of 3.5 mm, 0.6 as wide, are 126 mm; words under a close-up wrap at 90. */
static void a_long_title_takes_a_second_line_and_no_more_width(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, segments: [{risers: 15, run: 250}]}\n");
	struct sheet_context c = { .stair = b.stair };
	struct drawing *g = drawing_new(b.arena, USE_SHEET, 420, 297);
	struct sheet s = { .context = &c, .drawing = g, .hand = { g, six_tenths(), 2.5 } };
	const struct closeup_foot foot = { .scale = 0.1,
		.title = "A place that takes ten words and more to say which one it is" };
	(void)state;
	struct box used = closeup_draw_foot(&s, (struct box){ 0, 0, 10, 10 }, foot);
	assert_true(used.x1 <= 90);
	assert_int_equal(count_begun(g, "A place"), 1);
	assert_int_equal(count_begun(g, foot.title), 0);
	arena_free(b.arena);
}

static void lengths_of_a_wall_rail_are_told_their_height_once(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, left: wall, right: wall}\n"
				    "wall_rails: [{side: left, height: 900}]\n"
				    "stock: {lengths: [2 m, 2.4 m]}\n");
	const struct drawing *g = sheets_of(&b, &sheet_fixings, 420, 297);
	int told = 0;

	(void)state;
	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			told += k->kind == MARK_TEXT && strstr(k->text.text, "top of W1, W2");
	assert_int_equal(told, 1);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_way_in_which_a_foot_is_held_is_shown_once),
		cmocka_unit_test(the_width_of_a_panelled_newel_stands_under_its_faces),
		cmocka_unit_test(a_bolt_is_drawn_on_into_what_is_not_drilled_here),
		cmocka_unit_test(a_hole_along_the_line_of_sight_is_a_circle),
		cmocka_unit_test(a_long_title_takes_a_second_line_and_no_more_width),
		cmocka_unit_test(lengths_of_a_wall_rail_are_told_their_height_once),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
