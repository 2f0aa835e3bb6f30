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
#include "sheets/rail_runs.h"
#include "sheets/template_rods.h"
#include "sheets/template_small.h"
#include "sheets/template_tread.h"
#include "sheets_of.h"

#define INCH 25.4

/* Open on the right, in inches: newels with panels, braced balusters. */
#define PANELLED                                                                                   \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test}\n"                                                                      \
	"floors: {total_rise: 106 3/4\"}\n"                                                        \
	"opening: {length: 134\", floor_thickness: 11 1/2\"}\n"                                    \
	"stair: {width: 1017 mm, left: wall, right: {side: open, to_step: 10}}\n"                  \
	"stringers: {middle_count: 1}\n"                                                           \
	"treads: {nosing: 1 1/4\", side_overhang: 1 1/4\", starting_step: right}\n"                \
	"newels: {section: 5\", build: panelled, cap: {kind: pyramid, build: mitred}}\n"           \
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
			bool of_piece = strstr(r->what, "newel") || strstr(r->what, "baluster, ");
			if (!of_piece || !t->figure)
				continue;
			assert_true(is_lettered(sheets, t->figure));
			seen++;
		}
	assert_true(seen >= 6);
	arena_free(b.arena);
}

/* 1017 mm are 40.039 in: no sixteenth says where feet and newel stand at the far end of that. */
static void figures_of_holes_on_tread_templates_are_as_fine_as_on_sheets(void **state)
{
	struct built b = built_from(PANELLED);
	const struct drawing *sheets = sheets_of(&b, &sheet_pieces, 914, 610);
	struct sheet_context c = { .stair = b.stair, .parts = b.parts, .measure = six_tenths() };
	struct template_group g = tread_templates(b.arena, &c, units_make(b.arena, b.parts));
	int fine = 0;

	(void)state;
	for (int i = 0; i < g.n; i++)
		for (int k = 0; k < g.jobs[i].positions.n; k++) {
			const struct position *p = &g.jobs[i].positions.position[k];
			if (!strstr(p->what, "newel bolt, through") &&
				!strstr(p->what, "baluster foot"))
				continue;
			assert_true(is_lettered(sheets, p->along));
			fine += strstr(p->along, "/64") || strstr(p->along, "/32");
		}
	assert_true(fine > 0);
	arena_free(b.arena);
}

/* A balustrade on treads, on the rake 3 up to 4 along, two balusters of 32 to a tread of 240, the
 * first with its front in line with the riser; a newel of 90 that ends 18 behind the first riser,
 * where the second of that tread stands 120 + 16 behind it. */
#define ON_TREADS_AND(rail)                                                                        \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 240}]}\n"       \
	"treads: {thickness: 30, nosing: 25}\n"                                                    \
	"risers: {thickness: 18}\n"                                                                \
	"stringers: {open: mitred}\n"                                                              \
	"rail: {width: 57, depth: 60, height: 900" rail "}\n"                                      \
	"newels: {section: 90, above_rail: 70}\n"                                                  \
	"balusters: {section: 32, per_tread: 2}\n"

#define ON_TREADS ON_TREADS_AND("")

static void balusters_are_marked_on_the_rake_from_the_face_of_the_newel(void **state)
{
	struct built b = built_from(ON_TREADS);
	const struct named_rod *r = rod_of(rods_of(&b), "balusters along the rail");

	(void)state;
	assert_non_null(r);
	assert_string_equal(r->from, "up the rake from the face of the lower newel");
	assert_near(r->rod.ticks[0].at, (120 + 16 - 18) * 1.25, 1e-6);
	for (int i = 1; i < r->rod.n; i++)
		assert_near(r->rod.ticks[i].at - r->rod.ticks[i - 1].at, 150, 1e-6);
	arena_free(b.arena);
}

/* Each is under one run of rail and no other. */
static void every_baluster_is_marked_on_one_rod(void **state)
{
	struct built b = built_from(
		ON_TREADS_AND(", level_runs: [{side: right, direction: back, length: 2000}]"));
	struct rail_runs runs = rail_runs(b.arena, b.parts, &part_rail);

	(void)state;
	assert_int_equal(runs.n, 2);
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->baluster && i < p->count; i++) {
			int n = 0;
			for (int k = 0; k < runs.n; k++)
				n += rail_run_upright(&runs.run[k], p, i) >= 0;
			assert_int_equal(n, 1);
		}
	arena_free(b.arena);
}

