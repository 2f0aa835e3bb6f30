/*
 * What is known of a rail: its profile, measured on the section that is drawn, and
 * how it meets the newels.
 *
 *              ___________
 *           .-'           '-.      tallest
 *          (                 )     widest: the recess starts under it
 *           '-.           .-'
 *              |         |         the recess, as deep as a finger needs
 *            .-'         '-.
 *           |_______________|      underside, flat for balusters
 */
#ifndef PITCHBOARD_RAIL_H
#define PITCHBOARD_RAIL_H

#include "pitchboard/part.h"

/* Levels are plumb distances below the tallest part of the profile, the rail lying level. */
struct rail_recess {
	double depth;       /* of its deepest place, in from the widest part; 0: there is none */
	double start;       /* the lowest level of the widest part */
	double from, to;    /* between these levels it is nowhere less deep */
	double width_above; /* of the widest part */
};

struct rail_profile {
	enum rail_profile_kind kind;
	struct outline outline; /* y across, 0 in the middle; z up, 0 at the underside */
	double width, depth;    /* of the box round it */
	double perimeter;
	double largest;     /* distance between any two of its points */
	double edge_radius; /* the smallest radius of an outer edge; 0: one is sharp */
	double diameter;    /* of a full round; else 0 */
	double flat;        /* width of the flat underside */
	struct rail_recess recess;
};

/* Depth that a finger recess has to have, and keep: IRC 2018 R311.7.8.5, type II (read). */
#define FINGER_RECESS (5 * MM_PER_INCH / 16)

/* The levels between which the sides lie at least so far in from the widest part; as long as
 * nothing (from = to) where they nowhere do. */
struct rail_recess rail_recess_at_least(const struct rail_profile *p, double depth);

/* What a rail meets at one of its ends, and where on it. */
struct rail_meeting {
	bool newel;
	double top, under; /* levels in the house at the cut: of its top, of its underside */
};

struct rail {
	struct rail_profile profile;
	double pitch;    /* of its length, from level; 0: a level run, or a piece of one */
	double height;   /* plumb over the nosing line, or over the floor */
	double between;  /* on plan, cut to cut */
	double cut_face; /* length of the plumb cut */
	struct rail_meeting foot, head;
};

#endif
