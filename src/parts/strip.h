/*
 * Strips that run with the rail, or level, and are cut plumb at both ends.
 *
 *            .'|
 *          .'  | plumb cut
 *        .'  .'
 *       |  .'   depth, square to the strip
 *       |.'
 */
#ifndef PARTS_STRIP_H
#define PARTS_STRIP_H

#include "parts/fastening.h"
#include "parts/stretch.h"

struct strip {
	const struct stretch *along; /* gives slope and axes; its middle is the strip's */
	double x, z;                 /* of its low lower edge */
	double length;               /* on plan */
	double depth, thickness;     /* square to it, seen from the side; across */
};

/* Adds it; its axes are x along, y up square to it, z to the right.  The section, in y and z, may
 * be empty: it is then a rectangle. */
struct part *strip_add(struct pieces *list, const char *name, const struct strip *s,
	struct outline section);

/* A loose tenon, at most as large as asked, in a plumb end: level, so in a raked strip it nears an
 * edge as it goes in.  `room` is how deep it may go into what the strip meets. */
struct tenon {
	double width, thickness, length;
	double room;
};

enum strip_end { STRIP_LOW_END, STRIP_HIGH_END };

/* The bore of the tenon, without its place. */
struct bore strip_tenon(const struct strip *s, struct tenon t);

/* Places it at an end. */
void strip_bore(struct arena *a, struct part *p, const struct strip *s, struct bore tenon,
	enum strip_end end);

/* Holds it by a row of fasteners in its middle, square through it: driven in from above, or from
 * below.  Where it is less deep than the part, because of a plough, the row begins in that. */
enum strip_face { STRIP_UP, STRIP_DOWN };
void strip_fasten(struct arena *a, struct part *p, const struct strip *s, struct fastening f,
	enum strip_face face);

/* Is what strip_tenon found worth gluing? */
bool tenon_holds(const struct bore *tenon);

#endif
