/*
 * Pieces longer than any board, made in lengths.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "listed.h"
#include "near.h"
#include "rules_checked.h"

/* Rise 150, run 200: rails and skirts rise on a 3-4-5 triangle, over 2000 along the stair, 2500
 * along the rake; a board of 1600 yields 1600. */
#define SIDES(left, right)                                                                         \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1650}\n"                                                             \
	"stair: {width: 900, left: " left ", right: " right                                        \
	", segments: [{risers: 11, run: 200}]}\n"                                                  \
	"comfort: {least_rise: 100, least_run: 150, step_least: 400, sum_least: 300}\n"            \
	"treads: {thickness: 30, nosing: 20, nosing_radius: 10}\n"                                 \
	"risers: {thickness: 20}\n"                                                                \
	"stringers: {wall: sawtooth, wall_gap: 40}\n"
#define STAIR SIDES("wall", "wall")
#define OPEN SIDES("wall", "open")
#define STOCK(more) "stock: {lengths: [1600], end_trim: 0, rough_length: 0" more "}\n"
#define SHORT STOCK("")
#define WHOLE STOCK(", long_pieces: whole")
#define RAIL "wall_rails: [{side: right, height: 900, profile: square, width: 50, depth: 60}]\n"
#define SKIRT "skirts: {wall: plain, thickness: 18}\n"

static double length_of(const char *text, const char *name)
{
	struct built b = built_from(text);
	const struct part *p = built_part(&b, name, 0);
	assert_non_null(p);
	double length = p->size.length;
	arena_free(b.arena);
	return length;
}

/* By hand: plumb over the face of riser 1 to that of riser 11, 2000, and 60 * 3/5 for its lean, on
 * the 4/5 of the pitch. */
static void a_rail_is_whole_while_there_is_a_board_for_it(void **state)
{
	(void)state;
	assert_near(length_of(STAIR RAIL, "wall rail"), 2036 / 0.8, 1e-9);
}

static void a_rail_longer_than_any_board_is_two_that_butt(void **state)
{
	struct built b = built_from(STAIR RAIL SHORT);
	const struct part *one = built_part(&b, "wall rail, 1 of 2", 0);
	const struct part *two = built_part(&b, "wall rail, 2 of 2", 0);
	(void)state;
	assert_non_null(one);
	assert_non_null(two);
	assert_near(one->size.length + two->size.length, 2036 / 0.8, 1e-9);
	struct vec3 end = frame_place(one->places[0], vec3(one->size.length, 0, 0));
	assert_true(vec3_length(vec3_sub(end, two->places[0].origin)) < 1e-9);
	assert_near(one->end.mitre, 0, 1e-9);
	assert_near(two->start.bevel, 0, 1e-9);
	arena_free(b.arena);
}

static void neither_length_is_longer_than_a_board_nor_a_stub(void **state)
{
	struct built b = built_from(STAIR RAIL SHORT);
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		if (p->length_of.count) {
			assert_true(p->size.length <= 1600);
			assert_true(p->size.length >= 610);
		}
	arena_free(b.arena);
}

/* How many of these holes end on the joint of two parts, in the first and, as mates, in the next.
 */
static int halves(const struct part *p, double x, const char *text)
{
	int n = 0;
	for (const struct bore *b = p->bores; b; b = b->next)
		n += strcmp(b->text, text) == 0 && fabs(b->at.origin.x - x) < 1e-9;
	return n;
}

static void a_bolt_and_two_dowels_hold_them(void **state)
{
	struct built b = built_from(STAIR RAIL SHORT);
	const struct part *one = built_part(&b, "wall rail, 1 of 2", 0);
	const struct part *two = built_part(&b, "wall rail, 2 of 2", 0);
	(void)state;
	assert_int_equal(halves(one, one->size.length, "rail bolt, length to length"), 1);
	assert_int_equal(halves(two, 0, "rail bolt, length to length"), 1);
	assert_int_equal(halves(one, one->size.length, "dowel, length to length"), 2);
	assert_int_equal(halves(two, 0, "dowel, length to length"), 2);
	arena_free(b.arena);
}

/* 45 mm round: a bolt at its usual height would leave no wood for dowels over it. */
static void a_slim_round_rail_has_its_dowels_too(void **state)
{
	struct built b = built_from(
		STAIR SHORT "wall_rails: [{side: right, profile: round, width: 45, depth: 45}]\n");
	const struct part *one = built_part(&b, "wall rail, 1 of 2", 0);
	(void)state;
	assert_non_null(one);
	assert_int_equal(halves(one, one->size.length, "rail bolt, length to length"), 1);
	assert_int_equal(halves(one, one->size.length, "dowel, length to length"), 2);
	arena_free(b.arena);
}

static bool is_of_the_joint(const struct bore *b)
{
	return strstr(b->text, "length to length") || strstr(b->text, "access hole");
}

static void a_joint_keeps_clear_of_the_screws_of_brackets(void **state)
{
	(void)state;
	for (int spacing = 200; spacing < 900; spacing += 70) {
		struct arena *a = arena_new();
		struct built b = built_from(arena_printf(a,
			STAIR SHORT "wall_rails: [{side: right, bracket_spacing: %d}]\n", spacing));
		const struct part *one = built_part(&b, "wall rail, 1 of 2", 0);
		const struct part *two = built_part(&b, "wall rail, 2 of 2", 0);
		assert_non_null(one);
		assert_non_null(two);
		for (const struct bore *o = one->bores; o; o = o->next)
			assert_true(is_of_the_joint(o) || one->size.length - o->at.origin.x > 40);
		for (const struct bore *o = two->bores; o; o = o->next)
			assert_true(is_of_the_joint(o) || o->at.origin.x > 40);
		arena_free(a);
		arena_free(b.arena);
	}
}

