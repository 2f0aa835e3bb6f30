/*
 * Sections against areas and lengths that can be reckoned by hand.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "draw_solids.h"
#include "near.h"

static struct view cut(const struct bench *b, enum view_from from, double at)
{
	return view_make(b->arena, b->first,
		(struct view_spec){ .from = from, .cut = true, .at = at });
}

static double cut_area(const struct view *v)
{
	double sum = 0;
	for (int i = 0; i < v->cut_count; i++)
		sum += bench_area(v->cuts[i].points, v->cuts[i].n);
	return sum;
}

static void a_box_cut_square_is_its_cross_section(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 20, 100));
	struct view v = cut(b, VIEW_PLAN, 40);

	assert_int_equal(v.cut_count, 1);
	assert_int_equal(v.cuts[0].n, 4);
	assert_near(cut_area(&v), 600, 1e-9);
	assert_near(bench_length(&v, PEN_CUT), 100, 1e-9);
	assert_int_equal(v.stroke_count, 4);
}

/* The cut runs counter-clockwise in every view: its area comes out positive. */
static void cuts_run_counter_clockwise_from_every_side(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(-10, -10, -10), vec3(10, 10, 10));

	for (int from = VIEW_PLAN; from <= VIEW_BACK; from++) {
		struct view v = cut(b, (enum view_from)from, 3);
		assert_near(cut_area(&v), 400, 1e-9);
	}
}

/* A regular n-gon of radius r has the area n r^2 sin(2 pi / n) / 2; leaned over by an angle, a
 * post of that section is cut level in that area over the angle's cosine (Euclid's projection). */
static void a_leaning_post_is_cut_longer_by_the_cosine(void **state)
{
	struct bench *b = *state;
	struct vec profile[12];
	for (int i = 0; i < 12; i++)
		profile[i] = vec(20 * cos(i * PI / 6), 20 * sin(i * PI / 6));
	double lean = 0.6;
	struct frame f = { .u = { cos(lean), 0, -sin(lean) },
		.v = { 0, 1, 0 },
		.w = { sin(lean), 0, cos(lean) } };
	bench_prism(b, bench_part(b, "A", f), frame_at(0, 0, 200), 12, profile, 400);
	struct view v = cut(b, VIEW_PLAN, 11);

	assert_int_equal(v.cut_count, 1);
	assert_near(cut_area(&v), 12 * 400 * sin(PI / 6) / 2 / cos(lean), 1e-6);
}

/* Sides of a tapered post grow evenly: 20 at the top, 60 at the foot, 30 a quarter of the way. */
static void a_tapered_post_is_cut_between_its_ends(void **state)
{
	struct bench *b = *state;
	static const struct vec3 top[] = { { -10, -10, 100 }, { 10, -10, 100 }, { 10, 10, 100 },
		{ -10, 10, 100 } };
	static const struct vec3 foot[] = { { -30, -30, 0 }, { 30, -30, 0 }, { 30, 30, 0 },
		{ -30, 30, 0 } };
	bench_solid(b, bench_part(b, "A", frame_house()), 4, top, foot);
	struct view v = cut(b, VIEW_PLAN, 75);

	assert_near(cut_area(&v), 30 * 30, 1e-9);
}

/*
 *   _____       _____
 *  |  |  |_____|  |  |
 *  |  |___________|  |     a comb cut through its teeth
 */
static void a_comb_is_cut_into_its_teeth(void **state)
{
	struct bench *b = *state;
	const struct vec comb[] = { { 0, 0 }, { 50, 0 }, { 50, 40 }, { 40, 40 }, { 40, 20 },
		{ 30, 20 }, { 30, 40 }, { 20, 40 }, { 20, 20 }, { 10, 20 }, { 10, 40 }, { 0, 40 } };
	bench_prism(b, bench_part(b, "A", frame_house()), bench_upright(0), 12, comb, 25);
	struct view teeth = cut(b, VIEW_PLAN, 30);
	struct view back = cut(b, VIEW_PLAN, 10);

	assert_int_equal(teeth.cut_count, 3);
	assert_near(cut_area(&teeth), 3 * 10 * 25, 1e-9);
	assert_int_equal(back.cut_count, 1);
	assert_near(cut_area(&back), 50 * 25, 1e-9);
}

