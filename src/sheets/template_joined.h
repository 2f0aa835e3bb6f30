/*
 * The face of pieces joined edge to edge: the line round them, and the joints inside it.
 *
 *      ______________________
 *     |                  :   |
 *     |                  :   |    ____ cut     .... joint
 *     |..................:   |
 *     |___________________`._|
 */
#ifndef SHEETS_TEMPLATE_JOINED_H
#define SHEETS_TEMPLATE_JOINED_H

#include "pitchboard/part.h"
#include "sheets/template_pattern.h"

struct joined {
	struct chain *cut;   /* what of the edges has no other piece against it */
	struct chain *joint; /* what has */
};

/* `faces` is a list of closed chains. */
struct joined chains_join(struct arena *a, const struct chain *faces);

/* Does the line round them turn at this point?  Then `toward` is half way between its two sides. */
struct turning {
	bool turns;
	struct vec toward;
};

struct turning cut_turns(const struct joined *j, struct vec at);

/* Which of the pieces that lie flat: their z is the unit's, or its opposite. */
enum faces {
	FACES_FLUSH, /* those whose upper face is the unit's */
	FACES_ALL,
};

/* Their outlines in the unit's own x and y. */
struct chain *unit_faces(struct arena *a, const struct unit *u, enum faces which);

/* The corners of those, one list for all. */
struct outline unit_corners(struct arena *a, const struct unit *u, enum faces which);

/* The unit in axes that are given in the house, at its first place. */
struct unit *unit_turned(struct arena *a, const struct unit *u, struct frame axes);

/* A part by itself, as a unit of one piece. */
struct unit *unit_of_part(struct arena *a, const struct part *p);

#endif
