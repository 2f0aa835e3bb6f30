/*
 * What is different since an earlier job: keys, the solved stair, and every part.
 *
 * Parts are compared as pieces of wood, not by their marks: a piece that is made
 * as it was made before has not changed, whatever it is called now.
 */
#ifndef PITCHBOARD_CHANGE_H
#define PITCHBOARD_CHANGE_H

#include "pitchboard/part.h"

struct change {
	struct change *next;
	const char *text;        /* "unit run: was 10 1/4", now 10 1/2"" */
	const struct part *part; /* of the later job; NULL: it is not one part's */
};

/* A job as it was. */
struct earlier {
	const struct stair *stair;
	const struct part *parts;
};

/* Since `was`, in the order: what was asked for, the stair, the parts.  NULL where any of the four
 * is NULL, or nothing differs. */
const struct change *changes_find(struct arena *a, struct earlier was, const struct stair *stair,
	const struct part *parts);

/* Must the bench make it otherwise than before? */
bool part_has_changed(const struct change *changes, const struct part *p);

#endif
