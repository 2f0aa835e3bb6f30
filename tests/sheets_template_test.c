/*
 * Full-size templates: the line to cut is the part's outline, on the roll, joined from sheets and
 * in pieces.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "near.h"
#include "one_arena.h"
#include "sheets/template_stringer.h"
#include "sheets/template_stringer_pieces.h"
#include "sheets_template.h"

static const struct mark *cut_line(const struct drawing *g)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_LINE && k->line.pen == PEN_TEMPLATE)
			return k;
	return NULL;
}

static const struct drawing *find_use(const struct drawing *list, enum drawing_use use)
{
	for (; list; list = list->next)
		if (list->use == use)
			return list;
	fail_msg("no drawing of that use");
	return NULL;
}

static bool says(const struct drawing *g, const char *words)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strstr(k->text.text, words))
			return true;
	return false;
}

static void assert_drawn_as(struct outline o, const struct mark *line, double along)
{
	assert_int_equal(line->line.n, o.n);
	assert_true(line->line.closed);
	for (int i = 0; i < o.n; i++) {
		struct vec drawn = vec_sub(line->line.points[i], line->line.points[0]);
		struct vec meant = vec_sub(o.corners[i].at, o.corners[0].at);
		assert_near(drawn.x, along * meant.x, 0.001);
		assert_near(drawn.y, meant.y, 0.001);
	}
}

static void the_roll_carries_the_outline_at_true_size(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	const struct drawing *roll = find_use(bench_templates(arena, b), USE_ROLL);

	assert_drawn_as(b->part.outline, cut_line(roll), 1);
	assert_string_equal(roll->file, "test-stair-S1-roll");
	assert_null(roll->svg);
}

/* Its outline is that of the outer face, which a left-hand one would hide underneath. */
static void a_left_hand_mitred_stringer_is_drawn_from_its_outer_face(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 5, STRINGER_MITRED, STRINGER_LEFT_HAND);
	const struct drawing *roll = find_use(bench_templates(arena, b), USE_ROLL);

	assert_drawn_as(b->part.outline, cut_line(roll), -1);
	assert_true(says(roll, "OUTER FACE UP"));
	assert_true(says(roll, "→ lower end"));
}

static void a_right_hand_mitred_stringer_is_not_turned_over(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 5, STRINGER_MITRED, STRINGER_RIGHT_HAND);
	const struct drawing *roll = find_use(bench_templates(arena, b), USE_ROLL);

	assert_drawn_as(b->part.outline, cut_line(roll), 1);
	assert_true(says(roll, "← lower end"));
}

/* Grooves are routed in the inner face: it is the right-hand one that is seen from behind. */
static void a_housed_stringer_is_drawn_from_its_inner_face(void **state)
{
	(void)state;
	struct bench_stair *right = bench_stair(arena, 5, STRINGER_HOUSED, STRINGER_RIGHT_HAND);
	struct bench_stair *left = bench_stair(arena, 5, STRINGER_HOUSED, STRINGER_LEFT_HAND);
	const struct drawing *roll = find_use(bench_templates(arena, right), USE_ROLL);

	assert_drawn_as(right->part.outline, cut_line(roll), -1);
	assert_true(says(roll, "INNER FACE UP"));
	roll = find_use(bench_templates(arena, left), USE_ROLL);
	assert_drawn_as(left->part.outline, cut_line(roll), 1);
}

/* A right-hand one lies with its outer face, which its own z points out of, down. */
static void a_table_says_from_below_of_the_holes_that_are_drawn_broken(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 3, STRINGER_HOUSED, STRINGER_RIGHT_HAND);
	struct bore inner = { .at = frame_at(300, 50, 0), .size = { BORE_HOLE, 8, 8, 12 } };
	struct bore outer = { &inner, .at = frame_at(500, 50, 40),
		.size = { BORE_HOLE, 8, 8, 12 } };

	inner.at.v = vec3(0, -1, 0);
	inner.at.w = vec3(0, 0, -1);
	b->part.bores = &outer;
	struct lettering l = job_lettering(&b->job);
	struct positions p = stringer_marks(arena, &b->part, l);
	assert_string_equal(p.position[p.n - 2].what, "Ø 8, 12 deep, from below");
	assert_string_equal(p.position[p.n - 1].what, "Ø 8, 12 deep");
}

/* A housed one sawn plumb at both ends out of a plank of 295: its steps are inside. */
static void a_corner_that_is_no_step_is_told_by_its_edge_or_its_end(void **state)
{
	(void)state;
	static const struct corner sawn[] = { { .at = { 0, 119 } }, { .at = { 184, 0 } },
		{ .at = { 4900, 0 } }, { .at = { 5008, 177 } }, { .at = { 4932, 295 } },
		{ .at = { 114, 295 } } };
	static const char *const told[] = { "lower end", "lower edge", "lower edge", "upper end",
		"upper edge", "upper edge" };
	struct bench_stair *b = bench_stair(arena, 3, STRINGER_HOUSED, STRINGER_LEFT_HAND);

	b->part.outline = (struct outline){ sawn, 6 };
	struct positions p = stringer_corners(arena, &b->part, job_lettering(&b->job));
	assert_true(p.n >= 6);
	for (int i = 0; i < 6; i++)
		assert_string_equal(p.position[i].what, told[i]);
}

