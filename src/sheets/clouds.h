/*
 * Clouds round what reads otherwise than on the same sheet of an earlier job,
 * each with the mark of the revision in a triangle.
 *
 *       .-._.-._.-.
 *      (   10 1/2" )   /\
 *       '-'_'-'_'-'   /B_\
 */
#ifndef SHEETS_CLOUDS_H
#define SHEETS_CLOUDS_H

#include "pitchboard/sheet.h"

/* On every sheet of the list that the earlier job had too, by its title.  Before the frames are
 * drawn, whose dates and fingerprints always differ. */
void clouds_draw(struct arena *a, const struct sheet_context *c, struct drawing *sheets);

#endif
