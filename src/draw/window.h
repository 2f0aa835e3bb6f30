/*
 * Lines cut off at the edges of a window.
 */
#ifndef DRAW_WINDOW_H
#define DRAW_WINDOW_H

#include <stdbool.h>

#include "pitchboard/vec.h"

struct segment {
	struct vec a, b; /* the same point: nothing */
};

/* What of the line lies in the window; NULL: all of it. */
struct segment window_clip(const struct box *window, struct segment s);

static inline bool segment_is_empty(struct segment s)
{
	return vec_length(vec_sub(s.b, s.a)) < NEAR_ENOUGH;
}

#endif
