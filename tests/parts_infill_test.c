/*
 * What fills the balustrade: plain and braced balusters, bars, panels; their joints and units.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "job_edit.h"
#include "near.h"

#define STAIR(kind, more)                                                                          \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32}\n"              \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {section: 90, above_rail: 70}\n"                                                  \
	"rail: {width: 57, depth: 60, height: 900}\n"                                              \
	"stringers: {open: {kind: " kind ", thickness: 30}}\n" more

#define OPEN(more) STAIR("sawtooth", more)
#define THREE "balusters: {section: 32, per_tread: 3, largest_gap: 100}\n"

static const double slope = 180.0 / 250;

static const struct bore *bore_of(const struct part *p, enum fixing fixing, int n)
{
	const struct bore *b = p ? p->bores : NULL;
	while (b && (b->fixing != fixing || n-- > 0))
		b = b->next;
	return b;
}

/* Every one of that name in the house, first to last, is asked the same. */
static void each_place(const struct built *b, const char *name,
	void (*ask)(const struct built *b, const struct part *p, int place))
{
	int asked = 0;
	for (const struct part *p = b->parts; p; p = p->next)
		for (int i = 0; strcmp(p->name, name) == 0 && i < p->count; i++, asked++)
			ask(b, p, i);
	assert_true(asked > 0);
}

/* ---- feet ---- */

static void a_foot_has_a_slot_along_the_stair_longer_than_its_dowel(void **state)
{
	struct built b = built_from(OPEN(THREE));
	(void)state;
	const struct part *baluster = built_part(&b, "baluster", 0);
	const struct bore *foot = bore_of(baluster, FIXING_DOWEL, 0);
	struct vec3 along = frame_turn(baluster->places[0], foot->at.u);
	assert_int_equal(foot->size.kind, BORE_SLOT);
	assert_near(foot->size.length - foot->size.width, 3, 1e-9); /* the default play */
	assert_near(fabs(along.x), 1, 1e-9);
	assert_near(frame_turn(baluster->places[0], foot->at.w).z, -1, 1e-9);
	arena_free(b.arena);
}

static void under_each(const struct built *b, const struct part *p, int place)
{
	const struct bore *foot = bore_of(p, FIXING_DOWEL, 0);
	struct vec3 at = frame_place(p->places[place], foot->at.origin);
	int found = 0;
	for (const struct part *t = b->parts; t; t = t->next)
		for (const struct bore *k = t->bores; t->kind == &part_tread && k; k = k->next)
			for (int i = 0; i < t->count; i++) {
				struct vec3 hole = frame_place(t->places[i], k->at.origin);
				found += k->is_mate && vec3_length(vec3_sub(hole, at)) < 1e-6;
			}
	assert_int_equal(found, 1);
}

static void every_foot_has_its_round_hole_in_the_tread_under_it(void **state)
{
	struct built b = built_from(OPEN(THREE));
	(void)state;
	each_place(&b, "baluster", under_each);
	arena_free(b.arena);
}

/* Hatfield, American House Carpenter: the first centre half its thickness from the riser's face,
 * the second half a tread on. */
static void holes_lie_half_a_baluster_and_half_a_tread_on_from_the_riser(void **state)
{
	struct built b =
		built_from(OPEN("balusters: {section: 32, per_tread: 2, largest_gap: 120}\n"));
	(void)state;
	double x1 = 0, x2 = 0;
	for (const struct part *p = b.parts; p; p = p->next) {
		const struct bore *one = bore_of(p, FIXING_DOWEL, 0);
		const struct bore *two = bore_of(p, FIXING_DOWEL, 1);
		if (strcmp(p->name, "tread body") != 0 || !one || !two)
			continue;
		x1 = frame_place(p->places[0], one->at.origin).x;
		x2 = frame_place(p->places[0], two->at.origin).x;
	}
	assert_near(fmin(x1, x2) - 250 * floor(fmin(x1, x2) / 250), 16, 1e-6);
	assert_near(fabs(x2 - x1), 125, 1e-6);
	arena_free(b.arena);
}

static void a_dowel_that_comes_out_in_the_nosings_round_is_refused(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, left: wall, right: open, "
				    "segments: [{risers: 10, run: 250}]}\n"
				    "treads: {thickness: 40, nosing: 0, nosing_radius: 20}\n"
				    "stringers: {open: sawtooth}\n" THREE);
	(void)state;
	assert_null(b.parts);
	assert_non_null(strstr(built_complaint(&b), "into the nosing's round"));
	arena_free(b.arena);
}

/* ---- braced ---- */

#define ROWS "infill: {kind: braced, rows: [{height: 150}, {height: 650, lie: level}]}\n"

