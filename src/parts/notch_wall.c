#include "parts/existing.h"
#include "parts/landing.h"
#include "parts/tread.h"

/*
 * The wall that a tread is cut out for, from the underside of that tread up:
 *
 *          |    |      to the upper floor, or as high as the job says
 *      ____|____|
 *     (____ tread above, cut out at its front where the wall comes up through it
 *          |    |
 *     _____|    |
 *     _____ tread
 *
 * At the back it ends under the nosing above, which is not cut out anywhere but at
 * its ends; so it does where that nosing belongs to an open end or to the floor.
 * What of it goes on below the tread is behind the riser, and in nobody's way.
 */

static bool reaches(struct vec3 low, struct vec3 high, struct box b)
{
	return b.x1 > b.x0 && low.x < b.x1 - NEAR_ENOUGH && high.x > b.x0 + NEAR_ENOUGH;
}

/* Is the tread above cut out at the front of this end, if a wall comes up there? */
static bool is_cut_above(const struct rod *r, const struct job_notch *n)
{
	if (n->at == NOTCH_BACK || n->step >= r->steps)
		return false;
	const struct side *side = &r->sides[n->at == NOTCH_LEFT ? HAND_LEFT : HAND_RIGHT];
	return !side_open_at(side, n->step + 1);
}

/* The lowest of what is over the back of this tread. */
static double under_nosing(const struct rod *r, int step)
{
	const struct job_mouldings *m = &r->job->mouldings;
	double moulding = m->under_nosing == MOULDING_NONE ? 0 : m->under_height;
	double nosing = step < r->steps ? r->tread : landing_thickness(r);
	double bar = r->riser > 0 ? 0 : r->job->risers.bar;
	return (step + 1) * r->rise - nosing - fmax(moulding, bar);
}

/* Where a guard stands on the wall, the wall ends under the floor. */
static double ceiling_over(const struct rod *r, struct vec3 low, struct vec3 high)
{
	double ceiling = r->top - existing_floor_depth(r);
	return reaches(low, high, existing_floor_over_foot(r)) || r->job->rail.level_run_count > 0
		? ceiling
		: r->top;
}

static double top_of(const struct rod *r, const struct job_notch *n, struct vec3 low,
	struct vec3 high)
{
	double tread = n->step * r->rise, top = ceiling_over(r, low, high);
	bool is_flush = n->step == r->risers;
	if (n->height > 0)
		top = fmin(top, tread + n->height);
	double over_x = n->step * r->run - r->nosing;
	if (!is_flush && high.x > over_x + NEAR_ENOUGH && !is_cut_above(r, n))
		top = fmin(top, under_nosing(r, n->step));
	return fmax(top, tread);
}

struct notch_wall notch_wall_make(const struct rod *r, const struct job_notch *n)
{
	double front = (n->step - 1) * r->run - r->nosing, depth = r->nosing + r->run;
	bool at_back = n->at == NOTCH_BACK, in_corner = !at_back && !node_has(n->src, "from");
	double from = at_back || in_corner ? depth - n->across : n->from;
	double near = at_back ? rod_along(r, &r->sides[HAND_LEFT], n->from) : 0;
	struct notch_wall w = { .notch = n };
	const struct side *side = &r->sides[n->at == NOTCH_RIGHT ? HAND_RIGHT : HAND_LEFT];
	double y0 = rod_y(r, side, near), y1 = rod_y(r, side, near + n->along);
	w.low = vec3(front + from, fmin(y0, y1), n->step * r->rise - r->tread);
	w.high = vec3(front + fmin(from + n->across, depth), fmax(y0, y1), 0);
	w.high.z = top_of(r, n, w.low, w.high);
	return w;
}
