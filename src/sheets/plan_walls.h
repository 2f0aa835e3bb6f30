/*
 * What of the walls stands out into the steps, in words under the plan.
 */
#ifndef SHEETS_PLAN_WALLS_H
#define SHEETS_PLAN_WALLS_H

#include "pitchboard/stair.h"

/* Where each stands and how large it is, and what is scribed to it; "" when none does. */
const char *plan_walls_words(struct arena *a, const struct stair *s);

#endif
