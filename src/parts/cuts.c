#include "parts/cuts.h"

#include <assert.h>

/*
 *                 x_i + riser
 *                     |________  i * rise - tread
 *                     |        |
 *          upper .'   |  tread cut
 *          edge   ____|  riser cut
 *              .'|
 *
 * A mitred riser cut is sawn at 45 degrees: on the outer face it lies in the
 * face of the riser, and runs back through the thickness (Building Trades
 * Pocketbook: thickness of the string square across, then corner to corner).
 */

bool cuts_is_mitred(const struct cuts *c, int step)
{
	const struct side *side = c->mitred_at;
	if (!side || !side_shows_riser(side, step))
		return false;
	/* behind a newel the cut is square, and where the first riser goes on past it */
	return step > 1 || !(side_has_foot_newel(side) || side->start > 0);
}

struct cuts cuts_make(struct arena *a, const struct rod *r, const struct side *mitred_at,
	double thickness)
{
	struct cuts c = { .rod = r,
		.mitred_at = mitred_at,
		.outer = NEW_N(a, double, r->steps),
		.inner = NEW_N(a, double, r->steps),
		.last = r->steps - 1,
		.back = r->header_x };
	for (int i = 0; i < r->steps; i++) {
		bool mitred = cuts_is_mitred(&c, i + 1);
		c.outer[i] = i * r->run + (mitred ? 0 : r->riser);
		c.inner[i] = i * r->run + (mitred ? thickness : r->riser);
		c.mitred = c.mitred || mitred;
	}
	return c;
}

double cuts_tread_z(const struct rod *r, int i)
{
	return (i + 1) * r->rise - r->tread;
}

double cuts_upper_edge(const struct cuts *c)
{
	double upper = -INFINITY;
	for (int i = c->first; i <= c->last; i++) {
		double corner = cuts_tread_z(c->rod, i) - c->outer[i] * c->rod->slope;
		upper = fmax(upper, corner);
	}
	return upper;
}

/* The plumb end that it has where it does not go down to the floor's first riser. */
static void strike_front(struct path *p, const struct cuts *c, struct edges e, double foot_end)
{
	const struct rod *r = c->rod;
	if (c->front >= foot_end) {
		path_to(p, c->front, e.lower + r->slope * c->front);
		return;
	}
	path_to(p, c->front, r->foot);
	path_to(p, fmin(foot_end, c->back), r->foot);
}

/* From the front of the foot along the floor to the lower edge. */
static void strike_foot(struct path *p, const struct cuts *c, double front, double foot_end)
{
	const struct rod *r = c->rod;
	if (c->block) {
		double up = r->foot + r->job->stringers.block_thickness;
		double back = r->riser + r->job->stringers.block_width;
		path_to(p, front, up);
		path_to(p, back, up);
		path_to(p, back, r->foot);
	} else {
		path_to(p, front, r->foot);
	}
	path_to(p, fmin(foot_end, c->back), r->foot);
}

struct outline cuts_strike(struct arena *a, const struct cuts *c, const double *riser_x,
	struct edges e)
{
	const struct rod *r = c->rod;
	struct path p = path_begin(a, 2 * r->steps + 8);
	double foot_end = foot_end_x(r, e);
	if (c->first == 0)
		strike_foot(&p, c, riser_x[0], foot_end);
	else
		strike_front(&p, c, e, foot_end);
	if (foot_end < c->back)
		path_to(&p, c->back, e.lower + r->slope * c->back);
	path_to(&p, c->back, cuts_tread_z(r, c->last));
	for (int i = c->last; i >= c->first; i--) {
		path_to(&p, riser_x[i], cuts_tread_z(r, i));
		if (i > c->first)
			path_to(&p, riser_x[i], cuts_tread_z(r, i - 1));
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

struct solid *cuts_solid(struct arena *a, struct bench b, const struct outline faces[2],
	enum side_hand hand, double thickness)
{
	bool right = hand == HAND_RIGHT;
	assert(faces[0].n == faces[1].n);
	return solid_join(a, faces[0].n, face_points(a, b, faces[0], right ? thickness : 0),
		face_points(a, b, faces[1], right ? 0 : thickness), NULL);
}

void cuts_mitres_add(struct arena *a, struct part *p, const struct cuts *c, struct bench b,
	const char *text)
{
	const struct rod *r = c->rod;
	for (int i = 0; i < r->steps; i++) {
		if (!cuts_is_mitred(c, i + 1))
			continue;
		struct path line = path_begin(a, 2);
		double low = i > 0 ? cuts_tread_z(r, i - 1) : r->foot;
		path_to(&line, c->outer[i], low);
		path_to(&line, c->outer[i], cuts_tread_z(r, i));
		struct feature f = { .kind = FEATURE_MITRE, .angle = PI / 4, .text = text };
		f.at = bench_outline(a, b, path_close(line));
		piece_feature(a, p, f);
	}
}
