/*
 * Shapes: solids with flat sides, and outlines with true arcs.  In millimetres, in the axes of the
 * piece they belong to.
 */
#ifndef PITCHBOARD_SHAPE_H
#define PITCHBOARD_SHAPE_H

#include "pitchboard/vec.h"

/* A solid with two faces of equally many corners, joined corner to corner by
 * flat sides.  Square prism, mitred strip, raked baluster, bevelled stringer:
 * all are this.  Corner i of `a` is joined to corner i of `b`; seen from
 * outside, `a` runs counter-clockwise and `b` clockwise.  Sides must be flat.
 *
 * `soft` says which lines are not edges of the piece (a facet of a round, or a
 * seam inside one piece): bit SOFT_SIDE of soft[i] for the line a[i]-b[i],
 * SOFT_A for a[i]-a[i+1], SOFT_B for b[i]-b[i+1].  A soft line is drawn only
 * where it is the solid's outline in the view.  NULL: none is soft. */
enum { SOFT_SIDE = 1, SOFT_A = 2, SOFT_B = 4 };

struct solid {
	struct solid *next;
	int n;
	const struct vec3 *a, *b;
	const unsigned char *soft;
};

static inline struct box3 box3_add_solid(struct box3 b, const struct solid *s)
{
	for (int i = 0; i < s->n; i++)
		b = box3_add(box3_add(b, s->a[i]), s->b[i]);
	return b;
}

/* The box round all of a list. */
static inline struct box3 solids_extent(const struct solid *list)
{
	struct box3 b = box3_empty();

	for (; list; list = list->next)
		b = box3_add_solid(b, list);
	return b;
}

/* An outline is a closed chain: each corner, and how the chain goes on from it.
 * bulge is tan(quarter of the swept angle), counter-clockwise positive; 0 is straight. */
struct corner {
	struct vec at;
	double bulge;
};

struct outline {
	const struct corner *corners;
	int n;
};

/* The arc by which a chain goes on from a corner with a bulge: a circle, and the angles at which it
 * begins and ends; `to` is more than `from` when it runs counter-clockwise, else less. */
struct corner_arc {
	struct vec centre;
	double radius, from, to;
};

/* `next` is the corner after it; the bulge must not be 0. */
struct corner_arc corner_arc(struct corner c, struct vec next);

/* The point of an arc at a share of its way, 0 to 1. */
struct vec corner_arc_point(struct corner_arc arc, double share);

/* The box round an outline, its arcs with it. */
struct box outline_extent(struct outline o);

/* Does a round run smoothly through corner i, so that there is no arris? */
bool outline_is_smooth(struct outline o, int i);

#endif
