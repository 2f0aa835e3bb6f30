/*
 * Walls that pass some steps: a chimney breast that stands into the stair.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "built_refused.h"
#include "near.h"

/* 10 risers of 180, run 250; a tread is 275 deep, 30 thick; 3 mm to walls; the carriage at the wall
 * is 80 off it. */
#define STAIR(sides, of, more)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: 20}\n"                                           \
	"stair: {width: 900, " sides ", segments: [{risers: 10, run: 250}]}\n"                     \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, strip_width: 40, scribe: 3, "      \
	"notches: [" of "]}\n" more

#define WALLS "left: wall, right: wall"
#define BOARDS "risers: {thickness: 18}\n"
#define CLEAR "stringers: {wall: sawtooth, wall_gap: 80}\n"
#define BREAST(of) STAIR(WALLS, of, BOARDS CLEAR)

/* Risers stand at 750 (4), 1000, 1250 (6), 1500; the nosing of step 4 at 725.  From 785 to 1385. */
#define THREE "{step: 4, at: right, along: 70, from: 60, across: 600}"

/* From the nosing of step 4 to riser 5, 725 to 1000. */
#define ONE "{step: 4, at: right, along: 70, from: 0, across: 275}"

static const struct part *on_step(const struct built *b, const char *name, int step)
{
	for (const struct part *p = b->parts; p; p = p->next)
		for (int i = 0; strcmp(p->name, name) == 0 && i < p->count; i++)
			if (p->units[i] == step)
				return p;
	return NULL;
}

static void assert_notch(const struct part *p, struct box want)
{
	const struct feature *f = p->features;
	while (f && f->kind != FEATURE_NOTCH)
		f = f->next;
	assert_non_null(f);
	struct box b = outline_extent(f->at);
	assert_near(b.x0, want.x0, 1e-9);
	assert_near(b.y0, want.y0, 1e-9);
	assert_near(b.x1, want.x1, 1e-9);
	assert_near(b.y1, want.y1, 1e-9);
}

/* The length of the riser whose face is at x. */
static double riser_at(const struct built *b, double x)
{
	for (const struct part *p = b->parts; p; p = p->next)
		for (int i = 0; p->kind == &part_riser && i < p->count; i++)
			if (fabs(built_extent(p, i).low.x - x) < 1e-6)
				return p->size.length;
	return 0;
}

/* 900, less 3 at the left and 70 + 3 at the right; a rectangle, nothing cut out of it. */
static void a_tread_that_it_passes_ends_at_its_face_for_the_whole_depth(void **state)
{
	struct built b = built_from(BREAST(THREE));
	const struct part *body = on_step(&b, "tread body", 5);
	(void)state;
	assert_near(body->size.length, 824, 1e-9);
	assert_int_equal(body->outline.n, 4);
	assert_near(on_step(&b, "tread front strip", 5)->size.length, 824, 1e-9);
	assert_near(on_step(&b, "tread body", 7)->size.length, 894, 1e-9);
	arena_free(b.arena);
}

/* Body behind a strip of 40: of step 4 from 60 - 3 on, of step 6 up to 1385 + 3 - 1225. */
static void the_treads_where_it_begins_and_ends_are_cut_out(void **state)
{
	struct built b = built_from(BREAST(THREE));
	(void)state;
	assert_notch(on_step(&b, "tread body", 4), (struct box){ 824, 17, 894, 235 });
	assert_notch(on_step(&b, "tread body", 6), (struct box){ 824, 0, 894, 123 });
	assert_near(on_step(&b, "tread front strip", 4)->size.length, 894, 1e-9);
	assert_near(on_step(&b, "tread front strip", 6)->size.length, 824, 1e-9);
	arena_free(b.arena);
}

static void risers_that_it_passes_are_short_and_no_others(void **state)
{
	struct built b = built_from(BREAST(THREE));
	(void)state;
	assert_near(riser_at(&b, 750), 894, 1e-9);
	assert_near(riser_at(&b, 1000), 824, 1e-9);
	assert_near(riser_at(&b, 1250), 824, 1e-9);
	assert_near(riser_at(&b, 1500), 894, 1e-9);
	arena_free(b.arena);
}

