/*
 * A pattern of dashes that is simply laid along a line ends where it pleases:
 * corners stay open and short edges vanish into a gap.  Here every straight or
 * smooth run of a broken line gets the pattern fitted to its own length, so that
 * it starts and ends with a whole dash:
 *
 *     ---  ---  ---  --+
 *                      |        (ISO 128: dashes meet at corners)
 *                      |
 *
 * Runs of one length, such as the edges of equal steps, still share a stroke.
 */
#include "write/strokes.h"

#include <assert.h>
#include <stdbool.h>

/* A polyline that turns by less than this runs on smoothly: it stands for a curve. */
#define CORNER_COSINE 0.9

/* A run is broken only when its gaps need not shrink below this share. */
#define LEAST_SCALE 0.4

/* No line starts here. */
static const struct vec nowhere = { -INFINITY, -INFINITY };

struct brush brush_new(struct canvas c, enum pen pen)
{
	return (struct brush){ .canvas = c, .pen = pen };
}

static const double *pattern_of(const struct brush *b)
{
	return pen_dashes(b->pen);
}

static bool is_broken(const struct brush *b)
{
	return pattern_of(b)[0] > 0;
}

void brush_stroke(struct brush *b)
{
	const double *pattern = pattern_of(b);
	struct stroke how = { b->pen, .width = pen_width(b->pen, b->canvas.drawing->pens) };

	if (b->scale > 0)
		for (int i = 0; pattern[i] > 0; i++) {
			assert(i < MOST_DASHES - 1);
			how.dashes[how.dash_count++] = pattern[i] * b->scale;
		}
	if (b->marks)
		b->canvas.ink->kind->stroke(b->canvas.ink, how);
	b->marks = 0;
}

/* How much to stretch a pattern so that `length` takes it some whole number of
 * times and one more first dash. */
static double fitted_scale(const double *pattern, double length)
{
	double once = 0;

	for (int i = 0; pattern[i] > 0; i++)
		once += pattern[i];
	if (length < (once + pattern[0]) * LEAST_SCALE)
		return 0;
	double times = fmax(1, round((length - pattern[0]) / once));
	return length / (times * once + pattern[0]);
}

/* Before a run is added that is so long. */
static void begin_run(struct brush *b, double length)
{
	double scale = is_broken(b) ? fitted_scale(pattern_of(b), length) : 0;

	if (!near_enough(scale, b->scale)) {
		brush_stroke(b);
		b->scale = scale;
	}
	b->marks++;
}

/* Edges drawn one by one are often a chain: a whole line that starts where the
 * last one ended goes on from there, and gets a corner instead of two ends. */
static bool goes_on(const struct brush *b, struct vec at)
{
	return b->marks > 1 && !is_broken(b) && vec_near(at, b->at);
}

static void add_points(struct brush *b, const struct vec *points, int n)
{
	struct ink *ink = b->canvas.ink;

	if (!goes_on(b, points[0]))
		ink->kind->move(ink, points[0]);
	for (int i = 1; i < n; i++)
		ink->kind->line(ink, points[i]);
	b->at = points[n - 1];
}

static double points_length(const struct vec *points, int n)
{
	double length = 0;

	for (int i = 1; i < n; i++)
		length += vec_length(vec_sub(points[i], points[i - 1]));
	return length;
}

static void add_whole(struct brush *b, const struct mark *m)
{
	begin_run(b, 0);
	add_points(b, m->line.points, m->line.n);
	if (!m->line.closed)
		return;
	b->canvas.ink->kind->close(b->canvas.ink);
	b->at = nowhere;
}

static bool is_corner(struct vec before, struct vec at, struct vec after)
{
	struct vec in = vec_unit(vec_sub(at, before)), out = vec_unit(vec_sub(after, at));

	return vec_dot(in, out) < CORNER_COSINE;
}

/* Corner to corner. */
static void add_broken(struct brush *b, const struct vec *points, int n)
{
	int from = 0;

	for (int i = 1; i < n; i++) {
		if (i < n - 1 && !is_corner(points[i - 1], points[i], points[i + 1]))
			continue;
		begin_run(b, points_length(points + from, i - from + 1));
		add_points(b, points + from, i - from + 1);
		from = i;
	}
}

static const struct vec *closed_points(const struct brush *b, const struct mark *m)
{
	struct vec *points = NEW_N(b->canvas.arena, struct vec, m->line.n + 1);

	for (int i = 0; i <= m->line.n; i++)
		points[i] = m->line.points[i % m->line.n];
	return points;
}

static void add_line(struct brush *b, const struct mark *m)
{
	if (!is_broken(b))
		add_whole(b, m);
	else if (m->line.closed)
		add_broken(b, closed_points(b, m), m->line.n + 1);
	else
		add_broken(b, m->line.points, m->line.n);
}

static void add_arc(struct brush *b, const struct mark *m)
{
	struct ink *ink = b->canvas.ink;
	double turn = m->arc.to - m->arc.from;

	if (turn < 0)
		turn += 2 * PI;
	begin_run(b, turn * m->arc.radius);
	ink->kind->arc(ink,
		(struct arc){ m->arc.centre, m->arc.radius, m->arc.from, m->arc.from + turn });
	if (turn > 2 * PI - NEAR_ENOUGH)
		ink->kind->close(ink);
	b->at = nowhere;
}

void brush_add(struct brush *b, const struct mark *m)
{
	switch (m->kind) {
	case MARK_LINE: add_line(b, m); break;
	case MARK_ARC: add_arc(b, m); break;
	case MARK_FILL:
	case MARK_TEXT: break;
	}
}
