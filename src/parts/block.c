#include "parts/stringer.h"

/*
 * The thrust block: nailed to the floor across the foot of the flight, in the
 * notches of the sawtooth and mitred stringers; between housed ones, which have
 * no notch.
 */

static double end_in(const struct side *side)
{
	return side->kind == STRINGER_HOUSED ? side->inner : side->outer;
}

/* Is any stringer notched for it? */
static bool is_wanted(const struct rod *r)
{
	const struct job_stringers *all = &r->job->stringers;
	if (all->block_thickness <= 0 || all->block_width <= 0)
		return false;
	for (int i = 0; i < 2; i++)
		if (r->sides[i].kind != STRINGER_HOUSED)
			return true;
	struct stand right = side_stand(r, HAND_RIGHT), left = side_stand(r, HAND_LEFT);
	return middle_count(r, (left.y0 + left.y1 - right.y0 - right.y1) / 2) > 0;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_block };
	struct rod r = rod_make(s, f);
	(void)d;
	if (!is_wanted(&r))
		return NULL;
	double x0 = rod_along(&r, &r.sides[HAND_LEFT], end_in(&r.sides[HAND_LEFT]));
	double x1 = rod_along(&r, &r.sides[HAND_RIGHT], end_in(&r.sides[HAND_RIGHT]));
	double width = r.job->stringers.block_width, thickness = r.job->stringers.block_thickness;
	struct part *p = piece_add(&list, "thrust block", r.job->material.stringers,
		rod_flat(&r, x0, r.riser, r.foot));
	p->size = (struct part_size){ x1 - x0, width, thickness };
	p->outline = outline_box(a, 0, 0, x1 - x0, width);
	p->solids = solid_box(a, vec3(0, 0, 0), vec3(x1 - x0, width, thickness));
	return list.first;
}

const struct part_kind part_block = { "thrust block", "K", make };
