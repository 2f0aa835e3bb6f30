#include "parts/existing.h"
#include "parts/tread.h"

/*
 * What a tread is cut out for stands in the cut.  No more of it than the tread
 * is thick: how it goes on above and below is not known.
 */
static const struct work notched_wall = { EXISTING_WALL, "wall in a tread" };

static void notched_wall_add(struct pieces *list, const struct tread_plan *t,
	const struct tread_end *e, const struct gap *g)
{
	const struct rod *r = t->rod;
	struct box b = tread_gap_box(t, e, g);
	double front = tread_front(t), top = t->step * r->rise, off = g->allowance;
	if (!g->is_existing)
		return;
	b.x0 = fmax(b.x0 + (b.x0 > 0 ? off : 0), 0);
	b.x1 = fmin(b.x1 - (b.x1 < r->width ? off : 0), r->width);
	b.y0 += b.y0 > 0 ? off : 0;
	b.y1 -= b.y1 < t->depth ? off : 0;
	existing_box_add(list, r, notched_wall, vec3(front + b.y0, r->width - b.x1, top - r->tread),
		vec3(front + b.y1, r->width - b.x0, top));
}

void existing_notched_walls_add(struct pieces *list, const struct rod *r)
{
	for (int step = 1; step <= r->steps; step++) {
		struct tread_plan t = tread_plan_make(r, step);
		for (int i = 0; i < 2; i++)
			for (int k = 0; k < t.ends[i].gaps.n; k++)
				notched_wall_add(list, &t, &t.ends[i], &t.ends[i].gaps.at[k]);
		for (int k = 0; k < t.back.n; k++)
			notched_wall_add(list, &t, NULL, &t.back.at[k]);
	}
}
