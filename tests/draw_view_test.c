/*
 * Views of a few boxes, where anybody can say what is seen.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "draw_solids.h"
#include "near.h"

static struct view seen(const struct bench *b, enum view_from from)
{
	return view_make(b->arena, b->first, (struct view_spec){ .from = from });
}

static void assert_at(struct vec p, double x, double y)
{
	assert_near(p.x, x, 1e-9);
	assert_near(p.y, y, 1e-9);
}

/* House axes are those of vec.h: x up the stair, y to the left, z up. */
static void every_view_has_its_right_and_its_up(void **state)
{
	(void)state;
	struct vec3 p = vec3(1, 2, 3);

	assert_at(view_project(VIEW_PLAN, p), 1, 2);
	assert_at(view_project(VIEW_FROM_RIGHT, p), 1, 3);
	assert_at(view_project(VIEW_FROM_LEFT, p), -1, 3);
	assert_at(view_project(VIEW_FRONT, p), -2, 3);
	assert_at(view_project(VIEW_BACK, p), 2, 3);
}

/* In an isometric view, unit steps along the three axes come out sqrt(2/3) long. */
static void the_pictorial_shortens_all_axes_alike(void **state)
{
	(void)state;
	const struct vec3 axes[] = { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };

	for (int i = 0; i < 3; i++)
		assert_near(vec_length(view_project(VIEW_PICTORIAL, axes[i])), sqrt(2.0 / 3),
			1e-12);
}

static void the_eye_looks_against_w(void **state)
{
	(void)state;
	for (int from = VIEW_PLAN; from <= VIEW_PICTORIAL; from++) {
		struct frame f = view_frame(from);
		struct vec3 w = vec3_cross(f.u, f.v);
		assert_near(vec3_dot(w, f.w), 1, 1e-12);
	}
}

static void a_box_from_above_is_its_outline(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 20, 10));
	struct view v = seen(b, VIEW_PLAN);

	assert_int_equal(v.stroke_count, 4);
	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 0), vec(30, 0)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(30, 0), vec(30, 20)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(30, 20), vec(0, 20)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 20), vec(0, 0)));
	assert_near(v.box.x1, 30, 1e-9);
	assert_near(v.box.y1, 20, 1e-9);
}

/* Of the twelve edges of a cube the three at the far corner are hidden. */
static void a_cube_shows_nine_edges_in_the_pictorial(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(10, 10, 10));
	struct view v = seen(b, VIEW_PICTORIAL);

	assert_int_equal(v.stroke_count, 9);
	assert_near(bench_length(&v, PEN_OUTLINE), 90 * sqrt(2.0 / 3), 1e-9);
}

static void what_lies_behind_is_not_drawn(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(100, 40, 10));
	box(b, "B", vec3(30, -20, 20), vec3(60, 60, 30));
	struct view v = seen(b, VIEW_PLAN);

	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 0), vec(30, 0)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(60, 40), vec(100, 40)));
	assert_near(bench_length(&v, PEN_OUTLINE), 220 + 2 * 40 + 2 * 70, 1e-9);
}

/*
 *   ______________
 *  |      |       |     body and strip of a tread, flush on top
 *  |______|_______|
 */
static void a_flush_joint_is_fine_and_drawn_once(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 40, 10));
	box(b, "B", vec3(30, 0, 5), vec3(80, 40, 10));
	struct view v = seen(b, VIEW_PLAN);

	assert_true(bench_has(&v, PEN_FINE, vec(30, 0), vec(30, 40)));
	assert_near(bench_length(&v, PEN_FINE), 40, 1e-9);
	assert_near(bench_length(&v, PEN_OUTLINE), 2 * (80 + 40), 1e-9);
	assert_int_equal(v.stroke_count, 1 + 2 * 3);
}

static double length_of_part(const struct view *v, const struct part *p)
{
	double sum = 0;

	for (int i = 0; i < v->stroke_count; i++)
		if (v->strokes[i].part == p)
			sum += vec_length(vec_sub(v->strokes[i].b, v->strokes[i].a));
	return sum;
}

