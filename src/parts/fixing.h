/*
 * Fixings: what joints are held by, as it is bought, and the holes that it wants.
 */
#ifndef PARTS_FIXING_H
#define PARTS_FIXING_H

#include "parts/piece.h"

/* A size that is sold in round figures of either. */
static inline double round_size(enum units units, double inches, double mm)
{
	return units == UNITS_INCHES ? inches * MM_PER_INCH : mm;
}

/* The bit or cutter that is wanted where the wood takes it, else the widest that is sold and not
 * wider than `most`: by 1/16 in, by whole millimetres (common practice). */
double bit_within(enum units units, double wanted, double most);

/* The dowel that is wanted where the wood takes it, else the thickest that is sold and not thicker
 * than `most`; 0: none is. */
double dowel_within(enum units units, double wanted, double most);

/* A screw or a brad.  The hole of a brad is as thick as it is: it is driven, not drilled for. */
struct fastener {
	enum fixing fixing;
	double width, length; /* of the shank; over all */
	double hole;          /* in the piece that it holds */
	double pilot;         /* in the piece that it bites into: hardwood */
	double head;          /* across */
};

/* By the number that it is sold under (6 to 14), or the gauge of its wire (15 to 23). */
struct fastener fastener_screw(int number, double length);
struct fastener fastener_brad(int gauge, double length);

/* The longest that is sold and not longer than this; length 0: none is. */
struct fastener fastener_screw_within(int number, double most, enum units units);
struct fastener fastener_brad_within(int gauge, double most, enum units units);

/* The hole for it, so deep; where it goes and what it says is the family's. */
struct bore fastener_bore(struct fastener f, double depth);

/* A dowel between two pieces, half of it in either where there is wood enough: `room` is how deep
 * a hole may be at all, here and in the mate. */
struct dowel {
	double diameter, length;
	double room, mate_room;
};

/* Each of its holes is deeper than its share of the dowel, for the glue: it must never stand on
 * the bottom before the joint is closed.  A dowel without room is cut shorter. */
#define DOWEL_GLUE_ROOM 1.6 /* 1/16 in (trade facts, from memory) */
struct bore dowel_bore(struct dowel d);

#endif
