/*
 * Lines and arcs, whole or broken.
 */
#ifndef WRITE_STROKES_H
#define WRITE_STROKES_H

#include "write/paint.h"

/* Marks of one pen, gathered into one path for as long as they can be stroked in one go. */
struct brush {
	struct canvas canvas;
	enum pen pen;
	double scale;  /* of the dashes of what is in the path; 0: whole */
	int marks;     /* in the path */
	struct vec at; /* where the path is */
};

struct brush brush_new(struct canvas c, enum pen pen);
void brush_add(struct brush *b, const struct mark *m);
void brush_stroke(struct brush *b); /* what is in the path, if anything is */

#endif
