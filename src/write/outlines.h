/*
 * The outlines of letters, each drawn up once for all sheets of a run.
 */
#ifndef WRITE_OUTLINES_H
#define WRITE_OUTLINES_H

#include "write/faces.h"

struct outlines {
	struct arena *arena;
	const struct faces *faces;
	const char **known[FACE_COUNT]; /* by glyph; NULL: not asked for yet */
};

struct outlines *outlines_new(struct arena *a, const struct faces *faces);

/* Data of an SVG path, y down, in the font's own units. */
const char *outline_of(struct outlines *o, enum face_name face, unsigned glyph);

#endif
