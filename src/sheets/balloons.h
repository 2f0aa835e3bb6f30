/*
 * Marks in balloons beside a view, each with a leader to a piece that bears it.
 *
 *        (B1)  (H1)        balloons stand on a line along the view, in the order of
 *          \     \         what they point at; where two leaders would cross, the
 *           •     •        two change places
 */
#ifndef SHEETS_BALLOONS_H
#define SHEETS_BALLOONS_H

#include "sheets/leaders.h"

/* The line on which balloons stand: through a point, along a unit vector.  What would make it
 * longer than `length` stands in rows further `out`. */
struct balloon_line {
	struct vec from, along, out;
	double length;    /* 0: as long as they like */
	double shift;     /* farther along than what they point at */
	double low, high; /* how far along they may stand; both 0: as far as they like */
};

void balloons_set(struct hand h, struct leader *list, int n, struct balloon_line line);

/* How many stand on another, or hide its leader, so that the eye loses it. */
int balloons_crowd(struct hand h, const struct leader *list, int n);

/* Draws them; the box they took. */
struct box balloons_draw(struct hand h, const struct leader *list, int n);

/* Half the width of a balloon that holds any mark of this sheet. */
double balloon_radius(struct hand h);

#endif
