/*
 * How treads are glued up: boards, units, loose tenons.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

/* Bodies 894 long between walls, 235 wide behind strips of 40. */
#define JOB(right)                                                                                 \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: 20}\n"                                           \
	"stair: {width: 900, left: wall, right: " right ", segments: [{risers: 10, run: 250}]}\n"  \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {bottom: no, top: no}\n"                                                          \
	"treads: {thickness: 30, nosing: 25, side_overhang: 32, strip_width: 40, return_past: "    \
	"40, scribe: 3, widest_board: 120, tenons: {thickness: 8, width: 20, length: 40, "         \
	"pitch: 200,first: 47}}\n"

static int tenon_count(const struct part *p)
{
	int n = 0;
	for (const struct bore *b = p->bores; b; b = b->next)
		n += b->fixing == FIXING_LOOSE_TENON;
	return n;
}

/* The n-th loose tenon's bore, counted from 0. */
static const struct bore *tenon(const struct part *p, int n)
{
	const struct bore *b = p->bores;
	while (b && (b->fixing != FIXING_LOOSE_TENON || n-- > 0))
		b = b->next;
	assert_non_null(b);
	return b;
}

static void the_outer_two_are_as_far_from_the_ends_as_asked(void **state)
{
	struct built b = built_from(JOB("wall"));
	(void)state;
	const struct part *body = built_part(&b, "tread body", 0);
	/* 894 - 2 x 47 = 800: four spaces of 200 */
	assert_int_equal(tenon_count(body), 5);
	for (int i = 0; i < 5; i++)
		assert_near(tenon(body, i)->at.origin.x, 47 + 200 * i, 1e-9);
	arena_free(b.arena);
}

static void the_pitch_is_never_more_than_asked(void **state)
{
	struct built b =
		built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 1800}\n"
			   "stair: {width: 900, right: wall, segments: [{risers: 10, run: 250}]}\n"
			   "treads: {scribe: 3, tenons: {pitch: 190, first: 47}}\n");
	(void)state;
	const struct part *body = built_part(&b, "tread body", 0);
	assert_int_equal(tenon_count(body), 6);
	assert_near(tenon(body, 1)->at.origin.x, 47 + 160, 1e-9); /* 800 in five */
	arena_free(b.arena);
}

static void both_pieces_are_mortised_in_the_middle_of_their_thickness(void **state)
{
	struct built b = built_from(JOB("wall"));
	(void)state;
	const struct bore *in_body = tenon(built_part(&b, "tread body", 0), 0);
	const struct bore *in_strip = tenon(built_part(&b, "tread front strip", 0), 0);
	assert_near(in_body->at.origin.z, 15, 1e-9);
	assert_near(in_strip->at.origin.z, 15, 1e-9);
	assert_near(in_body->at.origin.y, 0, 1e-9);
	assert_near(in_strip->at.origin.y, 40, 1e-9);
	assert_true(in_strip->is_mate);
	assert_false(in_body->is_mate);
	/* half of 40 and 1 for the glue */
	assert_near(in_body->size.depth, 21, 1e-9);
	assert_near(in_strip->size.depth, 21, 1e-9);
	arena_free(b.arena);
}

static void a_narrow_strip_takes_less_of_it_and_the_body_more(void **state)
{
	struct built b =
		built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 1800}\n"
			   "stair: {width: 900, right: wall, segments: [{risers: 10, run: 250}]}\n"
			   "treads: {side_overhang: 24, strip_width: 24, tenons: {length: 40}}\n");
	(void)state;
	const struct bore *in_body = tenon(built_part(&b, "tread body", 0), 0);
	const struct bore *in_strip = tenon(built_part(&b, "tread front strip", 0), 0);
	assert_near(in_strip->size.depth, 24 - 8, 1e-9); /* 8 left to the edge */
	assert_near(in_body->size.depth + in_strip->size.depth, 40 + 2, 1e-9);
	arena_free(b.arena);
}

static void only_the_first_tenon_of_a_return_is_glued(void **state)
{
	struct built b = built_from(JOB("open"));
	(void)state;
	const struct part *body = built_part(&b, "tread body", 0);
	const struct part *piece = built_part(&b, "tread return", 0);
	assert_int_equal(tenon_count(piece), 2);
	const struct bore *first = tenon(body, tenon_count(body) - 2);
	const struct bore *second = tenon(body, tenon_count(body) - 1);
	assert_near(first->size.length, 20, 1e-9);
	assert_int_equal(second->size.kind, BORE_SLOT);
	assert_near(second->size.length, 23, 1e-9); /* the body moves */
	arena_free(b.arena);
}

/* The newel behind the wall's end, at step 3, takes the place of the first one. */
static void a_return_cut_out_at_its_front_is_glued_behind_that(void **state)
{
	struct built b =
		built_from("pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 8' 11\"}\n"
			   "stair: {width: 36\", left: wall, right: {side: open, from_step: 3, "
			   "wall_past: 2\"}}\ntreads: {tenons: {first: 1\", pitch: 4\"}}\n");
	int returns = 0;
	(void)state;
	for (int i = 0; built_part(&b, "tread return", i); i++, returns++) {
		const struct part *p = built_part(&b, "tread return", i);
		int glued = 0;
		for (const struct bore *h = p->bores; h; h = h->next)
			glued += h->text && strstr(h->text, "the only one") != NULL;
		assert_int_equal(glued, 1);
	}
	assert_true(returns > 1);
	arena_free(b.arena);
}

static void a_tread_and_its_strips_are_one_unit_by_the_number_of_its_step(void **state)
{
	struct built b = built_from(JOB("open"));
	(void)state;
	int pieces = 0;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->kind == &part_tread && i < p->count; i++)
			pieces += p->units[i] == 3;
	assert_int_equal(pieces, 4); /* body, front strip, return and its end */
	arena_free(b.arena);
}

static void a_body_is_glued_up_from_the_fewest_boards_all_alike(void **state)
{
	struct built b = built_from(JOB("wall"));
	(void)state;
	const struct part *body = built_part(&b, "tread body", 0);
	assert_int_equal(body->makeup.boards, 2); /* 235 of at most 120 */
	assert_near(body->makeup.board_width, 117.5, 1e-9);
	arena_free(b.arena);
}

static void without_tenons_nothing_is_mortised(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: wall, segments: [{risers: 10, run: "
				    "250}]}\ntreads: {tenons: no}\n");
	(void)state;
	assert_int_equal(tenon_count(built_part(&b, "tread body", 0)), 0);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_outer_two_are_as_far_from_the_ends_as_asked),
		cmocka_unit_test(the_pitch_is_never_more_than_asked),
		cmocka_unit_test(both_pieces_are_mortised_in_the_middle_of_their_thickness),
		cmocka_unit_test(a_narrow_strip_takes_less_of_it_and_the_body_more),
		cmocka_unit_test(only_the_first_tenon_of_a_return_is_glued),
		cmocka_unit_test(a_return_cut_out_at_its_front_is_glued_behind_that),
		cmocka_unit_test(a_tread_and_its_strips_are_one_unit_by_the_number_of_its_step),
		cmocka_unit_test(a_body_is_glued_up_from_the_fewest_boards_all_alike),
		cmocka_unit_test(without_tenons_nothing_is_mortised),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
