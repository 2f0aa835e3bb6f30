/*
 * Skirt boards on walls, and before the carriages of open sides.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

/* Rise 150, run 200: nosing line and skirt lie on a 3-4-5 triangle. */
#define STAIR STAIR_WITH("")
#define STAIR_WITH(notches)                                                                        \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1500}\n"                                                             \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 200}]}\n"       \
	"comfort: {least_rise: 100, least_run: 150, step_least: 400, sum_least: 300}\n"            \
	"treads: {thickness: 30, nosing: 20, nosing_radius: 10, scribe: 3" notches "}\n"           \
	"risers: {thickness: 20}\n"

#define SAWN "stringers: {wall: sawtooth, wall_gap: 40}\n"
#define PLAIN "skirts: {wall: plain, thickness: 18, height: 80, baseboard: 90}\n"
#define CUT "skirts: {wall: cut_round, thickness: 18, height: 80, baseboard: 90}\n"

static void there_is_none_unless_asked_for(void **state)
{
	struct built b = built_from(STAIR SAWN);
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		assert_true(p->kind != &part_skirt);
	arena_free(b.arena);
}

static void a_plain_skirt_stands_behind_treads_and_risers(void **state)
{
	struct built b = built_from(STAIR SAWN PLAIN);
	(void)state;
	struct extent skirt = built_extent(built_part(&b, "wall skirt", 0), 0);
	assert_near(skirt.high.y - skirt.low.y, 18, 1e-9);
	/* they end the scribe short of its face at either wall */
	assert_near(built_part(&b, "tread body", 0)->size.length, 900 - 2 * 21, 1e-9);
	assert_near(built_part(&b, "riser", 0)->size.length, 900 - 2 * 21, 1e-9);
	assert_near(built_part(&b, "landing nosing", 0)->size.length, 900 - 2 * 21, 1e-9);
	arena_free(b.arena);
}

static void treads_run_behind_a_skirt_cut_round_them(void **state)
{
	struct built b = built_from(STAIR SAWN CUT);
	(void)state;
	assert_near(built_part(&b, "tread body", 0)->size.length, 900 - 2 * 3, 1e-9);
	assert_near(built_part(&b, "riser", 0)->size.length, 900 - 2 * 3, 1e-9);
	arena_free(b.arena);
}

/* By hand: over x the nosing line is at 150 + (x + 20) 3/4, the skirt's edge 80 / (4/5) = 100 over
 * it: 90, the height of the baseboard, at x = (90 - 265) / (3/4) = -233.3. */
static void it_begins_where_it_has_come_down_to_the_baseboard(void **state)
{
	struct built b = built_from(STAIR SAWN PLAIN);
	(void)state;
	struct extent skirt = built_extent(built_part(&b, "wall skirt", 0), 0);
	assert_near(skirt.low.x, -(265 - 90) / 0.75, 1e-9);
	assert_near(skirt.low.z, 0, 1e-9);
	arena_free(b.arena);
}

/* At the upper floor, 1500 + 90, its edge arrives at x = (1590 - 265) / (3/4) = 1766.7, in front
 * of the header at 9 x 200 + 20: from there it runs level. */
static void it_ends_plumb_over_the_header_as_high_as_the_baseboard(void **state)
{
	struct built b = built_from(STAIR SAWN PLAIN);
	(void)state;
	struct extent skirt = built_extent(built_part(&b, "wall skirt", 0), 0);
	assert_near(skirt.high.z, 1590, 1e-9);
	assert_near(skirt.high.x, 1820, 1e-9);
	arena_free(b.arena);
}

/* To a baseboard of 200 its edge comes at x = (1700 - 265) / (3/4) = 1913.3, over the floor behind
 * the header at 1820.  A newel there that stands in 15 past the wall's face has it end before. */
static void it_ends_at_the_newel_of_a_level_run_that_stands_in_its_way(void **state)
{
	struct built b = built_from(STAIR SAWN
		"skirts: {wall: plain, thickness: 18, height: 80, baseboard: 200}\n"
		"newels: {section: 90}\n"
		"rail: {level_runs: [{side: left, direction: out, length: 900, from_edge: 30}]}\n");
	double left = 0, right = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; strcmp(p->name, "wall skirt") == 0 && i < p->count; i++) {
			struct extent e = built_extent(p, i);
			*(e.low.y > 450 ? &left : &right) = e.high.x;
		}
	assert_near(left, 1820, 1e-9);
	assert_near(right, (1700 - 265) / 0.75, 1e-9);
	arena_free(b.arena);
}

