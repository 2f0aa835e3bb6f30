/*
 * Boards and what is cut out of them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "listed.h"
#include "near.h"

/* Ten risers, nine of them 180 wide and the first 153; all of 900. */
#define JOB(stock)                                                                                 \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 250}]}\n"       \
	"treads: {thickness: 27, nosing: 25, scribe: 0}\n"                                         \
	"risers: {thickness: 15}\n"                                                                \
	"material: {treads: oak, risers: pine, stringers: fir}\n"                                  \
	"stock: {rough_length: 0, rough_width: 0, spare_every: 0, " stock "}\n"

/* No loss but the kerf. */
#define WHOLE "end_trim: 0, spare: 0, kerf: 3, "

enum { SAWN_RISERS = 20 }; /* 15, and 5 for planing */

static double kerf_of(const struct listed *l)
{
	return l->built.stair->job->stock.kerf;
}

static void check_strip(const struct listed *l, const struct cut_strip *s, double room)
{
	double used = -kerf_of(l);

	for (int i = 0; i < s->piece_count; i++) {
		const struct cut_piece *p = &s->pieces[i];
		assert_true(p->blank->rough_width <= s->width + 1e-6);
		used += p->count * (p->blank->rough_length + kerf_of(l));
	}
	assert_near(used, s->used, 1e-6);
	assert_true(used <= room + 1e-6);
}

/* What stands on a board, with a kerf between any two, is no more than the board. */
static void check_board(const struct listed *l, const struct cut_board *b)
{
	double wide = -kerf_of(l);

	for (int i = 0; i < b->strip_count; i++) {
		wide += b->strips[i].width + kerf_of(l);
		check_strip(l, &b->strips[i], b->length - 2 * b->end_trim);
	}
	assert_true(wide <= b->width + 1e-6);
}

static void check_all(const struct listed *l)
{
	for (const struct cut_group *g = l->groups; g; g = g->next) {
		int total = 0;
		for (int i = 0; i < g->board_count; i++) {
			total += g->boards[i].count;
			check_board(l, &g->boards[i]);
		}
		assert_int_equal(total, g->total);
		assert_true(g->aim != CUT_FEWEST || g->bound <= g->total);
		assert_true(g->aim != CUT_CHEAPEST || g->bound <= g->price + 0.01);
	}
	for (const struct blank *b = l->blanks; b; b = b->next)
		assert_int_equal(listed_cut(l->groups, b), blank_count(b));
}

static void every_blank_is_cut_as_often_as_wanted_and_no_board_holds_too_much(void **state)
{
	static const char *const jobs[] = { "jobs/alder-lane.yaml", "jobs/kiln-yard.yaml",
		"templates/starters/full.yaml" };

	(void)state;
	for (int i = 0; i < 3; i++) {
		struct listed l = listed_file(jobs[i]);
		assert_non_null(l.groups);
		check_all(&l);
		arena_free(l.built.arena);
	}
}

/* 4 x 900 and 3 kerfs of 3 are 3609. */
static void the_last_piece_of_a_board_needs_no_kerf_behind_it(void **state)
{
	struct listed exact = listed_from(JOB(WHOLE "widths: [180], lengths: [3609]"));
	struct listed less = listed_from(JOB(WHOLE "widths: [180], lengths: [3608]"));

	(void)state;
	assert_int_equal(listed_group(&exact, "pine", SAWN_RISERS)->total, 3);
	assert_int_equal(listed_group(&less, "pine", SAWN_RISERS)->total, 4);
	arena_free(exact.built.arena);
	arena_free(less.built.arena);
}

/* Two strips of 180 and a kerf of 3 are 363. */
static void strips_side_by_side_have_a_kerf_between_them(void **state)
{
	struct listed exact = listed_from(JOB(WHOLE "widths: [363], lengths: [3609]"));
	struct listed less = listed_from(JOB(WHOLE "widths: [362], lengths: [3609]"));

	(void)state;
	assert_int_equal(listed_group(&exact, "pine", SAWN_RISERS)->total, 2);
	assert_int_equal(listed_group(&less, "pine", SAWN_RISERS)->total, 3);
	arena_free(exact.built.arena);
	arena_free(less.built.arena);
}

