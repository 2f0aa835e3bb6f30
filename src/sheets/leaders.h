/*
 * Leaders: what is said of a piece stands on a line beside the view, with a
 * straight line from there to the piece, and no two of those cross.
 *
 *         |
 *     Rail -----------•
 *    Treads ------.
 *         |        '--•
 */
#ifndef SHEETS_LEADERS_H
#define SHEETS_LEADERS_H

#include "draw/annotate.h"

struct leader {
	const char *text;
	struct vec points_at; /* on paper */
	struct vec at;        /* where its words stand, in the middle */
	double size;          /* of its words along the line, beside the gap; 0: a point */
};

/* The line on which the words stand: through a point, along a unit vector. */
struct leader_line {
	struct vec from, along;
	double gap;       /* at least, from one to the next */
	double low, high; /* how far along they may stand; both 0: as far as they like */
	int rows;         /* in which they stand by turns, so that more go beside the view */
	struct vec next;  /* from one row to the next */
	double shift;     /* farther along than what they point at, so that no leader lies on an
			     edge that is square to the line */
};

/* Sets them on the line, as near as may be to what they point at; where two would cross they change
 * places. */
void leaders_set(struct arena *a, struct leader *list, int n, struct leader_line line);

/* From beside the words to a dot on the piece. */
void leader_draw(struct drawing *g, struct vec from, struct vec to);

/* A disc, which the display list has no mark for. */
void fill_round(struct drawing *g, enum shade shade, struct vec at, double radius);

#endif
