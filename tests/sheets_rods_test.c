/*
 * Marking rods: from where they are laid, what they tick, and that their figures are those of the
 * sheets.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "sheets/template_rods.h"
#include "sheets/template_tread.h"
#include "sheets_of.h"

#define INCH 25.4

/* Open on the right, in inches: newels with panels, braced balusters. */
#define PANELLED                                                                                   \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test}\n"                                                                      \
	"floors: {total_rise: 106 3/4\"}\n"                                                        \
	"opening: {length: 134\", floor_thickness: 11 1/2\"}\n"                                    \
	"stair: {width: 40\", left: wall, right: {side: open, to_step: 10}}\n"                     \
	"stringers: {middle_count: 1}\n"                                                           \
	"treads: {nosing: 1 1/4\", side_overhang: 1 1/4\", starting_step: right}\n"                \
	"newels: {section: 5\", build: panelled}\n"                                                \
	"balusters: {section: 1 1/4\", per_tread: 2}\n"                                            \
	"infill: {kind: braced}\n"                                                                 \
	"skirts: {wall: cut_round, open: mitred}\n"

static const struct named_rod *rods_of(const struct built *b)
{
	struct sheet_context c = { .stair = b->stair, .parts = b->parts };

	return rods_make(b->arena, &c, units_make(b->arena, b->parts));
}

static const struct named_rod *rod_of(const struct named_rod *list, const char *what)
{
	for (; list; list = list->next)
		if (strstr(list->what, what))
			return list;
	return NULL;
}

/* Those drilled into the face: their places up from the lower edge. */
static int count_ticks_up(const struct named_rod *r, const struct part *p)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		for (int i = 0; i < r->rod.n; i++)
			n += fabs(r->rod.ticks[i].at - b->at.origin.y) < 1e-6;
	return n;
}

static void a_cross_rail_of_a_newel_is_marked_up_from_its_lower_edge(void **state)
{
	struct built b = built_from(PANELLED);
	const struct named_rod *r = rod_of(rods_of(&b), "newel cross rail");
	const struct part *p = b.parts;

	(void)state;
	assert_non_null(r);
	while (strcmp(p->mark, r->on) != 0)
		p = p->next;
	assert_string_equal(r->from, "from its lower edge");
	assert_int_equal(r->rod.n, 2);
	assert_int_equal(count_ticks_up(r, p), 2);
	assert_true(r->rod.ticks[1].at - r->rod.ticks[0].at > INCH / 4);
	for (int i = 0; i < 2; i++)
		assert_non_null(strstr(r->rod.ticks[i].name, "outer face"));
	arena_free(b.arena);
}

#define ON_A_SHOE                                                                                  \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"stringers: {open: housed}\n"                                                              \
	"infill: {shoe: yes, subrail: yes}\n"

static void a_strip_on_the_rake_is_marked_from_its_lower_end(void **state)
{
	struct built b = built_from(ON_A_SHOE);
	const struct named_rod *r = rod_of(rods_of(&b), "subrail");

	(void)state;
	assert_non_null(r);
	assert_string_equal(r->from, "from its lower end");
	arena_free(b.arena);
}

static bool is_lettered(const struct drawing *list, const char *figure)
{
	for (; list; list = list->next)
		for (const struct mark *m = list->first; m; m = m->next)
			if (m->kind == MARK_TEXT && !strcmp(m->text.text, figure))
				return true;
	return false;
}

/* Holes that meet are lettered finer than the rest: a rod at the job's fraction would be beside
 * them. */
static void figures_of_holes_on_rods_are_those_of_the_sheets(void **state)
{
	struct built b = built_from(PANELLED);
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 914, 610);
	int seen = 0;

	(void)state;
	for (const struct named_rod *r = rods_of(&b); r; r = r->next)
		for (int i = 0; i < r->rod.n; i++) {
			const struct rod_tick *t = &r->rod.ticks[i];
			if (!strstr(r->what, "newel") && !strstr(r->what, "baluster, "))
				continue;
			assert_true(is_lettered(sheets, t->figure));
			seen++;
		}
	assert_true(seen >= 6);
	arena_free(b.arena);
}

/* The newel stands on the first of them: no sixteenth says where. */
static void figures_of_holes_on_tread_templates_are_as_fine_as_on_sheets(void **state)
{
	struct built b = built_from(PANELLED);
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 914, 610);
	struct sheet_context c = { .stair = b.stair, .parts = b.parts, .measure = six_tenths() };
	struct paper paper = { .name = "A4", .width = 297, .height = 210 };
	struct template_group g =
		tread_templates(b.arena, &c, units_make(b.arena, b.parts), &paper, 1);
	int fine = 0;

	(void)state;
	for (int i = 0; i < g.n; i++)
		for (int k = 0; k < g.jobs[i].positions.n; k++) {
			const struct position *p = &g.jobs[i].positions.position[k];
			if (!strstr(p->what, "newel bolt"))
				continue;
			assert_true(is_lettered(sheets, p->along));
			fine += strstr(p->along, "/64") || strstr(p->along, "/32");
		}
	assert_true(fine > 0);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_cross_rail_of_a_newel_is_marked_up_from_its_lower_edge),
		cmocka_unit_test(a_strip_on_the_rake_is_marked_from_its_lower_end),
		cmocka_unit_test(figures_of_holes_on_rods_are_those_of_the_sheets),
		cmocka_unit_test(figures_of_holes_on_tread_templates_are_as_fine_as_on_sheets),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
