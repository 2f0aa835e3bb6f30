/*
 * Treads that wrap walls, and go round newels.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built_refused.h"
#include "near.h"

/* 10 risers of 180, run 250; a tread is 275 deep, 30 thick; 3 mm to walls, 2 round newels. */
#define JOB(sides, more)                                                                           \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: 20}\n"                                           \
	"stair: {width: 900, " sides ", segments: [{risers: 10, run: 250}]}\n"                     \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {section: 90}\n"                                                                  \
	"balusters: {section: 32}\n"                                                               \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32, strip_width: "  \
	"40, return_past: 40, scribe: 3, newel_fit: 2" more "}\n"

#define WALLS "left: wall, right: wall"
#define NOTCH(of) JOB(WALLS, ", notches: [" of "]")

/* The piece of that name on step i. */
static const struct part *on_step(const struct built *b, const char *name, int step)
{
	for (const struct part *p = b->parts; p; p = p->next)
		for (int i = 0; strcmp(p->name, name) == 0 && i < p->count; i++)
			if (p->units[i] == step)
				return p;
	return NULL;
}

static const struct feature *notch_of(const struct part *p)
{
	const struct feature *f = p->features;
	while (f && f->kind != FEATURE_NOTCH)
		f = f->next;
	return f;
}

static void assert_box(struct outline o, struct box want)
{
	struct box b = outline_extent(o);
	assert_near(b.x0, want.x0, 1e-9);
	assert_near(b.y0, want.y0, 1e-9);
	assert_near(b.x1, want.x1, 1e-9);
	assert_near(b.y1, want.y1, 1e-9);
}

/* The body is 894 long (900 less 3 at each wall) and 235 wide (275 less the strip of 40). */
static void a_wall_in_the_back_corner_is_cut_out_with_the_scribe(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: right, along: 70, across: 100}"));
	(void)state;
	const struct part *body = on_step(&b, "tread body", 4);
	assert_int_equal(body->outline.n, 6);
	assert_near(body->size.length, 894, 1e-9);
	/* from the wall 70 + 3 in, of which the tread is short by 3; 100 + 3 from the back */
	assert_box(notch_of(body)->at, (struct box){ 824, 132, 894, 235 });
	assert_string_equal(body->note,
		"back right corner cut out round the wall: 70 along x 103 across");
	arena_free(b.arena);
}

static void a_wall_in_the_front_corner_takes_strip_and_body(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: left, along: 70, across: 100, from: 0}"));
	(void)state;
	const struct part *body = on_step(&b, "tread body", 4);
	const struct part *strip = on_step(&b, "tread front strip", 4);
	assert_near(strip->size.length, 894 - 70, 1e-9);
	assert_box(notch_of(body)->at, (struct box){ 0, 0, 70, 63 }); /* 103 less the strip */
	arena_free(b.arena);
}

static void a_wall_within_the_strip_is_cut_out_of_its_corner(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: left, along: 70, across: 15, from: 0}"));
	(void)state;
	const struct part *strip = on_step(&b, "tread front strip", 4);
	assert_near(strip->size.length, 894, 1e-9);
	assert_box(notch_of(strip)->at, (struct box){ 0, 0, 70, 18 });
	assert_null(notch_of(on_step(&b, "tread body", 4)));
	arena_free(b.arena);
}

static void a_wall_along_an_end_leaves_wood_before_and_behind(void **state)
{
	struct built b =
		built_from(NOTCH("{step: 4, at: right, along: 50, across: 80, from: 100}"));
	(void)state;
	const struct part *body = on_step(&b, "tread body", 4);
	assert_int_equal(body->outline.n, 8);
	assert_box(notch_of(body)->at, (struct box){ 844, 57, 894, 143 });
	arena_free(b.arena);
}

static void a_wall_at_the_back_is_cut_out_of_the_back_edge(void **state)
{
	struct built b =
		built_from(NOTCH("{step: 4, at: back, along: 120, across: 60, from: 300}"));
	(void)state;
	const struct part *body = on_step(&b, "tread body", 4);
	/* from the body's end, 3 off the wall: 300 - 3 - 3 */
	assert_box(notch_of(body)->at, (struct box){ 294, 172, 420, 235 });
	assert_string_equal(body->note,
		"back edge, 294 from its left end, cut out round the wall: 126 along x 63 across");
	arena_free(b.arena);
}

