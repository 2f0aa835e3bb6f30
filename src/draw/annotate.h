/*
 * The small signs of a drawing: levels, leaders, arrows, scale bars, titles.
 *
 * Sizes follow the height of lettering, so that a sheet is one family.
 */
#ifndef DRAW_ANNOTATE_H
#define DRAW_ANNOTATE_H

#include "pitchboard/drawing.h"
#include "pitchboard/length.h"

/* Lettering on one sheet. */
struct hand {
	struct drawing *g;
	struct measure measure;
	double letter;
};

/* A level: a triangle standing on the line, the words beside it and the figure under them.
 *
 *        Upper finished floor
 *   _____\/_+9'-1 1/2"______
 */
enum level_side { LEVEL_LEFT, LEVEL_RIGHT };

void draw_level(struct hand h, struct vec at, enum level_side side, const char *words,
	const char *figure);

/* A filled arrow head with its point at `tip`, flying along `direction`. */
void draw_arrow_head(struct drawing *g, struct vec tip, struct vec direction, double length);

#define VIEW_TITLE 1.4 /* of a view's title, in heights of the sheet's lettering */

/* Name of the view and its scale, underlined, from its lower left; the width it takes. */
double draw_view_title(struct hand h, struct vec at, const char *title, const char *scale);

/* Under a view: its title and scale at the left, a scale bar at the right; the box of all. */
struct box draw_view_foot(struct hand h, struct box view, const char *title, double scale,
	enum units units);

/* The same, its bar under the title where the view is narrower than the two side by side. */
struct box draw_view_foot_narrow(struct hand h, struct box view, const char *title, double scale,
	enum units units);

/* A scale as it is written: 1/2" = 1'-0" where the ratio is an architect's scale, else 1:20. */
const char *scale_letter(struct arena *a, double ratio, enum units units);

#endif
