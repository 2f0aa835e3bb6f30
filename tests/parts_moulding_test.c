/*
 * Coves and scotias in the corners of steps.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "parts/moulding.h"

/* 10 risers of 180, run 250; treads 30 thick; no newels. */
#define STAIR(right)                                                                               \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: 20}\n"                                           \
	"stair: {width: 900, left: wall, right: " right ", segments: [{risers: 10, run: 250}]}\n"  \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32, strip_width: "  \
	"60, return_past: 25, scribe: 3}\n"                                                        \
	"newels: {bottom: no, top: no}\n"

#define OPEN STAIR("open")

#define SAWN "stringers: {open: sawtooth}\n"
#define COVE "mouldings: {under_nosing: cove, under_width: 12, under_height: 16}\n"
#define BACK "mouldings: {back: cove, back_size: 10}\n"

static struct outline section_of(struct arena *a, enum moulding_kind kind, enum moulding_lies lies,
	double width, double height)
{
	struct moulding m = { kind, lies, width, height, "moulding" };
	return moulding_section(a, &m);
}

static double area_of(struct arena *a, struct outline o)
{
	struct profile f = profile_of(a, o);
	double sum = 0;
	for (int i = 0; i < f.n; i++)
		sum += vec_cross(f.at[i], f.at[(i + 1) % f.n]) / 2;
	return sum;
}

/* What a cove has lost is a quarter of a circle about its outer edge; in six facets a little less:
 * six triangles, each half the square of the radius by the sine of 15 degrees. */
static void a_cove_is_hollowed_by_a_quarter_of_a_circle(void **state)
{
	struct arena *a = arena_new();
	double radius = 12 - MOULDING_EDGE, facets = 6 * radius * radius / 2 * sin(PI / 12);
	(void)state;
	for (int lies = MOULDING_UNDER; lies <= MOULDING_ON; lies++) {
		struct outline o = section_of(a, MOULDING_COVE, lies, 12, 16);
		assert_near(area_of(a, o), 12 * 16 - facets, 1e-9);
	}
	arena_free(a);
}

static void a_cove_under_is_wide_above_and_one_on_is_wide_below(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	for (int lies = MOULDING_UNDER; lies <= MOULDING_ON; lies++) {
		struct outline o = section_of(a, MOULDING_COVE, lies, 12, 16);
		double wide = 0;
		for (int i = 0; i < o.n; i++)
			if (fabs(o.corners[i].at.y - (lies == MOULDING_ON ? 0 : 16)) < 1e-9)
				wide = fmax(wide, o.corners[i].at.x);
		assert_near(wide, 12, 1e-9);
	}
	arena_free(a);
}

static void the_two_arcs_of_a_scotia_run_into_each_other(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	for (double height = 14; height < 40; height += 3) {
		struct outline o = section_of(a, MOULDING_SCOTIA, MOULDING_UNDER, 12, height);
		struct corner_arc large = corner_arc(o.corners[1], o.corners[2].at);
		struct corner_arc small = corner_arc(o.corners[2], o.corners[3].at);
		struct vec joint = o.corners[2].at;
		/* both centres on one line with the joint, on the same side of it */
		struct vec to_large = vec_sub(large.centre, joint);
		struct vec to_small = vec_sub(small.centre, joint);
		assert_near(vec_cross(to_large, to_small), 0, 1e-6);
		assert_true(vec_dot(to_large, to_small) > 0);
		assert_true(small.radius < large.radius);
		/* it begins plumb, and ends level on the outer edge */
		assert_near(large.centre.y, 0, 1e-9);
		assert_near(small.centre.x, 12, 1e-9);
	}
	arena_free(a);
}

static void there_are_none_unless_asked_for(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		assert_true(p->kind != &part_moulding);
	arena_free(b.arena);
}

static void between_walls_a_cove_is_as_long_as_the_tread(void **state)
{
	struct built b = built_from(STAIR("wall") SAWN COVE);
	(void)state;
	const struct part *p = built_part(&b, "cove under the nosing", 0);
	assert_int_equal(p->count, 10);
	assert_near(p->size.length, 894, 1e-9); /* 900 less twice the scribe */
	struct extent e = built_extent(p, 0);
	assert_near(e.low.x, -12, 1e-9); /* against the face of the first riser */
	assert_near(e.high.x, 0, 1e-9);
	assert_near(e.high.z, 150, 1e-9); /* under the tread: 180 - 30 */
	assert_near(e.low.z, 134, 1e-9);
	arena_free(b.arena);
}

static void at_the_return_it_is_mitred_round_the_corner(void **state)
{
	struct built b = built_from(OPEN SAWN COVE);
	(void)state;
	const struct part *front = built_part(&b, "cove under the nosing", 0);
	const struct part *along = built_part(&b, "cove along the return", 0);
	assert_near(front->size.length, 897 + 12, 1e-9);
	assert_near(front->start.mitre, PI / 4, 1e-12);
	assert_near(along->end.mitre, PI / 4, 1e-12);
	assert_near(built_extent(front, 0).low.y, -12, 1e-9);
	struct extent e = built_extent(along, 0);
	assert_near(e.low.y, -12, 1e-9);
	assert_near(e.high.y, 0, 1e-9);
	assert_near(e.low.x, -12, 1e-9);
	arena_free(b.arena);
}

