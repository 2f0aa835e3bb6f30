/*
 * Pieces that are longer than any board, made in lengths.
 *
 *      skirt, seen from above                 rail, seen from the side
 *      ___________________________            ______________________
 *     |              /            |          |       |==            |
 *     |_____________/_____________|          |_______|=| |==________|
 *                   scarf, 45 degrees                  access hole of the bolt
 *
 * A family says how a piece of its own may be joined (part.splice); here it is found whether it
 * has to be, where that can be done, and it is cut there.  What other pieces drill into it comes
 * later, by mate.c, and finds the length that it meets.
 */
#ifndef PARTS_SPLICE_H
#define PARTS_SPLICE_H

#include "parts/fastening.h"

/* Of all families, before joints are drilled. */
void splices_make(struct arena *a, const struct job *job, struct part **families, int n);

/* ---- a cut through a piece ---- */

/* Is every solid cut once, from one side to the other, and away from its corners? */
bool splice_can_cut(const struct part *p, struct end_plane at);

/* Cuts it there: what lies behind becomes the next piece of the list, from its own end.  Holes
 * and features go with their wood, rows of fasteners to either. */
struct part *splice_cut(struct arena *a, struct part *p, struct end_plane at);

/* ---- the holes of a bolted joint ---- */

/* For the end of the first length, from its cut at x = 0; mates are in the next one. */
struct splice_holes {
	struct bore bores[4];
	int n; /* 0: there is no wood for them */
};

struct splice_holes splice_holes_of(const struct job *job, const struct part *p);

#endif
