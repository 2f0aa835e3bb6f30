#include "parts/upright.h"

#include "parts/nosing.h"

/* Half of its length in the upright: common practice. */
#define SCREW 6
#define BRAD 18
#define LONG 32.0

struct outline upright_outline(struct arena *a, const struct upright *u)
{
	struct path p = path_begin(a, 4);
	path_to(&p, 0, 0);
	path_to(&p, u->height, 0);
	path_to(&p, u->height + u->width * u->slope[INFILL_TOP], u->width);
	path_to(&p, u->width * u->slope[INFILL_FOOT], u->width);
	return path_close(p);
}

/* On a raked end it slants across the upright, and is the shorter for it. */
static double room_of(const struct upright *u, double slope, struct upright_dowel d)
{
	double beside = fmin(u->width, u->thickness) / 2 - d.diameter / 2 - d.wall;
	return fmin(u->height / 2, beside / fmax(sin(atan(slope)), 0.01));
}

struct bore upright_dowel(const struct upright *u, enum infill_end end, struct upright_dowel d)
{
	double slope = u->slope[end], c = cos(atan(slope)), sine = sin(atan(slope));
	double way = end == INFILL_TOP ? 1 : -1;
	struct bore bore = dowel_bore(
		(struct dowel){ d.diameter, d.length, room_of(u, slope, d), d.in_other });
	bore.at.u = vec3(sine, c, 0);
	bore.at.v = vec3(0, 0, way);
	bore.at.w = vec3(way * c, -way * sine, 0);
	bore.at.origin = vec3((end == INFILL_TOP ? u->height : 0) + slope * u->width / 2,
		u->width / 2, u->thickness / 2);
	return bore;
}

struct bore upright_pilot(const struct upright *u, enum infill_end end, double from_end,
	struct fastener f, double depth)
{
	struct bore bore = fastener_bore(f, depth);
	bore.at = (struct frame){ .u = { 1, 0, 0 }, .v = { 0, 0, 1 }, .w = { 0, -1, 0 } };
	bore.at.origin =
		vec3(end == INFILL_TOP ? u->height - from_end : from_end, 0, u->thickness / 2);
	if (f.fixing == FIXING_SCREW)
		bore.text = end == INFILL_TOP ? "screw, on the slant up into the rail"
					      : "screw, on the slant down into what it stands on";
	else
		bore.text = end == INFILL_TOP ? "brad, on the slant up into the rail"
					      : "brad, on the slant down into what it stands on";
	return bore;
}

struct fastener upright_screw(enum units units)
{
	return fastener_screw_within(SCREW, LONG, units);
}

struct fastener upright_brad(enum units units)
{
	return fastener_brad_within(BRAD, LONG, units);
}

bool upright_clears_nosing(struct arena *a, const struct stretch *s, double hole, const char *name,
	struct diags *d)
{
	const struct job *job = s->rod->job;
	double over = nosing_make(&job->treads, s->rod->tread).reach - s->rod->nosing - hole;
	if (s->feet != FEET_ON_TREADS || infill_has_shoe(job) || over <= NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(s->rod, job->treads.src, "nosing"),
		arena_printf(a, "%s, or round it less",
			job_write_least(a, job, "treads.nosing", s->rod->nosing + over)),
		"the dowel of %s on a tread comes %s into the nosing's round", name,
		infill_letter(s, a, over));
	return false;
}
