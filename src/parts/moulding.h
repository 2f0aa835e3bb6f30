/*
 * Mouldings in the corners of steps: their sections, and how a length of one
 * is cut and placed.
 *
 * A section lies in the corner with y out from the upright wood behind it and
 * z up:
 *
 *      z |________ tread                z |
 *        |        |                       |\
 *        |       .'  cove under           | '.  cove on the
 *        |      /    a nosing             |   '-._ back of a tread
 *        |_____|___ y                     |______|___ y
 */
#ifndef PARTS_MOULDING_H
#define PARTS_MOULDING_H

#include "parts/piece.h"

/* Left flat at either end of the hollow, so that no feather edge breaks off (common practice). */
#define MOULDING_EDGE 1.5

/* Which of the two faces that meet in the corner is the level one. */
enum moulding_lies { MOULDING_UNDER, MOULDING_ON };

struct moulding {
	enum moulding_kind kind;
	enum moulding_lies lies;
	double width, height; /* out from the upright wood, and along it */
	const char *name;     /* "cove under the nosing" */
};

struct outline moulding_section(struct arena *a, const struct moulding *m);

enum moulding_end {
	MOULDING_SQUARE,   /* against something */
	MOULDING_MITRED,   /* to the next length, round an outer corner */
	MOULDING_RETURNED, /* mitred to a little piece that returns it to the wood behind */
};

/* One length in the flight: from long point to long point along u, out along v, up along w. The
 * origin is in the corner of upright wood and lower edge. */
struct moulding_run {
	struct frame at;
	double length;
	enum moulding_end start, end;
};

/* The one round the end of a starting step. */
void moulding_bent_add(struct pieces *list, const struct rod *r, const struct side *side,
	const struct moulding *m);

/* Adds the piece, and those that return its ends. */
void moulding_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	struct moulding_run run);

#endif
