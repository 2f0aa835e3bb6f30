/*
 * What the three forms of the key reference say alike.
 */
#ifndef READ_KEYS_WORDS_H
#define READ_KEYS_WORDS_H

#include "read/keys_table.h"

/* "length", "yes or no", "list of lengths", "wall or open" */
const char *key_kind(struct arena *a, const struct field *f);

/* "required", "1 1/8\" or, in millimetres, 25 mm", "as nosing", "the program chooses", or "". */
const char *key_default(struct arena *a, const struct field *f);

#endif
