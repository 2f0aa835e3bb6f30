/*
 * Clear width of a flight, measured on the solids.
 */
#ifndef PITCHBOARD_WIDTH_H
#define PITCHBOARD_WIDTH_H

#include "pitchboard/part.h"

enum clear_at {
	CLEAR_OVER_RAIL, /* between walls; an open side counts at the outer face of its stringer */
	CLEAR_AT_RAIL,   /* from the nosing line to the rail's top, between whatever reaches in */
};

/* At its narrowest step: y of either side, in the flight's axes. */
struct clear_width {
	double right, left;
	int step;
};

struct clear_width clear_width_measure(struct arena *a, const struct stair *s,
	const struct part *parts, enum clear_at at);

#endif