/* A plank sawn for n treads, cut level between two of them: see the figure in stair.h. */
static void a_sawtooth_is_cut_level_through_one_step(void **state)
{
	struct bench *b = *state;
	const struct vec saw[] = { { 100, 0 }, { 500, 300 }, { 500, 450 }, { 400, 450 },
		{ 400, 300 }, { 200, 300 }, { 200, 150 }, { 0, 150 }, { 0, 0 } };
	bench_prism(b, bench_part(b, "S", frame_house()), bench_upright(0), 9, saw, 40);
	struct view v = cut(b, VIEW_PLAN, 225);

	/* from the riser cut at 200 to the lower edge, which is 225 high at 100 + 400 * 225/300 */
	assert_int_equal(v.cut_count, 1);
	assert_near(cut_area(&v), (400 - 200) * 40, 1e-9);
}

static void a_plane_that_only_touches_does_not_cut(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 20, 40));
	box(b, "B", vec3(50, 0, 40), vec3(80, 20, 60));
	struct view v = cut(b, VIEW_PLAN, 40);

	assert_int_equal(v.cut_count, 0);
	assert_int_equal(v.stroke_count, 4);
	assert_near(v.box.x1, 30, 1e-9);
}

static void what_stands_before_the_plane_hides_nothing(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(100, 100, 10));
	box(b, "B", vec3(20, 20, 50), vec3(60, 60, 90));
	struct view v = cut(b, VIEW_PLAN, 30);

	assert_int_equal(v.stroke_count, 4);
}

static void a_cut_face_hides_what_lies_behind_it(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(100, 20, 10));
	box(b, "B", vec3(30, -20, 0), vec3(60, 60, 90));
	struct view v = cut(b, VIEW_PLAN, 50);

	assert_near(bench_length(&v, PEN_OUTLINE), 240 - 60, 1e-9);
	assert_near(bench_length(&v, PEN_CUT), 220, 1e-9);
}

/*
 *   ________
 *  |   _____|......     a board housed in another, cut along its upper face
 *  |  |____________
 *  |________|
 */
static void a_cut_face_hides_what_lies_in_its_plane(void **state)
{
	struct bench *b = *state;
	const struct vec housed[] = { { 0, 0 }, { 100, 0 }, { 100, 10 }, { 40, 10 }, { 40, 30 },
		{ 100, 30 }, { 100, 60 }, { 0, 60 } };
	bench_prism(b, bench_part(b, "S", frame_house()), bench_upright(0), 8, housed, 40);
	box(b, "T", vec3(40, 0, 10), vec3(200, 40, 30));
	struct view v = cut(b, VIEW_PLAN, 30);

	assert_near(bench_length(&v, PEN_CUT), 2 * (100 + 40), 1e-9);
	assert_near(bench_length(&v, PEN_OUTLINE), 2 * 100 + 40, 1e-9);
}

static void an_edge_ends_at_the_plane(void **state)
{
	struct bench *b = *state;
	const struct vec ramp[] = { { 0, 0 }, { 100, 0 }, { 0, 100 } };
	bench_prism(b, bench_part(b, "A", frame_house()), bench_upright(0), 3, ramp, 50);
	struct view v = cut(b, VIEW_PLAN, 60);

	assert_true(bench_has(&v, PEN_OUTLINE, vec(40, 0), vec(100, 0)));
	assert_true(bench_has(&v, PEN_CUT, vec(0, 0), vec(40, 0)));
}

