/*
 * Treads, risers and the nosing piece of the upper floor.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

/* 10 risers of 180, run 250; treads 30 thick; open on the right. */
#define OPEN                                                                                       \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800, upper_finish: 20}\n"                                           \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32, strip_width: "  \
	"60, return_past: 40, scribe: 3, landing_bearing: 90}\n"                                   \
	"risers: {thickness: 18}\n"

#define SAWN "stringers: {open: sawtooth}\n"
#define MITRED "stringers: {open: {kind: mitred, thickness: 30}}\n"

static const struct feature *notch_of(const struct part *p)
{
	const struct feature *f = p->features;
	while (f && f->kind != FEATURE_NOTCH)
		f = f->next;
	assert_non_null(f);
	return f;
}

static void a_wall_end_stops_short_by_the_scribe(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	assert_near(built_extent(built_part(&b, "tread body", 0), 0).high.y, 897, 1e-9);
	assert_near(built_extent(built_part(&b, "riser", 0), 0).high.y, 897, 1e-9);
	arena_free(b.arena);
}

static void front_and_return_overhang_and_meet_in_a_mitre(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	/* the first tread ends at the newel; the second is whole */
	const struct part *strip = built_part(&b, "tread front strip", 1);
	const struct part *back = built_part(&b, "tread return", 1);
	struct extent front = built_extent(strip, 0), run = built_extent(back, 0);
	assert_near(front.low.y, -32, 1e-9);
	assert_near(run.low.y, -32, 1e-9);
	assert_near(front.low.x, 225, 1e-9); /* 250 - 25 */
	assert_near(run.low.x, 225, 1e-9);   /* both come to the corner */
	assert_near(strip->end.mitre, PI / 4, 1e-12);
	assert_near(back->start.mitre, PI / 4, 1e-12);
	arena_free(b.arena);
}

static void the_return_runs_on_behind_the_riser_above_and_returns_on_itself(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	const struct part *back = built_part(&b, "tread return", 1);
	const struct part *end = built_part(&b, "tread return end", 0);
	assert_near(built_extent(back, 0).high.x, 540, 1e-9); /* riser 3 stands at 500 */
	assert_near(built_extent(end, 1).high.x, 540, 1e-9);
	assert_near(back->end.mitre, PI / 4, 1e-12);
	assert_near(end->size.length, 32, 1e-9);
	arena_free(b.arena);
}

static void the_last_return_stops_square_against_the_header(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	const struct part *last = built_part(&b, "tread return", 2);
	assert_non_null(last);
	assert_near(built_extent(last, 0).high.x, 9 * 250 + 18, 1e-9);
	assert_near(last->end.mitre, 0, 1e-12);
	assert_int_equal(built_count(&b, "tread return end"), 8);
	arena_free(b.arena);
}

static void body_and_strips_cover_the_tread_and_no_more(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	struct extent body = built_extent(built_part(&b, "tread body", 0), 1);
	struct extent strip = built_extent(built_part(&b, "tread front strip", 1), 0);
	assert_near(strip.high.x, body.low.x, 1e-9); /* glued along one line */
	assert_near(body.high.x, 500, 1e-9);         /* to the face of the riser above */
	assert_near(body.low.y, 28, 1e-9);           /* 60 - 32: where the return begins */
	assert_near(body.high.z, 360, 1e-9);
	arena_free(b.arena);
}

static void the_first_tread_goes_round_the_newel(void **state)
{
	struct built b = built_from(OPEN SAWN "newels: {section: 90}\n"
					      "balusters: {section: 32}\n");
	(void)state;
	/* room to get it in: 1 mm on each face */
	struct extent newel = built_extent(built_part(&b, "newel", 0), 0);
	const struct part *strip = built_part(&b, "tread front strip", 0);
	struct extent back = built_extent(built_part(&b, "tread return", 0), 0);
	const struct feature *notch = notch_of(strip);
	assert_near(newel.high.x, 18, 1e-9); /* against the stringer's front */
	assert_near(newel.low.y, 16 - 45, 1e-9);
	/* the strip, 60 wide, goes on behind it to what is left of the mitre */
	assert_near(outline_extent(notch->at).x0, 897 - (newel.high.y + 1), 1e-9);
	assert_near(outline_extent(notch->at).y1, 18 + 25 + 1, 1e-9);
	assert_near(back.low.x, newel.high.x + 1, 1e-9);
	arena_free(b.arena);
}

static void every_riser_stands_behind_the_tread_below(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	const struct part *riser = built_part(&b, "riser", 1);
	for (int i = 0; i < riser->count; i++) {
		struct extent e = built_extent(riser, i);
		assert_near(e.low.x, 250 * (i + 1), 1e-9);
		assert_near(e.low.z, 180 * (i + 1) - 30, 1e-9);
		assert_near(e.high.z, 180 * (i + 2) - 30, 1e-9);
	}
	arena_free(b.arena);
}

static void the_first_riser_is_lower_by_the_tread(void **state)
{
	struct built b = built_from(OPEN SAWN "newels: {bottom: no}\n");
	(void)state;
	assert_near(built_part(&b, "riser", 0)->size.width, 150, 1e-9);
	arena_free(b.arena);
}

static void a_riser_is_mitred_only_where_the_stringer_is(void **state)
{
	struct built b = built_from(OPEN MITRED);
	(void)state;
	assert_near(built_part(&b, "riser", 0)->end.bevel, 0, 1e-12); /* ends at the newel */
	assert_near(built_part(&b, "riser", 1)->end.bevel, PI / 4, 1e-12);
	assert_near(built_part(&b, "riser", 1)->start.bevel, 0, 1e-12); /* at the wall */
	assert_near(built_part(&b, "riser", 2)->end.bevel, 0, 1e-12);   /* against the header */
	arena_free(b.arena);
}

