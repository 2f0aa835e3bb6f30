/*
 * Dimension chains in lanes round a view.
 *
 *            lane 2   |<------------- overall ------------>|
 *            lane 1   |<- nosing ->|<------ run ---------->|
 *                     |            |                       |
 *                     +---- the view -----------------------+
 *
 * A view asks for chains; they are laid outward from it, the shortest nearest,
 * so that extension lines do not cross dimension lines.  A figure that is wider
 * than its link goes outside the end of the chain or is lifted over it: it is
 * never made smaller.
 */
#ifndef DRAW_DIMENSION_H
#define DRAW_DIMENSION_H

#include <stdbool.h>

#include "pitchboard/drawing.h"

enum dim_side { DIM_BELOW, DIM_ABOVE, DIM_LEFT, DIM_RIGHT, DIM_SIDES };

/* From a to b along the chain, with the places where the extension lines start;
 * all millimetres on paper.  NAN as a foot: no extension line there. */
struct dim_link {
	double a, b;
	double foot_a, foot_b;
	const char *text; /* NULL: the link is drawn without a figure */
};

struct dim_chain {
	struct dim_chain *next;
	enum dim_side side;
	const struct dim_link *links;
	int n;
	const double *ticks; /* more ticks, for equal steps under one figure */
	int tick_count;
};

/* All chains round one view. */
struct dims {
	struct drawing *drawing;
	struct measure measure;
	double letter;     /* height of a capital */
	struct box around; /* the view, with whatever else the lanes must keep clear of */
	double lowest;     /* no figure of an upright lane begins lower: something stands there */
	struct dim_chain *first[DIM_SIDES];
};

struct dims dims_begin(struct drawing *g, struct measure m, double letter, struct box around);

/* Links are copied; a chain is one straight run of them, in rising order. */
void dims_chain(struct dims *d, enum dim_side side, const struct dim_link *links, int n);

/* A chain whose first link is many equal steps, every one ticked: 13 @ 10" = 10'-10". */
void dims_steps(struct dims *d, enum dim_side side, const struct dim_link *links, int n,
	const double *ticks, int tick_count);

/* Draws them all; the box of view and dimensions together. */
struct box dims_draw(const struct dims *d);

/* A single dimension in the open, not in a lane: line, ticks and figure between two points. */
void dim_between(struct drawing *g, double letter, struct vec from, struct vec to,
	const char *text);

#endif