static void a_template_says_what_it_is_and_that_figures_govern(void **state)
{
	(void)state;
	static const char *const words[] = { "TEMPLATE - FULL SIZE", "Job T1", "S1", "make 1",
		"crown edge up", "grain", "govern", "STOP", "100 mm", "4 in" };
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	const struct drawing *roll = find_use(bench_templates(arena, b), USE_ROLL);

	for (size_t i = 0; i < sizeof(words) / sizeof(*words); i++)
		if (!says(roll, words[i]))
			fail_msg("the roll does not say \"%s\"", words[i]);
}

/* By hand: the front of tread 3 is 108 + 2 x 300 along and 244 across. */
static void a_corner_is_lettered_with_its_position_from_the_lower_end(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	const struct drawing *roll = find_use(bench_templates(arena, b), USE_ROLL);

	assert_true(says(roll, ": 708, 244"));
	assert_true(says(roll, "front of tread 3"));
}

/* 18 steps of 300 mm are longer than 200 in, the longest page of PDF. */
static void a_roll_longer_than_a_page_is_parted_and_its_parts_name_each_other(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 18, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	const struct drawing *one = find_use(bench_templates(arena, b), USE_ROLL);
	const struct drawing *two = one->next;

	assert_int_equal(two->use, USE_ROLL);
	assert_true(one->width <= 5080 && two->width <= 5080);
	assert_true(says(one, "lay on T-1/2"));
	assert_true(says(two, "goes under T-1/1"));
}

static bool has_tick(const struct pattern *p, double x)
{
	for (const struct pattern_line *l = p->lines; l; l = l->next)
		if (l->chain.n == 2 && fabs(l->chain.points[0].x - x) < 0.001 &&
			fabs(l->chain.points[1].x - x) < 0.001)
			return true;
	return false;
}

static void the_rod_is_ticked_at_every_corner(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	struct lettering l = job_lettering(&b->job);
	struct marking_rod marks = stringer_rod(arena, &b->part, l);
	struct pattern rod = rod_pattern(arena, &marks, l);

	for (int i = 0; i < b->part.outline.n; i++)
		assert_true(has_tick(&rod, b->part.outline.corners[i].at.x));
}

static const struct drawing *find_id(const struct drawing *list, enum drawing_use use,
	const char *id)
{
	for (; list; list = list->next)
		if (list->use == use && !strcmp(list->id, id))
			return list;
	return NULL;
}

static void the_step_file_has_foot_step_head_and_rod(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	const struct drawing *all = bench_templates(arena, b);
	const struct drawing *cover = find_id(all, USE_STEP, "T-1");

	assert_non_null(find_id(all, USE_STEP, "T-1/foot A1"));
	assert_non_null(find_id(all, USE_STEP, "T-1/step A1"));
	assert_non_null(find_id(all, USE_STEP, "T-1/head A1"));
	assert_true(says(cover, "step 11 times"));
	assert_true(says(cover, "rod"));
}

/* Two steps are not one step repeated. */
static void a_stair_of_two_steps_has_only_foot_and_head(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 2, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	const struct drawing *all = bench_templates(arena, b);

	assert_non_null(find_id(all, USE_STEP, "T-1/foot A1"));
	assert_null(find_id(all, USE_STEP, "T-1/step A1"));
	assert_non_null(find_id(all, USE_STEP, "T-1/head A1"));
}

/* A carriage below, open and mitred from tread 5 on: the step stands for the longer run. */
static void the_step_stands_only_for_steps_that_are_alike(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	struct vec *front = NEW_N(arena, struct vec, 13);

	for (int i = 0; i < 13; i++)
		front[i] = vec_add(b->stringer.tread_corners[i], i < 4 ? vec(16, -12) : vec(0, 0));
	b->stringer.tread_corners = front;
	const struct drawing *cover = find_id(bench_templates(arena, b), USE_STEP, "T-1");
	assert_true(says(cover, "step 2 8 times"));
	assert_true(says(cover, "step 3 times"));
}

static void each_piece_begins_where_the_one_before_it_ends(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 13, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	struct template_pieces p = template_pieces(arena, &b->part);

	assert_int_equal(p.n, 3);
	for (int i = 1; i < p.n; i++) {
		const struct template_piece *low = &p.piece[i - 1];
		double longer = (low->times - 1) * (low->region.x1 - low->region.x0);
		assert_near(p.piece[i].region.x0, low->region.x1 + longer, 0.001);
	}
	assert_near(p.piece[1].region.x1 - p.piece[1].region.x0, 300, 0.001);
}

/* Two squares of 50, side by side: the side between them is the second of the one, the last of the
 * other. */
