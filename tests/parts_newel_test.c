/*
 * Newels: what they stand on, what they are made of, and how they are held.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "parts/solid.h"

#define JOB(floors, side, stringers, newels)                                                       \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800" floors "}\n"                                                   \
	"stair: {width: 900, left: wall, right: " side ", segments: [{risers: 10, run: 250}]}\n"   \
	"treads: {thickness: 30, nosing: 25}\n"                                                    \
	"risers: {thickness: 18}\n"                                                                \
	"rail: {width: 57, depth: 60, height: 900}\n"                                              \
	"balusters: {section: 32, largest_gap: 120}\n"                                             \
	"stringers: {" stringers "}\n"                                                             \
	"newels: {above_rail: 70" newels "}\n"

#define PLAIN(newels) JOB("", "open", "open: mitred", newels)

#define PANELS                                                                                     \
	", build: panelled, section: 120, panels: {strip_width: 25, strip_thickness: 12, arris: 3"

static void a_bottom_newel_stands_on_what_the_stringers_stand_on(void **state)
{
	struct built low = built_from(JOB(", lower_finish: 20", "open", "open: mitred", ""));
	struct built high = built_from(
		JOB(", lower_finish: 20", "open", "open: mitred, foot: finished_floor", ""));
	(void)state;
	assert_near(built_extent(built_part(&low, "newel", 0), 0).low.z, -20, 1e-9);
	assert_near(built_extent(built_part(&high, "newel", 0), 0).low.z, 0, 1e-9);
	arena_free(low.arena);
	arena_free(high.arena);
}

static bool is_in(const struct built *b, const char *name, double x, double y, double z)
{
	for (const struct part *p = b->parts; p; p = p->next)
		for (int i = 0; strcmp(p->name, name) == 0 && i < p->count; i++)
			if (solids_contain(p->solids,
				    frame_place_back(p->places[i], vec3(x, y, z))))
				return true;
	return false;
}

/* It stands from 72 in front of the first riser's face to 18 behind it, 29 beyond the limit of the
 * stair to 61 within. */
static void the_finish_is_laid_round_a_newel_and_leaves_no_void(void **state)
{
	struct built b =
		built_from(JOB(", lower_finish: 20", "open", "open: mitred", ", section: 90"));
	(void)state;
	assert_true(is_in(&b, "newel", 0, 0, -10));
	assert_false(is_in(&b, "lower floor finish", 0, 0, -10));
	assert_true(is_in(&b, "lower floor finish", -73, 0, -10));
	assert_true(is_in(&b, "lower floor finish", 0, -30, -10));
	assert_true(
		is_in(&b, "lower floor finish", 19, -10, -10));    /* behind it, beside the stair */
	assert_true(is_in(&b, "lower floor finish", -1, 62, -10)); /* in front of the riser */
	assert_false(is_in(&b, "lower floor finish", 19, 10, -10)); /* under the stair */
	arena_free(b.arena);
}

static void a_newel_may_be_let_into_the_floor_which_goes_round_it(void **state)
{
	struct built b = built_from(
		JOB(", lower_finish: 20", "open", "open: mitred", ", section: 90, let_in: 50"));
	(void)state;
	assert_near(built_extent(built_part(&b, "newel", 0), 0).low.z, -70, 1e-9);
	assert_false(is_in(&b, "lower floor", 0, 0, -69));
	assert_true(is_in(&b, "lower floor", 0, 0, -71));
	assert_true(is_in(&b, "lower floor", 19, 0, -69));
	arena_free(b.arena);
}

