/*
 * Gauges: what a rule can measure.  One function each, on the solved stair and
 * on the solids.
 *
 * A gauge reads the least and the most of what it measures and says where each
 * was found, in words that a carpenter finds on the job.  It knows no limit: a
 * rule compares.
 */
#ifndef RULES_GAUGE_H
#define RULES_GAUGE_H

#include "rules/survey.h"

enum gauge_unit { GAUGE_LENGTH, GAUGE_ANGLE, GAUGE_COUNT };

enum reading_state {
	READING_TAKEN,
	READING_NOT_APPLICABLE, /* there is no such thing in this stair */
	READING_NOT_POSSIBLE,   /* the job does not say enough */
};

struct reading {
	enum reading_state state;
	double least, most;
	const char *least_at, *most_at; /* NULL: all over */
	const char *why;                /* not taken, in words */
	const char *shown;              /* what a number says badly; NULL: the number says it */
};

/* What would bring a reading to its limit, as a carpenter would do it.  `by` is what is missing to
 * the limit: negative when the reading is too small. */
struct shortfall {
	const struct reading *reading;
	double limit, by;
	bool is_strict;           /* the limit itself is too much */
	const struct bounds *row; /* all that the row asks */
};

/* No words: the number itself says it. */
struct mend {
	const char *words;
	const struct job_setting *settings;
	int n;
};

struct gauge {
	const char *name; /* as rules name it: "riser_height" */
	const char *what; /* "riser height" */
	enum gauge_unit unit;
	struct reading (*read)(const struct survey *s);
	/* NULL where the number itself says it */
	struct mend (*mend)(const struct survey *s, struct shortfall f);
	const char *key; /* of the job, that decides it: a path as job_pos has it */
};

/* NULL when there is none of that name. */
const struct gauge *gauge_find(const char *name);

/* All of them; the last one has no name. */
extern const struct gauge *const gauge_tables[];

/* One table a subject, each in its own file; the last row has no name. */
extern const struct gauge gauges_of_steps[], gauges_of_nosings[], gauges_of_flight[],
	gauges_of_headroom[], gauges_of_width[], gauges_of_rail[], gauges_of_grip[],
	gauges_of_guard[], gauges_of_edges[], gauges_of_stringers[], gauges_of_landings[];

struct reading reading_of(double value, const char *at);
struct reading reading_shown(struct reading r, const char *words);
struct reading reading_not_applicable(const char *why);
struct reading reading_not_possible(const char *why);

/* Is a guard of the stair made by others?  What would be measured on it is then not known. */
bool has_guard_by_others(const struct survey *s);
struct reading reading_by_others(void);

/* There is no rail or guard to measure it on: not known where others make one, else it does not
 * apply. */
struct reading reading_without(const struct survey *s, const char *why);

/* Grows by one more measured value; begins as reading_none(). */
struct reading reading_none(void);
void reading_add(struct reading *r, double value, const char *at);

#endif
