#include "parts/cuts.h"

#include <stdlib.h>

#include "base/text.h"

/*
 * Sawtooth and mitred stringers: steps cut out of a plank's upper edge (cuts.c),
 * and what is left of the plank under them:
 *
 *               |  tread cut
 *           ____|  riser cut
 *              .'
 *               throat, square to the pitch, to the lower edge
 *
 * The whole stringer is dropped by the thickness of a tread, so that the boards
 * laid on it bring every rise out equal.
 */

/* Less wood under the steps than this, and the plank falls apart as it is sawn. */
#define LEAST_LEFT 25.0

static struct cuts cuts_of(struct arena *a, const struct stand *at)
{
	bool mitred = at->side && at->side->kind == STRINGER_MITRED;
	struct cuts c = cuts_make(a, at->rod, mitred ? at->side : NULL, at->spec->thickness);
	c.block = stringers_have_block(at->rod);
	return c;
}

/* The corner behind a tread, in the flight's x and z, on the face that is cut further back. */
static struct vec back_corner(const struct cuts *c, int i)
{
	const struct rod *r = c->rod;
	double back = i + 1 < r->steps ? fmax(c->inner[i + 1], c->outer[i + 1]) : r->header_x;
	return vec(back, cuts_tread_z(r, i));
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

static const struct vec *outer_corners(struct arena *a, const struct cuts *c, struct bench b)
{
	struct vec *corners = NEW_N(a, struct vec, c->rod->steps);
	for (int i = 0; i < c->rod->steps; i++)
		corners[i] = bench_point(b, vec(c->outer[i], cuts_tread_z(c->rod, i)));
	return corners;
}

static const struct vec *inner_corners(struct arena *a, const struct cuts *c, struct bench b)
{
	const struct rod *r = c->rod;
	struct vec *corners = NEW_N(a, struct vec, r->steps);
	for (int i = 0; i < r->steps; i++) {
		double x = i + 1 < r->steps ? c->outer[i + 1] : r->header_x;
		corners[i] = bench_point(b, vec(x, cuts_tread_z(r, i)));
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

/* The plank that leaves the throat asked for, else the widest there is; 0: that is cut through. */
static double width_of(const struct stand *at, double depth)
{
	const struct rod *r = at->rod;
	double width = plank_width(r, at->spec, depth + r->job->stringers.least_throat);
	double offered = plank_offered(r, at->spec);
	if (width > 0)
		return width;
	return offered >= depth + LEAST_LEFT ? offered : 0;
}

/* The throat is a wish until the plank is cut through: what is missing is said, and drawn. */
static double width_for(struct arena *a, const struct stand *at, double depth, struct diags *d)
{
	const struct rod *r = at->rod;
	struct lettering l = job_lettering(r->job);
	double least = r->job->stringers.least_throat, width = width_of(at, depth);
	double offered = plank_offered(r, at->spec), throat = fmax(0, offered - depth);
	if (width >= depth + least - NEAR_ENOUGH)
		return width;
	const char *hint =
		arena_printf(a, "%s, or take a smaller rise or run, or a least_throat of %s",
			job_write_least(a, r->job,
				arena_printf(a, "stringers.%s.width", stringer_group(r, at->spec)),
				depth + least),
			length_say_most(a, l, fmax(throat, LEAST_LEFT)));
	const char *text = arena_printf(a,
		"%s plank %s wide leaves a throat of %s: %s less than least_throat, %s",
		at->spec->width > 0 ? "a" : "even the widest", length_say(a, l, offered),
		length_say(a, l, throat), length_say(a, l, depth + least - offered),
		length_say(a, l, least));
	if (width > 0)
		diag_warning(d, plank_pos(r, at->spec), hint, "%s", text);
	else
		diag_error(d, plank_pos(r, at->spec), hint, "%s", text);
	return width;
}

/* Whoever saws it sees that it was known. */
static void note_throat(struct arena *a, struct part *p, const struct stringer *g)
{
	struct text note = { .arena = a };
	if (g->throat >= g->least_throat - NEAR_ENOUGH)
		return;
	text_join(&note, "; ", p->note ? p->note : "");
	text_join(&note, "; ", "the throat is less than least_throat asks: it carries less");
	p->note = text_chars(&note);
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
		stringers_have_block(r)
			? arena_printf(a, "%s, or take a wider plank",
				  job_write_most(a, r->job, "stringers.thrust_block.width",
					  fmax(cut - 1.5, 1)))
			: "take a wider plank",
		"the level cut at the foot is %s long: %s too short for what stands there",
		length_say(a, l, fmax(0, cut)), length_say(a, l, need + 1 - cut));
	return false;
}

static void fill_mitred(struct arena *a, struct part *p, struct stringer *g, const struct stand *at,
	const struct outline faces[2], struct bench b)
{
	p->solids = cuts_solid(a, b, faces, at->side->hand, at->spec->thickness);
	g->far_face = bench_outline(a, b, faces[1]);
	if (at->side->hand == HAND_LEFT)
		p->note = "left hand: the outline is of the outer face, seen through the plank";
}

struct edges sawtooth_edges(struct arena *a, const struct stand *at)
{
	struct cuts c = cuts_of(a, at);
	double upper = cuts_upper_edge(&c);
	double depth = depth_at(&c, upper, deepest_step(&c, upper));
	return (struct edges){ upper, upper - width_of(at, depth) / at->rod->cosine };
}

void sawtooth_add(struct pieces *list, const struct stand *at, struct diags *d)
{
	struct arena *a = list->arena;
	const struct rod *r = at->rod;
	struct cuts c = cuts_of(a, at);
	struct edges e = { .upper = cuts_upper_edge(&c) };
	int deepest = deepest_step(&c, e.upper);
	double depth = depth_at(&c, e.upper, deepest);
	double width = width_for(a, at, depth, d);
	e.lower = e.upper - width / r->cosine;
	if (width <= 0 || !foot_fits(a, at, e, d))
		return;
	struct outline faces[2] = { cuts_strike(a, &c, c.outer, e),
		cuts_strike(a, &c, c.inner, e) };
	struct bench b = bench_make(r, e, faces, 2);
	struct part *p = stringer_part(list, at, b, faces[0], width);
	struct stringer *g = (struct stringer *)p->stringer;
	g->throat = width - depth;
	g->throat_at = vec(bench_point(b, back_corner(&c, deepest)).x, 0);
	g->tread_corners = outer_corners(a, &c, b);
	g->inner_corners = inner_corners(a, &c, b);
	if (stringers_have_block(r))
		add_notch(a, p, r, b);
	cuts_mitres_add(a, p, &c, b, "riser cut, 45 degrees back from the outer face");
	if (c.mitred)
		fill_mitred(a, p, g, at, faces, b);
	else
		p->solids = solid_prism(a, profile_of(a, p->outline), 0, at->spec->thickness);
	note_throat(a, p, g);
}
