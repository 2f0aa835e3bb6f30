/*
 * Balloons: in the order of what they point at, apart from each other, leaders uncrossed.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "sheets/balloons.h"
#include "sheets/marks.h"
#include "six_tenths.h"

static struct hand hand_of(struct arena *a)
{
	struct drawing *g = drawing_new(a, USE_SHEET, 400, 300);

	return (struct hand){ g, six_tenths(), 2.5 };
}

static bool leaders_cross(const struct leader *p, const struct leader *q)
{
	struct vec a = p->points_at, b = p->at, c = q->points_at, d = q->at;
	struct vec ab = vec_sub(b, a), cd = vec_sub(d, c);

	return vec_cross(ab, vec_sub(c, a)) * vec_cross(ab, vec_sub(d, a)) < 0 &&
		vec_cross(cd, vec_sub(a, c)) * vec_cross(cd, vec_sub(b, c)) < 0;
}

static struct balloon_line level_line(double y, double length)
{
	return (struct balloon_line){ .from = vec(0, y),
		.along = vec(1, 0),
		.out = vec(0, 1),
		.length = length };
}

static void balloons_keep_apart(void **state)
{
	struct arena *a = arena_new();
	struct hand h = hand_of(a);
	struct leader list[] = { { "A1", { 50, 10 }, { 0, 0 }, 0 },
		{ "A2", { 51, 30 }, { 0, 0 }, 0 }, { "A3", { 49, 20 }, { 0, 0 }, 0 } };
	(void)state;
	balloons_set(h, list, 3, level_line(100, 0));
	for (int i = 0; i < 3; i++)
		for (int k = i + 1; k < 3; k++)
			assert_true(vec_length(vec_sub(list[i].at, list[k].at)) >
				2 * balloon_radius(h));
	arena_free(a);
}

/* Deep and shallow points nearly under each other, as treads and balusters are. */
static void no_two_leaders_cross(void **state)
{
	struct arena *a = arena_new();
	struct hand h = hand_of(a);
	struct leader list[24];
	unsigned dice = 7;
	(void)state;
	for (int round = 0; round < 200; round++) {
		for (int i = 0; i < 24; i++) {
			dice = dice * 1103515245u + 12345u;
			double x = (dice >> 16) % 200;
			dice = dice * 1103515245u + 12345u;
			list[i] = (struct leader){ "A1", { x, -(double)((dice >> 16) % 90) },
				{ 0, 0 }, 0 };
		}
		balloons_set(h, list, 24, level_line(10, round % 2 ? 120 : 0));
		for (int i = 0; i < 24; i++)
			for (int k = i + 1; k < 24; k++)
				assert_false(leaders_cross(&list[i], &list[k]));
	}
	arena_free(a);
}

static void many_stand_in_rows_no_longer_than_the_line(void **state)
{
	struct arena *a = arena_new();
	struct hand h = hand_of(a);
	struct leader list[24];
	double low = INFINITY, high = -INFINITY;
	(void)state;
	for (int i = 0; i < 24; i++)
		list[i] = (struct leader){ "A1", { 60, -10.0 * i }, { 0, 0 }, 0 };
	balloons_set(h, list, 24, level_line(10, 120));
	for (int i = 0; i < 24; i++) {
		low = fmin(low, list[i].at.x);
		high = fmax(high, list[i].at.x);
		for (int k = i + 1; k < 24; k++)
			assert_true(vec_length(vec_sub(list[i].at, list[k].at)) >
				2 * balloon_radius(h));
	}
	assert_true(high - low < 120);
	arena_free(a);
}

/* A riser 100 by 100, and beside it a strip of 10. */
static void a_cut_face_too_small_for_its_mark_is_left_to_a_balloon(void **state)
{
	struct arena *a = arena_new();
	const struct part riser = { .mark = "R1" }, cove = { .mark = "M1" };
	const struct vec large[] = { { 0, 0 }, { 100, 0 }, { 100, 100 }, { 0, 100 } };
	const struct vec small[] = { { 110, 0 }, { 120, 0 }, { 119, 8 }, { 110, 10 } };
	const struct cut_face cuts[] = { { large, 4, &riser, 0 }, { small, 4, &cove, 1 } };
	const struct view view = { .cuts = cuts, .cut_count = 2 };
	struct marks_left left =
		letter_marks(hand_of(a), &view, 0.25, (struct box){ -10, -10, 130, 110 });
	(void)state;
	assert_int_equal(left.n, 1);
	assert_string_equal(left.list[0].text, "M1");
	/* at 1:4, in the wood of the small one */
	assert_true(left.list[0].points_at.x > 27.5 && left.list[0].points_at.x < 30);
	assert_true(left.list[0].points_at.y > 0 && left.list[0].points_at.y < 2.5);
	arena_free(a);
}

/* B stands on the way from A to what A points at. */
static void a_leader_under_another_balloon_is_a_crowd(void **state)
{
	struct arena *a = arena_new();
	struct hand h = hand_of(a);
	const struct leader apart[] = { { "A", { 0, 0 }, { 0, 50 }, 0 },
		{ "B", { 20, 0 }, { 20, 25 }, 0 } };
	const struct leader behind[] = { { "A", { 0, 0 }, { 0, 50 }, 0 },
		{ "B", { 20, 0 }, { 1, 25 }, 0 } };
	(void)state;
	assert_int_equal(balloons_crowd(h, apart, 2), 0);
	assert_int_equal(balloons_crowd(h, behind, 2), 1);
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_cut_face_too_small_for_its_mark_is_left_to_a_balloon),
		cmocka_unit_test(balloons_keep_apart),
		cmocka_unit_test(no_two_leaders_cross),
		cmocka_unit_test(a_leader_under_another_balloon_is_a_crowd),
		cmocka_unit_test(many_stand_in_rows_no_longer_than_the_line),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
