/*
 * Every list against the solids: nothing is counted twice, nothing forgotten.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <stdlib.h>

#include "listed_jobs.h"
#include "lists/nominal.h"
#include "near.h"

/* ---- the cut list ---- */

static void every_piece_is_listed(const struct listed *l)
{
	const struct list *cut = lists_find(l->lists, "cut");
	int row = 0, pieces = 0;

	for (const struct part *p = l->built.parts; p; p = p->next) {
		if (part_is_existing(p))
			continue;
		assert_string_equal(cell(cut, row, "mark")->text, p->mark);
		assert_near(cell(cut, row, "make")->number, p->count, 0);
		pieces += p->count;
		row++;
	}
	assert_int_equal(row, cut->row_count);
	assert_near(sum(cut, "make"), pieces, 0);
}

static void every_piece_that_stands_in_the_house_is_on_the_cut_list_once(void **state)
{
	with_every_job(state, every_piece_is_listed);
}

static void add_vec(struct extent *e, const struct solid *s)
{
	for (int i = 0; i < s->n; i++) {
		extent_stretch(e, s->a[i]);
		extent_stretch(e, s->b[i]);
	}
}

static int by_length(const void *a, const void *b)
{
	double x = *(const double *)a, y = *(const double *)b;

	return (x > y) - (x < y);
}

/* Least side first. */
static void sides_of(const struct part *p, double *sides)
{
	struct extent e = { { INFINITY, INFINITY, INFINITY }, { -INFINITY, -INFINITY, -INFINITY } };

	for (const struct solid *s = p->solids; s; s = s->next)
		add_vec(&e, s);
	sides[0] = e.high.x - e.low.x;
	sides[1] = e.high.y - e.low.y;
	sides[2] = e.high.z - e.low.z;
	qsort(sides, 3, sizeof(*sides), by_length);
}

/* A stringer is listed by its plank, and what is bought by the piece as the maker sizes it. */
static void sizes_hold_the_solids(const struct listed *l)
{
	for (const struct part *p = l->built.parts; p; p = p->next) {
		double solid[3], listed[3] = { p->size.length, p->size.width, p->size.thickness };
		if (part_is_existing(p) || p->stuff == STUFF_BOUGHT)
			continue;
		sides_of(p, solid);
		qsort(listed, 3, sizeof(*listed), by_length);
		for (int i = 0; i < 3; i++) {
			assert_true(solid[i] <= listed[i] + 0.01);
			assert_true(p->stringer || solid[i] >= listed[i] - 0.01);
		}
	}
}

static void finished_sizes_are_the_boxes_round_the_solids(void **state)
{
	with_every_job(state, sizes_hold_the_solids);
}

static void blanks_hold_the_pieces(const struct listed *l)
{
	for (const struct blank *b = l->blanks; b; b = b->next) {
		double solid[3];
		sides_of(b->part, solid);
		double box = solid[0] * solid[1] * solid[2];
		double rough =
			b->each * b->rough_length * b->rough_width * fmax(b->nominal, b->thickness);
		assert_true(rough >= box * (1 - 1e-9) || b->stuff == STUFF_PLANK);
		assert_true(b->rough_length >= b->length - 1e-6);
		assert_true(b->rough_width >= b->width - 1e-6);
	}
}

static void out_of_every_blank_its_piece_can_be_made(void **state)
{
	with_every_job(state, blanks_hold_the_pieces);
}

static double number(const struct list *l, int row, const char *key)
{
	return cell(l, row, key)->number;
}

/* Of a piece that is sawn out by itself: as thick as its board at most, and as wide and as long as
 * it comes off the saw at most. */
static void finished_and_rough_agree(const struct listed *l)
{
	const struct list *cut = lists_find(l->lists, "cut");

	for (const struct blank *b = l->blanks; b; b = b->next) {
		int r = 0;
		while (strcmp(cell(cut, r, "mark")->text, b->part->mark) != 0)
			r++;
		if (b->each > 1 || b->stuff == STUFF_PLANK)
			continue;
		assert_true(number(cut, r, "thickness") <= number(cut, r, "nominal") + 1e-6);
		assert_true(number(cut, r, "width") <= number(cut, r, "rough_width") + 1e-6);
		assert_true(number(cut, r, "length") <= number(cut, r, "rough_length") + 1e-6);
	}
}

static void finished_and_rough_sizes_lie_the_same_way(void **state)
{
	with_every_job(state, finished_and_rough_agree);
}

/* A shoe of 57 x 32 lies flat out of one board, whichever way its own axes go; a front strip 45
 * thick comes out of a thinner board on its edge. */
static void a_piece_is_listed_as_it_lies_in_its_board(void **state)
{
	struct listed l = listed_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				      "floors: {total_rise: 1800}\n"
				      "stair: {width: 900, left: wall, right: open,\n"
				      "  segments: [{risers: 10, run: 250}]}\n"
				      "treads: {thickness: 45, nosing: 27}\n"
				      "infill: {kind: panel, strip_width: 57, shoe_depth: 32}\n");
	const struct list *cut = lists_find(l.lists, "cut");
	int shoes = 0, strips = 0;
	(void)state;
	for (int r = 0; r < cut->row_count; r++) {
		bool on_edge = strcmp(cell(cut, r, "grain")->text, "along, on edge") == 0;
		if (strcmp(cell(cut, r, "part")->text, "shoe") == 0) {
			assert_near(number(cut, r, "thickness"), 32, 1e-9);
			assert_near(number(cut, r, "width"), 57, 1e-9);
			assert_false(on_edge);
			shoes++;
		}
		if (strcmp(cell(cut, r, "part")->text, "tread front strip") == 0) {
			assert_near(number(cut, r, "width"), 45, 1e-9);
			assert_true(on_edge);
			strips++;
		}
	}
	assert_true(shoes > 0 && strips > 0);
	arena_free(l.built.arena);
}

