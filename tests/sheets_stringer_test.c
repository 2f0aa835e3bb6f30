/*
 * Holes and mortises of a stringer: on its sheet with their running positions, on its template at
 * their place, on the rod.
 *
 * The stringer is struck by hand with the 3-4-5 triangle (sheets_template.h): plank 244 wide,
 * 40 thick.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "near.h"
#include "sheets/stringer_bores.h"
#include "sheets/template_stringer.h"
#include "sheets_template.h"

/* Into the upper edge, in the middle of the thickness unless said otherwise. */
static struct bore dowel_at(double x, double z)
{
	struct bore b = { .at = { .u = { 1, 0, 0 }, .v = { 0, 0, -1 }, .w = { 0, 1, 0 } },
		.fixing = FIXING_DOWEL,
		.text = "dowel, post foot" };

	b.at.origin = vec3(x, 244, z);
	b.size = (struct bore_size){ BORE_HOLE, 10, 10, 25 };
	return b;
}

static void drill(struct arena *a, struct part *p, struct bore b)
{
	struct bore **tail = &p->bores;

	while (*tail)
		tail = &(*tail)->next;
	*tail = NEW(a, struct bore);
	**tail = b;
}

static struct bench_stair *drilled(struct arena *a, enum stringer_hand hand)
{
	struct bench_stair *b = bench_stair(a, 5, STRINGER_HOUSED, hand);

	drill(a, &b->part, dowel_at(408, 20));
	drill(a, &b->part, dowel_at(1008, 20));
	drill(a, &b->part, dowel_at(708, 12));
	return b;
}

static struct stringer_subject subject_of(struct arena *a, const struct bench_stair *b)
{
	return (struct stringer_subject){ .context = &b->context,
		.part = &b->part,
		.flight = &b->flight,
		.shape = stringer_shape(a, &b->part) };
}

static bool letters(const struct drawing *g, const char *words)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strcmp(k->text.text, words) == 0)
			return true;
	return false;
}

static const struct drawing *bench_of(struct arena *a, struct stringer_subject *t)
{
	struct drawing *g = drawing_new(a, USE_SHEET, 420, 297);
	struct sheet s = { .context = t->context, .drawing = g, .hand = { g, six_tenths(), 2.5 } };
	struct composition c = stringer_on_bench(t);

	c.compose(&s, c.what, 0.05);
	return g;
}

static void every_hole_has_its_running_position_on_the_bench(void **state)
{
	struct arena *a = arena_new();
	struct stringer_subject t = subject_of(a, drilled(a, STRINGER_LEFT_HAND));
	const struct drawing *g = bench_of(a, &t);
	(void)state;
	assert_true(letters(g, "a 408"));
	assert_true(letters(g, "a 1008"));
	assert_true(letters(g, "b 708"));
	arena_free(a);
}

/* At 1:20 a dowel hole of 10 is drawn 0.5 wide and 1.25 deep, from the upper edge at 12.2. */
static void a_hole_in_an_edge_is_drawn_broken_as_deep_as_it_goes(void **state)
{
	struct arena *a = arena_new();
	struct stringer_subject t = subject_of(a, drilled(a, STRINGER_LEFT_HAND));
	const struct mark *hole = NULL;
	(void)state;
	for (const struct mark *k = bench_of(a, &t)->first; k && !hole; k = k->next)
		if (k->kind == MARK_LINE && k->line.pen == PEN_HIDDEN && k->line.n == 4)
			hole = k;
	assert_non_null(hole);
	assert_near(fabs(hole->line.points[0].x - hole->line.points[3].x), 0.5, 1e-9);
	assert_near((hole->line.points[0].x + hole->line.points[3].x) / 2, 408 / 20.0, 1e-9);
	assert_near(hole->line.points[0].y, 12.2, 1e-9);
	assert_near(hole->line.points[1].y, 12.2 - 1.25, 1e-9);
	arena_free(a);
}

/* 12 from the outer face is 28 from the inner one of a left-hand housed stringer, which lies up:
 * its axes look to the right, where its inner face is. */
static void holes_of_one_kind_share_a_row_of_the_table(void **state)
{
	struct arena *a = arena_new();
	struct stringer_subject t = subject_of(a, drilled(a, STRINGER_LEFT_HAND));
	struct table table = stringer_bore_table(a, &t);
	const char *const *row = table.cells + table.column_count;
	(void)state;
	assert_int_equal(table.row_count, 2);
	assert_string_equal(table.cells[4], "408; 1008");
	assert_string_equal(row[0], "b");
	assert_string_equal(row[5], "244");
	assert_string_equal(row[6], "28");
	arena_free(a);
}

