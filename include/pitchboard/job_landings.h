/*
 * The floors before and behind the stair, and the doors that open over them.
 *
 *       left wall
 *      ______________________
 *     |                      |____
 *     | end wall             |____ stair, its first riser (at the head: its last)
 *     |       landing        |____
 *     |______________________|
 *       right wall
 *
 * Right and left are those of a person going up; the end wall is the one across
 * the landing from the stair.
 */
#ifndef PITCHBOARD_JOB_LANDINGS_H
#define PITCHBOARD_JOB_LANDINGS_H

struct node;

enum landing_place { LANDING_FOOT, LANDING_HEAD, LANDINGS };

enum landing_wall { LANDING_RIGHT, LANDING_LEFT, LANDING_END };

enum door_leaf { LEAF_FURTHER, LEAF_NEARER };

enum door_opens { DOOR_IN, DOOR_OUT };

struct job_door {
	const struct node *src;
	enum landing_wall wall;
	double hinge;          /* in a side wall: from the riser's face; in the end wall: from the
				  landing's right-hand corner */
	double leaf;           /* its width: the radius of its swing */
	enum door_leaf lies;   /* closed, from the hinge on, or back towards what it is measured
				  from */
	enum door_opens opens; /* over the landing, or out of it */
};

struct job_landing {
	const struct node *src;
	double depth, width; /* clear, in the direction of travel and across; 0: not known */
	const struct job_door *doors;
	int door_count;
};

struct job_landings {
	const struct node *src;
	struct job_landing at[LANDINGS];
};

#endif
