/*
 * A unit as the subject of a template: a tread glued up of body and strips, a part by itself.
 */
#ifndef SHEETS_TEMPLATE_UNIT_H
#define SHEETS_TEMPLATE_UNIT_H

#include "sheets/template.h"
#include "sheets/template_bores.h"
#include "sheets/template_joined.h"

/* A unit's face being laid out: x and y from its own lower left corner. */
struct unit_face {
	const struct unit *unit;
	struct joined lines;
	struct outline corners; /* of all its pieces */
	struct unit_bores bores;
	struct vec by; /* from the unit's axes to these */
	struct box extent;
};

struct unit_face unit_face(struct arena *a, const struct unit *u, enum faces which);

/* Has it more to it than a rectangle with its joints along or across? */
bool face_is_plain(const struct unit_face *f);

/* Where its line turns, and the middles of the holes in its face. */
struct positions face_positions(struct arena *a, const struct unit_face *f, struct lettering l);

/* The line to cut, joints, holes, positions beside them, and the lines that prove it. */
struct draft *face_draft(struct arena *a, const struct unit_face *f, struct positions p,
	struct lettering l);

/* "1 to 4, 6" */
const char *number_words(struct arena *a, const int *numbers, int n);

#endif
