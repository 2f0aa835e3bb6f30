/*
 * Stretches of balustrade: what newels, rail and infill are made from.
 *
 * One is straight and rises evenly, between two newels, or a newel and a wall's
 * end, or where the rail is cut plumb.
 *
 *                      .'|   rail: top, and depth under it
 *               |    .' .|
 *               |  .' .' |
 *               |.' .'   |  newel
 *        newel  | .'|  __|
 *               |' _|_|     feet: on treads, on a raked edge, on a floor
 *               |_|
 *
 * Newels stand on the line y = 0 of its axes.  One that two stretches meet at
 * belongs to the first of them; the other's end is RAIL_END_MET_NEWEL.
 */
#ifndef PARTS_STRETCH_H
#define PARTS_STRETCH_H

#include "parts/rod.h"

enum stretch_feet {
	FEET_ON_TREADS,
	FEET_ON_EDGE, /* the raked top edge of a housed stringer */
	FEET_ON_FLOOR,
};

enum stretch_end { STRETCH_FOOT, STRETCH_HEAD };

struct stretch {
	struct stretch *next;
	const struct rod *rod;
	const struct side *side;         /* of the flight that it belongs to */
	const struct job_level_run *run; /* NULL on the rake */
	enum stretch_feet feet;
	struct frame axes; /* in the house: x along it on plan, y to the left, z up; origin under
			      the middle of its rail, at the lower finished floor */
	double from, to;   /* along x: the plumb planes in which its rail ends */
	struct rail_end foot, head;  /* their x and newel_x along x too */
	double slope, pitch, cosine; /* of its rail: tangent, angle; 0, 0, 1 when level */
	double rail_top;             /* level of the rail's top at x = 0 */
	double floor;                /* FEET_ON_FLOOR: its level */
};

/* All stretches of the flight: the right-hand side first; on each the raked one, then its level
 * runs from the head of the stair on. */
const struct stretch *stretches_make(struct arena *a, const struct rod *r);

/* Are its rail and what fills it made here?  Else there are only its newels. */
static inline bool stretch_is_made(const struct stretch *s)
{
	return s->run || s->side->job->guard == GUARD_HERE;
}

/* Levels plumb over x: top of the rail, its underside, and what the feet stand on (a tread's top
 * from the face of its riser on). */
double stretch_rail_top(const struct stretch *s, double x);
double stretch_rail_under(const struct stretch *s, double x);
double stretch_foot(const struct stretch *s, double x);

#endif
