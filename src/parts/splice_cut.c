/*
 * A piece cut in two across its length.
 */
#include "parts/splice.h"

/* So near to the cut no corner of the piece may be. */
#define FROM_CORNER 6.0

/* A solid that is sawn aslant is parted from its end so far before the cut: its sides stay flat,
 * and so do those of whatever it is taken apart into. */
#define END 5.0

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

/* Along the piece, the first and the last place that the cut reaches. */
static struct vec reach_of(struct end_plane e, const struct solid *list)
{
	struct vec reach = vec(INFINITY, -INFINITY);
	for (const struct solid *s = list; s; s = s->next)
		for (int i = 0; i < 2 * s->n; i++) {
			struct vec3 p = i % 2 ? s->a[i / 2] : s->b[i / 2];
			double x = e.at + e.by_y * p.y + e.by_z * p.z;
			reach = vec(fmin(reach.x, x), fmax(reach.y, x));
		}
	return reach;
}

static bool is_near_corner(struct vec reach, const struct vec3 *loop, int n)
{
	for (int i = 0; i < n; i++)
		if (loop[i].x > reach.x - FROM_CORNER && loop[i].x < reach.y + FROM_CORNER)
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
	struct vec reach = reach_of(at, p->solids);
	for (const struct solid *s = p->solids; s; s = s->next) {
		int a = side_of(at, s->a, s->n), b = side_of(at, s->b, s->n);
		if (is_near_corner(reach, s->a, s->n) || is_near_corner(reach, s->b, s->n))
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
	left->next = NULL;
	if (a == h->way)
		left->b = cut;
	else
		left->a = cut;
	return left;
}

/* What a cut leaves: an edge of the piece, or a seam inside it. */
enum left_by_cut { CUT_EDGE, CUT_SEAM };

/* What is left of one face, and which of its lines are edges. */
static int loop_clip(const struct half *h, const struct vec3 *loop, const struct solid *s,
	enum left_by_cut kind, struct vec3 *left, unsigned char *soft)
{
	unsigned char seam = kind == CUT_SEAM ? SOFT_SIDE | SOFT_A | SOFT_B : 0;
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
		soft[n] = is_kept ? seam : (line & (SOFT_A | SOFT_B)) | (seam & SOFT_SIDE);
		left[n++] = between(h->at, loop[i], loop[(i + 1) % s->n]);
	}
	return n;
}

/* Drawn out across the piece: both faces are cut. */
static struct solid *solid_clipped(const struct half *h, const struct solid *s,
	enum left_by_cut kind)
{
	struct vec3 *a = NEW_N(h->arena, struct vec3, s->n + 2);
	struct vec3 *b = NEW_N(h->arena, struct vec3, s->n + 2);
	unsigned char *soft = NEW_N(h->arena, unsigned char, s->n + 2);
	struct solid *left = NEW(h->arena, struct solid);
	left->n = loop_clip(h, s->a, s, kind, a, soft);
	loop_clip(h, s->b, s, kind, b, soft);
	left->a = a;
	left->b = b;
	left->soft = soft;
	return left;
}

/* Its body up to a square seam, then the end that is sawn aslant. */
static struct solid *solid_cut_aslant(const struct half *h, const struct solid *s)
{
	struct vec reach = reach_of(h->at, s);
	double seam = h->way < 0 ? reach.x - END : reach.y + END;
	const struct half body = { h->arena, { seam, 0, 0 }, h->way };
	const struct half rest = { h->arena, { seam, 0, 0 }, -h->way };
	struct solid *end = solid_clipped(h, solid_clipped(&rest, s, CUT_SEAM), CUT_EDGE);
	return solid_add(end, solid_clipped(&body, s, CUT_SEAM));
}

static struct solid *solid_cut_across(const struct half *h, const struct solid *s)
{
	bool is_square = h->at.by_y == 0 && h->at.by_z == 0;
	return is_square ? solid_clipped(h, s, CUT_EDGE) : solid_cut_aslant(h, s);
}

static const struct solid *solids_half(const struct half *h, const struct solid *list)
{
	struct solid *first = NULL, **tail = &first;
	for (const struct solid *s = list; s; s = s->next) {
		int a = side_of(h->at, s->a, s->n), b = side_of(h->at, s->b, s->n);
		if (a == b && a == -h->way)
			continue;
		if (a == 0) {
			*tail = solid_cut_across(h, s);
		} else if (a != b) {
			*tail = solid_shortened(h, s, a);
		} else {
			*tail = NEW(h->arena, struct solid);
			**tail = *s;
			(*tail)->next = NULL;
		}
		while (*tail)
			tail = &(*tail)->next;
	}
	return first;
}

/* ---- the outline ---- */

/* The cut as it is seen on the face: of a scarf its long point. */
static struct end_plane seen(const struct half *h, const struct solid *list)
{
	const struct end_plane by_z = { h->at.at, 0, h->at.by_z };
	struct vec reach = reach_of(by_z, list);
	return (struct end_plane){ h->way < 0 ? reach.y : reach.x, h->at.by_y, 0 };
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
