/*
 * Doors that cannot be where the job has them: a landing says how large it is before it says where
 * its doors are.
 */
#include <math.h>

#include "read/job_passes.h"

static const char *lacking(const struct job_landing *l, const struct job_door *door)
{
	switch (door->wall) {
	case LANDING_END: return l->depth > 0 ? NULL : "depth";
	case LANDING_RIGHT:
	case LANDING_LEFT: return l->width > 0 ? NULL : "width";
	}
	return NULL;
}

/* From its hinge the leaf lies along the wall: does it stay on it?  0: of no known length. */
static bool leaves_wall(const struct job_landing *l, const struct job_door *door)
{
	double length = door->wall == LANDING_END ? l->width : l->depth;
	double far =
		door->lies == LEAF_FURTHER ? door->hinge + door->leaf : door->hinge - door->leaf;

	return length > 0 && fmax(door->hinge, far) > length + 1e-6;
}

void job_landings_check(const struct job *job, struct diags *d)
{
	for (int i = 0; i < LANDINGS; i++)
		for (int k = 0; k < job->landings.at[i].door_count; k++) {
			const struct job_landing *l = &job->landings.at[i];
			const struct job_door *door = &l->doors[k];
			const char *key = lacking(l, door);
			if (key)
				diag_error(d, node_pos(door->src, "wall"),
					"give it under the landing",
					"landings.doors: where this wall is follows from the "
					"landing's %s",
					key);
			else if (leaves_wall(l, door))
				diag_error(d, node_pos(door->src, "hinge"),
					"measure the hinge and the landing again",
					"landings.doors: the door runs past the end of its wall");
		}
}
