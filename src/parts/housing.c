#include "parts/channel.h"

/*
 * The widths that a joiner gauges and the wedges he saws, of any step but the
 * first and last.
 *
 *      nosing                          back
 *         (____________________________|      tread
 *         |__ -- __  thin              |
 *            |  |   -- __ tread wedge  | thick
 *            |  |\        -- __        |
 *            |  | \            -- __   |
 *            |  |  \ riser wedge     --
 *            |__|___\ thick
 */

/* What is open under the tread, plumb under x. */
static double under_tread(const struct channel *c, int step, double x)
{
	double underside = channel_tread_top(c->rod, step) - c->rod->tread;
	return underside - channel_tread_bottom(c, step, x);
}

/* From behind the riser to the back of the tread. */
struct wedge channel_tread_wedge(const struct channel *c, int step)
{
	const struct rod *r = c->rod;
	double back = channel_riser_face(r, step + 1);
	double front = channel_corner(c, step, step).x;
	if (r->riser <= 0)
		return (struct wedge){ 0 };
	return (struct wedge){ back - front, under_tread(c, step, front),
		under_tread(c, step, back) };
}

/* A wedge is sawn no thinner, and has so much of the way left to be driven on (common practice). */
#define LEAST_THIN 1.5

/* From under the tread's wedge to the riser's own lower edge, or the floor. */
struct wedge channel_riser_wedge(const struct channel *c, int step)
{
	const struct rod *r = c->rod;
	double top = channel_corner(c, step, step).y;
	double bottom = step > 1 ? channel_tread_top(r, step - 1) - r->tread : r->foot;
	double tight = channel_tread_top(r, step) - r->tread;
	top = fmin(top, tight - LEAST_THIN * c->taper);
	if (r->riser <= 0 || top <= bottom)
		return (struct wedge){ 0 };
	return (struct wedge){ top - bottom, (tight - top) / c->taper,
		(tight - bottom) / c->taper };
}

const struct housing *housing_of(const struct channel *c, double plank_width)
{
	const struct rod *r = c->rod;
	struct housing *h = NEW(c->a, struct housing);
	h->depth = r->job->stringers.housing_depth;
	h->taper = c->taper;
	h->tread_wedge = channel_tread_wedge(c, 1);
	h->riser_wedge = channel_riser_wedge(c, 2);
	h->tread_front = r->tread;
	h->tread_back = r->tread + h->tread_wedge.thick;
	h->riser_top = r->riser;
	h->riser_bottom = r->riser + h->riser_wedge.thick;
	h->last_riser = channel_last_riser(r);
	h->wood_left = plank_width - channel_reach(c);
	return h;
}