/* Upper edge to the corners of tread and riser: 265 x 4/5 = 212, and 25 of cover. */
static void a_plain_skirt_covers_the_corners_of_the_steps(void **state)
{
	struct built b = built_from(STAIR SAWN PLAIN);
	(void)state;
	assert_near(built_part(&b, "wall skirt", 0)->size.width, 237, 1e-9);
	arena_free(b.arena);
}

static void a_cut_one_has_a_corner_in_every_step(void **state)
{
	struct built b = built_from(STAIR SAWN CUT);
	(void)state;
	const struct part *p = built_part(&b, "wall skirt, cut round the steps", 0);
	int low = 0, rounds = 0;
	assert_near(p->size.width, 212, 1e-9);
	for (int i = 0; i < p->outline.n; i++) {
		low += fabs(p->outline.corners[i].at.y) < 1e-9;
		rounds += p->outline.corners[i].bulge < 0;
	}
	assert_int_equal(low, 10);    /* where tread, or floor, and riser meet */
	assert_int_equal(rounds, 20); /* two arrises of nine treads and the nosing piece */
	arena_free(b.arena);
}

static void one_serves_each_wall(void **state)
{
	struct built b = built_from(STAIR SAWN CUT);
	(void)state;
	assert_int_equal(built_count(&b, "wall skirt, cut round the steps"), 2);
	arena_free(b.arena);
}

static void coves_end_at_its_face(void **state)
{
	struct built b =
		built_from(STAIR SAWN CUT "mouldings: {under_nosing: cove, under_width: 8}\n");
	(void)state;
	assert_near(built_part(&b, "cove under the nosing", 0)->size.length, 900 - 36, 1e-9);
	arena_free(b.arena);
}

static void a_housed_stringer_is_its_own_skirt(void **state)
{
	struct built b = built_from(STAIR "stringers: {wall: housed}\n" PLAIN);
	(void)state;
	assert_non_null(b.parts);
	assert_int_equal(built_count(&b, "wall skirt"), 0);
	arena_free(b.arena);
}

static void a_skirt_asked_for_before_a_housed_stringer_is_told_of(void **state)
{
	struct built b = built_from(STAIR "stringers: {wall: housed}\nskirts: {wall: plain}\n");
	(void)state;
	assert_non_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"skirts.wall: none on the right, where the housed stringer is its own skirt");
	for (const struct assumption *s = b.stair->job->assumptions; s; s = s->next)
		assert_string_not_equal(s->label, "skirt thickness");
	arena_free(b.arena);
}

static void a_plain_one_needs_room_behind_the_stringer(void **state)
{
	struct built b = built_from(STAIR "stringers: {wall: sawtooth, wall_gap: 10}\n" PLAIN);
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"skirts.wall: behind the stringer there is 10 mm for a skirt 18 mm thick");
	arena_free(b.arena);
}

/* 25 of finish on the structural floor, which everything stands on unless the job says else. */
#define FLOOR_OF(stairs, foot)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1500, lower_finish: 25}\n"                                           \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 200}]}\n"       \
	"comfort: {least_rise: 100, least_run: 150, step_least: 400, sum_least: 300}\n"            \
	"treads: {thickness: 30, nosing: 20, nosing_radius: 10, scribe: 3}\n"                      \
	"risers: {thickness: 20}\n"                                                                \
	"stringers: {wall: sawtooth, wall_gap: 40, foot: " foot "}\n" stairs

static void it_stands_on_the_structure_as_the_first_riser_does(void **state)
{
	struct built plain = built_from(FLOOR_OF(PLAIN, "structural_floor"));
	struct built cut = built_from(FLOOR_OF(CUT, "structural_floor"));
	(void)state;
	const struct part *p = built_part(&plain, "wall skirt", 0);
	const struct part *c = built_part(&cut, "wall skirt, cut round the steps", 0);
	assert_near(built_extent(p, 0).low.z, -25, 1e-9);
	assert_near(built_extent(c, 0).low.z, -25, 1e-9);
	assert_near(built_extent(p, 0).high.z, 1590, 1e-9); /* its edges are where they were */
	assert_near(p->size.width, 237, 1e-9);
	assert_near(c->size.width, 212 + 25 * 0.8, 1e-9); /* the first riser's corner is lower */
	assert_string_equal(p->note,
		"face up as drawn on the left wall, down on the right; its foot stands on the "
		"structural floor, and the finish, 25 mm, is laid up to it");
	arena_free(plain.arena);
	arena_free(cut.arena);
}

