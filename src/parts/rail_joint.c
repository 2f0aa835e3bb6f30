#include "parts/rail_joint.h"

#include "parts/rail_holes.h"

/*
 * How a rail is held to a newel.  Where the job leaves it to the room there is,
 * the first of these that finds wood enough:
 *
 *      .---.       .---.       .---.       .-------.
 *     (  o  )     (     )     (  o  )     ( o   o )
 *      \ O /       \ O /       \   /       '-----'
 *      /   \       /   \       / o \
 *     bolt and     a bolt,     two dowels, two dowels
 *     dowel        or a        one over    side by
 *                  smaller     the other   side
 *
 * A bolt draws the joint tight, a dowel keeps the rail from turning: two of
 * either hold a guard (common practice).  One dowel alone does not, and is told of.
 */

#define DOWELS_APART 2.0 /* centre to centre, in diameters */

/* 1/4 by 3 in, with its drills: from memory. */
struct job_rail_bolt rail_bolt_smaller(const struct job *job)
{
	if (job->about.units == UNITS_INCHES)
		return (struct job_rail_bolt){ .length = 3 * MM_PER_INCH,
			.diameter = MM_PER_INCH / 4,
			.pilot = MM_PER_INCH * 3 / 16,
			.clearance = MM_PER_INCH * 5 / 16,
			.access = MM_PER_INCH * 5 / 4,
			.access_diameter = MM_PER_INCH * 3 / 4 };
	return (struct job_rail_bolt){ .length = 76,
		.diameter = 6,
		.pilot = 4.5,
		.clearance = 8,
		.access = 32,
		.access_diameter = 20 };
}

static const struct job_rail *rail_of(const struct rail_cut *c)
{
	return &c->stretch->rod->job->rail;
}

static struct rail_cut with_wood(const struct rail_cut *c, double wood)
{
	struct rail_cut other = *c;
	other.wood = wood;
	return other;
}

static double clamp(double x, struct hole_range r)
{
	return fmin(fmax(x, r.low), r.high);
}

/* Rails that meet may lie at other heights: where that would bring their bolts together this one is
 * moved on, over the other or under it.  NAN: there is no room. */
static double past_other(const struct rail_cut *c, struct hole_range r, double height)
{
	const struct stretch *s = c->stretch;
	const struct job *job = s->rod->job;
	double past = 2 * c->bolt.pilot, under = stretch_rail_under(s, s->from);
	double off = under + hole_at_cut(c, bolt_hole(&c->bolt), height) - c->met;
	bool reaches = job->rail.bolt.length + c->bolt.pilot > job->newels.section;
	if (isnan(c->met) || !reaches || fabs(off) >= past - NEAR_ENOUGH)
		return height;
	double over = height + (past - off) * s->cosine, below = height - (past + off) * s->cosine;
	if (over <= r.high)
		return over;
	return below >= r.low ? below : NAN;
}

/* Two rails that meet at one newel have their bolts pass each other, with as much wood between the
 * two pilot holes as one is wide: over the other one, or under it in a rail that is not deep. */
static double bolt_height(const struct rail_cut *c, struct hole_range r)
{
	double past = 2 * c->bolt.pilot;
	bool goes_under = BOLT_HEIGHT + past > r.high && BOLT_HEIGHT - past >= r.low;
	if (c->bolt.height > 0)
		return c->bolt.height;
	if (!c->is_met)
		return clamp(BOLT_HEIGHT, r);
	return past_other(c, r, clamp(BOLT_HEIGHT + (goes_under ? -past : past), r));
}

/* As high over the bolt as there is wood: under it is the access hole.  0: there is no room. */
static double dowel_height(const struct rail_cut *c, double bolt)
{
	struct hole h = dowel_hole(&rail_of(c)->dowel), under = bolt_hole(&c->bolt);
	struct hole_range r = hole_range(c, h);
	double apart = hole_at_cut(c, h, r.high) - hole_at_cut(c, under, bolt);
	double wanted = (h.diameter + under.diameter) / 2 + HOLE_WOOD;
	return hole_has_room(r) && apart >= wanted ? r.high : 0;
}

static bool is_in_range(double height, struct hole_range r)
{
	return hole_has_room(r) && height >= r.low - NEAR_ENOUGH && height <= r.high + NEAR_ENOUGH;
}

static bool is_too_narrow(const struct rail_cut *c, double height)
{
	return !rail_bolt_access_fits(c->part->section, &c->bolt, height);
}

