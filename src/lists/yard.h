/*
 * What is asked of the yard while parts are made: against the stream, so that it is answered once.
 */
#ifndef LISTS_YARD_H
#define LISTS_YARD_H

#include "pitchboard/list.h"

/* The longest piece of this kind, finished, that comes out of one board on offer that is wide
 * enough for it; INFINITY: it is not sawn out of boards, or none is wide enough. */
double longest_piece(struct arena *a, const struct job *job, const struct part *p);

/* The boards that plies so thick are sawn out of, in words; NULL: none is so thick. */
const char *ply_bought(struct arena *a, const struct job *job, const char *species, double exact);

#endif
