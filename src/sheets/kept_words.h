/*
 * Which lettering of a sheet says what it said on the same sheet of an earlier job.
 *
 * A sheet is lettered in the order in which its views, chains and tables are
 * composed, so that what a figure measures is its place in that order, whatever
 * it reads and wherever it lies on paper.  The longest run of texts that both
 * sheets have in the same order is what was kept; of several, the one that moved
 * least.
 *
 *     then   13 @ 10"   3/4"    10"   7 5/8"
 *               |         |       \______
 *     now    13 @ 10"   3/4"   10 1/2"   10"   7 5/8"       one figure is new
 */
#ifndef SHEETS_KEPT_WORDS_H
#define SHEETS_KEPT_WORDS_H

#include <stdbool.h>

#include "pitchboard/drawing.h"

/* Sheets of the earlier job, in their order. */
struct earlier_sheets {
	const struct drawing *const *sheet;
	int n;
};

/* One answer for every MARK_TEXT of `now`, in its order: was it on one of those? */
const bool *words_kept(struct arena *a, struct earlier_sheets then, const struct drawing *now);

#endif
