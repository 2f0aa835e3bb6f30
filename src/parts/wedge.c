#include "lists/yard.h"
#include "parts/channel.h"

/*
 * Wedges of housed stringers: one under every tread, one behind every riser, on
 * either side.  The housing's own taper gives them their shape.
 *
 *      thin                      thick
 *       _____________________________
 *      |                             |   straight edge: against tread or riser
 *      |____________                 |
 *                   ------______     |
 *                               -----|
 *
 *         two out of one strip, head to tail, so that none of it is waste:
 *       _____________________________
 *      |____________                 |
 *      |            ------______     |
 *      |_______________________------|
 */

/* A wedge as it is driven: at the thin end of its straight edge, along it from thin to thick, and
 * from it into the housing; in the flight's axes, between two levels of y. */
struct driven {
	struct wedge w;
	struct vec thin, along, in;
	const char *name;
};

static struct outline outline_of(struct arena *a, struct wedge w)
{
	struct path p = path_begin(a, 4);
	path_to(&p, 0, 0);
	path_to(&p, w.length, 0);
	path_to(&p, w.length, w.thick);
	path_to(&p, 0, w.thin);
	return path_close(p);
}

/* Into the inner face of the plank, the faces of the wedge flush with it. */
static struct frame place_of(const struct channel *c, const struct driven *d)
{
	double depth = c->rod->job->stringers.housing_depth;
	double y0 = c->at->side->hand == HAND_RIGHT ? c->at->y1 - depth : c->at->y0;
	struct frame f = { .u = { d->along.x, 0, d->along.y }, .v = { d->in.x, 0, d->in.y } };
	f.w = vec3_cross(f.u, f.v);
	f.origin = vec3(d->thin.x, f.w.y > 0 ? y0 : y0 + depth, d->thin.y);
	return frame_compose(c->rod->flight->frame, f);
}

static void taper_add(struct arena *a, struct part *p, const struct channel *c)
{
	double angle = atan(1 / c->taper);
	piece_feature(a, p,
		(struct feature){ .kind = FEATURE_TAPER,
			.angle = angle,
			.text = arena_printf(a, "tapers 1 in %g, %s from the straight edge",
				c->taper, angle_letter(a, angle)) });
}

static void wedge_add(struct pieces *list, const struct channel *c, struct driven d)
{
	struct arena *a = list->arena;
	const struct job *job = c->rod->job;
	struct lettering l = job_lettering(job);
	double depth = job->stringers.housing_depth;
	if (d.w.length < NEAR_ENOUGH || d.w.thin < NEAR_ENOUGH)
		return;
	struct part *p = piece_add(list, d.name, job->material.stringers, place_of(c, &d));
	p->size = (struct part_size){ d.w.length, d.w.thick, depth };
	p->outline = outline_of(a, d.w);
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, depth);
	p->makeup.gang = 2;
	p->makeup.gang_width = d.w.thin + d.w.thick + job->stock.kerf;
	taper_add(a, p, c);
	p->note = arena_printf(a,
		"two head to tail out of a straight-grained strip %s x %s, whichever the set-ups "
		"plane the board to, on a tapering jig that holds them down; glued, driven tight",
		length_say(a, ply_lettering(job), ply_planed(l.units, p->makeup.gang_width)),
		length_say(a, l, depth));
}

/* Driven forwards under its tread, from the back. */
static void tread_wedge_add(struct pieces *list, const struct channel *c, int step)
{
	double front = channel_corner(c, step, step).x;
	double under = channel_tread_top(c->rod, step) - c->rod->tread;
	wedge_add(list, c,
		(struct driven){ channel_tread_wedge(c, step), vec(front, under), vec(1, 0),
			vec(0, -1), "tread wedge" });
}

/* Driven upwards behind its riser, from below, towards the wedge of the tread. */
static void riser_wedge_add(struct pieces *list, const struct channel *c, int step)
{
	const struct rod *r = c->rod;
	struct wedge w = channel_riser_wedge(c, step);
	double back = channel_riser_face(r, step) + r->riser;
	double low = step > 1 ? channel_tread_top(r, step - 1) - r->tread : r->foot;
	wedge_add(list, c,
		(struct driven){ w, vec(back, low + w.length), vec(0, -1), vec(1, 0),
			"riser wedge" });
}

/* The riser under the upper floor stands against the header and has none. */
static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_wedge };
	struct rod r = rod_make(s, f);
	(void)d;
	for (int i = 0; i < 2; i++) {
		struct stand at = side_stand(&r, i ? HAND_LEFT : HAND_RIGHT);
		struct channel c = channel_make(a, &at);
		if (at.side->kind != STRINGER_HOUSED || r.riser <= 0)
			continue;
		for (int step = 1; step <= r.steps; step++) {
			tread_wedge_add(&list, &c, step);
			riser_wedge_add(&list, &c, step);
		}
	}
	return list.first;
}

const struct part_kind part_wedge = { "wedge", "V", make };
