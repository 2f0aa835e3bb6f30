/*
 * Rails along walls: as far as the wall, returned to it, on brackets.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "pitchboard/rail.h"
#include "railed.h"

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

/* The treads refuse them, while rails are still laid out between them: however many, each parts one
 * piece of wall at most. */
static void walls_in_the_steps_that_stand_in_each_other_leave_a_rail_its_walls(void **state)
{
	(void)state;
	refused("pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, segments: [{risers: 10, run: 250}]}\n"
		"stringers: {wall_gap: 90}\n"
		"treads: {notches: [{step: 5, at: left, along: 75, from: 100, across: 50},\n"
		"  {step: 5, at: left, along: 75, from: 80, across: 90},\n"
		"  {step: 5, at: left, along: 75, from: 60, across: 130}]}\n"
		"wall_rails: [{side: left}]\n",
		"treads.notches: two notches of step 5 overlap");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_wall_rail_reaches_from_riser_to_riser),
		cmocka_unit_test(a_wall_rail_keeps_its_clearance_and_its_height),
		cmocka_unit_test(both_ends_are_returned_to_the_wall),
		cmocka_unit_test(a_return_is_outlined_to_its_short_point),
		cmocka_unit_test(brackets_are_no_farther_apart_than_the_job_says),
		cmocka_unit_test(a_round_wall_rail_is_one_to_grip_by_default),
		cmocka_unit_test(a_flat_oval_wall_rail_lies_flat_by_default),
		cmocka_unit_test(a_wall_rail_needs_a_wall),
		cmocka_unit_test(
			walls_in_the_steps_that_stand_in_each_other_leave_a_rail_its_walls),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
