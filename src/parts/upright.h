/*
 * Uprights of the infill, balusters and posts: their shape, and what holds their ends.
 *
 * Their axes: x up from the front of the foot, y along the stair, z to the left.
 */
#ifndef PARTS_UPRIGHT_H
#define PARTS_UPRIGHT_H

#include "parts/infill.h"

#define SCREW_HOLE 3.5 /* clearance of a #6 screw, 9/64 in (table of shank holes) */

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
	double in_other; /* how deep in what it stands on or under; 0: that is not drilled */
};

struct bore upright_dowel(const struct upright *u, enum infill_end end, struct upright_dowel d);

/* A hole driven on the slant through the front, so far from the end, into what the end meets. */
struct bore upright_pilot(const struct upright *u, enum infill_end end, double from_end,
	struct bore_size size);

#endif
