/*
 * Joints: a hole drilled in one piece is found again in the piece on the other side; pieces joined
 * in the shop are a unit.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "parts/assembly.h"

static const struct part_kind posts = { .name = "post", .prefix = "P" };
static const struct part_kind boards = { .name = "board", .prefix = "Q" };

static const struct frame upright = { .u = { 0, 0, 1 }, .v = { 1, 0, 0 }, .w = { 0, 1, 0 } };

static struct part *post_at(struct pieces *list, double x, double z)
{
	struct frame place = upright;
	place.origin = vec3(x, 0, z);
	struct part *p = piece_add(list, "post", "ash", place);
	p->solids = solid_box(list->arena, vec3(0, 0, 0), vec3(900, 30, 30));
	return p;
}

/* Under the post's foot, out of its end. */
static void drill_mates(struct arena *a, const struct pieces *one, const struct pieces *other)
{
	struct assembly all = assembly_make(a, (struct part *[]){ one->first, other->first }, 2);
	mates_drill(a, &all);
}

static struct bore foot_dowel(void)
{
	struct bore b = { .at = { .u = { 0, 1, 0 }, .v = { 0, 0, 1 }, .w = { -1, 0, 0 } } };
	b.at.origin = vec3(0, 15, 15);
	b.size = bore_oblong(BORE_SLOT, 14, 10, 30);
	b.mate = bore_round(10, 20);
	b.fixing = FIXING_DOWEL;
	return b;
}

static struct part *board_add(struct pieces *list)
{
	struct part *p = piece_add(list, "board", "ash", frame_at(-100, -50, 70));
	p->solids = solid_box(list->arena, vec3(0, 0, 0), vec3(1000, 200, 30));
	return p;
}

static void the_board_under_a_post_is_drilled_where_the_post_is(void **state)
{
	struct arena *a = arena_new();
	struct pieces high = { .arena = a, .kind = &posts }, low = { .arena = a, .kind = &boards };
	(void)state;
	struct part *post = post_at(&high, 200, 100), *board = board_add(&low);
	piece_bore(a, post, foot_dowel());
	drill_mates(a, &high, &low);
	const struct bore *mate = board->bores;
	assert_non_null(mate);
	assert_null(mate->next);
	/* the post's middle, 200 + 15 along and 15 across in the house, on the board's top */
	assert_near(mate->at.origin.x, 315, 1e-9);
	assert_near(mate->at.origin.y, 65, 1e-9);
	assert_near(mate->at.origin.z, 30, 1e-9);
	assert_near(mate->at.w.z, 1, 1e-12);
	assert_int_equal(mate->size.kind, BORE_HOLE);
	assert_near(mate->size.depth, 20, 1e-12);
	assert_true(mate->is_mate);
	arena_free(a);
}

/* A board of 30 on another: the hole for the post is 50 deep. */
static void a_hole_that_comes_through_a_board_goes_on_in_the_one_behind(void **state)
{
	struct arena *a = arena_new();
	struct pieces high = { .arena = a, .kind = &posts }, low = { .arena = a, .kind = &boards };
	(void)state;
	struct part *post = post_at(&high, 200, 100), *board = board_add(&low);
	struct part *under = piece_add(&low, "board", "ash", frame_at(-100, -50, 40));
	under->solids = solid_box(a, vec3(0, 0, 0), vec3(1000, 200, 30));
	struct bore b = foot_dowel();
	b.mate.depth = 50;
	piece_bore(a, post, b);
	drill_mates(a, &high, &low);
	assert_near(board->bores->size.depth, 30, 1e-6);
	assert_non_null(under->bores);
	assert_near(under->bores->size.depth, 20, 1e-6);
	assert_near(under->bores->at.origin.x, 315, 1e-6);
	assert_near(under->bores->at.origin.z, 30, 1e-6);
	assert_true(under->bores->is_mate && under->bores->goes_on);
	assert_false(board->bores->goes_on);
	arena_free(a);
}

static void existing_work_is_not_drilled(void **state)
{
	struct arena *a = arena_new();
	struct pieces high = { .arena = a, .kind = &posts }, low = { .arena = a, .kind = &boards };
	(void)state;
	struct part *post = post_at(&high, 200, 100), *board = board_add(&low);
	board->existing = EXISTING_LOWER_FLOOR;
	piece_bore(a, post, foot_dowel());
	drill_mates(a, &high, &low);
	assert_null(board->bores);
	arena_free(a);
}

static void pieces_drilled_otherwise_are_other_parts(void **state)
{
	struct arena *a = arena_new();
	struct pieces list = { .arena = a, .kind = &posts };
	(void)state;
	post_at(&list, 0, 0);
	piece_bore(a, post_at(&list, 200, 0), foot_dowel());
	piece_bore(a, post_at(&list, 400, 0), foot_dowel());
	struct part *p = pieces_merge(a, &posts, list.first);
	assert_int_equal(p->count, 1);
	assert_int_equal(p->next->count, 2);
	assert_null(p->next->next);
	arena_free(a);
}

static void units_of_equal_pieces_alike_set_are_one(void **state)
{
	struct arena *a = arena_new();
	struct pieces list = { .arena = a, .kind = &posts };
	(void)state;
	for (int i = 1; i <= 3; i++) {
		list.unit = i;
		post_at(&list, 1000 * i, 0);
		post_at(&list, 1000 * i + (i == 3 ? 250 : 200), 0); /* the third one is wider */
	}
	const struct unit *u = units_make(a, pieces_merge(a, &posts, list.first));
	assert_int_equal(u->count, 2);
	assert_int_equal(u->piece_count, 2);
	assert_string_equal(u->mark, "PU1");
	assert_near(u->pieces[1].at.origin.y, 200, 1e-9);
	assert_int_equal(u->next->count, 1);
	assert_near(u->next->pieces[1].at.origin.y, 250, 1e-9);
	assert_null(u->next->next);
	arena_free(a);
}

static void a_point_in_the_notch_of_a_solid_is_outside_it(void **state)
{
	struct arena *a = arena_new();
	struct path p = path_begin(a, 6);
	(void)state;
	path_to(&p, 0, 0);
	path_to(&p, 100, 0);
	path_to(&p, 100, 40);
	path_to(&p, 60, 40);
	path_to(&p, 60, 80);
	path_to(&p, 0, 80);
	const struct solid *s = solid_prism(a, profile_of(a, path_close(p)), 0, 20);
	assert_true(solids_contain(s, vec3(30, 60, 10)));
	assert_true(solids_contain(s, vec3(90, 20, 19)));
	assert_false(solids_contain(s, vec3(90, 60, 10)));
	assert_false(solids_contain(s, vec3(30, 60, 21)));
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_board_under_a_post_is_drilled_where_the_post_is),
		cmocka_unit_test(a_hole_that_comes_through_a_board_goes_on_in_the_one_behind),
		cmocka_unit_test(existing_work_is_not_drilled),
		cmocka_unit_test(pieces_drilled_otherwise_are_other_parts),
		cmocka_unit_test(units_of_equal_pieces_alike_set_are_one),
		cmocka_unit_test(a_point_in_the_notch_of_a_solid_is_outside_it),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
