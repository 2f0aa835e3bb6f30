#include "parts/piece.h"

/*
 * The rail on the rake, plumb cut at both ends.
 *
 *              ______   long point to long point
 *            .'    .'|
 *          .'    .'  | plumb cut
 *        .'    .'
 *       |    .'  depth, square to the rail
 *       |  .'
 */

static void rail_add(struct pieces *list, const struct rod *r, const struct side *side)
{
	struct arena *a = list->arena;
	double width = r->job->rail.width, depth = r->job->rail.depth;
	double x = side->foot.x, sine = sin(r->pitch);
	double under = rod_nosing_z(r, x) + r->job->rail.height - depth / r->cosine;
	double edge = (side->head.x - x) / r->cosine, lap = depth * r->slope;
	struct frame f = { .u = { r->cosine, 0, sine }, .v = { -sine, 0, r->cosine } };
	f.w = vec3(0, -1, 0);
	f.origin = vec3(x, rod_y(r, side, side->rail) + width / 2, under);
	struct part *p = piece_add(list, "rail", r->job->material.balustrade,
		frame_compose(r->flight->frame, f));
	struct path o = path_begin(a, 4);
	path_to(&o, 0, 0);
	path_to(&o, edge, 0);
	path_to(&o, edge + lap, depth);
	path_to(&o, lap, depth);
	p->outline = path_close(o);
	p->size = (struct part_size){ edge + lap, depth, width };
	p->start.mitre = p->end.mitre = r->pitch;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, width);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_rail };
	struct rod r = rod_make(s, f);
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r.sides[i];
		if (!side->is_open)
			continue;
		if (side->head.x - side->foot.x >= r.job->balusters.section)
			rail_add(&list, &r, side);
		else
			diag_error(d, rod_pos(&r, side->job->src, "from_step"),
				"open the side for more steps, or make it a wall",
				"open from step %d to step %d there is no room for a rail",
				side->from, side->to);
	}
	return list.first;
}

const struct part_kind part_rail = { "rail", "H", make };
