/*
 * Equal pieces: bought, made, drilled and described alike.  Where they stand does not count, nor
 * what a deviation of less than NEAR_ENOUGH does.
 */
#ifndef PARTS_ALIKE_H
#define PARTS_ALIKE_H

#include "pitchboard/part.h"

/* In what two pieces can differ; first what most do, and what is cheap to compare. */
enum aspect {
	ASPECT_NAME,
	ASPECT_SIZE,
	ASPECT_MATERIAL,
	ASPECT_STUFF, /* how it is bought */
	ASPECT_MAKEUP,
	ASPECT_GRAIN,
	ASPECT_ENDS,
	ASPECT_OUTLINE,
	ASPECT_SECTION,
	ASPECT_SOLID,
	ASPECT_FEATURES,
	ASPECT_BORES,
	ASPECT_NOTE,
	ASPECT_COUNT
};

bool outlines_are_same(struct outline a, struct outline b);

bool parts_are_alike_in(enum aspect aspect, const struct part *a, const struct part *b);

/* In all of them. */
bool parts_are_alike(const struct part *a, const struct part *b);

/* The first hole of one list that has no equal in the other; NULL: each has. */
const struct bore *bore_missing(const struct bore *list, const struct bore *in);

#endif
