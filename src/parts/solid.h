/*
 * Solids: the few ways in which pieces of wood are bounded.
 */
#ifndef PARTS_SOLID_H
#define PARTS_SOLID_H

#include "parts/outline.h"

/* Two faces of n corners joined corner to corner; which of them is the counter-clockwise one is
 * found here. */
struct solid *solid_join(struct arena *a, int n, struct vec3 *one, struct vec3 *other,
	const unsigned char *soft);

/* A profile in x and y, drawn out along z. */
struct solid *solid_prism(struct arena *a, struct profile f, double z0, double z1);

/* A cut across a strip: where it meets the strip's own corner, and how far it runs on with y and
 * with z (1: a mitre of 45 degrees). */
struct end_plane {
	double at, by_y, by_z;
};

/* A profile whose x is the strip's y and whose y is the strip's z, drawn out along x between two
 * cuts. */
struct solid *solid_strip(struct arena *a, struct profile f, struct end_plane from,
	struct end_plane to);

struct solid *solid_box(struct arena *a, struct vec3 from, struct vec3 to);

/* All of them, moved. */
struct solid *solids_moved(struct arena *a, const struct solid *list, struct vec3 by);

/* The list with one more in front. */
struct solid *solid_add(struct solid *list, struct solid *more);

/* Is a point, in the part's axes, inside the wood? */
bool solids_contain(const struct solid *list, struct vec3 p);

#endif
