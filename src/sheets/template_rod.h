/*
 * A marking rod: a strip that is laid on the work, with a tick at every running position.
 *
 *    ______________________________________________
 *   |   | 1: 4 1/4"                                |
 *   |   | | 2: 4 7/8"    | 3: 9 1/2"               |
 *   |___|_|______________|_____________________|___|
 *
 * What is lettered beside a tick runs on over those that are near: each stands higher than all that
 * it runs over, so no tick goes through lettering.
 */
#ifndef SHEETS_TEMPLATE_ROD_H
#define SHEETS_TEMPLATE_ROD_H

#include "pitchboard/length.h"
#include "sheets/template_pattern.h"

struct rod_tick {
	double at;          /* along the work */
	const char *name;   /* "3 back of tread 1" */
	const char *brief;  /* where there is no room: "3" */
	const char *figure; /* its place as the sheet of the work letters it; NULL: to the job's
			       fraction */
};

enum rod_begins { ROD_BEGINS_LEFT, ROD_BEGINS_RIGHT };

struct marking_rod {
	double start, end; /* along the work */
	enum rod_begins begins;
	const struct rod_tick *ticks; /* in rising order */
	int n;
};

/* How many lanes its lettering needs, and how high a rod with so many is. */
int rod_lanes(struct arena *a, const struct marking_rod *rod, struct lettering lettering);
double rod_height(int lanes);

struct pattern rod_pattern(struct arena *a, const struct marking_rod *rod,
	struct lettering lettering);

#endif
