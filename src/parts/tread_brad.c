#include "parts/fastening.h"
#include "parts/glue_line.h"

/*
 * Brads through the edge of a strip into the body, in the middle of its thickness:
 * they hold it while the glue sets.  A strip wider than the longest brad is
 * clamped.
 */

/* So much of a brad bites into the body: at most, and at least (common practice). */
#define BITE 20.0
#define LEAST_BITE 9.0

#define BESIDE 2.0

static struct fastener brad_for(const struct glue_line *g)
{
	const struct job_brads *b = &g->tread->rod->job->treads.brads;
	enum units units = g->tread->rod->job->about.units;
	if (b->length > 0)
		return fastener_brad(b->gauge, b->length);
	return fastener_brad_within(b->gauge, g->strip_width + BITE, units);
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
	f.fastener = brad_for(g);
	f.beside = BESIDE;
	f.text = "brad, strip to body";
	return f;
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
