#include "parts/stringer.h"

/*
 * Housed (closed) stringers: the plank stays whole, and treads and risers are
 * let into grooves of its inner face, wedged tight from behind and below.
 *
 *         top edge, `margin` square above the nosing line
 *      _.-'
 *   .-'   ____________________ x_i+1   i * rise
 *        (____________________|        i * rise - tread
 *         |__ -- __ wedge -- __ |
 *        x_i |  |             |   |
 *            |   | wedge      |     |  riser i + 1
 *
 * The grooves of one stair run into each other and make one zigzag channel.
 * Without riser boards every tread has a groove of its own.
 *
 * Modelled as a whole outer layer, and an inner layer as deep as the housing,
 * parted by the channel into what lies above and below it.
 */

/* Wood left below the lowest wedge groove, square to the lower edge (common practice). */
#define HOUSED_REST 20.0

/* And between one wedge groove and the next, or the floor (common practice). */
#define LEAST_WOOD 6.0

struct channel {
	struct arena *a;
	const struct stand *at;
	const struct rod *rod;
	double taper; /* the wedge: 1 in so many */
	struct edges edges;
	double front_x;
};

static double riser_face(const struct rod *r, int step)
{
	return (step - 1) * r->run;
}

static double tread_top(const struct rod *r, int step)
{
	return step * r->rise;
}

static double radius(const struct rod *r)
{
	return fmin(r->job->treads.nosing_radius, r->tread / 2);
}

/* Lower line of a tread's groove: tight under the nosing, opening backwards for the wedge. */
static double groove_bottom(const struct channel *c, int step, double x)
{
	const struct rod *r = c->rod;
	double front = riser_face(r, step) - r->nosing + (r->riser > 0 ? 0 : radius(r));
	return tread_top(r, step) - r->tread - (x - front) / c->taper;
}

/* Back line of a riser's groove: tight under its tread, opening downwards for the wedge. */
static double groove_back(const struct channel *c, int step, double z)
{
	const struct rod *r = c->rod;
	return riser_face(r, step) + r->riser + (tread_top(r, step) - r->tread - z) / c->taper;
}

/* Where the lower line of a tread's groove meets the back line of a riser's: each step of the
 * iteration comes taper squared times nearer. */
static struct vec groove_corner(const struct channel *c, int tread, int riser)
{
	double x = riser_face(c->rod, riser) + c->rod->riser, z = 0;
	for (int k = 0; k < 24; k++) {
		z = groove_bottom(c, tread, x);
		x = groove_back(c, riser, z);
	}
	return vec(x, z);
}

/* Where the groove of the last tread runs out through the head cut. */
static double exit_z(const struct channel *c)
{
	return groove_bottom(c, c->rod->steps, c->rod->header_x);
}

static void strike_nosing(struct path *p, const struct rod *r, int step)
{
	double front = riser_face(r, step) - r->nosing, top = tread_top(r, step);
	double round = radius(r), bottom = top - r->tread;
	path_to(p, front + round, bottom);
	path_hollow_to(p, front, bottom + round);
	path_to(p, front, top - round);
	path_hollow_to(p, front + round, top);
}

/* What lies above the channel, counter-clockwise. */
static struct outline strike_above(const struct channel *c)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(c->a, 7 * r->steps + 12);
	if (r->riser > 0)
		path_to(&p, c->front_x, r->foot);
	else
		path_to(&p, c->front_x, tread_top(r, 1) - r->tread);
	for (int i = 1; i <= r->steps; i++) {
		if (r->riser > 0) {
			path_to(&p, riser_face(r, i), i > 1 ? tread_top(r, i - 1) : r->foot);
			path_to(&p, riser_face(r, i), tread_top(r, i) - r->tread);
		}
		strike_nosing(&p, r, i);
		path_to(&p, riser_face(r, i + 1), tread_top(r, i));
	}
	if (r->steps < r->risers && r->riser > 0) {
		path_to(&p, riser_face(r, r->risers), r->top - r->tread);
		path_to(&p, r->header_x, r->top - r->tread);
	}
	path_to(&p, r->header_x, c->edges.upper + r->slope * r->header_x);
	path_to(&p, c->front_x, c->edges.upper + r->slope * c->front_x);
	return path_close(p);
}

