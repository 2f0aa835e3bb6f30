#include <string.h>

#include "parts/tread.h"

/*
 * Loose tenons between the body of a tread and the strips glued to it, seen
 * from above:
 *
 *         ______________________________
 *        |                           []=|  first, clear of the mitre
 *        |  body                        |
 *        |                           []=|
 *        |   []        []         []    |
 *        |___||________||_________||____|_
 *        |  front strip                  \|
 *
 * They are set out last, when all other joints of the tread are drilled, and
 * give way to those: a dowel of a baluster must not come down on a tenon.
 */

/* Wood left all round a mortise, and over its bottom to the edge of a strip (common practice). */
#define CLEAR 6.0
#define COVER 8.0

/* Mortises are this much deeper on each side, for the glue; those of tenons that stay dry are
 * longer, because the body moves across the return (common practice). */
#define GLUE_ROOM 1.0
#define PLAY 3.0

/* A mortise that is less deep holds nothing. */
#define LEAST_DEPTH 6.0

/* The way that a tenon is moved when something is in its place. */
#define NUDGE 5.0

/* A straight joint between the body and a strip, in the flight's axes. */
struct glue_line {
	const struct tread_plan *tread;
	struct part *body, *strip;
	struct vec3 from, along; /* its start, and its direction */
	struct vec3 out;         /* out of the body */
	double length;
	double strip_width; /* of the strip, square to the joint */
	bool across;        /* the grain of the body runs on to the strip's side */
};

/* What a bore takes, in the axes that its frame is given in. */
static struct box3 bore_box(struct frame at, struct bore_size size)
{
	struct box3 b = box3_empty();
	for (int i = 0; i < 8; i++) {
		double u = (i & 1 ? 0.5 : -0.5) * size.length,
		       v = (i & 2 ? 0.5 : -0.5) * size.width;
		b = box3_add(b, frame_place(at, vec3(u, v, i & 4 ? -size.depth : 0)));
	}
	return b;
}

static bool boxes_near(struct box3 a, struct box3 b)
{
	return a.low.x < b.high.x + CLEAR && b.low.x < a.high.x + CLEAR &&
		a.low.y < b.high.y + CLEAR && b.low.y < a.high.y + CLEAR &&
		a.low.z < b.high.z + CLEAR && b.low.z < a.high.z + CLEAR;
}

static bool is_clear_of_bores(const struct part *p, struct box3 b)
{
	for (const struct bore *o = p->bores; o; o = o->next)
		if (boxes_near(b, bore_box(frame_compose(p->places[0], o->at), o->size)))
			return false;
	return true;
}

/* Is there wood round its bottom? */
static bool lies_in_wood(const struct part *p, struct frame mouth, struct bore_size size)
{
	for (int i = 0; i < 4; i++) {
		double u = (i & 1 ? 1 : -1) * (size.length / 2 + CLEAR / 2);
		double deep = i & 2 ? size.depth + CLEAR / 2 : GLUE_ROOM;
		struct vec3 at = frame_place(mouth, vec3(u, 0, -deep));
		if (!solids_contain(p->solids, frame_place_back(p->places[0], at)))
			return false;
	}
	return true;
}

static double tenon_thickness(const struct rod *r)
{
	return fmin(r->job->treads.tenons.thickness, r->tread / 3);
}

/* The strip takes half of it, or what its width allows; the body the rest. */
static struct bore_size strip_mortise(const struct glue_line *g)
{
	const struct job_tenons *t = &g->tread->rod->job->treads.tenons;
	double depth = fmin(t->length / 2, g->strip_width - COVER - GLUE_ROOM);
	return bore_oblong(BORE_MORTISE, t->width, tenon_thickness(g->tread->rod),
		depth + GLUE_ROOM);
}

static struct bore_size body_mortise(const struct glue_line *g, struct bore_size strip, int number)
{
	const struct job_tenons *t = &g->tread->rod->job->treads.tenons;
	double depth = t->length - (strip.depth - GLUE_ROOM) + GLUE_ROOM;
	bool dry = g->across && number > 0;
	return bore_oblong(dry ? BORE_SLOT : BORE_MORTISE, t->width + (dry ? PLAY : 0),
		tenon_thickness(g->tread->rod), depth);
}

/* Looking out of the body, in the house. */
static struct frame mouth_at(const struct glue_line *g, double along)
{
	const struct rod *r = g->tread->rod;
	struct frame f = { .u = g->along, .v = vec3_cross(g->out, g->along), .w = g->out };
	f.origin = vec3_add(g->from, vec3_scale(g->along, along));
	f.origin.z = g->tread->step * r->rise - r->tread / 2;
	return frame_compose(r->flight->frame, f);
}

static struct frame facing(struct frame f)
{
	f.v = vec3_scale(f.v, -1);
	f.w = vec3_scale(f.w, -1);
	return f;
}

/* One tenon: both of its mortises. */
struct tenon {
	struct frame mouth;
	struct bore_size body, strip;
};

static bool has_room(const struct glue_line *g, const struct tenon *t)
{
	struct frame back = facing(t->mouth);
	return lies_in_wood(g->body, t->mouth, t->body) && lies_in_wood(g->strip, back, t->strip) &&
		is_clear_of_bores(g->body, bore_box(t->mouth, t->body)) &&
		is_clear_of_bores(g->strip, bore_box(back, t->strip));
}

