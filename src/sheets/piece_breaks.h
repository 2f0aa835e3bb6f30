/*
 * A long piece drawn with its plain stretches broken out, so that its ends and
 * its joints can be drawn large.  Figures stay true.
 *
 *    _______  _______        nothing begins, ends or slopes in the stretch that
 *   | o   o \ \   o  |       is left out
 *   |_______/ /______|
 *
 * One with nothing plain in it (a skirt cut round every step) is drawn lap by lap instead, each in
 * a view of its own.
 */
#ifndef SHEETS_PIECE_BREAKS_H
#define SHEETS_PIECE_BREAKS_H

#include "pitchboard/part.h"

/* A stretch along the piece, and how long it is drawn, both in millimetres of the piece. */
struct plain_stretch {
	double from, to, shown;
};

struct piece_breaks {
	struct plain_stretch *stretch; /* in rising order */
	int n;
	double from, to; /* the lap that is drawn; from -INFINITY: with its start */
};

/* As few plain stretches as will do, the longest first, so that the piece fills `room`; each comes
 * out at least so long. */
struct piece_breaks piece_breaks(struct arena *a, const struct part *p, double room, double least);

/* None: every piece is drawn at its length. */
static inline struct piece_breaks piece_unbroken(void)
{
	return (struct piece_breaks){ NULL, 0, -INFINITY, INFINITY };
}

/* All of it in n laps, parted where most room is between what is figured. */
const struct piece_breaks *piece_laps(struct arena *a, const struct part *p, int n);

static inline bool piece_is_whole(const struct piece_breaks *b)
{
	return !isfinite(b->from) && !isfinite(b->to);
}

static inline bool is_in_lap(const struct piece_breaks *b, double x)
{
	return x >= b->from && x <= b->to;
}

/* Where a position along the piece is drawn. */
double breaks_drawn_at(const struct piece_breaks *b, double x);

#endif
