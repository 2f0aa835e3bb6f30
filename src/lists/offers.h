/*
 * Boards on offer for a blank.
 */
#ifndef LISTS_OFFERS_H
#define LISTS_OFFERS_H

#include "pitchboard/list.h"

struct offer {
	double width, length;
	double price; /* 0: not known */
};

struct offers {
	struct offer *offers;
	int n;
	double end_trim, spare;
	double widest, longest; /* of all; 0 when there is none */
	bool is_named;          /* in the job, for this species and thickness */
};

/* Those the job names for this species and thickness, else its general widths and lengths; planks
 * in their own width, as long as the stringers' planks; plywood in its sheet. */
struct offers offers_for(struct arena *a, const struct job *job, const struct blank *b);

/* Does this board come in the species? */
bool offer_is_of(const struct job_board *board, const char *species);

/* How much of a board's length can be counted on, and of a clear one: without knots and splits. */
double offer_usable(const struct offers *o, double length);
double offer_clear(const struct offers *o, double length);

/* What a piece takes of the usable length.  One too long for any board with knots is cut from the
 * longest, a clear one, and takes all of it. */
double offer_takes(const struct offers *o, double piece);

#endif
