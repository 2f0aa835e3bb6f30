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

#include "rules/survey.h"

/* One shadow, x along the guard and y up. */
struct shadow {
	const struct vec *at;
	int n;
	struct box box;
	bool is_bar; /* infill that runs along: a bottom rail, a bar */
};

struct shadows {
	const struct shadow *shadow;
	int n;
};

/* A guard's plane: through `origin`, level along `along`, both in the axes of the flight. */
struct guard_plane {
	struct vec3 origin, along;
};

/* Of what stands within this of the plane; and two more that close the guard at its ends. */
struct shadows shadows_on(const struct survey *s, struct guard_plane plane, double within,
	double from, double to);

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
