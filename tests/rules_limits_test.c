/*
 * Every limit of every edition, from both sides: a stair just inside it and one just outside.
 *
 * Which number the limit is, is held against its source in tests/sources/code_limits_test.c; here
 * it is taken from the file, and a stair is made for it (rules_stairs.h).
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "job_edit.h"
#include "near.h"
#include "rules/gauge.h"
#include "rules_stairs.h"

#define HAIR 0.02      /* so far inside or outside, in millimetres; of an angle in thousandths */
#define BALL_HAIR 0.05 /* balls are measured to 0.02 mm */

/* What no job can hold yet, and no change to the parts makes. */
static const char *const unmade[] = { "winder_depth", "winder_narrow", "winder_difference",
	"winder_angle", "landing_between" };

static bool is_unmade(const char *gauge)
{
	for (size_t i = 0; i < sizeof(unmade) / sizeof(unmade[0]); i++)
		if (strcmp(unmade[i], gauge) == 0)
			return true;
	return false;
}

/* Does the recipe hold no such stair: fewer than two risers, less than nothing? */
static bool is_impossible(const struct rule *rule, double value)
{
	if (strstr(rule->gauge, "_over"))
		return false;
	return value < 0 || (strcmp(rule->gauge, "flight_risers") == 0 && value < 2);
}

static double step_off(const struct rule *rule)
{
	switch (gauge_find(rule->gauge)->unit) {
	case GAUGE_LENGTH:
		if (strstr(rule->gauge, "ball"))
			return BALL_HAIR;
		return strcmp(rule->gauge, "rail_gap") == 0 ? 500 : HAIR;
	case GAUGE_ANGLE: return HAIR / 1000;
	case GAUGE_COUNT: return 1;
	}
	return 0;
}

/* The job with the keys that the finding names: the row is met, or another key stands in the way,
 * which is said. */
static void mend(const char *edition, const struct finding *f, const char *text)
{
	struct arena *a = arena_new();

	for (int i = 0; i < f->setting_count; i++) {
		text = job_edit(a, text, f->settings[i].path, f->settings[i].value);
		if (!text)
			fail_msg("%s: no such key", f->settings[i].path);
	}
	if (f->setting_count) {
		struct checked c = checked_row_against(edition, f->rule->row, text, NULL, 0);
		if (!c.findings)
			fail_msg("%s %s, %s: %s", edition, f->rule->row, f->mend,
				built_complaint(&c.built));
		if (c.findings->state == FINDING_NOT_MET)
			fail_msg("%s %s, %s: still %s, asked %s", edition, f->rule->row, f->mend,
				c.findings->provided, c.findings->asked);
		arena_free(c.built.arena);
	}
	arena_free(a);
}

/* One stair that must read `value` in this row. */
static void try(const char *edition, const struct rule *rule, double value, bool is_inside)
{
	struct arena *a = arena_new();
	struct recipe r;
	const double off = step_off(rule);

	if (is_impossible(rule, value)) {
		arena_free(a);
		return;
	}
	if (!recipe_for(rule, value, &r))
		fail_msg("%s %s: no recipe", edition, rule->row);
	struct checked c =
		checked_row_against(edition, rule->row, recipe_job(a, &r), r.change, r.by);
	if (!c.findings)
		fail_msg("%s %s: %s", edition, rule->row, built_complaint(&c.built));
	const struct finding *f = checked_row(&c, rule->row);
	bool is_met = f->state == FINDING_MET || f->state == FINDING_NEAR;
	if (is_met != is_inside || (!is_inside && f->state != FINDING_NOT_MET))
		fail_msg("%s %s at %.4f (%s): %s, read %.4f %s %s", edition, rule->row, value,
			is_inside ? "inside" : "outside", finding_word(f->state), f->value,
			f->place, f->reason);
	if (off < 1)
		assert_near(f->value, value, off / 2);
	if (!is_inside)
		assert_true(*f->mend);
	if (!is_inside && !r.change)
		mend(edition, f, recipe_job(a, &r));
	arena_free(c.built.arena);
	arena_free(a);
}

static void try_both_sides(const char *edition, const struct rule *rule)
{
	const struct bounds *b = &rule->bounds;
	double off = step_off(rule);
	bool is_count = off >= 1;

	if (*b->least.text) {
		try(edition, rule, b->least.value + (is_count ? 0 : off), true);
		try(edition, rule, b->least.value - off, false);
	}
	if (*b->most.text) {
		try(edition, rule, b->most.value - (is_count ? 0 : off), true);
		try(edition, rule, b->most.value + off, false);
	}
	if (*b->below.text) {
		try(edition, rule, b->below.value - off, true);
		try(edition, rule, b->below.value + off, false);
	}
}

static void every_limit_holds_from_both_sides(void **state)
{
	const char *edition = *state;
	struct checked c = checked_against(edition,
		"pitchboard: 1\njob: {name: Any}\nfloors: {total_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		NULL, 0);
	int tried = 0;

	assert_non_null(c.findings);
	for (const struct finding *f = c.findings; f; f = f->next) {
		if (*f->rule->not_checked || is_unmade(f->rule->gauge))
			continue;
		try_both_sides(edition, f->rule);
		tried++;
	}
	assert_true(tried > 8);
	arena_free(c.built.arena);
}

int main(void)
{
	static char *const editions[] = { "irc-2018", "irc-2021", "irc-2024", "ibc-2021",
		"approved-document-k-2013", "nbc-2020", "ncc-2022", "din-18065-2020" };
	struct CMUnitTest tests[sizeof(editions) / sizeof(editions[0])];

	for (size_t i = 0; i < sizeof(editions) / sizeof(editions[0]); i++)
		tests[i] = (struct CMUnitTest){ editions[i], every_limit_holds_from_both_sides,
			NULL, NULL, editions[i] };
	return cmocka_run_group_tests_name("every limit holds from both sides", tests, NULL, NULL);
}
