/*
 * Editions as files, and what a job may change in them.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cmocka.h>

#include "near.h"
#include "read/keys_table.h"
#include "rules/gauge.h"
#include "rules_checked.h"

#define ANY_JOB                                                                                    \
	"pitchboard: 1\njob: {name: Any}\nfloors: {total_rise: 107\"}\nstair: {width: 36\"}\n"

/* The first complaint of a job that names its code so. */
static void is_told(const char *code, const char *complaint, const char *hint)
{
	struct arena *a = arena_new();
	struct built b = built_from(arena_printf(a, ANY_JOB "%s", code));
	const struct rule_set *rules =
		rules_read(b.arena, "templates", b.stair ? b.stair->job : NULL, &b.diags);

	assert_null(rules);
	assert_string_equal(built_complaint(&b), complaint);
	if (hint)
		assert_string_equal(b.diags.first->hint, hint);
	arena_free(b.arena);
	arena_free(a);
}

static void a_job_without_a_code_is_not_checked(void **state)
{
	struct built b = built_from(ANY_JOB);
	(void)state;
	assert_null(rules_read(b.arena, "templates", b.stair->job, &b.diags));
	assert_int_equal(b.diags.errors, 0);
	arena_free(b.arena);
}

static void an_unknown_edition_brings_the_likely_one(void **state)
{
	(void)state;
	is_told("code: irc-2012\n",
		"code.edition: there is no edition \"irc-2012\" in templates/rules",
		"did you mean \"irc-2018\"?");
}

static void every_row_can_be_measured_or_says_why_not(void **state)
{
	struct built b = built_from(ANY_JOB);
	const char *const *names = rules_names(b.arena, "templates");
	int editions = 0;
	(void)state;
	for (; names[editions]; editions++) {
		struct job job = *b.stair->job;
		job.code.edition = names[editions];
		const struct rule_set *set = rules_read(b.arena, "templates", &job, &b.diags);
		assert_string_equal(built_complaint(&b), "");
		assert_non_null(set);
		for (int i = 0; i < set->rule_count; i++)
			assert_true(gauge_find(set->rules[i].gauge) || *set->rules[i].not_checked);
	}
	assert_int_equal(editions, 8);
	arena_free(b.arena);
}

static void an_amended_row_is_judged_by_its_amendment(void **state)
{
	struct checked c = checked_against("{edition: irc-2018, amendments: [{row: riser_height, "
					   "most: 7 1/2\", by: A. Body, "
					   "date: 2026-10-01, text: ordinance 3}]}",
		"pitchboard: 1\njob: {name: Any}\nfloors: {total_rise: 107\"}\n"
		"stair: {width: 36\", segments: [{risers: 14, run: 10\"}]}\n",
		NULL, 0);
	const struct finding *f = checked_row(&c, "riser_height");
	(void)state;
	/* 107 in in 14 rises 7 9/14 in */
	assert_int_equal(f->state, FINDING_NOT_MET);
	assert_string_equal(f->asked, "at most 7 1/2\"");
	assert_string_equal(f->source,
		"amended by A. Body, 2026-10-01: ordinance 3; the edition "
		"has at most 7 3/4\"");
	arena_free(c.built.arena);
}

static void an_amendment_may_let_more_pass(void **state)
{
	struct checked c = checked_against("{edition: irc-2018, amendments: [{row: riser_height, "
					   "most: 8 1/4\", by: A. Body, "
					   "date: 2026-10-01}]}",
		"pitchboard: 1\njob: {name: Any}\nfloors: {total_rise: 112\"}\n"
		"stair: {width: 36\", segments: [{risers: 14, run: 10\"}]}\n",
		NULL, 0);
	(void)state;
	assert_int_equal(checked_row(&c, "riser_height")->state, FINDING_MET);
	arena_free(c.built.arena);
}

/* NBC 2020 is in millimetres, 865 to 1070; the job in inches. */
static void what_is_not_amended_stays_in_the_units_of_its_edition(void **state)
{
	struct checked c = checked_against(
		"{edition: nbc-2020, amendments: [{row: rail_height, least: 34\", by: A. Body, "
		"date: 2026-10-01}, {row: rail_height, least: 33\", by: A. Body, date: "
		"2026-10-02}]}",
		ANY_JOB, NULL, 0);
	const struct finding *f = checked_row(&c, "rail_height");
	(void)state;
	assert_near(f->rule->bounds.least.value, 33 * 25.4, 1e-9);
	assert_near(f->rule->bounds.most.value, 1070, 1e-9);
	assert_near(f->rule->enacted.least.value, 865, 1e-9);
	assert_near(f->rule->enacted.most.value, 1070, 1e-9);
	arena_free(c.built.arena);
}

