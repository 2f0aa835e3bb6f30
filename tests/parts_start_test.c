/*
 * The starting step: its rounded tread, the block under it, the newel on it.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built_refused.h"
#include "near.h"
#include "parts/solid.h"

/* A tread is 275 deep, its return runs on by 25: a half round of 150. */
#define STAIR(floors, sides, stringers, start)                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: 20" floors "}\n"                                 \
	"stair: {width: 900, " sides ", segments: [{risers: 10, run: 250}]}\n"                     \
	"stringers: {open: " stringers "}\n"                                                       \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {section: 90}\n"                                                                  \
	"balusters: {section: 32}\n"                                                               \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32, return_past: "  \
	"25, scribe: 3, starting_step: " start "}\n"

#define JOB(sides, stringers, start) STAIR("", sides, stringers, start)

#define RIGHT "left: wall, right: open"

/* Over the structure lies a finish of 30, laid before the stair or after it. */
#define ON(floor) STAIR(", lower_finish: 30", RIGHT, "mitred, foot: " floor, "right")

static void without_more_its_end_is_a_half_round(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right"));
	(void)state;
	const struct part *tread = built_part(&b, "starting tread", 0);
	struct extent e = built_extent(tread, 0);
	assert_near(e.low.x, -25, 1e-9);
	assert_near(e.high.x, 250 + 25, 1e-9);
	assert_near(e.high.y, 897, 1e-9);
	/* its facets touch the true round where it reaches furthest */
	assert_near(e.low.y, -150, 1e-9);
	assert_near(tread->size.length, 897 + 150, 1e-9);
	assert_near(tread->size.width, 300, 1e-9);
	arena_free(b.arena);
}

static void it_reaches_out_as_far_as_the_job_says(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "{ends: right, projection: 200}"));
	(void)state;
	assert_near(built_extent(built_part(&b, "starting tread", 0), 0).low.y, -200, 1e-9);
	arena_free(b.arena);
}

/* The riser goes on round it 3 thick: from front to back, and out, but not at the stringer. */
static void the_core_of_the_block_is_less_by_the_bent_riser(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right"));
	const struct part *block = built_part(&b, "riser block", 0);
	struct box face = outline_extent(block->outline), core = outline_extent(block->core);
	(void)state;
	assert_near(core.x0 - face.x0, 0, 1e-9);
	assert_near(face.x1 - core.x1, 3, 1e-9);
	assert_near(core.y0 - face.y0, 3, 1e-9);
	assert_near(face.y1 - core.y1, 3, 1e-9);
	arena_free(b.arena);
}

static void its_outline_keeps_the_true_rounds(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "{ends: right, radius: 80}"));
	(void)state;
	const struct part *tread = built_part(&b, "starting tread", 0);
	int rounds = 0;
	for (int i = 0; i < tread->outline.n; i++) {
		struct corner c = tread->outline.corners[i];
		if (c.bulge == 0)
			continue;
		struct vec next = tread->outline.corners[(i + 1) % tread->outline.n].at;
		assert_near(corner_arc(c, next).radius, 80, 1e-9);
		rounds++;
	}
	assert_int_equal(rounds, 2);
	arena_free(b.arena);
}

static void the_block_stands_back_by_the_nosing_all_round(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right"));
	(void)state;
	struct extent e = built_extent(built_part(&b, "riser block", 0), 0);
	assert_near(e.low.x, 0, 1e-9); /* in line with the first riser */
	assert_near(e.high.x, 275 - 25, 1e-9);
	assert_near(e.low.y, -150 + 25, 1e-9);
	assert_near(e.high.y, 0, 1e-9); /* against the stringer's outer face */
	assert_near(e.low.z, 0, 1e-9);
	assert_near(e.high.z, 180 - 30, 1e-9);
	arena_free(b.arena);
}

static void it_stands_on_the_structure_as_the_stringers_do(void **state)
{
	struct built b = built_from(ON("structural_floor"));
	(void)state;
	struct extent block = built_extent(built_part(&b, "riser block", 0), 0);
	struct extent riser = built_extent(built_part(&b, "riser", 0), 0);
	assert_near(block.low.z, -30, 1e-9);
	assert_near(riser.low.z, -30, 1e-9);
	assert_near(block.high.z, 180 - 30, 1e-9);
	assert_near(riser.high.z, 180 - 30, 1e-9);
	arena_free(b.arena);
}

