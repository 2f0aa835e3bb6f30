#include "draw/shape.h"

/* The arc over a chord: bulge is the tangent of a quarter of the swept angle. */
static void draw_bulge(struct drawing *g, enum pen pen, struct vec a, struct vec b, double bulge)
{
	struct vec chord = vec_sub(b, a);
	double length = vec_length(chord), radius = length * (1 + bulge * bulge) / (4 * bulge);
	struct vec middle = vec_scale(vec_add(a, b), 0.5);
	double inward = length / 2 * (1 - bulge * bulge) / (2 * bulge);
	struct vec centre = vec_add(middle, vec_scale(vec_left(vec_unit(chord)), inward));
	struct vec from = bulge > 0 ? vec_sub(a, centre) : vec_sub(b, centre);
	struct vec to = bulge > 0 ? vec_sub(b, centre) : vec_sub(a, centre);
	double start = atan2(from.y, from.x), end = atan2(to.y, to.x);

	if (end < start)
		end += 2 * PI;
	draw_arc(g, pen, centre, fabs(radius), start, end);
}

static bool is_straight(struct outline o)
{
	for (int i = 0; i < o.n; i++)
		if (fabs(o.corners[i].bulge) > NEAR_ENOUGH)
			return false;
	return true;
}

void draw_outline(struct drawing *g, enum pen pen, struct outline o, struct placing at)
{
	struct vec *p = NEW_N(g->arena, struct vec, o.n);

	for (int i = 0; i < o.n; i++)
		p[i] = placing_at(at, o.corners[i].at);
	if (is_straight(o)) {
		draw_polygon(g, pen, p, o.n);
		return;
	}
	for (int i = 0; i < o.n; i++) {
		struct vec a = p[i], b = p[(i + 1) % o.n];
		if (fabs(o.corners[i].bulge) > NEAR_ENOUGH)
			draw_bulge(g, pen, a, b, o.corners[i].bulge);
		else
			draw_line(g, pen, a, b);
	}
}
