/*
 * What fixes a rail to its newels and walls, and its profile.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "pitchboard/rail.h"
#include "railed.h"

/* ---- joints ---- */

static const struct bore *bolt_of(const struct part *p, int n)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (b->fixing == FIXING_RAIL_BOLT && n-- == 0)
			return b;
	return NULL;
}

/* A bolt of 90 mm: half of it on each side, square to the newel's face. */
static void a_bolt_is_drilled_level_with_its_other_half_in_the_newel(void **state)
{
	struct built b = with(JOB("wall", "open", RAIL "}\n"));
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	const struct bore *low = bolt_of(rail, 0), *high = bolt_of(rail, 1);
	assert_non_null(high);
	struct frame mouth = frame_compose(rail->places[0], low->at);
	assert_near(mouth.w.x, -1, 1e-9);
	assert_near(mouth.w.z, 0, 1e-9);
	assert_near(low->size.depth, 45, 1e-9);
	int mates = 0;
	for (int i = 0; built_part(&b, "newel", i); i++)
		mates += bolt_of(built_part(&b, "newel", i), 0) ? 1 : 0;
	assert_int_equal(mates, 2);
	arena_free(b.arena);
}

/* 35 mm from the newel's face, on the bolt's line. */
static void the_access_hole_comes_up_under_the_bolt(void **state)
{
	struct built b = with(JOB("wall", "open", RAIL "}\n"));
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	const struct bore *bolt = bolt_of(rail, 0), *access = bolt->next;
	struct vec3 on_bolt = vec3_sub(bolt->at.origin, vec3_scale(bolt->at.w, 35));
	assert_int_equal(access->fixing, FIXING_PLUG);
	assert_near(access->at.origin.x, on_bolt.x, 1e-9);
	assert_near(access->at.origin.z, 0, 1e-9);
	assert_true(access->size.depth > on_bolt.z);
	arena_free(b.arena);
}

static void a_bolt_asked_for_where_there_is_no_wood_is_refused(void **state)
{
	(void)state;
	refused(JOB("wall", "open", RAIL ", joint: bolt, bolt: {height: 58}}\n"),
		"rail: its bolts come out of the wood of a rail 60 mm deep");
}

/* Half of 190 and 1.6 of glue room are 96.6; 2 mm of wood are left behind. */
static void a_dowel_longer_than_its_newel_is_refused_in_its_own_words(void **state)
{
	const char *said = "a dowel does not find room for its half in a newel of 90 mm";
	const char *mend = "write newels.section: 99 mm, or take a shorter dowel";
	(void)state;
	refused_for(JOB("wall", "open", RAIL ", joint: dowels, dowel: {length: 190}}\n"), said,
		mend);
	refused_for(JOB("wall", "open", RAIL ", joint: bolt_and_dowel, dowel: {length: 190}}\n"),
		said, mend);
}

/* Least wood between a hole and the top or underside of a rail so deep. */
static double wood_round(const struct bore *h, double depth)
{
	double end = h->at.origin.z - h->size.depth * h->at.w.z, r = h->size.width / 2;
	double low = fmin(h->at.origin.z, end) - r, high = fmax(h->at.origin.z, end) + r;
	return fmin(low, depth - high);
}

static int bores_with(const struct part *p, enum fixing fixing)
{
	int n = 0;
	for (const struct bore *b = p->bores; b; b = b->next)
		n += b->fixing == fixing && !b->is_mate;
	return n;
}

/* The level run comes off square to the rake; at one height or another its bolt would be at the
 * level of the other.  A hole of 6 between two holes of 6. */
static void bolts_of_two_rails_pass_each_other_in_a_newel(void **state)
{
	struct arena *a = arena_new();
	int met = 0;
	(void)state;
	for (int height = 860; height <= 960; height += 4) {
		struct built b = with(arena_printf(a,
			JOB("wall", "open",
				RAIL ", level_runs: [{side: right, direction: out, length: 900, "
				     "height: %d}]}\n"),
			height));
		for (int i = 0; built_part(&b, "newel", i); i++) {
			const struct part *newel = built_part(&b, "newel", i);
			const struct bore *one = bolt_of(newel, 0), *other = bolt_of(newel, 1);
			if (!other)
				continue;
			assert_true(fabs(one->at.origin.x - other->at.origin.x) >= 12 - 1e-6);
			met++;
		}
		arena_free(b.arena);
	}
	assert_int_equal(met, 26);
	arena_free(a);
}