/* ---- wood ---- */

static void wood_adds_up(const struct listed *l)
{
	const struct list *lumber = lists_find(l->lists, "lumber");
	const struct list *buying = lists_find(l->lists, "buying");
	double pieces = 0, boards = 0;

	for (const struct blank *b = l->blanks; b; b = b->next)
		pieces += b->stuff == STUFF_MOULDING ? 0 : blank_count(b);
	for (const struct cut_group *g = l->groups; g; g = g->next)
		boards += g->total;
	assert_near(sum(lumber, "pieces"), pieces, 0);
	assert_near(sum(buying, "count"), boards, 0);
	for (int r = 0; r < lumber->row_count; r++)
		assert_true(cell(lumber, r, "rough")->number <=
				cell(lumber, r, "bought")->number * (1 + 1e-9) ||
			isnan(cell(lumber, r, "used_percent")->number));
}

static void wood_and_boards_add_up_to_the_blanks(void **state)
{
	with_every_job(state, wood_adds_up);
}

static void running_length_adds_up(const struct listed *l)
{
	const struct list *mouldings = lists_find(l->lists, "mouldings");
	bool inches = l->built.stair->job->about.units == UNITS_INCHES;
	double length = 0;

	for (const struct blank *b = l->blanks; b; b = b->next)
		if (b->stuff == STUFF_MOULDING)
			length += (b->pieces + b->spares) * b->part->size.length;
	assert_near(sum(mouldings, "finished") * (inches ? 304.8 : 1000), length, 1e-3);
}

static void running_mouldings_add_up_to_their_parts(void **state)
{
	with_every_job(state, running_length_adds_up);
}

/* ---- hardware ---- */

static void hardware_is_in_the_holes(const struct listed *l)
{
	int holes = 0;

	for (const struct part *p = l->built.parts; p; p = p->next) {
		for (const struct bore *b = p->bores; b; b = b->next) {
			holes += !b->is_mate && b->fixing != FIXING_NONE ? p->count : 0;
		}
		holes += !part_is_existing(p) && p->stuff == STUFF_BOUGHT ? p->count : 0;
	}
	assert_near(sum(lists_find(l->lists, "hardware"), "count"), holes, 0);
}

static void a_newels_floor_bolt_is_as_long_as_both_its_halves(void **state)
{
	struct listed l = listed_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				      "floors: {total_rise: 1800}\n"
				      "stair: {width: 900, left: wall, right: open,\n"
				      "  segments: [{risers: 10, run: 250}]}\n"
				      "stringers: {open: sawtooth}\n");
	const struct list *hardware = lists_find(l.lists, "hardware");
	int found = 0;
	(void)state;
	for (int i = 0; i < hardware->row_count * hardware->column_count; i++)
		found += strcmp(hardware->cells[i].text, "10 x 180") == 0;
	assert_int_equal(found, 1);
	arena_free(l.built.arena);
}

static void hardware_is_counted_from_the_holes_it_goes_into(void **state)
{
	with_every_job(state, hardware_is_in_the_holes);
}

/* The note of the piece, on its sheet, and the boards that are bought. */
static void plies_are_told_alike(const struct listed *l)
{
	struct lettering how = job_lettering(l->built.stair->job);

	for (const struct blank *b = l->blanks; b; b = b->next) {
		const char *note = b->part->note,
			   *told = note ? strstr(note, "plies out of ") : NULL;
		const char *bought = how.units == UNITS_INCHES
			? nominal_letter(l->built.arena, how, b->nominal)
			: length_letter(l->built.arena, how, b->nominal);
		if (told)
			assert_memory_equal(told + strlen("plies out of "), bought, strlen(bought));
		assert_true(told || b->part->makeup.plies < 2 || b->part->kind != &part_newel);
	}
}

static void plies_come_out_of_the_boards_that_are_bought(void **state)
{
	with_every_job(state, plies_are_told_alike);
}

/* By 1/64 in or 0.1 mm a ply at most, and never too little. */
static void plies_fill_their_piece(const struct listed *l)
{
	bool inches = l->built.stair->job->about.units == UNITS_INCHES;
	double step = inches ? 25.4 / 64 : 0.1;

	for (const struct blank *b = l->blanks; b; b = b->next) {
		int plies = b->part->makeup.plies;
		double over = plies * b->thickness - b->part->size.thickness;
		if (plies < 2 || b->part->makeup.gang > 1)
			continue;
		assert_true(over > -1e-6 && over < plies * step + 1e-6);
	}
}

static void plies_are_planed_so_that_they_fill_their_piece(void **state)
{
	with_every_job(state, plies_fill_their_piece);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_piece_that_stands_in_the_house_is_on_the_cut_list_once),
		cmocka_unit_test(finished_sizes_are_the_boxes_round_the_solids),
		cmocka_unit_test(out_of_every_blank_its_piece_can_be_made),
		cmocka_unit_test(finished_and_rough_sizes_lie_the_same_way),
		cmocka_unit_test(a_piece_is_listed_as_it_lies_in_its_board),
		cmocka_unit_test(wood_and_boards_add_up_to_the_blanks),
		cmocka_unit_test(running_mouldings_add_up_to_their_parts),
		cmocka_unit_test(a_newels_floor_bolt_is_as_long_as_both_its_halves),
		cmocka_unit_test(hardware_is_counted_from_the_holes_it_goes_into),
		cmocka_unit_test(plies_come_out_of_the_boards_that_are_bought),
		cmocka_unit_test(plies_are_planed_so_that_they_fill_their_piece),
	};

	return cmocka_run_group_tests(tests, make_jobs, free_jobs);
}
