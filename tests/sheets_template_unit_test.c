/*
 * Templates of pieces that are glued up: a tread with its strips, a braced unit of balusters.
 *
 * By hand: a body of 900 by 200, a front strip of 930 by 30 mitred at its right-hand end, and a
 * return of 230 by 30 mitred to it.
 *
 *      ________________________
 *     |                     |  |   230
 *     |       body          |  |
 *     |_____________________|  |   30
 *     |_____________________`._|
 *     0                    900 930
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "draw/bounds.h"
#include "near.h"
#include "sheets/template_jig.h"
#include "sheets/template_unit.h"

static const struct lettering millimetres = { UNITS_MILLIMETRES, 1, 0 };
static const struct face_names names = { "left", "middle", "right", "front", "back" };

static struct arena *arena;
static struct part piece[6];
static struct unit_piece pieces[6];
static struct unit unit;
static struct baluster some_baluster;

static struct outline outline_of(const struct corner *corners, int n)
{
	struct corner *copy = NEW_N(arena, struct corner, n);

	memcpy(copy, corners, sizeof(*copy) * (size_t)n);
	return (struct outline){ copy, n };
}

static void add_piece(struct outline o, struct frame at, double thickness)
{
	struct part *p = &piece[unit.piece_count];
	struct unit_piece *u = &pieces[unit.piece_count++];
	struct box b = outline_extent(o);

	p->mark = "X1";
	p->name = "piece";
	p->outline = o;
	p->size = (struct part_size){ b.x1 - b.x0, b.y1 - b.y0, thickness };
	u->part = p;
	u->at = u->in_house = at;
}

static void add_board(double x, double y, double length, double width, double thickness)
{
	const struct corner corners[] = { { { 0, 0 }, 0 }, { { length, 0 }, 0 },
		{ { length, width }, 0 }, { { 0, width }, 0 } };

	add_piece(outline_of(corners, 4), frame_at(x, y, 0), thickness);
}

/* The return lies across: its own x runs back, its y to the left. */
static void glue_up_tread(void)
{
	const struct corner strip[] = { { { 0, 0 }, 0 }, { { 930, 0 }, 0 }, { { 900, 30 }, 0 },
		{ { 0, 30 }, 0 } };
	const struct corner side[] = { { { 0, 0 }, 0 }, { { 230, 0 }, 0 }, { { 230, 30 }, 0 },
		{ { 30, 30 }, 0 } };
	struct frame across = { { 930, 0, 0 }, { 0, 1, 0 }, { -1, 0, 0 }, { 0, 0, 1 } };

	add_board(0, 30, 900, 200, 30);
	add_piece(outline_of(strip, 4), frame_at(0, 0, 0), 30);
	add_piece(outline_of(side, 4), across, 30);
}

static void drill(struct part *p, double x, double y, double diameter)
{
	struct bore *b = NEW(arena, struct bore);

	b->at = frame_at(x, y, p->size.thickness);
	b->size = (struct bore_size){ BORE_HOLE, diameter, diameter, 20 };
	b->text = "dowel";
	b->next = p->bores;
	p->bores = b;
}

static int start(void **state)
{
	(void)state;
	arena = arena_new();
	memset(piece, 0, sizeof(piece));
	memset(pieces, 0, sizeof(pieces));
	unit = (struct unit){ .mark = "TU1", .pieces = pieces, .count = 1 };
	return 0;
}

static int stop(void **state)
{
	(void)state;
	arena_free(arena);
	return 0;
}

static struct unit_face tread(void)
{
	return unit_face(arena, &unit, FACES_FLUSH, millimetres, &names);
}

static double length_of(const struct chain *list)
{
	double sum = 0;

	for (const struct chain *c = list; c; c = c->next)
		for (int i = 0; i + 1 < c->n; i++)
			sum += vec_length(vec_sub(c->points[i + 1], c->points[i]));
	return sum;
}

