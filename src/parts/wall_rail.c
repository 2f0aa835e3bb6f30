#include "parts/wall_rail.h"

#include "parts/fixing.h"

#include "parts/piece.h"

/*
 * The rail along a wall, returned to the wall at both ends.  A return is a short piece of the same
 * section, rolled with the rake, so that a plain mitre of 45 degrees across the rail closes it.
 *
 *   ____________________________   wall
 *   |   |                  |   |
 *   | / ____________________ \ |   return, mitred
 *   |/________________________\|   rail, seen square to its slope
 */

/* The dowel across a mitre (common practice). */
#define DOWEL_DEEP 14.0   /* across the mitre, at most */
#define DOWEL_SHALLOW 8.0 /* less holds nothing: the mitre is glued only */
#define WOOD 2.0          /* left round a hole */

enum end { LOWER, UPPER };

struct making {
	struct pieces *list;
	const struct rod *rod;
	const struct wall_run *run;
	struct rail_profile profile;
	double wall; /* which way the wall is: 1 at +y of the rail, -1 at -y */
};

static double sign_of(enum end end)
{
	return end == LOWER ? 1 : -1;
}

/* x of the rail's own end. */
static double end_x(const struct making *m, enum end end)
{
	return end == LOWER ? 0 : m->run->length;
}

/* ---- the dowel across a mitre ---- */

/* As deep as the slimmest part of the section leaves wood on both sides. */
static double dowel_depth(const struct making *m)
{
	double half = m->profile.width / 2 - m->profile.recess.depth;
	double radius = m->rod->job->rail.dowel.diameter / 2;
	return fmin(DOWEL_DEEP, sqrt(2) * (half - WOOD) - radius);
}

/* In the middle of the mitre, out of the rail towards its return. */
static struct frame dowel_mouth(const struct making *m, enum end end)
{
	double s = sign_of(end), half = m->profile.width / 2;
	struct frame f = { .u = { 0, 0, 1 } };
	f.origin = vec3(end_x(m, end) + s * half, 0, m->profile.depth / 2);
	f.w = vec3(-s * sqrt(0.5), m->wall * sqrt(0.5), 0);
	f.v = vec3_cross(f.w, f.u);
	return f;
}

static void add_dowel(const struct making *m, struct part *p, enum end end)
{
	double depth = dowel_depth(m), diameter = m->rod->job->rail.dowel.diameter;
	if (depth < DOWEL_SHALLOW)
		return;
	struct bore b = dowel_bore((struct dowel){ diameter, 2 * depth, depth, depth });
	b.at = dowel_mouth(m, end);
	b.text = "dowel across the mitre of a return";
	piece_bore(m->list->arena, p, b);
}

/* ---- the pieces ---- */

static const struct rail *facts(const struct making *m)
{
	const struct rod *r = m->rod;
	const struct wall_run *n = m->run;
	struct rail *f = NEW(m->list->arena, struct rail);
	double rise = n->length * sin(r->pitch), deep = n->spec->depth / r->cosine;
	f->profile = m->profile;
	f->pitch = r->pitch;
	f->height = n->spec->height;
	f->between = n->length * r->cosine;
	f->foot.under = n->under;
	f->head.under = n->under + rise;
	f->foot.top = f->foot.under + deep;
	f->head.top = f->head.under + deep;
	return f;
}

/* Cut off along the two planes, which stand square to its back and underside. */
static void set_moulding(struct part *p, const struct making *m, struct end_plane from,
	struct end_plane to)
{
	struct arena *a = m->list->arena;
	double half = m->profile.width / 2, lean0 = from.by_y * half, lean1 = to.by_y * half;
	struct path o = path_begin(a, 4);
	path_to(&o, from.at - lean0, -half);
	path_to(&o, to.at - lean1, -half);
	path_to(&o, to.at + lean1, half);
	path_to(&o, from.at + lean0, half);
	double length = to.at + fabs(lean1) - (from.at - fabs(lean0));
	p->section = m->profile.outline;
	p->outline = path_close(o);
	p->size = (struct part_size){ length, m->profile.width, m->profile.depth };
	p->stuff = STUFF_MOULDING;
	p->grain = GRAIN_ALONG;
	p->solids = solid_strip(a, profile_facets(a, p->section), from, to);
}

/* Its long edge is on the room's side. */
static void body_add(const struct making *m)
{
	double half = m->profile.width / 2, length = m->run->length;
	struct part *p = piece_add(m->list, "wall rail", m->rod->job->material.rail,
		wall_run_axes(m->rod, m->run));
	set_moulding(p, m, (struct end_plane){ half, m->wall, 0 },
		(struct end_plane){ length - half, -m->wall, 0 });
	p->rail = facts(m);
	p->splice = SPLICE_BOLT;
	p->start.mitre = p->end.mitre = PI / 4;
	add_dowel(m, p, LOWER);
	add_dowel(m, p, UPPER);
}

/* x from the wall out, z with the rail. */
static void return_add(const struct making *m, enum end end)
{
	double half = m->profile.width / 2, clear = m->run->spec->clearance, s = sign_of(end);
	struct frame f = { .u = { 0, -m->wall, 0 }, .v = { m->wall, 0, 0 }, .w = { 0, 0, 1 } };
	f.origin = vec3(end_x(m, end) + s * half, m->wall * m->run->middle, 0);
	struct part *p = piece_add(m->list, "wall rail return", m->rod->job->material.rail,
		frame_compose(wall_run_axes(m->rod, m->run), f));
	set_moulding(p, m, (struct end_plane){ 0, 0, 0 },
		(struct end_plane){ clear + half, -s * m->wall, 0 });
	p->end.mitre = PI / 4;
	p->note = "square end against the wall";
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_wall_rail };
	struct rod r = rod_make(s, f);
	struct wall_runs runs = wall_runs_make(a, &r, d);
	for (int i = 0; i < runs.n; i++) {
		const struct wall_run *n = &runs.run[i];
		struct making m = { &list, &r, n, profile_make(a, n->sizes), wall_run_wall(n) };
		list.unit = i + 1;
		body_add(&m);
		return_add(&m, LOWER);
		return_add(&m, UPPER);
	}
	return list.first;
}

const struct part_kind part_wall_rail = { "wall rail", "W", make };
