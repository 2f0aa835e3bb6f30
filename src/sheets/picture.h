/*
 * The picture of the whole stair: in the room it stands in, without a scale.
 */
#ifndef SHEETS_PICTURE_H
#define SHEETS_PICTURE_H

#include "sheets/frame.h"

/* Seen from the side that shows more, in that one of some rooms where it comes out largest. */
void sheet_picture(struct sheet *s, const struct box *rooms, int n);

/* Where it is seen from, whatever the room on paper. */
struct frame picture_eye(const struct stair *s);

#endif
