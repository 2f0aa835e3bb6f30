/*
 * Which rail a hand goes up by: the one that goes furthest without a break, and of two that go all
 * the way the one on a wall.
 *
 * A guard may be higher and thicker than a hand can use, where another rail serves.
 */
#ifndef RULES_HANDRAIL_H
#define RULES_HANDRAIL_H

#include "rules/gauge.h"

/* A piece of the flight in x, from its first riser to its last. */
struct stretch_of_x {
	double from, to;
};

struct handrail {
	enum which_side side;
	struct stretch_of_x bare; /* the longest part of the flight that it leaves out */
};

bool has_rail(const struct survey *s, enum which_side side);

/* Only where there is a rail at all. */
struct handrail handrail_of(const struct survey *s);

bool is_of_handrail(const struct survey *s, struct handrail h, const struct placed *p);

/* The side that a piece stands nearer to. */
static inline enum which_side placed_side(const struct survey *s, const struct placed *p)
{
	return p->box.low.y + p->box.high.y < s->stair->width ? ON_THE_RIGHT : ON_THE_LEFT;
}

#endif
