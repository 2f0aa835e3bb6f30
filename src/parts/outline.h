/*
 * Outlines: how they are struck, and how their rounds become facets.
 */
#ifndef PARTS_OUTLINE_H
#define PARTS_OUTLINE_H

#include "pitchboard/part.h"

/* An outline being struck corner by corner. */
struct path {
	struct corner *corners;
	int n, room;
};

struct path path_begin(struct arena *a, int room);

/* Goes on straight to this corner; a corner on top of the last one is dropped. */
void path_to(struct path *p, double x, double y);

/* From the last corner to this one by an arc, turning left when the bulge is positive; 0: straight.
 */
void path_arc_to(struct path *p, double x, double y, double bulge);

/* From the last corner by a quarter round to this one, turning left. */
void path_round_to(struct path *p, double x, double y);

/* The same, turning right: round a nosing, seen from the wood it is let into. */
void path_hollow_to(struct path *p, double x, double y);

/* Closed; a last corner on top of the first is dropped. */
struct outline path_close(struct path p);

struct outline outline_box(struct arena *a, double x0, double y0, double x1, double y1);

/* Every corner moved by this much. */
struct outline outline_moved(struct arena *a, struct outline o, double dx, double dy);

/* An outline with its rounds cut into facets.  Bit SOFT_SIDE marks the corners on a round: what
 * is drawn out of the face there is no edge. */
struct profile {
	struct vec *at;
	unsigned char *soft;
	int n;
};

struct profile profile_of(struct arena *a, struct outline o);

#endif
