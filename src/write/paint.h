/*
 * A drawing on a Cairo surface: the same for PDF and SVG.
 */
#ifndef WRITE_PAINT_H
#define WRITE_PAINT_H

#include <cairo.h>

#include "pitchboard/write.h"

/* Cairo keeps coordinates in steps of 1/256 of a device unit and letters in
 * steps of 1/64, so the device unit of every surface is the point: with inches
 * the letters would fall apart. */
#define POINTS_PER_MM (72 / 25.4)

/* Where a drawing is painted. */
struct canvas {
	cairo_t *cr;
	const struct drawing *drawing;
	const struct faces *faces;
	struct arena *arena;
};

/*
 * Paints in layers.  A layer holds, from the bottom: white fills, shaded
 * fills, lines, all lines of one pen as one path.  Marks are in the lowest
 * layer in which a white fill still covers what was drawn before it and
 * nothing that was drawn after it.  Lettering lies over all layers.
 *
 * How many letters no face holds.
 */
int paint_drawing(struct canvas c);

#endif
