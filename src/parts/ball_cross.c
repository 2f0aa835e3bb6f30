#include "parts/ball_cross.h"

#include <stdlib.h>
#include <string.h>

/* One cross piece, seen square to the balustrade: its ends are plumb. */
struct cross {
	double from, to;
	struct slope_line under, over; /* its lower and upper edge */
};

struct crosses {
	struct cross *at;
	int n;
};

static bool is_cross(const struct part *p)
{
	return p->kind == &part_infill && strcmp(p->name, "cross piece") == 0;
}

static struct slope_line through(struct vec a, struct vec b)
{
	double slope = (b.y - a.y) / (b.x - a.x);

	return (struct slope_line){ .z0 = a.y - slope * a.x, .slope = slope };
}

/* The lowest and the highest of its points in the plumb plane of an end. */
static void end_of(const struct vec *p, int n, double x, struct vec ends[2])
{
	ends[0] = vec(x, INFINITY);
	ends[1] = vec(x, -INFINITY);
	for (int i = 0; i < n; i++) {
		if (fabs(p[i].x - x) > NEAR_ENOUGH)
			continue;
		ends[0].y = fmin(ends[0].y, p[i].y);
		ends[1].y = fmax(ends[1].y, p[i].y);
	}
}

static struct cross cross_seen(const struct vec *p, int n)
{
	struct cross c = { .from = INFINITY, .to = -INFINITY };
	struct vec low[2], high[2];

	for (int i = 0; i < n; i++) {
		c.from = fmin(c.from, p[i].x);
		c.to = fmax(c.to, p[i].x);
	}
	end_of(p, n, c.from, low);
	end_of(p, n, c.to, high);
	c.under = through(low[0], high[0]);
	c.over = through(low[1], high[1]);
	return c;
}

static void add_cross(struct arena *a, struct crosses *to, const struct stretch *s,
	const struct part *part, struct frame place)
{
	const struct solid *k = part->solids;
	struct vec *p = NEW_N(a, struct vec, 2 * k->n);
	double aside = 0;

	for (int i = 0; i < 2 * k->n; i++) {
		struct vec3 own = i < k->n ? k->a[i] : k->b[i - k->n];
		struct vec3 at = frame_place_back(s->axes, frame_place(place, own));
		p[i] = vec(at.x, at.z);
		aside = fmax(aside, fabs(at.y));
	}
	struct cross c = cross_seen(p, 2 * k->n);
	if (aside < s->rod->job->rail.width && c.from > s->from && c.to < s->to)
		to->at[to->n++] = c;
}

/* Between the same two balusters those that are lower come first. */
static int along_and_up(const void *one, const void *other)
{
	const struct cross *a = one, *b = other;

	if (fabs(a->from - b->from) > NEAR_ENOUGH)
		return a->from < b->from ? -1 : 1;
	return (slope_at(a->under, a->from) > slope_at(b->under, b->from)) -
		(slope_at(a->under, a->from) < slope_at(b->under, b->from));
}

static struct crosses crosses_seen(struct arena *a, const struct stretch *s,
	const struct part *parts)
{
	struct crosses all = { NULL, 0 };
	int room = 0;

	for (const struct part *p = parts; p; p = p->next)
		room += is_cross(p) ? p->count : 0;
	if (room == 0)
		return all;
	all.at = NEW_N(a, struct cross, room);
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; is_cross(p) && i < p->count; i++)
			add_cross(a, &all, s, p, p->places[i]);
	qsort(all.at, (size_t)all.n, sizeof(*all.at), along_and_up);
	return all;
}

static bool is_over(const struct cross *c, const struct cross *next)
{
	return fabs(c->from - next->from) < NEAR_ENOUGH;
}

/* What is open in the gap of a cross piece between two; NULL: down or up to what is open there at
 * all. */
static struct ball_cross zone_between(const struct ball_plane *plane, const struct ball_zone *all,
	const struct cross *c, const struct cross *lower, const struct cross *higher)
{
	int window = (int)((c->from - plane->stretch->from) / plane->width);
	struct ball_cross z = { .zone = *all, .place = BALL_BETWEEN_CROSSES };

	z.zone.from = c->from;
	z.zone.to = c->to;
	z.zone.floor = stretch_foot(plane->stretch, c->from);
	z.window = &plane->windows[window];
	if (lower)
		z.zone.low = lower->over;
	else
		z.place = BALL_UNDER_CROSS;
	if (higher)
		z.zone.high = higher->under;
	else
		z.place = BALL_OVER_CROSS;
	return z;
}

struct ball_crosses ball_crosses_make(struct arena *a, const struct ball_plane *plane,
	const struct part *parts, const struct ball_zone *all)
{
	struct crosses seen = crosses_seen(a, plane->stretch, parts);
	struct ball_crosses zones = { NEW_N(a, struct ball_cross, 2 * seen.n + 1), 0 };

	for (int i = 0; i < seen.n; i++) {
		const struct cross *c = &seen.at[i];
		bool is_lowest = i == 0 || !is_over(c, c - 1);
		bool is_highest = i + 1 == seen.n || !is_over(c, c + 1);
		if (is_lowest)
			zones.at[zones.n++] = zone_between(plane, all, c, NULL, c);
		zones.at[zones.n++] = zone_between(plane, all, c, c, is_highest ? NULL : c + 1);
	}
	return zones;
}
