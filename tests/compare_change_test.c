/*
 * What is different since an earlier job, in words and by part.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "built.h"
#include "pitchboard/change.h"

#define JOB(more)                                                                                  \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n" more

struct pair {
	struct built was, is;
	const struct change *changes;
};

static struct pair compared(const char *was, const char *is)
{
	struct pair p = { built_from(was), built_from(is), NULL };

	assert_non_null(p.was.parts);
	assert_non_null(p.is.parts);
	p.changes = changes_find(p.is.arena, (struct earlier){ p.was.stair, p.was.parts },
		p.is.stair, p.is.parts);
	return p;
}

static void done(struct pair *p)
{
	arena_free(p->was.arena);
	arena_free(p->is.arena);
}

static bool says(const struct change *c, const char *text)
{
	for (; c; c = c->next)
		if (strcmp(c->text, text) == 0)
			return true;
	return false;
}

static void a_job_has_not_changed_since_itself(void **state)
{
	struct pair p = compared(JOB(""), JOB(""));
	(void)state;
	assert_null(p.changes);
	done(&p);
}

/* Two parts that are alike, but for the height at which they lie. */
static void equal_rails_at_two_heights_keep_their_marks(void **state)
{
	const char *job = JOB("rail: {level_runs: [\n"
			      "  {side: right, direction: on, length: 700, height: 950},\n"
			      "  {side: right, direction: out, length: 700, height: 1050}]}\n");
	struct pair p = compared(job, job);
	(void)state;
	assert_null(p.changes);
	done(&p);
}

static void a_key_that_was_changed_is_told_with_both_values(void **state)
{
	struct pair p = compared(JOB(""), JOB("treads: {nosing: 30}\n"));
	(void)state;
	assert_true(says(p.changes, "treads, nosing: was 25 mm, now 30 mm"));
	done(&p);
}

static void what_follows_for_the_stair_is_told(void **state)
{
	struct pair p = compared(JOB(""),
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1870}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 11, run: "
		"260}]}\n");
	(void)state;
	assert_true(says(p.changes, "risers: was 10, now 11"));
	assert_true(says(p.changes, "unit rise, all risers: was 180 mm, now 170 mm"));
	assert_true(says(p.changes, "unit run, all treads: was 250 mm, now 260 mm"));
	done(&p);
}

static void only_pieces_made_otherwise_have_changed(void **state)
{
	struct pair p = compared(JOB(""), JOB("rail: {height: 950}\n"));
	int changed = 0;
	(void)state;
	for (const struct part *q = p.is.parts; q; q = q->next) {
		if (part_is_existing(q))
			continue;
		bool of_the_balustrade = q->kind == &part_newel || q->baluster;
		if (q->kind != &part_rail && q->kind != &part_newel && !of_the_balustrade)
			assert_false(part_has_changed(p.changes, q));
		changed += part_has_changed(p.changes, q);
	}
	assert_true(part_has_changed(p.changes, built_part(&p.is, "newel", 0)));
	assert_true(part_has_changed(p.changes, built_part(&p.is, "baluster", 0)));
	/* a rail stands higher, but is the same piece of wood */
	assert_false(part_has_changed(p.changes, built_part(&p.is, "rail", 0)));
	assert_true(changed > 2);
	done(&p);
}

/* The same newels, drilled for other fixings of the rail. */
static void a_piece_of_the_same_size_says_what_is_cut_otherwise(void **state)
{
	struct pair p = compared(JOB("rail: {joint: none}\n"), JOB("rail: {joint: dowels}\n"));
	const struct change *c = p.changes;
	(void)state;
	while (c && !(c->part && c->part->kind == &part_newel))
		c = c->next;
	assert_non_null(c);
	assert_non_null(strstr(c->text, "newel: made otherwise; holes were "));
	done(&p);
}

static void a_piece_that_only_is_glued_up_otherwise_says_so(void **state)
{
	struct pair p = compared(JOB(""), JOB("newels: {build: glued}\n"));
	const struct change *c = p.changes;
	(void)state;
	while (c && !(c->part && c->part->kind == &part_newel))
		c = c->next;
	assert_non_null(c);
	assert_non_null(strstr(c->text, "newel: made otherwise; glued up otherwise"));
	done(&p);
}

static void all_that_is_made_otherwise_is_told(void **state)
{
	struct pair p = compared(JOB("rail: {joint: none}\n"),
		JOB("rail: {joint: dowels}\nnewels: {build: glued}\n"));
	const struct change *c = p.changes;
	(void)state;
	while (c && !(c->part && c->part->kind == &part_newel))
		c = c->next;
	assert_non_null(c);
	assert_non_null(strstr(c->text, "; holes were "));
	assert_non_null(strstr(c->text, "; glued up otherwise"));
	done(&p);
}

static void a_piece_that_is_gone_is_told(void **state)
{
	struct pair p = compared(JOB(""),
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: wall, segments: [{risers: 10, run: "
		"250}]}\n");
	(void)state;
	assert_true(says(p.changes, "H1 rail: no longer made"));
	done(&p);
}

/* One body of several is cut out: the others are made as before, and only fewer. */
static void a_piece_beside_those_that_are_still_made_is_new(void **state)
{
	struct pair p = compared(JOB("treads: {notches: []}\n"),
		JOB("treads: {notches: [{step: 3, at: left, along: 60, across: 40, from: "
		    "100}]}\n"));
	(void)state;
	int new = 0;
	for (const struct change *c = p.changes; c; c = c->next) {
		if (!c->part || c->part->kind != &part_tread || !strstr(c->text, "body"))
			continue;
		new += strstr(c->text, ": new") != NULL;
		assert_null(strstr(c->text, "made otherwise"));
	}
	assert_int_equal(new, 1);
	done(&p);
}

static void an_entry_that_was_not_there_had_no_values(void **state)
{
	struct pair p = compared(JOB(""),
		JOB("rail: {level_runs: [{side: right, direction: on, length: 800}]}\n"));
	(void)state;
	assert_true(says(p.changes, "level rail 1, length: was none, now 800 mm"));
	done(&p);
}

static void who_drew_it_and_when_is_no_change(void **state)
{
	struct pair p = compared(JOB(""),
		"pitchboard: 1\n"
		"job: {name: Test again, date: 2026-11-20, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: "
		"250}]}\n"
		"revisions: [{mark: A, date: 2026-11-20, text: again}]\n");
	(void)state;
	assert_null(p.changes);
	done(&p);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_job_has_not_changed_since_itself),
		cmocka_unit_test(equal_rails_at_two_heights_keep_their_marks),
		cmocka_unit_test(a_key_that_was_changed_is_told_with_both_values),
		cmocka_unit_test(what_follows_for_the_stair_is_told),
		cmocka_unit_test(only_pieces_made_otherwise_have_changed),
		cmocka_unit_test(a_piece_of_the_same_size_says_what_is_cut_otherwise),
		cmocka_unit_test(a_piece_that_only_is_glued_up_otherwise_says_so),
		cmocka_unit_test(all_that_is_made_otherwise_is_told),
		cmocka_unit_test(a_piece_that_is_gone_is_told),
		cmocka_unit_test(a_piece_beside_those_that_are_still_made_is_new),
		cmocka_unit_test(an_entry_that_was_not_there_had_no_values),
		cmocka_unit_test(who_drew_it_and_when_is_no_change),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