#define SQUARE(width, depth)                                                                       \
	"rail: {height: 900, profile: square, edge_radius: 0, width: " width ", depth: " depth

#define SLIM "balusters: {section: 20}\n"

/* Bolt and dowel, or two dowels: common practice. */
static void a_rail_with_room_is_bolted_and_kept_from_turning_by_a_dowel(void **state)
{
	struct built b = with(JOB("wall", "open", RAIL "}\n"));
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	assert_int_equal(bores_with(rail, FIXING_RAIL_BOLT), 2);
	assert_int_equal(bores_with(rail, FIXING_DOWEL), 2);
	arena_free(b.arena);
}

/* A bolt's hole of 10 mm in a rail 43 deep, 22 half-way along at 35 degrees, leaves 2 mm of it;
 * 6 mm (1/4 in) are wanted (common practice). */
static void a_shallow_rail_takes_a_smaller_bolt_by_room(void **state)
{
	struct built b = with(JOB("wall", "open", SQUARE("45", "43") "}\n"));
	(void)state;
	const struct bore *bolt = bolt_of(built_part(&b, "rail", 0), 0);
	assert_non_null(bolt);
	assert_near(bolt->fixing_width, 6, 1e-9);
	assert_true(wood_round(bolt, 43) >= 6 - 1e-6);
	arena_free(b.arena);
}

static void a_wide_and_shallow_rail_takes_two_dowels_side_by_side(void **state)
{
	struct built b = with(JOB("wall", "open",
		"rail: {height: 900, profile: flat_oval, width: 60, depth: 35}\n"));
	(void)state;
	const struct part *rail = built_part(&b, "rail", 0);
	double low = INFINITY, high = -INFINITY;
	assert_null(bolt_of(rail, 0));
	assert_int_equal(bores_with(rail, FIXING_DOWEL), 4);
	for (const struct bore *h = rail->bores; h; h = h->next) {
		assert_true(wood_round(h, 35) >= 2 - 1e-6);
		low = fmin(low, h->at.origin.y);
		high = fmax(high, h->at.origin.y);
	}
	/* twice their own 10 mm apart, and wood beside them */
	assert_true(high - low >= 20 - 1e-6);
	assert_true(high + 5 + 2 <= 30);
	arena_free(b.arena);
}

/* Its access hole of 25 would part a rail of 25, the smaller bolt's of 20 leave 2 1/2: not a rail
 * of 23. */
static void a_rail_no_wider_than_an_access_hole_takes_no_bolt(void **state)
{
	struct built narrow = with(JOB("wall", "open", SQUARE("25", "60") "}\n" SLIM));
	struct built dowelled = with(JOB("wall", "open", SQUARE("23", "60") "}\n" SLIM));
	(void)state;
	const struct bore *bolt = bolt_of(built_part(&narrow, "rail", 0), 0);
	assert_non_null(bolt);
	assert_near(bolt->next->size.width, 20, 1e-9);
	assert_null(bolt_of(built_part(&dowelled, "rail", 0), 0));
	assert_int_equal(bores_with(built_part(&dowelled, "rail", 0), FIXING_DOWEL), 4);
	arena_free(narrow.arena);
	arena_free(dowelled.arena);
	refused_for(JOB("wall", "open", SQUARE("23", "60") ", joint: bolt}\n" SLIM),
		"rail: a bolt's access hole of 25 mm leaves no wood beside it in a rail 23 mm wide",
		"write rail.joint: by_room");
}

static void a_rail_too_slim_both_ways_is_told_of_either(void **state)
{
	struct built b = with(JOB("wall", "open", SQUARE("23", "32") "}\n" SLIM));
	(void)state;
	assert_string_equal(b.diags.first->hint,
		"a rail at least 43 mm deep, and wider, takes a bolt");
	arena_free(b.arena);
}

