#include <assert.h>
#include <stdlib.h>

#include "parts/stringer.h"

/*
 * Sawtooth and mitred stringers: steps cut out of a plank's upper edge.
 *
 *                 x_i + riser
 *                     |________  i * rise - tread
 *                     |        |
 *          upper .'   |  tread cut
 *          edge   ____|  riser cut
 *              .'|
 *               throat, square to the pitch, to the lower edge
 *
 * The whole stringer is dropped by the thickness of a tread, so that the boards
 * laid on it bring every rise out equal.  A mitred one has its riser cuts sawn
 * at 45 degrees: on the outer face they lie in the face of the riser, and run
 * back through the thickness (Building Trades Pocketbook: thickness of the
 * string square across, then corner to corner).
 */

/* Where the riser cuts lie on the two faces of one stringer, one a step. */
struct cuts {
	const struct rod *rod;
	double *outer, *inner;
	bool mitred; /* anywhere */
};

static bool is_mitred(const struct stand *at, int step)
{
	const struct side *side = at->side;
	if (!side || side->kind != STRINGER_MITRED || !side_shows_riser(side, step))
		return false;
	/* behind a newel the cut is square, and where the first riser goes on past it */
	return step > 1 || !(side_has_foot_newel(side) || side->start > 0);
}

static struct cuts cuts_make(struct arena *a, const struct stand *at)
{
	const struct rod *r = at->rod;
	struct cuts c = { r, NEW_N(a, double, r->steps), NEW_N(a, double, r->steps), false };
	for (int i = 0; i < r->steps; i++) {
		bool mitred = is_mitred(at, i + 1);
		c.outer[i] = i * r->run + (mitred ? 0 : r->riser);
		c.inner[i] = i * r->run + (mitred ? at->spec->thickness : r->riser);
		c.mitred = c.mitred || mitred;
	}
	return c;
}

static double tread_cut_z(const struct rod *r, int i)
{
	return (i + 1) * r->rise - r->tread;
}

/* The upper edge of the plank touches the outermost corner. */
static double upper_edge(const struct cuts *c)
{
	double upper = -INFINITY;
	for (int i = 0; i < c->rod->steps; i++) {
		double corner = tread_cut_z(c->rod, i) - c->outer[i] * c->rod->slope;
		upper = fmax(upper, corner);
	}
	return upper;
}

/* The corner behind a tread, in the flight's x and z, on the face that is cut further back. */
static struct vec back_corner(const struct cuts *c, int i)
{
	const struct rod *r = c->rod;
	double back = i + 1 < r->steps ? fmax(c->inner[i + 1], c->outer[i + 1]) : r->header_x;
	return vec(back, tread_cut_z(r, i));
}

/* How deep a step is cut, square to the upper edge. */
static double depth_at(const struct cuts *c, double upper, int i)
{
	struct vec corner = back_corner(c, i);
	return (upper + corner.x * c->rod->slope - corner.y) * c->rod->cosine;
}

/* The step that is cut deepest; of several the one nearest the middle. */
static int deepest_step(const struct cuts *c, double upper)
{
	int middle = (c->rod->steps - 1) / 2, deepest = middle;
	for (int i = 0; i < c->rod->steps; i++) {
		double deeper = depth_at(c, upper, i) - depth_at(c, upper, deepest);
		bool nearer = abs(i - middle) < abs(deepest - middle);
		if (deeper > NEAR_ENOUGH || (deeper > -NEAR_ENOUGH && nearer))
			deepest = i;
	}
	return deepest;
}

/* From the front of the foot along the floor to the lower edge. */
static void strike_foot(struct path *p, const struct rod *r, double front, double foot_end)
{
	if (stringers_have_block(r)) {
		double up = r->foot + r->job->stringers.block_thickness;
		double back = r->riser + r->job->stringers.block_width;
		path_to(p, front, up);
		path_to(p, back, up);
		path_to(p, back, r->foot);
	} else {
		path_to(p, front, r->foot);
	}
	path_to(p, fmin(foot_end, r->header_x), r->foot);
}

/* One face, counter-clockwise in the flight's x and z. */
static struct outline strike(struct arena *a, const struct rod *r, const double *riser_x,
	struct edges e)
{
	struct path p = path_begin(a, 2 * r->steps + 8);
	double foot_end = foot_end_x(r, e);
	strike_foot(&p, r, riser_x[0], foot_end);
	if (foot_end < r->header_x)
		path_to(&p, r->header_x, e.lower + r->slope * r->header_x);
	path_to(&p, r->header_x, tread_cut_z(r, r->steps - 1));
	for (int i = r->steps - 1; i >= 0; i--) {
		path_to(&p, riser_x[i], tread_cut_z(r, i));
		if (i > 0)
			path_to(&p, riser_x[i], tread_cut_z(r, i - 1));
	}
	return path_close(p);
}

static struct vec3 *face_points(struct arena *a, struct bench b, struct outline face, double z)
{
	struct vec3 *points = NEW_N(a, struct vec3, face.n);
	for (int i = 0; i < face.n; i++) {
		struct vec at = bench_point(b, face.corners[i].at);
		points[i] = vec3(at.x, at.y, z);
	}
	return points;
}

static const struct vec *outer_corners(struct arena *a, const struct cuts *c, struct bench b)
{
	struct vec *corners = NEW_N(a, struct vec, c->rod->steps);
	for (int i = 0; i < c->rod->steps; i++)
		corners[i] = bench_point(b, vec(c->outer[i], tread_cut_z(c->rod, i)));
	return corners;
}

