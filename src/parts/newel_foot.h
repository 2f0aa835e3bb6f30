/*
 * How the foot of a newel is held, so that a push at its top does not turn it over: one file for
 * each thing that it may stand on, and what they share.
 *
 *       |   |            |     |           |     |             |     |.'
 *       |  (o) access    |     |           |  (o)|             |  (o).'
 *       |_|_|            |     |           | '|' |             | '|.'|  dowels before and
 *     ____|____ floor  __|     |__       __|_'|'_|__ tread     |_.|' |  behind the bolt
 *         |              | -o- |           __.|.__             |' |  |
 *         |              |_-o-_| joist        | string         |__|     leg
 *
 *     newel bolt         let in, two       newel bolt and      on a string: newel bolt,
 *     (through a plate)  through bolts     two dowels          two dowels, leg screwed on
 *
 * A newel bolt has a wood thread at one end, a nut at the other, under a plug.
 * Sizes are common practice.
 */
#ifndef PARTS_NEWEL_FOOT_H
#define PARTS_NEWEL_FOOT_H

#include "parts/newel.h"

#define BOLT_IN_NEWEL 90.0 /* up to its nut */
#define BOLT_IN_STRING 80.0
#define FOOT_SCREW 14     /* number, of plates and legs */
#define LEAST_LET_IN 75.0 /* into a floor: less holds no cross bolts */

/* Directions in the post's axes. */
static const struct vec3 post_up = { 1, 0, 0 }, post_down = { -1, 0, 0 }, post_back = { 0, 1, 0 };

/* Widths of what is drilled for newel bolts and bolts through the newel: bits that are sold where
 * the job's units are. */
struct foot_bits {
	double bolt;
	double thread; /* of a newel bolt, in wood */
	double access; /* to the bolt's nut, plugged */
};

struct foot_bits foot_bits(const struct post *p);

/* Each drills what holds the newel on what it stands on, and says whether that will do. */
enum newel_held foot_on_floor_fix(struct pieces *list, const struct post *p);
enum newel_held foot_on_tread_fix(struct pieces *list, const struct post *p);
enum newel_held foot_on_string_fix(struct pieces *list, const struct post *p);

/* Up from the foot, at `at.x` along the flight and `at.y` across; where it goes, `b` says. */
void foot_bolt_add(struct pieces *list, const struct post *p, struct vec at, struct bore b);

/* The hole to that bolt's nut, from the outside, as far as the bolt that lies deepest. */
void foot_access_add(struct pieces *list, const struct post *p, struct vec at);

/* One thing more that a maker must know of the newel. */
void foot_note_add(struct arena *a, const struct post *p, const char *text);

/* Its face towards the outside of the stair, and the way out of it. */
double foot_outer_face(const struct post *p);
struct vec3 foot_outward(const struct post *p);

#endif
