/*
 * Random stairs:  random COUNT SEED
 *
 * Makes up COUNT job files and follows each from its text to its parts.  Prints
 * one result a rule, with the seed of the first job that broke it; `random 1
 * SEED` draws that one again, and `random show SEED` prints its text.
 */
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "random/invariants.h"
#include "random/random_job.h"

#define RULES 16

struct tally {
	uint64_t broken_by[RULES]; /* seed of the first job that broke it; 0: none */
	char why[RULES][200];
	int drawn, refused;
	uint64_t unreasoned; /* a job refused without a reason, or drawn in spite of one */
};

static void break_rule(struct tally *t, int rule, uint64_t seed, const char *why)
{
	if (t->broken_by[rule])
		return;
	t->broken_by[rule] = seed;
	snprintf(t->why[rule], sizeof(t->why[rule]), "%s", why);
}

static void follow(struct tally *t, uint64_t seed, FILE *reasons)
{
	struct arena *a = arena_new();
	const char *text = random_job(a, seed);
	struct diags d;
	diags_init(&d, a, "random.yaml", text);
	const struct stair *s = stair_solve(a, job_read(a, text, &d), &d);
	const struct part *parts = parts_make(a, s, &d);
	if ((parts == NULL) != (d.errors > 0))
		t->unreasoned = seed;
	if (reasons)
		diags_print(&d, reasons);
	t->drawn += parts != NULL;
	t->refused += parts == NULL;
	for (int i = 0; parts && i < invariant_count; i++) {
		const char *why = invariants[i].broken(a, s, parts);
		if (why)
			break_rule(t, i, seed, why);
	}
	arena_free(a);
}

static int result(int number, const char *name, uint64_t seed, const char *why)
{
	printf("%s %d - %s\n", seed ? "not ok" : "ok", number, name);
	if (seed)
		printf("# seed %" PRIu64 ": %s\n", seed, why);
	return seed != 0;
}

static int report(const struct tally *t)
{
	int failed = 0;
	for (int i = 0; i < invariant_count; i++)
		failed += result(i + 1, invariants[i].name, t->broken_by[i], t->why[i]);
	failed += result(invariant_count + 1, "a job is refused with a reason, or drawn",
		t->unreasoned, "no reason");
	bool mostly = t->drawn >= 2 * t->refused;
	failed += result(invariant_count + 2, "most of the jobs made up can be built", !mostly,
		"too many are refused");
	printf("# %d drawn, %d refused\n1..%d\n", t->drawn, t->refused, invariant_count + 2);
	return failed > 0;
}

int main(int argc, char **argv)
{
	static struct tally t;
	if (argc == 3 && strcmp(argv[1], "show") == 0) {
		struct arena *a = arena_new();
		fputs(random_job(a, strtoull(argv[2], NULL, 10)), stdout);
		arena_free(a);
		return 0;
	}
	if (argc != 3) {
		fputs("usage: random COUNT SEED, or random show SEED\n", stderr);
		return 2;
	}
	long count = strtol(argv[1], NULL, 10);
	uint64_t seed = strtoull(argv[2], NULL, 10);
	for (long i = 0; i < count; i++)
		follow(&t, seed + (uint64_t)i, count == 1 ? stderr : NULL);
	return report(&t);
}
