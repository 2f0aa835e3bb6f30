/*
 * A marking rod: a strip that is laid on the work, with a tick at every running position.
 *
 *    ______________________________________________
 *   |   1: 4 1/4"       2: 9 1/2"      3: 14 3/4"  |
 *   |   |               |              |           |
 *   |___|_______________|______________|___________|
 */
#ifndef SHEETS_TEMPLATE_ROD_H
#define SHEETS_TEMPLATE_ROD_H

#include "pitchboard/length.h"
#include "sheets/template_pattern.h"

#define ROD_HEIGHT 22.0

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
	const struct rod_tick *ticks;
	int n;
};

struct pattern rod_pattern(struct arena *a, const struct marking_rod *rod,
	struct lettering lettering);

#endif
