/*
 * Lines into one path.
 *
 * Cairo's own dashes run on round a corner and end where they please, and a
 * path has but one pattern for all its lines.  Here every straight or smooth
 * run of a broken line is broken by itself, so that it starts and ends with a
 * whole dash and corners close:
 *
 *     ---  ---  ---  --+
 *                      |        (ISO 128: dashes meet at corners)
 *                      |
 */
#include "write/strokes.h"

/* A polyline that turns by less than this runs on smoothly: it stands for a curve. */
#define CORNER_COSINE 0.9

/* A run is broken only when its gaps do not have to shrink below this share. */
#define LEAST_SCALE 0.4

struct vec canvas_point(struct canvas c, struct vec at)
{
	return vec(at.x * POINTS_PER_MM, (c.drawing->height - at.y) * POINTS_PER_MM);
}

static void move_to(struct canvas c, struct vec at)
{
	struct vec p = canvas_point(c, at);

	cairo_move_to(c.cr, p.x, p.y);
}

static void line_to(struct canvas c, struct vec at)
{
	struct vec p = canvas_point(c, at);

	cairo_line_to(c.cr, p.x, p.y);
}

/* Drawn counter-clockwise; on the page, where y counts down, angles change sign. */
static void arc_to(struct canvas c, const struct mark *m, double from, double to)
{
	struct vec centre = canvas_point(c, m->arc.centre);

	cairo_arc_negative(c.cr, centre.x, centre.y, m->arc.radius * POINTS_PER_MM, -from, -to);
}

/* A dash pattern fitted to one run: the next dash, from its start to its end. */
struct dashes {
	const double *pattern;
	double scale, at, length;
	int next;
};

struct dash {
	double from, to;
};

static double period(const double *pattern)
{
	double sum = 0;

	for (int i = 0; pattern[i] > 0; i++)
		sum += pattern[i];
	return sum;
}

/* So many periods and one more first dash, stretched or shrunk to the length. */
static struct dashes dashes_fit(const double *pattern, double length)
{
	double once = period(pattern), natural = once + pattern[0];

	if (length < natural * LEAST_SCALE)
		return (struct dashes){ .pattern = pattern, .length = length };
	double times = fmax(1, round((length - pattern[0]) / once));
	return (struct dashes){
		.pattern = pattern,
		.length = length,
		.scale = length / (times * once + pattern[0]),
	};
}

static int dashes_left(const struct dashes *d)
{
	return d->at < d->length - NEAR_ENOUGH;
}

static struct dash dashes_next(struct dashes *d)
{
	double from = d->at, to = d->length;

	if (d->scale > 0)
		to = fmin(to, from + d->pattern[d->next] * d->scale);
	if (d->length - to < NEAR_ENOUGH)
		to = d->length;
	d->at = d->scale > 0 ? to + d->pattern[d->next + 1] * d->scale : to;
	d->next = d->pattern[d->next + 2] > 0 ? d->next + 2 : 0;
	return (struct dash){ from, to };
}

/* A run of a polyline: points[0] to points[n - 1], walked once from end to end. */
struct run {
	const struct vec *points;
	int n;
	int leg;        /* the leg walked now */
	double leg_at;  /* where it starts along the run */
	double leg_end; /* where it ends */
};

static void next_leg(struct run *r)
{
	r->leg++;
	r->leg_at = r->leg_end;
	r->leg_end += vec_length(vec_sub(r->points[r->leg + 1], r->points[r->leg]));
}

static struct run run_start(const struct vec *points, int n)
{
	struct run r = { .points = points, .n = n, .leg = -1 };

	next_leg(&r);
	return r;
}

static struct vec run_point(const struct run *r, double at)
{
	double leg = r->leg_end - r->leg_at;
	double share = leg > 0 ? (at - r->leg_at) / leg : 1;
	struct vec a = r->points[r->leg], b = r->points[r->leg + 1];

	return vec_add(a, vec_scale(vec_sub(b, a), share));
}

static void run_walk(struct run *r, double at)
{
	while (r->leg_end < at && r->leg + 2 < r->n)
		next_leg(r);
}

