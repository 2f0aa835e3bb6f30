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
	const struct offer *offers;
	int n;
	double end_trim, spare;
};

/* Those the job names for this species and thickness, else its general widths and lengths; planks
 * in their own width, as long as the stringers' planks; plywood in its sheet. */
struct offers offers_for(struct arena *a, const struct job *job, const struct blank *b);

/* How much of an offer's length can be used. */
double offer_usable(const struct offers *o, double length);

/* The widest and the longest of all; 0 when there is none. */
double offers_widest(const struct offers *o);
double offers_longest(const struct offers *o);

#endif
