/*
 * A template over many sheets: joined, the sheets are the whole again.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "draw/bounds.h"
#include "near.h"
#include "sheets/template_sheets.h"
#include "sheets/template_stringer.h"
#include "sheets_template.h"

/* The tiled template of a stair, and where each sheet belongs. */
static struct arena *arena;
static struct bench_stair *bench;
static struct template_job job;
static struct template_sheets sheets;
static struct tiling tiling;

static void tile(double printer_x, double printer_y)
{
	bench->job.sheets.printer_x = printer_x;
	bench->job.sheets.printer_y = printer_y;
	job = stringer_template(arena, &bench->context, &bench->part);
	job.paper = &bench->paper;
	job.number = 1;
	sheets = template_sheets(arena, &job, USE_TILES, "tiles", PAPER_AS_GIVEN);
	tiling = tiling_make(arena, &job.pattern, window_size(sheets.place), TILE_LAP);
}

static int start(void **state)
{
	(void)state;
	arena = arena_new();
	bench = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	tile(1, 1);
	return 0;
}

static int stop(void **state)
{
	(void)state;
	arena_free(arena);
	return 0;
}

/* A point of a sheet, moved back to where the sheet belongs on the pattern. */
static struct vec moved_back(struct tile at, struct vec p)
{
	struct box w = tile_window(&tiling, at);

	return vec(w.x0 + (p.x - sheets.place.frame.x0) * sheets.place.correction.x,
		w.y0 + (p.y - sheets.place.frame.y0) * sheets.place.correction.y);
}

static double off_the_outline(struct vec p)
{
	struct outline o = bench->part.outline;
	double least = INFINITY;

	for (int i = 0; i < o.n; i++) {
		struct vec a = o.corners[i].at, run = vec_sub(o.corners[(i + 1) % o.n].at, a);
		double t = vec_dot(vec_sub(p, a), run) / vec_dot(run, run);
		struct vec foot = vec_add(a, vec_scale(run, fmin(1, fmax(0, t))));
		least = fmin(least, vec_length(vec_sub(p, foot)));
	}
	return least;
}

static double perimeter(void)
{
	struct outline o = bench->part.outline;
	double sum = 0;

	for (int i = 0; i < o.n; i++)
		sum += vec_length(vec_sub(o.corners[(i + 1) % o.n].at, o.corners[i].at));
	return sum;
}

/* Length of the line to cut on one sheet's own part; every point of it on the outline. */
static double cut_length_of(struct tile at)
{
	const struct drawing *g = sheet_of_tile(&sheets, &tiling, at);
	double sum = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_LINE || k->line.pen != PEN_TEMPLATE)
			continue;
		for (int i = 0; i + 1 < k->line.n; i++) {
			struct vec a = moved_back(at, k->line.points[i]);
			struct vec b = moved_back(at, k->line.points[i + 1]);
			assert_near(off_the_outline(a), 0, 0.001);
			assert_near(off_the_outline(b), 0, 0.001);
			struct clipped c = clip_segment(tile_own(&tiling, at), a, b);
			sum += c.some ? vec_length(vec_sub(c.b, c.a)) : 0;
		}
	}
	return sum;
}

static void the_sheets_joined_are_the_whole_outline(void **state)
{
	(void)state;
	double sum = 0;

	for (int i = 0; i < tiling.columns * tiling.rows; i++)
		if (tiling.printed[i])
			sum += cut_length_of(
				(struct tile){ i % tiling.columns, i / tiling.columns });
	assert_near(sum, perimeter(), 0.001);
}

/* Centres of the crosses on a sheet, on the pattern. */
struct crosses {
	struct vec at[8];
	int n;
};

