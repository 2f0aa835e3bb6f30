/*
 * Joints: does each hole meet its other half, and is there wood round it?
 */
#ifndef RANDOM_JOINTS_H
#define RANDOM_JOINTS_H

#include "pitchboard/part.h"

/* NULL while every joint has two halves that meet, mouth to mouth, and every hole lies in wood;
 * else what is wrong. */
const char *joints_meet(struct arena *a, const struct stair *s, const struct part *parts);

/* NULL while the two halves of each joint, laid out by the figures of the sheets of their pieces,
 * meet within what is promised. */
const char *joints_laid_out(struct arena *a, const struct stair *s, const struct part *parts);

/* NULL while nothing else is drilled near the loose tenons of treads. */
const char *tenons_clear(struct arena *a, const struct stair *s, const struct part *parts);

#endif
