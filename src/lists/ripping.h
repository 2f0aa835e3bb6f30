/*
 * Boards ripped into strips, the strips cut to pieces.
 *
 *   +----------------------------------------------+
 *   | 40        | 40        | 31       |  ~ offcut |   a strip, as wide as its widest piece
 *   +----------------------------------------------+
 *   | 22   | 22   | 22   | 22   | 22   |           |   a narrower one
 *   +----------------------------------------------+
 *   |  ~ rip left over                             |
 *   +----------------------------------------------+
 *
 * Strips first: all pieces into strips of any of their widths, so that the strips
 * together take the least share of boards; a piece also goes into a wider strip
 * and is ripped once more.  Then strips of one length side by side into boards.
 * Either step is exact; the two together are held against bounds from below:
 *
 *  - shares: a strip takes its width's share of the board's price, all of it where
 *    nothing goes beside it; no packing of strips into boards is cheaper;
 *  - on boards of one length: so many strips are needed for the pieces of the
 *    widest width, so many for those of the two widest, and so on.  Strips as few
 *    and as narrow as these counts allow take no more boards than any others.
 */
#ifndef LISTS_RIPPING_H
#define LISTS_RIPPING_H

#include "lists/offers.h"

struct ripping {
	const struct blank *const *blanks;
	int blank_count;
	const struct offers *offers;
	double kerf;
	enum cut_aim aim;
};

struct ripped {
	const struct cut_board *boards; /* one by one, as wide and as long as offered */
	int count;
	double bound; /* in boards or in money: ripped first, no less does */
};

/* Out of boards of one length, which holds every blank. */
struct ripped rip_boards(struct arena *a, const struct ripping *ask, double length);

/* Out of boards of any length; for the cheapest. */
struct ripped rip_any_boards(struct arena *a, const struct ripping *ask);

/* So many boards it takes at least, were they all as wide and as long as any on offer. */
double rip_fewest(struct arena *a, const struct ripping *ask);

#endif