/* From the floor up the head to where the channel comes out, as both lower outlines begin. */
static void strike_foot_and_head(struct path *p, const struct channel *c)
{
	const struct rod *r = c->rod;
	double foot_end = foot_end_x(r, c->edges);
	path_to(p, fmin(foot_end, r->header_x), r->foot);
	if (foot_end < r->header_x)
		path_to(p, r->header_x, c->edges.lower + r->slope * r->header_x);
}

static void strike_steps_below(struct path *p, const struct channel *c)
{
	for (int i = c->rod->steps; i >= 1; i--) {
		if (i < c->rod->steps) {
			struct vec outer = groove_corner(c, i, i + 1);
			path_to(p, outer.x, outer.y);
		}
		struct vec inner = groove_corner(c, i, i);
		path_to(p, inner.x, inner.y);
	}
}

static void strike_treads_below(struct path *p, const struct channel *c)
{
	const struct rod *r = c->rod;
	for (int i = r->steps; i >= 1; i--) {
		double back = riser_face(r, i + 1);
		if (i < r->steps) {
			path_to(p, back, tread_top(r, i));
			path_to(p, back, groove_bottom(c, i, back));
		}
		path_to(p, riser_face(r, i) - r->nosing + radius(r), tread_top(r, i) - r->tread);
	}
	path_to(p, c->front_x, tread_top(r, 1) - r->tread);
}

/* What lies below it. */
static struct outline strike_below(const struct channel *c)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(c->a, 3 * r->steps + 12);
	if (r->riser > 0)
		path_to(&p, groove_back(c, 1, r->foot), r->foot);
	else
		path_to(&p, c->front_x, r->foot);
	strike_foot_and_head(&p, c);
	path_to(&p, r->header_x, exit_z(c));
	if (r->riser > 0)
		strike_steps_below(&p, c);
	else
		strike_treads_below(&p, c);
	return path_close(p);
}

static struct outline strike_whole(const struct channel *c)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(c->a, 8);
	path_to(&p, c->front_x, r->foot);
	strike_foot_and_head(&p, c);
	path_to(&p, r->header_x, c->edges.upper + r->slope * r->header_x);
	path_to(&p, c->front_x, c->edges.upper + r->slope * c->front_x);
	return path_close(p);
}

/* How far below the top edge, square to it, the grooves reach. */
static double groove_reach(const struct channel *c)
{
	const struct rod *r = c->rod;
	struct vec low = vec(r->header_x, exit_z(c));
	double reach = (c->edges.upper + r->slope * low.x - low.y) * r->cosine;
	for (int i = 1; i < r->steps; i++) {
		low = r->riser > 0
			? groove_corner(c, i, i + 1)
			: vec(riser_face(r, i + 1), groove_bottom(c, i, riser_face(r, i + 1)));
		reach = fmax(reach, (c->edges.upper + r->slope * low.x - low.y) * r->cosine);
	}
	return reach;
}

static bool on_segment(struct vec p, struct vec a, struct vec b)
{
	struct vec along = vec_sub(b, a), to = vec_sub(p, a);
	double n = vec_length(along), at = vec_dot(to, along) / (n > 0 ? n : 1);
	double off = fabs(vec_cross(to, along)) / (n > 0 ? n : 1);
	return off < 1e-4 && at > -1e-4 && at < n + 1e-4;
}

static bool on_outline(struct vec p, struct outline o)
{
	for (int i = 0; i < o.n; i++)
		if (on_segment(p, o.corners[i].at, o.corners[(i + 1) % o.n].at))
			return true;
	return false;
}

static struct vec edge_middle(const struct profile *f, int i)
{
	return vec_scale(vec_add(f->at[i], f->at[(i + 1) % f->n]), 0.5);
}

/* Where two layers meet, the plank's own outline is no edge. */
static void soften(struct profile *f, struct outline whole, unsigned char face)
{
	for (int i = 0; i < f->n; i++)
		if (on_outline(edge_middle(f, i), whole))
			f->soft[i] |= face;
}

/* Between grooves that do not meet, the wood above and below is one: the line from the back of
 * one groove to the nosing of the next is no edge on either face. */
