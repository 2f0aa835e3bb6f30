#include "random/scales.h"

#include "random/overlap.h"

/* A prism of unit thickness on corners in the plane, standing in one place. */
static struct part *prism(struct arena *a, const struct vec *corners, int n, struct frame at)
{
	struct part *p = NEW(a, struct part);
	struct solid *s = NEW(a, struct solid);
	struct vec3 *low = NEW_N(a, struct vec3, n), *high = NEW_N(a, struct vec3, n);
	struct frame *place = NEW(a, struct frame);
	for (int i = 0; i < n; i++) {
		low[i] = vec3(corners[i].x, corners[i].y, 0);
		high[i] = vec3(corners[i].x, corners[i].y, 10);
	}
	*place = at;
	*s = (struct solid){ .n = n, .a = high, .b = low };
	*p = (struct part){ .mark = "", .name = "prism", .solids = s, .places = place, .count = 1 };
	return p;
}

static const struct vec box[] = { { 0, 0 }, { 10, 0 }, { 10, 10 }, { 0, 10 } };
static const struct vec bracket[] = { { 0, 0 }, { 30, 0 }, { 30, 10 }, { 10, 10 }, { 10, 30 },
	{ 0, 30 } };

/* A box that stands in the corner of a bracket, pushed so far into it. */
static double pushed(struct arena *a, double into)
{
	struct part *b = prism(a, bracket, 6, frame_house());
	b->next = prism(a, box, 4, frame_at(10 - into, 10, 0));
	return overlap_find(a, b, 0).depth;
}

/* A box turned by 45 degrees about its own edge, its corner so far inside another. */
static double turned(struct arena *a, double into)
{
	double h = sqrt(0.5);
	struct frame f = { .u = { h, h, 0 }, .v = { -h, h, 0 }, .w = { 0, 0, 1 } };
	f.origin = vec3(5, 10 - into, 0);
	struct part *b = prism(a, box, 4, frame_house());
	b->next = prism(a, box, 4, f);
	return overlap_find(a, b, 0).depth;
}

const char *scales_wrong(struct arena *a)
{
	static const double depths[] = { 0, 0.02, 1, 5 };
	for (int i = 0; i < 4; i++) {
		if (fabs(pushed(a, depths[i]) - depths[i]) > 1e-9)
			return arena_printf(a, "pushed in by %g: measured %g", depths[i],
				pushed(a, depths[i]));
		if (fabs(turned(a, depths[i]) - depths[i]) > 1e-9)
			return arena_printf(a, "a corner %g deep: measured %g", depths[i],
				turned(a, depths[i]));
	}
	return NULL;
}