static void a_side_where_housings_run_together_is_no_line_to_work_to(void **state)
{
	(void)state;
	static const struct corner left[] = { { { 0, 0 }, 0 }, { { 50, 0 }, 0 }, { { 50, 50 }, 0 },
		{ { 0, 50 }, 0 } };
	static const struct corner right[] = { { { 50, 0 }, 0 }, { { 100, 0 }, 0 },
		{ { 100, 50 }, 0 }, { { 50, 50 }, 0 } };
	struct feature two = { .kind = FEATURE_GROOVE, .at = { right, 4 } };
	struct feature one = { .next = &two, .kind = FEATURE_GROOVE, .at = { left, 4 } };
	struct bench_stair *b = bench_stair(arena, 3, STRINGER_HOUSED, STRINGER_LEFT_HAND);
	b->part.features = &one;

	const struct chain *c = groove_lines(arena, &b->part, &one);
	assert_null(c->next);
	assert_false(c->closed);
	assert_int_equal(c->n, 4);
	assert_near(c->points[0].x, 50, 1e-9);
	assert_near(c->points[0].y, 50, 1e-9);
	assert_near(c->points[3].x, 50, 1e-9);
	assert_near(c->points[3].y, 0, 1e-9);
	b->part.features = &two;
	two.next = NULL;
	assert_true(groove_lines(arena, &b->part, &two)->closed);
}

static void each_file_of_sheets_begins_with_the_calibration_page(void **state)
{
	(void)state;
	struct bench_stair *b = bench_stair(arena, 4, STRINGER_SAWTOOTH, STRINGER_EITHER_HAND);
	int pages = 0;

	for (const struct drawing *g = bench_templates(arena, b); g && g->next; g = g->next) {
		if (strcmp(g->file, g->next->file) != 0)
			assert_int_equal(g->next->use, USE_CALIBRATION);
		pages += g->use == USE_CALIBRATION;
	}
	assert_int_equal(pages, 2);
}

static void no_text_touches_text_or_the_line_to_cut(void **state)
{
	(void)state;
	static const enum stringer_kind kinds[] = { STRINGER_SAWTOOTH, STRINGER_MITRED,
		STRINGER_HOUSED };

	for (int kind = 0; kind < 3; kind++) {
		struct bench_stair *b = bench_stair(arena, 7, kinds[kind], STRINGER_LEFT_HAND);
		for (struct drawing *g = bench_templates(arena, b); g; g = g->next) {
			const char *report;
			if (drawing_faults(arena, g, six_tenths(), &report) > 0)
				fail_msg("%s", report);
		}
	}
}

/* A half circle of 100 mm: every point lies on it, and every chord within 0.001 mm of it. */
static void an_arc_is_flattened_within_a_thousandth(void **state)
{
	(void)state;
	const struct corner corners[] = { { { -100, 0 }, -1 }, { { 100, 0 }, 0 } };
	struct chain c = outline_chain(arena, (struct outline){ corners, 2 });

	assert_true(c.n > 300);
	for (int i = 0; i + 1 < c.n; i++) {
		struct vec middle = vec_scale(vec_add(c.points[i], c.points[i + 1]), 0.5);
		assert_near(vec_length(c.points[i]), 100, 1e-9);
		assert_true(c.points[i].y > -1e-9);
		assert_near(vec_length(middle), 100, 0.001);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_roll_carries_the_outline_at_true_size),
		cmocka_unit_test(a_left_hand_mitred_stringer_is_drawn_from_its_outer_face),
		cmocka_unit_test(a_right_hand_mitred_stringer_is_not_turned_over),
		cmocka_unit_test(a_housed_stringer_is_drawn_from_its_inner_face),
		cmocka_unit_test(a_table_says_from_below_of_the_holes_that_are_drawn_broken),
		cmocka_unit_test(a_corner_that_is_no_step_is_told_by_its_edge_or_its_end),
		cmocka_unit_test(a_template_says_what_it_is_and_that_figures_govern),
		cmocka_unit_test(a_corner_is_lettered_with_its_position_from_the_lower_end),
		cmocka_unit_test(a_roll_longer_than_a_page_is_parted_and_its_parts_name_each_other),
		cmocka_unit_test(the_rod_is_ticked_at_every_corner),
		cmocka_unit_test(the_step_file_has_foot_step_head_and_rod),
		cmocka_unit_test(a_stair_of_two_steps_has_only_foot_and_head),
		cmocka_unit_test(the_step_stands_only_for_steps_that_are_alike),
		cmocka_unit_test(each_piece_begins_where_the_one_before_it_ends),
		cmocka_unit_test(a_side_where_housings_run_together_is_no_line_to_work_to),
		cmocka_unit_test(each_file_of_sheets_begins_with_the_calibration_page),
		cmocka_unit_test(no_text_touches_text_or_the_line_to_cut),
		cmocka_unit_test(an_arc_is_flattened_within_a_thousandth),
	};

	return cmocka_run_group_tests(tests, arena_open, arena_close);
}
