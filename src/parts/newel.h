/*
 * A newel as it is set out, before it is known what it is made of.
 *
 *     x up     ______ height
 *             |      |
 *             |      |.'  rail
 *             |      |
 *             |     .|   foot: square, or cut to the rake
 *             |___.'
 *      y = 0           y = section, along the flight; z to the left, right-hand face at 0
 */
#ifndef PARTS_NEWEL_H
#define PARTS_NEWEL_H

#include "parts/piece.h"
#include "parts/stretch.h"

struct post {
	const struct rod *rod;
	const struct stretch *stretch; /* that it belongs to; it stands on its y = 0 */
	const struct stretch *all;     /* of the flight: others may meet it too */
	const struct side *side;
	struct rail_end end;
	bool is_bottom;     /* at the foot of a raked rail */
	struct frame place; /* in the house */
	double height, section;
	double core;    /* side of the core of a panelled newel; else the section */
	double slope;   /* tangent of its foot's rake; 0: square */
	double covered; /* up to here tread, floor or string come against its faces */
	bool has_cap;
	struct part *wood; /* the post or core, once it is made */
	double leg;        /* of it, hanging down outside the string; 0: none */
};

/* A piece drawn out along the post, its cross section in the post's y and z, between two planes
 * x = from + slope * y and x = to; its own axes only turned. */
struct slat {
	const char *name;
	struct vec3 u, v, w; /* its axes */
	struct outline section;
	double from, slope, to;
};

struct part *slat_add(struct pieces *list, const struct post *p, const struct slat *s);

/* Levels between which the i-th rail meets it, up from its foot; empty (y under x) when there are
 * no more. */
struct vec newel_rail(const struct post *p, int i);

/* Post, or core with strips and cross rails; false after an error. */
bool newel_post_add(struct pieces *list, struct post *p, struct diags *d);

/* Do the sizes of strips and core go together? */
bool newel_panels_fit(struct arena *a, const struct post *p, struct diags *d);

/* Strips and cross rails round the core; false after an error. */
bool newel_panels_add(struct pieces *list, const struct post *p, struct diags *d);

/* Is its foot held against being turned over? */
enum newel_held {
	NEWEL_HELD,
	NEWEL_LOOSE_ON_FLOOR, /* the job wants no fixing there */
	NEWEL_WITHOUT_DOWELS, /* on a tread */
	NEWEL_WITHOUT_BOLT,
};

/* Holes of the joints at its foot and in its faces. */
enum newel_held newel_joints_add(struct pieces *list, const struct post *p);

/* Of these, those at its foot; and what is said of one that is not held. */
enum newel_held newel_foot_fix(struct pieces *list, const struct post *p);
void newel_foot_warn(const struct post *p, enum newel_held held, struct diags *d);

/* A mouth in the post's axes: out of the wood along w, longer side along u. */
struct frame post_mouth(struct vec3 origin, struct vec3 u, struct vec3 w);

/* Drills the piece of the newel that the mouth is in; in a panel, the core under it. */
void post_drill(struct pieces *list, const struct post *p, struct bore b);

/* z of the post for a place so far in from the limit of its side. */
double post_across(const struct post *p, double in);

/* Where a stringer's end comes against the newel, or the newel stands on its edge: the wood that
 * no housing goes into, in from the limit, and levels. */
struct post_contact {
	double in0, in1, low, high;
};

struct post_contact post_contact(const struct post *p);

/* Its cap, and the moulding under that. */
void cap_add(struct pieces *list, const struct post *p, struct diags *d);
void cap_moulding_add(struct pieces *list, const struct post *p);

/* Of how many plies of the newels' stock a thickness is glued up: none when one board does. */
struct makeup newel_plies(const struct job *job, double thickness);

/* "plies out of 8/4 boards"; NULL for one board. */
const char *newel_plies_note(struct arena *a, const struct job *job, struct makeup m);

#endif
