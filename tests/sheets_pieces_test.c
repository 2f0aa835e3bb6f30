/*
 * Pieces on paper: what may be broken out of a long one, and that every different piece has its
 * cell.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "near.h"
#include "parts/piece.h"
#include "sheets/joint_words.h"
#include "sheets/piece_breaks.h"
#include "sheets/piece_section.h"
#include "sheets/piece_view.h"
#include "sheets/piece_words.h"
#include "sheets_of.h"

static const struct part_kind strips = { .name = "strip", .prefix = "Q" };

/* 1000 long, its right end cut to 45 degrees over 40. */
static struct part *strip(struct arena *a)
{
	struct pieces list = { .arena = a, .kind = &strips };
	struct path o = path_begin(a, 4);
	struct part *p = piece_add(&list, "strip", "ash", frame_house());

	path_to(&o, 0, 0);
	path_to(&o, 1000, 0);
	path_to(&o, 960, 40);
	path_to(&o, 0, 40);
	p->outline = path_close(o);
	p->size = (struct part_size){ 1000, 40, 20 };
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, 20);
	return p;
}

static struct bore mortise_at(double x)
{
	struct bore b = { .at = { .u = { 1, 0, 0 }, .v = { 0, 0, -1 }, .w = { 0, -1, 0 } } };

	b.at.origin = vec3(x, 0, 10);
	b.size = bore_oblong(BORE_MORTISE, 40, 8, 25);
	return b;
}

static void only_plain_stretches_are_broken_out(void **state)
{
	struct arena *a = arena_new();
	struct part *p = strip(a);
	(void)state;
	piece_bore(a, p, mortise_at(500));
	struct piece_breaks b = piece_breaks(a, p, 0, 100); /* in no room at all */
	assert_int_equal(b.n, 2);
	assert_near(b.stretch[0].from, 0, 1e-9);
	assert_near(b.stretch[0].to, 480, 1e-9);
	assert_near(b.stretch[1].from, 520, 1e-9);
	assert_near(b.stretch[1].to, 960, 1e-9);
	arena_free(a);
}

/* Of 530 and 390 before and behind the mortise the first is enough, and gives what is wanted. */
static void no_more_is_broken_out_than_is_needed(void **state)
{
	struct arena *a = arena_new();
	struct part *p = strip(a);
	(void)state;
	piece_bore(a, p, mortise_at(550));
	struct piece_breaks b = piece_breaks(a, p, 700, 100);
	assert_int_equal(b.n, 1);
	assert_near(b.stretch[0].to, 530, 1e-9);
	assert_near(breaks_drawn_at(&b, 1000), 700, 1e-9);
	arena_free(a);
}

/* A bolt's hole in the end takes up its depth inwards: before the end there is no piece to break.
 */
static void nothing_is_broken_out_beyond_the_ends(void **state)
{
	struct arena *a = arena_new();
	struct part *p = strip(a);
	struct bore bolt = { .at = { .u = { 0, 1, 0 }, .v = { 0, 0, -1 }, .w = { -1, 0, 0 } } };
	(void)state;
	bolt.at.origin = vec3(0, 20, 10);
	bolt.size = bore_round(10, 45);
	piece_bore(a, p, bolt);
	struct piece_breaks b = piece_breaks(a, p, 0, 20);
	assert_int_equal(b.n, 1);
	assert_near(b.stretch[0].from, 45, 1e-9);
	arena_free(a);
}

static void the_slope_of_an_end_is_never_broken_out(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct piece_breaks b = piece_breaks(a, strip(a), 0, 30);
	assert_int_equal(b.n, 1);
	assert_near(b.stretch[0].to, 960, 1e-9);
	arena_free(a);
}

static void what_lies_beyond_a_break_moves_as_one(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	struct piece_breaks b = piece_breaks(a, strip(a), 0, 100);
	assert_near(breaks_drawn_at(&b, 0), 0, 1e-9);
	assert_near(breaks_drawn_at(&b, 960), 100, 1e-9);
	assert_near(breaks_drawn_at(&b, 1000), 140, 1e-9);
	arena_free(a);
}

static bool is_shown(const struct drawing *g, const char *mark)
{
	for (; g; g = g->next)
		for (const char *const *m = g->shows; m && *m; m++)
			if (strcmp(*m, mark) == 0)
				return true;
	return false;
}

static void every_piece_but_a_stringer_has_a_cell(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, left: wall, right: open}\n");
	(void)state;
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 420, 297);
	for (const struct part *p = b.parts; p; p = p->next)
		assert_int_equal(is_shown(sheets, p->mark), !part_is_existing(p) && !p->stringer);
	arena_free(b.arena);
}

static bool is_any_too_small(const struct drawing *g)
{
	for (; g; g = g->next)
		if (g->runs_over)
			return true;
	return false;
}