static void a_skirt_is_scarfed_by_its_thickness(void **state)
{
	double whole = length_of(STAIR SKIRT WHOLE, "wall skirt");
	struct built b = built_from(STAIR SKIRT SHORT);
	const struct part *one = built_part(&b, "wall skirt, 1 of 2", 0);
	const struct part *two = built_part(&b, "wall skirt, 2 of 2", 0);
	(void)state;
	assert_non_null(one);
	assert_non_null(two);
	assert_near(one->size.length + two->size.length, whole + 18, 1e-6);
	assert_near(one->end.bevel, PI / 4, 1e-9);
	assert_near(two->start.bevel, PI / 4, 1e-9);
	assert_int_equal(one->count, 2); /* on either wall */
	arena_free(b.arena);
}

static void assert_cut_clear_of_corners(const struct part *p)
{
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			double to_long_point = p->size.length - s->a[i].x;
			/* the cut itself, or at least as far off as a corner may be */
			assert_true(to_long_point < 18 + 1e-6 || to_long_point >= 18 + 3);
		}
}

/* Its middle moves along the steps as the baseboard grows. */
static void a_skirt_cut_round_the_steps_is_cut_through_no_corner(void **state)
{
	(void)state;
	for (int baseboard = 80; baseboard < 200; baseboard += 10) {
		struct arena *a = arena_new();
		struct built b = built_from(arena_printf(a,
			STAIR SHORT "skirts: {wall: cut_round, thickness: 18, baseboard: %d}\n",
			baseboard));
		const struct part *one =
			built_part(&b, "wall skirt, cut round the steps, 1 of 2", 0);
		assert_non_null(one);
		assert_cut_clear_of_corners(one);
		arena_free(a);
		arena_free(b.arena);
	}
}

static void joints_of_rail_and_subrail_are_staggered(void **state)
{
	struct built b =
		built_from(OPEN "stock: {lengths: [2000], end_trim: 0}\ninfill: {subrail: yes}\n");
	const struct part *rail = built_part(&b, "rail, 1 of 2", 0);
	const struct part *sub = built_part(&b, "subrail, 1 of 2", 0);
	(void)state;
	assert_non_null(rail);
	assert_non_null(sub);
	struct vec3 joint = frame_place(rail->places[0], vec3(rail->size.length, 0, 0));
	double along = frame_place_back(sub->places[0], joint).x;
	assert_true(fabs(along - sub->size.length) >= 300 - 60);
	arena_free(b.arena);
}

static void what_carries_the_stair_is_never_joined(void **state)
{
	struct built b = built_from(OPEN SHORT RAIL "skirts: {wall: plain, open: mitred}\n");
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		assert_true(!p->stringer || p->length_of.count == 0);
	arena_free(b.arena);
}

static bool is_told(const struct diags *d, const char *hint)
{
	for (const struct diag *e = d->first; e; e = e->next)
		if (e->hint && strstr(e->hint, hint))
			return true;
	return false;
}

static void both_lengths_are_cut_out_of_boards(void **state)
{
	struct listed l = listed_from(STAIR RAIL SKIRT SHORT);
	(void)state;
	for (const struct blank *b = l.blanks; b; b = b->next)
		if (b->part->length_of.count)
			assert_int_equal(listed_cut(l.groups, b), blank_count(b));
	for (const struct cut_group *g = l.groups; g; g = g->next)
		assert_int_equal(g->misfit_count, 0);
	arena_free(l.built.arena);
}

static void a_piece_left_whole_names_the_key_that_joins_it(void **state)
{
	struct listed l = listed_from(STAIR RAIL WHOLE);
	(void)state;
	assert_non_null(built_part(&l.built, "wall rail", 0));
	assert_true(is_told(&l.built.diags, "write stock.long_pieces: joined"));
	assert_true(is_told(&l.built.diags, "name 2545 mm among stock.lengths"));
	arena_free(l.built.arena);
}

static void a_rail_that_goes_on_does_not_end_in_the_air(void **state)
{
	struct checked c =
		checked_row_against("irc-2018", "loose_rail_ends", STAIR RAIL SHORT, NULL, 0);
	(void)state;
	assert_non_null(built_part(&c.built, "wall rail, 2 of 2", 0));
	assert_int_equal(c.findings->state, FINDING_MET);
	arena_free(c.built.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_rail_is_whole_while_there_is_a_board_for_it),
		cmocka_unit_test(a_rail_longer_than_any_board_is_two_that_butt),
		cmocka_unit_test(neither_length_is_longer_than_a_board_nor_a_stub),
		cmocka_unit_test(a_bolt_and_two_dowels_hold_them),
		cmocka_unit_test(a_slim_round_rail_has_its_dowels_too),
		cmocka_unit_test(a_joint_keeps_clear_of_the_screws_of_brackets),
		cmocka_unit_test(a_skirt_is_scarfed_by_its_thickness),
		cmocka_unit_test(a_skirt_cut_round_the_steps_is_cut_through_no_corner),
		cmocka_unit_test(joints_of_rail_and_subrail_are_staggered),
		cmocka_unit_test(what_carries_the_stair_is_never_joined),
		cmocka_unit_test(both_lengths_are_cut_out_of_boards),
		cmocka_unit_test(a_piece_left_whole_names_the_key_that_joins_it),
		cmocka_unit_test(a_rail_that_goes_on_does_not_end_in_the_air),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
