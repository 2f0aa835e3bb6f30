#include "write/paint.h"

#include "write/layers.h"
#include "write/lettering.h"
#include "write/strokes.h"

#include <stdbool.h>

/* Twice the area, negative when the points run clockwise. */
static double turning(const struct vec *points, int n)
{
	double sum = 0;

	for (int i = 0; i < n; i++)
		sum += vec_cross(points[i], points[(i + 1) % n]);
	return sum;
}

/* All fills run the same way round: two that overlap in one path would
 * otherwise cancel each other out. */
static void add_fill(struct canvas c, const struct mark *m)
{
	const int n = m->fill.n, backwards = turning(m->fill.points, n) < 0;
	const struct ink_kind *ink = c.ink->kind;

	for (int i = 0; i < n; i++) {
		struct vec at = m->fill.points[backwards ? n - 1 - i : i];
		(i == 0 ? ink->move : ink->line)(c.ink, at);
	}
	ink->close(c.ink);
}

static bool is_white(const struct mark *m)
{
	return m->fill.shade == SHADE_WHITE;
}

static void paint_whites(struct canvas c, struct layers layers, int layer)
{
	for (const struct layered *l = layers.marks; l < layers.marks + layers.n; l++)
		if (l->layer == layer && l->mark->kind == MARK_FILL && is_white(l->mark))
			add_fill(c, l->mark);
	c.ink->kind->fill(c.ink, SHADE_WHITE);
}

/* In the order drawn; those of one shade that follow each other are one path. */
static void paint_shades(struct canvas c, struct layers layers, int layer)
{
	enum shade shade = SHADE_BLACK;

	for (const struct layered *l = layers.marks; l < layers.marks + layers.n; l++) {
		if (l->layer != layer || l->mark->kind != MARK_FILL || is_white(l->mark))
			continue;
		if (l->mark->fill.shade != shade)
			c.ink->kind->fill(c.ink, shade);
		shade = l->mark->fill.shade;
		add_fill(c, l->mark);
	}
	c.ink->kind->fill(c.ink, shade);
}

static bool drawn_with(const struct mark *m, enum pen pen)
{
	switch (m->kind) {
	case MARK_LINE: return m->line.pen == pen;
	case MARK_ARC: return m->arc.pen == pen;
	case MARK_FILL:
	case MARK_TEXT: return false;
	}
	return false;
}

static void paint_pen(struct canvas c, struct layers layers, int layer, enum pen pen)
{
	struct brush brush = brush_new(c, pen);

	for (const struct layered *l = layers.marks; l < layers.marks + layers.n; l++)
		if (l->layer == layer && drawn_with(l->mark, pen))
			brush_add(&brush, l->mark);
	brush_stroke(&brush);
}

void paint_drawing(struct canvas c)
{
	struct layers layers = layers_sort(c.arena, c.drawing);

	for (int layer = 0; layer < layers.count; layer++) {
		paint_whites(c, layers, layer);
		paint_shades(c, layers, layer);
		for (enum pen pen = 0; pen < PEN_COUNT; pen++)
			paint_pen(c, layers, layer, pen);
	}
	lettering_paint(c);
}
