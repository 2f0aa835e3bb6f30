/*
 * The largest ball that goes through a guard.
 *
 * Everything that stands in the plane of the guard is seen square to it, as shadows on a wall:
 * balusters, bars, rails, treads, risers, stringers, newels.  A ball goes through where its own
 * shadow touches none of them.
 *
 *        .' rail
 *      .'|  |  .-.  |
 *    .'  |  | (   ) |
 *     |  |  |  '-'  |
 *     |__|__|_______|__ tread
 */
#ifndef RULES_BALL_H
#define RULES_BALL_H

#include "rules/shadow.h"

/* Under the lowest bar, or everywhere else? */
enum ball_place { BALL_BETWEEN, BALL_UNDER_BAR, BALL_ANYWHERE };

/* Where the ball's middle may be: in a box, and under the top of the rail. */
struct ball_window {
	struct box box;
	struct slope_line top;
	enum ball_place place;
	double least; /* smaller balls are not looked for */
};

struct ball {
	double diameter; /* 0: none goes through, or none as large as was looked for */
	struct vec at;
};

/* Exact to four thousandths of a millimetre. */
struct ball ball_largest(struct arena *a, const struct shadows *all, struct ball_window w);

#endif
