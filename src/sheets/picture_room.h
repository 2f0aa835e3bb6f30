/*
 * The room that the stair stands in, as its picture shows it.
 */
#ifndef SHEETS_PICTURE_ROOM_H
#define SHEETS_PICTURE_ROOM_H

#include "pitchboard/sheet.h"

/* The upper edge of a wall before the stair that is taken away: points in the house, in order. */
struct picture_wall {
	struct vec3 *at;
	int n; /* 0: there is none, or nothing hangs on it */
};

/* Floors and walls as pieces of existing work, a list that others may go on with. */
struct picture_room {
	struct part *first, *last;
	struct picture_wall gone;
};

/* Seen from a side of the stair, going up. */
struct picture_room picture_room(struct arena *a, const struct sheet_context *c,
	enum which_side from);

#endif
