/*
 * Glue lines: the joints between the body of a tread and its strips.
 */
#ifndef PARTS_GLUE_LINE_H
#define PARTS_GLUE_LINE_H

#include "parts/tread.h"

/* A straight joint between the body and a strip, in the flight's axes. */
struct glue_line {
	const struct tread_plan *tread;
	struct part *body, *strip;
	struct vec3 from, along; /* its start, and its direction */
	struct vec3 out;         /* out of the body */
	double length;
	double strip_width; /* of the strip, square to the joint */
	bool across;        /* the grain of the body runs on to the strip's side */
};

/* Along the front, and along a return at either end. */
struct glue_lines {
	struct glue_line line[3];
	int n;
};

/* Of a tread whose pieces are among these, not merged yet. */
struct glue_lines glue_lines_make(const struct tread_plan *t, struct part *pieces);

#endif