/* Round 930 by 230; between the pieces 900, 200, and the mitre across a square of 30. */
static void what_is_cut_runs_round_the_pieces_and_joints_between_them(void **state)
{
	(void)state;
	glue_up_tread();
	struct unit_face f = tread();

	assert_near(length_of(f.lines.cut), 2 * (930 + 230), 0.001);
	assert_near(length_of(f.lines.joint), 900 + 200 + 30 * sqrt(2), 0.001);
}

static void a_mitred_tread_needs_a_template(void **state)
{
	(void)state;
	glue_up_tread();
	struct unit_face f = tread();

	assert_false(face_is_plain(arena, &f));
}

static void a_rectangle_glued_up_of_two_boards_needs_none(void **state)
{
	(void)state;
	add_board(0, 0, 900, 30, 30);
	add_board(0, 30, 900, 200, 30);
	struct unit_face f = tread();

	assert_true(face_is_plain(arena, &f));
}

static void a_hole_makes_the_difference(void **state)
{
	(void)state;
	add_board(0, 0, 900, 230, 30);
	drill(&piece[0], 850, 70, 12);
	struct unit_face f = tread();

	assert_false(face_is_plain(arena, &f));
}

/* A moulding under the face, 15 thick and flush with the underside. */
static void what_lies_under_the_face_is_left_out(void **state)
{
	(void)state;
	add_board(0, 0, 900, 230, 30);
	add_board(0, 230, 900, 20, 15);
	struct unit_face f = tread();

	assert_near(f.extent.y1, 230, 1e-9);
}

/* A body of 900 whose hole is 850 along and 70 back from its own corner, 30 behind the front. */
static void a_hole_is_listed_as_far_from_end_and_front_edge_as_it_is(void **state)
{
	(void)state;
	glue_up_tread();
	drill(&piece[0], 850, 70, 12);
	struct unit_face f = tread();
	struct positions p = face_positions(arena, &f);
	const struct position *last = &p.position[p.n - 1];

	assert_near(last->at.x, 850, 1e-9);
	assert_near(last->at.y, 100, 1e-9);
	assert_string_equal(last->along, "850");
	assert_string_equal(last->across, "100");
	assert_string_equal(last->what, "Ø 12, 20 deep: dowel");
}

/* The round of the hole: every point 6 from its middle, and it is worked to. */
static void a_hole_is_drawn_as_large_as_it_is(void **state)
{
	(void)state;
	add_board(0, 0, 900, 230, 30);
	drill(&piece[0], 850, 70, 12);
	struct unit_face f = tread();
	struct draft *d = face_draft(arena, &f, face_positions(arena, &f), face_region(&f));
	int rounds = 0;

	for (const struct pattern_line *l = d->pattern.lines; l; l = l->next) {
		if (l->pen != PEN_TEMPLATE || l->chain.n < 20)
			continue;
		rounds++;
		for (int i = 0; i < l->chain.n; i++)
			assert_near(vec_length(vec_sub(l->chain.points[i], vec(850, 70))), 6, 1e-6);
	}
	assert_int_equal(rounds, 1);
}

static void only_the_end_with_something_to_mark_goes_on_sheets(void **state)
{
	(void)state;
	glue_up_tread();
	struct unit_face f = tread();
	struct template_parts parts = face_parts(arena, &f, face_positions(arena, &f));

	assert_int_equal(parts.n, 1);
	assert_string_equal(parts.name[0], "right");
	assert_true(parts.region[0].x0 > 700 && parts.region[0].x1 > 930);
}

static void holes_at_both_ends_make_two_stretches(void **state)
{
	(void)state;
	add_board(0, 0, 900, 230, 30);
	drill(&piece[0], 850, 70, 12);
	drill(&piece[0], 50, 70, 12);
	struct unit_face f = tread();
	struct template_parts parts = face_parts(arena, &f, face_positions(arena, &f));

	assert_int_equal(parts.n, 2);
	assert_string_equal(parts.name[0], "left");
	assert_string_equal(parts.name[1], "right");
}

