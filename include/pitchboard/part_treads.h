/*
 * What only the pieces of a tread have: the moulded edge.  Millimetres and radians; made by
 * parts_make (part.h) with the pieces themselves.
 */
#ifndef PITCHBOARD_PART_TREADS_H
#define PITCHBOARD_PART_TREADS_H

#include "pitchboard/job.h"

/* A chamfer sawn off before the router takes the rest, outside the finished edge by a margin. */
struct waste {
	int arrises;   /* one, or both alike */
	double angle;  /* to the faces */
	double leg;    /* along either face; 0: not worth the saw */
	double flat;   /* width of the sawn face */
	double margin; /* least between it and the finished edge */
};

/* The moulded edge of a piece of a tread. */
struct nosing {
	enum nosing_kind kind;
	double thickness;
	double radius;  /* of its rounds; 0: square */
	double chamfer; /* along either face; 0: there is none */
	double reach;   /* in from the edge, where both faces are whole */
	struct waste waste;
};

#endif