static bool drill_bolt(const struct rail_cut *c, enum rail_joint kind)
{
	struct hole_range r = hole_range(c, bolt_hole(&c->bolt));
	double height = bolt_height(c, r);
	if (!is_in_range(height, r) || is_too_narrow(c, height))
		return false;
	double dowel = kind == RAIL_JOINT_BOLT_AND_DOWEL ? dowel_height(c, height) : 0;
	if (kind == RAIL_JOINT_BOLT_AND_DOWEL && dowel <= 0)
		return false;
	rail_bolt_add(c, height);
	if (dowel > 0)
		rail_dowel_add(c, dowel, 0);
	return true;
}

static bool drill_over_each_other(const struct rail_cut *c)
{
	const struct job_dowel *dowel = &rail_of(c)->dowel;
	struct hole_range r = hole_range(c, dowel_hole(dowel));
	if (r.high - r.low < DOWELS_APART * dowel->diameter)
		return false;
	rail_dowel_add(c, r.low, 0);
	rail_dowel_add(c, r.high, 0);
	return true;
}

/* At a quarter of the width, or as far out as rail and newel have wood. */
static bool drill_side_by_side(const struct rail_cut *c)
{
	const struct job *job = c->stretch->rod->job;
	struct hole h = dowel_hole(&job->rail.dowel);
	struct hole_range r = hole_range(c, h);
	double height = (r.low + r.high) / 2, newel = job->newels.section / 2;
	if (!hole_has_room(r))
		return false;
	double aside = fmin(job->rail.width / 4, hole_aside(c, h, height));
	aside = fmin(aside, newel - h.diameter / 2 - c->wood);
	if (2 * aside < DOWELS_APART * h.diameter - NEAR_ENOUGH)
		return false;
	rail_dowel_add(c, height, -aside);
	rail_dowel_add(c, height, aside);
	return true;
}

static bool drill_two_dowels(const struct rail_cut *c)
{
	struct rail_cut roomy = with_wood(c, HOLE_ROOMY);
	return drill_over_each_other(&roomy) || drill_side_by_side(&roomy) ||
		drill_over_each_other(c) || drill_side_by_side(c);
}

/* What came of it; the worse the later. */
enum outcome { HELD, HELD_BY_ONE, NO_WOOD };

static enum outcome drill_dowels(const struct rail_cut *c)
{
	struct hole_range r = hole_range(c, dowel_hole(&rail_of(c)->dowel));
	if (drill_two_dowels(c))
		return HELD;
	if (!hole_has_room(r))
		return NO_WOOD;
	rail_dowel_add(c, (r.low + r.high) / 2, 0);
	return HELD_BY_ONE;
}

bool rail_bolt_may_be_smaller(const struct job_rail *rail)
{
	const struct node *src = rail->bolt.src;
	return !node_has(src, "length") && !node_has(src, "diameter") &&
		!node_has(src, "clearance") && !node_has(src, "height");
}

static struct rail_cut with_smaller_bolt(const struct rail_cut *c)
{
	struct rail_cut other = with_wood(c, HOLE_ROOMY);
	other.bolt = rail_bolt_smaller(c->stretch->rod->job);
	return other;
}

/* A dowel beside the bolt is short of what comes from the newel's other side. */
static bool newel_takes_both(const struct rail_cut *c)
{
	const struct job *job = c->stretch->rod->job;
	return job->newels.section >=
		bolt_hole(&c->bolt).depth + dowel_hole(&job->rail.dowel).depth + HOLE_WOOD;
}

/* A height that the job gives is the carpenter's choice. */
static bool drill_bolt_by_room(const struct rail_cut *c)
{
	struct rail_cut roomy = with_wood(c, c->bolt.height > 0 ? HOLE_WOOD : HOLE_ROOMY);
	struct rail_cut smaller = with_smaller_bolt(c);
	if (!c->at_wall && newel_takes_both(c) && drill_bolt(&roomy, RAIL_JOINT_BOLT_AND_DOWEL))
		return true;
	return drill_bolt(&roomy, RAIL_JOINT_BOLT) ||
		(rail_bolt_may_be_smaller(rail_of(c)) && drill_bolt(&smaller, RAIL_JOINT_BOLT));
}

/* As the job says, with a smaller bolt than the usual one where it says nothing of its size. */
static enum outcome drill_as_asked(const struct rail_cut *c, enum rail_joint kind)
{
	struct rail_cut smaller = with_smaller_bolt(c);
	smaller.wood = HOLE_WOOD;
	if (drill_bolt(c, kind) ||
		(rail_bolt_may_be_smaller(rail_of(c)) && drill_bolt(&smaller, kind)))
		return HELD;
	return NO_WOOD;
}

