#include "parts/existing.h"

/*
 * Layers of a floor, and how pieces of existing work are added: they are drawn
 * in the flight's own axes.
 *
 *      far ______________ edge
 *         |            __|
 *         |           |__   notch, round what stands in it
 *         |______________|
 */

void layer_notch(struct layer *l, double ya, double yb, double x)
{
	l->notches[l->n++] = (struct layer_notch){ fmin(ya, yb), fmax(ya, yb), x };
}

static double edge_at(const struct layer *l, double y)
{
	double x = l->edge;
	for (int i = 0; i < l->n; i++) {
		const struct layer_notch *k = &l->notches[i];
		if (y > k->y0 && y < k->y1)
			x = l->far > l->edge ? fmax(x, k->x) : fmin(x, k->x);
	}
	return x;
}

/* The next y above this one at which the edge may jump. */
static double next_y(const struct layer *l, double y)
{
	double next = l->y1;
	for (int i = 0; i < l->n; i++) {
		double ys[2] = { l->notches[i].y0, l->notches[i].y1 };
		for (int k = 0; k < 2; k++)
			if (ys[k] > y + NEAR_ENOUGH && ys[k] < next)
				next = ys[k];
	}
	return next;
}

struct outline layer_outline(struct arena *a, const struct layer *l)
{
	struct path p = path_begin(a, 32);
	path_to(&p, l->far, l->y1);
	path_to(&p, l->far, l->y0);
	for (double y = l->y0, next; y < l->y1 - NEAR_ENOUGH; y = next) {
		next = next_y(l, y);
		double x = edge_at(l, (y + next) / 2);
		path_to(&p, x, y);
		path_to(&p, x, next);
	}
	return path_close(p);
}

struct solid *layer_rest(struct arena *a, const struct layer *l, double from, struct vec z,
	struct solid *s)
{
	for (double y = l->y0, next; y < l->y1 - NEAR_ENOUGH; y = next) {
		next = next_y(l, y);
		double edge = edge_at(l, (y + next) / 2);
		if (edge > from + NEAR_ENOUGH)
			s = solid_add(s, solid_box(a, vec3(from, y, z.x), vec3(edge, next, z.y)));
	}
	return s;
}

struct part *existing_slab_add(struct pieces *list, const struct rod *r, struct work work,
	struct outline plan, double z0, double z1)
{
	struct box b = outline_extent(plan);
	struct part *p = piece_add(list, work.name, "", r->flight->frame);
	p->existing = work.kind;
	p->outline = plan;
	p->size = (struct part_size){ b.x1 - b.x0, b.y1 - b.y0, z1 - z0 };
	p->solids = solid_prism(list->arena, profile_of(list->arena, plan), z0, z1);
	return p;
}

void existing_box_add(struct pieces *list, const struct rod *r, struct work work, struct vec3 from,
	struct vec3 to)
{
	existing_slab_add(list, r, work, outline_box(list->arena, from.x, from.y, to.x, to.y),
		from.z, to.z);
}

double existing_beside(const struct side *side)
{
	return fmax(BESIDE, side->start + BESIDE / 4);
}

/* How far a floor reaches past the limit of a side at a step. */
static double beside(const struct side *side, int step)
{
	return side_open_at(side, step) ? existing_beside(side) : 0;
}

struct layer layer_of(const struct rod *r, int step, double far, double edge)
{
	struct layer l = { .rod = r, .far = far, .edge = edge };
	l.y0 = -beside(&r->sides[HAND_RIGHT], step);
	l.y1 = r->width + beside(&r->sides[HAND_LEFT], step);
	return l;
}

double existing_back(const struct rod *r)
{
	return r->header_x + BEYOND;
}
