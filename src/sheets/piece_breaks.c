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

/* What a hole takes up along the piece, from its mouth to its bottom. */
struct along {
	double low, high;
};

static struct along hole_along(const struct bore *b)
{
	double half = (fabs(b->at.u.x) * b->size.length + fabs(b->at.v.x) * b->size.width) / 2;
	double mouth = b->at.origin.x, bottom = mouth - b->at.w.x * b->size.depth;

	return (struct along){ fmin(mouth, bottom) - half, fmax(mouth, bottom) + half };
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
		struct along hole = hole_along(b);
		places.at[places.n++] = hole.low;
		places.at[places.n++] = hole.high;
	}
	qsort(places.at, (size_t)places.n, sizeof(double), ascending);
	return places;
}

/* Does this edge lie over the stretch without running along the piece? */
static bool slopes_over(struct vec3 a, struct vec3 b, double from, double to)
{
	if (fmax(a.x, b.x) <= from + NEAR_ENOUGH || fmin(a.x, b.x) >= to - NEAR_ENOUGH)
		return false;
	return !near_enough(a.y, b.y) || !near_enough(a.z, b.z);
}

static bool is_drilled(const struct part *p, double from, double to)
{
	for (const struct bore *b = p->bores; b; b = b->next) {
		struct along hole = hole_along(b);
		if (hole.low < to - NEAR_ENOUGH && hole.high > from + NEAR_ENOUGH)
			return true;
	}
	return false;
}

static bool is_plain(const struct part *p, double from, double to)
{
	if (is_drilled(p, from, to))
		return false;
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

/* All that could be broken out, as long as they are. */
static struct piece_breaks plain_stretches(struct arena *a, const struct part *p, double least)
{
	struct places places = places_of(a, p);
	struct piece_breaks b = piece_unbroken();

	b.stretch = NEW_N(a, struct plain_stretch, places.n + 1);
	for (int i = 0; i + 1 < places.n; i++) {
		double from = places.at[i], to = places.at[i + 1];
		if (to - from > least && is_plain(p, from, to))
			b.stretch[b.n++] = (struct plain_stretch){ from, to, to - from };
	}
	return b;
}

/* The first of the longest that are still whole; NULL when all are broken. */
static struct plain_stretch *longest_whole(const struct piece_breaks *b)
{
	struct plain_stretch *longest = NULL;

	for (int i = 0; i < b->n; i++) {
		struct plain_stretch *s = &b->stretch[i];
		bool is_whole = s->shown >= s->to - s->from;
		if (is_whole && (!longest || s->shown > longest->shown + NEAR_ENOUGH))
			longest = s;
	}
	return longest;
}

/* Shares `spare` among those that are broken, and leaves the others out. */
static void keep_broken(struct piece_breaks *b, double spare)
{
	int n = 0;

	for (int i = 0; i < b->n; i++)
		if (b->stretch[i].shown < b->stretch[i].to - b->stretch[i].from)
			b->stretch[n++] = b->stretch[i];
	b->n = n;
	for (int i = 0; i < n; i++)
		b->stretch[i].shown += spare / n;
}

struct piece_breaks piece_breaks(struct arena *a, const struct part *p, double room, double least)
{
	struct piece_breaks b = plain_stretches(a, p, least);
	struct plain_stretch *s = NULL;
	double drawn = p->size.length;

	while (drawn > room && (s = longest_whole(&b)) != NULL) {
		drawn -= s->to - s->from - least;
		s->shown = least;
	}
	keep_broken(&b, fmax(room - drawn, 0));
	return b;
}

/* In the middle of the widest gap about there, where no hole is. */
static double parting(const struct part *p, const struct places *places, double about, double reach)
{
	double best = about, widest = 0;

	for (int i = 0; i + 1 < places->n; i++) {
		double from = fmax(places->at[i], about - reach);
		double to = fmin(places->at[i + 1], about + reach);
		if (to - from <= widest + NEAR_ENOUGH || is_drilled(p, from, to))
			continue;
		widest = to - from;
		best = (from + to) / 2;
	}
	return best;
}

const struct piece_breaks *piece_laps(struct arena *a, const struct part *p, int n)
{
	struct places places = places_of(a, p);
	struct piece_breaks *laps = NEW_N(a, struct piece_breaks, n);
	double start = places.n > 0 ? places.at[0] : 0, each = p->size.length / n;

	for (int i = 0; i < n; i++) {
		laps[i] = piece_unbroken();
		if (i == 0)
			continue;
		laps[i].from = parting(p, &places, start + i * each, each / 4);
		laps[i - 1].to = laps[i].from;
	}
	return laps;
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
