#include "sheets/piece_breaks.h"

#include <stdlib.h>

/* Positions along the piece where something is. */
struct places {
	double *at;
	int n;
};

static int ascending(const void *one, const void *other)
{
	double a = *(const double *)one, b = *(const double *)other;

	return (a > b) - (a < b);
}

static int corner_count(const struct part *p)
{
	int n = 0;

	for (const struct solid *s = p->solids; s; s = s->next)
		n += 2 * s->n;
	for (const struct bore *b = p->bores; b; b = b->next)
		n += 2;
	return n;
}

/* How far a hole reaches along the piece, either way from its mouth's middle. */
static double reach_along(const struct bore *b)
{
	double across = fmax(b->size.length, b->size.width) / 2;

	return fmax(across, fabs(b->at.w.x) * b->size.depth);
}

static struct places places_of(struct arena *a, const struct part *p)
{
	struct places places = { NEW_N(a, double, corner_count(p) + 1), 0 };

	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			places.at[places.n++] = s->a[i].x;
			places.at[places.n++] = s->b[i].x;
		}
	for (const struct bore *b = p->bores; b; b = b->next) {
		places.at[places.n++] = b->at.origin.x - reach_along(b);
		places.at[places.n++] = b->at.origin.x + reach_along(b);
	}
	qsort(places.at, (size_t)places.n, sizeof(double), ascending);
	return places;
}

/* Does this edge lie over the stretch without running along the piece? */
static bool slopes_over(struct vec3 a, struct vec3 b, double from, double to)
{
	if (fmax(a.x, b.x) <= from + NEAR_ENOUGH || fmin(a.x, b.x) >= to - NEAR_ENOUGH)
		return false;
	return fabs(a.y - b.y) > NEAR_ENOUGH || fabs(a.z - b.z) > NEAR_ENOUGH;
}

static bool is_plain(const struct part *p, double from, double to)
{
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			int k = (i + 1) % s->n;
			if (slopes_over(s->a[i], s->a[k], from, to) ||
				slopes_over(s->b[i], s->b[k], from, to) ||
				slopes_over(s->a[i], s->b[i], from, to))
				return false;
		}
	return true;
}

struct piece_breaks piece_breaks(struct arena *a, const struct part *p, double most)
{
	struct places places = places_of(a, p);
	struct piece_breaks b = { NEW_N(a, struct plain_stretch, places.n + 1), 0 };

	for (int i = 0; i + 1 < places.n; i++) {
		double from = places.at[i], to = places.at[i + 1];
		if (to - from > most && is_plain(p, from, to))
			b.stretch[b.n++] = (struct plain_stretch){ from, to, most };
	}
	return b;
}

double breaks_drawn_at(const struct piece_breaks *b, double x)
{
	double at = x;

	for (int i = 0; i < b->n; i++) {
		const struct plain_stretch *s = &b->stretch[i];
		double gone = s->to - s->from - s->shown;
		if (x >= s->to)
			at -= gone;
		else if (x > s->from)
			at -= gone * (x - s->from) / (s->to - s->from);
	}
	return at;
}
