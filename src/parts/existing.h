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

/* What is shown of it. */
#define BEYOND 600.0 /* in front of the stair and behind it */
#define BESIDE 300.0 /* and past an open side, at least */
#define WALL 115.0   /* a partition of 90 mm studs, boarded (common practice) */

/* A strip across the floor that the floor's edge keeps clear of. */
struct layer_notch {
	double y0, y1, x;
};

/* One layer of a floor on plan: from `far` to an edge that draws back to notches. */
struct layer {
	const struct rod *rod;
	double y0, y1, far, edge;
	struct layer_notch notches[6];
	int n;
};

void layer_notch(struct layer *l, double ya, double yb, double x);
struct outline layer_outline(struct arena *a, const struct layer *l);

/* Added to `s`: what a layer that comes from below has beyond x = `from`, between levels z. */
struct solid *layer_rest(struct arena *a, const struct layer *l, double from, struct vec z,
	struct solid *s);

/* As wide as the stair, past the sides that are open at this step. */
struct layer layer_of(const struct rod *r, int step, double far, double edge);

/* How far past an open side it is shown: past a starting step as well. */
double existing_beside(const struct side *side);

/* How far back it is shown. */
double existing_back(const struct rod *r);

struct part *existing_slab_add(struct pieces *list, const struct rod *r, struct work work,
	struct outline plan, double z0, double z1);
void existing_box_add(struct pieces *list, const struct rod *r, struct work work, struct vec3 from,
	struct vec3 to);

void existing_lower_floor_add(struct pieces *list, const struct rod *r);

/* Of the header: lower than the structure where the landing nosing is let into it. */
double existing_header_top(const struct rod *r);

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
