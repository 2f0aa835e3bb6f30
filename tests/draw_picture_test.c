/*
 * Pictures: which shade is seen where, against the plainest way to find it; and which lines stay.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "draw/picture.h"
#include "draw_random.h"
#include "near.h"

/* ---- shades ---- */

/* Three shades and none, by the way a face looks; no axis lies near where they change. */
static enum shade by_axis(const struct part *p, struct vec3 normal)
{
	(void)p;
	if (fabs(normal.x) > 0.1)
		return normal.x > 0 ? SHADE_GREY : SHADE_MIDDLE;
	return fabs(normal.y) > 0.1 ? SHADE_LIGHT : SHADE_WHITE;
}

static struct vec3 seen_from(struct frame eye, struct vec3 p)
{
	return vec3(vec3_dot(eye.u, p), vec3_dot(eye.v, p), vec3_dot(eye.w, p));
}

/* What a look at one point finds nearest, and how near anything else comes to it. */
struct look {
	double nearest;
	enum shade shade;
	bool unsure;
};

/* So near a rim it may go either way. */
#define UNSURE 0.02

static double distance(struct vec p, struct vec a, struct vec b)
{
	struct vec d = vec_sub(b, a);
	double t = vec_dot(vec_sub(p, a), d) / fmax(vec_dot(d, d), 1e-12);

	return vec_length(vec_sub(p, vec_add(a, vec_scale(d, fmin(fmax(t, 0), 1)))));
}

static bool is_within(const struct vec3 *at, int n, struct vec p, bool *unsure)
{
	bool in = false;

	for (int i = 0; i < n; i++) {
		struct vec q = vec(at[i].x, at[i].y);
		struct vec r = vec(at[(i + 1) % n].x, at[(i + 1) % n].y);
		*unsure |= distance(p, q, r) < UNSURE;
		if ((q.y > p.y) != (r.y > p.y) &&
			p.x < q.x + (r.x - q.x) * (p.y - q.y) / (r.y - q.y))
			in = !in;
	}
	return in;
}

/* A face of n corners in the house, counter-clockwise. */
static void look_at(struct look *l, struct vec p, struct frame eye, const struct vec3 *house, int n)
{
	struct vec3 at[16], sum = { 0 };

	for (int i = 0; i < n; i++) {
		at[i] = seen_from(eye, house[i]);
		sum = vec3_add(sum, vec3_cross(house[i], house[(i + 1) % n]));
	}
	struct vec3 normal = vec3_unit(sum), turned = seen_from(eye, normal);
	if (turned.z < 1e-9 || !is_within(at, n, p, &l->unsure))
		return;
	double z = at[0].z - (turned.x * (p.x - at[0].x) + turned.y * (p.y - at[0].y)) / turned.z;
	if (fabs(z - l->nearest) < UNSURE)
		l->unsure = true;
	if (z > l->nearest) {
		l->nearest = z;
		l->shade = by_axis(NULL, normal);
	}
}

static struct look look_everywhere(const struct bench *b, struct vec p, struct frame eye)
{
	struct look l = { -INFINITY, SHADE_WHITE, false };

	for (const struct part *part = b->first; part; part = part->next) {
		const struct solid *s = part->solids;
		struct vec3 one[16], other[16];
		for (int i = 0; i < s->n; i++) {
			one[i] = frame_place(part->places[0], s->a[i]);
			other[s->n - 1 - i] = frame_place(part->places[0], s->b[i]);
		}
		look_at(&l, p, eye, one, s->n);
		look_at(&l, p, eye, other, s->n);
		for (int i = 0; i < s->n; i++) {
			int next = (i + 1) % s->n;
			const struct vec3 side[4] = { one[next], one[i], other[s->n - 1 - i],
				other[s->n - 1 - next] };
			look_at(&l, p, eye, side, 4);
		}
	}
	return l;
}

static bool is_on(const struct tint *t, struct vec p)
{
	for (int i = 0; i < t->n; i++) {
		struct vec a = t->points[i], b = t->points[(i + 1) % t->n];
		if (vec_cross(vec_sub(b, a), vec_sub(p, a)) < 0)
			return false;
	}
	return true;
}

/* How many looks found a shade, and how many none. */
struct tally {
	int shaded, plain;
};

static void compare_at(const struct bench *b, const struct view *v, struct frame eye, struct vec p,
	struct tally *t)
{
	struct look l = look_everywhere(b, p, eye);
	int found = 0;

