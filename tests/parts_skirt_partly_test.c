/*
 * Skirt boards of sides that are open for some of their steps: on the walls before and behind, and
 * before the carriage between them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define PLAIN "skirts: {wall: plain, thickness: 18, height: 80, baseboard: 90}\n"
#define CUT "skirts: {wall: cut_round, thickness: 18, height: 80, baseboard: 90}\n"
#define ROUGH "stringers: {open: {kind: sawtooth, thickness: 40, width: 300}}\n"

#define PARTLY_OPEN                                                                                \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1500}\n"                                                             \
	"comfort: {least_rise: 100, least_run: 150, step_least: 400, sum_least: 300}\n"            \
	"treads: {thickness: 30, nosing: 20, nosing_radius: 10, scribe: 3, return_past: 15}\n"     \
	"risers: {thickness: 20}\n"                                                                \
	"stair:\n"                                                                                 \
	"  width: 900\n"                                                                           \
	"  left: open\n"                                                                           \
	"  right: {side: open, from_step: 4, to_step: 6, wall_past: 25}\n"                         \
	"  segments: [{risers: 10, run: 200}]\n"

/* The wall ends 25 behind riser 4, at 600, and begins again 15 behind riser 7, at 1200.  Between
 * them lie the level of tread 4 and that of tread 7. */
static void a_side_that_is_open_between_has_one_on_either_wall(void **state)
{
	struct built b = built_from(PARTLY_OPEN CUT);
	(void)state;
	const char *name = "wall skirt, cut round the steps";
	struct extent low = built_extent(built_part(&b, name, 0), 0);
	struct extent high = built_extent(built_part(&b, name, 1), 0);
	assert_int_equal(built_count(&b, name), 2);
	assert_near(low.high.x, 625, 1e-9);
	assert_near(low.low.z, 0, 1e-9);
	assert_near(high.low.x, 1215, 1e-9);
	assert_near(high.low.z, 7 * 150, 1e-9);
	assert_near(high.high.z, 1500 + 90, 1e-9);
	arena_free(b.arena);
}

/* The lower one's edge is 100 over a nosing line at 150 + (625 + 20) 3/4 there. */
static void it_ends_plumb_with_the_wall(void **state)
{
	struct built b = built_from(PARTLY_OPEN CUT);
	(void)state;
	struct extent low = built_extent(built_part(&b, "wall skirt, cut round the steps", 0), 0);
	assert_near(low.high.z, 150 + 645 * 0.75 + 100, 1e-9);
	arena_free(b.arena);
}

static void a_plain_one_finds_no_room_behind_a_finished_stringer(void **state)
{
	struct built b = built_from(PARTLY_OPEN PLAIN);
	(void)state;
	assert_non_null(b.parts);
	assert_int_equal(built_count(&b, "wall skirt"), 0);
	assert_string_equal(built_complaint(&b),
		"skirts.wall: none on the right, where the stringer of the open steps stands "
		"against the wall: a plain one would have to go behind it");
	arena_free(b.arena);
}

#define WALL_AND_OPEN(notches)                                                                     \
	"pitchboard: 1\njob: {name: Test, units: millimetres}\nfloors: {total_rise: 1800}\n"       \
	"stair: {width: 900, left: wall, right: {side: open, from_step: 4},\n"                     \
	"  segments: [{risers: 10, run: 250}]}\nstringers: {open: mitred, wall_gap: 60}\n"         \
	"treads: {notches: " notches "}\n" PLAIN

/* Cut round the steps it would be in the way of the wall in step 6. */
static void what_a_hint_says_of_skirts_is_not_refused_for_a_wall_in_a_tread(void **state)
{
	struct built free = built_from(WALL_AND_OPEN("[]"));
	struct built walled =
		built_from(WALL_AND_OPEN("[{step: 6, at: left, along: 40, across: 100}]"));
	(void)state;
	assert_non_null(strstr(free.diags.first->hint, "write cut_round"));
	assert_null(strstr(walled.diags.first->hint, "cut_round"));
	arena_free(free.arena);
	arena_free(walled.arena);
}

/* Rise 150, run 200, the wall to 25 behind riser 4 at 600, and again from 15 behind riser 7 at
 * 1200: too near for a mitre through 18, so that riser 7 butts against the board too. */
#define BOTH "skirts: {wall: plain, open: mitred, thickness: 18, height: 80, baseboard: 90}\n"

