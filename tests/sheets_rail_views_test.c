/*
 * Rails that elevation and section do not name: each is seen somewhere with its mark.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "sheets_of.h"

/* Walled on both sides, a gallery on the right: the section looks to the left. */
#define GALLERY                                                                                    \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2700}\n"                                                             \
	"opening: {length: 3500, width: 1400, floor_thickness: 290}\n"                             \
	"stair: {width: 1050, left: wall, right: wall}\n"                                          \
	"rail:\n"                                                                                  \
	"  level_runs:\n"                                                                          \
	"    - {side: right, direction: out, length: 450}\n"                                       \
	"    - {side: right, direction: back, length: 3500}\n"                                     \
	"    - {side: right, direction: across, length: 800}\n"                                    \
	"wall_rails: [{side: right, profile: moulded}, {side: left, profile: round}]\n"

/* Drawn and numbered, as the sheets after them see them. */
static void draw_before(struct paper_stair *s, const struct sheet_kind *kind)
{
	struct drawing *first = draw(s, kind);

	for (struct drawing *g = first; g; g = g->next)
		g->id = arena_printf(s->built.arena, "%s01", kind->series);
	*drawings_end(&first) = (struct drawing *)s->context.sheets;
	s->context.sheets = first;
}

static bool is_lettered(const struct drawing *g, const char *mark)
{
	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			if (k->kind == MARK_TEXT && k->text.align == ALIGN_MIDDLE &&
				strcmp(k->text.text, mark) == 0)
				return true;
	return false;
}

static bool is_wanted(const struct part *p)
{
	return p->rail || p->newel || p->cap || p->kind == &part_infill;
}

static void every_rail_newel_and_baluster_is_seen_with_its_mark(void **state)
{
	struct paper_stair *s = on_paper(built_from(GALLERY), 594, 420);
	(void)state;
	draw_before(s, &sheet_elevation);
	draw_before(s, &sheet_section);
	const struct drawing *rest = draw(s, &sheet_rail_views);
	int behind = 0;
	for (const struct part *p = s->built.parts; p; p = p->next) {
		if (!is_wanted(p))
			continue;
		bool before = is_lettered(s->context.sheets, p->mark);
		assert_true(before || is_lettered(rest, p->mark));
		behind += !before;
	}
	assert_true(behind > 3);
	arena_free(s->built.arena);
}

static void a_wall_rail_behind_the_eye_of_the_section_is_seen_from_the_other_side(void **state)
{
	struct paper_stair *s = on_paper(built_from(GALLERY), 594, 420);
	const struct part *right = built_part(&s->built, "wall rail", 0);
	(void)state;
	if (right->places[0].origin.y > s->built.stair->width / 2)
		right = built_part(&s->built, "wall rail", 1);
	draw_before(s, &sheet_section);
	assert_false(is_lettered(s->context.sheets, right->mark));
	const char *title = arena_printf(s->built.arena, "Wall rail %s from the left", right->mark);
	assert_int_equal(count_texts(draw(s, &sheet_rail_views), title), 1);
	arena_free(s->built.arena);
}

static void rails_that_the_elevation_names_are_not_drawn_again(void **state)
{
	struct paper_stair *s =
		on_paper(built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 1050, left: wall, right: open}\n"),
			594, 420);
	(void)state;
	assert_non_null(draw(s, &sheet_rail_views));
	draw_before(s, &sheet_elevation);
	assert_null(draw(s, &sheet_rail_views));
	arena_free(s->built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_rail_newel_and_baluster_is_seen_with_its_mark),
		cmocka_unit_test(
			a_wall_rail_behind_the_eye_of_the_section_is_seen_from_the_other_side),
		cmocka_unit_test(rails_that_the_elevation_names_are_not_drawn_again),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
