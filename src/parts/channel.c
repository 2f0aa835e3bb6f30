#include "parts/channel.h"

#include "parts/nosing.h"

struct channel channel_make(struct arena *a, const struct stand *at)
{
	const struct rod *r = at->rod;
	struct channel c = { .a = a, .at = at, .rod = r };
	c.taper = r->riser > 0 ? r->job->stringers.wedge_taper : INFINITY;
	c.front_x = -r->nosing - HOUSED_FRONT;
	return c;
}

double channel_riser_face(const struct rod *r, int step)
{
	return (step - 1) * r->run;
}

double channel_tread_top(const struct rod *r, int step)
{
	return step * r->rise;
}

double channel_nosing_under(const struct rod *r)
{
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	return nosing_under(&n);
}

/* Lower line of a tread's groove: tight under the nosing, opening backwards for the wedge. */
double channel_tread_bottom(const struct channel *c, int step, double x)
{
	const struct rod *r = c->rod;
	double front = channel_riser_face(r, step) - r->nosing +
		(r->riser > 0 ? 0 : channel_nosing_under(r));
	return channel_tread_top(r, step) - r->tread - (x - front) / c->taper;
}

/* Back line of a riser's groove: tight under its tread, opening downwards for the wedge. */
static double groove_back(const struct channel *c, int step, double z)
{
	const struct rod *r = c->rod;
	return channel_riser_face(r, step) + r->riser +
		(channel_tread_top(r, step) - r->tread - z) / c->taper;
}

/* Where the lower line of a tread's groove meets the back line of a riser's: each step of the
 * iteration comes taper squared times nearer. */
struct vec channel_corner(const struct channel *c, int tread, int riser)
{
	double x = channel_riser_face(c->rod, riser) + c->rod->riser, z = 0;
	for (int k = 0; k < 24; k++) {
		z = channel_tread_bottom(c, tread, x);
		x = groove_back(c, riser, z);
	}
	return vec(x, z);
}

/* Where the groove of the last tread runs out through the head cut. */
static double exit_z(const struct channel *c)
{
	return channel_tread_bottom(c, c->rod->steps, c->rod->header_x);
}

static void strike_nosing(struct path *p, const struct rod *r, int step)
{
	double front = channel_riser_face(r, step) - r->nosing, top = channel_tread_top(r, step);
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	nosing_strike_up(p, &n, front, top - r->tread);
}

/* The last riser stands against the head cut, in a groove that is open there. */
static bool has_last_riser(const struct rod *r)
{
	return r->steps < r->risers && r->riser > 0;
}

double channel_last_riser(const struct rod *r)
{
	return has_last_riser(r) ? r->top - r->tread - channel_tread_top(r, r->steps) : 0;
}

/* What lies above the channel, counter-clockwise. */
struct outline channel_above(const struct channel *c)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(c->a, (NOSING_ROOM + 3) * r->steps + 12);
	if (r->riser > 0)
		path_to(&p, c->front_x, r->foot);
	else
		path_to(&p, c->front_x, channel_tread_top(r, 1) - r->tread);
	for (int i = 1; i <= r->steps; i++) {
		if (r->riser > 0) {
			path_to(&p, channel_riser_face(r, i),
				i > 1 ? channel_tread_top(r, i - 1) : r->foot);
			path_to(&p, channel_riser_face(r, i), channel_tread_top(r, i) - r->tread);
		}
		strike_nosing(&p, r, i);
		path_to(&p, channel_riser_face(r, i + 1), channel_tread_top(r, i));
	}
	if (has_last_riser(r)) {
		path_to(&p, channel_riser_face(r, r->risers), r->top - r->tread);
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
			struct vec outer = channel_corner(c, i, i + 1);
			path_to(p, outer.x, outer.y);
		}
		struct vec inner = channel_corner(c, i, i);
		path_to(p, inner.x, inner.y);
	}
}

static void strike_treads_below(struct path *p, const struct channel *c)
{
	const struct rod *r = c->rod;
	for (int i = r->steps; i >= 1; i--) {
		double back = channel_riser_face(r, i + 1);
		if (i < r->steps) {
			path_to(p, back, channel_tread_top(r, i));
			path_to(p, back, channel_tread_bottom(c, i, back));
		}
		path_to(p, channel_riser_face(r, i) - r->nosing + channel_nosing_under(r),
			channel_tread_top(r, i) - r->tread);
	}
	path_to(p, c->front_x, channel_tread_top(r, 1) - r->tread);
}

/* What lies below it. */
struct outline channel_below(const struct channel *c)
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

struct outline channel_plank(const struct channel *c)
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
double channel_reach(const struct channel *c)
{
	const struct rod *r = c->rod;
	struct vec low = vec(r->header_x, exit_z(c));
	double reach = (c->edges.upper + r->slope * low.x - low.y) * r->cosine;
	for (int i = 1; i < r->steps; i++) {
		low = r->riser > 0
			? channel_corner(c, i, i + 1)
			: vec(channel_riser_face(r, i + 1),
				  channel_tread_bottom(c, i, channel_riser_face(r, i + 1)));
		reach = fmax(reach, (c->edges.upper + r->slope * low.x - low.y) * r->cosine);
	}
	return reach;
}

/* Lower end of a riser's groove: on the floor, or at the back of the tread below. */
static struct vec riser_low(const struct channel *c, int step)
{
	const struct rod *r = c->rod;
	if (step == 1)
		return vec(groove_back(c, 1, r->foot), r->foot);
	return channel_corner(c, step - 1, step);
}

/* One step's share of the channel: riser groove below, tread groove above; with the last one goes
 * what is left for the last riser, up to the underside of the floor's nosing piece. */
struct outline channel_step(const struct channel *c, int i)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(c->a, NOSING_ROOM + 10);
	double face = channel_riser_face(r, i), back = channel_riser_face(r, i + 1);
	if (r->riser > 0) {
		path_to(&p, face, i > 1 ? channel_tread_top(r, i - 1) : r->foot);
		path_to(&p, face, channel_tread_top(r, i) - r->tread);
	}
	strike_nosing(&p, r, i);
	path_to(&p, back, channel_tread_top(r, i));
	if (i == r->steps) {
		double up = has_last_riser(r) ? r->top - r->tread : channel_tread_top(r, i);
		if (has_last_riser(r))
			path_to(&p, back, up);
		path_to(&p, r->header_x, up);
		path_to(&p, r->header_x, exit_z(c));
	} else if (r->riser > 0) {
		struct vec low = riser_low(c, i + 1);
		path_to(&p, low.x, low.y);
	} else {
		path_to(&p, back, channel_tread_bottom(c, i, back));
	}
	if (r->riser > 0) {
		struct vec corner = channel_corner(c, i, i), low = riser_low(c, i);
		path_to(&p, corner.x, corner.y);
		path_to(&p, low.x, low.y);
	}
	return path_close(p);
}

/* Width of plank below which the foot would not come down to what it stands on. */
double channel_foot_reach(const struct channel *c)
{
	const struct rod *r = c->rod;
	double x = r->riser > 0 ? groove_back(c, 1, r->foot) : c->front_x;
	return (c->edges.upper + r->slope * x - r->foot) * r->cosine;
}
