/*
 * Where a piece goes: a small picture of the stair with the piece filled in.
 */
#ifndef SHEETS_PIECE_KEY_H
#define SHEETS_PIECE_KEY_H

#include "draw/annotate.h"
#include "draw/view.h"
#include "pitchboard/sheet.h"

/* The picture without any piece filled, made once for all of them. */
struct key_view {
	struct view view;
	double scale;
	struct box box; /* on paper, its lower left corner at the origin */
};

/* As large as fits into so much paper. */
struct key_view key_view(struct arena *a, const struct sheet_context *c, double width,
	double height);

/* With its lower left corner at `at`. */
void draw_key(struct drawing *g, const struct key_view *k, struct vec at, const struct part *p);

#endif