static void it_stands_on_a_finish_that_is_laid_first(void **state)
{
	struct built b = built_from(ON("finished_floor"));
	(void)state;
	assert_near(built_extent(built_part(&b, "riser block", 0), 0).low.z, 0, 1e-9);
	assert_near(built_extent(built_part(&b, "riser", 0), 0).low.z, 0, 1e-9);
	arena_free(b.arena);
}

static double bolt_length(const struct built *b)
{
	const struct part *newel = built_part(b, "newel", 0);
	for (const struct bore *h = newel->bores; h; h = h->next)
		if (strstr(h->text, "riser block"))
			return h->fixing_length;
	return 0;
}

static void the_bolt_of_its_newel_goes_down_to_the_structure(void **state)
{
	struct built b = built_from(ON("structural_floor"));
	struct built bare = built_from(JOB(RIGHT, "mitred", "right"));
	(void)state;
	assert_near(bolt_length(&b) - bolt_length(&bare), 30, 1e-9);
	arena_free(b.arena);
	arena_free(bare.arena);
}

static bool is_laid_at(const struct part *finish, double x, double y)
{
	return solids_contain(finish->solids, vec3(x, y, -10));
}

/* The block is a half round: its back is at 250, its end 125 out, half-way. */
static void the_finish_goes_round_it_and_on_behind_it(void **state)
{
	struct built b = built_from(ON("structural_floor"));
	const struct part *finish = built_part(&b, "lower floor finish", 0);
	(void)state;
	assert_true(is_laid_at(finish, -1, -1)); /* in front of it */
	assert_false(is_laid_at(finish, 1, -1));
	assert_false(is_laid_at(finish, 125, -124));
	assert_true(is_laid_at(finish, 125, -126));
	assert_true(is_laid_at(finish, 2, -123)); /* beside its round */
	assert_false(is_laid_at(finish, 249, -1));
	assert_true(is_laid_at(finish, 251, -1)); /* behind it, beside the stair */
	assert_false(is_laid_at(finish, 251, 1));
	assert_near(built_extent(finish, 0).high.x, b.stair->flights[0].header_x + 600, 1e-9);
	arena_free(b.arena);
}

/* Half a circle of radius 125: PI x 125 = 392.7. */
static void the_bent_face_is_as_long_as_the_curve(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right"));
	(void)state;
	assert_non_null(strstr(built_part(&b, "riser block", 0)->note, "393 mm from"));
	arena_free(b.arena);
}

static void the_first_riser_goes_past_the_stringer_square(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right"));
	(void)state;
	const struct part *riser = built_part(&b, "riser", 0);
	assert_near(built_extent(riser, 0).low.y, 0, 1e-9);
	assert_near(riser->end.bevel, 0, 1e-12);
	assert_near(built_part(&b, "riser", 1)->end.bevel, PI / 4, 1e-12);
	arena_free(b.arena);
}

static void the_newel_stands_on_it_over_the_middle_of_its_end(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right"));
	(void)state;
	struct extent e = built_extent(built_part(&b, "newel", 0), 0);
	assert_near(e.low.z, 180, 1e-9);
	assert_near((e.low.x + e.high.x) / 2, 125, 1e-9);
	arena_free(b.arena);
}

static void both_ends_may_be_rounded(void **state)
{
	struct built b = built_from(JOB("left: open, right: open", "sawtooth", "both"));
	(void)state;
	struct extent e = built_extent(built_part(&b, "starting tread", 0), 0);
	assert_near(e.low.y, -150, 1e-9);
	assert_near(e.high.y, 1050, 1e-9);
	assert_int_equal(built_count(&b, "riser block"), 2);
	arena_free(b.arena);
}

static void one_that_cannot_be_is_refused(void **state)
{
	(void)state;
	refused(JOB(RIGHT, "housed", "right"),
		"treads.starting_step: a housed stringer stands in the way of the rounded end");
	refused(JOB(RIGHT, "mitred", "both"),
		"treads.starting_step: the left side is not open at step 1");
	refused(JOB("left: open, right: open", "mitred", "right"),
		"treads.starting_step: its other end is open too");
	refused(JOB(RIGHT, "mitred", "{ends: right, radius: 160}"),
		"treads.starting_step: radius: 160 mm is more than half the depth, 150 mm");
	refused(JOB(RIGHT, "mitred", "{ends: right, projection: 100}"),
		"treads.starting_step: projection: 100 mm is less than the radius of its end, 150 "
		"mm");
}

#define COVE "mouldings: {under_nosing: cove, under_width: 12, under_height: 16}\n"

/* The block is a half round of 125: from face to face pi x 125 = 392.7, and 12 further out
 * pi x 137 = 430.4. */
