/*
 * The sizes of one piece in one view, each from one datum a direction.
 */
#ifndef SHEETS_PIECE_SIZES_H
#define SHEETS_PIECE_SIZES_H

#include "sheets/frame.h"
#include "sheets/piece_view.h"

/* Draws them round the view; the box of view and sizes. */
struct box piece_sizes_draw(struct sheet *s, const struct piece_view *v, double scale);

#endif
