/*
 * Running dimensions: figures from one zero, each on its own line, so that no
 * error adds up.  Figures stand on end, spread where they would touch.
 *
 *      3"     13 3/8"   23 3/4"
 *      |        |         |
 *      |        \         |
 *   ---+---------+--------+----
 *
 * Beside a view they lie, each on its own line, and none lower than the first: what is under a view
 * belongs to it.
 */
#ifndef DRAW_RUNNING_H
#define DRAW_RUNNING_H

#include "draw/annotate.h"
#include "draw/dimension.h"

struct running_mark {
	double at;   /* along the edge, on paper */
	double foot; /* across it: where its line starts */
	const char *text;
};

/* The least length in which so many stand side by side. */
double running_length(struct hand h, int n);

/* Beyond `edge`, on that side; marks in rising order.  The box it took. */
struct box draw_running(struct hand h, enum dim_side side, double edge,
	const struct running_mark *marks, int n);

#endif