/* A section through the middle carriage, 450 from either side, cuts the floor through. */
static void behind_a_newel_let_in_the_floor_has_no_joint_under_the_middle(void **state)
{
	struct built b = built_from(
		JOB(", lower_finish: 20", "open", "open: mitred", ", section: 90, let_in: 50"));
	const struct part *floor = built_part(&b, "lower floor", 0);
	bool through = false;
	(void)state;
	for (const struct solid *s = floor->solids; s; s = s->next) {
		struct part one = *floor;
		struct solid alone = *s;
		alone.next = NULL;
		one.solids = &alone;
		struct extent e = built_extent(&one, 0);
		through |= e.low.y < 449 && e.high.y > 451 && e.low.x < 500 && e.high.x > 500 &&
			e.low.z < -50 && e.high.z > -30;
	}
	assert_true(through);
	arena_free(b.arena);
}

static void a_glued_newel_is_of_as_many_plies_as_its_stock_asks(void **state)
{
	struct built b =
		built_from(PLAIN(", section: 100, build: glued, ply_stock: 52, ply_planed: 45"));
	struct built solid = built_from(PLAIN(", section: 100"));
	(void)state;
	/* two planed to 45 make 90, three a hundred */
	assert_int_equal(built_part(&b, "newel", 0)->makeup.plies, 3);
	assert_near(built_part(&b, "newel", 0)->makeup.ply_thickness, 100.0 / 3, 1e-9);
	/* 33.4, and 5 for planing */
	assert_string_equal(built_part(&b, "newel", 0)->note, "plies out of 40 mm boards");
	assert_int_equal(built_part(&solid, "newel", 0)->makeup.plies, 0);
	arena_free(b.arena);
	arena_free(solid.arena);
}

static void a_panelled_newel_has_a_core_and_two_strips_to_a_corner(void **state)
{
	struct built b = built_from(PLAIN(PANELS "}"));
	(void)state;
	const struct part *core = built_part(&b, "newel core", 0);
	const struct part *strip = built_part(&b, "newel strip", 0);
	assert_near(core->size.width, 120 - 2 * 12, 1e-9);
	assert_int_equal(core->section.n, 8); /* its corners are chamfered */
	assert_int_equal(strip->count, 8);
	assert_near(strip->size.length, core->size.length, 1e-9);
	assert_near(strip->size.width, 25, 1e-9);
	assert_near(strip->size.thickness, 12, 1e-9);
	/* bevelled 45 degrees: the inner face is narrower by the thickness */
	struct box face = outline_extent(strip->section);
	assert_near(face.x1 - face.x0, 25, 1e-9);
	double least = INFINITY;
	for (int i = 0; i < strip->section.n; i++)
		if (strip->section.corners[i].at.y < 1e-9)
			least = fmin(least, strip->section.corners[i].at.x);
	assert_near(least, 12, 1e-9);
	arena_free(b.arena);
}

/* The rail's top is 180 + (18 + 25) * 180/250 + 900 over the floor at the newel's back. */
static const double bottom_height = 180 + 43 * 0.72 + 900 + 70;

static void spacer_blocks_are_as_long_as_the_panels_are_high(void **state)
{
	struct built b = built_from(PLAIN(
		PANELS ", rails: [{at: 0, height: 200}, {at: 0.5, height: 60}, {at: 1, height: "
		       "160}]}"));
	(void)state;
	const struct newel *n = built_part(&b, "newel core", 0)->newel;
	double panels = bottom_height - 200 - 60 - 160;
	assert_int_equal(n->ring_count, 3);
	assert_near(n->rings[0].spacer, 0, 1e-9);
	/* half way: as much of the height under its lower edge as over its upper one */
	assert_near(n->rings[1].spacer, (bottom_height - 60) / 2 - 200, 1e-9);
	assert_near(n->rings[1].spacer + n->rings[2].spacer, panels, 1e-9);
	assert_int_equal(built_part(&b, "newel cross rail", 0)->size.length, 120 - 2 * 25);
	arena_free(b.arena);
}