	if (l.unsure)
		return;
	for (int i = 0; i < v->tint_count; i++) {
		if (!is_on(&v->tints[i], p))
			continue;
		assert_int_equal(v->tints[i].shade, l.shade);
		found++;
	}
	assert_int_equal(found, l.shade != SHADE_WHITE);
	t->shaded += found;
	t->plain += !found;
}

static struct tally compare(const struct bench *b, uint64_t *seed)
{
	struct picture picture = { any_frame(seed), by_axis };
	struct view_spec spec = { .picture = &picture };
	struct view v = view_make(b->arena, b->first, spec);
	struct tally t = { 0 };

	for (int i = 0; i < 600; i++) {
		struct vec p =
			vec(chance(seed, v.box.x0, v.box.x1), chance(seed, v.box.y0, v.box.y1));
		compare_at(b, &v, picture.eye, p, &t);
	}
	return t;
}

static void every_point_of_lofts_has_the_shade_of_what_is_seen_there(void **state)
{
	struct tally all = { 0 };

	(void)state;
	for (uint64_t seed = 1; seed <= 16; seed++) {
		uint64_t run = seed * 7919;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 9; i++)
			add_loft(&b, &run);
		struct tally t = compare(&b, &run);
		arena_free(b.arena);
		all.shaded += t.shaded;
		all.plain += t.plain;
	}
	assert_true(all.shaded > 2000 && all.plain > 2000);
}

static void every_point_of_boxes_has_the_shade_of_what_is_seen_there(void **state)
{
	struct tally all = { 0 };

	(void)state;
	for (uint64_t seed = 1; seed <= 16; seed++) {
		uint64_t run = seed * 104729;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 25; i++)
			add_box(&b, &run);
		struct tally t = compare(&b, &run);
		arena_free(b.arena);
		all.shaded += t.shaded;
		all.plain += t.plain;
	}
	assert_true(all.shaded > 2000 && all.plain > 2000);
}

/* ---- lines ---- */

static enum shade no_shade(const struct part *p, struct vec3 normal)
{
	(void)p;
	(void)normal;
	return SHADE_WHITE;
}

/* All three axes come out equally long, sqrt(2/3): an isometric drawing. */
static struct picture isometric(void)
{
	return (struct picture){ view_frame(VIEW_PICTORIAL), no_shade };
}

static struct view picture_of(const struct bench *b, const struct picture *picture)
{
	return view_make(b->arena, b->first, (struct view_spec){ .picture = picture });
}

static void a_cube_has_a_bold_outline_and_three_fine_edges(void **state)
{
	struct bench *b = *state;
	struct picture picture = isometric();

	box(b, "A", vec3(0, 0, 0), vec3(100, 100, 100));
	struct view v = picture_of(b, &picture);
	assert_near(bench_length(&v, PEN_OUTLINE), 600 * sqrt(2.0 / 3), 1e-6);
	assert_near(bench_length(&v, PEN_FINE), 300 * sqrt(2.0 / 3), 1e-6);
}

/*
 *      _________
 *     |  _____  |
 *     | |     | |    a block on a board, seen from above: how far it stands up decides
 *     | |_____| |
 *     |_________|
 */
static double bold_round_a_block(struct bench *b, double height)
{
	struct picture picture = { frame_house(), no_shade };

	box(b, "A", vec3(0, 0, 0), vec3(300, 300, 20));
	box(b, "B", vec3(100, 100, 20), vec3(200, 200, 20 + height));
	struct view v = picture_of(b, &picture);
	return bench_length(&v, PEN_OUTLINE) - 4 * 300;
}

static void an_edge_with_something_close_behind_it_is_fine(void **state)
{
	assert_near(bold_round_a_block(*state, 9), 0, 1e-9);
}

static void an_edge_with_something_far_behind_it_is_bold(void **state)
{
	assert_near(bold_round_a_block(*state, 60), 400, 1e-9);
}

static enum picture_line bold(const struct part *p, double scale)
{
	(void)p;
	(void)scale;
	return PICTURE_BOLD;
}

static enum picture_line light(const struct part *p, double scale)
{
	(void)p;
	(void)scale;
	return PICTURE_LIGHT;
}

static int marks_of(const struct drawing *g, enum pen pen)
{
	int n = 0;

	for (const struct mark *m = g->first; m; m = m->next)
		n += m->kind == MARK_LINE && m->line.pen == pen;
	return n;
}