static void a_piece_too_long_for_the_paper_is_drawn_lap_by_lap(void **state)
{
	struct built b = long_skirt();
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 210, 160);
	(void)state;
	assert_true(is_shown(sheets, "F1"));
	assert_false(is_any_too_small(sheets));
	assert_true(count_texts(sheets, "F1  wall skirt, cut round the steps, continued") > 1);
	arena_free(b.arena);
}

/* The scale lettered under the name of a piece; "" where there is none. */
static const char *scale_under(const struct drawing *g, const char *name)
{
	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next) {
			if (k->kind != MARK_TEXT || strcmp(k->text.text, name) != 0)
				continue;
			for (k = k->next; k && k->kind == MARK_TEXT; k = k->next)
				if (strncmp(k->text.text, "Scale ", 6) == 0)
					return k->text.text;
			return "";
		}
	return "";
}

/* The bottom one and the one that hangs on the string differ in length, and in what is figured
 * across them. */
static void newels_of_one_job_come_out_at_one_scale(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2775}\nopening: {length: 3400, width: 1065, floor_thickness: "
		"290}\n"
		"stair: {width: 1000, left: wall, right: open, segments: [{risers: 15, run: "
		"265}]}\n"
		"stringers: {open: {kind: housed, thickness: 40}, foot: finished_floor}\n"
		"newels: {build: glued, above_rail: 90, floor_fixing: plate}\n"
		"rail: {profile: flat_oval, width: 60, depth: 40, height: 920, level_runs: [\n"
		"  {side: right, direction: back, length: 3440, height: 1000}]}\n"
		"infill: {kind: bars, bar_width: 30, bar_thickness: 20}\n");
	(void)state;
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 420, 297);
	int newels = 0;
	for (const struct part *p = b.parts; p; p = p->next) {
		if (!p->newel)
			continue;
		const char *name = arena_printf(b.arena, "%s  newel", p->mark);
		assert_string_equal(scale_under(sheets, name), "Scale 1:5.");
		newels++;
	}
	assert_int_equal(newels, 4);
	arena_free(b.arena);
}

static void a_paper_too_small_for_any_lap_says_so(void **state)
{
	struct built b = long_skirt();
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 210, 90);
	(void)state;
	assert_true(is_shown(sheets, "F1"));
	assert_true(is_any_too_small(sheets));
	arena_free(b.arena);
}

static void laps_follow_each_other_from_end_to_end(void **state)
{
	struct arena *a = arena_new();
	(void)state;
	const struct piece_breaks *laps = piece_laps(a, strip(a), 4);
	assert_true(laps[0].from == -INFINITY && laps[3].to == INFINITY);
	for (int i = 1; i < 4; i++)
		assert_near(laps[i].from, laps[i - 1].to, 1e-9);
	arena_free(a);
}

/* The mortise takes up 480 to 520: half-way along there is no room to part it. */
static void laps_part_beside_a_hole(void **state)
{
	struct arena *a = arena_new();
	struct part *p = strip(a);
	(void)state;
	piece_bore(a, p, mortise_at(500));
	double at = piece_laps(a, p, 2)[0].to;
	assert_true(at < 480 || at > 520);
	arena_free(a);
}

/* 6 5/16 in nine plies: 0.7014 in each; 9 x 45/64 are 6.328, 9 x 11/16 would be 6.1875. */
static void plies_are_lettered_so_that_they_fill_the_piece(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test}\n"
				    "floors: {total_rise: 9'-2 3/4\"}\n"
				    "stair: {width: 40\", left: wall, right: wall}\n");
	struct part *p = strip(b.arena);
	(void)state;
	assert_non_null(b.stair);
	p->makeup = (struct makeup){ .plies = 9, .ply_thickness = 6.3125 * 25.4 / 9 };
	assert_non_null(strstr(piece_work_words(b.arena, b.stair, p),
		"Glued from 9 plies of 45/64\", planed to fill 6 5/16\"."));
	arena_free(b.arena);
}

/* A circle: 45 mm across and 45 pi = 141.4 mm round. */
static void a_rail_says_what_a_hand_takes_hold_of(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2700}\n"
		"stair: {width: 900, left: wall, right: wall, segments: [{risers: 15, run: 250}]}\n"
		"wall_rails: [{side: right, clearance: 50, profile: round, width: 45}]\n");
	(void)state;
	assert_string_equal(built_complaint(&b), "");
	assert_non_null(strstr(piece_work_words(b.arena, b.stair, built_part(&b, "wall rail", 0)),
		"Perimeter of its section 141, longest across 45."));
	arena_free(b.arena);
}

static void what_the_note_says_of_a_notch_is_said_once(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2700}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 15, run: 250}]}\n"
		"stringers: {open: {kind: housed, thickness: 40}}\n");
	const char *notch = "corner cut out round the newel";
	(void)state;
	const char *words = piece_work_words(b.arena, b.stair, built_part(&b, "landing nosing", 0));
	const char *first = strstr(words, notch);
	assert_non_null(first);
	assert_null(strstr(first + 1, notch));
	arena_free(b.arena);
}

