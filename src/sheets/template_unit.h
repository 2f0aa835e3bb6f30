/*
 * A unit as the subject of a template: a tread glued up of body and strips, a part by itself.
 */
#ifndef SHEETS_TEMPLATE_UNIT_H
#define SHEETS_TEMPLATE_UNIT_H

#include "sheets/template.h"
#include "sheets/template_bores.h"
#include "sheets/template_joined.h"

/* What its ends and edges are called: "left end", "front". */
struct face_names {
	const char *left, *middle, *right, *lower, *upper;
};

/* A unit's face being laid out: x and y from its own lower left corner. */
struct unit_face {
	const struct unit *unit;
	struct lettering lettering;
	const struct face_names *names;
	struct joined lines;
	struct outline corners; /* of all its pieces */
	struct unit_bores bores;
	struct vec by; /* from the unit's axes to these */
	struct box extent;
};

struct unit_face unit_face(struct arena *a, const struct unit *u, enum faces which,
	struct lettering l, const struct face_names *names);

/* Has it more to it than a rectangle with its joints along or across? */
bool face_is_plain(struct arena *a, const struct unit_face *f);

/* Where its line turns, and the middles of the holes in its face. */
struct positions face_positions(struct arena *a, const struct unit_face *f);

/* What of it is inside `region`: the line to cut, joints, holes, positions beside them, and the
 * lines that prove it.  Where the region ends inside the work is a line to set it to. */
struct draft *face_draft(struct arena *a, const struct unit_face *f, struct positions p,
	struct box region);

/* Room round a face for what is drawn beside it. */
struct box face_region(const struct unit_face *f);

/* The stretches along it that hold more than straight edges and joints: to be drawn over sheets,
 * where a rectangle need not be. */
struct template_parts {
	struct box *region;
	const char **name;
	int n;
};

struct template_parts face_parts(struct arena *a, const struct unit_face *f, struct positions p);

/* "1 to 4, 6" */
const char *number_words(struct arena *a, const int *numbers, int n);

#endif
