/*
 * One baluster: square, sawn flat or round, foot and top cut as they meet what they stand on.
 */
#ifndef PARTS_BALUSTER_H
#define PARTS_BALUSTER_H

#include "parts/infill.h"

/* Adds the one whose front stands at x of the stretch: its axes are x up, y along the stair, z to
 * the left. */
struct part *baluster_add(struct pieces *list, const struct stretch *s, double x);

/* How far in from front and back the faces lie that cross pieces meet: 0, but for a round one,
 * which gets a flat there. */
double baluster_flat(const struct job *job);

struct setting;

/* Says where tops that are cut square leave a raked rail open beside them. */
void baluster_tops_look(struct arena *a, const struct setting *set, struct diags *d);

/* Are dowel and slot smaller than the baluster? */
bool baluster_takes_dowel(struct arena *a, const struct stretch *s, struct diags *d);

#endif
