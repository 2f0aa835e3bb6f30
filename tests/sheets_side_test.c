/*
 * Views of a whole flight: balloons may not cost an elevation its scale, scales are those of the
 * job's units, every level rail has its length on the plan; and pieces, which stay readable.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

#include "draw/bounds.h"
#include "sheets/compose.h"
#include "sheets/tables.h"
#include "sheets_of.h"

/* A gallery over two sides and braced balusters: some twenty different parts to be seen. */
#define JOB(units)                                                                                 \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: " units "}\n"                                                    \
	"floors: {total_rise: 2700 mm}\n"                                                          \
	"opening: {length: 3500 mm, width: 1400 mm, floor_thickness: 290 mm}\n"                    \
	"stair: {width: 1050 mm, left: open, right: wall}\n"                                       \
	"treads: {starting_step: {ends: left}}\n"                                                  \
	"mouldings: {under_nosing: cove}\n"                                                        \
	"newels: {build: panelled}\n"                                                              \
	"infill: {kind: braced, rows: [{height: 180 mm, lie: level}]}\n"                           \
	"rail:\n"                                                                                  \
	"  level_runs:\n"                                                                          \
	"    - {side: left, direction: out, length: 350 mm}\n"                                     \
	"    - {side: left, direction: back, length: 3500 mm}\n"

static bool letters(const struct drawing *g, const char *words)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strcmp(k->text.text, words) == 0)
			return true;
	return false;
}

/* How many of its letterings are the mark of a part. */
static int count_marks(const struct paper_stair *p, const struct drawing *g)
{
	int n = 0;

	for (const struct part *k = p->built.parts; k; k = k->next)
		n += !part_is_existing(k) && letters(g, k->mark);
	return n;
}

static bool is_sized(const struct drawing *g)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strncmp(k->text.text, "opening 3500", 12) == 0)
			return true;
	return false;
}

static void marks_that_would_shrink_an_elevation_have_a_sheet_of_their_own(void **state)
{
	struct paper_stair *p = on_paper(built_from(JOB("millimetres")), 297, 170);
	struct drawing *list = draw(p, &sheet_elevation);
	const struct drawing *sizes = titled(list, "Elevation from the left");
	const struct drawing *marks = titled(list, "Elevation from the left, marks");
	(void)state;
	assert_non_null(sizes);
	assert_non_null(marks);
	assert_true(count_marks(p, marks) > 10);
	assert_false(is_sized(marks));
	assert_int_equal(count_marks(p, sizes), 0);
	assert_true(is_sized(sizes));
	arena_free(p->built.arena);
}

static void on_a_large_paper_marks_and_sizes_are_together(void **state)
{
	struct paper_stair *p = on_paper(built_from(JOB("millimetres")), 594, 420);
	struct drawing *list = draw(p, &sheet_elevation);
	(void)state;
	assert_null(titled(list, "Elevation from the left, marks"));
	assert_true(count_marks(p, list) > 10);
	assert_true(is_sized(list));
	arena_free(p->built.arena);
}

/* 1:32 is 3/8" = 1'-0"; no rule has it in millimetres. */
static void scales_are_those_of_the_units_of_the_job(void **state)
{
	struct paper_stair *inches = on_paper(built_from(JOB("inches")), 297, 210);
	struct paper_stair *mm = on_paper(built_from(JOB("millimetres")), 297, 210);
	(void)state;
	assert_true(sheet_ratios(&inches->context)[7] == 32);
	assert_true(sheet_ratios(&mm->context)[5] == 25);
	mm->paper.scales = SCALES_IMPERIAL;
	assert_true(sheet_ratios(&mm->context)[7] == 32);
	arena_free(inches->built.arena);
	arena_free(mm->built.arena);
}

static void every_level_rail_has_its_length_on_the_plan(void **state)
{
	struct paper_stair *p = on_paper(built_from(JOB("millimetres")), 594, 420);
	const struct drawing *plan = draw(p, &sheet_plan);
	int n = 0;
	(void)state;
	for (const struct mark *k = plan->first; k; k = k->next)
		n += k->kind == MARK_TEXT && strncmp(k->text.text, "level rail ", 11) == 0;
	assert_int_equal(n, 2);
	assert_true(letters(plan, "level rail 3500"));
	arena_free(p->built.arena);
}