static void a_seam_within_one_piece_is_not_cut(void **state)
{
	struct bench *b = *state;
	struct part *p = box(b, "A", vec3(0, 0, 0), vec3(30, 20, 100));
	bench_box(b, p, vec3(30, 0, 0), vec3(50, 20, 100));
	struct view v = cut(b, VIEW_PLAN, 40);

	assert_int_equal(v.cut_count, 2);
	assert_near(bench_length(&v, PEN_CUT), 2 * (50 + 20), 1e-9);
}

static void the_line_between_two_cut_pieces_is_drawn_once(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(30, 20, 100));
	box(b, "B", vec3(30, 0, 0), vec3(50, 20, 100));
	struct view v = cut(b, VIEW_PLAN, 40);

	assert_near(bench_length(&v, PEN_CUT), 2 * (50 + 20) + 20, 1e-9);
}

/* The lines of a hatch on a drawing, and their length on paper. */
struct ruled {
	int n, rising, falling;
	double length, left, right;
};

static struct ruled ruled(const struct drawing *g)
{
	struct ruled r = { .left = INFINITY, .right = -INFINITY };
	for (const struct mark *m = g->first; m; m = m->next) {
		if (m->kind != MARK_LINE || m->line.pen != PEN_HATCH)
			continue;
		const struct vec *p = m->line.points;
		struct vec d = vec_sub(p[1], p[0]);
		r.n++;
		r.rising += d.x * d.y > 0;
		r.falling += d.x * d.y < 0;
		r.length += vec_length(d);
		r.left = fmin(r.left, fmin(p[0].x, p[1].x));
		r.right = fmax(r.right, fmax(p[0].x, p[1].x));
	}
	return r;
}

static struct ruled hatch(const struct bench *b, const struct view *v, struct placing at)
{
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 500, 500);
	view_draw(g, v, at, NULL);
	return ruled(g);
}

/* Lines d apart over an area have the area over d as their length, but for the last one. */
static void a_hatch_is_two_millimetres_apart_at_any_scale(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(1000, 1000, 100));
	struct view v = cut(b, VIEW_PLAN, 40);

	for (int i = 0; i < 4; i++) {
		double scale = 0.05 * (1 << i);
		double side = 1000 * scale;
		struct ruled r = hatch(b, &v, (struct placing){ { 0, 0 }, scale });
		assert_near(r.length, side * side / 2, side * sqrt(2.0));
		assert_int_equal(r.rising, r.n);
	}
}

static void a_hatch_keeps_within_its_face(void **state)
{
	struct bench *b = *state;
	const struct vec ell[] = { { 0, 0 }, { 300, 0 }, { 300, 100 }, { 100, 100 }, { 100, 300 },
		{ 0, 300 } };
	bench_prism(b, bench_part(b, "A", frame_house()), frame_at(0, 0, 50), 6, ell, 100);
	struct view v = cut(b, VIEW_PLAN, 0);
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 500, 500);
	view_draw(g, &v, (struct placing){ { 0, 0 }, 0.5 }, NULL);

	for (const struct mark *m = g->first; m; m = m->next) {
		struct vec p = m->line.points[0], q = m->line.points[1];
		struct vec mid = vec_scale(vec_add(p, q), 0.5);
		assert_true(fmin(mid.x, mid.y) <= 50 + 1e-9);
	}
	assert_near(ruled(g).length, 125 * 100 / 2.0, 400);
}

/* The same piece at another place of the paper: every line has moved along with it. */
static void a_hatch_moves_with_the_house(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(1000, 300, 100));
	struct view v = cut(b, VIEW_PLAN, 40);
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 500, 500);
	struct drawing *h = drawing_new(b->arena, USE_SHEET, 500, 500);
	view_draw(g, &v, (struct placing){ { 0, 0 }, 0.1 }, NULL);
	view_draw(h, &v, (struct placing){ { 7.3, 1.1 }, 0.1 }, NULL);

	assert_int_equal(g->mark_count, h->mark_count);
	for (const struct mark *m = g->first, *n = h->first; m; m = m->next, n = n->next) {
		struct vec d = vec_sub(n->line.points[0], m->line.points[0]);
		assert_near(d.x, 7.3, 1e-9);
		assert_near(d.y, 1.1, 1e-9);
	}
}

