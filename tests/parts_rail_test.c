/*
 * Level runs, wall rails and what fixes a rail to its newels.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built_refused.h"
#include "near.h"
#include "pitchboard/rail.h"

/* Header at 2268; the opening reaches 150 past the stair on each open side. */
#define JOB(left, right, more)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"opening: {length: 2000, width: 1200, floor_thickness: 300}\n"                             \
	"stair: {width: 900, left: " left ", right: " right                                        \
	", segments: [{risers: 10, run: 250}]}\n"                                                  \
	"treads: {thickness: 30, nosing: 25, side_overhang: 32}\n"                                 \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {section: 90, above_rail: 70}\n" more

#define RAIL "rail: {height: 900, width: 57, depth: 60"

static struct built with(const char *text)
{
	struct built b = built_from(text);
	if (!b.parts)
		print_message("%s\n", built_complaint(&b));
	assert_non_null(b.parts);
	return b;
}

/* ---- level runs ---- */

static void a_level_run_goes_on_from_the_top_newel(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: on, length: 700, height: 950}]}\n"));
	(void)state;
	struct extent rail = built_extent(built_part(&b, "level rail", 0), 0);
	/* the top newel stands from 2250 to 2340 */
	assert_near(rail.low.x, 2340, 1e-9);
	assert_near(rail.high.x, 2340 + 700, 1e-9);
	assert_near(rail.high.z, 1800 + 950, 1e-9);
	assert_near(rail.low.z, 1800 + 950 - 60, 1e-9);
	assert_int_equal(built_count(&b, "newel"), 3);
	arena_free(b.arena);
}

static void a_run_back_guards_the_opening_from_the_floor_beside_it(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: back, length: 2000}]}\n"));
	(void)state;
	struct extent rail = built_extent(built_part(&b, "level rail", 0), 0);
	/* on the right the opening is 300 wider; the rail's middle is half a newel from its edge */
	assert_near((rail.low.y + rail.high.y) / 2, -300 - 45, 1e-9);
	assert_near(rail.high.x, 2268, 1e-9);
	assert_near(rail.low.x, 268, 1e-9);
	assert_non_null(built_part(&b, "upper floor under the level rails", 0));
	arena_free(b.arena);
}

static void runs_of_a_chain_share_the_newel_at_their_corner(void **state)
{
	struct built b = with(JOB("open", "open",
		RAIL ", level_runs: [{side: right, direction: back, length: 2000},\n"
		     "  {side: right, direction: across, length: 600, end: wall}]}\n"));
	(void)state;
	/* two on each side of the flight, and one at either end of the run back */
	assert_int_equal(built_count(&b, "newel"), 6);
	struct extent across = built_extent(built_part(&b, "level rail", 1), 0);
	/* from the left face of the corner newel, whose right face lies 90 beyond the edge */
	assert_near(across.low.y, -150, 1e-9);
	assert_near(across.high.y, -150 + 600, 1e-9);
	arena_free(b.arena);
}

static void a_newel_is_as_high_as_the_higher_of_its_two_rails_asks(void **state)
{
	struct built b = with(JOB("wall", "open",
		RAIL ", level_runs: [{side: right, direction: on, length: 700, height: 1100}]}\n"));
	double highest = -INFINITY;
	(void)state;
	for (int i = 0; built_part(&b, "newel", i); i++)
		for (int k = 0; k < built_part(&b, "newel", i)->count; k++)
			highest = fmax(highest, built_extent(built_part(&b, "newel", i), k).high.z);
	assert_near(highest, 1800 + 1100 + 70, 1e-9);
	arena_free(b.arena);
}

static void a_level_run_that_cannot_stand_is_refused(void **state)
{
	(void)state;
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: across, length: 700}]}\n"),
		"rail.level_runs: a run across the head of the stair bars the way");
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: back, length: 900},\n"
			     "  {side: right, direction: across, length: 700}]}\n"),
		"rail.level_runs: this run stands over the opening");
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: on, length: 900, end: wall},"
			     "\n  {side: right, direction: out, length: 700}]}\n"),
		"rail.level_runs: the run before this one ends at a wall, there is no newel to go "
		"on from");
	refused(JOB("wall", "open",
			RAIL ", level_runs: [{side: right, direction: on, length: 900},\n"
			     "  {side: right, direction: back, length: 700}]}\n"),
		"rail.level_runs: this run goes back over the one before it");
}