/* Rails of 3500 on a sheet 267 wide: broken out, and their views parted, before they are drawn
 * small. */
static void every_piece_can_be_read_on_a_small_paper(void **state)
{
	struct paper_stair *p = on_paper(built_from(JOB("millimetres")), 297, 210);
	int scales = 0;
	(void)state;
	for (const struct drawing *g = draw(p, &sheet_pieces); g; g = g->next) {
		assert_false(g->runs_over);
		for (const struct mark *k = g->first; k; k = k->next) {
			if (k->kind != MARK_TEXT || strncmp(k->text.text, "Scale 1:", 8) != 0)
				continue;
			assert_true(strtol(k->text.text + 8, NULL, 10) <= 10);
			scales++;
		}
	}
	assert_true(scales > 20);
	arena_free(p->built.arena);
}

static const struct mark *find_text(const struct drawing *g, const char *words)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strcmp(k->text.text, words) == 0)
			return k;
	fail_msg("no text \"%s\"", words);
	return NULL;
}

static double words_at(struct paper_stair *p, const char *words)
{
	return find_text(draw(p, &sheet_elevation), words)->text.at.x;
}

#define STEPS(rise)                                                                                \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: " rise "}\n"                                                         \
	"stair: {width: 1050, left: wall, right: open}\n"                                          \
	"rail: {level_runs: [{side: right, direction: back, length: 3500}]}\n"                     \
	"opening: {length: 3800, width: 1250, floor_thickness: 290}\n"

/* From the right the foot is at the left.  At 1:50 two risers are 7 mm, five lines of 2.5 mm are
 * more. */
static void floors_too_near_each_other_have_their_levels_on_either_side(void **state)
{
	struct paper_stair *low = on_paper(built_from(STEPS("340")), 297, 210);
	struct paper_stair *high = on_paper(built_from(STEPS("2700")), 297, 210);
	(void)state;
	assert_true(words_at(high, "Lower finished floor") > 100);
	assert_true(words_at(low, "Upper finished floor") > 100);
	assert_true(words_at(low, "Lower finished floor") < 100);
	arena_free(low->built.arena);
	arena_free(high->built.arena);
}

/* Two rows and their head are some 15 mm high. */
static void rows_go_on_rather_than_over_what_stands_at_the_foot(void **state)
{
	static const struct table_column columns[] = { { "Piece", ALIGN_LEFT, 0 } };
	static const char *const cells[] = { "tread", "riser" };
	const struct table table = { "Pieces", columns, 1, cells, 2 };
	struct paper_stair *p = on_paper(built_from(JOB("millimetres")), 297, 210);
	struct sheet free = sheet_begin(p->built.arena, &p->context, ""), taken = free;
	(void)state;
	taken.room.y0 = taken.room.y1 - 5;
	assert_int_equal(sheet_tables(&taken, (struct table_list){ &table, 1 }, TABLES_LEFT, 200).n,
		1);
	assert_int_equal(sheet_tables(&free, (struct table_list){ &table, 1 }, TABLES_LEFT, 200).n,
		0);
	arena_free(p->built.arena);
}

/* A guard over a stair that rises under it; how thick the floor is, and how far over the nosings
 * nothing may hang. */
#define GALLERY                                                                                    \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2700}\n"                                                             \
	"opening: {length: 3500, width: 1400, floor_thickness: %s, headroom: %s}\n"                \
	"stair: {width: 1050, left: open, right: wall}\n"                                          \
	"rail: {level_runs: [{side: left, direction: out, length: 350},"                           \
	" {side: left, direction: back, length: 3500}]}\n"

/* How many figures of guards there are; no thin dash-dot line, of nosings or of headroom, runs
 * through any of them. */
static int guards_clear(const char *headroom)
{
	char job[2000];
	snprintf(job, sizeof(job), GALLERY, "290", headroom);
	struct paper_stair *p = on_paper(built_from(job), 420, 297);
	const struct sheet_set permit = { .reader = READER_DEPARTMENT, .lettering = 1 };
	p->context.set = &permit;
	const struct drawing *g = draw(p, &sheet_elevation);
	int seen = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_TEXT || strncmp(k->text.text, "guard ", 6) != 0)
			continue;
		seen++;
		assert_false(is_crossed(g, PEN_CENTRE, mark_box(k, six_tenths())));
	}
	arena_free(p->built.arena);
	return seen;
}

