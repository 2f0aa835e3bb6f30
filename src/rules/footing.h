/*
 * What a foot lands on: the floors and every tread, measured on the wood near
 * the left end, in the middle and near the right end.
 */
#ifndef RULES_FOOTING_H
#define RULES_FOOTING_H

#include "rules/gauge.h"

enum { FOOTING_ENDS = 3 };

extern const char *const footing_ends[FOOTING_ENDS]; /* "left end" ... */

/* NAN where there is no wood: a floor has no front, a tread none where a newel stands in it. */
struct footing {
	double level[FOOTING_ENDS];
	double front[FOOTING_ENDS]; /* x of the foremost point of its nosing */
};

/* From the lower floor (0) to the upper one, or the last tread where that is flush: as many as
 * risers, and one. */
const struct footing *footings_make(const struct survey *s);

/* y of an end. */
double footing_y(const struct survey *s, int end);

#endif
