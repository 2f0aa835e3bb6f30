/*
 * One drawing as one SVG.
 */
#ifndef WRITE_SVG_H
#define WRITE_SVG_H

#include "write/outlines.h"
#include "write/output.h"

/* True size, a unit to the millimetre.  Lettering is outlines, so that it looks
 * the same everywhere; what it says stands in <desc>, to be searched and read aloud. */
struct output svg_make(struct arena *a, const struct drawing *g, const struct imprint *imprint,
	struct outlines *outlines);

#endif
