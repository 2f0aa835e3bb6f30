/*
 * Findings in words: what a rule is about, what it asks, what this stair has, where that was read.
 */
#ifndef RULES_FINDING_WORDS_H
#define RULES_FINDING_WORDS_H

#include "rules/limits.h"

/* What one rule is judged with. */
struct judging {
	const struct survey *survey;
	const struct job *job;
	const struct rule_set *rules;
};

/* One limit of a rule against a reading: how much room is left, negative when none. */
struct rule_room {
	double left, value, limit;
	const char *at;
	bool is_strict; /* the limit itself is already too much */
};

const char *finding_subject(struct arena *a, const struct rule *rule);

/* Why a condition puts its rule aside. */
const char *finding_condition(struct arena *a, const struct judging *w, const struct rule *rule,
	const struct rule_condition *c, const struct reading *r);

/* As the job letters lengths; finer where it would read like the limit it misses. */
const char *finding_provided(struct arena *a, const struct judging *w, const struct gauge *g,
	struct rule_room room, enum finding_state state);

/* In the units of the edition, and in those of the job where they are others. */
const char *finding_asked(struct arena *a, const struct judging *w, const struct rule *rule,
	const struct gauge *g);

const char *finding_source(struct arena *a, const struct judging *w, const struct rule *rule);
const char *finding_source_in_short(struct arena *a, const struct judging *w,
	const struct rule *rule);

#endif