static void behind_the_riser_above_it_returns_on_itself_as_far_as_it_is_wide(void **state)
{
	struct built b = built_from(OPEN SAWN COVE);
	(void)state;
	const struct part *along = built_part(&b, "cove along the return", 0);
	assert_near(built_extent(along, 0).high.x, 250 + 12, 1e-9); /* riser 2 stands at 250 */
	assert_near(along->size.length, 250 + 24, 1e-9);
	assert_int_equal(built_count(&b, "cove along the return, end"), 8);
	assert_int_equal(built_count(&b, "cove along the return"), 9);
	arena_free(b.arena);
}

static void against_the_header_it_stops_square(void **state)
{
	struct built b = built_from(OPEN SAWN COVE);
	(void)state;
	const struct part *last = built_part(&b, "cove along the return", 1);
	assert_near(built_extent(last, 0).high.x, 9 * 250 + 18, 1e-9);
	assert_near(last->start.mitre, 0, 1e-12);
	arena_free(b.arena);
}

static void at_a_housed_string_it_ends(void **state)
{
	struct built b = built_from(OPEN "stringers: {wall: housed, open: sawtooth}\n" COVE);
	(void)state;
	double inner = 900 - b.stair->job->stringers.wall.thickness;
	assert_near(built_extent(built_part(&b, "cove under the nosing", 0), 0).high.y, inner,
		1e-9);
	arena_free(b.arena);
}

static void on_the_back_of_a_tread_it_lies_against_the_riser_above(void **state)
{
	struct built b = built_from(OPEN SAWN BACK);
	(void)state;
	const struct part *p = built_part(&b, "cove on the back of the tread", 0);
	struct extent e = built_extent(p, 0);
	assert_near(e.low.z, 180, 1e-9);
	assert_near(e.high.z, 190, 1e-9);
	assert_near(e.high.x, 250, 1e-9);
	assert_int_equal(built_count(&b, "cove on the back of the tread"), 9);
	/* its free end is returned to the riser */
	assert_int_equal(built_count(&b, "cove on the back of the tread, end"), 9);
	arena_free(b.arena);
}

static void it_is_run_on_wide_stock_and_ripped_off(void **state)
{
	struct built b = built_from(OPEN SAWN COVE);
	(void)state;
	const struct part *p = built_part(&b, "cove under the nosing", 0);
	assert_int_equal(p->stuff, STUFF_MOULDING);
	assert_string_equal(p->note, "ripped off wide stock");
	assert_true(p->section.n > 0);
	arena_free(b.arena);
}

static void open_risers_leave_nothing_to_lay_it_against(void **state)
{
	struct built b = built_from(OPEN SAWN COVE "risers: open\n");
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"mouldings: open risers leave nothing to lay them against");
	arena_free(b.arena);
}

static void it_must_fit_under_the_flat_of_the_nosing(void **state)
{
	struct built b = built_from(OPEN SAWN "mouldings: {under_nosing: cove, under_width: 16}\n");
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"mouldings.under_width: 16 mm does not fit under the nosing, which is flat for 15 "
		"mm");
	arena_free(b.arena);
}

static void a_scotia_is_higher_than_wide(void **state)
{
	struct built b = built_from(
		OPEN SAWN "mouldings: {under_nosing: scotia, under_width: 12, under_height: 12}\n");
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"mouldings.under_height: a scotia is higher than it is wide");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_cove_is_hollowed_by_a_quarter_of_a_circle),
		cmocka_unit_test(a_cove_under_is_wide_above_and_one_on_is_wide_below),
		cmocka_unit_test(the_two_arcs_of_a_scotia_run_into_each_other),
		cmocka_unit_test(there_are_none_unless_asked_for),
		cmocka_unit_test(between_walls_a_cove_is_as_long_as_the_tread),
		cmocka_unit_test(at_the_return_it_is_mitred_round_the_corner),
		cmocka_unit_test(behind_the_riser_above_it_returns_on_itself_as_far_as_it_is_wide),
		cmocka_unit_test(against_the_header_it_stops_square),
		cmocka_unit_test(at_a_housed_string_it_ends),
		cmocka_unit_test(on_the_back_of_a_tread_it_lies_against_the_riser_above),
		cmocka_unit_test(it_is_run_on_wide_stock_and_ripped_off),
		cmocka_unit_test(open_risers_leave_nothing_to_lay_it_against),
		cmocka_unit_test(it_must_fit_under_the_flat_of_the_nosing),
		cmocka_unit_test(a_scotia_is_higher_than_wide),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
