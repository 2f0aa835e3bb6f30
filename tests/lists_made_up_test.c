/*
 * What is made up of several, and of what several are made: what the saw is set to leaves enough.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "listed_jobs.h"
#include "near.h"
#include "sheets/piece_words.h"

#define OPEN_STAIR(run, more)                                                                      \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: " run "}]}\n"   \
	"treads: {thickness: 27, nosing: 25, widest_board: 90}\n" more

#define HOUSED "stringers: {open: {kind: housed, thickness: 32}}\n"

/* Behind the last row when the work has none for the mark. */
static int row_of(const struct list *setups, const char *work, const char *mark)
{
	int r = 0;

	while (r < setups->row_count &&
		(strcmp(cell(setups, r, "work")->text, work) != 0 ||
			!names(cell(setups, r, "pieces")->text, mark)))
		r++;
	return r;
}

/* As somebody reads it off the list who sets the machine; 0: the work has no row for the part. */
static double set_to(const struct listed *l, const char *work, const struct part *p)
{
	const struct list *setups = lists_find(l->lists, "setups");
	int r = row_of(setups, work, p->mark);

	if (r == setups->row_count)
		return 0;
	return length_read(l->built.arena, cell(setups, r, "stop")->text,
		l->built.stair->job->about.units)
		.mm;
}

static double step_of(const struct listed *l, double inches, double mm)
{
	return l->built.stair->job->about.units == UNITS_INCHES ? 25.4 * inches : mm;
}

/* ---- edge to edge ---- */

static int boards_across(const struct blank *b)
{
	return b->each / (b->plies > 1 ? b->plies : 1);
}

/* Never less than the panel, and no board by more than what the list letters. */
static void boards_fill_their_panel(const struct listed *l)
{
	double step = step_of(l, 1.0 / 16, 1);

	for (const struct blank *b = l->blanks; b; b = b->next) {
		int n = boards_across(b);
		if (n < 2)
			continue;
		double over = n * set_to(l, "Rip while long", b->part) - blank_finished(b).width;
		assert_true(over > -1e-6 && over < n * step + 1e-6);
	}
}

static void boards_are_ripped_so_that_they_fill_their_panel(void **state)
{
	with_every_job(state, boards_fill_their_panel);
	for (int run = 245; run < 257; run++) {
		struct arena *a = arena_new();
		struct listed mm = listed_from(arena_printf(a, OPEN_STAIR("%d", ""), run));
		struct listed inches = listed_from(arena_printf(a,
			"pitchboard: 1\njob: {name: Test}\nfloors: {total_rise: 71}\n"
			"stair: {width: 36, left: wall, right: wall,\n"
			"  segments: [{risers: 10, run: 9 %d/16}]}\ntreads: {widest_board: 3 1/2}\n"
			"skirts: {wall: plain}\n",
			run - 242));
		boards_fill_their_panel(&mm);
		boards_fill_their_panel(&inches);
		arena_free(mm.built.arena);
		arena_free(inches.built.arena);
		arena_free(a);
	}
}

/* A body of 247 out of boards of 90: three, of which a third each is 82 1/3. */
static void a_glued_piece_says_on_its_sheet_what_the_saw_is_set_to(void **state)
{
	struct listed l = listed_from(OPEN_STAIR("252", ""));
	const struct part *body = built_part(&l.built, "tread body", 1);
	(void)state;
	assert_near(body->size.width, 247, 1e-9);
	assert_near(set_to(&l, "Rip while long", body), 83, 1e-9);
	assert_near(set_to(&l, "Trim panel", body), 247, 1e-9);
	assert_non_null(strstr(piece_work_words(l.built.arena, l.built.stair, body),
		"3 boards, each 83 wide or more, heart side by turns, trimmed to 247."));
	arena_free(l.built.arena);
}

/* ---- side by side out of one strip ---- */

/* By 1/64 in or 0.1 mm at most, and never too little; the part's own note says the same. */
static void strips_hold_their_wedges(const struct listed *l)
{
	for (const struct blank *b = l->blanks; b; b = b->next) {
		if (b->gang < 2)
			continue;
		const char *work = b->is_turned ? "Plane" : "Rip while long";
		double strip = set_to(l, work, b->part);
		double over = strip - b->part->makeup.gang_width;
		assert_true(over > -1e-6 && over < step_of(l, 1.0 / 64, 0.1) + 1e-6);
		assert_non_null(strstr(b->part->note,
			arena_printf(l->built.arena, "strip %s x ",
				length_say(l->built.arena, ply_lettering(l->built.stair->job),
					strip))));
	}
}

