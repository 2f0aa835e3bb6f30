/*
 * What the kinds of stringer share.
 */
#ifndef PARTS_STRINGER_H
#define PARTS_STRINGER_H

#include "parts/piece.h"

/* A stringer as it stands: where across the flight, and what it has to do there. */
struct stand {
	const struct rod *rod;
	const struct side *side; /* NULL: a carriage between the outer two */
	const struct job_stringer *spec;
	double y0, y1; /* its right-hand and left-hand faces */
};

/* The edges of the plank over the flight's x: z = level + slope * x. */
struct edges {
	double upper, lower;
};

/* Width of plank that has `least`: the job's, else the narrowest on offer.  0: none has; what was
 * on offer is then `plank_offered`. */
double plank_width(const struct rod *r, const struct job_stringer *spec, double least);
double plank_offered(const struct rod *r, const struct job_stringer *spec);

/* "wall", "open" or "middle": the group of stringers that it is of. */
const char *stringer_group(const struct rod *r, const struct job_stringer *spec);

/* Where in the job file a complaint about its plank belongs. */
struct pos plank_pos(const struct rod *r, const struct job_stringer *spec);

/* Turns a face drawn in the flight's x and z into the plank's own axes, and back: x from the
 * lower end along the lower edge, y square up from it. */
struct bench {
	double sine, cosine;
	double x0, y0; /* of the plank's corner, in turned axes */
};

/* `faces`: everything the plank must hold, in flight's x and z. */
struct bench bench_make(const struct rod *r, struct edges e, const struct outline *faces, int n);
struct vec bench_point(struct bench b, struct vec flight);
/* The place of a plank whose left-hand face stands at y of the flight. */
struct frame bench_frame(const struct rod *r, struct bench b, double y);
struct outline bench_outline(struct arena *a, struct bench b, struct outline flight);

/* The part, with all that the kinds have in common filled in. */
struct part *stringer_part(struct pieces *list, const struct stand *at, struct bench b,
	struct outline face, double width);

/* Where the lower edge of the plank comes down to the level it stands on. */
double foot_end_x(const struct rod *r, struct edges e);

/* Are the feet of sawtooth and mitred stringers notched for a thrust block? */
bool stringers_have_block(const struct rod *r);

/* The outer two, as they stand. */
struct stand side_stand(const struct rod *r, enum side_hand hand);

/* The plank that a sawtooth or mitred one is cut out of; its edges are one when none on offer does.
 */
struct edges sawtooth_edges(struct arena *a, const struct stand *at);

void sawtooth_add(struct pieces *list, const struct stand *at, struct diags *d);
void housed_add(struct pieces *list, const struct stand *at, struct diags *d);

#endif
