/*
 * What the edition asks of something that a sheet has measured.
 */
#ifndef SHEETS_LIMITS_H
#define SHEETS_LIMITS_H

#include "pitchboard/rule.h"
#include "pitchboard/sheet.h"

/* The finding of the row that reads this gauge and applies to this stair; NULL: there is none. */
const struct finding *limit_for(const struct finding *list, const char *gauge);

/* Asked less than 4 3/8" (R312.1.3): met; "" where no code is named, or it asks nothing of it. */
const char *limit_words(struct arena *a, const struct finding *list, const char *gauge);

/* Which edges of the opening in the upper floor have neither guard nor wall in the job; "" where
 * all have, or there is no opening. */
const char *opening_guard_words(struct arena *a, const struct sheet_context *c);

/* In capitals what must not be overlooked: no colour tells it. */
const char *result_words(enum finding_state state);

#endif
