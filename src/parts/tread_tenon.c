#include "parts/assembly.h"
#include "parts/fixing.h"
#include "parts/glue_line.h"

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

/* Is there wood all along it and round its bottom?  A notch for a wall may lie in between. */
static bool lies_in_wood(const struct part *p, struct frame mouth, struct bore_size size)
{
	double bottom = size.depth + CLEAR / 2, half = size.length / 2 + CLEAR / 2;
	int levels = (int)ceil(bottom / CLEAR);

	for (int i = 0; i <= levels; i++)
		for (int side = -1; side <= 1; side++) {
			double deep = GLUE_ROOM + (bottom - GLUE_ROOM) * i / levels;
			struct vec3 at = frame_place(mouth, vec3(side * half, 0, -deep));
			if (!solids_contain(p->solids, frame_place_back(p->places[0], at)))
				return false;
		}
	return true;
}

static double tenon_thickness(const struct rod *r)
{
	return bit_within(r->job->about.units, r->job->treads.tenons.thickness, r->tread / 3);
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
		bore_is_clear(g->body, t->mouth, t->body, CLEAR) &&
		bore_is_clear(g->strip, back, t->strip, CLEAR);
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

/* In the nearest free place, not further off than half way to the next one; false: there is none.
 */
static bool tenon_add(struct arena *a, const struct glue_line *g, double wanted, double reach,
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
		return true;
	}
	return false;
}

/* Evenly, no further apart than the pitch, the outer two as far from the ends as the job says.  The
 * first that has room is the one that is glued across the grain. */
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
	int spaces = (int)ceil(between / t->pitch - NEAR_ENOUGH), made = 0;
	for (int i = 0; i <= spaces; i++)
		made += tenon_add(a, g, t->first + between * i / spaces, between / spaces / 2,
			made);
}

static void glue_drill(struct arena *a, struct glue_line g)
{
	if (g.body && g.strip && g.length > 0)
		line_drill(a, &g);
}

void tread_tenons_drill(struct arena *a, const struct stair *s, struct part *pieces)
{
	for (int i = 0; i < s->flight_count && s->job->treads.tenons.used; i++) {
		struct rod r = rod_make(s, &s->flights[i]);
		for (int step = 1; step <= r.steps; step++) {
			struct tread_plan t = tread_plan_make(&r, step);
			struct glue_lines lines = glue_lines_make(&t, pieces);
			for (int k = 0; k < lines.n; k++)
				glue_drill(a, lines.line[k]);
		}
	}
}
