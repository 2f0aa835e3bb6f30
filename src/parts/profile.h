/*
 * Rail profiles: how each is struck, and what is measured on it.
 *
 * A profile lives whole in src/parts/profile_NAME.c and ends in one row; the
 * table of them is in profile.c.
 */
#ifndef PARTS_PROFILE_H
#define PARTS_PROFILE_H

#include "parts/outline.h"
#include "pitchboard/rail.h"

struct profile_sizes {
	enum rail_profile_kind kind;
	double width, depth, edge_radius, recess;
};

/* What keeps a profile from being struck: the key to blame, and the most it may be. */
struct profile_fault {
	const char *key; /* NULL: none */
	const char *text;
	double most; /* 0: nothing to say */
};

struct profile_kind {
	struct profile_fault (*fault)(struct profile_sizes z);
	/* y across with 0 in the middle, z up from the underside; counter-clockwise */
	struct outline (*strike)(struct arena *a, struct profile_sizes z);
};

extern const struct profile_kind profile_moulded, profile_flat_oval, profile_round, profile_square;

struct profile_sizes profile_of_rail(const struct job_rail *rail);
struct profile_sizes profile_of_wall_rail(const struct job_wall_rail *rail);

struct profile_fault profile_fault_of(struct profile_sizes z);

/* Struck and measured; only for sizes without a fault. */
struct rail_profile profile_make(struct arena *a, struct profile_sizes z);

/* As profile_measure.c fills it in from the outline. */
struct rail_profile profile_measured(struct outline o);

/* The outermost y of its outline at a level. */
double profile_half_width(struct outline o, double z);

/* The least of that beside a hole between two levels; less than 0: it comes out over or under. */
double profile_narrowest(struct outline o, double low, double high);

/* With its rounds cut into facets as fine as a rail is drawn.  Where a round meets a hollow there
 * is an edge to see, and at every sharp corner. */
struct profile profile_facets(struct arena *a, struct outline o);

/* A path that goes on by an arc of this sweep, counter-clockwise positive. */
void path_sweep_to(struct path *p, double x, double y, double sweep);

#endif
