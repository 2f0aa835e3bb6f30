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
	if (!stringers_have_block(r))
		return false;
	for (int i = 0; i < 2; i++)
		if (r->sides[i].kind != STRINGER_HOUSED)
			return true;
	return job_carriages(r->job) > 0;
}

/* It must leave something of the first riser cut. */
static bool goes_under(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_stringers *all = &r->job->stringers;
	struct lettering l = job_lettering(r->job);
	double room = rod_first_riser(r) - 1;
	if (all->block_thickness <= room)
		return true;
	diag_error(d, rod_pos(r, all->src, "thrust_block"),
		room > 0 ? job_write_most(a, r->job, "stringers.thrust_block.thickness", room)
			 : "leave it out",
		"a thrust block %s thick does not go under the first tread: there is room for %s",
		length_say(a, l, all->block_thickness), length_say(a, l, fmax(0, room)));
	return false;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_block };
	struct rod r = rod_make(s, f);
	if (!is_wanted(&r) || !goes_under(a, &r, d))
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
