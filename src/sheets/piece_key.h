/*
 * Where a piece goes: the picture of the stair, small, with the piece filled in.
 */
#ifndef SHEETS_PIECE_KEY_H
#define SHEETS_PIECE_KEY_H

#include "pitchboard/drawing.h"
#include "pitchboard/sheet.h"

/* The picture without any piece filled, made once for all of them. */
struct key_view {
	struct frame eye;
	struct drawing *lines; /* the lower left corner of its box at the origin */
	double scale;
	struct vec low; /* of the box, before scaling */
	struct box box; /* on paper */
};

/* As large as fits into so much paper. */
struct key_view key_view(struct arena *a, const struct sheet_context *c, double width,
	double height);

/* With its lower left corner at `at`. */
void draw_key(struct drawing *g, const struct key_view *k, struct vec at, const struct part *p);

#endif
