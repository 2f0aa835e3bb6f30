/*
 * Hatching of what a section cuts.
 *
 * Plain lines at 45 degrees.  They keep their place in the house, so that the two halves of a piece
 * cut in two, or one piece on two sheets, are hatched alike.  Pieces that touch get different
 * hatches; existing work the widest; what is thin on paper none.
 */
#ifndef DRAW_HATCH_H
#define DRAW_HATCH_H

#include "draw/view.h"

void hatch_cuts(struct drawing *g, const struct view *v, struct placing at, struct box window);

#endif
