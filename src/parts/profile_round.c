#include "parts/profile.h"

/*
 * A full round; or, where it is less deep than wide, flat below for balusters, with the edges of
 * the flat eased.  The easing touches the flat and, inside, the big round: its centre is their
 * difference of radii away from the big centre.
 *
 *         .-"""-.
 *        /       \
 *       |    +    |  depth - radius over the flat
 *        \       /
 *         '.___.'    flat
 */

#define LEAST_DEPTH 0.6 /* of the width: less is no round any more */

static struct profile_fault fault(struct profile_sizes z)
{
	double radius = z.width / 2;
	if (z.depth > z.width + NEAR_ENOUGH)
		return (struct profile_fault){ "depth", "a round rail is not deeper than wide",
			z.width };
	if (z.depth < LEAST_DEPTH * z.width)
		return (struct profile_fault){ "depth",
			"so little of its depth is left that the rail is not round any more", 0 };
	if (z.edge_radius > radius / 3)
		return (struct profile_fault){ "edge_radius",
			"that is more than a third of the rail's own radius", radius / 3 };
	return (struct profile_fault){ 0 };
}

static struct outline full(struct arena *a, double r)
{
	struct path p = path_begin(a, 5);
	path_to(&p, 0, 0);
	path_round_to(&p, r, r);
	path_round_to(&p, 0, 2 * r);
	path_round_to(&p, -r, r);
	path_sweep_to(&p, 0, 0, PI / 2);
	return path_close(p);
}

static struct outline strike(struct arena *a, struct profile_sizes z)
{
	double r = z.width / 2, up = z.depth - r;
	double e = fmin(z.edge_radius, fmax(z.width - z.depth, 0));
	if (z.depth > z.width - NEAR_ENOUGH)
		return full(a, r);
	double y = sqrt((r - e) * (r - e) - (up - e) * (up - e));
	double low = atan2(e - up, y);
	struct vec touch = vec(r * cos(low), up + r * sin(low));
	struct path p = path_begin(a, 9);
	path_to(&p, -y, 0);
	path_to(&p, y, 0);
	path_sweep_to(&p, touch.x, touch.y, low + PI / 2);
	path_sweep_to(&p, r, up, -low);
	path_round_to(&p, 0, up + r);
	path_round_to(&p, -r, up);
	path_sweep_to(&p, -touch.x, touch.y, -low);
	path_sweep_to(&p, -y, 0, low + PI / 2);
	return path_close(p);
}

const struct profile_kind profile_round = { fault, strike };