/* Off 10 1/16 by 0.005 in, less than 1/128; off 10 3/32 by 0.00125; else to the nearest 1/64. */
static void a_hole_of_a_joint_is_lettered_no_finer_than_it_needs(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test}\n"
				    "floors: {total_rise: 9'-2 3/4\"}\n"
				    "stair: {width: 40\", left: wall, right: wall}\n");
	(void)state;
	assert_string_equal(joint_words(b.arena, b.stair, 25.4 * 10.0675), "10 1/16\"");
	assert_string_equal(joint_words(b.arena, b.stair, 25.4 * 10.0925), "10 3/32\"");
	assert_string_equal(joint_words(b.arena, b.stair, 25.4 * 10.0775), "10 5/64\"");
	arena_free(b.arena);
}

/* Square to the piece 4, along the cut 5. */
static void an_end_cut_aslant_is_figured_along_its_cut(void **state)
{
	struct arena *a = arena_new();
	struct part *p = strip(a);
	(void)state;
	p->end.bevel = acos(0.8);
	struct piece_view v = { .part = p,
		.side = PIECE_END,
		.stretch = piece_stretch(p, PIECE_END) };
	assert_near(piece_figured(&v, vec3(1000, 8, 16)).x, 8, 1e-9);
	assert_near(piece_figured(&v, vec3(1000, 8, 16)).y, 20, 1e-9);
	arena_free(a);
}

static void an_end_shows_no_holes_but_its_own(void **state)
{
	struct arena *a = arena_new();
	struct part *p = strip(a);
	struct bore left = { .at = { .u = { 0, 1, 0 }, .v = { 0, 0, -1 }, .w = { -1, 0, 0 } } };
	struct bore near_edge = mortise_at(20);
	(void)state;
	struct piece_sides sides = piece_sides(a, p);
	struct piece_view start = piece_view(a, &sides, PIECE_START, piece_unbroken());
	struct piece_view end = piece_view(a, &sides, PIECE_END, piece_unbroken());
	assert_int_equal(piece_bore_faces(&start, &left), 1);
	assert_int_equal(piece_bore_faces(&end, &left), 0);
	assert_int_equal(piece_bore_faces(&start, &near_edge), 0);
	arena_free(a);
}

static const struct drawing *section_of(const struct built *b, struct outline section)
{
	struct sheet_context c = { .stair = b->stair };
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 420, 297);
	struct sheet s = { .context = &c, .drawing = g, .hand = { g, six_tenths(), 2.5 } };

	piece_section_draw(&s, section, 1);
	return g;
}

/* 58 wide and 12 thick, one edge sawn at 36.87 degrees from square (3-4-5): 12 x 3/4 is 9. */
static void the_side_that_a_bevel_leaves_shorter_is_figured(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, left: wall, right: wall}\n");
	struct path o = path_begin(b.arena, 4);
	(void)state;
	path_to(&o, 0, 0);
	path_to(&o, 58, 0);
	path_to(&o, 58, 12);
	path_to(&o, 9, 12);
	const struct drawing *bevelled = section_of(&b, path_close(o));
	assert_int_equal(count_texts(bevelled, "58"), 1);
	assert_int_equal(count_texts(bevelled, "49"), 1);
	const struct drawing *square = section_of(&b, outline_box(b.arena, 0, 0, 58, 12));
	assert_int_equal(count_texts(square, "58"), 1);
	assert_int_equal(count_texts(square, "12"), 1);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(only_plain_stretches_are_broken_out),
		cmocka_unit_test(no_more_is_broken_out_than_is_needed),
		cmocka_unit_test(nothing_is_broken_out_beyond_the_ends),
		cmocka_unit_test(the_slope_of_an_end_is_never_broken_out),
		cmocka_unit_test(what_lies_beyond_a_break_moves_as_one),
		cmocka_unit_test(every_piece_but_a_stringer_has_a_cell),
		cmocka_unit_test(a_piece_too_long_for_the_paper_is_drawn_lap_by_lap),
		cmocka_unit_test(newels_of_one_job_come_out_at_one_scale),
		cmocka_unit_test(a_paper_too_small_for_any_lap_says_so),
		cmocka_unit_test(laps_follow_each_other_from_end_to_end),
		cmocka_unit_test(laps_part_beside_a_hole),
		cmocka_unit_test(plies_are_lettered_so_that_they_fill_the_piece),
		cmocka_unit_test(a_rail_says_what_a_hand_takes_hold_of),
		cmocka_unit_test(what_the_note_says_of_a_notch_is_said_once),
		cmocka_unit_test(a_hole_of_a_joint_is_lettered_no_finer_than_it_needs),
		cmocka_unit_test(an_end_cut_aslant_is_figured_along_its_cut),
		cmocka_unit_test(an_end_shows_no_holes_but_its_own),
		cmocka_unit_test(the_side_that_a_bevel_leaves_shorter_is_figured),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
