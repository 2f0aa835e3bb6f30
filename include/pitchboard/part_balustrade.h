/*
 * What only newels, their caps and balusters have.  Millimetres and radians; made by parts_make
 * (part.h) with the pieces themselves.
 */
#ifndef PITCHBOARD_PART_BALUSTRADE_H
#define PITCHBOARD_PART_BALUSTRADE_H

#include "pitchboard/job.h"

/* A ring of cross rails round a panelled newel, up from its foot; at a foot cut to the rake, from
 * its highest point. */
struct newel_ring {
	double from, to;
	double spacer; /* block that keeps it off the ring below, or off the foot; 0: it stands on
			  the foot */
};

/* What only the post of a newel has, or the core of a panelled one. */
struct newel {
	enum newel_build build;
	double section;             /* over all */
	double height;              /* over all, without the cap */
	double core;                /* side of the core; the section when there are no panels */
	double rail_low, rail_high; /* where the rail meets it, up from its lower end; 0, 0: it
				       carries none */
	double leg;                 /* that hangs down beside the string it stands on; 0: none */
	const struct newel_ring *rings;
	int ring_count;
};

/* What only a cap has: its shape, and how a saw is set for it.  Angles are from level, of a blade
 * from plumb, of a mitre gauge from square. */
struct cap {
	enum cap_kind kind;
	enum cap_build build;
	double width;     /* square, over all */
	double edge;      /* height of its square edge */
	double height;    /* over all: a block planed to this, the slopes meet in one point */
	double slope;     /* of the faces */
	double rise;      /* edge to point */
	double slant;     /* foot of a face to the point, along its middle */
	double hip;       /* corner to point, along the arris */
	double hip_slope; /* of that arris */
	double dihedral;  /* between two faces */
	/* A block, its underside against the fence, a side on the table: */
	double blade_tilt, blade_height; /* over the table, plumb: half the width, and no less */
	double fence;    /* to the blade, at the table; for the shoulder cuts the same, blade square
			  */
	double shoulder; /* blade's height for the shoulder cuts, which come first; 0: none */
	double step;     /* plumb over the ledge */
	/* Four pieces, face down, foot against the mitre gauge: */
	double mitre_gauge, mitre_tilt;
	double foot_tilt; /* to bevel the foot: on edge, its face against the fence */
	double board;     /* their thickness */
};

/* What only a baluster has. */
struct baluster {
	double long_point, short_point; /* along the two faces that the rake makes unequal */
	double rake;                    /* of the top cut, from level */
	double foot_rake;               /* 0: square foot */
};

#endif
