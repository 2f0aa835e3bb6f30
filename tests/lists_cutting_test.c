/*
 * Boards and what is cut out of them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "listed.h"
#include "near.h"

#define JOB(stock)                                                                                 \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: 250}]}\n"       \
	"treads: {thickness: 27, nosing: 25}\n"                                                    \
	"risers: {thickness: 15}\n"                                                                \
	"material: {treads: oak, risers: pine, stringers: fir}\n" stock

/* Riser boards, say, of 1 m: out of boards so long and wide, without any other loss. */
#define PLAIN "kerf: 3, end_trim: 0, spare: 0, spare_every: 0, rough_length: 0, rough_width: 0"

static double kerf_of(const struct listed *l)
{
	return l->built.stair->job->stock.kerf;
}

static void check_strip(const struct listed *l, const struct cut_strip *s, double room)
{
	double used = -kerf_of(l);

	for (int i = 0; i < s->piece_count; i++) {
		const struct cut_piece *p = &s->pieces[i];
		assert_near(p->blank->rough_width, s->width, 1e-6);
		used += p->count * (p->blank->rough_length + kerf_of(l));
	}
	assert_near(used, s->used, 1e-6);
	assert_true(used <= room + 1e-6);
}

/* What stands on a board, with a kerf between any two, is no more than the board. */
static void check_board(const struct listed *l, const struct cut_board *b)
{
	double wide = -kerf_of(l);

	for (int i = 0; i < b->strip_count; i++) {
		wide += b->strips[i].width + kerf_of(l);
		check_strip(l, &b->strips[i], b->length - 2 * b->end_trim);
	}
	assert_true(wide <= b->width + 1e-6);
}

static void check_all(const struct listed *l)
{
	for (const struct cut_group *g = l->groups; g; g = g->next) {
		int total = 0;
		for (int i = 0; i < g->board_count; i++) {
			total += g->boards[i].count;
			check_board(l, &g->boards[i]);
		}
		assert_int_equal(total, g->total);
		assert_true(g->aim != CUT_FEWEST || g->bound <= g->total);
		assert_true(g->aim != CUT_CHEAPEST || g->bound <= g->price + 0.01);
	}
	for (const struct blank *b = l->blanks; b; b = b->next)
		assert_int_equal(listed_cut(l->groups, b), blank_count(b));
}

static void every_blank_is_cut_as_often_as_wanted_and_no_board_holds_too_much(void **state)
{
	static const char *const jobs[] = { "jobs/alder-lane.yaml", "jobs/kiln-yard.yaml",
		"templates/starters/full.yaml" };

	(void)state;
	for (int i = 0; i < 3; i++) {
		struct listed l = listed_file(jobs[i]);
		assert_non_null(l.groups);
		check_all(&l);
		arena_free(l.built.arena);
	}
}

/* Risers are 900 long (no scribe) and there are ten: four to a board of 3609 = 4 x 900 + 3 kerfs,
 * three to one a millimetre shorter. */
static void the_last_piece_of_a_board_needs_no_kerf_behind_it(void **state)
{
	struct listed exact = listed_from(
		JOB("stock: {widths: [200], lengths: [3609], " PLAIN "}\ntreads: {scribe: 0}\n"));
	(void)state;
	assert_null(exact.groups); /* two groups of treads are one too many */
	arena_free(exact.built.arena);
}
