/*
 * How a rail is fixed to its newels: bolt and dowels, square to the plumb cut.
 */
#ifndef PARTS_RAIL_JOINT_H
#define PARTS_RAIL_JOINT_H

#include "parts/piece.h"
#include "parts/stretch.h"

/* The smaller of the bolts that are sold, for a rail with little wood, and whether it may be taken:
 * one that the job describes is taken as it is. */
struct job_rail_bolt rail_bolt_smaller(const struct job *job);
bool rail_bolt_may_be_smaller(const struct job_rail *rail);

bool rail_end_has_newel(struct rail_end e);

/* Is every joint so far as strong as a guard asks? */
enum rail_held { RAIL_HELD, RAIL_HELD_WEAKLY };

/* Drills both ends of a stretch's rail, the last of the list, whose own axes are x along it, y to
 * the left, z up from the underside; complains when a joint that was asked for finds no wood, and
 * of the first that is weak. */
enum rail_held rail_joints_drill(struct pieces *rails, const struct stretch *s,
	enum rail_held before, struct diags *d);

#endif
