/*
 * The cross section of a piece with its sizes over all and, where an edge is sawn aslant, the size
 * of the side that this leaves shorter.
 */
#ifndef SHEETS_PIECE_SECTION_H
#define SHEETS_PIECE_SECTION_H

#include "sheets/frame.h"

/* Draws it with its origin at the drawing's; the box it took on paper. */
struct box piece_section_draw(struct sheet *s, struct outline section, double scale);

#endif