/* What the hint says, typed into the job, mends it. */
static void a_rail_too_slim_for_two_fixings_is_told_what_depth_takes_a_bolt(void **state)
{
	struct built slim = with(JOB("wall", "open", SQUARE("33", "32") "}\n"));
	struct built mended = with(JOB("wall", "open", SQUARE("33", "43") "}\n"));
	(void)state;
	assert_int_equal(bores_with(built_part(&slim, "rail", 0), FIXING_DOWEL), 2);
	assert_string_equal(built_complaint(&slim),
		"rail: 32 mm deep and 33 mm wide it is held by a single dowel at a newel: too weak "
		"for a guard");
	/* 8 mm of hole, 6 of wood on either side, and 38 at the pitch of 35.8 degrees */
	assert_string_equal(slim.diags.first->hint, "a rail at least 43 mm deep takes a bolt");
	assert_string_equal(built_complaint(&mended), "");
	assert_int_equal(bores_with(built_part(&mended, "rail", 0), FIXING_RAIL_BOLT), 2);
	arena_free(slim.arena);
	arena_free(mended.arena);
}

static void a_rail_that_ends_at_a_wall_is_bolted_to_what_is_behind_it(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: on, length: 700, end: wall}]}\n"));
	(void)state;
	const struct part *level = built_part(&b, "level rail", 0);
	const struct bore *bolt = bolt_of(level, 1);
	assert_non_null(bolt);
	assert_string_equal(bolt->text, "rail bolt, into a stud or backing in the wall");
	assert_near(bolt->mate.depth, 0, 1e-12); /* existing work is not drilled */
	arena_free(b.arena);
}

static void a_profile_that_cannot_be_struck_is_refused_at_its_key(void **state)
{
	(void)state;
	refused(JOB("wall", "open", RAIL ", recess: 25}\n"),
		"rail.recess: so deep on both sides it leaves no neck to the rail");
	/* eased by 1 mm: 2 sqrt(21.5 21.5 - 20.5 20.5) */
	refused(JOB("wall", "open", "rail: {profile: round, width: 45, depth: 44}\n"),
		"rail: its underside is flat for 13 mm, and what ends there is 32 mm thick");
}

static void a_rail_says_where_it_meets_its_newels(void **state)
{
	struct built b = with(JOB("wall", "open", RAIL "}\n"));
	(void)state;
	const struct rail *r = built_part(&b, "rail", 0)->rail;
	struct slope_line nosing = flight_nosing_line(b.stair, &b.stair->flights[0]);
	/* the bottom newel's back face lies at 18, behind the riser; the top one's front at 2250 */
	assert_near(r->foot.top, slope_at(nosing, 18) + 900, 1e-9);
	assert_near(r->head.top, slope_at(nosing, 2250) + 900, 1e-9);
	assert_near(r->foot.top - r->foot.under, r->cut_face, 1e-9);
	assert_near(r->cut_face, 60 / cos(r->pitch), 1e-9);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_bolt_is_drilled_level_with_its_other_half_in_the_newel),
		cmocka_unit_test(the_access_hole_comes_up_under_the_bolt),
		cmocka_unit_test(bolts_of_two_rails_pass_each_other_in_a_newel),
		cmocka_unit_test(a_bolt_asked_for_where_there_is_no_wood_is_refused),
		cmocka_unit_test(a_dowel_longer_than_its_newel_is_refused_in_its_own_words),
		cmocka_unit_test(a_rail_with_room_is_bolted_and_kept_from_turning_by_a_dowel),
		cmocka_unit_test(a_shallow_rail_takes_a_smaller_bolt_by_room),
		cmocka_unit_test(a_wide_and_shallow_rail_takes_two_dowels_side_by_side),
		cmocka_unit_test(a_rail_no_wider_than_an_access_hole_takes_no_bolt),
		cmocka_unit_test(a_rail_too_slim_both_ways_is_told_of_either),
		cmocka_unit_test(a_rail_too_slim_for_two_fixings_is_told_what_depth_takes_a_bolt),
		cmocka_unit_test(a_rail_that_ends_at_a_wall_is_bolted_to_what_is_behind_it),
		cmocka_unit_test(a_profile_that_cannot_be_struck_is_refused_at_its_key),
		cmocka_unit_test(a_rail_says_where_it_meets_its_newels),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
