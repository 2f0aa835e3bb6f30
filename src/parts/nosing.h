/*
 * The edge of a tread: the profile that front strips, returns, their end pieces and the nosing
 * piece at the upper floor all carry, and the housing of a tread is cut to.
 *
 * x in from the edge, y up from the underside; the wood lies at greater x.
 *
 *     eased            full round      half round       chamfer
 *      ______            _____           _____            _____
 *     /                .'              .'                .'
 *    |                (               |                 |
 *     \______          `._____        |______           `.______
 */
#ifndef PARTS_NOSING_H
#define PARTS_NOSING_H

#include "parts/piece.h"

/* As the job has it, on wood of this thickness; rounds that it does not hold are made smaller. */
struct nosing nosing_make(const struct job_treads *t, double thickness);

/* In from the edge, the point where the underside is whole. */
double nosing_under(const struct nosing *n);

/* Strikes the edge with its corner at (x, y): from above round to the underside ... */
void nosing_strike(struct path *p, const struct nosing *n, double x, double y);

/* ... and from the underside up, as seen from the wood it is let into. */
void nosing_strike_up(struct path *p, const struct nosing *n, double x, double y);

/* Corners that either adds at most. */
enum { NOSING_ROOM = 8 };

/* The section of a board of this depth with the nosing at x = 0. Corner 0 is where the underside
 * begins, 1 and 2 are the back edge. */
struct outline nosing_outline(struct arena *a, const struct nosing *n, double depth);

/* What the maker is told of an edge: the part gets the facts and the features. */
void nosing_add(struct arena *a, struct part *p, const struct job *job, const struct nosing *n);

/* It is worked round an end of the part too. */
void nosing_goes_round(struct part *p);

/* How the waste is sawn off before the router, in words; NULL: not worth the saw. */
const char *nosing_note(struct arena *a, const struct job *job, const struct nosing *n);

#endif
