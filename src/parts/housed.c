#include "parts/channel.h"

/*
 * Housed stringers as parts: a whole outer layer, and an inner layer as deep as
 * the housing, parted by the channel into what lies above and below it.
 */

/* Wood left below the lowest wedge groove, square to the lower edge (common practice). */
#define HOUSED_REST 20.0

/* And between one wedge groove and the next, or the floor (common practice). */
#define LEAST_WOOD 6.0

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
			vec(channel_riser_face(r, i) - r->nosing + channel_nosing_under(r),
				channel_tread_top(r, i) - r->tread);
		struct vec back = i > 1 ? vec(channel_riser_face(r, i), channel_tread_top(r, i - 1))
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
	s = solid_add(s, layer_solid(c, channel_above(c), b, laid, inner));
	return solid_add(s, layer_solid(c, channel_below(c), b, laid, inner));
}

static const char *groove_words(const struct channel *c, int step)
{
	if (c->rod->riser <= 0)
		return arena_printf(c->a, "housing of step %d", step);
	return arena_printf(c->a, "housing of step %d, wedges tapering 1 in %g", step, c->taper);
}

static void add_grooves(const struct channel *c, struct part *p, struct bench b)
{
	for (int i = 1; i <= c->rod->steps; i++) {
		struct feature f = { .kind = FEATURE_GROOVE };
		f.at = bench_outline(c->a, b, channel_step(c, i));
		f.depth = c->rod->job->stringers.housing_depth;
		f.text = groove_words(c, i);
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
		outer[i - 1] =
			bench_point(b, vec(channel_riser_face(r, i), channel_tread_top(r, i)));
		inner[i - 1] =
			bench_point(b, vec(channel_riser_face(r, i + 1), channel_tread_top(r, i)));
	}
	g->tread_corners = outer;
	g->inner_corners = inner;
}

/* It holds its steps; that it is wider is a wish. */
static void warn_of_wish(const struct channel *c, double offered, double wanted, struct diags *d)
{
	const struct rod *r = c->rod;
	const struct job_stringer *spec = c->at->spec;
	struct lettering l = job_lettering(r->job);
	diag_warning(d, plank_pos(r, spec),
		job_write_least(c->a, r->job,
			arena_printf(c->a, "stringers.%s.width", stringer_group(r, spec)), wanted),
		"a housed stringer of %s is narrower than least_throat, %s",
		length_say(c->a, l, offered), length_say(c->a, l, wanted));
}

static double width_for(const struct channel *c, struct diags *d)
{
	const struct rod *r = c->rod;
	const struct job_stringer *spec = c->at->spec;
	struct lettering l = job_lettering(r->job);
	double need = fmax(channel_reach(c), channel_foot_reach(c)) + HOUSED_REST;
	double wanted = fmax(need, r->job->stringers.least_throat);
	double width = plank_width(r, spec, wanted), offered = plank_offered(r, spec);
	if (width <= 0 && offered >= need - NEAR_ENOUGH) {
		warn_of_wish(c, offered, wanted, d);
		return offered;
	}
	if (width <= 0)
		diag_error(d, plank_pos(r, spec),
			arena_printf(c->a, "%s, or take a smaller margin",
				job_write_least(c->a, r->job,
					arena_printf(c->a, "stringers.%s.width",
						stringer_group(r, spec)),
					need)),
			"%s plank, %s wide, is %s too narrow for margin, housings and foot",
			spec->width > 0 ? "a" : "even the widest", length_say(c->a, l, offered),
			length_say(c->a, l, need - offered));
	return width;
}

static bool depth_fits(const struct channel *c, struct diags *d)
{
	const struct rod *r = c->rod;
	const struct job_stringers *all = &r->job->stringers;
	struct lettering l = job_lettering(r->job);
	if (all->housing_depth < c->at->spec->thickness - 1)
		return true;
	diag_error(d, rod_pos(r, all->src, "housing_depth"),
		job_write_most(c->a, r->job, "stringers.housing_depth",
			c->at->spec->thickness - 1.5),
		"housings %s deep go through a stringer %s thick",
		length_say(c->a, l, all->housing_depth),
		length_say(c->a, l, c->at->spec->thickness));
	return false;
}

/* Between two housings, and under the first, some wood must stay. */
static bool wedges_fit(const struct channel *c, struct diags *d)
{
	const struct rod *r = c->rod;
	double across = r->run - r->riser - r->rise / c->taper;
	double back = channel_riser_face(r, 2);
	double lowest = r->steps > 1 ? channel_corner(c, 1, 2).y
				     : channel_tread_bottom(c, 1, back + r->riser);
	double under = lowest - r->foot;
	if (r->riser <= 0 || fmin(across, under) >= LEAST_WOOD)
		return true;
	int slimmer = (int)ceil(r->rise / fmax(r->run - r->riser - LEAST_WOOD, 1));
	diag_error(d, rod_pos(r, r->job->stringers.src, "wedge_taper"),
		slimmer > c->taper
			? arena_printf(c->a, "write stringers.wedge_taper: %d; 20 means 1 in 20",
				  slimmer)
			: "take a slimmer wedge: 20 means 1 in 20",
		"wedges of 1 in %g leave %s of wood between housings: it takes %s", c->taper,
		length_say(c->a, job_lettering(r->job), fmax(0, fmin(across, under))),
		length_say(c->a, job_lettering(r->job), LEAST_WOOD));
	return false;
}

void housed_add(struct pieces *list, const struct stand *at, struct diags *d)
{
	const struct rod *r = at->rod;
	struct channel c = channel_make(list->arena, at);
	c.edges.upper = rod_housed_edge_z(r, 0);
	if (!depth_fits(&c, d) || !wedges_fit(&c, d))
		return;
	double width = width_for(&c, d);
	if (width <= 0)
		return;
	c.edges.lower = c.edges.upper - width / r->cosine;
	struct outline whole = channel_plank(&c);
	struct bench b = bench_make(r, c.edges, &whole, 1);
	struct part *p = stringer_part(list, at, b, whole, width);
	struct stringer *g = (struct stringer *)p->stringer;
	g->throat = width; /* nothing is cut through */
	g->margin = r->job->stringers.margin;
	g->housing = housing_of(&c, width);
	p->solids = solids(&c, b, whole);
	add_grooves(&c, p, b);
	add_corners(&c, g, b);
}
