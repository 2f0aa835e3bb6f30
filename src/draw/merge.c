/*
 * Strokes from traces.
 *
 * Pieces that touch draw the same line twice.  Traces are gathered by the line on which they lie;
 * along each line, between one end of a trace and the next, the strongest wins:
 *
 *     cut > outline > existing > fine > hidden
 *
 * Where the faces of two pieces meet in the line, as in a flush joint or the mitre of a nosing, it
 * is only a joint, which is fine; where they are flat or soft within one piece, nothing at all.
 */
#include "draw/grid.h"
#include "draw/scene.h"

#include <stdlib.h>

/* Traces are on one line when their directions differ by less than this (radians) ... */
#define SAME_WAY 1e-6

/* ... and their distances from the origin by less than this. */
#define SAME_LINE 1e-3

/* Cosines of the angle between two faces: above this they are one flat face ... */
#define FLAT (1 - 1e-9)

/* ... and below this they make a corner, though it may be mitred of two pieces. */
#define CORNER 0.1

/* In a picture, an edge with something no deeper than this behind it is no outline; it is looked
 * for this far beside the edge. */
#define SHALLOW 20.0
#define ASIDE 0.1

/* Width of the classes by distance from the origin. */
#define CLASS 0.05

struct line {
	struct line *next; /* of the same class */
	struct line *later;
	struct vec along;
	double distance;
	struct trace *first, **tail;
	int n;
};

struct lines {
	struct arena *arena;
	struct line **classes;
	unsigned mask;
	struct line *first, **tail;
};

static struct line **class_of(const struct lines *l, double distance)
{
	long long number = (long long)floor(distance / CLASS);
	return &l->classes[(unsigned)((unsigned long long)number * 2654435761u >> 8) & l->mask];
}

static struct line *line_in(struct line *candidates, struct vec along, double distance)
{
	for (struct line *c = candidates; c; c = c->next) {
		if (fabs(c->distance - distance) < SAME_LINE &&
			fabs(vec_cross(c->along, along)) < SAME_WAY)
			return c;
	}
	return NULL;
}

static struct line *line_for(struct lines *l, struct vec along, double distance)
{
	struct line **below = class_of(l, distance - SAME_LINE);
	struct line **above = class_of(l, distance + SAME_LINE);
	struct line *line = line_in(*below, along, distance);

	if (!line && above != below)
		line = line_in(*above, along, distance);
	if (line)
		return line;
	struct line **own = class_of(l, distance);
	line = NEW(l->arena, struct line);
	*line = (struct line){ .next = *own, .along = along, .distance = distance };
	line->tail = &line->first;
	*own = line;
	*l->tail = line;
	l->tail = &line->later;
	return line;
}

static void lines_add(struct lines *l, struct trace *t)
{
	struct line *line = line_for(l, t->along, vec_cross(t->along, t->a));
	t->next = NULL;
	*line->tail = t;
	line->tail = &t->next;
	line->n++;
}

static void lines_gather(struct lines *l, struct trace *traces)
{
	unsigned count = 0, slots = 64;

	for (struct trace *t = traces; t; t = t->next)
		count++;
	while (slots < count)
		slots *= 2;
	l->mask = slots - 1;
	l->classes = NEW_N(l->arena, struct line *, slots);
	l->tail = &l->first;
	for (struct trace *t = traces, *next; t; t = next) {
		next = t->next;
		lines_add(l, t);
	}
}

/* The strokes of one piece, in the order in which they come. */
struct drawn {
	struct drawn *next;
	struct stroke stroke;
	double to; /* where it ends along its line */
};

struct drawn_list {
	struct drawn *first, **tail;
};

struct merger {
	const struct scene *scene;
	struct grid *grid;
	struct drawn_list *pieces;
	int n;
	struct drawn *last; /* on the line at hand */
};

static int strength(enum pen pen)
{
	static const int strengths[PEN_COUNT] = { [PEN_CUT] = 5,
		[PEN_OUTLINE] = 4,
		[PEN_EXISTING] = 3,
		[PEN_FINE] = 2,
		[PEN_HIDDEN] = 1 };
	return strengths[pen];
}

