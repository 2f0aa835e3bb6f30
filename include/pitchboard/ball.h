/*
 * Balls: the largest that passes through the balustrade, measured on the solids.
 *
 * A guard is judged by a ball that must not pass: 4 in, 4 3/8 in beside a stair,
 * 6 in in the triangle of tread, riser and bottom rail, each in its code.  Here
 * it is only measured.  Infill is thin and a ball comes across it, so what stands
 * within the balustrade's thickness is seen square to its plane, and the ball is
 * the largest empty circle there with its middle between steps and rail.
 */
#ifndef PITCHBOARD_BALL_H
#define PITCHBOARD_BALL_H

#include "pitchboard/part.h"

enum ball_place {
	BALL_BETWEEN,     /* balusters, cross pieces, bars */
	BALL_UNDER_CROSS, /* under the lowest cross piece of its gap */
	BALL_BETWEEN_CROSSES,
	BALL_OVER_CROSS,     /* over the highest */
	BALL_TRIANGLE,       /* tread, riser and bottom member */
	BALL_AT_NEWEL,       /* touches one */
	BALL_AT_WALL,        /* touches the wall that takes over */
	BALL_UNDER_RAIL,     /* touches rail or subrail */
	BALL_BETWEEN_TREADS, /* open risers: under the bar, or under the tread itself */
};

/* What passes there is looked at once more by itself: it is no larger than what passes at all. */
static inline bool ball_is_beside_cross(enum ball_place place)
{
	return place == BALL_UNDER_CROSS || place == BALL_BETWEEN_CROSSES ||
		place == BALL_OVER_CROSS;
}

/* Nothing larger or smaller is looked for. */
#define BALL_LARGEST 800.0
#define BALL_SMALLEST 12.0

struct ball {
	struct ball *next;
	enum ball_place place;
	double diameter; /* to 0.02 mm; never more than passes */
	struct vec3 at;  /* its middle, in the house */
	bool on_rake;    /* beside the steps; else on a level run */
	bool on_left;    /* side of the stair, going up */
	int step;        /* whose tread is under it; 0 on a level run, and before the first riser */
};

/* For every stretch of balustrade the largest ball at each place where one passes; none where the
 * stair has no open side, or parts are NULL. */
const struct ball *balls_measure(struct arena *a, const struct stair *s, const struct part *parts);

/* What goes through between two treads of open risers, all of which are alike: over the step in the
 * middle of the flight; NULL where the risers are closed. */
const struct ball *ball_between_treads(struct arena *a, const struct stair *s);

/* "between balusters", or what else the job is filled in with */
const char *ball_place_name(const struct job *job, enum ball_place place);

#endif
