/*
 * The room that marks take on paper.
 */
#ifndef DRAW_BOUNDS_H
#define DRAW_BOUNDS_H

#include <stdbool.h>

#include "pitchboard/drawing.h"

/* Round all of them. */
struct box points_box(const struct vec *points, int n);

/* What they enclose: negative where they run clockwise. */
double points_area(const struct vec *points, int n);

/* The four corners of a text's own rectangle, counter-clockwise from its lower left; capitals and
 * descenders counted. */
struct text_room {
	struct vec corner[4];
};

struct text_room text_room(const struct mark *text, struct measure m);

struct box room_box(const struct text_room *t);

/* Letters have air around them: rooms that share no more than this do not touch. */
#define GRACE 0.05

bool rooms_touch(const struct text_room *a, const struct text_room *b);

/* Round all of a mark. */
struct box mark_box(const struct mark *k, struct measure m);

/* Does a line or an arc run through the room?  `box` is the box round it. */
bool mark_crosses(const struct mark *k, const struct text_room *room, struct box box);

/* A ring round a mark, or a hole's: no other lettering may run into it. */
bool mark_is_ring(const struct mark *k);

/* A line, an arc or a ring that lettering must not stand on. */
bool mark_is_heavy(const struct mark *k);

/* Is a point inside a fill, or on its edge?  Fills have no dents. */
bool fill_holds(const struct mark *fill, struct vec p);

/* Does a fill lie under any of the room? */
bool fill_touches(const struct mark *fill, const struct text_room *room, struct box box);

/* How far letters such as g reach below the base line, of the height of a capital. */
#define DESCENDER 0.28

/* A line that lettering must never cross. */
static inline bool pen_is_heavy(enum pen pen)
{
	return pen == PEN_CUT || pen == PEN_OUTLINE || pen == PEN_EXISTING || pen == PEN_FRAME ||
		pen == PEN_TEMPLATE;
}

#endif