static void soften_seams(struct profile *f, const struct channel *c, struct bench b)
{
	const struct rod *r = c->rod;
	for (int i = 1; r->riser <= 0 && i <= r->steps; i++) {
		struct vec nose =
			vec(riser_face(r, i) - r->nosing + radius(r), tread_top(r, i) - r->tread);
		struct vec back = i > 1 ? vec(riser_face(r, i), tread_top(r, i - 1))
					: vec(c->front_x, nose.y);
		struct vec from = bench_point(b, back), to = bench_point(b, nose);
		for (int k = 0; k < f->n; k++)
			if (on_segment(f->at[k], from, to) &&
				on_segment(f->at[(k + 1) % f->n], from, to))
				f->soft[k] |= SOFT_A | SOFT_B;
	}
}

struct layer {
	double z0, z1;
	unsigned char seam; /* the face that lies against the other layer */
};

static struct solid *layer_solid(const struct channel *c, struct outline flight, struct bench b,
	struct outline whole, struct layer l)
{
	struct profile f = profile_of(c->a, bench_outline(c->a, b, flight));
	soften(&f, whole, l.seam);
	soften_seams(&f, c, b);
	return solid_prism(c->a, f, l.z0, l.z1);
}

static struct solid *solids(const struct channel *c, struct bench b, struct outline whole)
{
	double thickness = c->at->spec->thickness;
	double depth = c->rod->job->stringers.housing_depth;
	bool right = c->at->side->hand == HAND_RIGHT;
	struct layer outer = right ? (struct layer){ depth, thickness, SOFT_B }
				   : (struct layer){ 0, thickness - depth, SOFT_A };
	struct layer inner = right ? (struct layer){ 0, depth, SOFT_A }
				   : (struct layer){ thickness - depth, thickness, SOFT_B };
	struct outline laid = bench_outline(c->a, b, whole);
	struct solid *s = layer_solid(c, whole, b, laid, outer);
	s = solid_add(s, layer_solid(c, strike_above(c), b, laid, inner));
	return solid_add(s, layer_solid(c, strike_below(c), b, laid, inner));
}

/* Lower end of a riser's groove: on the floor, or at the back of the tread below. */
static struct vec riser_low(const struct channel *c, int step)
{
	const struct rod *r = c->rod;
	if (step == 1)
		return vec(groove_back(c, 1, r->foot), r->foot);
	return groove_corner(c, step - 1, step);
}

/* One step's share of the channel: riser groove below, tread groove above. */
static struct outline strike_groove(const struct channel *c, int i)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(c->a, 14);
	double face = riser_face(r, i), back = riser_face(r, i + 1);
	if (r->riser > 0) {
		path_to(&p, face, i > 1 ? tread_top(r, i - 1) : r->foot);
		path_to(&p, face, tread_top(r, i) - r->tread);
	}
	strike_nosing(&p, r, i);
	path_to(&p, back, tread_top(r, i));
	if (i == r->steps) {
		path_to(&p, r->header_x, tread_top(r, i));
		path_to(&p, r->header_x, exit_z(c));
	} else if (r->riser > 0) {
		struct vec low = riser_low(c, i + 1);
		path_to(&p, low.x, low.y);
	} else {
		path_to(&p, back, groove_bottom(c, i, back));
	}
	if (r->riser > 0) {
		struct vec corner = groove_corner(c, i, i), low = riser_low(c, i);
		path_to(&p, corner.x, corner.y);
		path_to(&p, low.x, low.y);
	}
	return path_close(p);
}

static void add_grooves(const struct channel *c, struct part *p, struct bench b)
{
	double taper = c->taper;
	for (int i = 1; i <= c->rod->steps; i++) {
		struct feature f = { .kind = FEATURE_GROOVE };
		f.at = bench_outline(c->a, b, strike_groove(c, i));
		f.depth = c->rod->job->stringers.housing_depth;
		f.text =
			arena_printf(c->a, "housing of step %d, wedges tapering 1 in %g", i, taper);
		piece_feature(c->a, p, f);
	}
}

