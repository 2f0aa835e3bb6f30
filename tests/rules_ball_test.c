/*
 * The largest ball through a guard: against sizes worked out by hand, and against brute force.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "pitchboard/arena.h"
#include "random/dice.h"
#include "rules/ball.h"

enum { MOST = 12 };

/* A guard drawn flat: convex shadows. */
struct guard {
	struct arena *arena;
	struct shadow list[MOST];
	struct shadows all;
};

static struct guard guard_begin(void)
{
	return (struct guard){ .arena = arena_new() };
}

static void guard_add(struct guard *g, const struct vec *at, int n, bool is_bar)
{
	struct shadow *s = &g->list[g->all.n++];
	struct vec *copy = NEW_N(g->arena, struct vec, n);

	s->box = (struct box){ INFINITY, INFINITY, -INFINITY, -INFINITY };
	for (int i = 0; i < n; i++) {
		copy[i] = at[i];
		s->box.x0 = fmin(s->box.x0, at[i].x);
		s->box.y0 = fmin(s->box.y0, at[i].y);
		s->box.x1 = fmax(s->box.x1, at[i].x);
		s->box.y1 = fmax(s->box.y1, at[i].y);
	}
	s->at = copy;
	s->n = n;
	s->is_bar = is_bar;
}

static void guard_box(struct guard *g, double x0, double y0, double x1, double y1)
{
	const struct vec at[] = { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 } };
	guard_add(g, at, 4, false);
}

static const struct slope_line no_top = { 1e4, 0 };

static struct ball largest(struct guard *g, struct box box, enum ball_place place)
{
	g->all.shadow = g->list;
	return ball_largest(g->arena, &g->all, (struct ball_window){ box, no_top, place, 0.1 });
}

/* Two posts, 100 apart. */
static void between_two_posts_a_ball_is_as_wide_as_the_gap(void **state)
{
	struct guard g = guard_begin();
	(void)state;
	guard_box(&g, -30, 0, 0, 900);
	guard_box(&g, 100, 0, 130, 900);
	guard_box(&g, -30, -20, 130, 0);
	assert_near(largest(&g, (struct box){ 0, 0, 100, 900 }, BALL_BETWEEN).diameter, 100, 4e-3);
	arena_free(g.arena);
}

/* A square of 4 in holds a ball of 4 in, in its middle. */
static void in_a_square_a_ball_is_as_wide_as_the_square(void **state)
{
	struct guard g = guard_begin();
	(void)state;
	guard_box(&g, -10, -10, 0, 111.6);
	guard_box(&g, 101.6, -10, 120, 111.6);
	guard_box(&g, -10, -10, 120, 0);
	guard_box(&g, -10, 101.6, 120, 111.6);
	struct ball b = largest(&g, (struct box){ 0, 0, 101.6, 101.6 }, BALL_BETWEEN);
	assert_near(b.diameter, 101.6, 4e-3);
	assert_near(b.at.x, 50.8, 0.01);
	assert_near(b.at.y, 50.8, 0.01);
	arena_free(g.arena);
}

/* The triangle of riser, tread and the underside of a rail that lies on the nosing line: its
 * inscribed circle is R + G - sqrt(R^2 + G^2) across, 5.098 in for 7 3/4 by 10 in, 4.962 in for 7
 * by 11 in (trade facts, 2.2; computed there). */
static double in_triangle(double rise_in, double run_in)
{
	struct guard g = guard_begin();
	double rise = rise_in * 25.4, run = run_in * 25.4;
	const struct vec bar[] = { { -run, -rise }, { 2 * run, 2 * rise }, { 2 * run, 3 * rise },
		{ -run, 0 } };

	guard_add(&g, bar, 4, true);
	guard_box(&g, -100, -100, run, 0);
	guard_box(&g, run, -100, run + 100, rise);
	double d = largest(&g, (struct box){ 0, 0, run, rise }, BALL_UNDER_BAR).diameter;
	arena_free(g.arena);
	return d / 25.4;
}

static void in_the_triangle_of_a_step_it_is_the_inscribed_circle(void **state)
{
	(void)state;
	assert_near(in_triangle(7.75, 10), 5.098, 6e-4);
	assert_near(in_triangle(7, 11), 4.962, 6e-4);
}

/* ---- brute force ---- */

/* Distance by definition: to every edge, and none inside. */
static double distance(const struct shadow *s, struct vec p)
{
	double nearest = INFINITY;
	bool inside = true;

	for (int i = 0; i < s->n; i++) {
		struct vec a = s->at[i], b = s->at[(i + 1) % s->n], along = vec_sub(b, a);
		double share = vec_dot(vec_sub(p, a), along) / vec_dot(along, along);
		share = fmin(fmax(share, 0), 1);
		inside = inside && vec_cross(along, vec_sub(p, a)) >= 0;
		nearest =
			fmin(nearest, vec_length(vec_sub(p, vec_add(a, vec_scale(along, share)))));
	}
	return inside ? 0 : nearest;
}

static double by_brute_force(const struct guard *g, struct box b, double step)
{
	double largest_room = 0;

	for (double x = b.x0; x <= b.x1; x += step)
		for (double y = b.y0; y <= b.y1; y += step) {
			double room = INFINITY;
			for (int i = 0; i < g->all.n; i++)
				room = fmin(room, distance(&g->list[i], vec(x, y)));
			largest_room = fmax(largest_room, room);
		}
	return 2 * largest_room;
}

/* Boxes and leaning bars thrown into a frame of 300 by 300. */
static struct guard thrown(struct dice *dice)
{
	struct guard g = guard_begin();

	guard_box(&g, -20, -20, 320, 0);
	guard_box(&g, -20, 300, 320, 320);
	guard_box(&g, -20, -20, 0, 320);
	guard_box(&g, 300, -20, 320, 320);
	for (int i = 0; i < 6; i++) {
		double x = dice_size(dice, 0, 300, 1), y = dice_size(dice, 0, 300, 1);
		double w = dice_size(dice, 10, 80, 1), h = dice_size(dice, 10, 80, 1);
		double lean = dice_size(dice, 0, 60, 1);
		const struct vec at[] = { { x, y }, { x + w, y + lean }, { x + w, y + h + lean },
			{ x, y + h } };
		guard_add(&g, at, 4, false);
	}
	return g;
}

/* A grid of 1 mm misses the best middle by no more than its half diagonal, 0.71 mm: the ball found
 * is at least as large as the grid's, and no more than twice that larger. */
static void no_grid_finds_a_larger_ball(void **state)
{
	struct dice dice = dice_from(20);
	const struct box frame = { 0, 0, 300, 300 };
	(void)state;
	for (int i = 0; i < 20; i++) {
		struct guard g = thrown(&dice);
		double found = largest(&g, frame, BALL_BETWEEN).diameter;
		double grid = by_brute_force(&g, frame, 1);
		assert_true(found >= grid - 4e-3);
		assert_true(found <= grid + 2 * 0.7072 + 4e-3);
		arena_free(g.arena);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(between_two_posts_a_ball_is_as_wide_as_the_gap),
		cmocka_unit_test(in_a_square_a_ball_is_as_wide_as_the_square),
		cmocka_unit_test(in_the_triangle_of_a_step_it_is_the_inscribed_circle),
		cmocka_unit_test(no_grid_finds_a_larger_ball),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
