#include "parts/profile.h"

/*
 * What is measured on a profile, from its outline alone: the program measures, a code book judges.
 */

#define DIRECTIONS 1440 /* at 60 mm they tell the largest size to a ten thousandth */
#define LEVELS 2000     /* looked at between crown and underside, then closed in on */
#define HOLE_LEVELS 8   /* and beside a hole */

static struct vec next_of(struct outline o, int i)
{
	return o.corners[(i + 1) % o.n].at;
}

static double perimeter(struct outline o)
{
	double sum = 0;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		if (c.bulge == 0) {
			sum += vec_length(vec_sub(next_of(o, i), c.at));
			continue;
		}
		struct corner_arc arc = corner_arc(c, next_of(o, i));
		sum += arc.radius * fabs(arc.to - arc.from);
	}
	return sum;
}

/* Does an arc pass through this angle of its circle? */
static bool passes(struct corner_arc arc, double angle)
{
	double low = fmin(arc.from, arc.to), high = fmax(arc.from, arc.to);
	double turned = angle + 2 * PI * ceil((low - angle) / (2 * PI) - NEAR_ENOUGH);
	return turned <= high + NEAR_ENOUGH;
}

/* How far the outline reaches in a direction. */
static double reach(struct outline o, double angle)
{
	struct vec d = vec(cos(angle), sin(angle));
	double most = -INFINITY;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		most = fmax(most, vec_dot(c.at, d));
		if (c.bulge <= 0)
			continue;
		struct corner_arc arc = corner_arc(c, next_of(o, i));
		if (passes(arc, angle))
			most = fmax(most, vec_dot(arc.centre, d) + arc.radius);
	}
	return most;
}

static double largest(struct outline o)
{
	double most = 0;
	for (int i = 0; i < DIRECTIONS; i++) {
		double angle = PI * i / DIRECTIONS;
		most = fmax(most, reach(o, angle) + reach(o, angle + PI));
	}
	return most;
}

static struct vec direction(struct corner c, struct vec next, double way)
{
	return vec_rotate(vec_unit(vec_sub(next, c.at)), way * 2 * atan(c.bulge));
}

/* The smallest radius on its outside; a corner turned at once has none. */
static double edge_radius(struct outline o)
{
	double least = INFINITY;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i], before = o.corners[(i + o.n - 1) % o.n];
		struct vec in = direction(before, c.at, 1), out = direction(c, next_of(o, i), -1);
		if (vec_cross(in, out) > 1e-6)
			return 0;
		if (c.bulge > 0)
			least = fmin(least, corner_arc(c, next_of(o, i)).radius);
	}
	return least;
}

/* Of a circle, when all its arcs have one centre and it has no straight lines. */
static double diameter(struct outline o)
{
	if (o.n < 2 || o.corners[0].bulge <= 0)
		return 0;
	struct corner_arc first = corner_arc(o.corners[0], next_of(o, 0));
	for (int i = 0; i < o.n; i++) {
		if (o.corners[i].bulge <= 0)
			return 0;
		struct corner_arc arc = corner_arc(o.corners[i], next_of(o, i));
		if (!vec_near(arc.centre, first.centre))
			return 0;
	}
	return 2 * first.radius;
}

static double flat_below(struct outline o)
{
	double width = 0;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		struct vec next = next_of(o, i);
		if (c.bulge == 0 && fabs(c.at.y) < NEAR_ENOUGH && fabs(next.y) < NEAR_ENOUGH)
			width += fabs(next.x - c.at.x);
	}
	return width;
}

/* ---- the recess ---- */

static double farther(double far, struct corner_arc arc, double angle)
{
	if (!passes(arc, angle))
		return far;
	return fmax(far, arc.centre.x + arc.radius * cos(angle));
}

