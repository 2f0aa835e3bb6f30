/*
 * Limits: from what was typed to numbers, and back to words.
 */
#ifndef RULES_LIMITS_H
#define RULES_LIMITS_H

#include "rules/gauge.h"

/* Reads the texts of these bounds in the gauge's unit; a bare length is in `units`.  NULL, or what
 * is wrong. */
const char *bounds_read(struct arena *a, struct bounds *b, enum gauge_unit unit, enum units units);

static inline bool limit_given(struct limit l)
{
	return l.text && *l.text;
}

bool bounds_given(const struct bounds *b);

/* Is a value within all of them? */
bool bounds_hold(const struct bounds *b, double value);

/* at least 10", 34" to 38", more than 1" and less than 4": in the units the edition is written in.
 */
const char *bounds_words(struct arena *a, const struct bounds *b, enum gauge_unit unit,
	enum units units);

/* A value in the gauge's unit, as a finding says it. */
const char *value_words(struct arena *a, double value, enum gauge_unit unit, struct lettering how);

#endif