/* ---- wall rails ---- */

static void a_wall_rail_reaches_from_riser_to_riser(void **state)
{
	struct built b = with(JOB("wall", "wall",
		"wall_rails: [{side: left, height: 920, profile: square, edge_radius: 0}]\n"));
	(void)state;
	const struct part *p = built_part(&b, "wall rail", 0);
	struct extent e = built_extent(p, 0);
	double lean = p->size.thickness * sin(p->rail->pitch);
	/* plumb over the faces of the first riser, 0, and the last, 2250, with its whole depth */
	assert_near(e.low.x, 0 - lean, 1e-6);
	assert_near(e.high.x, 2250 + lean, 1e-6);
	arena_free(b.arena);
}

static void a_wall_rail_keeps_its_clearance_and_its_height(void **state)
{
	struct built b = with(JOB("wall", "wall",
		"wall_rails: [{side: left, height: 920, clearance: 50, profile: round, width: 40}]"
		"\n"));
	(void)state;
	const struct part *p = built_part(&b, "wall rail", 0);
	struct extent e = built_extent(p, 0);
	struct slope_line nosing = flight_nosing_line(b.stair, &b.stair->flights[0]);
	assert_near(e.high.y, 900 - 50, 1e-6);
	assert_near(e.low.y, 900 - 50 - 40, 1e-6);
	/* the middle of its upper end, 40 under the top line square to the slope */
	struct vec3 top = frame_place(p->places[0], vec3(p->size.length / 2, 0, 40));
	assert_near(top.z, slope_at(nosing, top.x) + 920, 1e-6);
	arena_free(b.arena);
}

static void both_ends_are_returned_to_the_wall(void **state)
{
	struct built b = with(JOB("wall", "wall", "wall_rails: [{side: right}]\n"));
	const struct unit *u = units_make(b.arena, b.parts);
	(void)state;
	assert_int_equal(built_count(&b, "wall rail return"), 2);
	for (int i = 0; i < 2; i++)
		assert_near(built_extent(built_part(&b, "wall rail return", i), 0).low.y, 0, 1e-9);
	while (u && u->kind != &part_wall_rail)
		u = u->next;
	assert_non_null(u);
	assert_int_equal(u->piece_count, 3);
	arena_free(b.arena);
}

/* 50 from the wall to a rail 40 wide: its short point 50 from the wall, the long one 90. */
static void a_return_is_outlined_to_its_short_point(void **state)
{
	struct built b = with(JOB("wall", "wall",
		"wall_rails: [{side: right, clearance: 50, profile: round, width: 40}]\n"));
	(void)state;
	const struct part *p = built_part(&b, "wall rail return", 0);
	double low = INFINITY, high = -INFINITY;
	for (int i = 0; i < p->outline.n; i++) {
		struct vec at = p->outline.corners[i].at;
		low = at.x > 1 ? fmin(low, at.x) : low;
		high = fmax(high, at.x);
	}
	assert_int_equal(p->outline.n, 4);
	assert_near(low, 50, 1e-9);
	assert_near(high, 90, 1e-9);
	arena_free(b.arena);
}

/* At most 48 in apart and within 12 in of each end (from memory: trade practice). */
static void brackets_are_no_farther_apart_than_the_job_says(void **state)
{
	struct built b = with(JOB("wall", "wall",
		"wall_rails: [{side: left, bracket_spacing: 800, bracket_from_end: 250}]\n"));
	(void)state;
	const struct part *p = built_part(&b, "wall rail", 0);
	const struct part *g = built_part(&b, "rail bracket", 0);
	double c = cos(p->rail->pitch), first = g->places[0].origin.x / c;
	assert_near(first, 250, 1e-6);
	for (int i = 1; i < g->count; i++)
		assert_true((g->places[i].origin.x - g->places[i - 1].origin.x) / c <= 800 + 1e-6);
	double last = g->places[g->count - 1].origin.x / c;
	assert_near(last, p->size.length - 250, 1e-6);
	arena_free(b.arena);
}

