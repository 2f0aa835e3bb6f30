#include "parts/profile.h"

static const struct profile_kind *const kinds[] = {
	[PROFILE_MOULDED] = &profile_moulded,
	[PROFILE_FLAT_OVAL] = &profile_flat_oval,
	[PROFILE_ROUND] = &profile_round,
	[PROFILE_SQUARE] = &profile_square,
};

struct profile_sizes profile_of_rail(const struct job_rail *rail)
{
	return (struct profile_sizes){ rail->profile, rail->width, rail->depth, rail->edge_radius,
		rail->recess };
}

struct profile_sizes profile_of_wall_rail(const struct job_wall_rail *rail)
{
	return (struct profile_sizes){ rail->profile, rail->width, rail->depth, rail->edge_radius,
		rail->recess };
}

struct profile_fault profile_fault_of(struct profile_sizes z)
{
	return kinds[z.kind]->fault(z);
}

struct rail_profile profile_make(struct arena *a, struct profile_sizes z)
{
	struct rail_profile p = profile_measured(kinds[z.kind]->strike(a, z));
	p.kind = z.kind;
	return p;
}

void path_sweep_to(struct path *p, double x, double y, double sweep)
{
	path_arc_to(p, x, y, tan(sweep / 4));
}

/* How far a facet may lie from its round. */
#define FACET_ERROR 0.2

static int facet_count(struct corner_arc arc)
{
	double step = 2 * acos(fmax(1 - FACET_ERROR / arc.radius, 0.5));
	return (int)ceil(fabs(arc.to - arc.from) / step - NEAR_ENOUGH);
}

/* The direction in which a chain leaves a corner, and that in which it comes to the next. */
static struct vec leaving(struct corner c, struct vec next)
{
	return vec_rotate(vec_unit(vec_sub(next, c.at)), -2 * atan(c.bulge));
}

static struct vec arriving(struct corner c, struct vec next)
{
	return vec_rotate(vec_unit(vec_sub(next, c.at)), 2 * atan(c.bulge));
}

/* Sharp, or where a round turns into a hollow. */
static bool is_edge(struct corner before, struct corner c, struct vec next)
{
	double turn = vec_cross(arriving(before, c.at), leaving(c, next));
	return fabs(turn) > 1e-3 || before.bulge * c.bulge < 0;
}

struct profile profile_facets(struct arena *a, struct outline o)
{
	int room = 0;
	for (int i = 0; i < o.n; i++)
		room += o.corners[i].bulge != 0
			? facet_count(corner_arc(o.corners[i], o.corners[(i + 1) % o.n].at))
			: 1;
	struct profile f = { NEW_N(a, struct vec, room), NEW_N(a, unsigned char, room), 0 };
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i], before = o.corners[(i + o.n - 1) % o.n];
		struct vec next = o.corners[(i + 1) % o.n].at;
		f.at[f.n] = c.at;
		f.soft[f.n++] = is_edge(before, c, next) ? 0 : SOFT_SIDE;
		if (c.bulge == 0)
			continue;
		struct corner_arc arc = corner_arc(c, next);
		int n = facet_count(arc);
		for (int k = 1; k < n; k++) {
			f.at[f.n] = corner_arc_point(arc, (double)k / n);
			f.soft[f.n++] = SOFT_SIDE;
		}
	}
	return f;
}
