/*
 * Uprights of the infill, balusters and posts: their shape, and what holds their ends.
 *
 * Their axes: x up from the front of the foot, y along the stair, z to the left.
 */
#ifndef PARTS_UPRIGHT_H
#define PARTS_UPRIGHT_H

#include "parts/fixing.h"
#include "parts/infill.h"

struct upright {
	double width, thickness; /* along the stair, and across it */
	double height;           /* of its front */
	double slope[2];         /* tangents of its cuts, by enum infill_end */
};

struct outline upright_outline(struct arena *a, const struct upright *u);

/* Square to its end, however that is cut. */
struct upright_dowel {
	double diameter, length;
	double wall;     /* least wood beside it in the upright */
	double in_other; /* how deep a hole may be in what it stands on or under */
};

struct bore upright_dowel(const struct upright *u, enum infill_end end, struct upright_dowel d);

/* A screw or brad driven on the slant through the front, so far from the end, into what the end
 * meets; so deep is the hole for it. */
struct bore upright_pilot(const struct upright *u, enum infill_end end, double from_end,
	struct fastener f, double depth);

/* Is there wood for a dowel whose hole begins so far behind the face of the riser, where a tread's
 * nosing is rounded?  Complains of it by the name of the upright. */
bool upright_clears_nosing(struct arena *a, const struct stretch *s, double hole, const char *name,
	struct diags *d);

/* The usual ones (common practice). */
struct fastener upright_screw(enum units units);
struct fastener upright_brad(enum units units);

#endif