/* With 50 off either end and a tenth for knots 4100 leave 3590: three pieces, not four. */
static void trim_and_what_is_left_for_knots_come_off_the_length(void **state)
{
	struct listed l = listed_from(
		JOB("end_trim: 50, spare: 0.1, kerf: 3, widths: [180], lengths: [4100]"));

	(void)state;
	assert_int_equal(listed_group(&l, "pine", SAWN_RISERS)->total, 4);
	assert_true(listed_group(&l, "pine", SAWN_RISERS)->is_proved);
	arena_free(l.built.arena);
}

/* The first riser, of 153, stands on the third board of the ones of 180. */
static void a_narrow_piece_may_come_out_of_a_wide_strip(void **state)
{
	struct listed l = listed_from(JOB(WHOLE "widths: [180], lengths: [3609]"));
	const struct cut_group *g = listed_group(&l, "pine", SAWN_RISERS);

	(void)state;
	assert_int_equal(g->total, 3);
	assert_true(g->is_proved);
	check_all(&l);
	arena_free(l.built.arena);
}

/* 900 on a board of 950 with 20 off either end: more than the 815 that are left of it with knots,
 * less than the 910 of a clear one. */
static void a_piece_as_long_as_the_board_comes_out_of_a_clear_one(void **state)
{
	struct listed l = listed_from(
		JOB("end_trim: 20, spare: 0.1, kerf: 3, widths: [250], lengths: [950]"));

	(void)state;
	assert_int_equal(listed_group(&l, "pine", SAWN_RISERS)->misfit_count, 0);
	assert_int_equal(listed_group(&l, "pine", SAWN_RISERS)->total, 10);
	arena_free(l.built.arena);
}

static void a_piece_longer_than_any_board_is_told_and_still_listed(void **state)
{
	struct listed l = listed_from(JOB(WHOLE "widths: [250], lengths: [899]"));
	const struct cut_group *g = listed_group(&l, "pine", SAWN_RISERS);

	(void)state;
	assert_int_equal(g->total, 0);
	assert_int_equal(g->misfit_count, 2);
	assert_string_equal(built_complaint(&l.built),
		"riser R1 is 900 mm x 153 mm rough; the largest board on offer is 899 mm x 250 mm, "
		"of which 899 mm can be used");
	assert_int_equal(l.built.diags.errors, 0);
	arena_free(l.built.arena);
}

/* Boards of one width are on offer, and a piece is 6 wider before it is planed. */
#define SIX_MORE(rise, run, treads, width)                                                         \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: " rise "}\n"                                                         \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: " run "}]}\n"   \
	"treads: {thickness: 27, nosing: 25" treads "}\n"                                          \
	"stock: {rough_width: 6, " WHOLE "widths: [" width "], lengths: [3 m]}\n"

static void strips_go_into_their_boards_as_lettered(const char *job)
{
	struct listed l = listed_from(job);
	int strips = 0;

	for (const struct cut_group *g = l.groups; g; g = g->next)
		for (int i = 0; i < g->board_count; i++) {
			const struct cut_board *b = &g->boards[i];
			double wide = (b->strip_count - 1) * kerf_of(&l);
			for (int k = 0; k < b->strip_count; k++, strips++)
				wide += length_lettered_value(job_lettering(l.built.stair->job),
					b->strips[k].width);
			assert_true(g->stuff != STUFF_BOARD || wide <= b->width + 1e-6);
		}
	assert_true(strips > 10);
	check_all(&l);
	arena_free(l.built.arena);
}

/* Two of 122 1/2 glued up to a body of 245, 6 more of each: with a kerf of 3 they are 260 wide, but
 * nobody who reads 129 and 129 gets both out of that.  Nor three risers of 180.6, 187 each, out of
 * 566. */
static void what_is_lettered_of_strips_goes_into_their_board(void **state)
{
	(void)state;
	strips_go_into_their_boards_as_lettered(SIX_MORE("1800", "250", "", "260"));
	strips_go_into_their_boards_as_lettered(SIX_MORE("1806", "250", "", "566"));
}