double profile_half_width(struct outline o, double z)
{
	double far = -INFINITY;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		struct vec next = next_of(o, i);
		if (c.bulge != 0) {
			struct corner_arc arc = corner_arc(c, next);
			double sine = (z - arc.centre.y) / arc.radius;
			if (fabs(sine) > 1)
				continue;
			far = farther(far, arc, asin(sine));
			far = farther(far, arc, PI - asin(sine));
		} else if ((c.at.y - z) * (next.y - z) <= 0 && c.at.y != next.y) {
			double share = (z - c.at.y) / (next.y - c.at.y);
			far = fmax(far, c.at.x + share * (next.x - c.at.x));
		}
	}
	return far;
}

double profile_narrowest(struct outline o, double low, double high)
{
	double half = INFINITY;
	for (int i = 0; i <= HOLE_LEVELS; i++)
		half = fmin(half, profile_half_width(o, low + (high - low) * i / HOLE_LEVELS));
	return half;
}

/* The lowest level at which it is as wide as anywhere. */
static double widest_level(struct outline o, double wide)
{
	double low = INFINITY;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		if (c.at.x > wide - NEAR_ENOUGH)
			low = fmin(low, c.at.y);
		if (c.bulge <= 0)
			continue;
		struct corner_arc arc = corner_arc(c, next_of(o, i));
		if (passes(arc, 0) && arc.centre.x + arc.radius > wide - NEAR_ENOUGH)
			low = fmin(low, arc.centre.y);
	}
	return low;
}

static bool is_in(const struct rail_profile *p, double level, double depth)
{
	return profile_half_width(p->outline, p->depth - level) <=
		p->width / 2 - depth + NEAR_ENOUGH;
}

/* Between two levels, one in so far and one not, where the change is. */
static double change(const struct rail_profile *p, double a, double b, double depth)
{
	bool in_at_a = is_in(p, a, depth);
	for (int i = 0; i < 60; i++) {
		double mid = (a + b) / 2;
		if (is_in(p, mid, depth) == in_at_a)
			a = mid;
		else
			b = mid;
	}
	return (a + b) / 2;
}

struct rail_recess rail_recess_at_least(const struct rail_profile *p, double depth)
{
	struct rail_recess r = { .depth = depth, .width_above = p->width };
	r.start = p->depth - widest_level(p->outline, p->width / 2);
	double step = (p->depth - r.start) / LEVELS, before = r.start;
	bool found = false;
	r.from = r.to = p->depth;
	for (int i = 1; i < LEVELS; i++) {
		double level = r.start + i * step;
		bool in = is_in(p, level, depth);
		if (in && !found)
			r.from = change(p, before, level, depth);
		if (!in && found) {
			r.to = change(p, before, level, depth);
			return r;
		}
		found = in;
		before = level;
	}
	return r;
}

/* How far in the sides lie at their innermost, between the widest part and the underside. */
static double deepest(const struct rail_profile *p)
{
	double start = p->depth - widest_level(p->outline, p->width / 2), most = 0;
	for (int i = 1; i < LEVELS; i++) {
		double level = start + (p->depth - start) * i / LEVELS;
		most = fmax(most, p->width / 2 - profile_half_width(p->outline, p->depth - level));
	}
	return most;
}

/* Sides that only go in towards the underside are no recess: that takes a hollow. */
static bool has_hollow(struct outline o)
{
	for (int i = 0; i < o.n; i++)
		if (o.corners[i].bulge < 0)
			return true;
	return false;
}

struct rail_profile profile_measured(struct outline o)
{
	struct box b = outline_extent(o);
	struct rail_profile p = { .outline = o, .width = b.x1 - b.x0, .depth = b.y1 - b.y0 };
	p.perimeter = perimeter(o);
	p.largest = largest(o);
	p.edge_radius = edge_radius(o);
	p.diameter = diameter(o);
	p.flat = flat_below(o);
	if (has_hollow(o))
		p.recess = rail_recess_at_least(&p, deepest(&p));
	return p;
}