static void it_stands_on_the_floor_and_goes_up_to_the_next(void **state)
{
	struct built b = built_from(BREAST(THREE));
	struct extent e = built_extent(built_part(&b, "wall in a tread", 0), 0);
	(void)state;
	assert_near(e.low.x, 785, 1e-9);
	assert_near(e.high.x, 1385, 1e-9);
	assert_near(e.low.z, 0, 1e-9);
	assert_near(e.high.z, 1800, 1e-9);
	arena_free(b.arena);
}

/* Under the nosing of step 4 it stands 25 deep in the back of tread 3, and it fills the nosing of
 * step 5; each with the scribe. */
static void one_as_deep_as_a_tread_is_cut_out_of_those_below_and_above_too(void **state)
{
	struct built b = built_from(BREAST(ONE));
	(void)state;
	assert_notch(on_step(&b, "tread body", 3), (struct box){ 824, 207, 894, 235 });
	assert_near(on_step(&b, "tread body", 4)->size.length, 824, 1e-9);
	assert_notch(on_step(&b, "tread front strip", 5), (struct box){ 824, 0, 894, 28 });
	assert_near(riser_at(&b, 750), 824, 1e-9);
	assert_near(riser_at(&b, 1000), 894, 1e-9);
	arena_free(b.arena);
}

/* A tape does not show a millimetre: 274 is the whole depth of 275. */
static void a_depth_read_off_a_tape_is_the_whole_depth(void **state)
{
	struct built b =
		built_from(BREAST("{step: 4, at: right, along: 70, from: 0, across: 274}"));
	(void)state;
	assert_near(built_extent(built_part(&b, "wall in a tread", 0), 0).high.x, 1000, 1e-9);
	arena_free(b.arena);
}

static void coves_stop_at_its_face(void **state)
{
	struct built b = built_from(
		BREAST(THREE) "mouldings: {under_nosing: cove, under_width: 12, back: cove}\n");
	int shorter = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->kind == &part_moulding && i < p->count; i++) {
			struct extent e = built_extent(p, i);
			if (e.high.x > 785 && e.low.x < 1385 && e.high.y - e.low.y > 100) {
				assert_near(e.low.y, 73, 1e-9);
				shorter++;
			}
		}
	/* on the backs of 4 and 5, under the nosings of 5 and 6 */
	assert_int_equal(shorter, 4);
	arena_free(b.arena);
}

static void a_plain_skirt_stops_before_it_and_goes_on_behind(void **state)
{
	struct built b =
		built_from(BREAST(THREE) "skirts: {wall: plain, thickness: 18, height: 80}\n");
	double before = -INFINITY, behind = INFINITY;
	const char *low_note = "", *high_note = "";
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->kind == &part_skirt && i < p->count; i++) {
			struct extent e = built_extent(p, i);
			if (e.low.y < 1 && e.low.x < 0) {
				before = fmax(before, e.high.x);
				low_note = p->note;
			} else if (e.low.y < 1) {
				behind = fmin(behind, e.low.x);
				high_note = p->note;
			}
		}
	assert_near(before, 785 - 3, 1e-9);
	assert_near(behind, 1385 + 3, 1e-9);
	assert_non_null(
		strstr(low_note, "; its upper end stops 3 mm short of the wall in the steps"));
	assert_non_null(
		strstr(high_note, "; its lower end stops 3 mm short of the wall in the steps"));
	arena_free(b.arena);
}

#define PIER BREAST("{step: 6, at: right, along: 70, from: 60, across: 480}")

/* From 1285 to 1765; at 1380 it ends under a floor with a guard on it, and under tread 8, whose
 * riser stands at 1750. */
static void a_plain_skirt_goes_on_behind_one_that_ends_under_a_tread(void **state)
{
	struct built b = built_from(PIER "skirts: {wall: plain, thickness: 18, height: 80}\n"
					 "opening: {floor_thickness: 420}\n"
					 "rail: {level_runs: [{side: left, direction: back, "
					 "length: 1000}]}\n");
	double behind = -INFINITY;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->kind == &part_skirt && i < p->count; i++)
			if (built_extent(p, i).low.y < 1)
				behind = fmax(behind, built_extent(p, i).low.x);
	assert_near(behind, 1765 + 3, 1e-9);
	arena_free(b.arena);
}

