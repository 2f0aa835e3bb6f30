/*
 * Hidden edges.
 *
 * Each edge is asked along its length, t from 0 to 1, where each screen on its way lies before it.
 * Inside the screen and behind it are both "not negative" of something that runs evenly along the
 * edge, so one screen hides one span; what no span covers is seen.  Nothing is sampled.
 *
 * An edge along the very rim of a nearer face counts as hidden: the rim itself is drawn there.
 */
#include "draw/grid.h"
#include "draw/scene.h"

#include <stdlib.h>

struct span {
	double from, to;
};

struct spans {
	struct span *at;
	int n, room;
};

static void spans_add(struct arena *a, struct spans *s, struct span span)
{
	if (s->n == s->room) {
		struct span *old = s->at;
		s->room = s->room ? 2 * s->room : 32;
		s->at = NEW_N(a, struct span, s->room);
		for (int i = 0; i < s->n; i++)
			s->at[i] = old[i];
	}
	s->at[s->n++] = span;
}

/* Narrows a span to where something that runs evenly from `start` at t = 0 to `end` at t = 1 is
 * not negative.  It ends where it is nought, exactly; but what never gets below `enough` is taken
 * whole, and what never gets up to `least` not at all. */
static struct span span_where(struct span s, double start, double end, double enough, double least)
{
	if (start >= enough && end >= enough && (start >= least || end >= least))
		return s;
	if (start < least && end < least)
		return (struct span){ 1, 0 };
	double t = start / (start - end);
	if (start < end)
		s.from = fmax(s.from, t);
	else
		s.to = fmin(s.to, t);
	return s;
}

static double before(const struct screen *s, struct vec3 p)
{
	return plane_at(s->plane, p.x, p.y) - p.z;
}

static double inside(struct half h, struct vec3 p)
{
	return h.x * p.x + h.y * p.y + h.at;
}

/* A face hides no edge of its own. */
static bool own(const struct screen *s, const struct edge *e)
{
	return s->face && (s->face == e->left || s->face == e->right);
}

/* What an edge takes of the view, with the rim round it, and how far back it begins. */
struct reach {
	struct box box;
	double farthest;
};

static struct reach reach_of(const struct edge *e)
{
	return (struct reach){
		.box = { fmin(e->a.x, e->b.x) - RIM, fmin(e->a.y, e->b.y) - RIM,
			fmax(e->a.x, e->b.x) + RIM, fmax(e->a.y, e->b.y) + RIM },
		.farthest = fmin(e->a.z, e->b.z) + NEARER,
	};
}

/* A cheap test first: most screens of a cell are beside the edge or behind it. */
static bool apart(const struct screen *s, const struct reach *r)
{
	return r->farthest > s->nearest || r->box.x1 < s->box.x0 || r->box.x0 > s->box.x1 ||
		r->box.y1 < s->box.y0 || r->box.y0 > s->box.y1;
}

static struct span span_hidden(const struct screen *s, const struct edge *e)
{
	struct span span = { 0, 1 };

	span = span_where(span, before(s, e->a), before(s, e->b), 0, NEARER);
	for (int i = 0; i < s->n && span.from < span.to; i++) {
		double start = inside(s->sides[i], e->a), end = inside(s->sides[i], e->b);
		span = span_where(span, start, end, -RIM, -RIM);
	}
	return span;
}

static int compare_spans(const void *a, const void *b)
{
	const struct span *p = a, *q = b;
	if (p->from != q->from)
		return p->from < q->from ? -1 : 1;
	return (p->to > q->to) - (p->to < q->to);
}

/* Sorts them and unites those that touch; drops those too short to see. */
static void spans_unite(struct spans *s, double shortest)
{
	int n = 0;
	if (s->n > 1)
		qsort(s->at, (size_t)s->n, sizeof(*s->at), compare_spans);
	for (int i = 0; i < s->n; i++) {
		if (n > 0 && s->at[i].from <= s->at[n - 1].to + shortest) {
			s->at[n - 1].to = fmax(s->at[n - 1].to, s->at[i].to);
			continue;
		}
		if (n > 0 && s->at[n - 1].to - s->at[n - 1].from < shortest)
			n--;
		s->at[n++] = s->at[i];
	}
	if (n > 0 && s->at[n - 1].to - s->at[n - 1].from < shortest)
		n--;
	s->n = n;
}

static void spans_find(const struct scene *s, struct grid *g, const struct edge *e,
	struct spans *out)
{
	const struct reach reach = reach_of(e);

