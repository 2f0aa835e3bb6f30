#include "solve/headroom.h"

/*
 *   ceiling_______             _______ upper floor
 *   ______________|<- opening ->|______
 *               edge_x      .'| header
 *                  |     .'
 *            least |  .'  nosing line
 *                  .'
 *
 * Measured plumb from the sloped line through the nosings, as building codes do.  Under the
 * ceiling the line only climbs, so the least is at the opening's edge; beyond it, under the upper
 * ceiling, the least is at the nosing of the upper floor.
 */

static struct headroom at(struct headroom h, double x, double nosing_z, double overhead_z)
{
	if (h.least <= overhead_z - nosing_z)
		return h;
	h.x = x;
	h.nosing_z = nosing_z;
	h.overhead_z = overhead_z;
	h.least = overhead_z - nosing_z;
	return h;
}

struct headroom headroom_find(const struct stair *s)
{
	const struct job_opening *o = &s->job->opening;
	const struct flight *f = &s->flights[0];
	struct headroom h = { .least = INFINITY };
	if (o->length <= 0 || s->floor_depth <= 0)
		return (struct headroom){ 0 };
	h.ceiling_z = s->total_rise - s->floor_depth;
	struct slope_line nosing = flight_nosing_line(s, f);
	double first = -s->job->treads.nosing, last = (s->total_rise - nosing.z0) / nosing.slope;
	double x = fmin(s->opening.x0, last);
	h = at(h, x, x < first ? 0 : slope_at(nosing, x), h.ceiling_z);
	if (o->upper_ceiling_height > 0)
		h = at(h, last, s->total_rise, s->total_rise + o->upper_ceiling_height);
	h.state = h.least + NEAR_ENOUGH < o->headroom ? HEADROOM_SHORT : HEADROOM_ENOUGH;
	return h;
}