static void pieces_that_touch_are_hatched_differently(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(200, 200, 100));
	box(b, "B", vec3(200, 0, 0), vec3(400, 200, 100));
	struct view v = cut(b, VIEW_PLAN, 40);
	struct ruled r = hatch(b, &v, (struct placing){ { 0, 0 }, 0.2 });

	assert_true(r.rising > 10 && r.falling > 10);
}

static void existing_work_is_hatched_wider(void **state)
{
	struct bench *b = *state;
	box(b, "", vec3(0, 0, 0), vec3(1000, 1000, 100));
	struct view v = cut(b, VIEW_PLAN, 40);
	struct ruled r = hatch(b, &v, (struct placing){ { 0, 0 }, 0.1 });

	assert_int_equal(r.falling, r.n);
	assert_near(r.length, 100 * 100 / 4.5, 100 * sqrt(2.0));
}

/* 30 mm at 1:24 is 1.25 mm on paper. */
static void what_is_thin_on_paper_is_left_white(void **state)
{
	struct bench *b = *state;
	box(b, "A", vec3(0, 0, 0), vec3(1000, 30, 100));
	struct view v = cut(b, VIEW_PLAN, 40);

	assert_int_equal(hatch(b, &v, (struct placing){ { 0, 0 }, 1.0 / 24 }).n, 0);
	assert_true(hatch(b, &v, (struct placing){ { 0, 0 }, 1.0 / 12 }).n > 0);
}

/* A housed stringer is two boards deep in the model, but one piece of wood. */
static void a_piece_of_several_solids_is_as_thick_as_all_of_them(void **state)
{
	struct bench *b = *state;
	struct part *p = box(b, "A", vec3(0, 0, 0), vec3(1000, 20, 100));
	bench_box(b, p, vec3(0, 20, 0), vec3(1000, 32, 100));
	struct view v = cut(b, VIEW_PLAN, 40);
	struct ruled r = hatch(b, &v, (struct placing){ { 0, 0 }, 1.0 / 20 });

	assert_near(r.length, 50 * 1.6 / 2, 2 * sqrt(2.0));
}

#define ON_BENCH(f) cmocka_unit_test_setup_teardown(f, open_bench, close_bench)

int main(void)
{
	const struct CMUnitTest tests[] = {
		ON_BENCH(a_box_cut_square_is_its_cross_section),
		ON_BENCH(cuts_run_counter_clockwise_from_every_side),
		ON_BENCH(a_leaning_post_is_cut_longer_by_the_cosine),
		ON_BENCH(a_tapered_post_is_cut_between_its_ends),
		ON_BENCH(a_comb_is_cut_into_its_teeth),
		ON_BENCH(a_sawtooth_is_cut_level_through_one_step),
		ON_BENCH(a_plane_that_only_touches_does_not_cut),
		ON_BENCH(what_stands_before_the_plane_hides_nothing),
		ON_BENCH(a_cut_face_hides_what_lies_behind_it),
		ON_BENCH(a_cut_face_hides_what_lies_in_its_plane),
		ON_BENCH(an_edge_ends_at_the_plane),
		ON_BENCH(a_seam_within_one_piece_is_not_cut),
		ON_BENCH(the_line_between_two_cut_pieces_is_drawn_once),
		ON_BENCH(a_hatch_is_two_millimetres_apart_at_any_scale),
		ON_BENCH(a_hatch_keeps_within_its_face),
		ON_BENCH(a_hatch_moves_with_the_house),
		ON_BENCH(pieces_that_touch_are_hatched_differently),
		ON_BENCH(existing_work_is_hatched_wider),
		ON_BENCH(a_piece_of_several_solids_is_as_thick_as_all_of_them),
		ON_BENCH(what_is_thin_on_paper_is_left_white),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
