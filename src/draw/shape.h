/*
 * Outlines of parts on paper: corners joined by straight lines and arcs.
 */
#ifndef DRAW_SHAPE_H
#define DRAW_SHAPE_H

#include "draw/view.h"
#include "pitchboard/part.h"

/* Draws the outline with its arcs as arcs. */
void draw_outline(struct drawing *g, enum pen pen, struct outline o, struct placing at);

#endif