/* A riser of 180.2 and its 6 are 187 in whole millimetres, and go into 186 1/2 all the same. */
static void what_just_goes_into_the_widest_board_comes_out_of_it(void **state)
{
	struct listed l = listed_from(SIX_MORE("1802", "250", "", "186.5"));
	double most = 0;

	(void)state;
	for (const struct blank *b = l.blanks; b; b = b->next)
		if (strcmp(b->part->name, "riser") == 0)
			most = fmax(most, b->rough_width);
	assert_near(most, 186.5, 1e-9);
	check_all(&l);
	arena_free(l.built.arena);
}

static void bodies_come_out_of(const char *job, int boards, double width, double rough)
{
	struct listed l = listed_from(job);
	int bodies = 0;

	for (const struct blank *b = l.blanks; b; b = b->next) {
		if (strcmp(b->part->name, "tread body") != 0)
			continue;
		assert_int_equal(b->each, boards);
		assert_near(b->width, width, 1e-9);
		assert_near(b->rough_width, rough, 1e-9);
		bodies++;
	}
	assert_true(bodies > 0);
	check_all(&l);
	arena_free(l.built.arena);
}

/* 245 out of boards of 90 less 6: three, of 81 2/3.  247 out of 89 less 6: three again, of 82 1/3
 * or 83 as the saw is set; but not out of 88 1/2 less 6, where a fourth makes them 61 3/4 or 62. */
static void boards_that_the_saw_makes_too_wide_for_what_is_on_offer_are_one_more(void **state)
{
	(void)state;
	bodies_come_out_of(SIX_MORE("1800", "250", ", widest_board: 300", "90"), 3, 82, 88);
	bodies_come_out_of(SIX_MORE("1800", "252", ", widest_board: 300", "89"), 3, 83, 89);
	bodies_come_out_of(SIX_MORE("1800", "252", ", widest_board: 300", "88.5"), 4, 62, 68);
}

/* A body of 245 is made of two boards as a rule, 6 in the widest; where the widest on offer is 100
 * either is glued up of two: a quarter is 61 1/4, and 62 is the next that a rule shows. */
static void what_is_wider_than_any_board_is_glued_up(void **state)
{
	(void)state;
	bodies_come_out_of(JOB(WHOLE "widths: [100], lengths: [3609]"), 4, 62, 62);
}

/* A body of 245 goes on no board but the one of 900; a front strip, longer by its overhang, on none
 * but the one of 2000. */
static void the_widest_and_the_longest_piece_may_come_from_boards_of_different_lengths(void **state)
{
	struct listed l = listed_from(
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"
		"treads: {thickness: 27, nosing: 25, scribe: 0}\n"
		"material: {treads: oak, balustrade: ash}\n"
		"stock: {rough_length: 0, rough_width: 0, spare_every: 0, " WHOLE
		"boards: [{species: oak, width: 250, lengths: [900]}, "
		"{species: oak, width: 100, lengths: [2000]}]}\n");

	(void)state;
	assert_null(l.built.diags.first);
	check_all(&l);
	arena_free(l.built.arena);
}

#define PRICED                                                                                     \
	"boards: [{species: pine, width: 180, lengths: [1900, 3609], price: 10}, "                 \
	"{species: pine, width: 363, lengths: [3609], price: "

/* By the length a board of 3609 is 18.99 when one of 1900 is 10, and holds four: ten pieces are
 * cheapest on two of those and one of 1900, 47.98.  A double width at 37 holds eight: with a short
 * one 47. */
static void the_cheapest_boards_are_found_over_widths_and_lengths(void **state)
{
	struct listed dear = listed_from(JOB(WHOLE PRICED "40}]"));
	struct listed cheap = listed_from(JOB(WHOLE PRICED "37}]"));
	const struct cut_group *g = listed_group(&dear, "pine", SAWN_RISERS);
	const struct cut_group *h = listed_group(&cheap, "pine", SAWN_RISERS);

	(void)state;
	assert_int_equal(g->aim, CUT_CHEAPEST);
	assert_near(g->price, 2 * 18.99 + 10, 1e-6);
	assert_near(h->price, 37 + 10, 1e-6);
	assert_true(g->is_proved && h->is_proved);
	check_all(&dear);
	check_all(&cheap);
	arena_free(dear.built.arena);
	arena_free(cheap.built.arena);
}

