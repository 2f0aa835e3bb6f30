#include "parts/cap.h"

/*
 * A pyramid of four pieces of board, mitred to each other, on a square plate.
 * Each is a triangle; face down on the saw, its foot against the mitre gauge:
 *
 *              /\
 *            /    \      slant
 *          /        \
 *        /____________\   foot, bevelled to lie on the plate
 */

/* Outer face up: x along its foot, y up the slope, z through the board. */
static struct solid *piece_solid(struct arena *a, const struct cap *c)
{
	struct vec3 *outer = NEW_N(a, struct vec3, 3), *inner = NEW_N(a, struct vec3, 3);
	double in = c->board / sin(c->slope), up = c->board / tan(c->slope);
	outer[0] = vec3(0, 0, c->board);
	outer[1] = vec3(c->width, 0, c->board);
	outer[2] = vec3(c->width / 2, c->slant, c->board);
	inner[0] = vec3(in, up, 0);
	inner[1] = vec3(c->width - in, up, 0);
	inner[2] = vec3(c->width / 2, c->slant - c->board * tan(c->slope), 0);
	return solid_join(a, 3, outer, inner, NULL);
}

static struct outline triangle(struct arena *a, const struct cap *c)
{
	struct path o = path_begin(a, 3);
	path_to(&o, 0, 0);
	path_to(&o, c->width, 0);
	path_to(&o, c->width / 2, c->slant);
	return path_close(o);
}

/* On the plate, a quarter turn further each, in the axes of the cap. */
static struct frame piece_place(const struct cap *c, int quarter)
{
	double half = c->width / 2;
	struct vec along = vec_rotate(vec(1, 0), quarter * PI / 2);
	struct vec out = vec_rotate(vec(0, -1), quarter * PI / 2);
	struct frame f = { .u = vec3(along.x, along.y, 0) };
	f.v = vec3(-out.x * cos(c->slope), -out.y * cos(c->slope), sin(c->slope));
	f.w = vec3_cross(f.u, f.v);
	struct vec corner = vec_add(vec(half, half), vec_scale(vec_sub(out, along), half));
	struct vec3 foot = vec3(corner.x, corner.y, c->edge);
	f.origin = vec3_sub(foot, vec3_scale(f.w, c->board));
	return f;
}

static void add_settings(struct arena *a, struct part *p)
{
	const struct cap *c = p->cap;
	struct feature f = { .kind = FEATURE_MITRE, .angle = c->mitre_gauge };
	f.text = arena_printf(a,
		"ends, face down: mitre gauge %.1f degrees off square, blade tilted %.1f degrees; "
		"off a length that is held down",
		c->mitre_gauge * 180 / PI, c->mitre_tilt * 180 / PI);
	piece_feature(a, p, f);
	f.kind = FEATURE_SAWN;
	f.sawn = (struct sawn){ c->foot_tilt, 0, 0, 1, "foot on edge, face against the fence" };
	f.text = arena_printf(a,
		"foot, to lie on the plate: before the ends, on edge, face to the fence, blade "
		"tilted %.1f degrees",
		c->foot_tilt * 180 / PI);
	piece_feature(a, p, f);
}

void cap_mitred_add(struct pieces *list, const struct post *p, const struct cap *c)
{
	struct arena *a = list->arena;
	struct cap *facts = NEW(a, struct cap);
	struct part *plate = cap_square_add(list, p, "newel cap plate", c->width, c->edge);
	*facts = *c;
	plate->solids = solid_box(a, vec3(0, 0, 0), vec3(c->width, c->width, c->edge));
	for (int i = 0; i < 4; i++) {
		struct part *piece =
			piece_add(list, "newel cap slope", p->rod->job->material.newels,
				frame_compose(cap_place(p, c->width), piece_place(c, i)));
		piece->size = (struct part_size){ c->width, c->slant, c->board };
		piece->outline = triangle(a, c);
		piece->start = (struct end_cut){ c->mitre_gauge, c->mitre_tilt };
		piece->end = piece->start;
		piece->grain = GRAIN_ALONG;
		piece->cap = facts;
		piece->solids = piece_solid(a, c);
		add_settings(a, piece);
	}
}
