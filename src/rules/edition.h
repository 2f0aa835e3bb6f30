/*
 * One file of templates/rules/, as it is written: limits still as typed.
 */
#ifndef RULES_EDITION_H
#define RULES_EDITION_H

#include "pitchboard/rule.h"

/* The file of an edition. */
const char *edition_path(struct arena *a, const char *dir, const char *name);

/* The rows of the edition it is like carried over, changed ones in their place, new ones at the
 * end.  NULL after an error, which is in `d`: that is empty before, and then the file's own in
 * which it is, this edition's or one's that it is like. */
struct rule_set *edition_read(struct arena *a, const char *dir, const char *name, struct diags *d);

#endif