static void one_spare_is_cut_for_so_many_alike(void **state)
{
	struct listed l = listed_from(JOB(WHOLE "widths: [250], lengths: [3609]"));
	struct listed spare = listed_from("pitchboard: 1\n"
					  "job: {name: Test, units: millimetres}\n"
					  "floors: {total_rise: 1800}\n"
					  "stair: {width: 900, left: wall, right: wall, "
					  "segments: [{risers: 10, run: 250}]}\n"
					  "stock: {spare_every: 4}\n");

	(void)state;
	for (const struct blank *b = l.blanks; b; b = b->next)
		assert_int_equal(b->spares, 0);
	for (const struct blank *b = spare.blanks; b; b = b->next)
		if (b->stuff == STUFF_BOARD)
			assert_int_equal(b->spares, b->part->count / 4);
	arena_free(l.built.arena);
	arena_free(spare.built.arena);
}

/* Pine for risers of 15 is bought 18 thick or 26; 18 planes to no more than 13. */
static void a_species_is_sawn_out_of_the_boards_that_are_named_for_it(void **state)
{
	struct listed l = listed_from(JOB(
		"boards: [{species: pine, thickness: 18, width: 200, lengths: [3 m]}, {species: "
		"pine, thickness: 26, width: 200, lengths: [3 m]}]"));
	(void)state;
	for (const struct blank *b = l.blanks; b; b = b->next)
		if (b->part->kind == &part_riser)
			assert_near(b->nominal, 26, 1e-9);
	check_all(&l);
	arena_free(l.built.arena);
}

/* Usual boards are 100 thick at most, and come out at 95. */
static void what_is_thicker_than_usual_boards_is_glued_up_unless_one_is_named_for_it(void **state)
{
	static const char job[] = "pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				  "floors: {total_rise: 1800}\n"
				  "stair: {width: 900, left: open, right: wall, "
				  "segments: [{risers: 10, run: 250}]}\n"
				  "newels: {section: 110, build: solid}\n"
				  "material: {newels: oak}\n";
	struct arena *a = arena_new();
	struct listed usual = listed_from(job);
	struct listed named = listed_from(arena_printf(a,
		"%sstock: {boards: [{species: oak, thickness: 120, width: 200, lengths: [3 m]}]}\n",
		job));
	(void)state;
	for (const struct blank *b = usual.blanks; b; b = b->next)
		if (b->part->newel)
			assert_true(b->each == 2 && near_enough(b->thickness, 55));
	for (const struct blank *b = named.blanks; b; b = b->next)
		if (b->part->newel)
			assert_true(b->each == 1 && near_enough(b->nominal, 120));
	check_all(&usual);
	check_all(&named);
	arena_free(usual.built.arena);
	arena_free(named.built.arena);
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_blank_is_cut_as_often_as_wanted_and_no_board_holds_too_much),
		cmocka_unit_test(the_last_piece_of_a_board_needs_no_kerf_behind_it),
		cmocka_unit_test(strips_side_by_side_have_a_kerf_between_them),
		cmocka_unit_test(trim_and_what_is_left_for_knots_come_off_the_length),
		cmocka_unit_test(a_narrow_piece_may_come_out_of_a_wide_strip),
		cmocka_unit_test(a_piece_as_long_as_the_board_comes_out_of_a_clear_one),
		cmocka_unit_test(a_piece_longer_than_any_board_is_told_and_still_listed),
		cmocka_unit_test(what_is_lettered_of_strips_goes_into_their_board),
		cmocka_unit_test(what_just_goes_into_the_widest_board_comes_out_of_it),
		cmocka_unit_test(
			boards_that_the_saw_makes_too_wide_for_what_is_on_offer_are_one_more),
		cmocka_unit_test(what_is_wider_than_any_board_is_glued_up),
		cmocka_unit_test(
			the_widest_and_the_longest_piece_may_come_from_boards_of_different_lengths),
		cmocka_unit_test(the_cheapest_boards_are_found_over_widths_and_lengths),
		cmocka_unit_test(one_spare_is_cut_for_so_many_alike),
		cmocka_unit_test(a_species_is_sawn_out_of_the_boards_that_are_named_for_it),
		cmocka_unit_test(
			what_is_thicker_than_usual_boards_is_glued_up_unless_one_is_named_for_it),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
