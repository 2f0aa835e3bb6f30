/*
 * Spans: a stretch divided by posts, where bars and panels would be too long without.
 */
#ifndef PARTS_SPAN_H
#define PARTS_SPAN_H

#include "parts/infill.h"

struct span {
	double from, to; /* along the stretch: clear between newels, posts, or a wall's end */
	bool post_before, post_after; /* else a newel or a wall */
};

struct spans {
	struct span *span;
	int n;
};

/* Adds the posts and returns what is left between them; none after an error. */
struct spans spans_make(struct pieces *list, const struct stretch *s, struct diags *d);

#endif
