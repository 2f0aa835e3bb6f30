/*
 * Pieces: parts as a family makes them, one for every place, before equal ones
 * become one part with several places (merge.c).
 */
#ifndef PARTS_PIECE_H
#define PARTS_PIECE_H

#include "parts/outline.h"
#include "parts/rod.h"
#include "parts/solid.h"

struct pieces {
	struct arena *arena;
	const struct part_kind *kind;
	struct part *first, *last;
	int unit;  /* pieces added are joined into this unit; 0: into none */
	int units; /* how many were begun */
};

/* What is added from now on is joined into a unit of its own, until `unit` is 0 again. */
void pieces_begin_unit(struct pieces *list);

/* Adds one piece, standing at this place of the house. */
struct part *piece_add(struct pieces *list, const char *name, const char *material,
	struct frame place);

void piece_feature(struct arena *a, struct part *p, struct feature f);

/* Drills it; what the mate asks for, the piece on the other side gets (mate.c). */
void piece_bore(struct arena *a, struct part *p, struct bore b);

/* Sizes of a round hole, and of an oblong one. */
struct bore_size bore_round(double diameter, double depth);
struct bore_size bore_oblong(enum bore_kind kind, double length, double width, double depth);

/* Equal pieces (alike.h), rails those that lie as high too, become one part with several places;
 * marks are given in the order met. */
struct part *pieces_merge(struct arena *a, const struct part_kind *kind, struct part *pieces);

struct assembly;

/* Drills the neighbours of all pieces, family by family. */
void mates_drill(struct arena *a, const struct assembly *all);

/* Then the loose tenons of glued-up treads, clear of all that is drilled so far. */
void tread_tenons_drill(struct arena *a, const struct stair *s, struct part *pieces);

#endif
