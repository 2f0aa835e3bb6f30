#include "parts/outline.h"

#include <assert.h>

/* Facets to a round: enough for a small one, and of a large one so many that they lie this near to
 * it, which no view shows; the outlines that are cut to keep their true rounds. */
#define FACETS 6
#define FACET_ERROR 0.2

#define QUARTER_BULGE 0.41421356237309503 /* tan(90 degrees / 4) */

struct path path_begin(struct arena *a, int room)
{
	return (struct path){ NEW_N(a, struct corner, room), 0, room };
}

void path_to(struct path *p, double x, double y)
{
	if (p->n > 0 && vec_near(p->corners[p->n - 1].at, vec(x, y)))
		return;
	assert(p->n < p->room);
	p->corners[p->n++].at = vec(x, y);
}

void path_arc_to(struct path *p, double x, double y, double bulge)
{
	if (vec_near(p->corners[p->n - 1].at, vec(x, y)))
		return;
	p->corners[p->n - 1].bulge = bulge;
	path_to(p, x, y);
}

void path_round_to(struct path *p, double x, double y)
{
	path_arc_to(p, x, y, QUARTER_BULGE);
}

void path_hollow_to(struct path *p, double x, double y)
{
	path_arc_to(p, x, y, -QUARTER_BULGE);
}

struct outline path_close(struct path p)
{
	while (p.n > 1 && vec_near(p.corners[0].at, p.corners[p.n - 1].at))
		p.n--;
	return (struct outline){ p.corners, p.n };
}

struct outline outline_box(struct arena *a, double x0, double y0, double x1, double y1)
{
	struct path p = path_begin(a, 4);
	path_to(&p, x0, y0);
	path_to(&p, x1, y0);
	path_to(&p, x1, y1);
	path_to(&p, x0, y1);
	return path_close(p);
}

struct outline outline_moved(struct arena *a, struct outline o, double dx, double dy)
{
	struct corner *c = NEW_N(a, struct corner, o.n);
	for (int i = 0; i < o.n; i++) {
		c[i].at = vec(o.corners[i].at.x + dx, o.corners[i].at.y + dy);
		c[i].bulge = o.corners[i].bulge;
	}
	return (struct outline){ c, o.n };
}

/* The sweep is four times atan(bulge), and half the chord its sine half way. */
struct corner_arc corner_arc(struct corner c, struct vec next)
{
	double sweep = 4 * atan(c.bulge);
	struct vec half = vec_scale(vec_sub(next, c.at), 0.5);
	struct vec inward = vec_scale(vec_left(half), 1 / tan(sweep / 2));
	struct vec centre = vec_add(vec_add(c.at, half), inward);
	struct vec out = vec_sub(c.at, centre);
	double from = atan2(out.y, out.x);
	return (struct corner_arc){ centre, vec_length(out), from, from + sweep };
}

struct vec corner_arc_point(struct corner_arc arc, double share)
{
	double angle = arc.from + (arc.to - arc.from) * share;
	struct vec out = vec(arc.radius * cos(angle), arc.radius * sin(angle));
	return vec_add(arc.centre, out);
}

static void add_point(struct profile *f, struct vec at, unsigned char soft)
{
	f->at[f->n] = at;
	f->soft[f->n++] = soft;
}

/* The direction in which a chain leaves a corner, and in which it comes in at the next. */
static struct vec leaving(struct corner c, struct vec next)
{
	double half = 2 * atan(c.bulge);
	return vec_rotate(vec_sub(next, c.at), -half);
}

static struct vec coming_in(struct corner c, struct vec next)
{
	double half = 2 * atan(c.bulge);
	return vec_rotate(vec_sub(next, c.at), half);
}

/* Flatter than this a corner on a round is no arris: 1 degree. */
#define SMOOTH 0.0175

bool outline_is_smooth(struct outline o, int i)
{
	struct corner c = o.corners[i], before = o.corners[(i + o.n - 1) % o.n];
	struct vec in = coming_in(before, c.at);
	struct vec out = leaving(c, o.corners[(i + 1) % o.n].at);
	bool on_round = c.bulge != 0 || before.bulge != 0;
	return on_round && vec_dot(in, out) > 0 &&
		fabs(vec_cross(in, out)) < SMOOTH * vec_length(in) * vec_length(out);
}

/* Of the chain that goes on from corner i: 1 where it is straight. */
static int facets_from(struct outline o, int i)
{
	struct corner c = o.corners[i];
	if (c.bulge == 0)
		return 1;
	struct corner_arc arc = corner_arc(c, o.corners[(i + 1) % o.n].at);
	double step = 2 * acos(fmax(1 - FACET_ERROR / arc.radius, 0.5));
	return (int)fmax(FACETS, ceil(fabs(arc.to - arc.from) / step - NEAR_ENOUGH));
}

struct profile profile_of(struct arena *a, struct outline o)
{
	int room = 0;
	for (int i = 0; i < o.n; i++)
		room += facets_from(o, i);
	struct profile f = { NEW_N(a, struct vec, room), NEW_N(a, unsigned char, room), 0 };
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		int facets = facets_from(o, i);
		add_point(&f, c.at, outline_is_smooth(o, i) ? SOFT_SIDE : 0);
		for (int k = 1; k < facets; k++)
			add_point(&f,
				corner_arc_point(corner_arc(c, o.corners[(i + 1) % o.n].at),
					(double)k / facets),
				SOFT_SIDE);
	}
	return f;
}

/* An arc reaches furthest where it passes a quarter of its circle. */
static struct box stretched_by_arc(struct box b, struct corner_arc arc)
{
	double low = fmin(arc.from, arc.to), high = fmax(arc.from, arc.to), quarter = PI / 2;
	for (double k = ceil(low / quarter); k * quarter < high; k++) {
		double share = (k * quarter - arc.from) / (arc.to - arc.from);
		b = box_add(b, corner_arc_point(arc, share));
	}
	return b;
}

struct box outline_extent(struct outline o)
{
	struct box b = box_empty();
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		b = box_add(b, c.at);
		if (c.bulge != 0)
			b = stretched_by_arc(b, corner_arc(c, o.corners[(i + 1) % o.n].at));
	}
	return b;
}