/* 9 x 240 along is 2700 on the rake, less the newels: more than one board of 1600. */
static void a_rail_made_in_lengths_is_one_run(void **state)
{
	struct built b = built_from(ON_TREADS "stock: {lengths: [1600], end_trim: 0}\n");
	struct rail_runs runs = rail_runs(b.arena, b.parts, &part_rail);
	const struct part *one = built_part(&b, "rail, 1 of 2", 0);
	const struct part *two = built_part(&b, "rail, 2 of 2", 0);

	(void)state;
	assert_non_null(one);
	assert_non_null(two);
	assert_int_equal(runs.n, 1);
	assert_near(runs.run[0].length, (one->rail->between + two->rail->between) * 1.25, 1e-6);
	assert_string_equal(runs.run[0].marks,
		arena_printf(b.arena, "%s, %s", one->mark, two->mark));
	arena_free(b.arena);
}

static const struct rod_tick *tick_named(const struct named_rod *r, const char *name)
{
	for (int i = 0; r && i < r->rod.n; i++)
		if (strstr(r->rod.ticks[i].name, name))
			return &r->rod.ticks[i];
	return NULL;
}

static void a_newel_is_marked_where_the_rail_comes_against_it(void **state)
{
	struct built b = built_from(ON_TREADS);
	const struct named_rod *r = rod_of(rods_of(&b), "newel");
	const struct newel *newel = built_part(&b, "newel", 0)->newel;
	const struct rod_tick *under = tick_named(r, "underside of the rail, uphill face");
	const struct rod_tick *top = tick_named(r, "top of the rail, uphill face");

	(void)state;
	assert_non_null(under);
	assert_non_null(top);
	assert_near(under->at, newel->rail_low, 1e-6);
	assert_near(top->at, newel->rail_high, 1e-6);
	arena_free(b.arena);
}

static void a_newel_core_is_marked_where_its_cross_rails_begin_and_end(void **state)
{
	struct built b = built_from(PANELLED);
	const struct named_rod *r = rod_of(rods_of(&b), "newel core");
	const struct newel *newel = built_part(&b, "newel core", 0)->newel;

	(void)state;
	assert_true(newel->ring_count >= 2);
	assert_near(tick_named(r, "cross rails 1, upper edge")->at, newel->rings[0].to, 1e-6);
	assert_near(tick_named(r, "cross rails 2, lower edge")->at, newel->rings[1].from, 1e-6);
	arena_free(b.arena);
}

/* On the edge of a string its core goes on down outside it: held against the cross rails as they
 * stand in the house. */
static void cross_rails_over_a_leg_are_marked_where_they_are(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: of the test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, left: wall,\n"
				    "  right: {side: open, from_step: 6},\n"
				    "  segments: [{risers: 15, run: 270}]}\n"
				    "stringers: {open: housed}\n"
				    "newels: {build: panelled}\n");
	const struct named_rod *r = rod_of(rods_of(&b), "newel core");
	const struct part *core = built_part(&b, "newel core", 0);
	const struct extent first = built_extent(built_part(&b, "newel cross rail", 0), 0);
	double foot = core->places[0].origin.z;

	(void)state;
	assert_true(core->newel->leg > 0);
	assert_near(tick_named(r, "cross rails 1, upper edge")->at, first.high.z - foot, 1e-6);
	arena_free(b.arena);
}

/* Ticks at 10, 12 and 300 of a rod of 400: the first is lettered over the second. */
static void a_tick_runs_up_beside_its_lettering_over_those_that_are_near(void **state)
{
	const struct rod_tick ticks[] = { { .at = 10, .name = "1 rail bolt", .brief = "1" },
		{ .at = 12, .name = "2 dowel", .brief = "2" },
		{ .at = 300, .name = "3 dowel", .brief = "3" } };
	const struct marking_rod rod = { .end = 400, .ticks = ticks, .n = 3 };
	struct lettering mm = { UNITS_MILLIMETRES, 1, 0 };
	struct arena *a = arena_new();
	const struct pattern p = rod_pattern(a, &rod, mm);
	const struct pattern_label *l = p.labels;

	(void)state;
	assert_int_equal(rod_lanes(a, &rod, mm), 2);
	assert_true(l->at.y > l->next->at.y + 2.5);
	assert_near(l->next->at.y, l->next->next->at.y, 1e-9);
	arena_free(a);
}

static bool is_on_strips(const struct drawing *g, const char *words)
{
	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			if (k->kind == MARK_TEXT && strstr(g->title, "strips") &&
				!strcmp(k->text.text, words))
				return true;
	return false;
}

