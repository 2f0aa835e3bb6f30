#include "parts/stretch.h"

#include "parts/level_run.h"

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
	s.foot.rail_top = stretch_rail_top(&s, s.from);
	s.head.rail_top = stretch_rail_top(&s, s.to);
	return s;
}

const struct stretch *stretches_make(struct arena *a, const struct rod *r)
{
	struct stretch *first = NULL, **tail = &first;
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r->sides[i];
		struct stretch *rake = NULL;
		if (side->is_open) {
			rake = NEW(a, struct stretch);
			*rake = raked(r, side);
			*tail = rake;
			tail = &rake->next;
		}
		tail = level_runs_add(a, r, side, rake, tail);
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
