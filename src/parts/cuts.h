/*
 * The steps that are cut out of a board's upper edge, where it carries treads: sawtooth and mitred
 * stringers, and the finished board in front of a rough one.
 */
#ifndef PARTS_CUTS_H
#define PARTS_CUTS_H

#include "parts/stringer.h"

/* Where the riser cuts lie on the two faces of one board, one a step. */
struct cuts {
	const struct rod *rod;
	const struct side
		*mitred_at; /* its risers' ends are seen there; NULL: square all the way */
	double *outer, *inner;
	bool mitred;        /* anywhere */
	bool block;         /* its foot is notched for the thrust block */
	int first, last;    /* of the steps cut out of it, counted from 0 */
	double front, back; /* its plumb ends; in front it is the riser cut of step 0 */
};

struct cuts cuts_make(struct arena *a, const struct rod *r, const struct side *mitred_at,
	double thickness);

bool cuts_is_mitred(const struct cuts *c, int step);

/* Of the tread cut behind riser cut `i`, counted from 0. */
double cuts_tread_z(const struct rod *r, int i);

/* The upper edge of the plank touches the outermost corner. */
double cuts_upper_edge(const struct cuts *c);

/* One face, counter-clockwise in the flight's x and z. */
struct outline cuts_strike(struct arena *a, const struct cuts *c, const double *riser_x,
	struct edges e);

/* Between its two faces; the outer one is up when it is seen from the right. */
struct solid *cuts_solid(struct arena *a, struct bench b, const struct outline faces[2],
	enum side_hand hand, double thickness);

/* The riser cut of every mitred step, as a line on the outer face. */
void cuts_mitres_add(struct arena *a, struct part *p, const struct cuts *c, struct bench b,
	const char *text);

#endif