static void where_the_handrail_meets_a_panel_there_is_a_cross_rail(void **state)
{
	struct built b = built_from(PLAIN(PANELS ", rails: [{at: 0, height: 200}]}"));
	(void)state;
	struct extent rail = built_extent(built_part(&b, "rail", 0), 0);
	const struct newel *n = built_part(&b, "newel core", 0)->newel;
	const struct newel_ring *top = &n->rings[n->ring_count - 1];
	assert_int_equal(n->ring_count, 2);
	assert_true(top->from < rail.low.z && top->to > bottom_height - 70);
	assert_true(is_in(&b, "newel cross rail", 18 - 6, 16, rail.low.z + 10));
	arena_free(b.arena);
}

static void cross_rails_that_lie_over_each_other_are_refused(void **state)
{
	struct built b = built_from(
		PLAIN(PANELS ", rails: [{at: 0.5, height: 100}, {at: 0.52, height: 100}]}"));
	(void)state;
	assert_null(b.parts);
	assert_non_null(strstr(built_complaint(&b), "two cross rails of a newel"));
	assert_non_null(strstr(built_complaint(&b), "lie over each other by"));
	arena_free(b.arena);
}

static void strips_that_leave_nothing_of_a_face_are_refused(void **state)
{
	struct built b =
		built_from(PLAIN(", build: panelled, section: 60, panels: {strip_width: 25}"));
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"newels.panels: two strips of 25 mm leave 10 mm of a face of 60 mm: it takes 20 "
		"mm");
	arena_free(b.arena);
}

static int bores_of(const struct part *p, enum fixing fixing, const char *text)
{
	int n = 0;
	for (const struct bore *b = p->bores; b; b = b->next)
		n += b->fixing == fixing && b->text && strcmp(b->text, text) == 0;
	return n;
}

static void on_a_closed_string_a_newel_is_notched_over_it_and_screwed(void **state)
{
	struct built b = built_from(JOB("", "{side: open, from_step: 4}",
		"open: {kind: housed, thickness: 30}", ", section: 90"));
	(void)state;
	const struct part *newel = built_part(&b, "newel", 0);
	const struct part *string = built_part(&b, "housed stringer, right hand", 0);
	assert_non_null(newel);
	assert_non_null(string);
	assert_int_equal(bores_of(newel, FIXING_SCREW, "screw through the leg, plugged"), 4);
	assert_int_equal(bores_of(string, FIXING_SCREW, "screw through the leg, plugged"), 4);
	assert_int_equal(bores_of(string, FIXING_DOWEL, "dowel, newel on string"), 2);
	assert_int_equal(bores_of(string, FIXING_NEWEL_BOLT, "newel bolt, into the string"), 1);
	/* the leg, (90 - 30) / 2 thick, hangs outside the string */
	struct extent e = built_extent(newel, 0);
	assert_near(newel->newel->leg, 140, 1e-9);
	assert_true(is_in(&b, "newel", e.low.x + 5, -29, e.low.z + 10));
	assert_false(is_in(&b, "newel", e.low.x + 5, 1, e.low.z + 10));
	arena_free(b.arena);
}

static void the_stringer_behind_a_bottom_newel_is_mortised_to_it(void **state)
{
	struct built b = built_from(PLAIN(", section: 90"));
	(void)state;
	const char *text = "loose tenon, stringer to newel";
	int n = bores_of(built_part(&b, "newel", 0), FIXING_LOOSE_TENON, text);
	assert_true(n > 0);
	assert_int_equal(bores_of(built_part(&b, "mitred stringer, right hand", 0),
				 FIXING_LOOSE_TENON, text),
		n);
	arena_free(b.arena);
}

/* The hole to the nut of its bolt comes across the middle, 25 wide: 90 / 2 - 25 / 2 - 6. */
static void a_stringers_mortise_keeps_clear_of_the_bolts_access(void **state)
{
	struct built b = built_from(PLAIN(", section: 90"));
	int mortises = 0;
	(void)state;
	for (const struct bore *o = built_part(&b, "newel", 0)->bores; o; o = o->next) {
		if (strcmp(o->text, "loose tenon, stringer to newel") != 0)
			continue;
		assert_near(o->size.depth, 26, 1e-9);
		assert_near(o->fixing_length, 26 + 31 - 2, 1e-9);
		mortises++;
	}
	assert_true(mortises > 0);
	arena_free(b.arena);
}

