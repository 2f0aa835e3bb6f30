/*
 * A piece cut in two across its length.
 */
#include "parts/splice.h"

/* So near to the cut no corner of the piece may be. */
#define FROM_CORNER 3.0

/* The cut, and which side of it is kept: -1 in front, 1 behind. */
struct half {
	struct arena *arena;
	struct end_plane at;
	int way;
};

/* How far behind the cut, along the piece. */
static double behind(struct end_plane e, struct vec3 p)
{
	return p.x - (e.at + e.by_y * p.y + e.by_z * p.z);
}

/* 1: all of it is behind the cut, -1: in front, 0: neither. */
static int side_of(struct end_plane e, const struct vec3 *loop, int n)
{
	int before = 0, after = 0;
	for (int i = 0; i < n; i++)
		*(behind(e, loop[i]) > 0 ? &after : &before) += 1;
	return before == 0 ? 1 : after == 0 ? -1 : 0;
}

/* ---- can it be cut there? ---- */

static bool is_near_corner(struct end_plane e, const struct vec3 *loop, int n)
{
	for (int i = 0; i < n; i++)
		if (fabs(behind(e, loop[i])) < FROM_CORNER)
			return true;
	return false;
}

static bool is_crossed(struct end_plane e, const struct vec3 *loop, int n, int i)
{
	return (behind(e, loop[i]) > 0) != (behind(e, loop[(i + 1) % n]) > 0);
}

/* Both faces through the same two lines, so that they go on being joined corner to corner. */
static bool is_cut_once(struct end_plane e, const struct solid *s)
{
	int crossed = 0;
	for (int i = 0; i < s->n; i++) {
		if (is_crossed(e, s->a, s->n, i) != is_crossed(e, s->b, s->n, i))
			return false;
		crossed += is_crossed(e, s->a, s->n, i);
	}
	return crossed == 2;
}

bool splice_can_cut(const struct part *p, struct end_plane at)
{
	for (const struct solid *s = p->solids; s; s = s->next) {
		int a = side_of(at, s->a, s->n), b = side_of(at, s->b, s->n);
		if (is_near_corner(at, s->a, s->n) || is_near_corner(at, s->b, s->n))
			return false;
		if ((a == 0 || b == 0) && !is_cut_once(at, s))
			return false;
	}
	return true;
}

/* ---- solids ---- */

static struct vec3 between(struct end_plane e, struct vec3 p, struct vec3 q)
{
	double a = behind(e, p), b = behind(e, q);
	return vec3_add(p, vec3_scale(vec3_sub(q, p), a / (a - b)));
}

/* Drawn out along the piece: one of its faces is cut off. */
static struct solid *solid_shortened(const struct half *h, const struct solid *s, int a)
{
	struct vec3 *cut = NEW_N(h->arena, struct vec3, s->n);
	struct solid *left = NEW(h->arena, struct solid);
	for (int i = 0; i < s->n; i++)
		cut[i] = between(h->at, s->a[i], s->b[i]);
	*left = *s;
	if (a == h->way)
		left->b = cut;
	else
		left->a = cut;
	return left;
}

/* What is left of one face, and which of its lines are edges. */
static int loop_clip(const struct half *h, const struct vec3 *loop, const struct solid *s,
	struct vec3 *left, unsigned char *soft)
{
	int n = 0;
	for (int i = 0; i < s->n; i++) {
		bool is_kept = behind(h->at, loop[i]) * h->way > 0;
		unsigned char line = s->soft ? s->soft[i] : 0;
		if (is_kept) {
			soft[n] = line;
			left[n++] = loop[i];
		}
		if (!is_crossed(h->at, loop, s->n, i))
			continue;
		soft[n] = is_kept ? 0 : line & (SOFT_A | SOFT_B);
		left[n++] = between(h->at, loop[i], loop[(i + 1) % s->n]);
	}
	return n;
}

/* Drawn out across the piece: both faces are cut. */
static struct solid *solid_clipped(const struct half *h, const struct solid *s)
{
	struct vec3 *a = NEW_N(h->arena, struct vec3, s->n + 2);
	struct vec3 *b = NEW_N(h->arena, struct vec3, s->n + 2);
	unsigned char *soft = NEW_N(h->arena, unsigned char, s->n + 2);
	struct solid *left = NEW(h->arena, struct solid);
	left->n = loop_clip(h, s->a, s, a, soft);
	loop_clip(h, s->b, s, b, soft);
	left->a = a;
	left->b = b;
	left->soft = s->soft ? soft : NULL;
	return left;
}

static const struct solid *solids_half(const struct half *h, const struct solid *list)
{
	struct solid *first = NULL, **tail = &first;
	for (const struct solid *s = list; s; s = s->next) {
		int a = side_of(h->at, s->a, s->n), b = side_of(h->at, s->b, s->n);
		if (a == b && a == -h->way)
			continue;
		if (a == 0) {
			*tail = solid_clipped(h, s);
		} else if (a != b) {
			*tail = solid_shortened(h, s, a);
		} else {
			*tail = NEW(h->arena, struct solid);
			**tail = *s;
		}
		(*tail)->next = NULL;
		tail = &(*tail)->next;
	}
	return first;
}