static void an_amendment_of_a_row_that_is_not_there_is_refused(void **state)
{
	(void)state;
	is_told("code: {edition: irc-2018, amendments: [{row: riser_hight, most: 8\", by: A, date: "
		"2026-10-01}]}\n",
		"code.amendments: there is no row \"riser_hight\" in this edition",
		"did you mean \"riser_height\"?");
}

static void an_amendment_without_a_limit_is_refused(void **state)
{
	(void)state;
	is_told("code: {edition: irc-2018, amendments: [{row: headroom, by: A, date: "
		"2026-10-01}]}\n",
		"code.amendments: headroom is amended to what?", "give least, most or both");
}

static void an_amendment_that_is_no_length_is_refused(void **state)
{
	(void)state;
	is_told("code: {edition: irc-2018, amendments: [{row: headroom, least: high, by: A, date: "
		"2026-10-01}]}\n",
		"code.amendments: \"high\" is not a length", NULL);
}

/* ---- files that a shop edits ---- */

static const char head[] = "title: Ours\nbrief: Ours\nunits: millimetres\n";

static void write_rows(const char *path, const char *rows)
{
	FILE *f = fopen(path, "w");

	assert_non_null(f);
	fprintf(f, "%s%s", head, rows);
	fclose(f);
}

/* What is said of an edition that is written so, and of one that it is like. */
static void is_told_of(const char *ours, const char *theirs, const char *file, const char *said)
{
	struct arena *a = arena_new();
	const char *base = getenv("TMPDIR");
	char *dir = arena_printf(a, "%s/rules-XXXXXX", base ? base : "/tmp");
	struct built b = built_from(ANY_JOB "code: ours\n");

	assert_non_null(mkdtemp(dir));
	const char *rules = arena_printf(a, "%s/rules", dir);
	const char *path = arena_printf(a, "%s/ours.yaml", rules);
	const char *other = arena_printf(a, "%s/theirs.yaml", rules);
	assert_int_equal(mkdir(rules, 0700), 0);
	write_rows(path, ours);
	write_rows(other, theirs);
	assert_null(rules_read(b.arena, dir, b.stair->job, &b.diags));
	assert_string_equal(built_complaint(&b), arena_printf(a, "%s/%s%s", rules, file, said));
	unlink(path);
	unlink(other);
	rmdir(rules);
	rmdir(dir);
	arena_free(b.arena);
	arena_free(a);
}

static void is_told_of_file(const char *rows, const char *said)
{
	is_told_of(rows, "", "ours.yaml", said);
}

static void a_gauge_that_is_not_there_is_told_with_its_line(void **state)
{
	(void)state;
	is_told_of_file("rules:\n  - {row: beauty, least: 1, section: '1', source: read}\n",
		":5:11: beauty: there is no gauge \"beauty\"");
}

static void a_row_without_a_limit_is_told(void **state)
{
	(void)state;
	is_told_of_file("rules:\n  - {row: headroom, section: '1', source: read}\n",
		":5:11: headroom: there is no limit");
}

static void a_row_that_stands_there_twice_is_told(void **state)
{
	(void)state;
	is_told_of_file("rules:\n  - {row: headroom, least: 2, section: '1', source: read}\n"
			"  - {row: headroom, least: 3, section: '1', source: read}\n",
		":6:11: the row headroom stands there twice");
}

static void a_fault_in_the_edition_that_it_is_like_is_told_with_that_ones_file(void **state)
{
	static const char twice[] =
		"rules:\n  - {row: headroom, least: 2, section: '1', source: read}\n"
		"  - {row: headroom, least: 3, section: '1', source: read}\n";
	(void)state;
	is_told_of("like: theirs\n",
		"rules:\n  - {row: headroom, least: high, section: '1', source: read}\n",
		"theirs.yaml", ":5:11: headroom: \"high\" is not a length");
	is_told_of("like: theirs\n", twice, "theirs.yaml",
		":6:11: the row headroom stands there twice");
}

static void a_row_without_a_source_is_told(void **state)
{
	(void)state;
	is_told_of_file("rules:\n  - {row: headroom, least: 2, section: '1'}\n",
		":5:5: rules.source is missing");
}

static void an_edition_that_is_like_itself_is_told(void **state)
{
	(void)state;
	is_told_of_file("like: ours\n",
		":0:0: ours: one edition is like another, and that like another, too often");
}

