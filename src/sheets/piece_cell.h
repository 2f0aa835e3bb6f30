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

/* What a cell is made for. */
struct cell_wish {
	struct sheet *sheet;
	const struct key_view *key;
	const struct part *part;
	double width, height; /* at most */
	double section;       /* a section comes out no larger than this */
};

/* At the largest standard scale that goes in.  Its drawing is NULL where no scale worth having
 * does. */
struct cell cell_make(const struct cell_wish *wish);

/* The same at whatever scale goes in. */
struct cell cell_make_anyhow(const struct cell_wish *wish);

#endif