/* ---- the outline ---- */

/* The cut as it is seen on the face: of a scarf its long point. */
static struct end_plane seen(const struct half *h, const struct solid *list)
{
	struct end_plane e = { -INFINITY, h->at.by_y, 0 };
	for (const struct solid *s = list; s; s = s->next)
		for (int i = 0; i < 2 * s->n; i++) {
			double z = i % 2 ? s->a[i / 2].z : s->b[i / 2].z;
			e.at = fmax(e.at, -h->way * (h->at.at + h->at.by_z * z));
		}
	e.at *= -h->way;
	return e;
}

static struct vec3 flat(struct vec p)
{
	return vec3(p.x, p.y, 0);
}

/* It is cut through straight lines. */
static struct outline outline_half(const struct half *h, struct end_plane e, struct outline o)
{
	struct path p = path_begin(h->arena, o.n + 2);
	for (int i = 0; i < o.n; i++) {
		struct vec3 here = flat(o.corners[i].at);
		struct vec3 next = flat(o.corners[(i + 1) % o.n].at);
		bool is_kept = behind(e, here) * h->way > 0, goes_on = behind(e, next) * h->way > 0;
		struct vec3 cut = is_kept != goes_on ? between(e, here, next) : next;
		if (is_kept)
			path_to(&p, here.x, here.y);
		if (is_kept != goes_on)
			path_to(&p, cut.x, cut.y);
		if (is_kept && goes_on && p.n > 0)
			p.corners[p.n - 1].bulge = o.corners[i].bulge;
	}
	return path_close(p);
}

/* ---- what goes with the wood ---- */

static void features_half(const struct half *h, struct part *p, const struct feature *list)
{
	p->features = NULL;
	for (const struct feature *f = list; f; f = f->next) {
		struct box b = outline_extent(f->at);
		struct vec3 middle = vec3((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, 0);
		struct feature kept = *f;
		kept.next = NULL;
		if (f->at.n == 0 || behind(h->at, middle) * h->way > 0)
			piece_feature(h->arena, p, kept);
	}
}

static void bores_half(const struct half *h, struct part *p, const struct bore *list)
{
	p->bores = NULL;
	for (const struct bore *b = list; b; b = b->next) {
		struct bore kept = *b;
		kept.next = NULL;
		if (behind(h->at, b->at.origin) * h->way > 0)
			piece_bore(h->arena, p, kept);
	}
}

/* Rows run along the piece. */
static void fastenings_half(const struct half *h, struct part *p, const struct fastening *list)
{
	p->fastenings = NULL;
	for (const struct fastening *f = list; f; f = f->next) {
		double along = f->at.u.x, cut = -behind(h->at, f->at.origin) / along;
		struct fastening kept = *f;
		kept.next = NULL;
		cut = fmin(fmax(cut, 0), f->length);
		bool keeps_start = along * h->way < 0;
		kept.length = keeps_start ? cut : f->length - cut;
		if (!keeps_start)
			kept.at.origin = vec3_add(f->at.origin, vec3_scale(f->at.u, cut));
		piece_fasten(h->arena, p, kept);
	}
}

static struct part half_of(const struct half *h, const struct part *whole)
{
	struct part p = *whole;
	p.solids = solids_half(h, whole->solids);
	p.outline = outline_half(h, seen(h, whole->solids), whole->outline);
	struct box b = outline_extent(p.outline);
	p.size.length = b.x1 - b.x0;
	features_half(h, &p, whole->features);
	bores_half(h, &p, whole->bores);
	fastenings_half(h, &p, whole->fastenings);
	return p;
}

/* Counted from its own end. */
static void begin_at(struct arena *a, struct part *p, double x)
{
	struct frame *place = NEW(a, struct frame);
	*place = p->places[0];
	place->origin = frame_place(*place, vec3(x, 0, 0));
	p->places = place;
	p->solids = solids_moved(a, p->solids, vec3(-x, 0, 0));
	p->outline = outline_moved(a, p->outline, -x, 0);
	for (struct feature *f = p->features; f; f = f->next)
		f->at = outline_moved(a, f->at, -x, 0);
	for (struct bore *b = p->bores; b; b = b->next)
		b->at.origin.x -= x;
	for (struct fastening *f = p->fastenings; f; f = f->next)
		f->at.origin.x -= x;
}

struct part *splice_cut(struct arena *a, struct part *p, struct end_plane at)
{
	const struct half front = { a, at, -1 }, back = { a, at, 1 };
	struct end_cut cut = { atan(at.by_y), atan(at.by_z) };
	struct part *rest = NEW(a, struct part), whole = *p;
	*rest = half_of(&back, &whole);
	*p = half_of(&front, &whole);
	begin_at(a, rest, outline_extent(rest->outline).x0);
	p->end = rest->start = cut;
	p->next = rest;
	return rest;
}