static void a_bent_moulding_goes_round_under_it(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right") COVE);
	const struct part *ring = built_part(&b, "cove under the nosing, bent", 0);
	struct extent e = built_extent(ring, 0);
	(void)state;
	assert_non_null(strstr(ring->note, "393 mm long on the block, 430 mm on its outer edge"));
	assert_near(e.low.y, -137, 1e-9);
	assert_near(e.high.y, 0, 1e-9); /* from the stringer's face ... */
	assert_near(e.low.x, -12, 1e-9);
	assert_near(e.high.x, 250 + 12, 1e-9);
	assert_near(e.high.z, 180 - 30, 1e-9); /* under the tread */
	assert_near(e.low.z, 180 - 30 - 16, 1e-9);
	arena_free(b.arena);
}

/* Out of a board that holds 45 degrees of it: 137 - 125 cos 22.5 = 21.5. */
static void its_segments_are_sawn_out_of_a_wider_board(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right") COVE);
	const struct part *ring = built_part(&b, "cove under the nosing, bent", 0);
	(void)state;
	assert_non_null(strstr(ring->note, "out of board 22 mm wide"));
	arena_free(b.arena);
}

/* With a nosing of 25 a radius of 20 leaves the block sharp corners: 75 + 250 + 75 = 400 round it,
 * and 12 further out 87 + 274 + 87 = 448, to a corner that its template and its solids share. */
static void round_a_sharp_block_it_is_mitred(void **state)
{
	struct built b =
		built_from(JOB(RIGHT, "mitred", "{ends: right, projection: 100, radius: 20}") COVE);
	const struct part *ring = built_part(&b, "cove under the nosing, bent", 0);
	struct box o = outline_extent(ring->outline);
	(void)state;
	assert_non_null(strstr(ring->note, "400 mm long on the block, 448 mm on its outer edge"));
	assert_non_null(strstr(ring->note, "mitred"));
	assert_near(box_width(o), 87, 1e-9);
	assert_near(box_height(o), 274, 1e-9);
	assert_int_equal(ring->outline.n, 8);
	for (int i = 0; i < ring->outline.n; i++)
		assert_near(ring->outline.corners[i].bulge, 0, 1e-12);
	arena_free(b.arena);
}

static void each_rounded_end_has_one_of_its_own_hand(void **state)
{
	struct built b = built_from(JOB("left: open, right: open", "mitred", "{ends: both}") COVE);
	(void)state;
	assert_int_equal(built_count(&b, "cove under the nosing, bent"), 2);
	arena_free(b.arena);
}

/* 15 deep kerfs of 3 turn the board by 3 / 15 each: 125 x 3 / 15 = 25 apart. */
static void the_riser_is_kerfed_so_that_the_kerfs_close_on_the_curve(void **state)
{
	struct built b = built_from(JOB(RIGHT, "mitred", "right") "stock: {kerf: 3}\n");
	(void)state;
	assert_non_null(strstr(built_part(&b, "riser block", 0)->note,
		"kerfs 15 mm deep, 3 mm wide, 25 mm apart round the curve"));
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_bent_moulding_goes_round_under_it),
		cmocka_unit_test(round_a_sharp_block_it_is_mitred),
		cmocka_unit_test(its_segments_are_sawn_out_of_a_wider_board),
		cmocka_unit_test(each_rounded_end_has_one_of_its_own_hand),
		cmocka_unit_test(the_riser_is_kerfed_so_that_the_kerfs_close_on_the_curve),
		cmocka_unit_test(without_more_its_end_is_a_half_round),
		cmocka_unit_test(it_reaches_out_as_far_as_the_job_says),
		cmocka_unit_test(the_core_of_the_block_is_less_by_the_bent_riser),
		cmocka_unit_test(its_outline_keeps_the_true_rounds),
		cmocka_unit_test(the_block_stands_back_by_the_nosing_all_round),
		cmocka_unit_test(it_stands_on_the_structure_as_the_stringers_do),
		cmocka_unit_test(it_stands_on_a_finish_that_is_laid_first),
		cmocka_unit_test(the_bolt_of_its_newel_goes_down_to_the_structure),
		cmocka_unit_test(the_finish_goes_round_it_and_on_behind_it),
		cmocka_unit_test(the_bent_face_is_as_long_as_the_curve),
		cmocka_unit_test(the_first_riser_goes_past_the_stringer_square),
		cmocka_unit_test(the_newel_stands_on_it_over_the_middle_of_its_end),
		cmocka_unit_test(both_ends_may_be_rounded),
		cmocka_unit_test(one_that_cannot_be_is_refused),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
