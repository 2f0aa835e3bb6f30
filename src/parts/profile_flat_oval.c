#include "parts/profile.h"

/*
 * Flat above and below; each side one sweep between two tighter rounds, all tangent, as a
 * three-centred oval is struck.
 *
 *        __________
 *     .-'          '-.   corner round, touches the flat
 *    (                )  sweep, touches the width half-way up
 *     '-.__________.-'
 *
 * With s from the end of the flat to the width, b from half-way up to the centre of the corner
 * round r, the sweep R follows from  (R - s)^2 + b^2 = (R - r)^2.  It is no tighter than r as long
 * as s is no more than half the depth: of a rail much wider than deep the flat goes on as far as
 * half circles close it.
 */

#define FLAT 0.58 /* of the width, at least */
#define ROUND 0.6 /* corner round, of what there is room for */

static struct profile_fault fault(struct profile_sizes z)
{
	if (z.depth > z.width + NEAR_ENOUGH)
		return (struct profile_fault){ "depth",
			"a flat oval rail lies flat: it is not deeper than wide", z.width };
	return (struct profile_fault){ 0 };
}

static struct outline strike(struct arena *a, struct profile_sizes z)
{
	double y = z.width / 2, mid = z.depth / 2, flat = fmax(FLAT * y, y - mid);
	double s = y - flat, r = ROUND * s, b = mid - r;
	double sweep = (s * s + b * b - r * r) / (2 * (s - r));
	double turn = atan2(b, flat - (y - sweep)); /* half of what the sweep turns by */
	struct vec touch = vec(flat + r * cos(turn), mid + b + r * sin(turn));
	struct path p = path_begin(a, 11);
	path_to(&p, -flat, 0);
	path_to(&p, flat, 0);
	path_sweep_to(&p, touch.x, z.depth - touch.y, PI / 2 - turn);
	path_sweep_to(&p, y, mid, turn);
	path_sweep_to(&p, touch.x, touch.y, turn);
	path_sweep_to(&p, flat, z.depth, PI / 2 - turn);
	path_to(&p, -flat, z.depth);
	path_sweep_to(&p, -touch.x, touch.y, PI / 2 - turn);
	path_sweep_to(&p, -y, mid, turn);
	path_sweep_to(&p, -touch.x, z.depth - touch.y, turn);
	path_sweep_to(&p, -flat, 0, PI / 2 - turn);
	return path_close(p);
}

const struct profile_kind profile_flat_oval = { fault, strike };