/* 1 1/4 to 2 in: IRC 2018 R311.7.8.5 (read); 30 to 43 mm: NBC 9.8.7.5 (from memory). */
static void a_round_wall_rail_is_one_to_grip_by_default(void **state)
{
	static const char *const units[] = { "inches", "millimetres" };
	(void)state;
	for (int i = 0; i < 2; i++) {
		struct arena *a = arena_new();
		struct built b = with(arena_printf(a,
			"pitchboard: 1\njob: {name: Test, units: %s}\n"
			"floors: {total_rise: 1800 mm}\n"
			"stair: {width: 900 mm, segments: [{risers: 10, run: 250 mm}]}\n"
			"wall_rails: [{side: left, profile: round}]\n",
			units[i]));
		double across = built_part(&b, "wall rail", 0)->rail->profile.diameter;
		assert_true(across >= 1.25 * 25.4 && across <= 2 * 25.4);
		assert_true(across >= 30 && across <= 43);
		arena_free(b.arena);
		arena_free(a);
	}
}

static void a_flat_oval_wall_rail_lies_flat_by_default(void **state)
{
	struct built b =
		with(JOB("wall", "wall", "wall_rails: [{side: left, profile: flat_oval}]\n"));
	(void)state;
	const struct part *p = built_part(&b, "wall rail", 0);
	assert_true(p->size.thickness < p->size.width);
	arena_free(b.arena);
}

static void a_wall_rail_needs_a_wall(void **state)
{
	(void)state;
	refused(JOB("wall", "open", RAIL "}\nwall_rails: [{side: right}]\n"),
		"wall_rails: the stair is open on the right, there is no wall");
	refused(JOB("wall", "wall", "wall_rails: [{side: left}, {side: left}]\n"),
		"wall_rails: two rails on the left run into each other");
}

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

#define SQUARE(width, depth)                                                                       \
	"rail: {height: 900, profile: square, edge_radius: 0, width: " width ", depth: " depth

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
		cmocka_unit_test(a_level_run_goes_on_from_the_top_newel),
		cmocka_unit_test(a_run_back_guards_the_opening_from_the_floor_beside_it),
		cmocka_unit_test(runs_of_a_chain_share_the_newel_at_their_corner),
		cmocka_unit_test(a_newel_is_as_high_as_the_higher_of_its_two_rails_asks),
		cmocka_unit_test(a_level_run_that_cannot_stand_is_refused),
		cmocka_unit_test(a_wall_rail_reaches_from_riser_to_riser),
		cmocka_unit_test(a_wall_rail_keeps_its_clearance_and_its_height),
		cmocka_unit_test(both_ends_are_returned_to_the_wall),
		cmocka_unit_test(a_return_is_outlined_to_its_short_point),
		cmocka_unit_test(brackets_are_no_farther_apart_than_the_job_says),
		cmocka_unit_test(a_round_wall_rail_is_one_to_grip_by_default),
		cmocka_unit_test(a_flat_oval_wall_rail_lies_flat_by_default),
		cmocka_unit_test(a_wall_rail_needs_a_wall),
		cmocka_unit_test(a_bolt_is_drilled_level_with_its_other_half_in_the_newel),
		cmocka_unit_test(the_access_hole_comes_up_under_the_bolt),
		cmocka_unit_test(a_bolt_asked_for_where_there_is_no_wood_is_refused),
		cmocka_unit_test(a_rail_with_room_is_bolted_and_kept_from_turning_by_a_dowel),
		cmocka_unit_test(a_shallow_rail_takes_a_smaller_bolt_by_room),
		cmocka_unit_test(a_wide_and_shallow_rail_takes_two_dowels_side_by_side),
		cmocka_unit_test(a_rail_too_slim_for_two_fixings_is_told_what_depth_takes_a_bolt),
		cmocka_unit_test(a_rail_that_ends_at_a_wall_is_bolted_to_what_is_behind_it),
		cmocka_unit_test(a_profile_that_cannot_be_struck_is_refused_at_its_key),
		cmocka_unit_test(a_rail_says_where_it_meets_its_newels),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
