/*
 * Some of a stair's pieces, for a view that is to show no more.
 */
#ifndef SHEETS_SOME_PARTS_H
#define SHEETS_SOME_PARTS_H

#include "pitchboard/part.h"

/* Is a part wanted in this one of its places? */
typedef bool wanted_fn(const struct part *p, int place, const void *with);

/* Copies of the parts that are wanted anywhere, without the places where they are not. */
const struct part *some_parts(struct arena *a, const struct part *parts, wanted_fn *wanted,
	const void *with);

#endif