static void no_height_is_struck_by_the_headroom_line(void **state)
{
	static const char *const lines[] = { "1700", "1800", "1900", "2000" };
	(void)state;
	for (int i = 0; i < 4; i++)
		assert_int_equal(guards_clear(lines[i]), 1);
}

/* Does a sloping edge that is seen run through a place on the sheet? */
static bool slopes_through(const struct drawing *g, struct vec at)
{
	struct box b = box_grow(box_add(box_empty(), at), 0.1);

	for (const struct mark *k = g->first; k; k = k->next)
		for (int i = 0;
			k->kind == MARK_LINE && k->line.pen == PEN_OUTLINE && i + 1 < k->line.n;
			i++) {
			struct vec from = k->line.points[i], to = k->line.points[i + 1];
			if (fabs(to.x - from.x) > 0.2 && fabs(to.y - from.y) > 0.2 &&
				clip_segment(b, from, to).some)
				return true;
		}
	return false;
}

/* The line of the height of a rail goes on over it by three capitals of 2.5 mm; no other does. */
static bool goes_on_over_a_rail(const struct mark *k)
{
	const struct vec *p = k->line.points;

	return k->kind == MARK_LINE && k->line.pen == PEN_DIM && k->line.n == 2 &&
		fabs(p[1].x - p[0].x) < 1e-9 && fabs(p[1].y - p[0].y - 7.5) < 1e-9;
}

/* The middle of the rail, which is seen below the floor and over it, is behind the floor. */
static void the_height_of_a_rail_ends_where_its_top_is_seen(void **state)
{
	char job[2000];
	snprintf(job, sizeof(job), GALLERY, "450", "2000");
	struct paper_stair *p = on_paper(built_from(job), 594, 420);
	const struct drawing *g = draw(p, &sheet_elevation);
	int seen = 0;
	(void)state;
	for (const struct mark *k = g->first; k; k = k->next) {
		if (!goes_on_over_a_rail(k))
			continue;
		seen++;
		assert_true(slopes_through(g, k->line.points[0]));
	}
	assert_int_equal(seen, 1);
	arena_free(p->built.arena);
}

/* A run across the stair is seen on end in the section, beside the line of the opening's size. */
static void no_height_is_struck_by_the_lines_of_the_openings_size(void **state)
{
	(void)state;
	struct paper_stair *p =
		on_paper(built_from(
				 "pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				 "floors: {total_rise: 2700}\n"
				 "opening: {length: 3500, width: 1400, floor_thickness: 290}\n"
				 "stair: {width: 1050, left: wall, right: wall}\n"
				 "rail: {level_runs: [{side: right, direction: out, length: 450},"
				 " {side: right, direction: back, length: 3500},"
				 " {side: right, direction: across, length: 1300}]}\n"),
			420, 297);
	const struct sheet_set permit = { .reader = READER_DEPARTMENT, .lettering = 1 };
	p->context.set = &permit;
	const struct drawing *g = draw(p, &sheet_section);
	int seen = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_TEXT || strncmp(k->text.text, "guard ", 6) != 0)
			continue;
		seen++;
		assert_false(is_crossed(g, PEN_DIM, mark_box(k, six_tenths())));
	}
	assert_true(seen > 0);
	arena_free(p->built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(marks_that_would_shrink_an_elevation_have_a_sheet_of_their_own),
		cmocka_unit_test(on_a_large_paper_marks_and_sizes_are_together),
		cmocka_unit_test(scales_are_those_of_the_units_of_the_job),
		cmocka_unit_test(every_level_rail_has_its_length_on_the_plan),
		cmocka_unit_test(floors_too_near_each_other_have_their_levels_on_either_side),
		cmocka_unit_test(rows_go_on_rather_than_over_what_stands_at_the_foot),
		cmocka_unit_test(no_height_is_struck_by_the_headroom_line),
		cmocka_unit_test(the_height_of_a_rail_ends_where_its_top_is_seen),
		cmocka_unit_test(no_height_is_struck_by_the_lines_of_the_openings_size),
		cmocka_unit_test(every_piece_can_be_read_on_a_small_paper),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
