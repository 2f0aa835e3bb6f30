/*
 * What cross pieces divide between two balusters: what is open under the lowest
 * of them, between two, and over the highest.
 */
#ifndef PARTS_BALL_CROSS_H
#define PARTS_BALL_CROSS_H

#include "parts/ball_search.h"
#include "pitchboard/ball.h"

/* A zone of the plane, and the window that its edges are in. */
struct ball_cross {
	struct ball_zone zone;
	const struct ball_window *window;
	enum ball_place place;
};

struct ball_crosses {
	struct ball_cross *at;
	int n;
};

/* From the foot of the stretch on; `all` is what is open there at all. */
struct ball_crosses ball_crosses_make(struct arena *a, const struct ball_plane *plane,
	const struct part *parts, const struct ball_zone *all);

#endif
