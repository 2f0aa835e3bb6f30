#include "write/paint.h"

#include "write/layers.h"
#include "write/lettering.h"
#include "write/strokes.h"

/* Round lines keep this close to their true shape, in points: 0.004 mm. */
#define TOLERANCE 0.01

static const double greys[] = {
	[SHADE_BLACK] = 0,
	[SHADE_GREY] = 0.6,
	[SHADE_LIGHT] = 0.88,
	[SHADE_WHITE] = 1,
};

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

	cairo_new_sub_path(c.cr);
	for (int i = 0; i < n; i++) {
		struct vec p = canvas_point(c, m->fill.points[backwards ? n - 1 - i : i]);
		cairo_line_to(c.cr, p.x, p.y);
	}
	cairo_close_path(c.cr);
}

/* A fill of nothing writes nothing. */
static void fill_path(struct canvas c, enum shade shade)
{
	cairo_set_source_rgb(c.cr, greys[shade], greys[shade], greys[shade]);
	cairo_fill(c.cr);
}

static int is_white(const struct mark *m)
{
	return m->fill.shade == SHADE_WHITE;
}

static void paint_whites(struct canvas c, struct layers layers, int layer)
{
	for (const struct layered *l = layers.marks; l < layers.marks + layers.n; l++)
		if (l->layer == layer && l->mark->kind == MARK_FILL && is_white(l->mark))
			add_fill(c, l->mark);
	fill_path(c, SHADE_WHITE);
}

/* In the order drawn; those of one shade that follow each other are one path. */
static void paint_shades(struct canvas c, struct layers layers, int layer)
{
	enum shade shade = SHADE_BLACK;

	for (const struct layered *l = layers.marks; l < layers.marks + layers.n; l++) {
		if (l->layer != layer || l->mark->kind != MARK_FILL || is_white(l->mark))
			continue;
		if (l->mark->fill.shade != shade)
			fill_path(c, shade);
		shade = l->mark->fill.shade;
		add_fill(c, l->mark);
	}
	fill_path(c, shade);
}

static int drawn_with(const struct mark *m, enum pen pen)
{
	switch (m->kind) {
	case MARK_LINE: return m->line.pen == pen;
	case MARK_ARC: return m->arc.pen == pen;
	case MARK_FILL:
	case MARK_TEXT: return 0;
	}
	return 0;
}

/* Whole lines end round, so that edges drawn one by one still close their
 * corners; dashes end square, or their gaps would fill up. */
static void set_pen(struct canvas c, enum pen pen)
{
	int broken = pen_dashes(pen, c.drawing->pens)[0] > 0;

	cairo_set_line_width(c.cr, pen_width(pen, c.drawing->pens) * POINTS_PER_MM);
	cairo_set_line_cap(c.cr, broken ? CAIRO_LINE_CAP_BUTT : CAIRO_LINE_CAP_ROUND);
}

static void paint_pen(struct canvas c, struct layers layers, int layer, enum pen pen)
{
	int n = 0;

	for (const struct layered *l = layers.marks; l < layers.marks + layers.n; l++) {
		if (l->layer != layer || !drawn_with(l->mark, pen))
			continue;
		strokes_add(c, l->mark);
		n++;
	}
	if (!n)
		return;
	set_pen(c, pen);
	cairo_stroke(c.cr);
}

static void paint_lines(struct canvas c, struct layers layers, int layer)
{
	cairo_set_source_rgb(c.cr, 0, 0, 0);
	for (enum pen pen = 0; pen < PEN_COUNT; pen++)
		paint_pen(c, layers, layer, pen);
}

int paint_drawing(struct canvas c)
{
	struct layers layers = layers_sort(c.arena, c.drawing);

	cairo_set_tolerance(c.cr, TOLERANCE);
	cairo_set_line_join(c.cr, CAIRO_LINE_JOIN_MITER);
	for (int layer = 0; layer < layers.count; layer++) {
		paint_whites(c, layers, layer);
		paint_shades(c, layers, layer);
		paint_lines(c, layers, layer);
	}
	return lettering_paint(c);
}