static struct crosses crosses_of(struct tile at)
{
	const struct drawing *g = sheet_of_tile(&sheets, &tiling, at);
	struct crosses c = { .n = 0 };

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_LINE || k->line.pen != PEN_GUIDE || k->line.n != 2)
			continue;
		struct vec run = vec_sub(k->line.points[1], k->line.points[0]);
		if (fabs(run.y) > 1e-9 || fabs(run.x - 10) > 1e-9)
			continue;
		assert_true(c.n < 8);
		c.at[c.n++] = moved_back(at,
			vec_scale(vec_add(k->line.points[0], k->line.points[1]), 0.5));
	}
	return c;
}

static int shared(struct crosses one, struct crosses other)
{
	int n = 0;

	for (int i = 0; i < one.n; i++)
		for (int j = 0; j < other.n; j++)
			n += vec_length(vec_sub(one.at[i], other.at[j])) < 0.001;
	return n;
}

static void every_joint_has_two_crosses_that_both_sheets_share(void **state)
{
	(void)state;
	static const enum tile_side over[] = { TILE_RIGHT, TILE_BOTTOM };
	int joints = 0;

	for (int i = 0; i < tiling.columns * tiling.rows; i++)
		for (int k = 0; k < 2; k++) {
			struct tile at = { i % tiling.columns, i / tiling.columns };
			struct tile beside = tile_beside(at, over[k]);
			if (!tile_is_printed(&tiling, at) || !tile_is_printed(&tiling, beside))
				continue;
			assert_int_equal(shared(crosses_of(at), crosses_of(beside)), 2);
			joints++;
		}
	assert_true(joints > 20);
}

static const struct drawing *sheet_named(const struct drawing *list, const char *id)
{
	for (; list; list = list->next)
		if (!strcmp(list->id, id))
			return list;
	return NULL;
}

/* Small windows leave some of the waste between two points of the teeth quite empty. */
static void a_sheet_on_which_nothing_falls_is_not_printed(void **state)
{
	(void)state;
	struct template_sheets small = sheets;
	small.place.frame = (struct box){ 10, 60, 110, 160 };
	struct tiling t = tiling_make(arena, &job.pattern, window_size(small.place), TILE_LAP);
	const struct drawing *list = sheets_of_tiling(&small, &t);
	int blank = 0;

	for (int i = 0; i < t.columns * t.rows; i++) {
		struct tile at = { i % t.columns, i / t.columns };
		const char *id = arena_printf(arena, "T-1/%s", tile_name(arena, &t, at));
		assert_int_equal(tile_is_printed(&t, at), sheet_named(list, id) != NULL);
		blank += !tile_is_printed(&t, at);
	}
	assert_true(blank > 0);
}

static void names_run_past_z(void **state)
{
	(void)state;

	assert_string_equal(tile_name(arena, &tiling, (struct tile){ 0, 0 }), "A1");
	assert_string_equal(tile_name(arena, &tiling, (struct tile){ 25, 1 }), "Z2");
	assert_string_equal(tile_name(arena, &tiling, (struct tile){ 26, 0 }), "AA1");
	assert_string_equal(tile_name(arena, &tiling, (struct tile){ 53, 2 }), "BB3");
}

static bool says(const struct drawing *g, const char *words)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strstr(k->text.text, words))
			return true;
	return false;
}

static void a_sheet_names_its_neighbours(void **state)
{
	(void)state;
	const struct drawing *g = sheet_of_tile(&sheets, &tiling, (struct tile){ 2, 0 });

	assert_int_equal(tiling.rows, 2);
	assert_true(says(g, "← goes under B1"));
	assert_true(says(g, "→ trim here, lay on D1"));
	assert_true(says(g, "↓ trim here, lay on C2"));
	assert_false(says(g, "↑ goes"));
}

/* Of the level and upright lines of this length on a sheet. */
static int lines_as_long_as(const struct drawing *g, double x, double y)
{
	int n = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_LINE || k->line.pen != PEN_GUIDE || k->line.n != 2)
			continue;
		struct vec run = vec_sub(k->line.points[1], k->line.points[0]);
		n += fabs(fabs(run.x) - x) < 1e-6 && fabs(fabs(run.y) - y) < 1e-6;
	}
	return n;
}

