/*
 * The likely mend for a word that is not known.
 */
#ifndef READ_SUGGEST_H
#define READ_SUGGEST_H

#include "read/field.h"

const char *suggest_key(struct arena *a, const struct group *top, const struct group *g,
	const char *typed);

/* "its keys are ..." */
const char *suggest_keys(struct arena *a, const struct group *g);

const char *suggest_choice(struct arena *a, const struct choice *choices, const char *typed);

#endif