	out->n = 0;
	struct screen *c = grid_search(g, vec(e->a.x, e->a.y), vec(e->b.x, e->b.y));
	for (; c; c = c->found) {
		if (apart(c, &reach) || own(c, e))
			continue;
		struct span span = span_hidden(c, e);
		if (span.from < span.to)
			spans_add(s->arena, out, span);
	}
}

/* To the right; up where it is plumb, or so nearly plumb that rounding decides. */
static bool runs_back(struct vec d)
{
	return fabs(d.x) < NEAR_ENOUGH ? d.y < 0 : d.x < 0;
}

static const struct face *toward_eye(const struct face *f)
{
	return f->facing == FACING_EYE ? f : NULL;
}

/* The edge as a trace, its ends still open. */
static struct trace trace_of(const struct edge *e)
{
	struct trace t = { .pen = e->pen, .soft = e->soft, .piece = e->piece };

	t.along = vec_unit(vec(e->b.x - e->a.x, e->b.y - e->a.y));
	t.left = toward_eye(e->left);
	t.right = toward_eye(e->right);
	if (runs_back(t.along)) {
		t.along = vec_scale(t.along, -1);
		t.left = toward_eye(e->right);
		t.right = toward_eye(e->left);
	}
	return t;
}

struct tracer {
	const struct scene *scene;
	struct trace *first, **tail;
};

static void trace_add(struct tracer *r, struct trace t, struct vec a, struct vec b)
{
	if (vec_length(vec_sub(b, a)) < SHORTEST)
		return;
	struct trace *kept = NEW(r->scene->arena, struct trace);
	t.a = vec_dot(vec_sub(b, a), t.along) >= 0 ? a : b;
	t.b = t.a.x == a.x && t.a.y == a.y ? b : a;
	*kept = t;
	*r->tail = kept;
	r->tail = &kept->next;
}

static void trace_span(struct tracer *r, const struct edge *e, struct trace t, double from,
	double to)
{
	struct vec3 d = vec3_sub(e->b, e->a);
	struct vec3 p = from > 0 ? vec3_add(e->a, vec3_scale(d, from)) : e->a;
	struct vec3 q = to < 1 ? vec3_add(e->a, vec3_scale(d, to)) : e->b;

	trace_add(r, t, vec(p.x, p.y), vec(q.x, q.y));
}

static void trace_edge(struct tracer *r, const struct edge *e, const struct spans *hidden)
{
	struct trace seen = trace_of(e), behind = seen;
	bool inner = seen.soft && seen.left && seen.right;
	bool behind_too = r->scene->pieces[e->piece].hidden_too && !inner;
	double t = 0;

	behind.pen = PEN_HIDDEN;
	for (int i = 0; i < hidden->n; i++) {
		trace_span(r, e, seen, t, hidden->at[i].from);
		t = hidden->at[i].to;
		if (behind_too)
			trace_span(r, e, behind, hidden->at[i].from, t);
	}
	trace_span(r, e, seen, t, 1);
}

/* What the section plane cuts hides nothing of its own outline. */
static void trace_cut(struct tracer *r, const struct cut *c)
{
	const struct face *face = &r->scene->cut_face;

	for (int i = 0; i < c->n; i++) {
		struct vec a = c->points[i], b = c->points[(i + 1) % c->n];
		struct edge e = { .a = vec3(a.x, a.y, face->plane.z),
			.b = vec3(b.x, b.y, face->plane.z),
			.left = face,
			.right = &(struct face){ 0 },
			.piece = c->piece,
			.pen = PEN_CUT };
		if (vec_length(vec_sub(b, a)) >= SHORTEST)
			trace_add(r, trace_of(&e), a, b);
	}
}

struct traces hidden_remove(const struct scene *s, struct grid *g)
{
	struct tracer r = { .scene = s };
	struct spans hidden = { 0 };

	r.tail = &r.first;
	for (const struct edge *e = s->edges; e; e = e->next) {
		double length = vec_length(vec(e->b.x - e->a.x, e->b.y - e->a.y));
		if (e->pen != PEN_HIDDEN)
			spans_find(s, g, e, &hidden);
		else
			hidden.n = 0;
		spans_unite(&hidden, SHORTEST / length);
		trace_edge(&r, e, &hidden);
	}
	for (const struct cut *c = s->cuts; c; c = c->next)
		trace_cut(&r, c);
	return (struct traces){ r.first, grid_steps(g) };
}
