#include "parts/start.h"

/*
 * The block at the rounded end of a starting step: the first riser goes on
 * round it, bent, so both stand on what the stringers stand on.
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

/* A kerf as deep as leaves the skin closes when the board has turned by its width over its depth;
 * they stand so far apart on the face that this turns it as the curve does (computed). */
static double kerf_spacing(const struct rod *r)
{
	double radius = start_radius(r) - r->nosing, depth = r->riser - BENT;
	return depth > 0 && radius > 0 ? radius * r->job->stock.kerf / depth : 0;
}

static const char *kerf_words(struct arena *a, const struct rod *r)
{
	struct lettering l = job_lettering(r->job);
	double spacing = kerf_spacing(r), kerf = r->job->stock.kerf;
	if (spacing < kerf + 1)
		return ""; /* nothing would be left between two */
	return arena_printf(a, ", or kerfed: kerfs %s deep, %s wide, %s apart round the curve",
		length_say(a, l, r->riser - BENT), length_say(a, l, kerf),
		length_say(a, l, spacing));
}

static const char *note(struct arena *a, const struct rod *r, const struct side *side)
{
	struct lettering l = job_lettering(r->job);
	return arena_printf(a,
		"core glued up in layers, %s less than drawn round the curve; the riser goes on "
		"round it thinned to %s%s, or laminated of veneers: %s from the stringer's face to "
		"the block's back end",
		length_say(a, l, BENT), length_say(a, l, BENT), kerf_words(a, r),
		length_say(a, l, start_bent_length(r, side)));
}

void start_block_add(struct pieces *list, const struct rod *r, const struct side *side)
{
	struct arena *a = list->arena;
	struct outline o = start_block_outline(a, r, side);
	struct box at = outline_extent(o);
	double height = rod_first_riser(r);
	struct part *p = piece_add(list, "riser block", r->job->material.risers,
		rod_flat(r, at.x0, at.y0 - r->nosing, r->foot));
	p->outline = outline_moved(a, o, -at.x0, -at.y0);
	p->core = outline_moved(a, start_core_outline(a, r, side, BENT), -at.x0, -at.y0);
	p->size = (struct part_size){ at.x1 - at.x0, at.y1 - at.y0, height };
	/* layers no thicker than the risers, all alike */
	p->makeup.plies = (int)ceil(height / r->riser - NEAR_ENOUGH);
	p->makeup.ply_thickness = height / p->makeup.plies;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, height);
	p->note = note(a, r, side);
}