/* What of a riser shows under a newel that is flush with it is the riser's, not the newel's. */
static void pieces_in_one_line_have_each_its_own_stretch_of_it(void **state)
{
	struct bench *b = *state;
	const struct part *riser = box(b, "R", vec3(0, 0, 0), vec3(10, 90, 50));
	const struct part *newel = box(b, "N", vec3(0, 0, 50), vec3(10, 90, 900));
	struct view v = seen(b, VIEW_FROM_RIGHT);

	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 0), vec(0, 50)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 50), vec(0, 900)));
	assert_near(length_of_part(&v, riser), 10 + 2 * 50 + 10, 1e-9);
	assert_near(length_of_part(&v, newel), 10 + 2 * 850, 1e-9);
}

static void a_flush_joint_is_fine_seen_aslant_too(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 40, 10));
	box(b, "B", vec3(30, 0, 0), vec3(80, 40, 10));
	struct view v = seen(b, VIEW_PICTORIAL);

	assert_near(bench_length(&v, PEN_FINE), (40 + 10) * sqrt(2.0 / 3), 1e-9);
}

static void a_step_between_two_pieces_is_no_joint(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 40, 10));
	box(b, "B", vec3(30, 0, 0), vec3(80, 40, 11));
	struct view v = seen(b, VIEW_PLAN);

	assert_true(bench_has(&v, PEN_OUTLINE, vec(30, 0), vec(30, 40)));
}

static void a_seam_within_one_piece_is_not_drawn(void **state)
{
	struct bench *b = *state;
	struct part *p = box(b, "A", vec3(0, 0, 0), vec3(30, 40, 10));
	bench_box(b, p, vec3(30, 0, 0), vec3(80, 40, 10));
	struct view v = seen(b, VIEW_PLAN);

	assert_int_equal(v.stroke_count, 4);
	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 40), vec(80, 40)));
}

/* A round built up of slices: seen from above, every seam between two is soft. */
static void a_soft_seam_within_one_piece_is_not_drawn(void **state)
{
	struct bench *b = *state;
	struct part *p = bench_part(b, "A", frame_house());
	static const struct vec3 top[] = { { 10, 10, 20 }, { 40, 10, 20 }, { 40, 40, 20 } };
	static const struct vec3 middle[] = { { 5, 5, 12 }, { 45, 5, 12 }, { 45, 45, 12 } };
	static const struct vec3 foot[] = { { 0, 0, 0 }, { 50, 0, 0 }, { 50, 50, 0 } };
	static const unsigned char upper[] = { SOFT_B, SOFT_B, SOFT_B };
	static const unsigned char lower[] = { SOFT_A, SOFT_A, SOFT_A };
	bench_solid(b, p, 3, top, middle)->soft = upper;
	bench_solid(b, p, 3, middle, foot)->soft = lower;
	struct view v = seen(b, VIEW_PLAN);

	/* two legs above, two below, the line up the corner between, and one side plumb */
	assert_near(bench_length(&v, PEN_OUTLINE), 2 * 30 + 2 * 50 + (10 + 50) * sqrt(2.0), 1e-6);
}

static void the_rim_of_a_nearer_face_is_drawn_once(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(50, 40, 10));
	box(b, "", vec3(0, 0, 10), vec3(50, 40, 20));
	struct view v = seen(b, VIEW_PLAN);

	assert_int_equal(v.stroke_count, 4);
	assert_near(bench_length(&v, PEN_EXISTING), 180, 1e-9);
}

static void existing_work_has_its_own_pen_and_gives_way(void **state)
{
	struct bench *b = *state;
	box(b, "", vec3(0, 0, 0), vec3(50, 40, 10));
	box(b, "A", vec3(50, 0, 0), vec3(60, 40, 12));
	struct view v = seen(b, VIEW_PLAN);

	assert_near(bench_length(&v, PEN_EXISTING), 140, 1e-9);
	assert_true(bench_has(&v, PEN_OUTLINE, vec(50, 0), vec(50, 40)));
}

/* Turned in the house nothing falls on round numbers any more, and touching pieces do not agree to
 * the last bit. */
