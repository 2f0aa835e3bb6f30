/*
 * Settings of the machines: each once, and every cut of every piece at one of them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "listed_jobs.h"
#include "near.h"

static bool is_equal_row(const struct list *l, int a, int b)
{
	return strcmp(cell(l, a, "work")->text, cell(l, b, "work")->text) == 0 &&
		strcmp(cell(l, a, "setting")->text, cell(l, b, "setting")->text) == 0 &&
		strcmp(cell(l, a, "stop")->text, cell(l, b, "stop")->text) == 0;
}

static void no_setting_is_made_twice(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");

	for (int a = 0; a < setups->row_count; a++)
		for (int b = 0; b < a; b++)
			assert_false(is_equal_row(setups, a, b));
}

static void a_setting_of_the_saw_is_made_once(void **state)
{
	with_every_job(state, no_setting_is_made_twice);
}

static double cuts_of(const struct list *l, const char *work)
{
	double cuts = 0;

	for (int r = 0; r < l->row_count; r++)
		if (strcmp(cell(l, r, "work")->text, work) == 0)
			cuts += cell(l, r, "cuts")->number;
	return cuts;
}

/* Does a row of this work, whose setting begins so, name the part? */
static bool is_named(const struct listed *l, const char *work, const char *setting,
	const struct part *p)
{
	const struct list *setups = lists_find(l->lists, "setups");

	for (int r = 0; r < setups->row_count; r++)
		if (strcmp(cell(setups, r, "work")->text, work) == 0 &&
			strncmp(cell(setups, r, "setting")->text, setting, strlen(setting)) == 0 &&
			names(cell(setups, r, "pieces")->text, p->mark))
			return true;
	return false;
}

/* What is sawn round off its length has no ends. */
static void every_end_is_cut(const struct listed *l)
{
	double ends = 0;

	for (const struct blank *b = l->blanks; b; b = b->next) {
		int made = b->pieces + b->spares;
		bool free = is_named(l, "Shape", "band saw to the outline", b->part);
		if (!b->part->stringer && !free)
			ends += 2 * (b->gang > 1 ? (made + b->gang - 1) / b->gang : made);
	}
	assert_near(cuts_of(lists_find(l->lists, "setups"), "Cut to length"), ends, 0);
}

static void both_ends_of_every_piece_are_cut(void **state)
{
	with_every_job(state, every_end_is_cut);
}

static void stops_fall(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");

	for (int r = 1; r < setups->row_count; r++) {
		double before = cell(setups, r - 1, "stop")->number;
		double now = cell(setups, r, "stop")->number;
		bool same = strcmp(cell(setups, r - 1, "work")->text,
				    cell(setups, r, "work")->text) == 0 &&
			strcmp(cell(setups, r - 1, "setting")->text,
				cell(setups, r, "setting")->text) == 0;
		if (same && !isnan(before) && !isnan(now))
			assert_true(now < before);
	}
}

static void under_one_setting_the_stop_only_moves_one_way(void **state)
{
	with_every_job(state, stops_fall);
}

static void short_ones_are_named(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");
	double limit = l->built.stair->job->stock.short_piece;

	for (int r = 0; r < setups->row_count; r++) {
		double stop = cell(setups, r, "stop")->number;
		bool is_cut = strcmp(cell(setups, r, "work")->text, "Cut to length") == 0;
		if (is_cut && !isnan(stop) && fabs(stop - limit) > 1)
			assert_int_equal(*cell(setups, r, "short")->text != '\0', stop < limit);
	}
}

static void pieces_shorter_than_the_limit_are_called_short(void **state)
{
	with_every_job(state, short_ones_are_named);
}

/* Does a row of this work that names the part stop or guide it at so much, as it is lettered? */
static bool is_guided(const struct listed *l, const char *work, const struct part *p, double at)
{
	const struct list *setups = lists_find(l->lists, "setups");
	double rounded = l->built.stair->job->about.units == UNITS_INCHES ? 25.4 / 32 : 0.5;

	for (int r = 0; r < setups->row_count; r++)
		if (strcmp(cell(setups, r, "work")->text, work) == 0 &&
			names(cell(setups, r, "pieces")->text, p->mark) &&
			fabs(cell(setups, r, "stop")->number - at) <= rounded + 1e-6)
			return true;
	return false;
}

static void sizes_are_settings(const struct listed *l)
{
	for (const struct blank *b = l->blanks; b; b = b->next) {
		if (b->stuff == STUFF_PLANK)
			continue;
		assert_true(b->row > 0 || is_guided(l, "Cut to length", b->part, b->length));
		assert_true(is_guided(l, "Rip while long", b->part, b->width) ||
			is_guided(l, "Trim while long", b->part, blank_finished(b).width) ||
			is_guided(l, "Trim panel", b->part, blank_finished(b).width) ||
			is_named(l, "Shape", "band saw to the outline", b->part));
	}
}

static void both_sizes_of_every_piece_are_set_on_the_saw(void **state)
{
	with_every_job(state, sizes_are_settings);
}