static void it_stands_on_a_finish_that_the_stair_stands_on(void **state)
{
	struct built b = built_from(FLOOR_OF(PLAIN, "finished_floor"));
	(void)state;
	const struct part *p = built_part(&b, "wall skirt", 0);
	assert_near(built_extent(p, 0).low.z, 0, 1e-9);
	assert_string_equal(p->note,
		"face up as drawn on the left wall, down on the right; its foot stands on the "
		"finished floor");
	arena_free(b.arena);
}

/* It begins 233.3 in front of the first riser, 18 thick on either wall. */
static void a_finish_that_is_laid_later_goes_round_it(void **state)
{
	struct built b = built_from(FLOOR_OF(PLAIN, "structural_floor"));
	const struct part *finish = built_part(&b, "lower floor finish", 0);
	int at_front = 0, at_riser = 0;
	(void)state;
	for (const struct solid *s = finish->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			struct vec3 at = frame_place(finish->places[0], s->a[i]);
			bool by_skirt = fabs(at.y - 18) < 1e-9 || fabs(at.y - 882) < 1e-9;
			at_front += by_skirt && fabs(at.x + 175 / 0.75) < 1e-9;
			at_riser += by_skirt && fabs(at.x) < 1e-9;
		}
	assert_int_equal(at_front, 2);
	assert_int_equal(at_riser, 2);
	arena_free(b.arena);
}

#define OPEN_STAIR                                                                                 \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1500}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 200}]}\n"       \
	"comfort: {least_rise: 100, least_run: 150, step_least: 400, sum_least: 300}\n"            \
	"treads: {thickness: 30, nosing: 20, nosing_radius: 10, scribe: 3}\n"                      \
	"newels: {bottom: no, top: no}\n"                                                          \
	"risers: {thickness: 20}\n"

#define ROUGH "stringers: {open: {kind: sawtooth, thickness: 40, width: 300}}\n"
#define BOARD "skirts: {open: mitred, thickness: 18, cover: 8}\n"

static void the_carriage_of_an_open_side_stands_behind_its_skirt(void **state)
{
	struct built b = built_from(OPEN_STAIR ROUGH BOARD);
	(void)state;
	struct extent skirt = built_extent(built_part(&b, "open skirt, right hand", 0), 0);
	struct extent carriage = { { 0, 0, 0 }, { 0, 0, 0 } };
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->stringer && i < p->count; i++)
			if (built_extent(p, i).low.y < 100)
				carriage = built_extent(p, i);
	assert_near(skirt.low.y, 0, 1e-9);
	assert_near(skirt.high.y, 18, 1e-9);
	assert_near(carriage.low.y, 18, 1e-9);
	assert_near(carriage.high.y, 58, 1e-9);
	arena_free(b.arena);
}

/* Long points in the risers' faces, on the outer face; on the inner one 18 further back, 45
 * degrees over the board's thickness. */
static void its_riser_cuts_run_back_by_its_thickness(void **state)
{
	struct built b = built_from(OPEN_STAIR ROUGH BOARD);
	(void)state;
	const struct part *p = built_part(&b, "open skirt, right hand", 0);
	double outer = INFINITY, inner = INFINITY;
	for (int i = 0; i < p->solids->n; i++) {
		struct vec3 at = frame_place(p->places[0], p->solids->a[i]);
		struct vec3 other = frame_place(p->places[0], p->solids->b[i]);
		*(at.y < 9 ? &outer : &inner) = fmin(*(at.y < 9 ? &outer : &inner), at.x);
		*(other.y < 9 ? &outer : &inner) = fmin(*(other.y < 9 ? &outer : &inner), other.x);
	}
	assert_near(outer, 0, 1e-9);
	assert_near(inner, 18, 1e-9);
	arena_free(b.arena);
}

/* Plank 300 wide, its corners at the backs of the riser boards; the skirt's are 20 further in
 * front, which on a slope of 3/4 is 20 x 3/5 = 12 further out, and it covers 8 below. */
static void it_covers_the_carriage_and_what_is_nailed_under_it(void **state)
{
	struct built b = built_from(OPEN_STAIR ROUGH BOARD);
	(void)state;
	const struct part *p = built_part(&b, "open skirt, right hand", 0);
	assert_near(p->size.width, 300 + 12 + 8, 1e-9);
	assert_near(p->size.thickness, 18, 1e-9);
	arena_free(b.arena);
}

static void risers_are_mitred_to_it_with_their_long_point_in_its_face(void **state)
{
	struct built b = built_from(OPEN_STAIR ROUGH BOARD);
	(void)state;
	const struct part *riser = built_part(&b, "riser", 0);
	assert_near(built_extent(riser, 0).low.y, 0, 1e-9);
	assert_near(riser->end.bevel, atan(1), 1e-9);
	arena_free(b.arena);
}

