/*
 * Lines and arcs as one Cairo path.
 */
#ifndef WRITE_STROKES_H
#define WRITE_STROKES_H

#include "write/paint.h"

/* Adds one mark to the current path, broken into dashes as its pen asks. */
void strokes_add(struct canvas c, const struct mark *m);

/* A point of the drawing in points of the page, which count downwards. */
struct vec canvas_point(struct canvas c, struct vec at);

#endif