static void through_the_plank_is_measured_from_the_face_that_lies_up(void **state)
{
	struct arena *a = arena_new();
	struct stringer_subject t = subject_of(a, drilled(a, STRINGER_RIGHT_HAND));
	struct table table = stringer_bore_table(a, &t);
	(void)state;
	assert_string_equal(table.cells[table.column_count + 6], "12");
	arena_free(a);
}

static const struct rod_tick *tick_of_dowel(const struct marking_rod *rod)
{
	for (int i = 0; i < rod->n; i++)
		if (strstr(rod->ticks[i].name, "dowel, post foot"))
			return &rod->ticks[i];
	fail_msg("the dowel is not on the rod");
	return NULL;
}

static void a_hole_is_on_the_rod_of_its_stringer(void **state)
{
	struct arena *a = arena_new();
	struct bench_stair *b = drilled(a, STRINGER_LEFT_HAND);
	struct marking_rod rod = stringer_rod(a, &b->part, job_lettering(&b->job));
	(void)state;
	assert_near(tick_of_dowel(&rod)->at, 408, 1e-9);
	arena_free(a);
}

/* With another half in the post: to the half millimetre, where corners are lettered to the whole.
 */
static void a_hole_is_figured_on_the_rod_as_on_the_sheet(void **state)
{
	struct arena *a = arena_new();
	struct bench_stair *b = bench_stair(a, 5, STRINGER_HOUSED, STRINGER_LEFT_HAND);
	struct bore dowel = dowel_at(408.4, 20);
	(void)state;
	dowel.mate.depth = 25;
	drill(a, &b->part, dowel);
	struct stringer_subject t = subject_of(a, b);
	struct table table = stringer_bore_table(a, &t);
	struct marking_rod rod = stringer_rod(a, &b->part, job_lettering(&b->job));
	assert_string_equal(tick_of_dowel(&rod)->figure, "408.5");
	assert_string_equal(table.cells[4], "408.5");
	arena_free(a);
}

/* Round its outline the corners go up and come back; 240 mm apart, none runs over another. */
static void the_rod_of_a_stringer_is_ticked_in_rising_order(void **state)
{
	struct arena *a = arena_new();
	struct bench_stair *b = bench_stair(a, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	struct lettering how = job_lettering(&b->job);
	struct marking_rod rod = stringer_rod(a, &b->part, how);
	(void)state;
	for (int i = 1; i < rod.n; i++)
		assert_true(rod.ticks[i].at >= rod.ticks[i - 1].at);
	assert_true(rod_lanes(a, &rod, how) <= 3);
	arena_free(a);
}

/* Its hole in the stringer is drilled through the tread. */
static void a_hole_for_the_screw_of_another_piece_is_not_marked_out(void **state)
{
	struct arena *a = arena_new();
	struct bench_stair *b = bench_stair(a, 5, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	struct bore screw = dowel_at(408, 20);
	(void)state;
	screw.fixing = FIXING_SCREW;
	screw.is_mate = true;
	drill(a, &b->part, screw);
	struct stringer_subject t = subject_of(a, b);
	assert_int_equal(stringer_bore_table(a, &t).row_count, 0);
	arena_free(a);
}

/* Turned over, a hole 12 from one face of 40 would be 28 from it. */
static void a_sawtooth_with_holes_off_its_middle_says_which_face_is_up(void **state)
{
	struct arena *a = arena_new();
	struct bench_stair *b = bench_stair(a, 5, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	(void)state;
	drill(a, &b->part, dowel_at(408, 20));
	assert_non_null(strstr(stringer_face_words(a, &b->part), "either face up"));
	drill(a, &b->part, dowel_at(708, 12));
	assert_non_null(strstr(stringer_face_words(a, &b->part), "RIGHT-HAND FACE UP"));
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_hole_has_its_running_position_on_the_bench),
		cmocka_unit_test(a_hole_in_an_edge_is_drawn_broken_as_deep_as_it_goes),
		cmocka_unit_test(holes_of_one_kind_share_a_row_of_the_table),
		cmocka_unit_test(through_the_plank_is_measured_from_the_face_that_lies_up),
		cmocka_unit_test(a_hole_is_on_the_rod_of_its_stringer),
		cmocka_unit_test(a_hole_is_figured_on_the_rod_as_on_the_sheet),
		cmocka_unit_test(the_rod_of_a_stringer_is_ticked_in_rising_order),
		cmocka_unit_test(a_hole_for_the_screw_of_another_piece_is_not_marked_out),
		cmocka_unit_test(a_sawtooth_with_holes_off_its_middle_says_which_face_is_up),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
