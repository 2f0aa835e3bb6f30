/*
 * The starting step: what tread, riser, stringer and newel need to know of it.
 */
#ifndef PARTS_START_H
#define PARTS_START_H

#include "parts/tread.h"

/* Is the first step rounded at this side? */
bool side_starts(const struct side *side);
bool rod_has_start(const struct rod *r);

/* From the front of its nosing to the back of the rounded end, and the radius of that. */
double start_back(const struct rod *r);
double start_radius(const struct rod *r);

void start_tread_add(struct pieces *list, const struct tread_plan *t);

/* The block that the riser is bent round, on plan: along from the left-hand limit, back from the
 * front of the nosing. */
struct outline start_block_outline(struct arena *a, const struct rod *r, const struct side *side);

/* And what is left of it under the riser bent round it. */
struct outline start_core_outline(struct arena *a, const struct rod *r, const struct side *side,
	double skin);

/* How much longer the first riser is for being bent round the block at this side. */
double start_bent_length(const struct rod *r, const struct side *side);

void start_block_add(struct pieces *list, const struct rod *r, const struct side *side);

void start_check(struct arena *a, const struct rod *r, struct diags *d);

#endif