/* Eleven flat laths side by side, 10 apart, from above: twelve lines along them, and two across
 * for each. */
static struct drawing *laths_at(struct bench *b, double scale)
{
	struct picture picture = { frame_house(), no_shade };
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 200, 200);

	for (int i = 0; i < 11; i++)
		box(b, "A", vec3(10 * i, 0, 0), vec3(10 * i + 10, 1000, i % 2 ? 5 : 6));
	struct view v = picture_of(b, &picture);
	picture_draw(g, &v, (struct placing){ { 0, 0 }, scale }, bold);
	return g;
}

static void fine_lines_that_keep_clear_of_each_other_stay(void **state)
{
	struct drawing *g = laths_at(*state, 1 / 20.0); /* 0.5 mm apart */

	assert_int_equal(marks_of(g, PEN_FINE), 10);
}

/* 0.1 mm apart, and the outlines 1.1 mm from each other: between them is room for one that keeps
 * 0.35 mm clear of both, and of a second one. */
static void fine_lines_that_would_run_together_are_thinned_out(void **state)
{
	struct drawing *g = laths_at(*state, 1 / 100.0);

	assert_int_equal(marks_of(g, PEN_FINE), 1);
}

/*
 *      |   |
 *      |   |    the right-hand edge of a step runs beside its left-hand one, but for a
 *      |___|    piece at the top
 *      |
 */
static void where_a_line_left_out_goes_on_alone_it_stays(void **state)
{
	struct bench *b = *state;
	struct picture picture = { frame_house(), no_shade };
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 200, 200);
	double fine = 0;

	box(b, "A", vec3(-500, 0, 0), vec3(0, 800, 6));
	box(b, "B", vec3(0, 0, 0), vec3(20, 1000, 3));
	box(b, "C", vec3(20, 0, 0), vec3(500, 1000, 0.5));
	struct view v = picture_of(b, &picture);
	picture_draw(g, &v, (struct placing){ { 0, 0 }, 0.01 }, bold);
	for (const struct mark *m = g->first; m; m = m->next)
		if (m->kind == MARK_LINE && m->line.pen == PEN_FINE)
			fine += vec_length(vec_sub(m->line.points[1], m->line.points[0]));
	/* 8 mm of A's edge, and of the line 0.2 mm beside it the 2 mm that go on */
	assert_near(fine, 8 + 2, 1e-9);
}

static void what_is_too_slender_for_a_bold_line_gets_a_fine_one(void **state)
{
	struct bench *b = *state;
	struct picture picture = isometric();
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 200, 200);

	box(b, "A", vec3(0, 0, 0), vec3(30, 30, 900));
	struct view v = picture_of(b, &picture);
	picture_draw(g, &v, (struct placing){ { 50, 50 }, 0.1 }, light);
	assert_int_equal(marks_of(g, PEN_OUTLINE), 0);
	assert_int_equal(marks_of(g, PEN_FINE), 9);
}

static void shades_lie_under_the_lines(void **state)
{
	struct bench *b = *state;
	struct picture picture = { view_frame(VIEW_PICTORIAL), by_axis };
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 200, 200);
	bool line = false;

	box(b, "A", vec3(0, 0, 0), vec3(30, 30, 90));
	struct view v = picture_of(b, &picture);
	picture_draw(g, &v, (struct placing){ { 50, 50 }, 1 }, bold);
	assert_true(v.tint_count > 0);
	for (const struct mark *m = g->first; m; m = m->next) {
		assert_false(line && m->kind == MARK_FILL);
		line = line || m->kind == MARK_LINE;
	}
}

#define ON_BENCH(f) cmocka_unit_test_setup_teardown(f, open_bench, close_bench)

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_point_of_lofts_has_the_shade_of_what_is_seen_there),
		cmocka_unit_test(every_point_of_boxes_has_the_shade_of_what_is_seen_there),
		ON_BENCH(a_cube_has_a_bold_outline_and_three_fine_edges),
		ON_BENCH(an_edge_with_something_close_behind_it_is_fine),
		ON_BENCH(an_edge_with_something_far_behind_it_is_bold),
		ON_BENCH(fine_lines_that_keep_clear_of_each_other_stay),
		ON_BENCH(fine_lines_that_would_run_together_are_thinned_out),
		ON_BENCH(where_a_line_left_out_goes_on_alone_it_stays),
		ON_BENCH(what_is_too_slender_for_a_bold_line_gets_a_fine_one),
		ON_BENCH(shades_lie_under_the_lines),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
