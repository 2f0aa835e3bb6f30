#include "parts/stretch.h"

/* On the rake, along one side of the flight. */
static struct stretch raked(const struct rod *r, const struct side *side)
{
	struct frame axes = frame_at(0, rod_y(r, side, side->rail), 0);
	struct stretch s = { .rod = r, .side = side, .from = side->foot.x, .to = side->head.x };
	s.axes = frame_compose(r->flight->frame, axes);
	s.feet = side->kind == STRINGER_HOUSED ? FEET_ON_EDGE : FEET_ON_TREADS;
	s.foot = side->foot;
	s.head = side->head;
	s.slope = r->slope;
	s.pitch = r->pitch;
	s.cosine = r->cosine;
	s.rail_top = rod_nosing_z(r, 0) + r->job->rail.height;
	return s;
}

const struct stretch *stretches_make(struct arena *a, const struct rod *r)
{
	struct stretch *first = NULL, **tail = &first;
	for (int i = 0; i < 2; i++) {
		if (!r->sides[i].is_open)
			continue;
		*tail = NEW(a, struct stretch);
		**tail = raked(r, &r->sides[i]);
		tail = &(*tail)->next;
	}
	return first;
}

double stretch_rail_top(const struct stretch *s, double x)
{
	return s->rail_top + x * s->slope;
}

double stretch_rail_under(const struct stretch *s, double x)
{
	return stretch_rail_top(s, x) - s->rod->job->rail.depth / s->cosine;
}

double stretch_foot(const struct stretch *s, double x)
{
	switch (s->feet) {
	case FEET_ON_TREADS: return (floor(x / s->rod->run + NEAR_ENOUGH) + 1) * s->rod->rise;
	case FEET_ON_EDGE: return rod_housed_edge_z(s->rod, x);
	case FEET_ON_FLOOR: return s->floor;
	}
	return s->floor;
}
