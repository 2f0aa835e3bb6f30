/*
 * A pattern: what is drawn of one piece of work at true size, in its own axes (x along it, y across
 * it from the edge that lies towards you).
 *
 * Beside the line to cut it holds what proves that sheets were joined well: a
 * base line along the piece with running positions on it, and one straight check
 * line from end to end whose length is figured.  Both are chain lines, and what
 * lies on the far face is broken, so that nothing is cut to by mistake.
 */
#ifndef SHEETS_TEMPLATE_PATTERN_H
#define SHEETS_TEMPLATE_PATTERN_H

#include "draw/clip.h"
#include "pitchboard/drawing.h"

/* Nearer than this two points of a pattern are one: less than any pen is wide. */
#define PATTERN_ALIKE 0.01

static inline bool pattern_alike(double a, double b)
{
	return fabs(a - b) < PATTERN_ALIKE;
}

static inline bool pattern_same_point(struct vec a, struct vec b)
{
	return vec_length(vec_sub(a, b)) < PATTERN_ALIKE;
}

struct pattern_line {
	struct pattern_line *next;
	enum pen pen;
	struct chain chain;
	struct box box; /* round it */
};

#define LABEL_WAYS 3

/* Before it is said shorter, lettering may go over to the other side of its point. */
enum label_side { LABEL_KEEPS_ITS_SIDE, LABEL_ON_EITHER_SIDE };

/* Lettering that belongs to a point of the pattern. */
struct pattern_label {
	struct pattern_label *next;
	struct vec at;
	struct vec toward;            /* unit: on which side of the point it would like to stand */
	const char *ways[LABEL_WAYS]; /* of saying it, the shorter where there is no room; NULL:
					 left out */
	enum label_side side;
};

struct pattern {
	struct box box; /* round the lines */
	struct pattern_line *lines;
	struct pattern_label *labels;
	double check_length; /* of the check line; 0: it has none */
};

/* One point of the work as it is listed: a corner of its outline, or the middle of a hole. */
struct position {
	int number; /* lettered beside the point */
	struct vec at;
	const char *what;           /* "front of tread 3", or "" */
	const char *along, *across; /* as lettered */
};

struct positions {
	const struct position *position;
	int n;
};

#endif
