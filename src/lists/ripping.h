/*
 * Boards of one length: ripped into strips, the strips cut to pieces.
 *
 *   +----------------------------------------------+
 *   | 40        | 40        | 31       |  ~ offcut |   a strip of one width
 *   +----------------------------------------------+
 *   | 22   | 22   | 22   | 22   | 22   |           |   a strip of another
 *   +----------------------------------------------+
 *   |  ~ rip left over                             |
 *   +----------------------------------------------+
 *
 * Both steps are exact.  Where boards are of one length there are as few strips of
 * every width as can be, and the fewer strips, the fewer boards: so these are the
 * fewest, or the cheapest, of all that are ripped first.  Where there are several
 * lengths a strip is given its share of the board's price by its width; that is a
 * bound from below, and often enough it is met.
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
struct ripped rip_boards(struct arena *a, const struct ripping *r, double length);

/* Out of boards of any length; for the cheapest. */
struct ripped rip_any_boards(struct arena *a, const struct ripping *r);

/* So many boards it takes at least, when they are all as wide and as long as any on offer. */
double rip_fewest(struct arena *a, const struct ripping *r);

#endif
