/*
 * Skirt boards on walls.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

/* Rise 150, run 200: nosing line and skirt lie on a 3-4-5 triangle. */
#define STAIR                                                                                      \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1500}\n"                                                             \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 200}]}\n"       \
	"comfort: {least_rise: 100, least_run: 150, step_least: 400, sum_least: 300}\n"            \
	"treads: {thickness: 30, nosing: 20, nosing_radius: 10, scribe: 3}\n"                      \
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

static void a_plain_one_needs_room_behind_the_stringer(void **state)
{
	struct built b = built_from(STAIR "stringers: {wall: sawtooth, wall_gap: 10}\n" PLAIN);
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"skirts.wall: behind the stringer there is 10 mm for a skirt 18 mm thick");
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
		cmocka_unit_test(a_plain_skirt_covers_the_corners_of_the_steps),
		cmocka_unit_test(a_cut_one_has_a_corner_in_every_step),
		cmocka_unit_test(one_serves_each_wall),
		cmocka_unit_test(coves_end_at_its_face),
		cmocka_unit_test(a_housed_stringer_is_its_own_skirt),
		cmocka_unit_test(a_plain_one_needs_room_behind_the_stringer),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
