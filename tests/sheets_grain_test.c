/*
 * The line along the grain of a piece: it stands on wood, where nothing runs through it.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "draw/clip.h"
#include "sheets_of.h"

/* The ends of returns are three-cornered: half of what is round them is not wood. */
static void the_line_along_the_grain_crosses_no_edge(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test}\n"
				    "floors: {total_rise: 107\"}\n"
				    "stair: {width: 36\", left: wall, right: open}\n");
	int grains = 0;

	(void)state;
	for (const struct drawing *g = sheets_of(&b, &sheet_pieces, 420, 297); g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next) {
			if (k->kind != MARK_LINE || k->line.pen != PEN_DIM || k->line.n != 4)
				continue;
			const struct vec *p = k->line.points;
			struct box along = box_grow(box_add(box_add(box_empty(), p[1]), p[2]), 0.1);
			assert_false(is_crossed(g, PEN_OUTLINE, along));
			grains++;
		}
	assert_true(grains > 5);
	arena_free(b.arena);
}

/* Does any other line of the sheet run through the box? */
static bool is_crossed_by_another(const struct drawing *g, const struct mark *line, struct box b)
{
	for (const struct mark *k = g->first; k; k = k->next)
		for (int i = 0; k != line && k->kind == MARK_LINE && i + 1 < k->line.n; i++)
			if (clip_segment(b, k->line.points[i], k->line.points[i + 1]).some)
				return true;
	return false;
}

/* How many there are on a sheet; none of them is crossed. */
static int grains_clear(const struct drawing *g)
{
	int grains = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_LINE || k->line.pen != PEN_DIM || k->line.n != 4)
			continue;
		const struct vec *p = k->line.points;
		struct box along = box_add(box_add(box_empty(), p[1]), p[2]);
		assert_false(is_crossed_by_another(g, k, box_grow(along, 0.1)));
		grains++;
	}
	return grains;
}

/* They are broken between their brackets; in the mitre of their returns is a dowel. */
static void the_line_along_the_grain_of_a_wall_rail_crosses_no_hole_and_no_break(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test}\n"
				    "floors: {total_rise: 107\"}\n"
				    "stair: {width: 36\", left: wall, right: wall}\n"
				    "wall_rails: [{side: left}, {side: right, from_step: 3}]\n");
	int grains = 0;

	(void)state;
	for (const struct drawing *g = sheets_of(&b, &sheet_pieces, 279.4, 215.9); g; g = g->next)
		if (strcmp(g->title, "Pieces: wall rail") == 0)
			grains += grains_clear(g);
	assert_true(grains >= 3);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_line_along_the_grain_crosses_no_edge),
		cmocka_unit_test(
			the_line_along_the_grain_of_a_wall_rail_crosses_no_hole_and_no_break),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