static void each_open_side_has_one_of_its_own_hand(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, left: open, right: open}\n" ROUGH BOARD);
	(void)state;
	assert_int_equal(built_count(&b, "open skirt, right hand"), 1);
	assert_int_equal(built_count(&b, "open skirt, left hand"), 1);
	arena_free(b.arena);
}

static void a_finished_stringer_takes_no_board_before_it(void **state)
{
	struct built b = built_from(OPEN_STAIR "stringers: {open: mitred}\n" BOARD);
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"skirts.open: a skirt is set in front of a rough carriage, and a mitred stringer "
		"is finished itself");
	arena_free(b.arena);
}

static void open_risers_have_no_mitre_for_it(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "risers: open\n"
				    "stair: {width: 900, left: wall, right: open}\n" ROUGH BOARD);
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"skirts.open: open risers leave nothing to mitre it to");
	arena_free(b.arena);
}

/* By hand: the face of riser 4 is at 600, the wall 100 in front of it, and the scribe; up through
 * the nosing of tread 4 it is scribed to behind as well. */
static void a_plain_one_stops_at_a_wall_in_a_tread_and_goes_on_behind_it(void **state)
{
	struct built b = built_from(
		STAIR_WITH(", notches: [{step: 3, at: right, along: 60, across: 100}]") SAWN PLAIN);
	(void)state;
	struct extent before = { 0 }, behind = { 0 };
	for (const struct part *p = b.parts; p; p = p->next)
		if (p->kind == &part_skirt && built_extent(p, 0).low.y < 1) {
			before = before.high.x > 0 ? before : built_extent(p, 0);
			behind = built_extent(p, 0);
		}
	assert_near(before.high.x, 600 - 100 - 3, 1e-9);
	assert_near(behind.low.x, 600 + 3, 1e-9);
	assert_near(behind.high.x, 1820, 1e-9);
	arena_free(b.arena);
}

static void one_cut_round_does_not_go_with_a_wall_in_a_tread(void **state)
{
	struct built b = built_from(
		STAIR_WITH(", notches: [{step: 3, at: right, along: 40, across: 100}]") SAWN CUT);
	(void)state;
	assert_string_equal(built_complaint(&b),
		"skirts.wall: treads are notched for a wall that stands in its way");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(there_is_none_unless_asked_for),
		cmocka_unit_test(a_plain_skirt_stands_behind_treads_and_risers),
		cmocka_unit_test(treads_run_behind_a_skirt_cut_round_them),
		cmocka_unit_test(it_begins_where_it_has_come_down_to_the_baseboard),
		cmocka_unit_test(it_ends_plumb_over_the_header_as_high_as_the_baseboard),
		cmocka_unit_test(it_ends_at_the_newel_of_a_level_run_that_stands_in_its_way),
		cmocka_unit_test(a_plain_skirt_covers_the_corners_of_the_steps),
		cmocka_unit_test(a_cut_one_has_a_corner_in_every_step),
		cmocka_unit_test(one_serves_each_wall),
		cmocka_unit_test(coves_end_at_its_face),
		cmocka_unit_test(a_housed_stringer_is_its_own_skirt),
		cmocka_unit_test(a_skirt_asked_for_before_a_housed_stringer_is_told_of),
		cmocka_unit_test(a_plain_one_needs_room_behind_the_stringer),
		cmocka_unit_test(a_plain_one_stops_at_a_wall_in_a_tread_and_goes_on_behind_it),
		cmocka_unit_test(one_cut_round_does_not_go_with_a_wall_in_a_tread),
		cmocka_unit_test(it_stands_on_the_structure_as_the_first_riser_does),
		cmocka_unit_test(it_stands_on_a_finish_that_the_stair_stands_on),
		cmocka_unit_test(a_finish_that_is_laid_later_goes_round_it),
		cmocka_unit_test(the_carriage_of_an_open_side_stands_behind_its_skirt),
		cmocka_unit_test(its_riser_cuts_run_back_by_its_thickness),
		cmocka_unit_test(it_covers_the_carriage_and_what_is_nailed_under_it),
		cmocka_unit_test(risers_are_mitred_to_it_with_their_long_point_in_its_face),
		cmocka_unit_test(each_open_side_has_one_of_its_own_hand),
		cmocka_unit_test(a_finished_stringer_takes_no_board_before_it),
		cmocka_unit_test(open_risers_have_no_mitre_for_it),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