static void open_risers_have_no_boards(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: wall, segments: [{risers: 10, run: "
				    "250}]}\nrisers: open\n");
	(void)state;
	assert_non_null(b.parts);
	assert_int_equal(built_count(&b, "riser"), 0);
	arena_free(b.arena);
}

/* 180 of rise less a tread of 27 less the bar. */
static void a_bar_narrows_the_gap_of_open_risers(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: wall, segments: [{risers: 10, run: "
				    "250}]}\nrisers: {kind: open, bar: 60}\n"
				    "treads: {thickness: 27, nosing: 25, nosing_radius: 10}\n");
	(void)state;
	const struct part *bar = built_part(&b, "riser bar", 0);
	struct extent e = built_extent(bar, 1);
	assert_int_equal(built_count(&b, "riser bar"), 10);
	assert_near(e.high.x, 250, 1e-9); /* flush with the riser's line, 12 thick */
	assert_near(e.low.x, 250 - 12, 1e-9);
	assert_near(e.high.z, 360 - 27, 1e-9);
	assert_near(e.low.z - 180, 93, 1e-9);
	assert_string_equal(bar->note,
		"glued under its tread; leaves a gap of 93 mm over the one below");
	arena_free(b.arena);
}

static void a_housed_tread_enters_both_grooves(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: wall, segments: [{risers: 10, run: "
				    "250}]}\n"
				    "stringers: {wall: {kind: housed, thickness: 32}, "
				    "housing_depth: 12}\n");
	(void)state;
	/* 900 - 2 x (32 - 12) */
	assert_near(built_part(&b, "tread body", 0)->size.length, 860, 1e-9);
	assert_near(built_part(&b, "tread front strip", 0)->size.length, 860, 1e-9);
	assert_near(built_part(&b, "riser", 0)->size.length, 860, 1e-9);
	arena_free(b.arena);
}

static void the_nosing_piece_makes_the_last_rise_equal(void **state)
{
	struct built b = built_from(OPEN SAWN);
	(void)state;
	const struct part *nosing = built_part(&b, "landing nosing", 0);
	struct extent e = built_extent(nosing, 0);
	assert_string_equal(nosing->mark, "L1");
	assert_near(e.high.z, 1800, 1e-9);
	assert_near(e.low.z, 1770, 1e-9);
	assert_near(e.low.x, 9 * 250 - 25, 1e-9);
	assert_near(nosing->size.width, 25 + 18 + 90, 1e-9);
	assert_near(notch_of(nosing)->depth, 10, 1e-9); /* 30 less the finish of 20 */
	arena_free(b.arena);
}

static void a_flush_last_tread_needs_no_nosing_piece(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: wall, segments: [{risers: 10, run: "
				    "250}]}\nstringers: {head: flush}\n");
	(void)state;
	assert_null(built_part(&b, "landing nosing", 0));
	assert_int_equal(built_count(&b, "tread body"), 10);
	assert_int_equal(built_count(&b, "riser"), 10);
	arena_free(b.arena);
}

static void a_nosing_rounder_than_its_overhang_is_refused(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: open, segments: [{risers: 10, run: "
				    "250}]}\ntreads: {thickness: 40, nosing_radius: 15, "
				    "side_overhang: 15}\n");
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"treads.side_overhang: 15 mm does not hold the rounded nosing");
	assert_string_equal(b.diags.first->hint, "write treads.side_overhang: 16 mm");
	arena_free(b.arena);
}

/* 97 1/8 in thirteen rises is 7.471, lettered 7 1/2; 97 1/2 in thirteen is 7 1/2. */
static void a_riser_lettered_wider_than_its_rise_says_so(void **state)
{
	struct built over =
		built_from("pitchboard: 1\njob: {name: Test}\n"
			   "floors: {total_rise: 97 1/8\"}\n"
			   "stair: {width: 36\", segments: [{risers: 13, run: 10\"}]}\n");
	struct built even =
		built_from("pitchboard: 1\njob: {name: Test}\n"
			   "floors: {total_rise: 97 1/2\"}\n"
			   "stair: {width: 36\", segments: [{risers: 13, run: 10\"}]}\n");
	(void)state;
	assert_non_null(strstr(built_part(&over, "riser", 1)->note, "trim it to the rise"));
	assert_null(built_part(&even, "riser", 1)->note);
	arena_free(over.arena);
	arena_free(even.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_wall_end_stops_short_by_the_scribe),
		cmocka_unit_test(front_and_return_overhang_and_meet_in_a_mitre),
		cmocka_unit_test(the_return_runs_on_behind_the_riser_above_and_returns_on_itself),
		cmocka_unit_test(the_last_return_stops_square_against_the_header),
		cmocka_unit_test(body_and_strips_cover_the_tread_and_no_more),
		cmocka_unit_test(the_first_tread_goes_round_the_newel),
		cmocka_unit_test(every_riser_stands_behind_the_tread_below),
		cmocka_unit_test(the_first_riser_is_lower_by_the_tread),
		cmocka_unit_test(a_riser_is_mitred_only_where_the_stringer_is),
		cmocka_unit_test(open_risers_have_no_boards),
		cmocka_unit_test(a_bar_narrows_the_gap_of_open_risers),
		cmocka_unit_test(a_housed_tread_enters_both_grooves),
		cmocka_unit_test(the_nosing_piece_makes_the_last_rise_equal),
		cmocka_unit_test(a_flush_last_tread_needs_no_nosing_piece),
		cmocka_unit_test(a_nosing_rounder_than_its_overhang_is_refused),
		cmocka_unit_test(a_riser_lettered_wider_than_its_rise_says_so),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
