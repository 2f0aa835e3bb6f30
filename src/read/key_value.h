/*
 * The value of a key in words, from the table that reads it.
 */
#ifndef READ_KEY_VALUE_H
#define READ_KEY_VALUE_H

#include "read/keys_table.h"

/* `from` is the struct that the field's group is read into; "" for a group. */
const char *key_value_words(struct arena *a, struct lettering l, const struct field *f,
	const char *from);

#endif
