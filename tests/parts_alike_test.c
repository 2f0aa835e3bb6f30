/*
 * Equal pieces: one part with several places only where nothing about them differs.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "parts/alike.h"
#include "parts/piece.h"

struct pair {
	struct arena *arena;
	struct part *one, *other;
};

static struct part *board(struct arena *a)
{
	struct pieces list = { .arena = a, .kind = &part_tread };
	struct part *p = piece_add(&list, "board", "red oak", frame_at(0, 0, 0));

	p->size = (struct part_size){ 900, 250, 25 };
	piece_bore(a, p,
		(struct bore){ .at = frame_at(100, 100, 25),
			.size = bore_round(10, 20),
			.fixing = FIXING_DOWEL });
	piece_feature(a, p, (struct feature){ .kind = FEATURE_ROUND, .radius = 3 });
	return p;
}

static struct pair pair_of_boards(void)
{
	struct arena *a = arena_new();

	return (struct pair){ a, board(a), board(a) };
}

static void are_one(struct pair p)
{
	assert_true(parts_are_alike(p.one, p.other));
	p.one->next = p.other;
	assert_int_equal(pieces_merge(p.arena, &part_tread, p.one)->count, 2);
	arena_free(p.arena);
}

static void are_two(struct pair p)
{
	assert_false(parts_are_alike(p.one, p.other));
	p.one->next = p.other;
	assert_int_equal(pieces_merge(p.arena, &part_tread, p.one)->count, 1);
	arena_free(p.arena);
}

static void equal_boards_are_one_part_wherever_they_stand(void **state)
{
	struct pair p = pair_of_boards();
	const struct frame elsewhere = frame_at(500, 600, 700);

	(void)state;
	p.other->places = &elsewhere;
	are_one(p);
}

static void a_hair_is_no_difference(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->size.width += 1e-9;
	are_one(p);
}

static void boards_of_two_woods_are_two_parts(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->material = "poplar";
	are_two(p);
}

static void solid_wood_and_sheet_are_two_parts(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->stuff = STUFF_SHEET;
	are_two(p);
}

static void grain_the_other_way_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->grain = GRAIN_NONE;
	are_two(p);
}

static void one_board_and_three_glued_up_are_two_parts(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->makeup.boards = 3;
	are_two(p);
}

static void another_section_is_another_part(void **state)
{
	static const struct corner corners[] = { { { 0, 0 }, 0 }, { { 40, 0 }, 0.2 },
		{ { 20, 30 }, 0 } };
	struct pair p = pair_of_boards();

	(void)state;
	p.other->section = (struct outline){ corners, 3 };
	are_two(p);
}

static void a_mitred_end_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->end.mitre = PI / 4;
	are_two(p);
}

static void a_larger_round_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->features->radius = 6;
	are_two(p);
}

static void a_longer_dowel_in_the_same_hole_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->bores->fixing_length = 50;
	are_two(p);
}

static void holes_are_the_same_in_whatever_order_they_were_drilled(void **state)
{
	struct pair p = pair_of_boards();
	const struct bore near_end = { .at = frame_at(20, 100, 25), .size = bore_round(8, 12) };
	const struct bore far_end = { .at = frame_at(880, 100, 25), .size = bore_round(8, 12) };

	(void)state;
	piece_bore(p.arena, p.one, near_end);
	piece_bore(p.arena, p.one, far_end);
	piece_bore(p.arena, p.other, far_end);
	piece_bore(p.arena, p.other, near_end);
	are_one(p);
}

static void a_hole_elsewhere_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->bores->at.origin.x += 1;
	are_two(p);
}

static void a_hole_less_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->bores = NULL;
	are_two(p);
}

static void a_hole_for_another_thing_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->bores->text = "dowel, newel to tread";
	are_two(p);
}

/* It takes a longer dowel. */
static void a_deeper_hole_on_the_other_side_of_the_joint_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->bores->mate = bore_round(10, 30);
	are_two(p);
}

static void what_a_maker_must_know_of_one_only_is_another_part(void **state)
{
	struct pair p = pair_of_boards();

	(void)state;
	p.other->note = "the end at the wall scribed to it";
	are_two(p);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(equal_boards_are_one_part_wherever_they_stand),
		cmocka_unit_test(a_hair_is_no_difference),
		cmocka_unit_test(boards_of_two_woods_are_two_parts),
		cmocka_unit_test(solid_wood_and_sheet_are_two_parts),
		cmocka_unit_test(grain_the_other_way_is_another_part),
		cmocka_unit_test(one_board_and_three_glued_up_are_two_parts),
		cmocka_unit_test(another_section_is_another_part),
		cmocka_unit_test(a_mitred_end_is_another_part),
		cmocka_unit_test(a_larger_round_is_another_part),
		cmocka_unit_test(holes_are_the_same_in_whatever_order_they_were_drilled),
		cmocka_unit_test(a_hole_elsewhere_is_another_part),
		cmocka_unit_test(a_hole_less_is_another_part),
		cmocka_unit_test(a_hole_for_another_thing_is_another_part),
		cmocka_unit_test(a_longer_dowel_in_the_same_hole_is_another_part),
		cmocka_unit_test(a_deeper_hole_on_the_other_side_of_the_joint_is_another_part),
		cmocka_unit_test(what_a_maker_must_know_of_one_only_is_another_part),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
