/*
 * Cells of pieces on their sheets: a piece of several cells can be read in their order.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "sheets_of.h"

/* Where a heading stands: on which sheet, how far along it, how far down. */
struct heading {
	int sheet;
	struct vec at;
};

static bool is_before(struct heading a, struct heading b)
{
	if (a.sheet != b.sheet)
		return a.sheet < b.sheet;
	return near_enough(a.at.x, b.at.x) ? a.at.y > b.at.y : a.at.x < b.at.x;
}

enum { MOST_HEADINGS = 20 };

/* Of all cells that are headed by this name, continued or not; the first is the one where it is not
 * continued. */
static int headings(const struct drawing *g, const char *name, struct heading *list)
{
	int n = 1;

	list[0].sheet = -1;
	for (int sheet = 0; g; g = g->next, sheet++)
		for (const struct mark *k = g->first; k; k = k->next) {
			if (k->kind != MARK_TEXT || strncmp(k->text.text, name, strlen(name)) != 0)
				continue;
			assert_true(n < MOST_HEADINGS);
			list[strcmp(k->text.text, name) == 0 ? 0 : n++] =
				(struct heading){ sheet, k->text.at };
		}
	assert_true(list[0].sheet >= 0);
	return n;
}

/* On a small paper, where there would be room for the rest of it beside the risers. */
static void a_cell_that_goes_on_comes_after_what_it_continues(void **state)
{
	static const struct vec papers[] = { { 210, 160 }, { 297, 210 }, { 297, 170 },
		{ 420, 160 } };
	struct built b = long_skirt();
	struct heading list[MOST_HEADINGS];
	(void)state;
	for (int i = 0; i < 4; i++) {
		const struct drawing *g = sheets_of(&b, &sheet_pieces, papers[i].x, papers[i].y);
		int n = headings(g, "F1  wall skirt, cut round the steps", list);
		for (int k = 1; k < n; k++)
			assert_true(is_before(list[0], list[k]));
	}
	arena_free(b.arena);
}

/* A tread's front strip takes two columns, and the sheet of the tread's body has one left. */
static void the_cells_of_one_piece_stand_on_one_sheet_where_they_go_on_one(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 910, left: wall, right: wall,\n"
				    "  segments: [{kind: flight, risers: 14, run: 225}]}\n"
				    "treads: {widest_board: 140, tenons: {pitch: 180}}\n");
	const struct drawing *g = sheets_of(&b, &sheet_pieces, 297, 180);
	struct heading list[MOST_HEADINGS];
	(void)state;
	assert_int_equal(headings(g, "T2  tread front strip", list), 2);
	assert_int_equal(list[0].sheet, list[1].sheet);
	arena_free(b.arena);
}

/* Each says of its lap from where to where along the piece it goes. */
static int count_laps(const struct drawing *g)
{
	int n = 0;

	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			n += k->kind == MARK_TEXT && strstr(k->text.text, " along it.") != NULL;
	return n;
}

static void what_else_is_said_of_a_piece_stands_under_its_last_lap(void **state)
{
	struct built b = long_skirt();
	const struct drawing *g = sheets_of(&b, &sheet_pieces, 297, 170);
	struct heading list[MOST_HEADINGS];
	(void)state;
	int laps = count_laps(g);
	assert_true(laps > 1);
	assert_int_equal(headings(g, "F1  wall skirt, cut round the steps", list), laps);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_cell_that_goes_on_comes_after_what_it_continues),
		cmocka_unit_test(the_cells_of_one_piece_stand_on_one_sheet_where_they_go_on_one),
		cmocka_unit_test(what_else_is_said_of_a_piece_stands_under_its_last_lap),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
