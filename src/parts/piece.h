/*
 * Pieces: parts as a family makes them, one for every place, before equal ones
 * become one part with several places (part.c).
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
};

/* Adds one piece, standing at this place of the house. */
struct part *piece_add(struct pieces *list, const char *name, const char *material,
	struct frame place);

void piece_feature(struct arena *a, struct part *p, struct feature f);

#endif