static void the_wall_stands_in_its_notch_clear_by_the_scribe(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: right, along: 70, across: 100}"));
	(void)state;
	const struct part *wall = built_part(&b, "wall in a tread", 0);
	struct extent e = built_extent(wall, 0);
	assert_int_equal(wall->existing, EXISTING_WALL);
	assert_near(e.low.y, 0, 1e-9);
	assert_near(e.high.y, 70, 1e-9);
	assert_near(e.low.x, 1000 - 100, 1e-9); /* riser 5 stands at 1000 */
	assert_near(e.high.x, 1000, 1e-9);
	arena_free(b.arena);
}

static void a_riser_is_short_of_the_wall_that_stands_before_it(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: left, along: 70, across: 100, from: 0}"));
	(void)state;
	int short_ones = 0;
	for (int i = 0; built_part(&b, "riser", i); i++)
		short_ones += built_part(&b, "riser", i)->size.length < 900 - 70;
	assert_int_equal(short_ones, 1);
	arena_free(b.arena);
}

#define MIDDLE "left: wall, right: {side: open, from_step: 3, to_step: 6, wall_past: 50}"

static void the_first_open_tread_wraps_the_end_of_the_wall(void **state)
{
	struct built b = built_from(JOB(MIDDLE, ""));
	(void)state;
	struct extent wall = built_extent(built_part(&b, "wall right", 0), 0);
	struct extent strip = built_extent(on_step(&b, "tread front strip", 3), 0);
	struct extent back = built_extent(on_step(&b, "tread return", 3), 0);
	assert_near(wall.high.x, 500 + 50, 1e-9);
	assert_near(strip.low.y, 3, 1e-9); /* square, off the wall */
	assert_near(back.low.x, wall.high.x + 3, 1e-9);
	assert_near(back.low.y, -32, 1e-9);
	arena_free(b.arena);
}

static void the_newel_of_the_first_open_tread_stands_behind_the_wall(void **state)
{
	struct built b = built_from(JOB(MIDDLE, ""));
	(void)state;
	assert_near(built_extent(built_part(&b, "newel", 0), 0).low.x, 550, 1e-9);
	arena_free(b.arena);
}

static void the_tread_after_the_last_open_one_returns_to_the_wall(void **state)
{
	struct built b = built_from(JOB(MIDDLE, ""));
	(void)state;
	struct extent wall = built_extent(built_part(&b, "wall right", 1), 0);
	const struct part *strip = on_step(&b, "tread front strip", 7);
	const struct part *piece = on_step(&b, "tread return", 7);
	assert_near(wall.low.x, 1500 + 40, 1e-9);
	assert_near(built_extent(strip, 0).low.y, -32, 1e-9);
	assert_near(built_extent(piece, 0).low.x, 1500 - 25, 1e-9);
	assert_near(built_extent(piece, 0).high.x, wall.low.x - 3, 1e-9);
	assert_near(built_extent(on_step(&b, "tread body", 7), 0).low.y, 3, 1e-9);
	assert_null(on_step(&b, "tread return end", 7));
	arena_free(b.arena);
}