/* A half round runs on from the straight edges without a corner. */
static void a_round_end_is_shown_whole(void **state)
{
	(void)state;
	const struct corner round[] = { { { 0, 0 }, 0 }, { { 900, 0 }, 1 }, { { 900, 230 }, 0 },
		{ { 0, 230 }, 0 } };

	add_piece(outline_of(round, 4), frame_at(0, 0, 0), 30);
	struct unit_face f = tread();
	struct template_parts parts = face_parts(arena, &f, face_positions(arena, &f));

	assert_int_equal(parts.n, 1);
	assert_string_equal(parts.name[0], "right");
	assert_true(parts.region[0].x0 < 900 && parts.region[0].x1 > 900 + 115);
}

static void neighbouring_marks_are_said_from_first_to_last(void **state)
{
	(void)state;
	assert_string_equal(marks_words(arena, "B1, B2, B3, B5"), "B1 to B3, B5");
	assert_string_equal(marks_words(arena, "B1, B2"), "B1, B2");
	assert_string_equal(marks_words(arena, "N9, N10, N11, T12"), "N9 to N11, T12");
	assert_string_equal(marks_words(arena, "TU1"), "TU1");
}

static void neighbouring_steps_are_said_from_first_to_last(void **state)
{
	(void)state;
	static const int steps[] = { 1, 3, 4, 5, 7 };

	assert_string_equal(number_words(arena, steps, 5), "1, 3 to 5, 7");
}

/* --- jigs --- */

/* Two balusters of 30, 900 and 980 tall, 100 apart and cut to a rake of 80 in 130 at the top; one
 * level cross piece 400 up, one on the rake. */
static void brace_balusters(void)
{
	const struct corner first[] = { { { 0, 0 }, 0 }, { { 900, 0 }, 0 }, { { 918.46, 30 }, 0 },
		{ { 0, 30 }, 0 } };
	const struct corner second[] = { { { 0, 0 }, 0 }, { { 980, 0 }, 0 }, { { 998.46, 30 }, 0 },
		{ { 0, 30 }, 0 } };
	const struct corner level[] = { { { 0, 0 }, 0 }, { { 100, 0 }, 0 }, { { 100, 40 }, 0 },
		{ { 0, 40 }, 0 } };
	struct frame lying = { { 440, 30, 0 }, { 0, 1, 0 }, { -1, 0, 0 }, { 0, 0, 1 } };
	struct vec3 along = vec3_unit(vec3(80, 130, 0));
	struct frame raked = { { 700, 30, 0 }, along, { -along.y, along.x, 0 }, { 0, 0, 1 } };

	add_piece(outline_of(first, 4), frame_at(0, 0, 0), 30);
	add_piece(outline_of(second, 4), frame_at(0, 130, 0), 30);
	piece[0].baluster = piece[1].baluster = &some_baluster;
	add_piece(outline_of(level, 4), lying, 20);
	add_piece(outline_of(level, 4), raked, 20);
}

/* Do two convex outlines share more than an edge?  One direction square to an edge of either must
 * keep them apart. */
static bool is_apart_along(const struct vec *p, int n, const struct vec *q, int m, struct vec axis)
{
	double high = -INFINITY, low = INFINITY;

	for (int i = 0; i < n; i++)
		high = fmax(high, vec_dot(p[i], axis));
	for (int i = 0; i < m; i++)
		low = fmin(low, vec_dot(q[i], axis));
	return low > high - 0.001;
}

static bool is_apart_by_edge(const struct vec *p, int n, const struct vec *q, int m)
{
	for (int i = 0; i < n; i++) {
		struct vec axis = vec_left(vec_unit(vec_sub(p[(i + 1) % n], p[i])));
		if (is_apart_along(p, n, q, m, axis) ||
			is_apart_along(p, n, q, m, vec_scale(axis, -1)))
			return true;
	}
	return false;
}

