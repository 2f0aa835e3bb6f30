/*
 * Across the stair: where its stringers stand, and where a section goes between them.
 */
#ifndef SHEETS_STANDS_H
#define SHEETS_STANDS_H

#include "draw/view.h"
#include "pitchboard/sheet.h"

/* One stringer: y of its right-hand and its left-hand face. */
struct stringer_stand {
	const struct part *part;
	double low, high;
};

struct stands {
	const struct stringer_stand *at; /* from the right-hand side to the left */
	int n;
};

struct stands list_stands(struct arena *a, const struct part *parts);

/* Is a section drawn?  Where a wall hides steps from both sides, or the set's reader wants one. */
bool has_section(const struct sheet_context *c);

/* y of the section along the flight: near the middle, through no stringer. */
double section_y(struct arena *a, const struct sheet_context *c);

/* Where that meets the first riser's face, in the house. */
struct vec3 section_point(struct arena *a, const struct sheet_context *c);

/* The stair cut there, seen from the right; of all that, what is in the window (none: 0). */
struct view section_view(struct arena *a, const struct sheet_context *c, struct box window);

#endif
