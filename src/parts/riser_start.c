#include "parts/start.h"

/*
 * The block at the rounded end of a starting step: the first riser goes on
 * round it, bent.
 *
 *     riser 1, straight       .-'''-.
 *     _______________________/       \  bent face
 *                            | block  |
 *                            |_______/
 */

/* What a straight-grained riser is thinned to where it is bent (common practice). */
#define BENT 3.0

/* Of the curve that the face is bent to, its two quarters and what is straight between. */
double start_bent_length(const struct rod *r, const struct side *side)
{
	double radius = fmax(start_radius(r) - r->nosing, 0), back = start_back(r) - r->nosing;
	double out = side->start - r->nosing;
	return 2 * (out - radius) + PI * radius + (back - r->nosing - 2 * radius);
}

static const char *note(struct arena *a, const struct rod *r, const struct side *side)
{
	struct lettering l = job_lettering(r->job);
	return arena_printf(a,
		"core glued up in layers, %s less than drawn round the curve; the riser goes on "
		"round it thinned to %s, or kerfed: %s from the stringer's face to the block's "
		"back end",
		length_say(a, l, BENT), length_say(a, l, BENT),
		length_say(a, l, start_bent_length(r, side)));
}

void start_block_add(struct pieces *list, const struct rod *r, const struct side *side)
{
	struct arena *a = list->arena;
	struct outline o = start_block_outline(a, r, side);
	struct box at = outline_extent(o);
	double height = r->rise - r->tread;
	struct part *p = piece_add(list, "riser block", r->job->material.risers,
		rod_flat(r, at.x0, at.y0 - r->nosing, 0));
	p->outline = outline_moved(a, o, -at.x0, -at.y0);
	p->size = (struct part_size){ at.x1 - at.x0, at.y1 - at.y0, height };
	/* layers no thicker than the risers, all alike */
	p->makeup.plies = (int)ceil(height / r->riser - NEAR_ENOUGH);
	p->makeup.ply_thickness = height / p->makeup.plies;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, height);
	p->note = note(a, r, side);
}