/* On strips of A4 some of them have the strip's end where their name would be. */
static void a_tick_wherever_it_is_on_its_strip_is_named(void **state)
{
	struct built b = built_from(ON_TREADS);
	struct sheet_context c = { .stair = b.stair, .parts = b.parts, .measure = six_tenths() };
	struct paper paper = { .name = "A4", .width = 297, .height = 210 };

	(void)state;
	for (int at = 20; at < 600; at += 20) {
		struct rod_tick tick = { at, "1 loose tenon, stringer to newel", "1", NULL };
		struct named_rod rod = { .rod = { .end = 600, .ticks = &tick, .n = 1 },
			.what = "newel",
			.on = "N1",
			.from = "from its foot",
			.note = "" };
		const struct drawing *g = rods_draw(b.arena, &c, &rod, &paper, 1);
		assert_true(is_on_strips(g, arena_printf(b.arena, "%s: %d", tick.name, at)));
	}
	arena_free(b.arena);
}

static const struct small *small_of(const struct small *list, const char *what)
{
	for (; list; list = list->next)
		if (!strcmp(list->what, what))
			return list;
	return NULL;
}

/* On the rake 3 up and 4 along, 60 deep: the plumb cut runs out by 45. */
static void a_rail_cut_to_the_rake_has_a_pattern_of_either_end(void **state)
{
	struct built b = built_from(ON_TREADS);
	struct sheet_context c = { .stair = b.stair, .parts = b.parts };
	const struct small *list = small_patterns(b.arena, &c);
	const struct small *low = small_of(list, "rail, lower end");

	(void)state;
	assert_non_null(low);
	assert_non_null(small_of(list, "rail, upper end"));
	assert_string_equal(low->marks, built_part(&b, "rail", 0)->mark);
	double least = INFINITY, over = INFINITY;
	for (const struct pattern_line *l = low->pattern.lines; l; l = l->next)
		for (int i = 0; i < l->chain.n; i++) {
			struct vec at = l->chain.points[i];
			least = fmin(least, at.x);
			over = at.y > 59.9 ? fmin(over, at.x) : over;
		}
	assert_near(least, 0, 1e-6);
	assert_near(over, 45, 1e-6);
	arena_free(b.arena);
}

static void raked_cross_pieces_and_slopes_of_mitred_caps_have_patterns(void **state)
{
	struct built b = built_from(PANELLED);
	struct sheet_context c = { .stair = b.stair, .parts = b.parts };
	const struct small *list = small_patterns(b.arena, &c);

	(void)state;
	assert_true(small_of(list, "cross piece") || small_of(list, "cross piece, lower end"));
	assert_non_null(small_of(list, "newel cap slope"));
	arena_free(b.arena);
}

static bool is_among(const char *const *marks, const char *mark)
{
	for (; *marks; marks++)
		if (!strcmp(*marks, mark))
			return true;
	return false;
}

static void the_list_of_rods_names_its_parts_to_the_cut_list(void **state)
{
	struct built b = built_from(ON_TREADS);
	struct sheet_context c = { .stair = b.stair, .parts = b.parts, .measure = six_tenths() };
	struct paper paper = { .name = "A4", .width = 297, .height = 210 };
	const struct drawing *g = rods_draw(b.arena, &c, rods_of(&b), &paper, 1);

	(void)state;
	while (g && !g->shows)
		g = g->next;
	assert_non_null(g);
	assert_true(is_among(g->shows, built_part(&b, "newel", 0)->mark));
	assert_true(is_among(g->shows, built_part(&b, "rail", 0)->mark));
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_cross_rail_of_a_newel_is_marked_up_from_its_lower_edge),
		cmocka_unit_test(a_strip_on_the_rake_is_marked_from_its_lower_end),
		cmocka_unit_test(figures_of_holes_on_rods_are_those_of_the_sheets),
		cmocka_unit_test(figures_of_holes_on_tread_templates_are_as_fine_as_on_sheets),
		cmocka_unit_test(balusters_are_marked_on_the_rake_from_the_face_of_the_newel),
		cmocka_unit_test(every_baluster_is_marked_on_one_rod),
		cmocka_unit_test(a_rail_made_in_lengths_is_one_run),
		cmocka_unit_test(a_newel_is_marked_where_the_rail_comes_against_it),
		cmocka_unit_test(a_newel_core_is_marked_where_its_cross_rails_begin_and_end),
		cmocka_unit_test(cross_rails_over_a_leg_are_marked_where_they_are),
		cmocka_unit_test(a_tick_runs_up_beside_its_lettering_over_those_that_are_near),
		cmocka_unit_test(a_tick_wherever_it_is_on_its_strip_is_named),
		cmocka_unit_test(a_rail_cut_to_the_rake_has_a_pattern_of_either_end),
		cmocka_unit_test(raked_cross_pieces_and_slopes_of_mitred_caps_have_patterns),
		cmocka_unit_test(the_list_of_rods_names_its_parts_to_the_cut_list),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