static enum outcome drill_by_room(const struct rail_cut *c)
{
	return drill_bolt_by_room(c) ? HELD : drill_dowels(c);
}

static enum outcome drill(const struct rail_cut *c)
{
	enum rail_joint kind = rail_of(c)->joint;
	if (c->at_wall && kind != RAIL_JOINT_NONE) {
		drill_bolt_by_room(c); /* else as its note says */
		return HELD;
	}
	switch (kind) {
	case RAIL_JOINT_BY_ROOM: return drill_by_room(c);
	case RAIL_JOINT_BOLT:
	case RAIL_JOINT_BOLT_AND_DOWEL: return drill_as_asked(c, kind);
	case RAIL_JOINT_DOWELS: return drill_dowels(c);
	case RAIL_JOINT_NONE: return HELD;
	}
	return HELD;
}

/* What a newel has to be thick for, and what else would do. */
struct half {
	double deep;
	const char *name, *mend;
};

static struct half deepest_in_newel(const struct job_rail *rail)
{
	struct half bolt = { rail->bolt.length / 2, "rail bolt",
		"take a shorter bolt (rail.bolt.length), or dowels (rail.joint)" };
	struct half dowel = { dowel_hole(&rail->dowel).depth, "dowel",
		"take a shorter dowel (rail.dowel.length)" };
	switch (rail->joint) {
	case RAIL_JOINT_BY_ROOM:
	case RAIL_JOINT_BOLT: return bolt;
	case RAIL_JOINT_BOLT_AND_DOWEL: return dowel.deep > bolt.deep ? dowel : bolt;
	case RAIL_JOINT_DOWELS: return dowel;
	case RAIL_JOINT_NONE: break;
	}
	return (struct half){ 0 };
}

static bool fits_newel(const struct rod *r, struct diags *d)
{
	const struct job *job = r->job;
	double room = job->newels.section - HOLE_WOOD;
	struct half half = deepest_in_newel(&job->rail);
	if (half.deep <= room)
		return true;
	diag_error(d, rod_pos(r, job->newels.src, "section"),
		arena_printf(d->arena, "%s, or %s",
			job_write_least(d->arena, job, "newels.section", half.deep + HOLE_WOOD),
			half.mend),
		"a %s does not find room for its half in a newel of %s", half.name,
		length_say(d->arena, job_lettering(job), job->newels.section));
	return false;
}

/* The height that a bolt is given may be all that is wrong, where one that is lettered has room. */
static const char *bolt_mend(const struct rail_cut *c, struct diags *d)
{
	const struct job *job = c->stretch->rod->job;
	struct hole_range r = hole_range(c, bolt_hole(&c->bolt));
	struct lettering l = job_lettering(job);
	double height = job->rail.bolt.height;
	bool has_room = length_on_graduation(l, r.low, 1) <= length_on_graduation(l, r.high, -1);
	if (job->rail.joint == RAIL_JOINT_BOLT && height > 0 && has_room)
		return height < r.low ? job_write_least(d->arena, job, "rail.bolt.height", r.low)
				      : job_write_most(d->arena, job, "rail.bolt.height", r.high);
	return "write rail.joint: by_room, or take a shorter bolt or a deeper rail";
}

static void complain_of_width(const struct rail_cut *c, struct diags *d)
{
	const struct job *job = c->stretch->rod->job;
	struct lettering l = job_lettering(job);
	diag_error(d, rod_pos(c->stretch->rod, job->rail.src, "width"),
		"write rail.joint: by_room, or take a smaller bolt or a wider rail",
		"rail: a bolt's access hole of %s leaves no wood beside it in a rail %s wide",
		length_say(d->arena, l, c->bolt.access_diameter),
		length_say(d->arena, l, job->rail.width));
}

static void complain_of_other(const struct rail_cut *c, struct diags *d)
{
	diag_error(d, rod_pos(c->stretch->rod, c->stretch->rod->job->rail.src, "joint"),
		"write rail.joint: by_room, or let them meet higher or lower",
		"rail: the bolts of two rails run into each other in the newel where they meet");
}

