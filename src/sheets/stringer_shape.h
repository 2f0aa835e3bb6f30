/*
 * A stringer on the bench, the face that is worked up: the outer one of a mitred
 * stringer, where the long points are, the inner one of a housed one, where the
 * grooves are.  So its sheet and its template lie alike.  Seen from there, the
 * lower end of every other hand is on the right.
 */
#ifndef SHEETS_STRINGER_SHAPE_H
#define SHEETS_STRINGER_SHAPE_H

#include "draw/clip.h"
#include "pitchboard/part.h"

struct stringer_shape {
	bool mirrored; /* the lower end is on the right */
	double length;
	struct chain outline;
	struct chain far_face; /* no points where it is like the outline */
	struct chain *grooves; /* the lines to rout to */
};

struct stringer_shape stringer_shape(struct arena *a, const struct part *p);

/* A point of the plank as it is drawn. */
struct vec shape_point(const struct stringer_shape *s, struct vec plank);

bool stringer_is_mirrored(const struct stringer *s);

/* In words that sheet and template share. */
const char *stringer_kind_words(enum stringer_kind kind);
const char *stringer_hand_words(enum stringer_hand hand); /* "" where either will do */
const char *stringer_face_words(struct arena *a, const struct part *p);

/* The stock to take: 1 1/4" x 13 1/4" x 14'-0". */
const char *stringer_plank_words(struct arena *a, const struct stair *s, const struct part *p);

#endif