static void what_is_left_of_the_mitre_beside_a_newel_stays(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: open, segments: [{risers: 10, run: "
				    "250}]}\nnewels: {section: 90}\nbalusters: {section: 32}\n"
				    "treads: {nosing: 25, side_overhang: 30, strip_width: 110, "
				    "newel_fit: 2}\nrisers: {thickness: 18}\n");
	(void)state;
	const struct part *strip = on_step(&b, "tread front strip", 1);
	/* round the newel 18 + 25 + 2 back; beyond that it goes on to the return, 93 wide */
	assert_near(built_extent(strip, 0).low.y, -30 + 45, 1e-9);
	assert_near(strip->end.mitre, PI / 4, 1e-12);
	arena_free(b.arena);
}

static void a_notch_that_cannot_be_is_refused(void **state)
{
	(void)state;
	refused(NOTCH("{step: 10, at: left, along: 70, across: 100}"),
		"treads.notches: there is no step 10, the stair has 9 treads");
	refused_for(NOTCH("{step: 4, at: left, along: 70, across: 260}"),
		"treads.notches: 260 mm across is too deep for the tread",
		"write treads.notches[1].across: 225 mm");
	refused_for(NOTCH("{step: 4, at: left, along: 500, across: 100}"),
		"treads.notches: 500 mm along is too long for the tread",
		"write treads.notches[1].along: 400 mm");
	refused_for(NOTCH("{step: 4, at: back, along: 100, across: 200, from: 300}"),
		"treads.notches: 200 mm across is too deep for the tread",
		"write treads.notches[1].across: 185 mm");
	refused(NOTCH("{step: 4, at: back, along: 700, across: 60, from: 300}"),
		"treads.notches: it ends 1000 mm off, past the tread's right-hand side");
	refused(NOTCH("{step: 4, at: back, along: 100, across: 60, from: 10}"),
		"treads.notches: it comes nearer than 50 mm to the left end of step 4");
	refused(NOTCH("{step: 4, at: left, along: 30, across: 100}, {step: 4, at: left, along: 20, "
		      "across: 100, from: 100}"),
		"treads.notches: two notches of step 4 overlap");
}

static void a_notch_where_no_wall_is_is_refused(void **state)
{
	(void)state;
	refused(JOB("left: wall, right: open",
			", notches: [{step: 4, at: right, along: 70, across: 100}]"),
		"treads.notches: there is no wall at the right of step 4, it is open there");
	refused_for(NOTCH("{step: 4, at: right, along: 70, across: 100}") "stringers: {wall: "
									  "housed}\n",
		"treads.notches: the wall in step 4 stands 70 mm out, where the stringer runs that "
		"the treads are housed in on the right",
		"write stringers.wall.kind: sawtooth and stringers.wall_gap: 73 mm, or measure the "
		"stair from the face of this wall (stair.width 830 mm, the notch left out) and "
		"pack out behind the stringer");
}

static void a_wall_that_leaves_the_newel_no_room_is_refused(void **state)
{
	(void)state;
	refused_for(JOB("left: wall, right: {side: open, from_step: 3, wall_past: 150}", ""),
		"stair.right.wall_past: 150 mm leaves no room on step 3 for its newel",
		"write stair.right.wall_past: 135 mm");
	refused(JOB("left: wall, right: {side: open, wall_past: 50}", ""),
		"stair.right: wall_past goes with a from_step above 1");
}

static struct extent wall_of(const struct built *b)
{
	return built_extent(built_part(b, "wall in a tread", 0), 0);
}

/* Tread 4 lies at 720, 30 thick; the upper floor at 1800. */
static void a_wall_in_a_tread_goes_up_to_the_upper_floor(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: right, along: 70, across: 100}"));
	(void)state;
	assert_near(wall_of(&b).low.z, 690, 1e-9);
	assert_near(wall_of(&b).high.z, 1800, 1e-9);
	arena_free(b.arena);
}

static void or_as_high_as_it_is_given(void **state)
{
	struct built b =
		built_from(NOTCH("{step: 4, at: right, along: 70, across: 100, height: 90}"));
	(void)state;
	assert_near(wall_of(&b).high.z, 810, 1e-9);
	assert_null(notch_of(on_step(&b, "tread front strip", 5)));
	arena_free(b.arena);
}

/* Measured smaller in the tread above, it is that there: the one below ends under its nosing. */
static void the_wall_of_a_tread_ends_under_one_that_has_its_own_smaller_one(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: right, along: 70, across: 100}, "
					  "{step: 5, at: right, along: 50, across: 60, from: 0}"));
	(void)state;
	assert_near(built_extent(built_part(&b, "wall in a tread", 0), 0).high.z, 5 * 180 - 30,
		1e-9);
	arena_free(b.arena);
}

/* Its nosing stands 25 over the wall's back: cut out so far and the scribe, 28; from the end of the
 * strip, 3 off its wall, 70 in and the scribe make 70. */
static void the_nosing_above_is_cut_out_for_the_wall_that_comes_up_through_it(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: right, along: 70, across: 100}"));
	const struct feature *f = notch_of(on_step(&b, "tread front strip", 5));
	(void)state;
	assert_non_null(f);
	assert_box(f->at, (struct box){ 824, 0, 894, 28 });
	arena_free(b.arena);
}

