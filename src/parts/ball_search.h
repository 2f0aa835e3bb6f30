/*
 * The largest empty circle with its middle in one window of the plane.
 */
#ifndef PARTS_BALL_SEARCH_H
#define PARTS_BALL_SEARCH_H

#include "parts/ball_plane.h"

/* Between two lines, which may rise, and over the steps. */
struct ball_zone {
	double from, to; /* along x */
	struct slope_line low, high;
	double floor; /* level of the lowest step in it */
};

struct ball_found {
	double radius; /* 0: none */
	struct vec at;
};

struct ball_found ball_search(struct arena *a, const struct ball_plane *plane,
	const struct ball_window *w, const struct ball_zone *zone);

#endif