/* An end of a trace, in order along the line. */
struct end {
	double at;
	struct vec point;
	struct trace *trace;
	int order; /* even: it begins here, odd: it ends here */
};

static int compare_ends(const void *a, const void *b)
{
	const struct end *p = a, *q = b;
	if (p->at != q->at)
		return p->at < q->at ? -1 : 1;
	return p->order - q->order;
}

/* The traces that run over the stretch at hand. */
struct over {
	struct trace **at;
	int n;
};

static void over_drop(struct over *o, const struct trace *t)
{
	int n = 0;
	for (int i = 0; i < o->n; i++) {
		if (o->at[i] != t)
			o->at[n++] = o->at[i];
	}
	o->n = n;
}

/* Between one end of a trace and the next. */
struct stretch {
	struct vec a, b, along;
};

/* A face that ends in the line, and whose it is. */
struct bank {
	const struct face *face; /* NULL: none, something further off is seen there */
	int piece;
};

static bool comes_up_to(const struct face *f, const struct face *top, struct stretch at)
{
	return fabs(plane_at(f->plane, at.a.x, at.a.y) - plane_at(top->plane, at.a.x, at.a.y)) <
		NEARER &&
		fabs(plane_at(f->plane, at.b.x, at.b.y) - plane_at(top->plane, at.b.x, at.b.y)) <
		NEARER;
}

static double rise_toward(const struct face *f, struct vec way)
{
	return f->plane.dx * way.x + f->plane.dy * way.y;
}

/* Of two faces that end in the line on the same side, the one that comes nearer is seen. */
static struct bank bank_seen(struct bank best, const struct face *f, int piece, struct stretch at,
	struct vec way)
{
	if (!f)
		return best;
	if (best.face &&
		(!comes_up_to(f, best.face, at) ||
			rise_toward(f, way) <= rise_toward(best.face, way)))
		return best;
	return (struct bank){ f, piece };
}

struct choice {
	enum pen pen; /* PEN_COUNT: no line */
	int piece;
};

/* All that the traces of a stretch have to say. */
struct sight {
	struct choice seen, hidden;
	bool hard; /* one of those seen is an edge, not only a soft line */
	struct bank left, right;
};

/* In a picture, of an edge behind which the eye goes on. */
static enum pen pen_before(const struct merger *m, const struct sight *s, struct stretch at)
{
	struct vec middle = vec_scale(vec_add(at.a, at.b), 0.5), way = vec_left(at.along);
	double edge = -INFINITY, behind[2];
	const struct face *faces[2] = { s->left.face, s->right.face };

	for (int i = 0; i < 2; i++) {
		struct vec beside = vec_add(middle, vec_scale(way, i == 0 ? ASIDE : -ASIDE));
		behind[i] = faces[i] ? plane_at(faces[i]->plane, middle.x, middle.y)
				     : grid_nearest(m->grid, beside);
		if (faces[i])
			edge = fmax(edge, behind[i]);
	}
	return edge - fmin(behind[0], behind[1]) < SHALLOW ? PEN_FINE : s->seen.pen;
}

/* What is seen on either side decides what the line is. */
static enum pen pen_between(const struct merger *m, const struct sight *s, struct stretch at)
{
	struct bank left = s->left, right = s->right;

	if (!left.face || !right.face || !comes_up_to(left.face, right.face, at))
		return m->scene->spec->picture ? pen_before(m, s, at) : s->seen.pen;
	double bend = vec3_dot(left.face->normal, right.face->normal);
	if (left.piece == right.piece && (bend > FLAT || !s->hard))
		return PEN_COUNT;
	if (m->scene->spec->picture)
		return PEN_FINE;
	if (left.piece == right.piece)
		return s->seen.pen;
	return bend > CORNER && s->seen.pen != PEN_CUT ? PEN_FINE : s->seen.pen;
}

static struct choice stronger(struct choice c, const struct trace *t)
{
	int more = c.pen == PEN_COUNT ? 1 : strength(t->pen) - strength(c.pen);
	if (more > 0 || (more == 0 && t->piece < c.piece))
		return (struct choice){ t->pen, t->piece };
	return c;
}

