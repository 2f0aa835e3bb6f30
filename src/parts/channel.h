/*
 * Housed (closed) stringers: the plank stays whole, and treads and risers are
 * let into grooves of its inner face, wedged tight from behind and below.
 *
 *         top edge, `margin` square above the nosing line
 *      _.-'
 *   .-'   ____________________ x_i+1   i * rise
 *        (____________________|        i * rise - tread
 *         |__ -- __ wedge -- __ |
 *        x_i |  |             |   |
 *            |   | wedge      |     |  riser i + 1
 *
 * The grooves of one stair run into each other and make one zigzag channel.
 * Without riser boards every tread has a groove of its own, as thick as it is:
 * from below one would see the wedges (common practice).
 */
#ifndef PARTS_CHANNEL_H
#define PARTS_CHANNEL_H

#include "parts/stringer.h"

struct channel {
	struct arena *a;
	const struct stand *at;
	const struct rod *rod;
	double taper; /* the wedge: 1 in so many; infinite where there are none */
	struct edges edges;
	double front_x;
};

/* Of a housed stringer as it stands; its edges are not known yet. */
struct channel channel_make(struct arena *a, const struct stand *at);

/* Counted in steps from 1, in the flight's x and z. */
double channel_riser_face(const struct rod *r, int step);
double channel_tread_top(const struct rod *r, int step);
double channel_nosing_under(const struct rod *r); /* where a tread's underside begins */

/* Height of the last riser's groove over the last tread; 0: it has none. */
double channel_last_riser(const struct rod *r);

/* Lower line of a tread's groove plumb under x. */
double channel_tread_bottom(const struct channel *c, int step, double x);

/* Where the lower line of a tread's groove meets the back line of a riser's. */
struct vec channel_corner(const struct channel *c, int tread, int riser);

/* How far below the top edge, square to it, the grooves reach, and the foot must. */
double channel_reach(const struct channel *c);
double channel_foot_reach(const struct channel *c);

/* The plank's outline, and the wood above and below the channel, all counter-clockwise. */
struct outline channel_plank(const struct channel *c);
struct outline channel_above(const struct channel *c);
struct outline channel_below(const struct channel *c);

/* The wedges of one step.  That of the first riser goes on down to the floor.  Length 0: none. */
struct wedge channel_tread_wedge(const struct channel *c, int step);
struct wedge channel_riser_wedge(const struct channel *c, int step);

/* What of it is laid out and sawn. */
const struct housing *housing_of(const struct channel *c, double plank_width);

/* One step's share of the channel: riser groove below, tread groove above; the last one's with the
 * groove of the last riser, which is open at the head cut. */
struct outline channel_step(const struct channel *c, int i);

#endif
