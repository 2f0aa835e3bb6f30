/*
 * Templates of skirts that are mitred to the risers: where the cuts come out behind.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "sheets/template_skirt.h"
#include "six_tenths.h"

/* On a short stair it is one board, on a long one two, scarfed. */
#define STAIR(rise, risers, open, wall)                                                            \
	"pitchboard: 1\n"                                                                          \
	"job: {name: of the test, units: millimetres}\n"                                           \
	"floors: {total_rise: " rise "}\n"                                                         \
	"stair: {width: 900, " open ": open, " wall ": wall,\n"                                    \
	"  segments: [{risers: " risers ", run: 280}]}\n"                                          \
	"stringers: {open: sawtooth}\n"                                                            \
	"skirts: {open: mitred}\n"

static struct template_job template_of(const struct built *b, const struct part *p)
{
	const struct sheet_context c = { .stair = b->stair,
		.parts = b->parts,
		.measure = six_tenths() };

	return skirt_template(b->arena, &c, p);
}

/* A line of the pattern, along the board and across it, as a direction in the house. */
static struct vec3 in_house(const struct part *p, const struct template_job *t,
	const struct pattern_line *l)
{
	struct vec run = vec_sub(l->chain.points[1], l->chain.points[0]);
	bool seen_from_behind = strstr(t->words.edges, "→ lower end") != NULL;

	return frame_turn(p->places[0], vec3(seen_from_behind ? -run.x : run.x, run.y, 0));
}

/* Each cut has two broken lines: level from its long point to its short point, and from there up.
 */
static int level_lines(const struct built *b, const struct part *p)
{
	struct template_job t = template_of(b, p);
	int levels = 0, plumbs = 0;

	for (const struct pattern_line *l = t.pattern.lines; l; l = l->next) {
		if (l->pen != PEN_HIDDEN)
			continue;
		struct vec3 d = in_house(p, &t, l);
		bool is_level = near_enough(d.z, 0) && fabs(d.x - p->size.thickness) < 1e-6;
		levels += is_level;
		plumbs += near_enough(d.x, 0) && d.z > 0;
	}
	assert_int_equal(levels, plumbs);
	return levels;
}

static void check_mitres(const char *text, int lengths, int mitres)
{
	struct built b = built_from(text);
	int found = 0, boards = 0;

	assert_non_null(b.parts);
	for (const struct part *p = b.parts; p; p = p->next) {
		if (p->kind != &part_skirt)
			continue;
		found += level_lines(&b, p);
		boards++;
	}
	assert_int_equal(boards, lengths);
	assert_int_equal(found, mitres);
	arena_free(b.arena);
}

/* The first riser is cut square, behind the newel, and the last one is the floor's. */
static void a_mitre_comes_out_its_thickness_further_back_on_the_level(void **state)
{
	(void)state;
	check_mitres(STAIR("1800", "10", "right", "left"), 1, 8);
	check_mitres(STAIR("1800", "10", "left", "right"), 1, 8);
}

/* The ends where the two are scarfed are square to the board. */
static void so_it_does_on_a_board_that_is_one_of_two_lengths(void **state)
{
	(void)state;
	check_mitres(STAIR("3900", "21", "right", "left"), 2, 19);
	check_mitres(STAIR("3900", "21", "left", "right"), 2, 19);
}

static const struct pattern_label *find_label(const struct template_job *t, const char *words)
{
	const struct pattern_label *l = t->pattern.labels;

	while (l && strcmp(l->ways[0], words) != 0)
		l = l->next;
	return l;
}

/* Is there a corner of its solids at that end, so far from it, on the face that shows?  That is the
 * outer one: the higher of a right-hand board, the lower of a left-hand one. */
static bool ends_on_show_face(const struct part *p, double x)
{
	double show = strstr(p->name, "right hand") ? p->size.thickness : 0;

	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < 2 * s->n; i++) {
			struct vec3 q = i < s->n ? s->a[i] : s->b[i - s->n];
			if (near_enough(q.z, show) && near_enough(q.x, x))
				return true;
		}
	return false;
}

static void check_scarf(const char *text)
{
	struct built b = built_from(text);
	int on_this_face = 0, below = 0;

	for (const struct part *p = b.parts; p; p = p->next) {
		if (p->kind != &part_skirt)
			continue;
		struct template_job t = template_of(&b, p);
		const struct pattern_label *saw =
			find_label(&t, "scarf: saw here, it comes out below at the end");
		const struct pattern_label *out = find_label(&t, "here the scarf comes out below");
		double end = p->length_of.number == 1 ? outline_extent(p->outline).x1 : 0;
		assert_true(!saw != !out);
		assert_near(fabs(fabs((saw ? saw : out)->at.x) - end), p->size.thickness, 1e-6);
		assert_true(ends_on_show_face(p, saw ? fabs(saw->at.x) : end));
		on_this_face += saw != NULL;
		below += out != NULL;
	}
	assert_int_equal(on_this_face, 1);
	assert_int_equal(below, 1);
	arena_free(b.arena);
}

/* Of two lengths one has the long point of their scarf on its back. */
static void a_scarf_is_sawn_where_it_meets_the_face_that_shows(void **state)
{
	(void)state;
	check_scarf(STAIR("3900", "21", "right", "left"));
	check_scarf(STAIR("3900", "21", "left", "right"));
}

/* Of two treads, or three, it has no more corners than a plain one. */
static void a_short_skirt_with_a_mitre_has_a_template(void **state)
{
	(void)state;
	static const char *const stairs[] = { STAIR("540", "3", "right", "left"),
		STAIR("720", "4", "right", "left") };

	for (int i = 0; i < 2; i++) {
		struct built b = built_from(stairs[i]);
		assert_true(
			skirt_needs_template(b.arena, built_part(&b, "open skirt, right hand", 0)));
		arena_free(b.arena);
	}
}

/* Cut round the steps it is alike on both walls, and shows one its face, the other its back. */
static void a_skirt_of_both_walls_is_not_told_to_show_one_face(void **state)
{
	(void)state;
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: of the test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, left: wall, right: wall,\n"
				    "  segments: [{risers: 10, run: 280}]}\n"
				    "skirts: {wall: cut_round}\n");
	const struct part *p = b.parts;

	while (p && p->kind != &part_skirt)
		p = p->next;
	assert_non_null(p);
	assert_int_equal(p->count, 2);
	struct template_job t = template_of(&b, p);
	bool lies_as_on_the_right = strstr(t.words.edges, "→ lower end") != NULL;
	assert_string_equal(t.words.face,
		lies_as_on_the_right ? "SHOW FACE UP on the right wall, DOWN on the left"
				     : "SHOW FACE UP on the left wall, DOWN on the right");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_mitre_comes_out_its_thickness_further_back_on_the_level),
		cmocka_unit_test(a_scarf_is_sawn_where_it_meets_the_face_that_shows),
		cmocka_unit_test(a_skirt_of_both_walls_is_not_told_to_show_one_face),
		cmocka_unit_test(a_short_skirt_with_a_mitre_has_a_template),
		cmocka_unit_test(so_it_does_on_a_board_that_is_one_of_two_lengths),
	};

	return cmocka_run_group_tests_name("templates of skirts", tests, NULL, NULL);
}
