/*
 * The rod: the sizes of one flight that every family of parts is set out from.
 *
 * A stair builder strikes these once, full size, on a board, and takes every
 * piece from it.  All in the flight's own frame.
 *
 *              x_i - nosing   x_i = face of riser i
 *                     |___|__________
 *      i * rise       |______________|   tread i, `tread` thick
 *                         | |
 *                         | | riser i, behind the back edge of tread i - 1
 *        _________________| |
 *
 * Across the stair a distance is measured `in` from the limit of a side, so
 * that left and right are the same arithmetic: 0 is the finished wall or the
 * outer face of an open stringer, negative is outside the stair.
 */
#ifndef PARTS_ROD_H
#define PARTS_ROD_H

#include "pitchboard/part.h"

/* How far a housed stringer runs on in front of the first nosing (common practice). */
#define HOUSED_FRONT 20.0

enum side_hand { HAND_RIGHT = ON_THE_RIGHT, HAND_LEFT = ON_THE_LEFT }; /* going up */

static inline const char *hand_word(enum side_hand hand)
{
	return side_word((enum which_side)hand);
}

/* What the rail dies into. */
enum rail_end_kind {
	RAIL_END_PLUMB,        /* nothing: cut plumb over a riser's face */
	RAIL_END_NEWEL,        /* a newel on what the stringers stand on, or let into it */
	RAIL_END_TREAD_NEWEL,  /* a newel standing on a tread */
	RAIL_END_STRING_NEWEL, /* a newel standing on the top edge of a housed stringer */
	RAIL_END_WALL,         /* the end of the wall that takes over */
	RAIL_END_FLOOR_NEWEL,  /* a newel of a level run, standing on the upper floor */
	RAIL_END_MET_NEWEL,    /* a newel that belongs to another stretch */
};

struct rail_end {
	enum rail_end_kind kind;
	double x;        /* the plumb plane in which the rail ends */
	double newel_x;  /* front face of the newel, if there is one */
	double newel_z;  /* what it stands on */
	double rail_top; /* of a stretch's end: level of the highest rail that meets the newel */
};

struct side {
	enum side_hand hand;
	const struct job_side *job;
	const struct job_stringer *spec;
	enum stringer_kind kind;
	bool is_open;           /* anywhere */
	int from, to;           /* the open steps */
	int seen_from, seen_to; /* the risers whose ends are seen from the side */
	double outer;           /* the stringer's outer and inner faces, in from the limit */
	double inner;
	double skirt;    /* thickness of the skirt board on its wall; 0: there is none */
	double plain;    /* the same where treads and risers butt against it on the walls before and
			    behind open steps; 0: they do not */
	double board;    /* thickness of the finished board before an open carriage; 0: none */
	double rail;     /* centre of rail, newels and balusters, in from the limit */
	double start;    /* a rounded starting step reaches out so far beyond the limit; 0: none */
	double wall_end; /* x at which the wall in front of the open steps ends */
	struct rail_end foot, head;
};

struct rod {
	const struct stair *stair;
	const struct flight *flight;
	const struct job *job;
	int risers, steps;
	double rise, run;
	double tread, nosing, riser; /* thickness, projection, thickness (0 when open) */
	double top;                  /* level of the upper finished floor */
	double foot;                 /* level that stringers, first riser, riser block and newels
					stand on; a finish laid after them stops against them */
	double header_x;             /* face that the head of the stair comes against */
	double pitch, slope, cosine; /* of the nosing line: angle, tangent, cosine */
	double width;
	struct side sides[2]; /* by hand */
};

struct rod rod_make(const struct stair *s, const struct flight *f);

/* Where in the job file a complaint belongs: at the key, its group, or the job when the group is
 * not there. */
struct pos rod_pos(const struct rod *r, const struct node *group, const char *key);

bool side_open_at(const struct side *side, int step);

/* Is the end of riser `step` seen from the side?  That of the one behind the open steps is, but not
 * one that butts against a plain skirt. */
bool side_shows_riser(const struct side *side, int step);

/* Has it a wall anywhere? */
bool side_has_wall(const struct rod *r, const struct side *side);

/* Do treads stand out over an open side, with a return along it? */
bool rod_has_returns(const struct rod *r);

/* Does a newel stand on the lower floor in front of this side? */
bool side_has_foot_newel(const struct side *side);

/* Or on the structure at the head of the stair, beside the landing nosing? */
bool side_has_head_newel(const struct side *side);

/* y of a point so far in from the limit of a side. */
double rod_y(const struct rod *r, const struct side *side, double in);

/* The same, counted from the left-hand limit towards the right: how treads and risers, seen from
 * the front, are measured along. */
double rod_along(const struct rod *r, const struct side *side, double in);

/* A box on plan whose y is counted in from the limit of a side, in the flight's axes. */
struct box rod_box(const struct rod *r, const struct side *side, struct box in);

/* Where treads and risers end at a wall, in from its limit: the scribe less than to the wall, or to
 * the face of a plain skirt. */
double rod_wall_end(const struct rod *r, const struct side *side);

/* Inner face of the newels of a side, in from the limit. */
double rod_newel_inner(const struct rod *r, const struct side *side);

/* How far the cap of a bottom newel stands out over the post. */
double rod_cap_overhang(const struct rod *r);

/* Level of the nosing line plumb over x. */
double rod_nosing_z(const struct rod *r, double x);

/* Level of the top edge of a housed stringer plumb over x. */
double rod_housed_edge_z(const struct rod *r, double x);

/* From what the stringers stand on up to the first tread: of the first riser, of the block that it
 * goes round, and of the first cut. */
double rod_first_riser(const struct rod *r);

/* Thickness of the landing nosing where it lies on the upper floor. */
double rod_landing_rabbet(const struct rod *r);

/* A place in the house for a piece lying flat, seen from above with its front edge nearest: x
 * along from the left limit, y back from x of the flight, z up. */
struct frame rod_flat(const struct rod *r, double along, double x, double z);

/* For a piece standing across the stair, seen from the front: x along from the left limit, y up,
 * z towards the foot of the stair. */
struct frame rod_upright(const struct rod *r, double along, double back_x, double z);

#endif
