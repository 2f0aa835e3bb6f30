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
static double under_tread(const struct channel *c, double x)
{
	double underside = channel_tread_top(c->rod, 1) - c->rod->tread;
	return underside - channel_tread_bottom(c, 1, x);
}

/* From behind the riser to the back of the tread. */
static struct wedge tread_wedge(const struct channel *c)
{
	const struct rod *r = c->rod;
	double back = channel_riser_face(r, 2);
	double front = channel_corner(c, 1, 1).x;
	if (r->riser <= 0)
		return (struct wedge){ 0 };
	return (struct wedge){ back - front, under_tread(c, front), under_tread(c, back) };
}

/* From under the tread's wedge to the riser's own lower edge. */
static struct wedge riser_wedge(const struct channel *c)
{
	const struct rod *r = c->rod;
	double top = channel_corner(c, 2, 2).y, bottom = channel_tread_top(r, 1) - r->tread;
	double tight = channel_tread_top(r, 2) - r->tread;
	if (r->riser <= 0)
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
	h->tread_wedge = tread_wedge(c);
	h->riser_wedge = riser_wedge(c);
	h->tread_front = r->tread;
	h->tread_back = r->tread + h->tread_wedge.thick;
	h->riser_top = r->riser;
	h->riser_bottom = r->riser + h->riser_wedge.thick;
	h->wood_left = plank_width - channel_reach(c);
	return h;
}
