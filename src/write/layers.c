#include "write/layers.h"

#include "draw/bounds.h"

/* A white fill and the box it covers. */
struct white {
	struct box box;
	int layer;
};

struct sorting {
	struct layered *marks;
	int n;
	struct white *whites;
	int white_count;
};

/* Of the whole circle: a little much does no harm. */
static struct box circle_box(const struct mark *m)
{
	struct vec c = m->arc.centre;
	double r = m->arc.radius;

	return (struct box){ c.x - r, c.y - r, c.x + r, c.y + r };
}

/* No pen is wider than this; a line beside a fill must not be cut into either. */
#define WIDEST_PEN 1.0

static bool boxes_meet(struct box a, struct box b)
{
	return box_touches(a, box_grow(b, WIDEST_PEN));
}

/* Leg by leg, or the frame of the sheet would meet every fill inside it. */
static bool line_meets(const struct mark *m, struct box b)
{
	int n = m->line.n, legs = m->line.closed ? n : n - 1;

	for (int i = 0; i < legs; i++) {
		const struct vec leg[] = { m->line.points[i], m->line.points[(i + 1) % n] };
		if (boxes_meet(points_box(leg, 2), b))
			return true;
	}
	return false;
}

static bool meets(const struct mark *m, struct box b)
{
	switch (m->kind) {
	case MARK_LINE: return line_meets(m, b);
	case MARK_ARC: return boxes_meet(circle_box(m), b);
	case MARK_FILL: return boxes_meet(points_box(m->fill.points, m->fill.n), b);
	case MARK_TEXT: break;
	}
	return false;
}

/* On top of every white fill drawn before it that it meets. */
static int layer_over_whites(const struct sorting *s, const struct mark *m)
{
	int layer = 0;

	for (int i = 0; i < s->white_count; i++)
		if (s->whites[i].layer > layer && meets(m, s->whites[i].box))
			layer = s->whites[i].layer;
	return layer;
}

/* On top of everything drawn before it that it meets.  Layer 0 is not searched:
 * nearly all there is to cover lies in it. */
static int layer_of_white(const struct sorting *s, struct box b)
{
	int layer = 1;

	for (int i = 0; i < s->n; i++)
		if (s->marks[i].layer >= layer && meets(s->marks[i].mark, b))
			layer = s->marks[i].layer + 1;
	return layer;
}

static bool is_white(const struct mark *m)
{
	return m->kind == MARK_FILL && m->fill.shade == SHADE_WHITE;
}

static int place(struct sorting *s, const struct mark *m)
{
	if (!is_white(m))
		return layer_over_whites(s, m);
	struct box b = points_box(m->fill.points, m->fill.n);
	int layer = layer_of_white(s, b);
	s->whites[s->white_count++] = (struct white){ b, layer };
	return layer;
}

static int count_whites(const struct drawing *g)
{
	int n = 0;

	for (const struct mark *m = g->first; m; m = m->next)
		n += is_white(m);
	return n;
}

struct layers layers_sort(struct arena *a, const struct drawing *g)
{
	struct sorting s = {
		.marks = NEW_N(a, struct layered, g->mark_count),
		.whites = NEW_N(a, struct white, count_whites(g)),
	};
	int count = 1;

	for (const struct mark *m = g->first; m; m = m->next) {
		if (m->kind == MARK_TEXT)
			continue;
		int layer = place(&s, m);
		s.marks[s.n++] = (struct layered){ m, layer };
		count = layer >= count ? layer + 1 : count;
	}
	return (struct layers){ .marks = s.marks, .n = s.n, .count = count };
}