static void balusters_of_a_tread_are_one_unit_with_their_cross_pieces(void **state)
{
	struct built b = built_from(OPEN(ROWS THREE));
	(void)state;
	const struct unit *u = units_make(b.arena, b.parts);
	int most = 0, units = 0;
	for (; u; u = u->next)
		if (u->kind == &part_infill) {
			most = u->piece_count > most ? u->piece_count : most;
			units += u->count;
		}
	assert_int_equal(units, 9);
	assert_int_equal(most, 3 + 2 * 2);
	arena_free(b.arena);
}

static void lies_as_its_row(const struct built *b, const struct part *p, int place)
{
	struct slope_line nosing = flight_nosing_line(b->stair, &b->stair->flights[0]);
	struct extent e = built_extent(p, place);
	double x = (e.low.x + e.high.x) / 2, z = (e.low.z + e.high.z) / 2;
	double tread = (floor(x / 250) + 1) * 180;
	if (p->start.mitre > 0)
		assert_near(z, slope_at(nosing, x) + 150, 1e-6);
	else
		assert_near(z, tread + 650, 1e-6);
}

static void rows_lie_on_the_rake_or_level_at_their_heights(void **state)
{
	struct built b = built_from(OPEN(ROWS THREE));
	(void)state;
	each_place(&b, "cross piece", lies_as_its_row);
	arena_free(b.arena);
}

/* From the middle of a mortise in a baluster to its foot: where its row is. */
static void a_level_row_is_mortised_at_the_same_distance_from_every_foot(void **state)
{
	struct built b = built_from(OPEN(ROWS THREE));
	(void)state;
	int level = 0;
	for (const struct part *p = b.parts; p; p = p->next)
		for (const struct bore *k = p->bores; p->baluster && k; k = k->next)
			if (k->fixing == FIXING_LOOSE_TENON && k->at.origin.x > 500) {
				assert_near(k->at.origin.x, 650, 1e-6);
				assert_near(fabs(k->at.w.y), 1, 1e-9); /* front or back */
				level++;
			}
	assert_true(level >= 4);
	arena_free(b.arena);
}

static void mortises_from_both_sides_do_not_meet_in_a_baluster(void **state)
{
	struct built b = built_from(OPEN("infill: {kind: braced, tenon_length: 100 mm}\n" THREE));
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (const struct bore *k = p->bores; p->baluster && k; k = k->next)
			if (k->fixing == FIXING_LOOSE_TENON)
				assert_true(k->size.depth < 16);
	arena_free(b.arena);
}

static void rows_that_run_into_each_other_are_refused(void **state)
{
	struct built b = built_from(
		OPEN("infill: {kind: braced, rows: [{height: 150}, {height: 170}]}\n" THREE));
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"the rows of cross pieces at 150 mm and at 170 mm run into each other");
	arena_free(b.arena);
}

static void a_row_beyond_the_tops_is_refused(void **state)
{
	struct built b = built_from(OPEN("infill: {kind: braced, rows: [{height: 850}]}\n" THREE));
	(void)state;
	assert_null(b.parts);
	assert_non_null(strstr(built_complaint(&b), "runs out of the balusters"));
	arena_free(b.arena);
}

static void a_round_baluster_has_flats_as_wide_as_its_cross_pieces(void **state)
{
	struct built b = built_from(OPEN("infill: {kind: braced, cross_thickness: 20 mm}\n"
					 "balusters: {shape: round, section: 32, per_tread: 3}\n"));
	(void)state;
	const struct part *p = built_part(&b, "baluster", 0);
	/* the chord of 20 of a circle of 32 lies sqrt(16^2 - 10^2) from its middle */
	assert_near(p->size.width, 2 * sqrt(16 * 16 - 10 * 10), 1e-9);
	assert_near(p->size.thickness, 32, 1e-9);
	arena_free(b.arena);
}

/* ---- shoe, subrail, fillets ---- */

static void a_fillet_is_as_long_as_the_gap_on_the_rake(void **state)
{
	struct built b = built_from(STAIR("housed", "infill: {shoe: yes}\n" THREE));
	(void)state;
	/* the gap of three to a tread of 250, less 32, and the rake's overlap of its depth of 10 */
	double gap = 250 / 3.0 - 32, rake = sqrt(1 + slope * slope);
	int alike = 0;
	for (const struct part *p = b.parts; p; p = p->next)
		if (strcmp(p->name, "fillet, shoe") == 0)
			alike += fabs(p->size.length - (gap * rake + 10 * slope)) < 1e-6 ? p->count
											 : 0;
	assert_true(alike >= 20);
	arena_free(b.arena);
}