static void pieces_turned_in_the_house_still_touch(void **state)
{
	struct bench *b = *state;
	for (int i = 0; i < 40; i++) {
		double turn = 0.1 + 0.07 * i, c = cos(turn), s = sin(turn);
		struct frame f = { { 1000 * i, 17 * i, 0 }, { c, s, 0 }, { -s, c, 0 },
			{ 0, 0, 1 } };
		struct frame g = frame_compose(f, frame_at(30, 0, 0));
		bench_box(b, bench_part(b, "", f), vec3(0, 0, 0), vec3(30, 40, 10));
		bench_box(b, bench_part(b, "", g), vec3(0, 0, 0), vec3(50, 40, 10));
		bench_box(b, bench_part(b, "C", g), vec3(0, 0, -10), vec3(50, 40, 0));
	}
	struct view v = seen(b, VIEW_PLAN);

	assert_int_equal(v.stroke_count, 40 * 7);
	assert_near(bench_length(&v, PEN_FINE), 40 * 40, 1e-6);
	assert_near(bench_length(&v, PEN_EXISTING), 40 * 240, 1e-6);
}

/* A soft line shows only where the piece turns away from the eye. */
static void a_round_post_shows_its_two_sides(void **state)
{
	struct bench *b = *state;
	struct vec profile[16];
	unsigned char soft[16];
	for (int i = 0; i < 16; i++)
		profile[i] = vec(10 * cos((i + 0.5) * PI / 8), 10 * sin((i + 0.5) * PI / 8));
	memset(soft, SOFT_SIDE, sizeof(soft));
	bench_prism(b, bench_part(b, "A", frame_house()), frame_house(), 16, profile, 100)->soft =
		soft;
	struct view v = seen(b, VIEW_FROM_RIGHT);
	double r = 10 * cos(PI / 16);

	assert_int_equal(v.stroke_count, 4);
	assert_true(bench_has(&v, PEN_OUTLINE, vec(r, 0), vec(r, -100)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(-r, 0), vec(-r, -100)));
}

/*
 *    ____________
 *   |____________|   tread, nearer
 *      | :    |
 *      | :    |      sawtooth behind it
 */
static void a_sawtooth_ends_under_the_tread_before_it(void **state)
{
	struct bench *b = *state;
	const struct vec saw[] = { { 0, 0 }, { 250, 0 }, { 250, 170 }, { 0, 170 } };
	bench_prism(b, bench_part(b, "S", frame_house()), bench_upright(0), 4, saw, 40);
	box(b, "T", vec3(-30, -30, 170), vec3(260, 900, 200));
	struct view v = seen(b, VIEW_FROM_RIGHT);

	assert_true(bench_has(&v, PEN_OUTLINE, vec(0, 0), vec(0, 170)));
	assert_true(bench_has(&v, PEN_OUTLINE, vec(-30, 170), vec(260, 170)));
	assert_near(bench_length(&v, PEN_OUTLINE), 2 * (290 + 30) + 250 + 2 * 170, 1e-9);
}

/* A board leaning through the plane of another's edge is nearer at one end only. */
static void an_edge_is_hidden_exactly_where_the_face_comes_nearer(void **state)
{
	struct bench *b = *state;
	const struct vec ramp[] = { { 0, 0 }, { 100, 0 }, { 100, 100 } };
	bench_prism(b, bench_part(b, "A", frame_house()), bench_upright(0), 3, ramp, 50);
	box(b, "B", vec3(-10, 20, 40), vec3(110, 30, 60));
	struct view v = seen(b, VIEW_PLAN);
	struct vec from = vec(-10, 20), to = vec(60, 20); /* where the ramp is 60 high */

	bool found = false;
	for (int i = 0; i < v.stroke_count; i++) {
		const struct stroke *s = &v.strokes[i];
		if (vec_length(vec_sub(s->a, from)) < 1e-9)
			found = found || vec_length(vec_sub(s->b, to)) < 1e-9;
	}
	assert_true(found);
}

static bool is_a(const struct part *p, const void *with)
{
	return strcmp(p->mark, with) == 0;
}