static const struct layout_limit *limit_on(const struct layout_limits *l, enum layout_measure m)
{
	for (int i = 0; i < l->n; i++)
		if (l->limits[i].bounds.measure == m)
			return &l->limits[i];
	return NULL;
}

/* The limits themselves are held to their sources in code_limits_test. */
static void what_an_edition_asks_of_a_layout_is_known_before_the_stair_is(void **state)
{
	struct built b = built_from(ANY_JOB "code: irc-2018\n");
	const struct layout_limits *l =
		rules_for_layout(b.arena, rules_read(b.arena, "templates", b.stair->job, &b.diags));
	const struct layout_limit *nosing = limit_on(l, MEASURE_NOSING);
	(void)state;
	assert_near(limit_on(l, MEASURE_RISE)->bounds.most, 7.75 * 25.4, 1e-9);
	assert_near(limit_on(l, MEASURE_RUN)->bounds.least, 10 * 25.4, 1e-9);
	assert_near(limit_on(l, MEASURE_HEADROOM)->bounds.least, 80 * 25.4, 1e-9);
	assert_string_equal(limit_on(l, MEASURE_HEADROOM)->from, "IRC 2018 R311.7.2");
	/* asked only of treads that are less than 11 in deep */
	assert_int_equal(nosing->where_count, 1);
	assert_int_equal(nosing->where[0].measure, MEASURE_RUN);
	assert_near(nosing->where[0].most, 11 * 25.4, 1e-3);
	arena_free(b.arena);
}

static void a_layout_is_asked_what_the_place_has_amended(void **state)
{
	struct built b = built_from(
		ANY_JOB "code: {edition: irc-2018, amendments: [{row: riser_height, most: 8 1/4\", "
			"by: B. Example, date: 2026-10-02}]}\n");
	const struct layout_limits *l =
		rules_for_layout(b.arena, rules_read(b.arena, "templates", b.stair->job, &b.diags));
	(void)state;
	assert_near(limit_on(l, MEASURE_RISE)->bounds.most, 8.25 * 25.4, 1e-9);
	assert_string_equal(limit_on(l, MEASURE_RISE)->from, "IRC 2018 R311.7.5.1, as amended");
	arena_free(b.arena);
}

/* Is there such a key: "treads.nosing", "stair.segments[1].run"? */
static bool is_key(const char *path)
{
	const struct group *g = &keys_file;
	const struct field *f = NULL;
	char key[64];

	while (g && *path) {
		size_t length = strcspn(path, ".[");
		assert_true(length < sizeof(key));
		memcpy(key, path, length);
		key[length] = '\0';
		f = field_find(g, key);
		g = f ? f->group : NULL;
		path += length;
		path += strcspn(path, ".");
		path += *path == '.';
	}
	return f && !*path;
}

static void every_gauge_names_a_key_of_the_job_that_decides_it(void **state)
{
	(void)state;
	for (int i = 0; gauge_tables[i]; i++)
		for (const struct gauge *g = gauge_tables[i]; g->name; g++)
			if (!is_key(g->key))
				fail_msg("%s: %s", g->name, g->key);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(what_an_edition_asks_of_a_layout_is_known_before_the_stair_is),
		cmocka_unit_test(a_layout_is_asked_what_the_place_has_amended),
		cmocka_unit_test(a_job_without_a_code_is_not_checked),
		cmocka_unit_test(an_unknown_edition_brings_the_likely_one),
		cmocka_unit_test(every_row_can_be_measured_or_says_why_not),
		cmocka_unit_test(an_amended_row_is_judged_by_its_amendment),
		cmocka_unit_test(an_amendment_may_let_more_pass),
		cmocka_unit_test(what_is_not_amended_stays_in_the_units_of_its_edition),
		cmocka_unit_test(an_amendment_of_a_row_that_is_not_there_is_refused),
		cmocka_unit_test(an_amendment_without_a_limit_is_refused),
		cmocka_unit_test(an_amendment_that_is_no_length_is_refused),
		cmocka_unit_test(a_gauge_that_is_not_there_is_told_with_its_line),
		cmocka_unit_test(a_row_without_a_limit_is_told),
		cmocka_unit_test(a_row_that_stands_there_twice_is_told),
		cmocka_unit_test(
			a_fault_in_the_edition_that_it_is_like_is_told_with_that_ones_file),
		cmocka_unit_test(a_row_without_a_source_is_told),
		cmocka_unit_test(an_edition_that_is_like_itself_is_told),
		cmocka_unit_test(every_gauge_names_a_key_of_the_job_that_decides_it),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
