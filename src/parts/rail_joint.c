#include "parts/rail_joint.h"

#include "parts/fixing.h"
#include "pitchboard/rail.h"

/*
 * Holes are drilled square to the plumb cut, so they run level, while the rail does not: what
 * counts is how high they lie half-way along, and that both their ends keep in the wood.
 *
 *          .'  |        |  .'
 *        .'    |        |.'
 *      .'   ===| newel  |===       at the head a hole comes nearer to the top of the
 *     |   .'   |        | .'|      rail, at the foot to its underside
 *     | .'              .'
 */

#define WOOD 2.0          /* at least so much is left round a hole that the job asks for */
#define ROOMY 6.0         /* and round one chosen by room, where it can be: common practice */
#define USUAL_HEIGHT 24.0 /* of a bolt: 15/16 in (from memory) */
#define DOWELS_APART 2.0  /* centre to centre, in diameters */

struct hole {
	double diameter, depth;
};

/* One end of a rail, while it is drilled. */
struct joint {
	struct arena *arena;
	struct part *part;
	const struct stretch *stretch;
	double inward; /* 1 at the foot, -1 at the head: which way the rail lies */
	double edge;   /* x of the cut at the underside */
	bool is_met;   /* the newel has the bolt of another rail */
	double wood;   /* least that is left round a hole */
};

/* Heights over the underside, square to the rail, that a hole may have half-way along. */
struct range {
	double low, high;
};

static struct range range_of(const struct joint *j, struct hole h)
{
	double keep = h.diameter / 2 + j->wood + h.depth / 2 * sin(j->stretch->pitch);
	return (struct range){ keep, j->stretch->rod->job->rail.depth - keep };
}

static bool has_room(struct range r)
{
	return r.low <= r.high;
}

static double clamp(double x, struct range r)
{
	return fmin(fmax(x, r.low), r.high);
}

/* Plumb over the underside, at the cut, for a hole that has this height half-way. */
static double height_at_cut(const struct joint *j, struct hole h, double height)
{
	const struct stretch *s = j->stretch;
	return height / s->cosine + j->inward * h.depth / 2 * s->slope;
}

/* A point of a level line into the rail: so high over the underside at the cut, so far in. */
static struct vec3 point(const struct joint *j, double at_cut, double in)
{
	double c = j->stretch->cosine, sine = sin(j->stretch->pitch), x = j->inward * in;
	return vec3(j->edge + at_cut * sine + x * c, 0, at_cut * c - x * sine);
}

static struct frame mouth(const struct joint *j, double at_cut)
{
	double c = j->stretch->cosine, sine = sin(j->stretch->pitch);
	struct frame f = { .origin = point(j, at_cut, 0), .u = { 0, 1, 0 } };
	f.w = vec3_scale(vec3(c, 0, -sine), -j->inward);
	f.v = vec3_cross(f.w, f.u);
	return f;
}

static void add_access_hole(const struct joint *j, double at_cut)
{
	const struct job_rail *rail = &j->stretch->rod->job->rail;
	const struct job_rail_bolt *bolt = &rail->bolt;
	struct vec3 p = point(j, at_cut, bolt->access);
	double depth = fmin(p.z + bolt->clearance, rail->depth - WOOD);
	struct bore b = { .size = bore_round(bolt->access_diameter, depth), .fixing = FIXING_NONE };
	b.at = (struct frame){ vec3(p.x, 0, 0), { 1, 0, 0 }, { 0, -1, 0 }, { 0, 0, -1 } };
	b.text = "access hole for the rail bolt, plugged";
	piece_bore(j->arena, j->part, b);
}

static struct hole bolt_hole(const struct job_rail_bolt *bolt)
{
	return (struct hole){ bolt->clearance, bolt->length / 2 };
}

static struct hole dowel_hole(const struct job_dowel *dowel)
{
	return (struct hole){ dowel->diameter, dowel->length / 2 + DOWEL_GLUE_ROOM };
}

static void add_bolt(const struct joint *j, double height)
{
	const struct job_rail_bolt *bolt = &j->stretch->rod->job->rail.bolt;
	struct hole h = bolt_hole(bolt);
	double at_cut = height_at_cut(j, h, height);
	struct bore b = { .at = mouth(j, at_cut), .size = bore_round(h.diameter, h.depth) };
	b.mate = bore_round(bolt->pilot, bolt->length / 2);
	b.fixing = FIXING_RAIL_BOLT;
	b.fixing_length = bolt->length;
	b.fixing_width = bolt->diameter;
	b.text = "rail bolt";
	piece_bore(j->arena, j->part, b);
	add_access_hole(j, at_cut);
}

static void add_dowel(const struct joint *j, double height)
{
	const struct job_dowel *dowel = &j->stretch->rod->job->rail.dowel;
	struct hole h = dowel_hole(dowel);
	struct bore b = dowel_bore((struct dowel){ h.diameter, dowel->length, h.depth, h.depth });
	b.at = mouth(j, height_at_cut(j, h, height));
	b.text = "dowel, rail to newel";
	piece_bore(j->arena, j->part, b);
}

/* Two rails that meet at one newel have their bolts pass each other, with as much wood between the
 * two pilot holes as one is wide: over the other one, or under it in a rail that is not deep. */
static double bolt_height(const struct joint *j, struct range r)
{
	const struct job_rail_bolt *bolt = &j->stretch->rod->job->rail.bolt;
	double past = 2 * bolt->pilot;
	bool goes_under = USUAL_HEIGHT + past > r.high && USUAL_HEIGHT - past >= r.low;
	if (bolt->height > 0)
		return bolt->height;
	if (!j->is_met)
		return clamp(USUAL_HEIGHT, r);
	return clamp(USUAL_HEIGHT + (goes_under ? -past : past), r);
}

