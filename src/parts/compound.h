/*
 * Compound mitres: frames and roofs of n equal sides that slope inwards.
 */
#ifndef PARTS_COMPOUND_H
#define PARTS_COMPOUND_H

#include "pitchboard/vec.h"

/* How a saw is set to cut the sides, each flat on its face with its long edge against the fence;
 * `slope` is that of a side from level (0: a flat frame, 90 degrees: an upright box). */
struct compound {
	double mitre_gauge; /* off square */
	double blade_tilt;  /* from plumb */
	double dihedral;    /* between two sides, in the wood */
	double hip_slope;   /* of the arris, from level */
};

struct compound compound_mitre(int sides, double slope);

/* A pyramid on a square. */
struct pyramid {
	double height;
	double slant; /* middle of an edge to the point */
	double hip;   /* corner to the point */
	double base_angle;
	struct compound joint;
};

struct pyramid pyramid_on(double width, double slope);

#endif
