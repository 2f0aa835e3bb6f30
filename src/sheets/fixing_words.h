/*
 * What holds the pieces in a part of the house, in words: read from their bores.
 */
#ifndef SHEETS_FIXING_WORDS_H
#define SHEETS_FIXING_WORDS_H

#include "pitchboard/sheet.h"

/* Which pieces' bores are told of: a joint is drilled from one side, the other is its mate. */
typedef bool tells_fn(const struct part *p, const struct bore *b);

/* A piece of the house. */
struct space {
	struct vec3 low, high;
};

struct space space_round(struct vec3 middle, double by);

/* dowel, rail to newel: 2 of 3/8" x 2"; ...  "" when nothing does. */
const char *fixings_in(struct arena *a, const struct sheet_context *c, struct space space,
	tells_fn *tells);

/* What a close-up tells of in words, it shows. */
struct told {
	const struct part *parts;
	struct space space;
	tells_fn *tells;
};

/* Holes that lead to a fixing, and both halves of a joint; `with` is a struct told. */
bool told_shows_hole(const struct part *p, const struct bore *b, struct vec3 mouth,
	const void *with);

#endif
