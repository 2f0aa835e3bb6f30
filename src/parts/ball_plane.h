/*
 * What stands in the plane of a stretch of balustrade, seen square to it.
 */
#ifndef PARTS_BALL_PLANE_H
#define PARTS_BALL_PLANE_H

#include "parts/stretch.h"

/* One edge of a face that looks out of the plane: x along the stretch, y up. */
struct ball_edge {
	struct vec a, b;
	int face;                /* edges of one face follow each other */
	const struct part *part; /* NULL: the end of what is measured */
};

/* Edges are kept by the window of the stretch that they are near to, so that a window asks only
 * its own. */
struct ball_window {
	int *edges;
	int n, room;
};

struct ball_plane {
	const struct stretch *stretch;
	struct ball_edge *edges;
	int n, room;
	double width; /* of a window */
	struct ball_window *windows;
	int count;
};

struct ball_plane ball_plane_make(struct arena *a, const struct stretch *s,
	const struct part *parts);

double ball_edge_distance(const struct ball_edge *e, struct vec p);

/* Is the point, which lies in this window, inside of something? */
bool ball_plane_is_solid(const struct ball_plane *plane, const struct ball_window *w, struct vec p);

#endif
