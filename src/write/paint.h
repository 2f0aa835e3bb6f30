/*
 * A drawing laid down in ink: the same for every format.
 */
#ifndef WRITE_PAINT_H
#define WRITE_PAINT_H

#include "write/ink.h"

/* What is painted, and with what. */
struct canvas {
	struct ink *ink;
	const struct drawing *drawing;
	const struct faces *faces;
	struct arena *arena;
};

/* Layer by layer (layers.h), in each the white fills, the shades and then the
 * lines, all lines of one pen as one path; lettering last, over everything. */
void paint_drawing(struct canvas c);

#endif
