/*
 * One piece alone, seen square to one of its sides, with what is drilled into it.
 *
 *            face           x along, y up: as it lies on the bench
 *   start  |______|  end
 *            edge           x along, z up: from its front edge
 */
#ifndef SHEETS_PIECE_VIEW_H
#define SHEETS_PIECE_VIEW_H

#include "draw/view.h"
#include "sheets/piece_breaks.h"

enum piece_side { PIECE_FACE, PIECE_EDGE, PIECE_START, PIECE_END, PIECE_SIDES };

/* A piece from all sides, made once for all the scales at which it is tried. */
struct piece_sides {
	const struct part *part;
	struct view view[PIECE_SIDES];
	struct vec3
		zero; /* in the piece's axes: the lowest of x, y and z; all is figured from here */
};

struct piece_sides piece_sides(struct arena *a, const struct part *p);

/* The lowest of x, y and z. */
struct vec3 piece_zero(const struct part *p);

/* How much longer an end is on its cut than across the piece. */
struct vec piece_stretch(const struct part *p, enum piece_side side);

struct piece_view {
	const struct part *part;
	enum piece_side side;
	struct view view; /* u of a face or edge is x with the breaks taken out */
	struct piece_breaks breaks;
	struct box box;   /* of the piece, or of its lap, as drawn */
	struct vec3 zero; /* of its sides */
	struct vec
		stretch; /* an end is seen square to its cut: so much longer than along the piece */
};

struct piece_view piece_view(struct arena *a, const struct piece_sides *sides, enum piece_side side,
	struct piece_breaks breaks);

/* A point of the piece on the view's plane. */
struct vec piece_point(const struct piece_view *v, struct vec3 p);

/* The two sizes by which it is laid out on this side: from zero, and on an end along its cut. */
struct vec piece_figured(const struct piece_view *v, struct vec3 p);

/* Is it in the lap that the view shows? */
bool piece_view_has(const struct piece_view *v, struct vec3 p);

/* The side on which it is laid out: face or edge (whether from the front or the back), or the end
 * to whose cut it is square. */
enum piece_side piece_bore_side(const struct part *p, const struct bore *b);

/* Does the mouth of the hole look at the eye (1), away from it (-1), or sideways (0)?  An end shows
 * none but its own. */
int piece_bore_faces(const struct piece_view *v, const struct bore *b);

/* Draws it with the view's origin at the drawing's; the box it took on paper. */
struct box piece_view_draw(struct drawing *g, const struct piece_view *v, double scale);

#endif
