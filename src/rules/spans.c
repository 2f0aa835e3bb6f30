#include "rules/spans.h"

#include <math.h>
#include <stdlib.h>

static int by_from(const void *a, const void *b)
{
	double x = ((const struct span *)a)->from, y = ((const struct span *)b)->from;

	return (x > y) - (x < y);
}

struct spans spans_bare(struct arena *a, struct spans covers, struct span whole)
{
	struct spans bare = { NEW_N(a, struct span, covers.n + 1), 0 };
	double reached = whole.from;

	if (covers.n)
		qsort(covers.at, (size_t)covers.n, sizeof(*covers.at), by_from);
	for (int i = 0; i <= covers.n; i++) {
		double next = i < covers.n ? fmin(covers.at[i].from, whole.to) : whole.to;
		if (next > reached)
			bare.at[bare.n++] = (struct span){ reached, next };
		reached = fmax(reached, i < covers.n ? covers.at[i].to : whole.to);
	}
	return bare;
}
