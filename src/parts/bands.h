/*
 * Strips that end differently across their width: round a newel, at the end of
 * a wall, mitred in between.  Such a strip is bands side by side, each between
 * two planes, out of one moulded length:
 *
 *       ________________________________
 *      |  band                           \
 *      |..................................\   mitre
 *      |  band                 |
 *      |_______________________|   cut out round a newel
 */
#ifndef PARTS_BANDS_H
#define PARTS_BANDS_H

#include "parts/solid.h"

enum { MOST_BANDS = 16 };

/* Across the strip from one y to another; its ends as of solid_strip. */
struct band {
	double from, to;
	struct end_plane near, far;
};

struct bands {
	struct band at[MOST_BANDS];
	int n;
};

/* Adds one on top of the last; joined to it when their ends lie in the same planes, left out when
 * it has no length. */
void bands_add(struct bands *b, struct band more);

/* Moves them along the strip. */
void bands_shift(struct bands *b, double along);

/* As path_to, but a corner in the middle of a straight line is none. */
void path_straight_to(struct path *p, double x, double y);

/* Where the strip ends at the outer edge of its first band, and how far it reaches. */
struct outline bands_outline(struct arena *a, const struct bands *b);

/* Of a strip with this section (x across the strip, y up); seams are no edges. */
struct solid *bands_solids(struct arena *a, const struct bands *b, struct outline section);

/* Places across, sorted, each once, between two limits: where bands part. */
struct cuts_across {
	double at[MOST_BANDS];
	int n;
};

struct cuts_across cuts_between(double from, double to);
void cuts_add(struct cuts_across *c, double at);

#endif