static void a_strip_is_wide_enough_for_the_wedges_that_come_out_of_it(void **state)
{
	struct listed l = listed_from(OPEN_STAIR("250", HOUSED));
	with_every_job(state, strips_hold_their_wedges);
	strips_hold_their_wedges(&l);
	arena_free(l.built.arena);
}

/* ---- short ones ---- */

static const struct blank *blank_named(const struct listed *l, const char *name, int n)
{
	const struct part *p = built_part(&l->built, name, n);
	const struct blank *b = l->blanks;

	while (b && b->part != p)
		b = b->next;
	assert_non_null(b);
	return b;
}

/* A cap of 134, of two plies, where a hand holds nothing under 150: two caps, two long plies. */
static void short_blocks_are_glued_up_and_trimmed_in_a_length_before_they_are_cut_off(void **state)
{
	struct listed l = listed_from(OPEN_STAIR("250",
		"newels: {build: glued, section: 110, cap: {kind: pyramid, thickness: 50}}\n"
		"stock: {short_piece: 300, kerf: 3, rough_length: 25, spare_every: 0}\n"));
	const struct list *setups = lists_find(l.lists, "setups");
	const struct blank *cap = blank_named(&l, "newel cap", 0);
	int trim = row_of(setups, "Trim while long", cap->part->mark);
	int cut = row_of(setups, "Cut to length", cap->part->mark);
	(void)state;
	assert_near(cap->length, 134, 1e-9);
	assert_int_equal(cap->part->makeup.plies, 2);
	assert_int_equal(cap->pieces, 2);
	assert_int_equal(blank_count(cap), 2);
	assert_near(cap->rough_length, 2 * (134 + 3) + 25 + 150, 1e-9);
	assert_true(trim < cut && cut < setups->row_count);
	assert_near(cell(setups, trim, "stop")->number, 134, 1e-9);
	assert_int_equal(row_of(setups, "Trim panel", cap->part->mark), setups->row_count);
	assert_near(set_to(&l, "Cut to length", cap->part), 0, 1e-9);
	arena_free(l.built.arena);
}

/* Of whatever the job calls short, half is what a hand holds: then all wedges of risers are too
 * short, two to a strip, and several strips to a length. */
static void strips_for_short_wedges_are_cut_off_a_length(void **state)
{
	struct listed l = listed_from(OPEN_STAIR("250",
		HOUSED "stock: {short_piece: 400, kerf: 3, rough_length: 25, spare_every: 0}\n"));
	const struct list *setups = lists_find(l.lists, "setups");
	const struct list *cut = lists_find(l.lists, "cut");
	const struct blank *b = blank_named(&l, "riser wedge", 1);
	int strips = (b->pieces + 1) / 2;
	int off = row_of(setups, "Cut to length", b->part->mark);
	(void)state;
	assert_true(b->length < 200 && strips > 1);
	assert_int_equal(b->row, strips);
	assert_int_equal(blank_count(b), 1);
	assert_near(b->rough_length, strips * (b->length + 3) + 25 + 200, 1e-9);
	assert_non_null(strstr(cell(setups, off, "setting")->text, "end of a length, no stop"));
	assert_non_null(strstr(cell(setups, off, "pieces")->text,
		arena_printf(l.built.arena, "%d %s", strips, b->part->mark)));
	assert_true(names(arena_printf(l.built.arena, " %s", cell(setups, off, "short")->text),
		b->part->mark));
	for (int r = 0; r < cut->row_count; r++)
		if (strcmp(cell(cut, r, "mark")->text, b->part->mark) == 0)
			assert_string_equal(cell(cut, r, "ends")->text,
				arena_printf(l.built.arena, "square; %d strips off one length",
					strips));
	arena_free(l.built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(boards_are_ripped_so_that_they_fill_their_panel),
		cmocka_unit_test(a_glued_piece_says_on_its_sheet_what_the_saw_is_set_to),
		cmocka_unit_test(a_strip_is_wide_enough_for_the_wedges_that_come_out_of_it),
		cmocka_unit_test(
			short_blocks_are_glued_up_and_trimmed_in_a_length_before_they_are_cut_off),
		cmocka_unit_test(strips_for_short_wedges_are_cut_off_a_length),
	};

	return cmocka_run_group_tests(tests, make_jobs, free_jobs);
}
