#include "parts/newel.h"

/*
 * The quarter-round under a cap: four pieces round the post, mitred at its
 * corners, long point at the outer edge.
 *
 *      ____________________ cap
 *        |   '.       y out from the post, z up
 *        |  .'
 *   post |'
 */

static struct outline quarter(struct arena *a, double size)
{
	struct path o = path_begin(a, 3);
	path_to(&o, 0, 0);
	path_round_to(&o, size, size);
	path_to(&o, 0, size);
	return path_close(o);
}

static struct outline seen_from_below(struct arena *a, double section, double size)
{
	struct path o = path_begin(a, 4);
	path_to(&o, size, 0);
	path_to(&o, section + size, 0);
	path_to(&o, section + 2 * size, size);
	path_to(&o, 0, size);
	return path_close(o);
}

/* In the post's axes: round it, a quarter turn further each. */
static struct frame piece_place(const struct post *p, double size, int quarters)
{
	double half = p->section / 2;
	struct vec out = vec_rotate(vec(-1, 0), quarters * PI / 2);
	struct frame f = { .v = vec3(0, out.x, out.y), .w = vec3(1, 0, 0) };
	f.u = vec3_cross(f.v, f.w);
	struct vec3 face = vec3(p->height - size, half + half * out.x, half + half * out.y);
	f.origin = vec3_sub(face, vec3_scale(f.u, half + size));
	return f;
}

void cap_moulding_add(struct pieces *list, const struct post *p)
{
	struct arena *a = list->arena;
	double size = p->rod->job->newels.cap.quarter_round, length = p->section + 2 * size;
	for (int i = 0; size > 0 && i < 4; i++) {
		struct part *piece =
			piece_add(list, "newel quarter-round", p->rod->job->material.newels,
				frame_compose(p->place, piece_place(p, size, i)));
		piece->size = (struct part_size){ length, size, size };
		piece->outline = seen_from_below(a, p->section, size);
		piece->section = quarter(a, size);
		piece->start.mitre = piece->end.mitre = PI / 4;
		piece->stuff = STUFF_MOULDING;
		piece->grain = GRAIN_ALONG;
		piece->solids = solid_strip(a, profile_of(a, piece->section),
			(struct end_plane){ size, -1, 0 },
			(struct end_plane){ length - size, 1, 0 });
	}
}