static void hidden_edges_are_given_where_asked(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(100, 40, 10));
	box(b, "B", vec3(30, -20, 20), vec3(60, 60, 30));
	struct view_spec spec = { .from = VIEW_PLAN, .hidden = is_a, .with = "A" };
	struct view v = view_make(b->arena, b->first, spec);

	assert_near(bench_length(&v, PEN_HIDDEN), 60, 1e-9);
	assert_true(bench_has(&v, PEN_HIDDEN, vec(30, 40), vec(60, 40)));
}

static void a_view_shows_what_it_is_told_to(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(100, 40, 10));
	box(b, "B", vec3(30, -20, 20), vec3(60, 60, 30));
	struct view_spec spec = { .from = VIEW_PLAN, .shows = is_a, .with = "A" };
	struct view v = view_make(b->arena, b->first, spec);

	assert_int_equal(v.stroke_count, 4);
	assert_near(bench_length(&v, PEN_OUTLINE), 280, 1e-9);
}

static void strokes_come_in_the_order_of_the_parts(void **state)
{
	struct bench *b = *state;
	for (int i = 0; i < 5; i++)
		box(b, "A", vec3(20 * i, 0, 0), vec3(20 * i + 10, 40, 10));
	struct view v = seen(b, VIEW_PLAN);
	const struct part *part = b->first;

	for (int i = 0; i < v.stroke_count; i++) {
		while (part && part != v.strokes[i].part)
			part = part->next;
		assert_non_null(part);
	}
}

static void a_drawing_of_a_view_is_cut_off_at_its_window(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(1000, 400, 10));
	struct view v = seen(b, VIEW_PLAN);
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 200, 200);
	struct placing at = { { 50, 60 }, 0.1 };
	view_draw(g, &v, at, &(struct box){ -100, -100, 500, 500 });
	int at_the_window = 0;

	assert_int_equal(g->mark_count, 3);
	for (const struct mark *m = g->first; m; m = m->next) {
		const struct vec *p = m->line.points;
		assert_true(fmax(p[0].x, p[1].x) < 100 + 1e-9);
		at_the_window += fmax(p[0].x, p[1].x) > 100 - 1e-9;
	}
	assert_int_equal(at_the_window, 2);
}

static void an_empty_view_is_empty(void **state)
{
	struct bench *b = *state;
	struct view v = seen(b, VIEW_PLAN);

	assert_int_equal(v.stroke_count, 0);
	assert_near(v.box.x1, 0, 0);
}

#define ON_BENCH(f) cmocka_unit_test_setup_teardown(f, open_bench, close_bench)

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_view_has_its_right_and_its_up),
		cmocka_unit_test(the_pictorial_shortens_all_axes_alike),
		cmocka_unit_test(the_eye_looks_against_w),
		ON_BENCH(a_box_from_above_is_its_outline),
		ON_BENCH(a_cube_shows_nine_edges_in_the_pictorial),
		ON_BENCH(what_lies_behind_is_not_drawn),
		ON_BENCH(a_flush_joint_is_fine_and_drawn_once),
		ON_BENCH(pieces_in_one_line_have_each_its_own_stretch_of_it),
		ON_BENCH(a_flush_joint_is_fine_seen_aslant_too),
		ON_BENCH(a_step_between_two_pieces_is_no_joint),
		ON_BENCH(a_seam_within_one_piece_is_not_drawn),
		ON_BENCH(a_soft_seam_within_one_piece_is_not_drawn),
		ON_BENCH(the_rim_of_a_nearer_face_is_drawn_once),
		ON_BENCH(existing_work_has_its_own_pen_and_gives_way),
		ON_BENCH(pieces_turned_in_the_house_still_touch),
		ON_BENCH(a_round_post_shows_its_two_sides),
		ON_BENCH(a_sawtooth_ends_under_the_tread_before_it),
		ON_BENCH(an_edge_is_hidden_exactly_where_the_face_comes_nearer),
		ON_BENCH(hidden_edges_are_given_where_asked),
		ON_BENCH(a_view_shows_what_it_is_told_to),
		ON_BENCH(strokes_come_in_the_order_of_the_parts),
		ON_BENCH(a_drawing_of_a_view_is_cut_off_at_its_window),
		ON_BENCH(an_empty_view_is_empty),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
