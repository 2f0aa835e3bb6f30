#include "parts/fastening.h"
#include "parts/glue_line.h"

/*
 * Brads through the edge of a strip into the body, in the middle of its thickness:
 * they hold it while the glue sets.  A strip wider than the longest brad is
 * clamped.  One more goes through the return across its front mitre into the end
 * of the front strip:
 *
 *           |  body        |  return
 *           |______________|   |
 *             front strip   \ -|<- the middle of the mitre
 *           _________________\_|
 */

/* So much of a brad bites into the body: at most, and at least (common practice). */
#define BITE 20.0
#define LEAST_BITE 9.0

#define BESIDE 2.0 /* wood beside its shank (common practice) */

/* Length of a row of one, that is not moved. */
#define ROW_OF_ONE 0.3

static struct fastener brad_for(const struct rod *r, double through)
{
	const struct job_brads *b = &r->job->treads.brads;
	if (b->length > 0)
		return fastener_brad(b->gauge, b->length);
	return fastener_brad_within(b->gauge, through + BITE, r->job->about.units);
}

/* Along the outer edge of the strip. */
static struct fastening row_along(const struct glue_line *g)
{
	const struct rod *r = g->tread->rod;
	const struct job_brads *b = &r->job->treads.brads;
	struct fastening f = { .length = g->length, .first = b->first, .pitch = b->pitch };
	struct frame at = { .u = g->along, .v = vec3_cross(g->out, g->along), .w = g->out };
	at.origin = vec3_add(g->from, vec3_scale(g->out, g->strip_width));
	at.origin.z = g->tread->step * r->rise - r->tread / 2;
	f.at = frame_within(g->strip->places[0], frame_compose(r->flight->frame, at));
	f.through = g->strip_width;
	f.fastener = brad_for(r, f.through);
	f.beside = BESIDE;
	f.text = "brad, strip to body";
	return f;
}

/* In the middle of the mitre, where one is: what the front is cut out for may have taken it. */
static bool mitre_at(const struct tread_end *e)
{
	double half = e->width / 2;
	return e->overhang > 0 && isinf(tread_end_gap(e, half)) && isinf(tread_end_gap(e, 0));
}

static struct fastening pin_across(const struct tread_plan *t, const struct tread_end *e,
	const struct part *strip)
{
	const struct rod *r = t->rod;
	double out = e->side->hand == HAND_RIGHT ? -1 : 1, half = e->width / 2;
	struct frame at = { .u = { 1, 0, 0 }, .v = { 0, 0, -out }, .w = { 0, out, 0 } };
	at.origin = vec3(tread_front(t) + half - ROW_OF_ONE / 2, rod_y(r, e->side, -e->overhang),
		t->step * r->rise - r->tread / 2);
	struct fastening f = { .at = frame_within(strip->places[0],
				       frame_compose(r->flight->frame, at)) };
	f.length = ROW_OF_ONE;
	f.count = 1;
	f.through = half;
	f.slope = 1;
	f.fastener = brad_for(r, f.through);
	f.beside = BESIDE;
	f.text = "brad across the mitre, return to front strip";
	return f;
}

/* Of the return on that side; the strips are in the order of glue_lines_make. */
static void mitres_drill(struct arena *a, const struct assembly *all, const struct tread_plan *t,
	const struct glue_lines *lines)
{
	int line = 1;
	for (int hand = 1; hand >= 0; hand--) {
		const struct tread_end *e = &t->ends[hand];
		struct part *strip = e->overhang > 0 ? lines->line[line++].strip : NULL;
		if (!strip || !mitre_at(e))
			continue;
		struct fastening f = pin_across(t, e, strip);
		if (f.fastener.length >= f.through + LEAST_BITE)
			fastening_drill(a, all, strip, &f);
	}
}

static void tread_drill(struct arena *a, const struct assembly *all, const struct tread_plan *t,
	struct part *treads)
{
	struct glue_lines lines = glue_lines_make(t, treads);
	for (int i = 0; i < lines.n; i++) {
		const struct glue_line *g = &lines.line[i];
		if (!g->body || !g->strip || g->length <= 0)
			continue;
		struct fastening f = row_along(g);
		if (f.fastener.length >= f.through + LEAST_BITE)
			fastening_drill(a, all, g->strip, &f);
	}
	mitres_drill(a, all, t, &lines);
}

static struct part *first_tread(const struct assembly *all)
{
	for (int i = 0; i < all->n; i++)
		if (all->pieces[i].piece->kind == &part_tread)
			return all->pieces[i].piece;
	return NULL;
}

void tread_brads_drill(struct arena *a, const struct stair *s, const struct assembly *all)
{
	struct part *treads = first_tread(all);
	for (int i = 0; i < s->flight_count && s->job->treads.brads.used; i++) {
		struct rod r = rod_make(s, &s->flights[i]);
		for (int step = 1; step <= r.steps; step++) {
			struct tread_plan t = tread_plan_make(&r, step);
			tread_drill(a, all, &t, treads);
		}
	}
}