static const struct vec *inner_corners(struct arena *a, const struct cuts *c, struct bench b)
{
	const struct rod *r = c->rod;
	struct vec *corners = NEW_N(a, struct vec, r->steps);
	for (int i = 0; i < r->steps; i++) {
		double x = i + 1 < r->steps ? c->outer[i + 1] : r->header_x;
		corners[i] = bench_point(b, vec(x, tread_cut_z(r, i)));
	}
	return corners;
}

static void add_notch(struct arena *a, struct part *p, const struct rod *r, struct bench b)
{
	const struct job_stringers *all = &r->job->stringers;
	struct outline box = outline_box(a, r->riser, r->foot, r->riser + all->block_width,
		r->foot + all->block_thickness);
	struct feature f = { .kind = FEATURE_NOTCH, .at = bench_outline(a, b, box) };
	f.depth = p->size.thickness;
	f.text = "notch for the thrust block";
	piece_feature(a, p, f);
}

/* The riser cut of every mitred step, as a line on the outer face. */
static void add_mitres(struct arena *a, struct part *p, const struct stand *at,
	const struct cuts *c, struct bench b)
{
	const struct rod *r = at->rod;
	for (int i = 0; i < r->steps; i++) {
		if (!is_mitred(at, i + 1))
			continue;
		struct path line = path_begin(a, 2);
		double low = i > 0 ? tread_cut_z(r, i - 1) : r->foot;
		path_to(&line, c->outer[i], low);
		path_to(&line, c->outer[i], tread_cut_z(r, i));
		struct feature f = { .kind = FEATURE_MITRE, .angle = PI / 4 };
		f.at = bench_outline(a, b, path_close(line));
		f.text = "riser cut, 45 degrees back from the outer face";
		piece_feature(a, p, f);
	}
}

/* The width of plank that leaves the throat, or 0 and an error with what is missing. */
static double width_for(struct arena *a, const struct stand *at, double depth, struct diags *d)
{
	const struct rod *r = at->rod;
	struct lettering l = job_lettering(r->job);
	double least = r->job->stringers.least_throat;
	double width = plank_width(r, at->spec, depth + least);
	if (width > 0)
		return width;
	double offered = plank_offered(r, at->spec);
	diag_error(d, plank_pos(r, at->spec),
		arena_printf(a,
			"it takes a plank %s wide, a smaller rise or run, or a least_throat "
			"of %s",
			length_say(a, l, depth + least), length_say(a, l, offered - depth)),
		"%s plank %s wide leaves a throat of %s: %s less than least_throat, %s",
		at->spec->width > 0 ? "a" : "even the widest", length_say(a, l, offered),
		length_say(a, l, fmax(0, offered - depth)),
		length_say(a, l, depth + least - offered), length_say(a, l, least));
	return 0;
}

/* The foot must come down to the floor, and hold the notch of the thrust block. */
static bool foot_fits(struct arena *a, const struct stand *at, struct edges e, struct diags *d)
{
	const struct rod *r = at->rod;
	struct lettering l = job_lettering(r->job);
	double cut = fmin(foot_end_x(r, e), r->header_x) - r->riser;
	double need = stringers_have_block(r) ? r->job->stringers.block_width : 0;
	if (cut > need + 1)
		return true;
	diag_error(d, plank_pos(r, at->spec),
		stringers_have_block(r) ? "take a wider plank, or a narrower thrust block"
					: "take a wider plank",
		"the level cut at the foot is %s long: %s too short for what stands there",
		length_say(a, l, fmax(0, cut)), length_say(a, l, need + 1 - cut));
	return false;
}

static void fill_mitred(struct arena *a, struct part *p, struct stringer *g, const struct stand *at,
	const struct outline faces[2], struct bench b)
{
	double thickness = at->spec->thickness;
	bool right = at->side->hand == HAND_RIGHT;
	assert(faces[0].n == faces[1].n);
	p->solids = solid_join(a, faces[0].n, face_points(a, b, faces[0], right ? thickness : 0),
		face_points(a, b, faces[1], right ? 0 : thickness), NULL);
	g->far_face = bench_outline(a, b, faces[1]);
	if (!right)
		p->note = "left hand: the outline is of the outer face, seen through the plank";
}

void sawtooth_add(struct pieces *list, const struct stand *at, struct diags *d)
{
	struct arena *a = list->arena;
	const struct rod *r = at->rod;
	struct cuts c = cuts_make(a, at);
	struct edges e = { .upper = upper_edge(&c) };
	int deepest = deepest_step(&c, e.upper);
	double depth = depth_at(&c, e.upper, deepest);
	double width = width_for(a, at, depth, d);
	e.lower = e.upper - width / r->cosine;
	if (width <= 0 || !foot_fits(a, at, e, d))
		return;
	struct outline faces[2] = { strike(a, r, c.outer, e), strike(a, r, c.inner, e) };
	struct bench b = bench_make(r, e, faces, 2);
	struct part *p = stringer_part(list, at, b, faces[0], width);
	struct stringer *g = (struct stringer *)p->stringer;
	g->throat = width - depth;
	g->throat_at = vec(bench_point(b, back_corner(&c, deepest)).x, 0);
	g->tread_corners = outer_corners(a, &c, b);
	g->inner_corners = inner_corners(a, &c, b);
	if (stringers_have_block(r))
		add_notch(a, p, r, b);
	add_mitres(a, p, at, &c, b);
	if (c.mitred)
		fill_mitred(a, p, g, at, faces, b);
	else
		p->solids = solid_prism(a, profile_of(a, p->outline), 0, at->spec->thickness);
}
