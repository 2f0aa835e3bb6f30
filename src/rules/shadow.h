/*
 * Shadows: everything that stands in the plane of a guard, seen square to it.
 */
#ifndef RULES_SHADOW_H
#define RULES_SHADOW_H

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

#endif
