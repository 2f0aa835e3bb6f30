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
 *
 * A chimney breast that passes some steps stands on the floor:
 *
 *          |                |
 *          |            ____|___ tread 6, cut out at its front
 *          |    (breast)    |
 *      ____|                |    tread 5 ends at its face for the whole of its depth
 *     tread 4, cut out      |
 *          |________________|__ floor
 */

/* Two measurements of the same thing agree within what a tape shows: 1/16 in. */
#define TAPE 1.6

static bool reaches(struct vec3 low, struct vec3 high, struct box b)
{
	return b.x1 > b.x0 && low.x < b.x1 - NEAR_ENOUGH && high.x > b.x0 + NEAR_ENOUGH;
}

/* Is the tread above cut out at the front of this end, if a wall comes up there? */
static bool is_cut_above(const struct rod *r, const struct notch_wall *w)
{
	if (w->notch->at == NOTCH_BACK || w->last >= r->steps)
		return false;
	return !side_open_at(&r->sides[notch_hand(w->notch)], w->last + 1);
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

/* Is the tread above cut out for less than this wall, by a notch of its own?  Then that was
 * measured there, and this wall ends under it. */
static bool is_smaller_above(const struct rod *r, const struct notch_wall *w)
{
	const struct job_treads *job = &r->job->treads;
	double front = w->last * r->run - r->nosing;

	for (int i = 0; i < job->notch_count; i++) {
		const struct job_notch *n = &job->notches[i];
		if (n->step != w->last + 1 || n->at != w->notch->at)
			continue;
		struct notch_wall own = notch_wall_make(r, n);
		if (own.low.x < w->high.x + 2 * job->scribe + NEAR_ENOUGH)
			return own.low.x > fmax(w->low.x, front) + NEAR_ENOUGH ||
				own.high.x < w->high.x - NEAR_ENOUGH ||
				own.low.y > w->low.y + NEAR_ENOUGH ||
				own.high.y < w->high.y - NEAR_ENOUGH;
	}
	return false;
}

static double top_of(const struct rod *r, const struct notch_wall *w)
{
	const struct job_notch *n = w->notch;
	double tread = n->step * r->rise, top = ceiling_over(r, w->low, w->high);
	bool is_flush = w->last == r->risers;
	if (n->height > 0)
		top = fmin(top, tread + n->height);
	double over_x = w->last * r->run - r->nosing;
	if (!is_flush && w->high.x > over_x + NEAR_ENOUGH &&
		(!is_cut_above(r, w) || is_smaller_above(r, w)))
		top = fmin(top, under_nosing(r, w->last));
	return fmax(top, tread);
}

/* Front and back of one that passes steps: at a nosing or a riser where it was measured as good as
 * there. */
static void set_on_tape(const struct rod *r, struct notch_wall *w)
{
	double front = (w->notch->step - 1) * r->run - r->nosing;
	double riser = round(w->high.x / r->run) * r->run;
	if (fabs(w->low.x - front) < TAPE)
		w->low.x = front;
	if (fabs(w->high.x - riser) < TAPE)
		w->high.x = riser;
	w->last = (int)ceil(w->high.x / r->run - NEAR_ENOUGH);
}

struct notch_wall notch_wall_make(const struct rod *r, const struct job_notch *n)
{
	double front = (n->step - 1) * r->run - r->nosing, depth = r->nosing + r->run;
	bool at_back = n->at == NOTCH_BACK, in_corner = !at_back && !node_has(n->src, "from");
	double from = at_back || in_corner ? depth - n->across : n->from;
	double near = at_back ? rod_along(r, &r->sides[HAND_LEFT], n->from) : 0;
	struct notch_wall w = { .notch = n, .last = n->step };
	const struct side *side = &r->sides[n->at == NOTCH_RIGHT ? HAND_RIGHT : HAND_LEFT];
	double y0 = rod_y(r, side, near), y1 = rod_y(r, side, near + n->along);
	w.low = vec3(front + from, fmin(y0, y1), n->step * r->rise - r->tread);
	w.high = vec3(front + from + n->across, fmax(y0, y1), 0);
	w.passes = !at_back && (from + n->across > depth + TAPE || n->across > depth - TAPE);
	if (w.passes) {
		w.low.z = 0;
		set_on_tape(r, &w);
	} else {
		w.high.x = fmin(w.high.x, front + depth);
	}
	w.high.z = top_of(r, &w);
	return w;
}

double notch_beside_riser(const struct rod *r, const struct side *side, int step)
{
	double face = (step - 1) * r->run, foot = (step - 1) * r->rise - r->tread, in = 0;
	for (int i = 0; i < r->job->treads.notch_count; i++) {
		const struct job_notch *n = &r->job->treads.notches[i];
		if (n->at == NOTCH_BACK || notch_hand(n) != side->hand)
			continue;
		struct notch_wall w = notch_wall_make(r, n);
		if (w.passes && w.low.x < face + r->riser - NEAR_ENOUGH &&
			w.high.x > face + NEAR_ENOUGH && w.high.z > foot + NEAR_ENOUGH)
			in = fmax(in, n->along);
	}
	return in;
}
