/*
 * Sections of mouldings: a cove is hollowed by a quarter of a circle, a scotia
 * by two arcs that run into each other, the upper one half as far out as the
 * hollow is wide:
 *
 *     height  _________ width
 *            |      ___|
 *            |    .'  . c1       The centres lie over the face of the hollow's wide end; the arcs
 *            |   /               touch on the line through both:
 *            |  |                (R - p)^2 + (q - r)^2 = (R - r)^2, with p out and q up, so
 *            |  |      . c2      R = (p^2 + q^2 - 2 q r) / (2 (p - r))
 *            |__|
 */
#include <assert.h>

#include "parts/moulding.h"

enum { HOLLOW_ROOM = 3 };

static struct corner at(double x, double y, double bulge)
{
	return (struct corner){ { x, y }, bulge };
}

/* A hollow turns the other way than an outline. */
static double hollow_bulge(double sweep)
{
	return -tan(sweep / 4);
}

static int cove(const struct moulding *m, struct corner *c)
{
	double radius = fmin(m->width, m->height) - MOULDING_EDGE;
	c[0] = at(m->width - radius, 0, hollow_bulge(PI / 2));
	c[1] = at(m->width, radius, 0);
	return 2;
}

static int scotia(const struct moulding *m, struct corner *c)
{
	double p = m->width - MOULDING_EDGE, q = m->height - MOULDING_EDGE, r = p / 2;
	double large = (p * p + q * q - 2 * q * r) / (2 * (p - r));
	double turn = atan2(q - r, p - large); /* from level, where the arcs meet */
	struct vec meet = vec(m->width + r * cos(turn), q - r + r * sin(turn));
	c[0] = at(m->width - p, 0, hollow_bulge(PI - turn));
	c[1] = at(meet.x, meet.y, hollow_bulge(turn - PI / 2));
	c[2] = at(m->width, q, 0);
	return HOLLOW_ROOM;
}

/* From its narrow end to its wide one, the narrow end at y = 0. */
static int hollow(const struct moulding *m, struct corner c[HOLLOW_ROOM])
{
	switch (m->kind) {
	case MOULDING_NONE: break;
	case MOULDING_COVE: return cove(m, c);
	case MOULDING_SCOTIA: return scotia(m, c);
	}
	return 0;
}

/* Upside down: from the wide end, which lies on the tread, up to the narrow one. */
static void strike_on(struct path *p, const struct moulding *m, const struct corner *c, int n)
{
	path_to(p, c[n - 1].at.x, m->height - c[n - 1].at.y);
	for (int i = n - 2; i >= 0; i--)
		path_arc_to(p, c[i].at.x, m->height - c[i].at.y, c[i].bulge);
}

static void strike_under(struct path *p, const struct corner *c, int n)
{
	path_to(p, c[0].at.x, c[0].at.y);
	for (int i = 1; i < n; i++)
		path_arc_to(p, c[i].at.x, c[i].at.y, c[i - 1].bulge);
}

struct outline moulding_section(struct arena *a, const struct moulding *m)
{
	struct corner c[HOLLOW_ROOM];
	int n = hollow(m, c);
	assert(n > 0);
	struct path p = path_begin(a, HOLLOW_ROOM + 4);
	path_to(&p, 0, 0);
	if (m->lies == MOULDING_ON) {
		path_to(&p, m->width, 0);
		strike_on(&p, m, c, n);
	} else {
		strike_under(&p, c, n);
		path_to(&p, m->width, m->height);
	}
	path_to(&p, 0, m->height);
	return path_close(p);
}
