/*
 * A cell: all that the bench needs of one piece.
 *
 *   +---------------------------------+
 *   | T1  tread body           .-----.|
 *   | make 4; red oak; ...     | key ||
 *   |                          '-----'|
 *   |    face, with its sizes         |
 *   |    edge                         |
 *   |    ends      section            |
 *   | what else must be known         |
 *   +---------------------------------+
 */
#ifndef SHEETS_PIECE_CELL_H
#define SHEETS_PIECE_CELL_H

#include "sheets/frame.h"
#include "sheets/piece_key.h"

struct cell {
	const struct part *part;
	struct drawing *drawing; /* its upper left corner at the origin */
	double width, height;
	double ratio; /* 4 for 1:4 */
};

/* At the largest standard scale, no wider than `width` and no higher than `height`.  Its drawing is
 * NULL where no scale worth having goes in. */
struct cell cell_make(struct sheet *s, const struct key_view *key, const struct part *p,
	double width, double height);

/* The same at whatever scale goes in. */
struct cell cell_make_anyhow(struct sheet *s, const struct key_view *key, const struct part *p,
	double width, double height);

#endif