static double run_length(const struct vec *points, int n)
{
	double length = 0;

	for (int i = 1; i < n; i++)
		length += vec_length(vec_sub(points[i], points[i - 1]));
	return length;
}

static void draw_dash(struct canvas c, struct run *r, struct dash dash)
{
	while (r->leg_end < dash.to && r->leg + 2 < r->n) {
		line_to(c, r->points[r->leg + 1]);
		next_leg(r);
	}
	line_to(c, run_point(r, dash.to));
}

/* The first dash goes on from where the run before ended, so that the corner is mitred. */
static void break_run(struct canvas c, const double *pattern, const struct vec *points, int n)
{
	struct dashes dashes = dashes_fit(pattern, run_length(points, n));
	struct run r = run_start(points, n);

	if (dashes_left(&dashes))
		draw_dash(c, &r, dashes_next(&dashes));
	while (dashes_left(&dashes)) {
		struct dash dash = dashes_next(&dashes);
		run_walk(&r, dash.from);
		move_to(c, run_point(&r, dash.from));
		draw_dash(c, &r, dash);
	}
}

static int is_corner(struct vec before, struct vec at, struct vec after)
{
	struct vec in = vec_unit(vec_sub(at, before)), out = vec_unit(vec_sub(after, at));

	return vec_dot(in, out) < CORNER_COSINE;
}

static void break_polyline(struct canvas c, const double *pattern, const struct vec *points, int n)
{
	int first = 0;

	move_to(c, points[0]);
	for (int i = 1; i < n; i++) {
		if (i < n - 1 && !is_corner(points[i - 1], points[i], points[i + 1]))
			continue;
		break_run(c, pattern, points + first, i - first + 1);
		first = i;
	}
}

static const struct vec *closed_points(struct canvas c, const struct mark *m)
{
	struct vec *points = NEW_N(c.arena, struct vec, m->line.n + 1);

	for (int i = 0; i <= m->line.n; i++)
		points[i] = m->line.points[i % m->line.n];
	return points;
}

static void break_line(struct canvas c, const double *pattern, const struct mark *m)
{
	if (m->line.closed)
		break_polyline(c, pattern, closed_points(c, m), m->line.n + 1);
	else
		break_polyline(c, pattern, m->line.points, m->line.n);
}

static void whole_line(struct canvas c, const struct mark *m)
{
	move_to(c, m->line.points[0]);
	for (int i = 1; i < m->line.n; i++)
		line_to(c, m->line.points[i]);
	if (m->line.closed)
		cairo_close_path(c.cr);
}

static void add_line(struct canvas c, const struct mark *m)
{
	const double *pattern = pen_dashes(m->line.pen, c.drawing->pens);

	if (pattern[0] > 0)
		break_line(c, pattern, m);
	else
		whole_line(c, m);
}

static double arc_turn(const struct mark *m)
{
	double turn = m->arc.to - m->arc.from;

	return turn < 0 ? turn + 2 * PI : turn;
}

static void break_arc(struct canvas c, const double *pattern, const struct mark *m)
{
	double radius = m->arc.radius;
	struct dashes dashes = dashes_fit(pattern, radius * arc_turn(m));

	while (dashes_left(&dashes)) {
		struct dash dash = dashes_next(&dashes);
		cairo_new_sub_path(c.cr);
		arc_to(c, m, m->arc.from + dash.from / radius, m->arc.from + dash.to / radius);
	}
}

static void whole_arc(struct canvas c, const struct mark *m)
{
	cairo_new_sub_path(c.cr);
	arc_to(c, m, m->arc.from, m->arc.to);
	if (arc_turn(m) > 2 * PI - NEAR_ENOUGH)
		cairo_close_path(c.cr);
}

static void add_arc(struct canvas c, const struct mark *m)
{
	const double *pattern = pen_dashes(m->arc.pen, c.drawing->pens);

	if (pattern[0] > 0)
		break_arc(c, pattern, m);
	else
		whole_arc(c, m);
}

void strokes_add(struct canvas c, const struct mark *m)
{
	switch (m->kind) {
	case MARK_LINE: add_line(c, m); break;
	case MARK_ARC: add_arc(c, m); break;
	case MARK_FILL:
	case MARK_TEXT: break;
	}
}
