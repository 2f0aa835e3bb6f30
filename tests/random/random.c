/*
 * Random stairs:  random COUNT SEED
 *
 * Makes up COUNT job files and follows each from its text to its sheets.  Prints
 * one result a rule, with the seed of the first job that broke it; `random 1
 * SEED` follows that one again, and `random show SEED` prints its text.
 */
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "pitchboard/write.h"
#include "random/drawn.h"
#include "random/invariants.h"
#include "random/mends.h"
#include "random/random_job.h"
#include "random/scales.h"
#include "refused.h"

/* Results beside those of the invariants of the parts. */
enum { SCALES, VIEWS_AGREE, SHEETS_SOUND, MENDS, REFUSALS, ANSWERED, MOSTLY_BUILT, MORE_RULES };

static const char *const more_rules[MORE_RULES] = {
	"overlaps that are known are measured right",
	"views agree with each other",
	"nothing overlaps on a sheet, and nothing is outside its frame",
	"what a finding has the job say instead mends it",
	"what a refusal says to write instead mends it",
	"a job is refused with a reason, or drawn",
	"most of the jobs made up can be built",
};

/* Checking a stair again for each of its rows takes longer than all the rest. */
#define MENDED_EVERY 4

/* The job's own set has all sheets of the shop; those of other readers are drawn of some. */
#define OTHER_SETS_EVERY 32

#define RULES 24

struct tally {
	uint64_t broken_by[RULES]; /* seed of the first job that broke it; 0: none */
	char why[RULES][300];
	int drawn, refused;
	int said, mended; /* of what refusals say to write */
};

static void judge(struct tally *t, int rule, uint64_t seed, const char *why)
{
	if (!why || t->broken_by[rule])
		return;
	t->broken_by[rule] = seed;
	snprintf(t->why[rule], sizeof(t->why[rule]), "%s", why);
}

static void judge_parts(struct tally *t, uint64_t seed, struct arena *a, const struct stair *s,
	const struct part *parts)
{
	for (int i = 0; i < invariant_count; i++)
		judge(t, i, seed, invariants[i].broken(a, s, parts));
	judge(t, invariant_count + VIEWS_AGREE, seed, views_disagree(a, parts));
}

static void judge_sheets(struct tally *t, uint64_t seed, struct arena *a, const struct stair *s,
	const struct part *parts, const struct shop *shop, struct diags *d)
{
	static const char *const others[] = { "client", "permit" };
	int rule = invariant_count + SHEETS_SOUND;

	judge(t, rule, seed, sheets_fault(a, s, parts, shop, NULL, d));
	for (int i = 0; i < 2 && seed % OTHER_SETS_EVERY == 0; i++) {
		const char *why = sheets_fault(a, s, parts, shop, others[i], d);
		judge(t, rule, seed, why ? arena_printf(a, "%s set: %s", others[i], why) : NULL);
	}
}

static void follow(struct tally *t, uint64_t seed, const struct shop *shop, FILE *reasons)
{
	struct arena *a = arena_new();
	const char *text = random_job(a, seed);
	struct diags d;
	diags_init(&d, a, "random.yaml", text);
	const struct job *job = job_read(a, text, &d);
	const struct rule_set *rules = rules_read(a, "templates", job, &d);
	const struct stair *s = stair_solve(a, job, rules_for_layout(a, rules), &d);
	const struct part *parts = parts_make(a, s, &d);
	if ((parts == NULL) != (d.errors > 0))
		judge(t, invariant_count + ANSWERED, seed, "drawn and faulted, or neither");
	if (reasons)
		diags_print(&d, reasons);
	t->drawn += parts != NULL;
	t->refused += parts == NULL;
	if (parts) {
		judge_parts(t, seed, a, s, parts);
		if (seed % MENDED_EVERY == 0)
			judge(t, invariant_count + MENDS, seed, mends_try(a, text, seed).why);
		judge_sheets(t, seed, a, s, parts, shop, &d);
	} else {
		struct refused r = refused_try(a, text);
		judge(t, invariant_count + REFUSALS, seed, r.why);
		t->said += r.said;
		t->mended += r.mended;
	}
	arena_free(a);
}

static int result(const struct tally *t, int rule, const char *name)
{
	uint64_t seed = t->broken_by[rule];
	printf("%s %d - %s\n", seed ? "not ok" : "ok", rule + 1, name);
	if (seed)
		printf("# seed %" PRIu64 ": %s\n", seed, t->why[rule]);
	return seed != 0;
}

static int report(struct tally *t)
{
	int failed = 0;
	if (t->drawn < 2 * t->refused)
		judge(t, invariant_count + MOSTLY_BUILT, 1, "too many are refused");
	for (int i = 0; i < invariant_count; i++)
		failed += result(t, i, invariants[i].name);
	for (int i = 0; i < MORE_RULES; i++)
		failed += result(t, invariant_count + i, more_rules[i]);
	printf("# %d drawn, %d refused; %d of %d mended by what the refusal says\n1..%d\n",
		t->drawn, t->refused, t->mended, t->said, invariant_count + MORE_RULES);
	return failed > 0;
}

static int show(uint64_t seed)
{
	struct arena *a = arena_new();
	fputs(random_job(a, seed), stdout);
	arena_free(a);
	return 0;
}

static int follow_all(long count, uint64_t seed)
{
	struct tally t = { .drawn = 0 };
	struct arena *a = arena_new();
	struct diags d;
	const char *problem = NULL;
	struct faces *faces = faces_load(a, "templates", &problem);
	diags_init(&d, a, "templates", NULL);
	struct shop shop = { .stationery = stationery_read(a, "templates", &d) };
	if (!faces || !shop.stationery) {
		printf("not ok 1 - the stationery is read\n# %s\n", problem ? problem : "");
		return 1;
	}
	shop.measure = faces_measure(faces);
	judge(&t, invariant_count + SCALES, 1, scales_wrong(a));
	for (long i = 0; i < count; i++)
		follow(&t, seed + (uint64_t)i, &shop, count == 1 ? stderr : NULL);
	faces_free(faces);
	arena_free(a);
	return report(&t);
}

int main(int argc, char **argv)
{
	if (argc != 3) {
		fputs("usage: random COUNT SEED, or random show SEED\n", stderr);
		return 2;
	}
	uint64_t seed = strtoull(argv[2], NULL, 10);
	if (strcmp(argv[1], "show") == 0)
		return show(seed);
	return follow_all(strtol(argv[1], NULL, 10), seed);
}
