/*
 * The holes of a unit as they lie on its template.
 *
 *      |            |
 *    --O--        --(==)--     a hole and a slot in the face: their shape, and a cross through
 *      |            |          the middle, where the drill is set
 *
 *    ___|___                   a hole in an edge: a short line across the edge
 *       |
 */
#ifndef SHEETS_TEMPLATE_BORES_H
#define SHEETS_TEMPLATE_BORES_H

#include "pitchboard/part.h"
#include "sheets/template_draft.h"

enum bore_side { BORE_FROM_ABOVE, BORE_FROM_BELOW, BORE_IN_EDGE };

/* A hole in the axes of the unit. */
struct unit_bore {
	const struct bore *bore;
	struct frame at;
	enum bore_side side;
	const struct bore *plug; /* the hole for what covers it, told of with it; NULL: none, or by
				    itself */
};

struct unit_bores {
	const struct unit_bore *bore;
	int n;
};

/* All of them but those inside a joint of the unit that its other piece has already. */
struct unit_bores unit_bores(struct arena *a, const struct unit *u);

/* Those of a part by itself that are marked out on it, none of them for another piece's screws; a
 * plug's is one with that of its screw. */
struct unit_bores bores_laid_out(struct arena *a, const struct part *p);

/* Holes in either face; they alone are listed among the positions. */
int face_bore_count(struct unit_bores b);

/* What is seen of it square to the unit's face: its mouth, or in an edge its sides and bottom. */
struct chain bore_lines(struct arena *a, const struct unit_bore *b);

/* Moved by so much. */
void draft_bore(struct draft *d, const struct unit_bore *b, struct vec by);

/* "5/8" hole, 1" deep: dowel"; "1/4 x 1" mortise" */
const char *bore_words(struct arena *a, struct lettering l, const struct unit_bore *b);

#endif
