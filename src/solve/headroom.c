#include "solve/headroom.h"

#include "solve/layout.h"
#include "solve/opening.h"

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

/* 0: it is not known. */
static double floor_under(const struct job *job, double total_rise)
{
	return job->opening.length > 0 ? opening_floor_depth(job, total_rise) : 0;
}

struct headroom headroom_find(const struct job *job, double total_rise,
	const struct layout_option *o, double lead)
{
	const struct job_opening *opening = &job->opening;
	struct headroom h = { .least = INFINITY };
	double floor = floor_under(job, total_rise);
	if (floor <= 0)
		return (struct headroom){ 0 };
	h.ceiling_z = total_rise - floor;
	double slope = o->unit_rise / o->unit_run, nosing = job->treads.nosing;
	struct slope_line line = { o->unit_rise + slope * nosing, slope };
	double first = -nosing - lead, last = (total_rise - line.z0) / slope;
	double x = fmin(opening_header_x(job, o->total_run) - opening->length, last);
	h = at(h, x, x < first ? 0 : slope_at(line, x), h.ceiling_z);
	if (opening->upper_ceiling_height > 0)
		h = at(h, last, total_rise, total_rise + opening->upper_ceiling_height);
	h.state = h.least + NEAR_ENOUGH < opening->headroom ? HEADROOM_SHORT : HEADROOM_ENOUGH;
	return h;
}

/*
 * The nosing line stands one rise for each tread and one more over the floor at
 * the header, less what lies between the last nosing and the header; from there it
 * falls by the pitch over the length of the opening.  With a run short enough the
 * whole line lies inside the opening, and the ceiling counts from the floor; at that
 * run itself its edge is plumb over the first nosing and counts from that.
 */
double headroom_longest_run(const struct job *job, double total_rise, int risers, double wanted,
	double lead)
{
	double floor = floor_under(job, total_rise), rise = total_rise / risers;
	int treads = layout_treads(job, risers);
	if (floor <= 0)
		return INFINITY;
	double inside = job->opening.length - opening_header_x(job, 0) - job->treads.nosing;
	double drop = wanted + rise * (treads + 1) - (total_rise - floor);
	double sloped = drop > 0 ? rise * inside / drop : INFINITY;
	double all_inside = total_rise - floor >= wanted
		? inside / (treads + lead) - 2 * NEAR_ENOUGH
		: -INFINITY;
	return fmax(sloped, all_inside);
}
