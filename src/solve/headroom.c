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

/* Finished floor above to finished ceiling below; 0 when the job does not say.  That the two ways
 * of saying it agree was seen to when the job was read. */
static double floor_thickness(const struct stair *s)
{
	const struct job_opening *o = &s->job->opening;
	if (o->floor_thickness > 0)
		return o->floor_thickness;
	return o->ceiling_height > 0 ? s->total_rise - o->ceiling_height : 0;
}

/* The face against which the flight ends. */
static double header_face(const struct stair *s, const struct flight *f)
{
	bool flush = s->job->stringers.head == HEAD_FLUSH;
	return f->total_run + (flush ? 0 : s->job->risers.thickness);
}

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
	double thickness = floor_thickness(s);
	if (!(o->length > 0) || !(thickness > 0))
		return (struct headroom){ 0 };
	h.edge_x = header_face(s, f) - o->length;
	h.ceiling_z = s->total_rise - thickness;
	struct slope_line nosing = flight_nosing_line(s, f);
	double first = -s->job->treads.nosing, last = (s->total_rise - nosing.z0) / nosing.slope;
	double x = fmin(h.edge_x, last);
	h = at(h, x, x < first ? 0 : slope_at(nosing, x), h.ceiling_z);
	if (o->upper_ceiling_height > 0)
		h = at(h, last, s->total_rise, s->total_rise + o->upper_ceiling_height);
	h.state = h.least + NEAR_ENOUGH < o->headroom ? HEADROOM_SHORT : HEADROOM_ENOUGH;
	return h;
}
