/*
 * A stringer parted into few short pieces, of which some are used again and again.
 *
 *         foot      |    step    |   step   |  head
 *    ______       __|          __|        __|_______
 *   |      |_____|  |_________|  |_______|  |       |
 *   |_______________|____________|__________|_______|
 *
 * Pieces end at the backs of treads, so that each begins where the one before
 * it ends, and both ends are positions on the rod.  A stringer need not be alike
 * all along: one that stands at a wall below and in the open above has two
 * kinds of step, and a link between them.
 */
#ifndef SHEETS_TEMPLATE_STRINGER_PIECES_H
#define SHEETS_TEMPLATE_STRINGER_PIECES_H

#include "pitchboard/part.h"

struct template_piece {
	const char *name;  /* "foot" */
	struct box region; /* of the plank, before any mirroring */
	int times;
	int from, to; /* the treads whose backs it begins and ends at the first time; 0: the plank's
			 own end */
};

struct template_pieces {
	struct template_piece *piece;
	int n;
};

struct template_pieces template_pieces(struct arena *a, const struct part *part);

#endif
