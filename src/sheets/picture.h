/*
 * The picture of the whole stair: in the room it stands in, without a scale.
 */
#ifndef SHEETS_PICTURE_H
#define SHEETS_PICTURE_H

#include "sheets/frame.h"

/* As large as the room allows, seen from the side that shows more. */
void sheet_picture(struct sheet *s, struct box room);

#endif