/* Corners as they are marked out: riser's face and tread's top. */
static void add_corners(const struct channel *c, struct stringer *g, struct bench b)
{
	const struct rod *r = c->rod;
	struct vec *outer = NEW_N(c->a, struct vec, r->steps);
	struct vec *inner = NEW_N(c->a, struct vec, r->steps);
	for (int i = 1; i <= r->steps; i++) {
		outer[i - 1] = bench_point(b, vec(riser_face(r, i), tread_top(r, i)));
		inner[i - 1] = bench_point(b, vec(riser_face(r, i + 1), tread_top(r, i)));
	}
	g->tread_corners = outer;
	g->inner_corners = inner;
}

/* Width of plank below which the foot would not come down to what it stands on. */
static double foot_needs(const struct channel *c)
{
	const struct rod *r = c->rod;
	double x = r->riser > 0 ? groove_back(c, 1, r->foot) : c->front_x;
	return (c->edges.upper + r->slope * x - r->foot) * r->cosine;
}

static double width_for(const struct channel *c, struct diags *d)
{
	const struct rod *r = c->rod;
	const struct job_stringer *spec = c->at->spec;
	struct lettering l = job_lettering(r->job);
	double need = fmax(groove_reach(c), foot_needs(c)) + HOUSED_REST;
	need = fmax(need, r->job->stringers.least_throat);
	double width = plank_width(r, spec, need), offered = plank_offered(r, spec);
	if (width <= 0)
		diag_error(d, plank_pos(r, spec),
			arena_printf(c->a, "a plank %s wide would do, or a smaller margin",
				length_letter(c->a, l, need)),
			"%s plank, %s wide, is %s too narrow for margin, housings and foot",
			spec->width > 0 ? "a" : "even the widest", length_letter(c->a, l, offered),
			length_letter(c->a, l, need - offered));
	return width;
}

static bool depth_fits(const struct channel *c, struct diags *d)
{
	const struct rod *r = c->rod;
	const struct job_stringers *all = &r->job->stringers;
	struct lettering l = job_lettering(r->job);
	if (all->housing_depth < c->at->spec->thickness - 1)
		return true;
	diag_error(d, rod_pos(r, all->src, "housing_depth"), NULL,
		"housings %s deep go through a stringer %s thick",
		length_letter(c->a, l, all->housing_depth),
		length_letter(c->a, l, c->at->spec->thickness));
	return false;
}

/* Between two housings, and under the first, some wood must stay. */
static bool wedges_fit(const struct channel *c, struct diags *d)
{
	const struct rod *r = c->rod;
	double across = r->run - r->riser - (r->riser > 0 ? r->rise / c->taper : 0);
	double back = riser_face(r, 2);
	double lowest = r->riser > 0 && r->steps > 1 ? groove_corner(c, 1, 2).y
						     : groove_bottom(c, 1, back + r->riser);
	double under = lowest - r->foot;
	if (fmin(across, under) >= LEAST_WOOD)
		return true;
	diag_error(d, rod_pos(r, r->job->stringers.src, "wedge_taper"),
		"take a slimmer wedge: 20 means 1 in 20",
		"wedges of 1 in %g leave %s of wood between housings: it takes %s", c->taper,
		length_letter(c->a, job_lettering(r->job), fmax(0, fmin(across, under))),
		length_letter(c->a, job_lettering(r->job), LEAST_WOOD));
	return false;
}

void housed_add(struct pieces *list, const struct stand *at, struct diags *d)
{
	const struct rod *r = at->rod;
	struct channel c = { .a = list->arena, .at = at, .rod = r };
	c.taper = r->job->stringers.wedge_taper;
	c.front_x = -r->nosing - HOUSED_FRONT;
	c.edges.upper = rod_housed_edge_z(r, 0);
	if (!depth_fits(&c, d) || !wedges_fit(&c, d))
		return;
	double width = width_for(&c, d);
	if (width <= 0)
		return;
	c.edges.lower = c.edges.upper - width / r->cosine;
	struct outline whole = strike_whole(&c);
	struct bench b = bench_make(r, c.edges, &whole, 1);
	struct part *p = stringer_part(list, at, b, whole, width);
	struct stringer *g = (struct stringer *)p->stringer;
	g->throat = width; /* nothing is cut through */
	g->margin = r->job->stringers.margin;
	g->head_level = c.edges.upper + r->slope * r->header_x;
	p->solids = solids(&c, b, whole);
	add_grooves(&c, p, b);
	add_corners(&c, g, b);
}