static void drill(struct arena *a, const struct glue_line *g, const struct tenon *t, int number)
{
	const struct job_tenons *job = &g->tread->rod->job->treads.tenons;
	const char *text = "loose tenon, glued";
	if (g->across)
		text = number > 0 ? "loose tenon, dry: the body's mortise is longer"
				  : "loose tenon, the only one of the return that is glued";
	struct bore b = { .at = frame_within(g->body->places[0], t->mouth),
		.size = t->body,
		.mate = t->strip,
		.fixing = FIXING_LOOSE_TENON,
		.fixing_length = job->length,
		.fixing_width = job->width,
		.text = text };
	piece_bore(a, g->body, b);
	b.at = frame_within(g->strip->places[0], facing(t->mouth));
	b.size = t->strip;
	b.mate = (struct bore_size){ 0 };
	b.is_mate = true;
	piece_bore(a, g->strip, b);
}

/* In the nearest free place, not further off than half way to the next one. */
static void tenon_add(struct arena *a, const struct glue_line *g, double wanted, double reach,
	int number)
{
	struct tenon t = { .strip = strip_mortise(g) };
	t.body = body_mortise(g, t.strip, number);
	int most = (int)(reach / NUDGE);
	for (int i = 0; i / 2 <= most; i++) {
		int nudges = (i + 1) / 2 * (i & 1 ? 1 : -1); /* 0, 1, -1, 2 ... */
		t.mouth = mouth_at(g, wanted + NUDGE * nudges);
		if (!has_room(g, &t))
			continue;
		drill(a, g, &t, number);
		return;
	}
}

/* Evenly, no further apart than the pitch, the outer two as far from the ends as the job says. */
static void line_drill(struct arena *a, const struct glue_line *g)
{
	const struct job_tenons *t = &g->tread->rod->job->treads.tenons;
	double between = g->length - 2 * t->first;
	if (strip_mortise(g).depth < LEAST_DEPTH + GLUE_ROOM)
		return;
	if (between < 2 * t->width) {
		tenon_add(a, g, g->length / 2, g->length / 2, 0);
		return;
	}
	int spaces = (int)ceil(between / t->pitch - NEAR_ENOUGH);
	for (int i = 0; i <= spaces; i++)
		tenon_add(a, g, t->first + between * i / spaces, between / spaces / 2, i);
}

/* Just beside a place of the front joint, on the body or on the strip. */
static double innermost(const struct tread_plan *t, const struct tread_end *e)
{
	double strip = t->rod->job->treads.strip_width, beside = 1;
	double body = fmax(e->body, tread_end_gap(e, strip + beside));
	return fmax(body, fmax(tread_end_mitre(e, strip), tread_end_gap(e, strip - beside)));
}

static struct glue_line front_line(const struct tread_plan *t)
{
	const struct rod *r = t->rod;
	double left = rod_along(r, &r->sides[HAND_LEFT], innermost(t, &t->ends[HAND_LEFT]));
	double right = rod_along(r, &r->sides[HAND_RIGHT], innermost(t, &t->ends[HAND_RIGHT]));
	struct glue_line g = { .tread = t, .along = { 0, -1, 0 }, .out = { -1, 0, 0 } };
	g.from = vec3(tread_front(t) + r->job->treads.strip_width, r->width - left, 0);
	g.length = right - left;
	g.strip_width = r->job->treads.strip_width;
	return g;
}

static struct glue_line side_line(const struct tread_plan *t, const struct tread_end *e)
{
	const struct rod *r = t->rod;
	double from = r->job->treads.strip_width, to = t->depth;
	struct glue_line g = { .tread = t, .along = { 1, 0, 0 } };
	for (int i = 0; i < e->gaps.n; i++) {
		from = fmax(from, isinf(e->gaps.at[i].to) ? from : e->gaps.at[i].to);
		to = fmin(to, isinf(e->gaps.at[i].to) ? e->gaps.at[i].from : to);
	}
	g.out = vec3(0, e->side->hand == HAND_RIGHT ? -1 : 1, 0);
	g.from = vec3(tread_front(t) + from, rod_y(r, e->side, e->body), 0);
	g.length = to - from;
	g.strip_width = e->width;
	g.across = true;
	return g;
}

static struct part *piece_of(struct part *pieces, const char *name, int unit)
{
	while (pieces && (pieces->units[0] != unit || strcmp(pieces->name, name) != 0))
		pieces = pieces->next;
	return pieces;
}

static void glue_drill(struct arena *a, struct glue_line g, struct part *body, struct part *strip)
{
	g.body = body;
	g.strip = strip;
	if (body && strip && g.length > 0)
		line_drill(a, &g);
}

static void tread_drill(struct arena *a, const struct tread_plan *t, struct part *pieces)
{
	int unit = tread_unit(t);
	struct part *body = piece_of(pieces, "tread body", unit);
	struct part *strip = piece_of(pieces, "tread return", unit);
	glue_drill(a, front_line(t), body, piece_of(pieces, "tread front strip", unit));
	for (int i = 1; i >= 0; i--) {
		if (t->ends[i].overhang <= 0)
			continue;
		glue_drill(a, side_line(t, &t->ends[i]), body, strip);
		strip = strip ? piece_of(strip->next, "tread return", unit) : NULL;
	}
}

void tread_tenons_drill(struct arena *a, const struct stair *s, struct part *pieces)
{
	for (int i = 0; i < s->flight_count && s->job->treads.tenons.used; i++) {
		struct rod r = rod_make(s, &s->flights[i]);
		for (int step = 1; step <= r.steps; step++) {
			struct tread_plan t = tread_plan_make(&r, step);
			tread_drill(a, &t, pieces);
		}
	}
}
