#include "parts/cap.h"

#include "parts/fixing.h"

/*
 * Caps: a square block on the post, flat, with its upper edge chamfered, or sawn
 * to a pyramid.  The slopes of a pyramid, drawn out, come down to the square
 * edge; a shoulder saws that thin edge away and leaves a ledge:
 *
 *                 .'.
 *              .'     '.        slope
 *           .'           '.
 *     step |               |
 *      ____|               |____    ledge = shoulder
 *     |                         |
 *     |_________________________|   edge
 *
 * So the fence stands alike for both cuts: its distance to the blade at the
 * table is the edge.
 */

/* Of the dowel that centres the cap and holds it while the glue sets (common practice). */
#define DOWEL_IN_CAP 0.6 /* its hole, of the square edge */

/* What follows from the keys, on a post this wide. */
static struct cap cap_of(const struct job *job, double section)
{
	const struct job_newel_cap *k = &job->newels.cap;
	struct cap c = { .kind = k->kind, .build = k->build, .edge = k->thickness };
	c.width = section + 2 * k->overhang;
	c.height = c.edge;
	if (k->kind != CAP_PYRAMID)
		return c;
	c.slope = k->rise > 0 ? atan(2 * k->rise / c.width) : k->slope_degrees * PI / 180;
	struct pyramid p = pyramid_on(c.width, c.slope);
	c.rise = p.height;
	c.height = c.edge + c.rise;
	c.slant = p.slant;
	c.hip = p.hip;
	c.hip_slope = p.joint.hip_slope;
	c.dihedral = p.joint.dihedral;
	if (k->build == CAP_MITRED) {
		c.mitre_gauge = p.joint.mitre_gauge;
		c.mitre_tilt = p.joint.blade_tilt;
		c.foot_tilt = c.slope;
		c.board = k->board;
		return c;
	}
	c.blade_tilt = c.slope;
	c.blade_height = c.width / 2;
	c.fence = c.edge;
	c.shoulder = k->shoulder;
	c.step = k->shoulder * tan(c.slope);
	return c;
}

struct frame cap_place(const struct post *p, double width)
{
	double out = (p->section - width) / 2;
	struct frame f = { .u = { 0, 1, 0 }, .v = { 0, 0, 1 }, .w = { 1, 0, 0 } };
	f.origin = vec3(p->height, out, out);
	return frame_compose(p->place, f);
}

static struct bore dowel(const struct job *job, double width)
{
	enum units units = job->about.units;
	struct bore b = dowel_bore((struct dowel){ round_size(units, 0.375, 10),
		round_size(units, 2, 50), DOWEL_IN_CAP * job->newels.cap.thickness, INFINITY });
	b.text = "dowel, cap to newel";
	b.at = (struct frame){ vec3(width / 2, width / 2, 0), { 1, 0, 0 }, { 0, -1, 0 },
		{ 0, 0, -1 } };
	return b;
}

struct part *cap_square_add(struct pieces *list, const struct post *p, const char *name,
	double width, double thickness)
{
	const struct job *job = p->rod->job;
	struct part *cap = piece_add(list, name, job->material.newels, cap_place(p, width));
	cap->size = (struct part_size){ width, width, thickness };
	cap->outline = outline_box(list->arena, 0, 0, width, width);
	cap->makeup = newel_plies(job, thickness);
	cap->note = newel_plies_note(list->arena, job, cap->makeup);
	cap->grain = GRAIN_ALONG;
	piece_bore(list->arena, cap, dowel(job, width));
	return cap;
}

/* A square at one level joined to a smaller one above it, down to a point. */
static struct solid *loft(struct arena *a, double width, struct vec in, struct vec level)
{
	struct vec3 *low = NEW_N(a, struct vec3, 4), *high = NEW_N(a, struct vec3, 4);
	static const struct vec corners[4] = { { 0, 0 }, { 1, 0 }, { 1, 1 }, { 0, 1 } };
	for (int i = 0; i < 4; i++) {
		struct vec c = corners[i];
		low[i] = vec3(in.x + c.x * (width - 2 * in.x), in.x + c.y * (width - 2 * in.x),
			level.x);
		high[i] = vec3(in.y + c.x * (width - 2 * in.y), in.y + c.y * (width - 2 * in.y),
			level.y);
	}
	return solid_join(a, 4, low, high, NULL);
}

