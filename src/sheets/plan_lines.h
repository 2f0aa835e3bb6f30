/*
 * What of a stair is drawn on its plan: cut at waist height, dashed beyond the break.
 */
#ifndef SHEETS_PLAN_LINES_H
#define SHEETS_PLAN_LINES_H

#include "draw/dimension.h"
#include "draw/view.h"
#include "pitchboard/sheet.h"

/* A straight break: the near side is where the dot product is negative. */
struct break_line {
	struct vec through, normal;
};

struct plan {
	const struct sheet_context *context;
	const struct flight *flight;
	bool has_break; /* a stair no higher than the cut is drawn whole */
	double cut_height;
	struct break_line break_line;
	struct view near;         /* the stair cut, without its rail */
	struct view whole;        /* the stair as if nothing were cut */
	struct view walls;        /* cut */
	struct view floor;        /* above */
	struct view guard;        /* of the upper floor, above the cut wherever it stands */
	const struct box *covers; /* the rails along walls: what lies under them is not seen */
	int cover_count;
};

struct plan plan_make(struct arena *a, const struct sheet_context *c);

/* Of all that is drawn, in the house. */
struct box plan_box(const struct plan *p);

/* What a part covers in one of its places, in the house. */
struct box part_cover(const struct part *p, int place);

void plan_draw(struct drawing *g, const struct plan *p, double scale);

/* A point of the flight on paper. */
struct vec plan_at(const struct plan *p, double x, double y, double scale);

/* Runs, openings, walls that stop, widths; and what the set's reader wants beside. */
void plan_add_dimensions(struct dims *dims, const struct plan *p, double scale);

/* The same from straight above, nothing of the stair cut. */
void plan_draw_from_above(struct drawing *g, const struct plan *p, double scale);

#endif
