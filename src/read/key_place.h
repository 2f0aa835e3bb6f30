/*
 * Where a key stands, as a path and in words: "stair.segments[1].run" is
 * "flight 1, run" to who reads a list of what has changed.
 */
#ifndef READ_KEY_PLACE_H
#define READ_KEY_PLACE_H

#include "read/field.h"

struct key_place {
	const char *path;  /* of the group, with its point: "stair.segments[1].", "" for the file */
	const char *plain; /* the same without numbers: "stair.segments." */
	const char *words; /* "flight 1"; "" for the file */
};

/* Of the group that a field of the group at `at` holds; `number` is that of an entry of a list,
 * from 1, else 0. */
struct key_place key_place_in(struct arena *a, struct key_place at, const struct field *f,
	int number);

/* "flight 1, run" */
const char *key_place_words(struct arena *a, struct key_place at, const struct field *f);

#endif
