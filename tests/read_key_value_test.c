/*
 * What a key says in words, found by its path; and what is agreed beside the drawings.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_job.h"
#include "read_said.h"

static void says(const struct job *job, const char *path, const char *words)
{
	assert_string_equal(job_value_words(arena, job, path), words);
}

static void a_value_is_said_as_it_is_typed_or_taken(void **state)
{
	const struct job *job = job_of(SOUND "treads: {nosing_profile: full_round}\n"
					     "newels: {cap: {kind: pyramid}}\n"
					     "material: {treads: red oak}\n");

	(void)state;
	says(job, "treads.nosing_profile", "full round");
	says(job, "newels.cap.kind", "pyramid");
	says(job, "material.treads", "red oak");
	says(job, "rail.height", "3'-0\""); /* 36", the default */
	says(job, "skirts.wall", "none");
}

static void an_entry_of_a_list_is_named_by_its_number(void **state)
{
	const struct job *job =
		job_of(SOUND "wall_rails:\n"
			     "  - {side: left, profile: round}\n"
			     "  - {side: left, from_step: 9, profile: flat_oval}\n");

	(void)state;
	says(job, "wall_rails[1].profile", "round");
	says(job, "wall_rails[2].profile", "flat oval");
	says(job, "wall_rails[2].from_step", "9");
	says(job, "wall_rails[3].profile", "");
	says(job, "wall_rails[0].profile", "");
}

static void what_is_no_single_value_says_nothing(void **state)
{
	const struct job *job = job_of(SOUND);

	(void)state;
	says(job, "treads", "");
	says(job, "treads.colour", "");
	says(job, "treads.nosing.deep", "");
	says(job, "stair.segments.run", "");
	says(job, "", "");
}

static void stands_in_line(const struct job *job, const char *path, int line)
{
	assert_int_equal(job_pos(job, path).line, line);
}

static void a_key_is_found_where_it_stands_or_else_where_its_group_does(void **state)
{
	const struct job *job = job_of(SOUND "treads:\n"
					     "  nosing: 1\"\n"
					     "wall_rails:\n"
					     "  - {side: left}\n"
					     "  - {side: left, from_step: 9}\n");

	(void)state;
	stands_in_line(job, "treads.nosing", 8);
	stands_in_line(job, "treads.thickness", 7);
	stands_in_line(job, "treads", 7);
	stands_in_line(job, "wall_rails[2].from_step", 11);
	stands_in_line(job, "wall_rails[2].height", 11);
	stands_in_line(job, "wall_rails[3].height", 9);
	stands_in_line(job, "rail.height", 0);
	stands_in_line(job, "", 0);
}

static void the_usual_exclusions_stand_unless_others_are_named(void **state)
{
	(void)state;
	assert_true(job_of(SOUND)->agreement.not_included_count >= 5);
	says(job_of(SOUND "agreement: {not_included: [permit fees]}\n"), "agreement.not_included",
		"permit fees");
	assert_int_equal(job_of(SOUND "agreement: {not_included: []}\n")
				 ->agreement.not_included_count,
		0);
	assert_int_equal(job_of(SOUND)->agreement.note_count, 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_value_is_said_as_it_is_typed_or_taken),
		cmocka_unit_test(an_entry_of_a_list_is_named_by_its_number),
		cmocka_unit_test(what_is_no_single_value_says_nothing),
		cmocka_unit_test(a_key_is_found_where_it_stands_or_else_where_its_group_does),
		cmocka_unit_test(the_usual_exclusions_stand_unless_others_are_named),
	};

	return cmocka_run_group_tests(tests, arena_open, arena_close);
}
