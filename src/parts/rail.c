#include "parts/level_run.h"
#include "parts/piece.h"
#include "parts/profile.h"
#include "parts/rail_joint.h"

/*
 * The rail of a stretch of balustrade, plumb cut at both ends.
 *
 *              ______   long point to long point
 *            .'    .'|
 *          .'    .'  | plumb cut
 *        .'    .'
 *       |    .'  depth, square to the rail
 *       |  .'
 */

static struct rail_meeting meeting(const struct stretch *s, struct rail_end e)
{
	struct rail_meeting m = { .newel = rail_end_has_newel(e) };
	m.top = stretch_rail_top(s, e.x);
	m.under = stretch_rail_under(s, e.x);
	return m;
}

static const struct rail *facts(struct arena *a, const struct stretch *s)
{
	const struct job_rail *job = &s->rod->job->rail;
	struct rail *f = NEW(a, struct rail);
	f->profile = profile_make(a, profile_of_rail(job));
	f->pitch = s->pitch;
	f->height = s->run ? s->run->height : job->height;
	f->between = s->to - s->from;
	f->cut_face = job->depth / s->cosine;
	f->foot = meeting(s, s->foot);
	f->head = meeting(s, s->head);
	return f;
}

/* Its own axes: x along the rail going up, y to the left, z up from the underside, square to it. */
static struct frame place_of(const struct stretch *s)
{
	double sine = sin(s->pitch);
	struct frame f = frame_at(s->from, 0, stretch_rail_under(s, s->from));
	f.u = vec3(s->cosine, 0, sine);
	f.w = vec3(-sine, 0, s->cosine);
	return frame_compose(s->axes, f);
}

static enum rail_held rail_add(struct pieces *list, const struct stretch *s, enum rail_held before,
	struct diags *d)
{
	struct arena *a = list->arena;
	const struct job *job = s->rod->job;
	double width = job->rail.width, depth = job->rail.depth;
	double edge = (s->to - s->from) / s->cosine, lap = depth * s->slope;
	struct part *p =
		piece_add(list, s->run ? "level rail" : "rail", job->material.rail, place_of(s));
	p->rail = facts(a, s);
	p->section = p->rail->profile.outline;
	p->outline = outline_box(a, 0, -width / 2, edge + lap, width / 2);
	p->size = (struct part_size){ edge + lap, width, depth };
	p->start.bevel = p->end.bevel = s->pitch;
	p->solids = solid_strip(a, profile_facets(a, p->section),
		(struct end_plane){ 0, 0, s->slope }, (struct end_plane){ edge, 0, s->slope });
	p->stuff = STUFF_MOULDING;
	p->grain = GRAIN_ALONG;
	p->splice = SPLICE_BOLT;
	if (s->foot.kind == RAIL_END_WALL || s->head.kind == RAIL_END_WALL)
		p->note = "the end at the wall scribed to it, and fixed to a stud or backing";
	return rail_joints_drill(list, s, before, d);
}

/* How wide a flat the infill asks for; 0: it does not come up to the rail itself. */
static double flat_wanted(const struct job *job)
{
	if (job->infill.subrail)
		return 0;
	switch (job->infill.kind) {
	case INFILL_PLAIN:
	case INFILL_BRACED: return job->balusters.thickness;
	case INFILL_PANEL: return job->infill.panel_thickness;
	case INFILL_BARS: return 0;
	}
	return 0;
}

static bool can_be_struck(const struct rod *r, struct arena *a, struct diags *d)
{
	const struct job_rail *rail = &r->job->rail;
	struct profile_fault wrong = profile_fault_of(profile_of_rail(rail));
	if (!wrong.key)
		return true;
	const char *path = arena_printf(a, "rail.%s", wrong.key);
	diag_error(d, rod_pos(r, rail->src, wrong.key),
		wrong.most > 0 ? job_write_most(a, r->job, path, wrong.most) : NULL, "%s: %s", path,
		wrong.text);
	return false;
}

/* Balusters and panels end at its underside. */
static bool has_flat(const struct rod *r, struct arena *a, struct diags *d)
{
	const struct job_rail *rail = &r->job->rail;
	struct lettering l = job_lettering(r->job);
	double wanted = flat_wanted(r->job), flat = profile_make(a, profile_of_rail(rail)).flat;
	if (flat >= wanted - NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(r, rail->src, "profile"),
		"write infill.subrail: yes, or make the rail wider or less deep",
		"rail: its underside is flat for %s, and what ends there is %s thick",
		length_say(a, l, flat), length_say(a, l, wanted));
	return false;
}

/* Is there any length to it? */
static bool has_room(const struct stretch *s, struct diags *d)
{
	const struct rod *r = s->rod;
	if (s->to - s->from >= r->job->balusters.section)
		return true;
	diag_error(d, rod_pos(r, s->side->job->src, "from_step"),
		"open the side for more steps, or make it a wall",
		"open from step %d to step %d there is no room for a rail", s->side->from,
		s->side->to);
	return false;
}

static bool any_made(const struct stretch *s)
{
	while (s && !stretch_is_made(s))
		s = s->next;
	return s != NULL;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_rail };
	struct rod r = rod_make(s, f);
	const struct stretch *first = stretches_make(a, &r);
	level_runs_check(a, &r, d);
	if (!any_made(first) || !can_be_struck(&r, a, d) || !has_flat(&r, a, d))
		return NULL;
	int before = d->errors;
	enum rail_held held = RAIL_HELD;
	/* what is wrong with several is said once */
	for (const struct stretch *k = first; k && d->errors == before; k = k->next)
		if (stretch_is_made(k) && has_room(k, d))
			held = rail_add(&list, k, held, d);
	return list.first;
}

const struct part_kind part_rail = { "rail", "H", make };