static void under_a_subrail_balusters_end_in_its_plough(void **state)
{
	struct built b = built_from(OPEN("infill: {subrail: yes, plough: 8 mm}\n" THREE));
	(void)state;
	struct slope_line nosing = flight_nosing_line(b.stair, &b.stair->flights[0]);
	struct extent e = built_extent(built_part(&b, "baluster", 0), 0);
	double under = slope_at(nosing, e.high.x) + 900 - 60 * sqrt(1 + slope * slope);
	assert_near(e.high.z, under - (20 - 8) * sqrt(1 + slope * slope), 1e-6);
	arena_free(b.arena);
}

static void a_square_top_is_as_long_in_front_as_behind(void **state)
{
	struct built b = built_from(OPEN("balusters: {top: square, per_tread: 3}\n"));
	(void)state;
	const struct baluster *facts = built_part(&b, "baluster", 0)->baluster;
	assert_near(facts->long_point, facts->short_point, 1e-9);
	assert_near(facts->rake, 0, 1e-12);
	arena_free(b.arena);
}

/* ---- square tops under the rake, which rises over 32 mm by 32 sin(atan(180 / 250)) = 18.7 square
 * to it ---- */

#define SQUARE "balusters: {section: 32, per_tread: 3, largest_gap: 100, top: square}\n"

static const char arris[] =
	"balusters.top: square tops touch a raked rail with one arris only, and "
	"leave a wedge of air beside it";

static int count_warnings(const struct built *b)
{
	int n = 0;
	for (const struct diag *d = b->diags.first; d; d = d->next)
		n++;
	assert_int_equal(b->diags.errors, 0);
	assert_non_null(b->parts);
	return n;
}

static void what_is_told_of_square_tops(const char *job, const char *complaint)
{
	struct built b = built_from(job);
	assert_int_equal(count_warnings(&b), *complaint ? 1 : 0);
	assert_string_equal(built_complaint(&b), complaint);
	arena_free(b.arena);
}

static void square_tops_that_touch_with_an_arris_are_told_once_at_their_key(void **state)
{
	const char *job = STAIR("sawtooth", SQUARE);
	struct built b = built_from(job);
	const struct diag *d = b.diags.first;
	(void)state;
	assert_int_equal(count_warnings(&b), 1);
	assert_string_equal(d->text, arris);
	assert_string_equal(d->hint,
		"write balusters.top: raked, or let them 19 mm deep into a subrail");
	assert_ptr_equal(job + offset_of(job, d->at), strstr(job, "square}"));
	what_is_told_of_square_tops(job_edit(b.arena, job, "balusters.top", "raked"), "");
	what_is_told_of_square_tops(job_edit(b.arena, job, "stair.left", "open"), arris);
	what_is_told_of_square_tops(job_edit(b.arena, job, "infill.kind", "braced"), arris);
	arena_free(b.arena);
}

static void a_plough_hides_square_tops_where_it_is_as_deep_as_they_are_out_of_square(void **state)
{
	(void)state;
	what_is_told_of_square_tops(OPEN(SQUARE "infill: {subrail: yes, subrail_depth: 25, plough: "
						"18}\n"),
		"balusters.top: a raked plough of 18 mm is not deep enough for square tops: a "
		"wedge of air is seen beside them");
	what_is_told_of_square_tops(
		OPEN(SQUARE "infill: {subrail: yes, subrail_depth: 25, plough: 19}\n"), "");
}

static void square_tops_under_a_level_rail_meet_it_whole(void **state)
{
	(void)state;
	what_is_told_of_square_tops(
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: {side: open, guard: by_others},\n"
		"  segments: [{risers: 10, run: 250}]}\n"
		"opening: {width: 930}\n"
		"rail: {level_runs: [{side: right, direction: back, length: 2000}]}\n" SQUARE,
		"");
}

static void a_plough_through_the_shoe_is_refused(void **state)
{
	struct built b =
		built_from(OPEN("infill: {shoe: yes, shoe_depth: 12 mm, plough: 10 mm}\n" THREE));
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"infill.shoe_depth: a plough of 10 mm goes through 12 mm");
	arena_free(b.arena);
}

/* ---- bars and panels ---- */

static void a_long_flight_of_bars_gets_posts_on_its_treads(void **state)
{
	struct built b = built_from(OPEN("infill: {kind: bars, post_spacing: 800 mm}\n"));
	(void)state;
	int posts = built_count(&b, "post");
	assert_int_equal(posts, 2);
	for (int i = 0; i < posts; i++) {
		const struct part *p = built_part(&b, "post", 0);
		double x = built_extent(p, i % p->count).low.x;
		assert_near(x, 250 * round(x / 250), 1e-6); /* in line with a riser's face */
	}
	assert_int_equal(built_count(&b, "bar") % (posts + 1), 0);
	arena_free(b.arena);
}