static void sight_add(struct sight *s, const struct trace *t, struct stretch at)
{
	struct vec leftward = vec_left(at.along), rightward = vec_scale(leftward, -1);

	if (t->pen == PEN_HIDDEN) {
		s->hidden = stronger(s->hidden, t);
		return;
	}
	s->seen = stronger(s->seen, t);
	s->hard = s->hard || !t->soft;
	s->left = bank_seen(s->left, t->left, t->piece, at, leftward);
	s->right = bank_seen(s->right, t->right, t->piece, at, rightward);
}

static struct choice choose(const struct merger *m, const struct over *o, struct stretch at)
{
	struct sight s = { .seen = { PEN_COUNT, 0 }, .hidden = { PEN_COUNT, 0 } };

	for (int i = 0; i < o->n; i++)
		sight_add(&s, o->at[i], at);
	if (s.seen.pen != PEN_COUNT)
		s.seen.pen = pen_between(m, &s, at);
	return s.seen.pen != PEN_COUNT ? s.seen : s.hidden;
}

/* Of what shows, each part has a line of its own for its mark to point at; dashes run on. */
static bool runs_on(const struct stroke *last, enum pen pen, const struct part *part)
{
	return last->pen == pen && (pen == PEN_HIDDEN || last->part == part);
}

static void draw(struct merger *m, struct choice c, const struct end *from, const struct end *to)
{
	struct drawn *last = m->last;
	const struct part *part = m->scene->pieces[c.piece].part;

	if (last && from->at - last->to < SHORTEST && runs_on(&last->stroke, c.pen, part)) {
		last->stroke.b = to->point;
		last->to = to->at;
		return;
	}
	struct drawn_list *list = &m->pieces[c.piece];
	struct drawn *d = NEW(m->scene->arena, struct drawn);
	d->stroke = (struct stroke){ from->point, to->point, c.pen, part };
	d->to = to->at;
	*list->tail = d;
	list->tail = &d->next;
	m->last = d;
	m->n++;
}

static int line_ends(const struct line *l, struct end *out)
{
	int n = 0;
	for (struct trace *t = l->first; t; t = t->next) {
		out[n] = (struct end){ vec_dot(t->a, l->along), t->a, t, n };
		out[n + 1] = (struct end){ vec_dot(t->b, l->along), t->b, t, n + 1 };
		n += 2;
	}
	qsort(out, (size_t)n, sizeof(*out), compare_ends);
	return n;
}

static void merge_line(struct merger *m, const struct line *l)
{
	struct arena *a = m->scene->arena;
	struct end *ends = NEW_N(a, struct end, 2 * l->n);
	struct over over = { NEW_N(a, struct trace *, l->n), 0 };
	int n = line_ends(l, ends);
	const struct end *from = NULL;

	m->last = NULL;
	for (int i = 0; i < n; i++) {
		const struct end *here = &ends[i];
		if (from && over.n > 0 && here->at - from->at > SHORTEST) {
			struct stretch at = { from->point, here->point, l->along };
			struct choice c = choose(m, &over, at);
			if (c.pen != PEN_COUNT)
				draw(m, c, from, here);
		}
		if (!from || here->at - from->at > SHORTEST)
			from = here;
		if (here->order % 2 == 0)
			over.at[over.n++] = here->trace;
		else
			over_drop(&over, here->trace);
	}
}

static struct strokes in_order(const struct merger *m)
{
	struct strokes s = { NEW_N(m->scene->arena, struct stroke, m->n), 0 };
	for (int i = 0; i < m->scene->piece_count; i++) {
		for (struct drawn *d = m->pieces[i].first; d; d = d->next)
			s.at[s.n++] = d->stroke;
	}
	return s;
}

struct strokes strokes_merge(const struct scene *s, struct grid *g, struct trace *traces)
{
	struct lines lines = { .arena = s->arena };
	struct merger m = { .scene = s, .grid = g };

	m.pieces = NEW_N(s->arena, struct drawn_list, s->piece_count);
	for (int i = 0; i < s->piece_count; i++)
		m.pieces[i].tail = &m.pieces[i].first;
	lines_gather(&lines, traces);
	for (const struct line *l = lines.first; l; l = l->later)
		merge_line(&m, l);
	return in_order(&m);
}