/* Nothing shorter than half of what the job calls short is sawn out by itself, or held against a
 * stop; of what is left of its length after the last cut as much is in the hand. */
static void tiny_ones_are_cut_off(const struct listed *l)
{
	const struct job_stock *stock = &l->built.stair->job->stock;

	for (const struct blank *b = l->blanks; b; b = b->next) {
		bool is_sawn = b->stuff == STUFF_BOARD || b->stuff == STUFF_MOULDING;
		if (!is_sawn || b->length >= stock->short_piece / 2)
			continue;
		double cut_off = b->row * (b->length + stock->kerf);
		int of_one = b->row * (b->gang > 1 ? b->gang : 1);
		assert_true(
			of_one > 0 && of_one * blank_count(b) >= b->each * (b->pieces + b->spares));
		assert_true(b->rough_length - cut_off >= stock->short_piece / 2 - 1e-6);
		assert_false(is_guided(l, "Cut to length", b->part, b->length));
	}
}

static void pieces_too_short_to_hold_are_cut_off_a_length_without_a_stop(void **state)
{
	with_every_job(state, tiny_ones_are_cut_off);
}

static void short_ones_are_shaped_in_their_length(const struct listed *l)
{
	for (const struct blank *b = l->blanks; b; b = b->next) {
		if (b->row == 0)
			continue;
		assert_false(is_named(l, "Trim panel", "", b->part));
		for (const struct feature *f = b->part->features; f; f = f->next)
			if (f->kind == FEATURE_ROUND && !f->goes_round)
				assert_true(is_named(l, "Run while long", "round", b->part) &&
					!is_named(l, "Shape", "round", b->part));
	}
}

static void what_is_short_has_its_edge_run_before_it_is_cut_off(void **state)
{
	with_every_job(state, short_ones_are_shaped_in_their_length);
}

/* A block as high as the first riser, of whatever length, goes under no saw blade. */
static void rounds_are_sawn_free(const struct listed *l)
{
	for (const struct blank *b = l->blanks; b; b = b->next)
		if (strcmp(b->part->name, "riser block") == 0) {
			assert_true(is_named(l, "Shape", "band saw", b->part));
			assert_false(is_named(l, "Cut to length", "", b->part));
		}
}

static void the_block_of_a_starting_step_is_sawn_to_its_outline(void **state)
{
	with_every_job(state, rounds_are_sawn_free);
}

static int row_with(const struct list *l, const char *work, const char *words)
{
	for (int r = 0; r < l->row_count; r++)
		if (strcmp(cell(l, r, "work")->text, work) == 0 &&
			strstr(cell(l, r, "setting")->text, words))
			return r;
	return -1;
}

static struct listed small_job(const char *more)
{
	struct arena *a = arena_new();
	struct listed l = listed_from(arena_printf(a,
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: open,\n"
		"  segments: [{risers: 10, run: 250}]}\n%s",
		more));
	arena_free(a);
	return l;
}

/* Long cuts take off what cross cuts broke out of the edge. */
static void the_slopes_of_a_cap_are_sawn_across_the_grain_first(void **state)
{
	struct listed l = small_job("newels: {cap: {kind: pyramid}}\n");
	const struct list *setups = lists_find(l.lists, "setups");
	int across = row_with(setups, "Saw block", "across the grain");
	int along = row_with(setups, "Saw block", "along the grain");
	(void)state;
	assert_true(across >= 0 && across < along);
	assert_near(cell(setups, across, "cuts")->number, cell(setups, along, "cuts")->number, 0);
	arena_free(l.built.arena);
}

static void a_chamfer_all_round_is_cut_across_the_grain_first(void **state)
{
	struct listed l = small_job("newels: {cap: {kind: chamfered, chamfer: 7}}\n");
	const struct list *setups = lists_find(l.lists, "setups");
	int across = row_with(setups, "Shape", "chamfer 7, across the grain");
	int along = row_with(setups, "Shape", "chamfer 7, along the grain");
	(void)state;
	assert_true(across >= 0 && across < along);
	arena_free(l.built.arena);
}

/* A panel of 12 in strips of 57: 22.5 are left on either side. */
static void a_plough_has_its_width_its_depth_and_its_place(void **state)
{
	struct listed l =
		small_job("infill: {kind: panel, panel_held: all_round, shoe: yes,\n"
			  "  subrail: yes, panel_thickness: 12, strip_width: 57, plough: 8}\n");
	const struct list *setups = lists_find(l.lists, "setups");
	int row = row_with(setups, "Shape", "12 mm wide, 8 mm deep, 22.5 mm from either edge");
	(void)state;
	assert_true(row >= 0);
	for (const struct part *p = l.built.parts; p; p = p->next)
		if (strcmp(p->name, "shoe") == 0 || strcmp(p->name, "subrail") == 0 ||
			strcmp(p->name, "stile") == 0) {
			assert_true(names(cell(setups, row, "pieces")->text, p->mark));
			assert_non_null(strstr(p->features->text, "12 mm wide, 8 mm deep"));
		}
	arena_free(l.built.arena);
}

