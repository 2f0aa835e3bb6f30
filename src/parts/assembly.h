/*
 * All pieces as they stand in the house: what is at a place, and is there room for a hole?
 */
#ifndef PARTS_ASSEMBLY_H
#define PARTS_ASSEMBLY_H

#include "parts/piece.h"

/* A piece with the box that it fills in the house. */
struct standing_piece {
	struct part *piece;
	struct box3 box;
};

struct assembly {
	struct standing_piece *pieces;
	int n;
};

/* Existing work too; of pieces that are not merged yet, every one has one place. */
struct assembly assembly_make(struct arena *a, struct part *const *families, int n);

/* The wood at a point of the house, but not this piece; NULL: there is none. */
struct part *assembly_wood_at(const struct assembly *all, const struct part *but, struct vec3 p);

/* What a hole takes between two places on its axis, counted from its mouth out of the wood (its
 * bottom is at -depth), in the axes that its frame is given in. */
struct box3 bore_box(struct frame at, struct bore_size size, double from, double to);

/* Has this hole, its mouth in the house, `gap` of wood to every other hole of the piece? */
bool bore_is_clear(const struct part *p, struct frame mouth, struct bore_size size, double gap);

#endif
