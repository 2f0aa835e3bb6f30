/*
 * What others have to know of the nosing piece at the upper floor.
 */
#ifndef PARTS_LANDING_H
#define PARTS_LANDING_H

#include "parts/rod.h"

/* Where it ends at a side, in from its limit. */
double landing_end(const struct rod *r, const struct side *side);

/* Where it overhangs the last riser. */
double landing_thickness(const struct rod *r);

#endif