static void tilted_cuts_are_settings(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");
	double cuts = 0;

	for (const struct blank *b = l->blanks; b; b = b->next)
		for (const struct feature *f = b->part->features; f; f = f->next)
			if (f->kind == FEATURE_SAWN)
				/* along a length once, on a block each */
				cuts += f->sawn.cuts *
					(f->sawn.fence > 0 ? b->pieces + b->spares
							   : blank_lengths(b));
	assert_near(cuts_of(setups, "Bevel while long") + cuts_of(setups, "Saw block"), cuts, 0);
}

static void every_cut_along_the_fence_has_its_setting(void **state)
{
	with_every_job(state, tilted_cuts_are_settings);
}

/* Does some row of the set-ups name the angle beside the work? */
static bool is_set(const struct list *l, const char *words)
{
	for (int r = 0; r < l->row_count; r++)
		if (strstr(cell(l, r, "setting")->text, words))
			return true;
	return false;
}

static void end_angles_are_settings(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");
	struct arena *a = l->built.arena;

	for (const struct blank *b = l->blanks; b; b = b->next) {
		const struct end_cut ends[2] = { b->part->start, b->part->end };
		for (int i = 0; i < 2 && !b->part->stringer; i++) {
			double mitre = fabs(ends[i].mitre), bevel = fabs(ends[i].bevel);
			if (mitre > 0.001)
				assert_true(is_set(setups,
					arena_printf(a, "mitre %s", angle_letter(a, mitre))));
			if (bevel > 0.001)
				assert_true(is_set(setups,
					arena_printf(a, "tilted %s", angle_letter(a, bevel))));
		}
	}
}

static void every_angle_of_an_end_is_set_on_the_saw(void **state)
{
	with_every_job(state, end_angles_are_settings);
}

/* As deep as the part's own feature, which its sheet letters: no second rounding on the way. */
static void waste_is_sawn_as_the_sheet_says(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");
	struct arena *a = l->built.arena;
	struct lettering how = job_lettering(l->built.stair->job);
	how.fraction = how.units == UNITS_INCHES ? 32 : 10;

	for (const struct blank *b = l->blanks; b; b = b->next)
		for (const struct feature *f = b->part->features; f; f = f->next) {
			if (f->kind != FEATURE_WASTE)
				continue;
			const char *leg = length_letter_inches(a, how, f->depth);
			assert_true(f->depth <= b->part->nosing->waste.leg);
			assert_non_null(strstr(f->text, leg));
			assert_true(is_set(setups, arena_printf(a, "%s along each face", leg)));
		}
}

static void the_waste_of_a_nosing_is_sawn_as_its_sheet_says(void **state)
{
	with_every_job(state, waste_is_sawn_as_the_sheet_says);
}

static void every_moulding_is_run(const struct listed *l)
{
	const struct list *setups = lists_find(l->lists, "setups");
	const struct list_cell *work;

	for (const struct blank *b = l->blanks; b; b = b->next) {
		bool is_run = b->stuff != STUFF_MOULDING;
		for (int r = 0; r < setups->row_count && !is_run; r++) {
			work = cell(setups, r, "work");
			is_run = strcmp(work->text, "Run while long") == 0 &&
				names(cell(setups, r, "pieces")->text, b->part->mark);
		}
		assert_true(is_run);
	}
}

static void the_profile_of_every_moulding_has_its_setting(void **state)
{
	with_every_job(state, every_moulding_is_run);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(what_is_short_has_its_edge_run_before_it_is_cut_off),
		cmocka_unit_test(the_block_of_a_starting_step_is_sawn_to_its_outline),
		cmocka_unit_test(a_setting_of_the_saw_is_made_once),
		cmocka_unit_test(both_ends_of_every_piece_are_cut),
		cmocka_unit_test(under_one_setting_the_stop_only_moves_one_way),
		cmocka_unit_test(pieces_shorter_than_the_limit_are_called_short),
		cmocka_unit_test(both_sizes_of_every_piece_are_set_on_the_saw),
		cmocka_unit_test(pieces_too_short_to_hold_are_cut_off_a_length_without_a_stop),
		cmocka_unit_test(the_slopes_of_a_cap_are_sawn_across_the_grain_first),
		cmocka_unit_test(a_chamfer_all_round_is_cut_across_the_grain_first),
		cmocka_unit_test(a_plough_has_its_width_its_depth_and_its_place),
		cmocka_unit_test(every_cut_along_the_fence_has_its_setting),
		cmocka_unit_test(every_angle_of_an_end_is_set_on_the_saw),
		cmocka_unit_test(the_waste_of_a_nosing_is_sawn_as_its_sheet_says),
		cmocka_unit_test(the_profile_of_every_moulding_has_its_setting),
	};

	return cmocka_run_group_tests(tests, make_jobs, free_jobs);
}
