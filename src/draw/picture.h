/*
 * Drawing a picture: a view with spec.picture, on paper.
 */
#ifndef DRAW_PICTURE_H
#define DRAW_PICTURE_H

#include "draw/view.h"

/* How much an edge of a part has to say at a scale. */
enum picture_line { PICTURE_BOLD, PICTURE_LIGHT };

/* Shades, then lines.  What a part is too slender for is drawn with a fine pen only; fine lines
 * that would run together are left out. */
void picture_draw(struct drawing *g, const struct view *v, struct placing at,
	enum picture_line (*line)(const struct part *p, double scale));

#endif
