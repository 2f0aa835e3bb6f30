/*
 * What skirt boards are besides those on walls.
 */
#ifndef PARTS_SKIRT_H
#define PARTS_SKIRT_H

#include "parts/piece.h"

/* The finished board in front of the rough carriage of an open side. */
void open_skirt_add(struct pieces *list, const struct rod *r, enum side_hand hand);

/* Where the skirt of a wall begins before the first riser. */
double wall_skirt_front(const struct rod *r);

/* A skirt along the steps, as it would be without walls that treads are cut out for, in the lengths
 * between these. */
struct lengths {
	struct outline *at;
	int n;
};

struct lengths skirt_lengths(struct arena *a, const struct rod *r, const struct side *side,
	struct outline whole);

/* Can the job have it, when it asks for one? */
bool open_skirt_fits(const struct rod *r, struct diags *d);

#endif