static void too_few_bars_are_drawn_and_told_the_number_it_takes(void **state)
{
	struct built b = built_from(OPEN("infill: {kind: bars, bars: 2}\n"));
	(void)state;
	/* two bars from newel to newel, broken at each post between */
	int posts = built_count(&b, "post");
	assert_int_equal(built_count(&b, "bar"), 2 * (posts + 1));
	assert_non_null(strstr(built_complaint(&b), "more than largest_gap, 99 mm"));
	assert_string_equal(b.diags.first->hint, "write infill.bars: 5");
	arena_free(b.arena);
}

static void bars_are_tenoned_into_newels_and_posts(void **state)
{
	struct built b = built_from(OPEN("infill: bars\n"));
	(void)state;
	int mortises = 0;
	for (const struct part *p = b.parts; p; p = p->next)
		for (const struct bore *k = p->bores; k; k = k->next)
			if (k->is_mate && k->fixing == FIXING_LOOSE_TENON &&
				strcmp(k->text, "loose tenon, bar") == 0)
				mortises += p->count;
	assert_int_equal(mortises, 2 * built_count(&b, "bar"));
	arena_free(b.arena);
}

static void a_panel_has_room_to_move_in_its_ploughs(void **state)
{
	struct built b =
		built_from(OPEN("infill: {kind: panel, plough: 10 mm, panel_gap: 2 mm}\n"));
	(void)state;
	/* square to the rake: rail 60, subrail 20 and shoe 32 come off, two ploughs less two gaps
	 * are added */
	double between = 900 / sqrt(1 + slope * slope) - 60 - 20 - 32;
	assert_near(built_part(&b, "panel", 0)->size.width, between + 2 * (10 - 2), 1e-6);
	assert_int_equal(built_part(&b, "panel", 0)->stuff, STUFF_SHEET);
	arena_free(b.arena);
}

/* The side opens at step 3, 500 along: its newel of 90 stands there, a post of 140 beside it
 * reaches to 730, and the nosing above stands from 750 - 25 = 725 on. */
static void a_post_beside_a_panelled_newel_keeps_clear_of_the_nosing_above(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\nfloors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: {side: open, from_step: 3}, segments: "
		"[{risers: 10, run: 250}]}\n"
		"treads: {thickness: 30, nosing: 25, nosing_radius: 10, side_overhang: 32}\n"
		"newels: {section: 90, build: panelled}\n"
		"infill: {kind: bars, shoe: no, post: 140}\n");
	(void)state;
	const struct diag *f = b.diags.first;
	while (f && !strstr(f->text, "the post at the foot of the rail"))
		f = f->next;
	assert_non_null(f);
	assert_string_equal(f->text,
		"the post at the foot of the rail comes 5 mm into the nosing above its tread");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_post_beside_a_panelled_newel_keeps_clear_of_the_nosing_above),
		cmocka_unit_test(a_foot_has_a_slot_along_the_stair_longer_than_its_dowel),
		cmocka_unit_test(every_foot_has_its_round_hole_in_the_tread_under_it),
		cmocka_unit_test(holes_lie_half_a_baluster_and_half_a_tread_on_from_the_riser),
		cmocka_unit_test(a_dowel_that_comes_out_in_the_nosings_round_is_refused),
		cmocka_unit_test(balusters_of_a_tread_are_one_unit_with_their_cross_pieces),
		cmocka_unit_test(rows_lie_on_the_rake_or_level_at_their_heights),
		cmocka_unit_test(a_level_row_is_mortised_at_the_same_distance_from_every_foot),
		cmocka_unit_test(mortises_from_both_sides_do_not_meet_in_a_baluster),
		cmocka_unit_test(rows_that_run_into_each_other_are_refused),
		cmocka_unit_test(a_row_beyond_the_tops_is_refused),
		cmocka_unit_test(a_round_baluster_has_flats_as_wide_as_its_cross_pieces),
		cmocka_unit_test(a_fillet_is_as_long_as_the_gap_on_the_rake),
		cmocka_unit_test(under_a_subrail_balusters_end_in_its_plough),
		cmocka_unit_test(a_square_top_is_as_long_in_front_as_behind),
		cmocka_unit_test(square_tops_that_touch_with_an_arris_are_told_once_at_their_key),
		cmocka_unit_test(
			a_plough_hides_square_tops_where_it_is_as_deep_as_they_are_out_of_square),
		cmocka_unit_test(square_tops_under_a_level_rail_meet_it_whole),
		cmocka_unit_test(a_plough_through_the_shoe_is_refused),
		cmocka_unit_test(a_long_flight_of_bars_gets_posts_on_its_treads),
		cmocka_unit_test(too_few_bars_are_drawn_and_told_the_number_it_takes),
		cmocka_unit_test(bars_are_tenoned_into_newels_and_posts),
		cmocka_unit_test(a_panel_has_room_to_move_in_its_ploughs),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