static void a_plain_one_stands_on_the_walls_before_and_behind_open_steps(void **state)
{
	struct built b = built_from(PARTLY_OPEN ROUGH BOTH);
	(void)state;
	struct extent low = built_extent(built_part(&b, "wall skirt", 0), 0);
	struct extent high = built_extent(built_part(&b, "wall skirt", 1), 0);
	assert_int_equal(built_count(&b, "wall skirt"), 2);
	assert_near(low.low.y, 0, 1e-9);
	assert_near(low.high.y, 18, 1e-9);
	assert_near(low.high.x, 625, 1e-9);
	assert_near(low.low.z, 0, 1e-9);
	assert_near(high.low.x, 1215, 1e-9);
	assert_near(high.high.z, 1500 + 90, 1e-9);
	arena_free(b.arena);
}

static void the_mitred_board_lies_between_the_two(void **state)
{
	struct built b = built_from(PARTLY_OPEN ROUGH BOTH);
	(void)state;
	struct extent board = built_extent(built_part(&b, "open skirt, right hand", 0), 0);
	assert_near(board.low.x, 625, 1e-9);
	assert_near(board.high.x, 1215, 1e-9);
	assert_near(board.low.y, 0, 1e-9);
	assert_near(board.high.y, 18, 1e-9);
	/* to the underside of tread 7 */
	assert_near(board.high.z, 7 * 150 - 30, 1e-9);
	arena_free(b.arena);
}

/* Long point in the face of the board, at the right-hand limit; what butts ends the scribe short of
 * its back. */
static void risers_of_open_steps_are_mitred_and_those_at_a_wall_butt(void **state)
{
	struct built b = built_from(PARTLY_OPEN ROUGH BOTH);
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->kind == &part_riser && i < p->count; i++) {
			struct extent e = built_extent(p, i);
			int riser = (int)round(e.low.x / 200) + 1;
			assert_near(e.low.y, riser == 5 || riser == 6 ? 0 : 21, 1e-9);
		}
	arena_free(b.arena);
}

static void a_mitre_is_made_where_the_wall_behind_leaves_room_for_it(void **state)
{
	struct built b =
		built_from("pitchboard: 1\n"
			   "job: {name: Test, units: millimetres}\n"
			   "floors: {total_rise: 1500}\n"
			   "comfort: {least_rise: 100, least_run: 150, step_least: 400, "
			   "sum_least: 300}\n"
			   "treads: {thickness: 30, return_past: 40}\n"
			   "risers: {thickness: 20}\n"
			   "stair: {width: 900, left: wall, right: {side: open, to_step: 6}, "
			   "segments: [{risers: 10, run: 200}]}\n" ROUGH BOTH);
	const struct part *board = built_part(&b, "open skirt, right hand", 0);
	int mitres = 0;
	(void)state;
	for (const struct feature *f = board->features; f; f = f->next)
		mitres += f->kind == FEATURE_MITRE;
	assert_int_equal(mitres, 6); /* of 7, less that behind the newel at the foot */
	assert_near(built_extent(board, 0).high.x, 1240, 1e-9);
	arena_free(b.arena);
}

static void the_carriage_stands_behind_it_all_along(void **state)
{
	struct built b = built_from(PARTLY_OPEN ROUGH PLAIN);
	(void)state;
	double low = INFINITY;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->stringer && i < p->count; i++)
			low = fmin(low, built_extent(p, i).low.y);
	assert_near(low, 18, 1e-9);
	assert_string_equal(built_complaint(&b),
		"skirts.wall: the carriage on the right stands in behind the skirt of its wall, "
		"and as far in beside the open steps");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_side_that_is_open_between_has_one_on_either_wall),
		cmocka_unit_test(it_ends_plumb_with_the_wall),
		cmocka_unit_test(a_plain_one_finds_no_room_behind_a_finished_stringer),
		cmocka_unit_test(what_a_hint_says_of_skirts_is_not_refused_for_a_wall_in_a_tread),
		cmocka_unit_test(a_plain_one_stands_on_the_walls_before_and_behind_open_steps),
		cmocka_unit_test(the_mitred_board_lies_between_the_two),
		cmocka_unit_test(risers_of_open_steps_are_mitred_and_those_at_a_wall_butt),
		cmocka_unit_test(a_mitre_is_made_where_the_wall_behind_leaves_room_for_it),
		cmocka_unit_test(the_carriage_stands_behind_it_all_along),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