/* Tread 5 lies at 900, its underside at 870. */
static void a_wall_at_the_back_ends_under_the_nosing_above_it(void **state)
{
	struct built b =
		built_from(NOTCH("{step: 4, at: back, along: 120, across: 60, from: 300}"));
	(void)state;
	assert_near(wall_of(&b).high.z, 870, 1e-9);
	arena_free(b.arena);
}

#define WALL_RAIL(side) "wall_rails: [{side: " side ", height: 900, clearance: 45}]\n"

/* 900 to 1000 along, 70 out: more than the 45 between rail and wall. */
static void a_wall_rail_stops_before_it_and_goes_on_behind(void **state)
{
	struct built b = built_from(NOTCH("{step: 4, at: right, along: 70, across: 100}")
			WALL_RAIL("right") "stringers: {wall: sawtooth, wall_gap: 70}\n");
	(void)state;
	assert_int_equal(built_count(&b, "wall rail"), 2);
	for (int i = 0; built_part(&b, "wall rail", i); i++) {
		struct extent e = built_extent(built_part(&b, "wall rail", i), 0);
		assert_true(e.high.x < 900 || e.low.x > 1000);
	}
	assert_string_equal(built_complaint(&b),
		"wall_rails: the wall in step 4, 70 mm out and 100 mm long, stands in the way of "
		"the rail, 45 mm off its wall: the rail stops before it and goes on behind");
	arena_free(b.arena);
}

static void a_wall_that_comes_up_where_the_stringer_stands_is_told_of(void **state)
{
	struct built b = built_from(
		NOTCH("{step: 4, at: right, along: 70, across: 100}") "stringers: {wall: sawtooth, "
								      "wall_gap: 20}\n");
	(void)state;
	assert_non_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"treads.notches: the wall in step 4 stands 70 mm out, in the way of the stringer, "
		"which is 20 mm off the wall of the stair");
	arena_free(b.arena);
}

static void one_over_a_low_wall_goes_on(void **state)
{
	struct built b = built_from(NOTCH(
		"{step: 4, at: right, along: 70, across: 100, height: 500}") WALL_RAIL("right"));
	(void)state;
	assert_int_equal(built_count(&b, "wall rail"), 1);
	assert_int_equal(b.diags.warnings, 0);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_wall_in_a_tread_goes_up_to_the_upper_floor),
		cmocka_unit_test(or_as_high_as_it_is_given),
		cmocka_unit_test(the_wall_of_a_tread_ends_under_one_that_has_its_own_smaller_one),
		cmocka_unit_test(the_nosing_above_is_cut_out_for_the_wall_that_comes_up_through_it),
		cmocka_unit_test(a_wall_at_the_back_ends_under_the_nosing_above_it),
		cmocka_unit_test(a_wall_rail_stops_before_it_and_goes_on_behind),
		cmocka_unit_test(one_over_a_low_wall_goes_on),
		cmocka_unit_test(a_wall_that_comes_up_where_the_stringer_stands_is_told_of),
		cmocka_unit_test(a_wall_in_the_back_corner_is_cut_out_with_the_scribe),
		cmocka_unit_test(a_wall_in_the_front_corner_takes_strip_and_body),
		cmocka_unit_test(a_wall_within_the_strip_is_cut_out_of_its_corner),
		cmocka_unit_test(a_wall_along_an_end_leaves_wood_before_and_behind),
		cmocka_unit_test(a_wall_at_the_back_is_cut_out_of_the_back_edge),
		cmocka_unit_test(the_wall_stands_in_its_notch_clear_by_the_scribe),
		cmocka_unit_test(a_riser_is_short_of_the_wall_that_stands_before_it),
		cmocka_unit_test(the_first_open_tread_wraps_the_end_of_the_wall),
		cmocka_unit_test(the_newel_of_the_first_open_tread_stands_behind_the_wall),
		cmocka_unit_test(the_tread_after_the_last_open_one_returns_to_the_wall),
		cmocka_unit_test(what_is_left_of_the_mitre_beside_a_newel_stays),
		cmocka_unit_test(a_notch_that_cannot_be_is_refused),
		cmocka_unit_test(a_notch_where_no_wall_is_is_refused),
		cmocka_unit_test(a_wall_that_leaves_the_newel_no_room_is_refused),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