static void every_sheet_has_bars_in_both_directions(void **state)
{
	(void)state;

	for (const struct drawing *g = sheets_of_tiling(&sheets, &tiling); g; g = g->next) {
		assert_int_equal(lines_as_long_as(g, 100, 0), 1);
		assert_int_equal(lines_as_long_as(g, 0, 100), 1);
		assert_int_equal(lines_as_long_as(g, 101.6, 0), 1);
		assert_int_equal(lines_as_long_as(g, 0, 101.6), 1);
	}
}

/* A printer that draws x 1.02 times too long gets everything measured 1.02 times too short. */
static void a_correction_shrinks_lines_and_bars_but_not_words(void **state)
{
	(void)state;
	tile(1.02, 0.99);
	const struct drawing *g = sheet_of_tile(&sheets, &tiling, (struct tile){ 0, 0 });

	assert_int_equal(lines_as_long_as(g, 100 / 1.02, 0), 1);
	assert_int_equal(lines_as_long_as(g, 0, 100 / 0.99), 1);
	assert_true(says(g, "1.02 times true size across"));
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT)
			assert_true(k->text.height >= 2.5);
	the_sheets_joined_are_the_whole_outline(state);
}

/* The same printer is fed the same paper, whichever way the page lies on it. */
static void a_turned_page_is_corrected_along_the_same_sides_of_the_paper(void **state)
{
	(void)state;
	tile(1.02, 0.99);
	struct template_sheets turned =
		template_sheets(arena, &job, USE_TILES, "tiles", PAPER_TURNED);

	assert_true(turned.paper.y > turned.paper.x);
	assert_near(turned.place.correction.y, 1.02, 1e-9);
	assert_near(turned.place.correction.x, 0.99, 1e-9);
}

static void the_calibration_page_is_never_corrected(void **state)
{
	(void)state;
	tile(1.02, 0.99);
	const struct drawing *g =
		template_calibration(arena, six_tenths(), sheets.paper, sheets.file);

	assert_int_equal(lines_as_long_as(g, 200, 0), 1);
	assert_int_equal(lines_as_long_as(g, 0, 150), 1);
	assert_int_equal(lines_as_long_as(g, 8 * 25.4, 0), 1);
	assert_int_equal(lines_as_long_as(g, 200, 150), 1);
}

static void all_sheets_of_a_file_are_of_one_size(void **state)
{
	(void)state;
	const struct drawing *first = NULL;

	for (const struct drawing *g = bench_templates(arena, bench); g; g = g->next) {
		if (g->use == USE_ROLL)
			continue;
		first = first && !strcmp(first->file, g->file) ? first : g;
		assert_near(g->width, first->width, 1e-9);
		assert_near(g->height, first->height, 1e-9);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test_setup_teardown(the_sheets_joined_are_the_whole_outline, start,
			stop),
		cmocka_unit_test_setup_teardown(every_joint_has_two_crosses_that_both_sheets_share,
			start, stop),
		cmocka_unit_test_setup_teardown(a_sheet_on_which_nothing_falls_is_not_printed,
			start, stop),
		cmocka_unit_test_setup_teardown(names_run_past_z, start, stop),
		cmocka_unit_test_setup_teardown(a_sheet_names_its_neighbours, start, stop),
		cmocka_unit_test_setup_teardown(every_sheet_has_bars_in_both_directions, start,
			stop),
		cmocka_unit_test_setup_teardown(a_correction_shrinks_lines_and_bars_but_not_words,
			start, stop),
		cmocka_unit_test_setup_teardown(
			a_turned_page_is_corrected_along_the_same_sides_of_the_paper, start, stop),
		cmocka_unit_test_setup_teardown(the_calibration_page_is_never_corrected, start,
			stop),
		cmocka_unit_test_setup_teardown(all_sheets_of_a_file_are_of_one_size, start, stop),
	};

	return cmocka_run_group_tests_name("templates over many sheets", tests, NULL, NULL);
}
