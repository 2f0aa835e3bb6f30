/*
 * How long a piece can be: what a board on offer yields, asked while parts are made.
 */
#ifndef LISTS_LONGEST_H
#define LISTS_LONGEST_H

#include "pitchboard/list.h"

/* The longest piece of this kind, finished, that comes out of one board on offer that is wide
 * enough for it; INFINITY: it is not sawn out of boards, or none is wide enough. */
double longest_piece(struct arena *a, const struct job *job, const struct part *p);

#endif