/* As high over the bolt as there is wood: under it is the access hole.  0: there is no room. */
static double dowel_height(const struct joint *j, double bolt)
{
	const struct job_rail *rail = &j->stretch->rod->job->rail;
	struct hole h = dowel_hole(&rail->dowel), under = bolt_hole(&rail->bolt);
	struct range r = range_of(j, h);
	double apart = height_at_cut(j, h, r.high) - height_at_cut(j, under, bolt);
	double wanted = (h.diameter + under.diameter) / 2 + WOOD;
	return has_room(r) && apart >= wanted ? r.high : 0;
}

static bool drill_bolt(const struct joint *j, enum rail_joint kind)
{
	const struct job_rail *rail = &j->stretch->rod->job->rail;
	struct range r = range_of(j, bolt_hole(&rail->bolt));
	double height = bolt_height(j, r);
	if (!has_room(r) || height < r.low - NEAR_ENOUGH || height > r.high + NEAR_ENOUGH)
		return false;
	double dowel = kind == RAIL_JOINT_BOLT_AND_DOWEL ? dowel_height(j, height) : 0;
	if (kind == RAIL_JOINT_BOLT_AND_DOWEL && dowel <= 0)
		return false;
	add_bolt(j, height);
	if (dowel > 0)
		add_dowel(j, dowel);
	return true;
}

static bool drill_dowels(const struct joint *j)
{
	const struct job_dowel *dowel = &j->stretch->rod->job->rail.dowel;
	struct range r = range_of(j, dowel_hole(dowel));
	if (!has_room(r))
		return false;
	if (r.high - r.low < DOWELS_APART * dowel->diameter) {
		add_dowel(j, (r.low + r.high) / 2);
		return true;
	}
	add_dowel(j, r.low);
	add_dowel(j, r.high);
	return true;
}

/* A bolt, else dowels, with wood enough round them; where there is not so much, dowels first, for
 * they take less of it.  A height that the job gives is the carpenter's choice. */
static void drill_by_room(const struct joint *j)
{
	struct joint roomy = *j;
	roomy.wood = j->stretch->rod->job->rail.bolt.height > 0 ? WOOD : ROOMY;
	if (drill_bolt(&roomy, RAIL_JOINT_BOLT))
		return;
	roomy.wood = ROOMY;
	if (!drill_dowels(&roomy) && !drill_dowels(j))
		drill_bolt(j, RAIL_JOINT_BOLT);
}

static bool drill(const struct joint *j)
{
	enum rail_joint kind = j->stretch->rod->job->rail.joint;
	switch (kind) {
	case RAIL_JOINT_BY_ROOM: drill_by_room(j); return true;
	case RAIL_JOINT_BOLT:
	case RAIL_JOINT_BOLT_AND_DOWEL: return drill_bolt(j, kind);
	case RAIL_JOINT_DOWELS: return drill_dowels(j);
	case RAIL_JOINT_NONE: return true;
	}
	return true;
}

/* What a newel has to be thick for. */
static double deepest_in_newel(const struct job_rail *rail)
{
	switch (rail->joint) {
	case RAIL_JOINT_BY_ROOM:
	case RAIL_JOINT_BOLT:
	case RAIL_JOINT_BOLT_AND_DOWEL: return rail->bolt.length / 2;
	case RAIL_JOINT_DOWELS: return rail->dowel.length / 2 + DOWEL_GLUE_ROOM;
	case RAIL_JOINT_NONE: return 0;
	}
	return 0;
}

static bool fits_newel(const struct rod *r, struct diags *d)
{
	const struct job *job = r->job;
	double room = job->newels.section - WOOD;
	if (deepest_in_newel(&job->rail) <= room)
		return true;
	diag_error(d, rod_pos(r, job->newels.src, "section"),
		"take a shorter bolt (rail.bolt.length), or dowels (rail.joint)",
		"a rail bolt does not find room for its half in a newel of %s",
		length_say(d->arena, job_lettering(job), job->newels.section));
	return false;
}

static void complain(const struct stretch *s, struct diags *d)
{
	const struct job *job = s->rod->job;
	bool dowels = job->rail.joint == RAIL_JOINT_DOWELS;
	const char *key = node_has(job->rail.bolt.src, "height") && !dowels ? "height" : NULL;
	struct pos at =
		key ? node_pos(job->rail.bolt.src, key) : rod_pos(s->rod, job->rail.src, "joint");
	diag_error(d, at, "take another height, shorter ones, or a deeper rail",
		"rail: its %s come out of the wood of a rail %s deep", dowels ? "dowels" : "bolts",
		length_say(d->arena, job_lettering(job), job->rail.depth));
}

bool rail_end_has_newel(struct rail_end e)
{
	switch (e.kind) {
	case RAIL_END_NEWEL:
	case RAIL_END_TREAD_NEWEL:
	case RAIL_END_STRING_NEWEL:
	case RAIL_END_FLOOR_NEWEL:
	case RAIL_END_MET_NEWEL: return true;
	case RAIL_END_PLUMB:
	case RAIL_END_WALL: return false;
	}
	return false;
}

void rail_joints_drill(struct arena *a, struct part *p, const struct stretch *s, struct diags *d)
{
	struct joint foot = { a, p, s, 1, 0, s->foot.kind == RAIL_END_MET_NEWEL, WOOD };
	struct joint head = { a, p, s, -1, (s->to - s->from) / s->cosine, false, WOOD };
	bool at_foot = rail_end_has_newel(s->foot), at_head = rail_end_has_newel(s->head);
	if ((!at_foot && !at_head) || !fits_newel(s->rod, d))
		return;
	if ((at_foot && !drill(&foot)) || (at_head && !drill(&head)))
		complain(s, d);
}
