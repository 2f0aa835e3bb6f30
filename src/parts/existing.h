/*
 * Existing work: what its files tell each other.
 */
#ifndef PARTS_EXISTING_H
#define PARTS_EXISTING_H

#include "parts/piece.h"

struct work {
	enum existing_kind kind;
	const char *name;
};

void existing_box_add(struct pieces *list, const struct rod *r, struct work work, struct vec3 from,
	struct vec3 to);

/* Upper floor, finish to ceiling. */
double existing_floor_depth(const struct rod *r);

/* On plan, in the flight's axes: the upper floor behind the header, and that over the foot of the
 * stair; as long as nothing where there is none. */
struct box existing_floor_behind(const struct rod *r);
struct box existing_floor_over_foot(const struct rod *r);

/* The walls that treads are cut out for. */
void existing_notched_walls_add(struct pieces *list, const struct rod *r);

/* The floor that level runs stand on, where it is not there yet. */
void existing_guarded_floor_add(struct pieces *list, const struct rod *r);

#endif
