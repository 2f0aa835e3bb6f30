#include "parts/existing.h"
#include "parts/tread.h"

/*
 * What a tread is cut out for stands in the cut, and goes on up (notch_wall.c).
 */
static const struct work notched_wall = { EXISTING_WALL, WALL_IN_TREAD };

void existing_notched_walls_add(struct pieces *list, const struct rod *r)
{
	const struct job_treads *job = &r->job->treads;
	for (int i = 0; i < job->notch_count; i++) {
		struct notch_wall w = notch_wall_make(r, &job->notches[i]);
		existing_box_add(list, r, notched_wall, w.low, w.high);
	}
}
