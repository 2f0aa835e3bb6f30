/*
 * What is small enough to share a sheet, and at which size it is checked.
 */
#include "sheets/template_small.h"

#include <string.h>

#include "draw/bounds.h"
#include "sheets/template_draft.h"

#define END_SHOWN 40.0 /* of a piece beyond the cut across its end */

struct gatherer {
	struct arena *arena;
	struct lettering lettering;
	struct small *first, **tail;
};

static bool lines_are_alike(const struct pattern *one, const struct pattern *other)
{
	const struct pattern_line *p = one->lines, *q = other->lines;

	for (; p && q; p = p->next, q = q->next) {
		if (p->pen != q->pen || p->chain.n != q->chain.n)
			return false;
		for (int i = 0; i < p->chain.n; i++)
			if (!pattern_same_point(p->chain.points[i], q->chain.points[i]))
				return false;
	}
	return !p && !q;
}

static void add(struct gatherer *g, struct small s)
{
	for (struct small *k = g->first; k; k = k->next)
		if (!strcmp(k->sizes, s.sizes) && lines_are_alike(&k->pattern, &s.pattern)) {
			k->marks = arena_printf(g->arena, "%s, %s", k->marks, s.marks);
			return;
		}
	*g->tail = NEW(g->arena, struct small);
	**g->tail = s;
	g->tail = &(*g->tail)->next;
}

static struct chain moved(struct arena *a, struct chain c, struct vec by)
{
	struct vec *points = NEW_N(a, struct vec, c.n);

	for (int i = 0; i < c.n; i++)
		points[i] = vec_add(c.points[i], by);
	c.points = points;
	return c;
}

static const char *figure(const struct gatherer *g, double mm)
{
	return length_letter_inches(g->arena, g->lettering, mm);
}

/* --- profiles --- */

static bool is_rectangle(struct outline o)
{
	for (int i = 0; i < o.n; i++) {
		struct vec run = vec_sub(o.corners[(i + 1) % o.n].at, o.corners[i].at);
		if (o.corners[i].bulge != 0 ||
			(fabs(run.x) > NEAR_ENOUGH && fabs(run.y) > NEAR_ENOUGH))
			return false;
	}
	return o.n == 4;
}

static void add_profile(struct gatherer *g, const struct part *p)
{
	struct arena *a = g->arena;
	struct box b = outline_extent(p->section);

	if (p->section.n < 3 || is_rectangle(p->section))
		return;
	struct draft *d = draft_begin(a, g->lettering,
		(struct box){ -1, -1, box_width(b) + 1, box_height(b) + 1 });
	draft_chain(d, PEN_TEMPLATE, moved(a, outline_chain(a, p->section), vec(-b.x0, -b.y0)));
	add(g,
		(struct small){
			.marks = p->mark,
			.what = arena_printf(a, "%s, profile", p->name),
			.sizes = arena_printf(a, "%s x %s over all", figure(g, box_width(b)),
				figure(g, box_height(b))),
			.pattern = d->pattern,
		});
}

/* --- ends --- */

enum end { END_FOOT, END_TOP };

/* As much of the piece as shows the cut and a little beyond, from 0 on. */
static struct pattern end_pattern(const struct gatherer *g, const struct part *p, enum end end)
{
	struct chain whole = outline_chain(g->arena, p->outline);
	struct box b = chain_box(whole);
	double shown = box_height(b) + END_SHOWN;
	double from = end == END_TOP ? b.x1 - shown : b.x0;
	struct draft *d = draft_begin(g->arena, g->lettering,
		(struct box){ end == END_TOP ? 0 : -1, -1, end == END_TOP ? shown + 1 : shown,
			box_height(b) + 1 });

	draft_chain(d, PEN_TEMPLATE, moved(g->arena, whole, vec(-from, -b.y0)));
	return d->pattern;
}

static void add_end(struct gatherer *g, const struct part *p, enum end end)
{
	struct arena *a = g->arena;
	struct end_cut cut = end == END_TOP ? p->end : p->start;

	if (fabs(cut.mitre) < NEAR_ENOUGH)
		return;
	add(g,
		(struct small){
			.marks = p->mark,
			.what = arena_printf(a, "%s, %s", p->name, end == END_TOP ? "top" : "foot"),
			.sizes = arena_printf(a, "cut %s from square; %s x %s",
				angle_letter(a, fabs(cut.mitre)), figure(g, p->size.width),
				figure(g, p->size.thickness)),
			.pattern = end_pattern(g, p, end),
		});
}

struct small *small_patterns(struct arena *a, const struct sheet_context *c)
{
	struct gatherer g = { .arena = a, .lettering = job_lettering(c->stair->job) };

	g.tail = &g.first;
	for (const struct part *p = c->parts; p; p = p->next) {
		if (part_is_existing(p))
			continue;
		if (p->baluster) {
			add_end(&g, p, END_TOP);
			add_end(&g, p, END_FOOT);
		}
		add_profile(&g, p);
	}
	return g.first;
}
