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
#include "sheets/piece_view.h"

struct cell {
	const struct part *part;
	struct drawing *drawing; /* its upper left corner at the origin */
	double width, height;
	double ratio; /* 4 for 1:4 */
};

/* What of its piece a cell holds, the last one being what else must be known; where all does not go
 * into one, it is continued in another. */
enum { CELL_FACE = 1, CELL_EDGE = 2, CELL_ENDS = 4, CELL_WORDS = 8 };

/* Drawn along the piece, at a scale of the whole cell's. */
#define CELL_VIEWS (CELL_FACE | CELL_EDGE)

/* All that there is of this piece. */
unsigned cell_holds_all(const struct part *p);

/* What a cell is made for. */
struct cell_wish {
	struct sheet *sheet;
	const struct key_view *key;
	const struct piece_sides *sides;
	unsigned holds;          /* of CELL_... */
	struct piece_breaks lap; /* of the piece: unbroken where it is shown whole */
	double width, height;    /* at most */
	double section;          /* a section comes out no larger than this */
};

/* At one scale, with these stretches broken out, however large it comes out; with room for the key,
 * but without it. */
struct cell cell_fill(const struct cell_wish *wish, double ratio, struct piece_breaks breaks);

void cell_draw_key(const struct cell *c, const struct cell_wish *wish);

/* At the largest standard scale that goes in.  Its drawing is NULL where no scale worth having
 * does. */
struct cell cell_make(const struct cell_wish *wish);

/* The same with smaller sections.  Of one thing alone at whatever scale goes in, and where it goes
 * in at none, too large; of more than one without a drawing where nothing could be told, so that
 * they are parted. */
struct cell cell_make_anyhow(const struct cell_wish *wish);

/* Does it go in at a scale at which a view can be read? */
bool cell_is_worth_having(const struct cell *c, const struct cell_wish *wish);

/* Is the piece so slender on paper that little could be told? */
bool cell_is_slender(const struct cell *cell);

bool cell_goes_in(const struct cell *c, const struct cell_wish *wish);

#endif