static void assert_apart(const struct vec *p, int n, const struct vec *q, int m)
{
	assert_true(is_apart_by_edge(p, n, q, m) || is_apart_by_edge(q, m, p, n));
}

static void no_block_lies_where_a_clamp_lies_or_a_piece(void **state)
{
	(void)state;
	brace_balusters();
	struct jig j = jig_make(arena, &unit, millimetres);
	struct chain *faces = unit_faces(arena, j.face.unit, FACES_ALL);

	assert_int_equal(j.clamp_count, 4);
	assert_int_equal(j.block_count, 6);
	for (int i = 0; i < j.block_count; i++) {
		for (int k = 0; k < j.clamp_count; k++)
			assert_apart(j.blocks[i].corner, 4, j.clamps[k].corner, 4);
		for (int k = 0; k < i; k++)
			assert_apart(j.blocks[i].corner, 4, j.blocks[k].corner, 4);
		for (const struct chain *c = faces; c; c = c->next)
			assert_apart(j.blocks[i].corner, 4, c->points, c->n);
	}
}

/* The top of the first runs from 900 to 918.46 across its 30. */
static void a_top_block_lies_on_the_rake(void **state)
{
	(void)state;
	brace_balusters();
	struct jig j = jig_make(arena, &unit, millimetres);
	int found = 0;

	for (int i = 0; i < j.block_count; i++) {
		struct vec run = vec_sub(j.blocks[i].corner[1], j.blocks[i].corner[0]);
		if (fabs(fabs(run.x) - 18.46) < 0.001 && fabs(fabs(run.y) - 30) < 0.001)
			found++;
	}
	assert_int_equal(found, 2);
}

static void every_block_touches_the_work(void **state)
{
	(void)state;
	brace_balusters();
	struct jig j = jig_make(arena, &unit, millimetres);

	for (int i = 0; i < j.block_count; i++) {
		struct vec middle =
			vec_scale(vec_add(j.blocks[i].corner[0], j.blocks[i].corner[1]), 0.5);
		double least = INFINITY;
		for (const struct chain *c = j.face.lines.cut; c; c = c->next)
			for (int k = 0; k + 1 < c->n; k++) {
				struct vec a = c->points[k], run = vec_sub(c->points[k + 1], a);
				double t = vec_dot(vec_sub(middle, a), run) / vec_dot(run, run);
				struct vec foot = vec_add(a, vec_scale(run, fmin(1, fmax(0, t))));
				least = fmin(least, vec_length(vec_sub(middle, foot)));
			}
		assert_near(least, 0, 0.001);
	}
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, start, stop)

int main(void)
{
	const struct CMUnitTest tests[] = {
		TEST(what_is_cut_runs_round_the_pieces_and_joints_between_them),
		TEST(a_mitred_tread_needs_a_template),
		TEST(a_rectangle_glued_up_of_two_boards_needs_none),
		TEST(a_hole_makes_the_difference),
		TEST(what_lies_under_the_face_is_left_out),
		TEST(a_hole_is_listed_as_far_from_end_and_front_edge_as_it_is),
		TEST(a_hole_is_drawn_as_large_as_it_is),
		TEST(only_the_end_with_something_to_mark_goes_on_sheets),
		TEST(holes_at_both_ends_make_two_stretches),
		TEST(a_round_end_is_shown_whole),
		TEST(neighbouring_marks_are_said_from_first_to_last),
		TEST(neighbouring_steps_are_said_from_first_to_last),
		TEST(no_block_lies_where_a_clamp_lies_or_a_piece),
		TEST(a_top_block_lies_on_the_rake),
		TEST(every_block_touches_the_work),
	};

	return cmocka_run_group_tests_name("templates of what is glued up", tests, NULL, NULL);
}
