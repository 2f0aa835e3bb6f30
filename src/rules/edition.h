/*
 * One file of templates/rules/, as it is written: limits still as typed.
 */
#ifndef RULES_EDITION_H
#define RULES_EDITION_H

#include "pitchboard/rule.h"

/* The rows of the edition it is like carried over, changed ones in their place, new ones at the
 * end.  NULL after an error, which is in `d` and belongs to a file of the folder. */
struct rule_set *edition_read(struct arena *a, const char *dir, const char *name, struct diags *d);

#endif
