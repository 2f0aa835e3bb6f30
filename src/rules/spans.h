/*
 * Spans of a line: what of it is covered, and what is left bare.
 */
#ifndef RULES_SPANS_H
#define RULES_SPANS_H

#include "pitchboard/arena.h"

struct span {
	double from, to;
};

struct spans {
	struct span *at;
	int n;
};

/* What of `whole` none of the covers reaches, in order along it; the covers come out sorted. */
struct spans spans_bare(struct arena *a, struct spans covers, struct span whole);

#endif
