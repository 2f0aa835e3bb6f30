#include "parts/level_run.h"
#include "parts/piece.h"

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

static void rail_add(struct pieces *list, const struct stretch *s)
{
	struct arena *a = list->arena;
	const struct job *job = s->rod->job;
	double width = job->rail.width, depth = job->rail.depth, sine = sin(s->pitch);
	double edge = (s->to - s->from) / s->cosine, lap = depth * s->slope;
	struct frame f = { .u = { s->cosine, 0, sine }, .v = { -sine, 0, s->cosine } };
	f.w = vec3(0, -1, 0);
	f.origin = vec3(s->from, width / 2, stretch_rail_under(s, s->from));
	struct part *p =
		piece_add(list, "rail", job->material.balustrade, frame_compose(s->axes, f));
	struct path o = path_begin(a, 4);
	path_to(&o, 0, 0);
	path_to(&o, edge, 0);
	path_to(&o, edge + lap, depth);
	path_to(&o, lap, depth);
	p->outline = path_close(o);
	p->size = (struct part_size){ edge + lap, depth, width };
	p->start.mitre = p->end.mitre = s->pitch;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, width);
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

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_rail };
	struct rod r = rod_make(s, f);
	level_runs_check(a, &r, d);
	for (const struct stretch *k = stretches_make(a, &r); k; k = k->next)
		if (has_room(k, d))
			rail_add(&list, k);
	return list.first;
}

const struct part_kind part_rail = { "rail", "H", make };
