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

/* --- faces --- */

/* A slope of a cap that is built up; the plate they lie on is a square. */
static void add_face(struct gatherer *g, const struct part *p)
{
	struct arena *a = g->arena;
	struct box b = outline_extent(p->outline);
	struct draft *d = draft_begin(a, g->lettering,
		(struct box){ -1, -1, box_width(b) + 1, box_height(b) + 1 });

	draft_chain(d, PEN_TEMPLATE, moved(a, outline_chain(a, p->outline), vec(-b.x0, -b.y0)));
	add(g,
		(struct small){
			.marks = p->mark,
			.what = p->name,
			.sizes = arena_printf(a, "%s x %s over all", figure(g, box_width(b)),
				figure(g, box_height(b))),
			.pattern = d->pattern,
		});
}

/* --- ends --- */

enum end { END_FOOT, END_TOP };

/* What is cut aslant, as it is seen square to that: the long side of a piece. */
struct slant {
	const struct part *part;
	struct chain side; /* from 0, 0 */
	double foot, top;  /* from square */
	const char *names[2];
};

static const char *const names_upright[2] = { "foot", "top" };
static const char *const names_lying[2] = { "lower end", "upper end" };

static double length_shown(const struct slant *s)
{
	return box_height(chain_box(s->side)) + END_SHOWN;
}

/* As much of the piece as shows the cut and a little beyond, from 0 on. */
static struct pattern end_pattern(const struct gatherer *g, const struct slant *s, enum end end)
{
	struct box b = chain_box(s->side);
	double shown = length_shown(s);
	double from = end == END_TOP ? b.x1 - shown : 0;
	struct draft *d = draft_begin(g->arena, g->lettering,
		(struct box){ end == END_TOP ? 0 : -1, -1, end == END_TOP ? shown + 1 : shown,
			b.y1 + 1 });

	draft_chain(d, PEN_TEMPLATE, moved(g->arena, s->side, vec(-from, 0)));
	return d->pattern;
}

static void add_slant(struct gatherer *g, const struct slant *s, const char *what, double angle,
	struct pattern pattern)
{
	struct arena *a = g->arena;

	add(g,
		(struct small){
			.marks = s->part->mark,
			.what = what,
			.sizes = arena_printf(a, "cut %s from square; %s x %s",
				angle_letter(a, fabs(angle)), figure(g, s->part->size.width),
				figure(g, s->part->size.thickness)),
			.pattern = pattern,
		});
}

/* All of a short one. */
static void add_whole(struct gatherer *g, const struct slant *s)
{
	struct box b = chain_box(s->side);
	struct draft *d =
		draft_begin(g->arena, g->lettering, (struct box){ -1, -1, b.x1 + 1, b.y1 + 1 });

	draft_chain(d, PEN_TEMPLATE, s->side);
	add_slant(g, s, s->part->name, s->foot, d->pattern);
}

static void add_ends(struct gatherer *g, const struct slant *s)
{
	const double angle[2] = { s->foot, s->top };
	bool is_short = box_width(chain_box(s->side)) < 2 * length_shown(s);

	if (is_short && fabs(s->foot) > NEAR_ENOUGH && near_enough(s->foot, s->top)) {
		add_whole(g, s);
		return;
	}
	for (int end = END_TOP; end >= END_FOOT; end--)
		if (fabs(angle[end]) > NEAR_ENOUGH)
			add_slant(g, s,
				arena_printf(g->arena, "%s, %s", s->part->name, s->names[end]),
				angle[end], end_pattern(g, s, end));
}

/* Larger ones, as panels are, are cut from their sheets. */
#define BROADEST 160.0

/* Balusters, posts and strips of the infill are cut aslant across their face; what closes a plough
 * is cut by eye from its length. */
static void add_infill_ends(struct gatherer *g, const struct part *p)
{
	struct chain face = outline_chain(g->arena, p->outline);
	struct box b = chain_box(face);
	bool upright = p->places[0].u.z > 1 - NEAR_ENOUGH;
	const char *const *names = upright ? names_upright : names_lying;
	struct slant s = { p, moved(g->arena, face, vec(-b.x0, -b.y0)), p->start.mitre,
		p->end.mitre, { names[0], names[1] } };

	if (p->stuff != STUFF_MOULDING && box_height(b) < BROADEST)
		add_ends(g, &s);
}

/* A rail is cut through its depth: it is seen from the side, its underside down. */
static void add_rail_ends(struct gatherer *g, const struct part *p)
{
	double deep = p->size.thickness, length = p->size.length;
	struct vec *at = NEW_N(g->arena, struct vec, 4);

	at[0] = vec(0, 0);
	at[1] = vec(length - deep * tan(p->end.bevel), 0);
	at[2] = vec(length, deep);
	at[3] = vec(deep * tan(p->start.bevel), deep);
	struct slant s = { p, { NULL, at, 4, true }, p->start.bevel, p->end.bevel,
		{ names_lying[0], names_lying[1] } };
	add_ends(g, &s);
}

struct small *small_patterns(struct arena *a, const struct sheet_context *c)
{
	struct gatherer g = { .arena = a, .lettering = job_lettering(c->stair->job) };

	g.tail = &g.first;
	for (const struct part *p = c->parts; p; p = p->next) {
		if (part_is_existing(p))
			continue;
		if (p->kind == &part_infill)
			add_infill_ends(&g, p);
		if (p->kind == &part_rail && p->rail)
			add_rail_ends(&g, p);
		if (p->cap && p->cap->build == CAP_MITRED)
			add_face(&g, p);
		add_profile(&g, p);
	}
	return g.first;
}
