#include "parts/profile.h"

/* A rectangle, its four edges eased. */

static struct profile_fault fault(struct profile_sizes z)
{
	double most = fmin(z.width, z.depth) / 2;
	if (z.edge_radius > most + NEAR_ENOUGH)
		return (struct profile_fault){ "edge_radius",
			"that is more than half of the rail's width or depth", most };
	return (struct profile_fault){ 0 };
}

static struct outline strike(struct arena *a, struct profile_sizes z)
{
	double y = z.width / 2, r = z.edge_radius;
	struct path p = path_begin(a, 9);
	path_to(&p, r - y, 0);
	path_to(&p, y - r, 0);
	path_round_to(&p, y, r);
	path_to(&p, y, z.depth - r);
	path_round_to(&p, y - r, z.depth);
	path_to(&p, r - y, z.depth);
	path_round_to(&p, -y, z.depth - r);
	path_to(&p, -y, r);
	path_sweep_to(&p, r - y, 0, PI / 2);
	return path_close(p);
}

const struct profile_kind profile_square = { fault, strike };