/* 18 more than 70 out, and 18 at each of its two ends. */
static void with_plain_skirts_its_own_faces_are_told_of(void **state)
{
	struct built b =
		built_from(BREAST(THREE) "skirts: {wall: plain, thickness: 18, height: 80}\n");
	(void)state;
	assert_string_equal(built_complaint(&b),
		"skirts.wall: none on the faces of the wall that stands out 70 mm from step 4 on, "
		"on the right: the skirts of its wall end at it");
	assert_string_equal(b.diags.first->hint,
		"treads and risers are scribed to it; boards on its faces are entered as part of "
		"it: along 18 mm more, from as much less, across 36 mm more");
	arena_free(b.arena);
}

static void bars_of_open_risers_end_at_it(void **state)
{
	struct built b = built_from(
		STAIR(WALLS, THREE, CLEAR "risers: {kind: open, bar: 50, bar_thickness: 10}\n"));
	int shorter = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		if (strcmp(p->name, "riser bar") == 0 && fabs(p->size.length - 824) < 1e-9)
			shorter += p->count;
	assert_int_equal(shorter, 2); /* of steps 5 and 6 */
	arena_free(b.arena);
}

static void a_stringer_that_would_run_into_it_is_refused(void **state)
{
	(void)state;
	refused(STAIR(WALLS, THREE, BOARDS "stringers: {wall: sawtooth, wall_gap: 40}\n"),
		"treads.notches: the wall in steps 4 to 6 stands 70 mm out and comes up where the "
		"stringer is, 40 mm off the wall of the stair");
	refused(STAIR("left: wall, right: {side: open, from_step: 8}", THREE, BOARDS CLEAR),
		"treads.notches: the wall in steps 4 to 6 stands 70 mm out and comes up where the "
		"stringer is, 0 mm off the wall of the stair");
}

/* By hand: treads end at 2250, in the face of riser 10; step 8 begins at 1725. */
static void one_that_leaves_a_splinter_or_goes_too_far_is_refused(void **state)
{
	(void)state;
	refused(BREAST("{step: 4, at: right, along: 70, from: 20, across: 600}"),
		"treads.notches: it leaves 20 mm of step 4 in front of it: at least 50 mm");
	refused(BREAST("{step: 4, at: right, along: 70, from: 0, across: 500}"),
		"treads.notches: it leaves 25 mm of step 5 behind it: at least 50 mm");
	refused(BREAST("{step: 8, at: right, along: 70, from: 0, across: 625}"),
		"treads.notches: it ends 100 mm behind the back edge of the last tread");
	refused(BREAST("{step: 4, at: right, along: 70, from: 0, across: 525, height: 90}"),
		"treads.notches: a wall 90 mm high over step 4 ends under step 5, which is 180 mm "
		"over it");
	refused(BREAST(THREE ", {step: 6, at: right, along: 40, from: 0, across: 60}"),
		"treads.notches: two notches of step 6 overlap");
}

static void one_that_reaches_beside_an_open_step_is_refused(void **state)
{
	(void)state;
	refused(STAIR("left: wall, right: {side: open, from_step: 6}", THREE, BOARDS CLEAR),
		"treads.notches: there is no wall at the right of step 6, it is open there");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_tread_that_it_passes_ends_at_its_face_for_the_whole_depth),
		cmocka_unit_test(the_treads_where_it_begins_and_ends_are_cut_out),
		cmocka_unit_test(risers_that_it_passes_are_short_and_no_others),
		cmocka_unit_test(it_stands_on_the_floor_and_goes_up_to_the_next),
		cmocka_unit_test(one_as_deep_as_a_tread_is_cut_out_of_those_below_and_above_too),
		cmocka_unit_test(a_depth_read_off_a_tape_is_the_whole_depth),
		cmocka_unit_test(coves_stop_at_its_face),
		cmocka_unit_test(a_plain_skirt_stops_before_it_and_goes_on_behind),
		cmocka_unit_test(a_plain_skirt_goes_on_behind_one_that_ends_under_a_tread),
		cmocka_unit_test(with_plain_skirts_its_own_faces_are_told_of),
		cmocka_unit_test(bars_of_open_risers_end_at_it),
		cmocka_unit_test(a_stringer_that_would_run_into_it_is_refused),
		cmocka_unit_test(one_that_leaves_a_splinter_or_goes_too_far_is_refused),
		cmocka_unit_test(one_that_reaches_beside_an_open_step_is_refused),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
