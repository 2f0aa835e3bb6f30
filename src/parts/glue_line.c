#include "parts/glue_line.h"

#include <string.h>

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

/* The first piece of that name in that unit; NULL: there is none. */
static struct part *piece_of_unit(struct part *pieces, const char *name, int unit)
{
	while (pieces && (pieces->units[0] != unit || strcmp(pieces->name, name) != 0))
		pieces = pieces->next;
	return pieces;
}

static void add(struct glue_lines *lines, struct glue_line g, struct part *body, struct part *strip)
{
	g.body = body;
	g.strip = strip;
	lines->line[lines->n++] = g;
}

struct glue_lines glue_lines_make(const struct tread_plan *t, struct part *pieces)
{
	struct glue_lines lines = { .n = 0 };
	int unit = tread_unit(t);
	struct part *body = piece_of_unit(pieces, "tread body", unit);
	struct part *strip = piece_of_unit(pieces, "tread return", unit);
	add(&lines, front_line(t), body, piece_of_unit(pieces, "tread front strip", unit));
	for (int i = 1; i >= 0; i--) {
		if (t->ends[i].overhang <= 0)
			continue;
		add(&lines, side_line(t, &t->ends[i]), body, strip);
		strip = strip ? piece_of_unit(strip->next, "tread return", unit) : NULL;
	}
	return lines;
}
