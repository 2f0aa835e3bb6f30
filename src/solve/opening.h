/*
 * What the flight comes up through: the opening in the upper floor, and its header.
 */
#ifndef SOLVE_OPENING_H
#define SOLVE_OPENING_H

#include "pitchboard/stair.h"

double opening_header_x(const struct job *job, double total_run);
double opening_floor_depth(const struct job *job, double total_rise); /* 0: not known */
struct box opening_find(const struct stair *s, const struct flight *f);

#endif
