/*
 * The floors before and behind a flight on plan, in its axes, and the swings of
 * their doors.
 */
#ifndef PITCHBOARD_LANDING_H
#define PITCHBOARD_LANDING_H

#include "pitchboard/stair.h"

/* Where a leaf turns: a quarter of a circle from `closed` to `opened`, both of length 1. */
struct door_swing {
	struct vec hinge, closed, opened;
	double radius;
};

/* Beside a wall on one side of the stair it is wider than that on the other; else on both by half.
 * As wide as the stair where its width is not known; no depth where that is not. */
struct box landing_box(const struct stair *s, enum landing_place place);

struct door_swing door_swing(const struct stair *s, enum landing_place place,
	const struct job_door *door);

/* From the riser's face to the nearest point of the swing within the width of the stair, along its
 * travel: negative over its steps; INFINITY where the leaf stays beside the stair or opens out. */
double door_clear(const struct stair *s, enum landing_place place, const struct job_door *door);

#endif
