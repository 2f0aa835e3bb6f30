/*
 * What a job says of rails: on the rake, level, and along walls.
 */
#ifndef PITCHBOARD_JOB_RAIL_H
#define PITCHBOARD_JOB_RAIL_H

#include <stdbool.h>

struct node;

enum which_side { ON_THE_RIGHT, ON_THE_LEFT }; /* going up */

static inline const char *side_word(enum which_side side)
{
	return side == ON_THE_RIGHT ? "right" : "left";
}

/* A level rail at the upper floor.  The runs of one side are a chain from the head of the stair:
 * each begins at the newel where the one before it ends. */
enum run_direction {
	RUN_ON,     /* further into the floor, as one walks off the stair */
	RUN_BACK,   /* over the flight, along the opening's edge */
	RUN_OUT,    /* away from the stair */
	RUN_ACROSS, /* towards its other side */
};

enum run_end { RUN_END_NEWEL, RUN_END_WALL };

struct job_level_run {
	const struct node *src;
	enum which_side side;
	enum run_direction direction;
	double length;    /* of its rail, newel to newel */
	double height;    /* upper finished floor to top of rail */
	double from_edge; /* opening's edge to the middle of the rail, where it has a newel of its
			     own at the head of the stair; 0: half a newel */
	enum run_end end;
};

enum rail_profile_kind {
	PROFILE_MOULDED,   /* with a finger recess on both sides */
	PROFILE_FLAT_OVAL, /* flat above and below, sides in one sweep */
	PROFILE_ROUND,     /* a full round, or flat below where it is less deep than wide */
	PROFILE_SQUARE,    /* edges eased */
};

/* How a rail is fixed to the newels at its ends. */
enum rail_joint {
	RAIL_JOINT_BY_ROOM, /* the best that finds wood enough round it */
	RAIL_JOINT_BOLT,
	RAIL_JOINT_BOLT_AND_DOWEL,
	RAIL_JOINT_DOWELS, /* two; one, and a warning, where there is no room for two */
	RAIL_JOINT_NONE,
};

struct job_rail_bolt {
	const struct node *src;
	double length, diameter;
	double pilot;     /* in the newel, for the thread */
	double clearance; /* in the rail */
	double height;    /* over the underside, square to the rail; 0: not given */
	double access;    /* newel's face to the middle of the access hole */
	double access_diameter;
};

struct job_dowel {
	const struct node *src;
	double length, diameter;
};

struct job_rail {
	const struct node *src;
	enum rail_profile_kind profile;
	double width, depth; /* section, square to its length */
	double edge_radius;
	double recess; /* moulded: depth of the finger recess */
	double height; /* plumb, nosing line to top of rail */
	enum rail_joint joint;
	struct job_rail_bolt bolt;
	struct job_dowel dowel;
	struct job_level_run *level_runs;
	int level_run_count;
};

/* A rail on brackets along the wall of a side. */
struct job_wall_rail {
	const struct node *src;
	enum which_side side;
	int from_step; /* it begins plumb over the face of this step's riser */
	int to_step;   /* and ends plumb over the face of the riser behind this one; 0: the last */
	double height; /* plumb, nosing line to top of rail; 0: as the rail of the balustrade */
	double clearance;               /* finished wall to rail */
	enum rail_profile_kind profile; /* not written: as the rail of the balustrade */
	double width, depth, edge_radius, recess;
	double bracket_spacing;  /* at most, centre to centre along the rail */
	double bracket_from_end; /* at most, end of the rail to the first one */
	double bracket_drop;     /* underside of the rail down to the bracket's arm */
};

#endif
