/*
 * Which marks may be painted together.
 *
 * Lines of one pen are painted as one path, so not in the order in which they
 * were drawn.  That shows only where a white fill knocks out what lies below
 * it: what was drawn before it has to stay below, what was drawn after it
 * above.  Marks therefore get layers, painted from 0 up, a layer's white fills
 * first:
 *
 *     drawn:   line  line  WHITE  line (far away)  line (across the white)
 *     layer:     0     0     1      0                1
 */
#ifndef WRITE_LAYERS_H
#define WRITE_LAYERS_H

#include "pitchboard/drawing.h"

/* A mark in its layer; texts are in none. */
struct layered {
	const struct mark *mark;
	int layer;
};

struct layers {
	const struct layered *marks; /* in the order drawn */
	int n;
	int count; /* of layers, 1 on most sheets */
};

struct layers layers_sort(struct arena *a, const struct drawing *g);

#endif