/* 200 high and 70 wide, or 60 high: all alike to look at. */
static void the_grain_of_every_cross_rail_runs_across_the_newel(void **state)
{
	struct built b = built_from(PLAIN(
		PANELS ", rails: [{at: 0, height: 200}, {at: 0.5, height: 60}, {at: 1, height: "
		       "160}]}"));
	int rails = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next) {
		if (strcmp(p->name, "newel cross rail") != 0)
			continue;
		assert_int_equal(p->grain, GRAIN_ALONG);
		for (int i = 0; i < p->count; i++, rails++)
			assert_near(p->places[i].u.z, 0, 1e-9);
	}
	assert_true(rails >= 12);
	arena_free(b.arena);
}

/* Two mortises end to end are longer than what goes into them: 1 mm at either end. */
static void a_loose_tenon_of_a_newel_has_room_for_its_glue(void **state)
{
	struct built b = built_from(PLAIN(", section: 90"));
	(void)state;
	for (const struct bore *k = built_part(&b, "newel", 0)->bores; k; k = k->next)
		if (k->fixing == FIXING_LOOSE_TENON)
			assert_near(k->size.depth + k->mate.depth - k->fixing_length, 2, 1e-9);
	arena_free(b.arena);
}

static void all_pieces_of_a_newel_are_one_unit(void **state)
{
	struct built b = built_from(PLAIN(
		PANELS ", rails: [{at: 0, height: 200}, {at: 1, height: 160}]}, cap: pyramid"));
	(void)state;
	const struct unit *u = units_make(b.arena, b.parts);
	while (u && u->kind != &part_newel)
		u = u->next;
	/* core, 8 strips, 2 times 4 cross rails, cap, 4 pieces of quarter-round */
	assert_int_equal(u ? u->piece_count : 0, 1 + 8 + 8 + 1 + 4);
	arena_free(b.arena);
}

/* 10 mm (3/8 in) of end grain beside a dowel: common practice. */
static void dowels_of_a_newel_on_a_tread_keep_clear_of_its_end(void **state)
{
	struct built b = built_from(JOB("", "{side: open, from_step: 4, wall_past: 100}",
		"open: sawtooth", ", section: 90"));
	int dowels = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (const struct bore *h = p->bores; h; h = h->next) {
			if (!h->is_mate || !h->text ||
				strcmp(h->text, "dowel, newel to tread") != 0)
				continue;
			struct extent e = built_extent(p, 0);
			struct vec3 at = frame_place(p->places[0], h->at.origin);
			assert_true(at.y - h->size.width / 2 - e.low.y >= 10 - 1e-6);
			dowels++;
		}
	assert_int_equal(dowels, 2);
	arena_free(b.arena);
}

static bool is_said(const struct built *b, const char *text)
{
	for (const struct diag *d = b->diags.first; d; d = d->next)
		if (strcmp(d->text, text) == 0)
			return true;
	return false;
}

static void a_tread_that_cannot_hold_a_newel_is_told_of(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, left: wall, right: open,\n"
				    "  segments: [{risers: 10, run: 250}]}\n"
				    "treads: {thickness: 30, nosing: 25, side_overhang: 25, "
				    "strip_width: 90, screws: no}\n"
				    "stringers: {open: sawtooth, head: flush}\n"
				    "newels: {section: 60}\n");
	(void)state;
	assert_true(is_said(&b,
		"the edges of the tread leave no wood for dowels under a newel of 60 mm"));
	arena_free(b.arena);
}

static void a_newel_on_a_tread_is_not_let_into_the_floor_and_the_job_is_told(void **state)
{
	struct built b = built_from(JOB("", "{side: open, from_step: 4, wall_past: 100}",
		"open: sawtooth", ", section: 90, let_in: 25"));
	(void)state;
	assert_string_equal(built_complaint(&b),
		"newels.let_in: the bottom newel on the right stands on a tread and is not let "
		"into the floor");
	arena_free(b.arena);
}

