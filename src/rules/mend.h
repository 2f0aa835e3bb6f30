/*
 * What would put a finding right: in words, and as keys of the job to set.
 *
 * A size is lettered before it is told, and has to do what is said of it as it
 * is lettered: it is rounded to the side on which the limit is met.
 */
#ifndef RULES_MEND_H
#define RULES_MEND_H

#include "rules/gauge.h"

/* Of an exact size, the next one that can be lettered: the way that the limit asks (1: no smaller,
 * -1: no larger), and past the exact one where that itself is too much. */
double mend_size(const struct survey *s, struct shortfall f, double exact, int way);

/* A size that grows as what is measured does: what it was, and what is missing. */
double mend_from(const struct survey *s, struct shortfall f, double was);

/* One step alone differs from the rest, by what is cut out of its tread: no key puts all right. */
bool mend_is_for_one_step(struct shortfall f);
struct mend mend_one_step(const struct survey *s, struct shortfall f);

struct mend mend_said(const char *words);
struct mend mend_also(const struct survey *s, struct mend m, const char *path, const char *value);
struct mend mend_also_size(const struct survey *s, struct mend m, const char *path, double mm);

#endif
