/*
 * What must hold for the views and sheets of every stair.
 */
#ifndef RANDOM_DRAWN_H
#define RANDOM_DRAWN_H

#include "pitchboard/sheet.h"

/* What sheets are made with, read once. */
struct shop {
	const struct stationery *stationery;
	struct measure measure;
};

/* NULL while all is well, else what is wrong, in the arena. */
const char *views_disagree(struct arena *a, const struct part *parts);
/* Of one set by its name; NULL: the job's own. */
const char *sheets_fault(struct arena *a, const struct stair *s, const struct part *parts,
	const struct shop *shop, const char *set, struct diags *d);

#endif