static void complain(const struct rail_cut *c, struct diags *d)
{
	const struct stretch *s = c->stretch;
	const struct job *job = s->rod->job;
	bool dowels = job->rail.joint == RAIL_JOINT_DOWELS;
	struct hole_range r = hole_range(c, bolt_hole(&c->bolt));
	double height = bolt_height(c, r);
	if (!dowels && isnan(height)) {
		complain_of_other(c, d);
		return;
	}
	if (!dowels && is_in_range(height, r) && is_too_narrow(c, height)) {
		complain_of_width(c, d);
		return;
	}
	const char *key = node_has(job->rail.bolt.src, "height") && !dowels ? "height" : NULL;
	struct pos at =
		key ? node_pos(job->rail.bolt.src, key) : rod_pos(s->rod, job->rail.src, "joint");
	diag_error(d, at, dowels ? "take shorter ones, or a deeper rail" : bolt_mend(c, d),
		"rail: its %s come out of the wood of a rail %s deep", dowels ? "dowels" : "bolts",
		length_say(d->arena, job_lettering(job), job->rail.depth));
}

/* On the job's graduation, never less. */
static double rounded_up(const struct job *job, double mm)
{
	double unit = job->about.units == UNITS_INCHES ? MM_PER_INCH : 1;
	double step = unit / job->about.fraction;
	return ceil(mm / step - NEAR_ENOUGH) * step;
}

/* How it is held, and what would hold it. */
static void warn(const struct rail_cut *c, enum outcome o, struct diags *d)
{
	const struct job *job = c->stretch->rod->job;
	struct lettering l = job_lettering(job);
	struct rail_cut smaller = with_smaller_bolt(c), own = with_wood(c, HOLE_ROOMY);
	const struct rail_cut *bolted = rail_bolt_may_be_smaller(&job->rail) ? &smaller : &own;
	double deep = hole_least_depth(bolted, bolt_hole(&bolted->bolt));
	diag_warning(d, rod_pos(c->stretch->rod, job->rail.src, "depth"),
		arena_printf(d->arena, "a rail at least %s deep%s takes a bolt%s",
			length_say(d->arena, l, rounded_up(job, deep)),
			is_too_narrow(bolted, BOLT_HEIGHT) ? ", and wider," : "",
			job->rail.joint == RAIL_JOINT_DOWELS ? " (rail.joint: by_room)" : ""),
		"rail: %s deep and %s wide it %s at a newel: too weak for a guard",
		length_say(d->arena, l, job->rail.depth), length_say(d->arena, l, job->rail.width),
		o == NO_WOOD ? "has no wood for bolt or dowel" : "is held by a single dowel");
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

static bool is_fixed(struct rail_end e)
{
	return e.kind == RAIL_END_WALL || rail_end_has_newel(e);
}

/* The level of the bolt that another rail has in the newel at this one's foot; NAN: none has. */
static double level_met(const struct part *rails, const struct stretch *s)
{
	double half = s->rod->job->newels.section / 2, level = NAN;
	double middle = s->foot.newel_x + half;
	for (const struct part *p = rails; p; p = p->next)
		for (const struct bore *b = p->bores; b; b = b->next) {
			struct vec3 mouth = frame_place(p->places[0], b->at.origin);
			struct vec3 at = frame_place_back(s->axes, mouth);
			bool is_here = fabs(at.x - middle) <= half + NEAR_ENOUGH &&
				fabs(at.y) <= half + NEAR_ENOUGH;
			if (b->fixing == FIXING_RAIL_BOLT && is_here)
				level = at.z;
		}
	return level;
}

enum rail_held rail_joints_drill(struct pieces *rails, const struct stretch *s,
	enum rail_held before, struct diags *d)
{
	struct rail_cut foot = { .arena = rails->arena,
		.part = rails->last,
		.stretch = s,
		.inward = 1,
		.wood = HOLE_WOOD };
	foot.bolt = s->rod->job->rail.bolt;
	struct rail_cut head = foot;
	foot.is_met = s->foot.kind == RAIL_END_MET_NEWEL;
	foot.met = level_met(rails->first, s);
	foot.at_wall = s->foot.kind == RAIL_END_WALL;
	head.at_wall = s->head.kind == RAIL_END_WALL;
	head.inward = -1;
	head.edge = (s->to - s->from) / s->cosine;
	bool any = rail_end_has_newel(s->foot) || rail_end_has_newel(s->head);
	if (any && !fits_newel(s->rod, d))
		return before;
	enum outcome at_foot = is_fixed(s->foot) ? drill(&foot) : HELD;
	enum outcome at_head = is_fixed(s->head) ? drill(&head) : HELD;
	enum outcome worst = at_foot > at_head ? at_foot : at_head;
	if (worst == HELD)
		return before;
	if (worst == NO_WOOD && s->rod->job->rail.joint != RAIL_JOINT_BY_ROOM)
		complain(&foot, d);
	else if (before == RAIL_HELD)
		warn(&foot, worst, d);
	return RAIL_HELD_WEAKLY;
}
