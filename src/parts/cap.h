/*
 * Caps of newels: their shape, and how saws are set for it.
 */
#ifndef PARTS_CAP_H
#define PARTS_CAP_H

#include "parts/compound.h"
#include "parts/newel.h"

/* Pyramids are no steeper than this: a blade tilts no further, and the point would be frail. */
#define STEEPEST_CAP (60 * PI / 180)

/* Do the sizes go together, with the rail below and with the newels and rails beside it? */
bool cap_fits(struct arena *a, const struct post *p, const struct cap *c, struct diags *d);

/* The axes of a cap: x along the flight, y to the left, z up, 0 at its corner on the post's top. */
struct frame cap_place(const struct post *p, double width);

/* Four pieces mitred on a plate. */
void cap_mitred_add(struct pieces *list, const struct post *p, const struct cap *c);

/* The square piece that lies on the post: block or plate, doweled to it. */
struct part *cap_square_add(struct pieces *list, const struct post *p, const char *name,
	double width, double thickness);

#endif