/* Seen from the side: half a cap, from its foot at the edge up to the middle. */
static int half_profile(const struct cap *c, double chamfer, struct vec at[6])
{
	int n = 0;
	at[n++] = vec(0, 0);
	at[n++] = vec(0, c->edge - chamfer);
	if (c->shoulder > 0) {
		at[n++] = vec(c->shoulder, c->edge);
		at[n++] = vec(c->shoulder, c->edge + c->step);
	}
	if (chamfer > 0)
		at[n++] = vec(chamfer, c->edge);
	if (c->kind == CAP_PYRAMID)
		at[n++] = vec(c->width / 2, c->height);
	return n;
}

static void shape_block(struct arena *a, struct part *p, const struct cap *c, double chamfer)
{
	struct vec at[6];
	int n = half_profile(c, chamfer, at);
	struct path o = path_begin(a, 2 * n);
	struct solid *list = NULL;
	for (int i = n - 1; i >= 0; i--)
		path_to(&o, at[i].x, at[i].y);
	for (int i = 0; i < n; i++)
		path_to(&o, c->width - at[i].x, at[i].y);
	p->section = path_close(o);
	for (int i = 1; i < n; i++)
		if (at[i].y > at[i - 1].y + NEAR_ENOUGH)
			list = solid_add(list,
				loft(a, c->width, vec(at[i - 1].x, at[i].x),
					vec(at[i - 1].y, at[i].y)));
	p->solids = list;
}

/* How the saw is set, in the order of the cuts. */
static void add_settings(struct arena *a, struct part *p, const struct lettering l)
{
	const struct cap *c = p->cap;
	const char *lies = "underside against the fence, in a carriage";
	struct feature f = { .kind = FEATURE_SAWN };
	if (c->shoulder > 0)
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_SAWN,
				.sawn = { 0, c->fence, c->shoulder, 4, lies },
				.text = arena_printf(a,
					"four shoulder cuts first, across the grain before along "
					"it: underside against the fence, %s from the blade, blade "
					"square, %s high",
					length_say(a, l, c->fence),
					length_say(a, l, c->shoulder)) });
	f.sawn = (struct sawn){ c->blade_tilt, c->fence, c->blade_height, 4, lies };
	f.text = arena_printf(a,
		"four slopes, across the grain before along it: blade tilted %.1f degrees, fence "
		"%s from it at the table, blade %s high over the table: in a block %s high they "
		"meet in one point; clamp it to a carriage, hands clear",
		c->blade_tilt * 180 / PI, length_say(a, l, c->fence),
		length_say(a, l, c->blade_height), length_say(a, l, c->height));
	piece_feature(a, p, f);
}

static void block_add(struct pieces *list, const struct post *p, const struct cap *c)
{
	struct arena *a = list->arena;
	struct lettering l = job_lettering(p->rod->job);
	double chamfer = c->kind == CAP_CHAMFERED ? p->rod->job->newels.cap.chamfer : 0;
	struct part *cap = cap_square_add(list, p, "newel cap", c->width, c->height);
	struct cap *facts = NEW(a, struct cap);
	*facts = *c;
	cap->cap = facts;
	shape_block(a, cap, c, chamfer);
	if (c->kind == CAP_PYRAMID)
		add_settings(a, cap, l);
	if (chamfer > 0)
		piece_feature(a, cap,
			(struct feature){ .kind = FEATURE_CHAMFER,
				.depth = chamfer,
				.goes_round = true,
				.text = arena_printf(a,
					"upper edge chamfered %s all round, across the grain first",
					length_say(a, l, chamfer)) });
}

void cap_add(struct pieces *list, const struct post *p, struct diags *d)
{
	struct cap c = cap_of(p->rod->job, p->section);
	if (!cap_fits(list->arena, p, &c, d))
		return;
	if (c.kind == CAP_PYRAMID && c.build == CAP_MITRED)
		cap_mitred_add(list, p, &c);
	else
		block_add(list, p, &c);
	cap_moulding_add(list, p);
}