#define OTHERS "{side: open, guard: by_others}"

static void where_others_make_the_guard_newels_stand_without_a_rail(void **state)
{
	struct built b = built_from(JOB("", OTHERS, "open: mitred", ", cap: flat"));
	(void)state;
	assert_non_null(b.parts);
	assert_int_equal(built_count(&b, "newel"), 2);
	assert_int_equal(built_count(&b, "newel cap"), 2);
	assert_int_equal(built_count(&b, "rail"), 0);
	assert_int_equal(built_count(&b, "baluster"), 0);
	arena_free(b.arena);
}

static int count_bores(const struct part *p, enum fixing fixing)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		n += b->fixing == fixing;
	return n;
}

/* Foot and cap are held as ever; its faces have no holes for a rail. */
static void a_newel_without_a_rail_has_its_bolt_and_no_holes_for_one(void **state)
{
	struct built with = built_from(JOB("", "open", "open: mitred", ", cap: flat"));
	struct built bare = built_from(JOB("", OTHERS, "open: mitred", ", cap: flat"));
	const struct part *railed = built_part(&with, "newel", 0);
	const struct part *p = built_part(&bare, "newel", 0);
	(void)state;
	assert_int_equal(count_bores(railed, FIXING_RAIL_BOLT), 1);
	assert_int_equal(count_bores(p, FIXING_RAIL_BOLT), 0);
	assert_int_equal(count_bores(p, FIXING_NEWEL_BOLT), 1);
	assert_int_equal(count_bores(p, FIXING_DOWEL), 1); /* of the cap */
	assert_near(p->newel->rail_high, 0, 1e-12);
	assert_near(p->newel->height, railed->newel->height, 1e-9);
	arena_free(with.arena);
	arena_free(bare.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(where_others_make_the_guard_newels_stand_without_a_rail),
		cmocka_unit_test(a_newel_without_a_rail_has_its_bolt_and_no_holes_for_one),
		cmocka_unit_test(a_bottom_newel_stands_on_what_the_stringers_stand_on),
		cmocka_unit_test(the_finish_is_laid_round_a_newel_and_leaves_no_void),
		cmocka_unit_test(a_newel_may_be_let_into_the_floor_which_goes_round_it),
		cmocka_unit_test(behind_a_newel_let_in_the_floor_has_no_joint_under_the_middle),
		cmocka_unit_test(a_glued_newel_is_of_as_many_plies_as_its_stock_asks),
		cmocka_unit_test(a_panelled_newel_has_a_core_and_two_strips_to_a_corner),
		cmocka_unit_test(spacer_blocks_are_as_long_as_the_panels_are_high),
		cmocka_unit_test(where_the_handrail_meets_a_panel_there_is_a_cross_rail),
		cmocka_unit_test(cross_rails_that_lie_over_each_other_are_refused),
		cmocka_unit_test(strips_that_leave_nothing_of_a_face_are_refused),
		cmocka_unit_test(on_a_closed_string_a_newel_is_notched_over_it_and_screwed),
		cmocka_unit_test(the_stringer_behind_a_bottom_newel_is_mortised_to_it),
		cmocka_unit_test(a_stringers_mortise_keeps_clear_of_the_bolts_access),
		cmocka_unit_test(the_grain_of_every_cross_rail_runs_across_the_newel),
		cmocka_unit_test(a_loose_tenon_of_a_newel_has_room_for_its_glue),
		cmocka_unit_test(all_pieces_of_a_newel_are_one_unit),
		cmocka_unit_test(dowels_of_a_newel_on_a_tread_keep_clear_of_its_end),
		cmocka_unit_test(a_tread_that_cannot_hold_a_newel_is_told_of),
		cmocka_unit_test(a_newel_on_a_tread_is_not_let_into_the_floor_and_the_job_is_told),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
