/*
 * How a tread ends at a side, and the pieces that its file leaves to others.
 */
#ifndef PARTS_TREAD_H
#define PARTS_TREAD_H

#include "parts/piece.h"

enum tread_end_kind {
	TREAD_END_SQUARE, /* at a wall, in a housing, or flush with the stringer */
	TREAD_END_RETURN, /* overhanging, with a returned nosing */
	TREAD_END_NEWEL,  /* the same, round the newel on the floor */
};

struct tread_end {
	enum tread_end_kind kind;
	const struct side *side;
	double body;       /* where the body ends, in from the limit */
	double strip;      /* where the front strip ends: its long point when mitred */
	double overhang;   /* of the return strip beyond the outer face; 0: there is none */
	double width;      /* of the return strip */
	double newel_back; /* from the nosing's front to the back of the newel */
};

/* The return strip at this end of tread `step`, and the little piece that closes its back. */
void return_add(struct pieces *list, const struct rod *r, struct tread_end e, int step);

#endif
