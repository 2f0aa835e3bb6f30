/*
 * The two ends of a stringer as they stand in the house, and one step of it.
 */
#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "sheets/marks.h"
#include "sheets/stringer_sheet.h"
#include "sheets/template_bores.h"
#include "sheets/words.h"

#define BEYOND 60.0 /* of the house shown round a detail */

/* A detail says no more at full size: 3" = 1'-0" or 1:5, on large papers half size. */
static double largest(const struct stringer_subject *t)
{
	return t->context->paper->pens == PENS_LARGE ? 2 : 4;
}

static struct box title_under(struct sheet *s, const struct stringer_subject *t, struct box used,
	const char *title, double scale)
{
	struct arena *a = s->drawing->arena;
	const char *full = arena_printf(a, "%s %s", t->part->mark, title);
	const char *written = scale_words(a, t->context->stair, 1 / scale);
	double w = draw_view_title(s->hand, vec(used.x0, used.y0 - s->hand.letter * 3.4), full,
		written);

	used.y0 -= s->hand.letter * 4.4;
	used.x1 = fmax(used.x1, used.x0 + w);
	return used;
}

static void draw_clipped(struct sheet *s, enum pen pen, struct chain whole, struct box window,
	double scale)
{
	struct arena *a = s->drawing->arena;

	for (struct chain *c = clip_chain(a, window, whole); c; c = c->next) {
		struct vec *paper = NEW_N(a, struct vec, c->n);
		for (int i = 0; i < c->n; i++)
			paper[i] = vec_scale(c->points[i], scale);
		if (c->closed)
			draw_polygon(s->drawing, pen, paper, c->n);
		else
			draw_polyline(s->drawing, pen, paper, c->n);
	}
}

/* Holes and mortises of the stringer where it stands in the house, broken. */
static void draw_bores(struct sheet *s, const struct stringer_subject *t, struct box window,
	double scale)
{
	struct arena *a = s->drawing->arena;
	struct unit_bores b = bores_laid_out(a, t->part);

	for (int i = 0; i < b.n; i++) {
		struct chain lines = bore_lines(a, &b.bore[i]);
		struct vec *at = NEW_N(a, struct vec, lines.n);
		for (int k = 0; k < lines.n; k++) {
			struct vec3 p = vec3(lines.points[k].x, lines.points[k].y, 0);
			at[k] = view_project(t->section.spec.from,
				frame_place(t->part->places[0], p));
		}
		lines.points = at;
		draw_clipped(s, PEN_HIDDEN, lines, window, scale);
	}
}

/* What the two ends differ in. */
struct stringer_end {
	const char *title;
	struct box window;
	void (*dimensions)(struct dims *d, const struct stringer_subject *t, double scale);
};

static struct box compose_end(struct sheet *s, const struct stringer_subject *t,
	const struct stringer_end *e, double scale)
{
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter,
		box_scale(e->window, scale));

	view_draw(s->drawing, &t->section, (struct placing){ .scale = scale }, &e->window);
	draw_bores(s, t, e->window, scale);
	e->dimensions(&d, t, scale);
	struct box used = dims_draw(&d);
	letter_marks(s->hand, &t->section, scale, e->window);
	return title_under(s, t, used, e->title, scale);
}

/* ---- foot ---- */

static struct box foot_window(const struct stringer_subject *t)
{
	const struct stair *s = t->context->stair;
	double run = t->flight->unit_run, nosing = s->job->treads.nosing;

	return (struct box){ -nosing - 2 * BEYOND, s->lower_structural - BEYOND,
		run * 1.5 + s->job->risers.thickness, s->unit_rise * 2 + 10 };
}

/* Left the rises as they are walked, right what of the first one is cut on the stringer and the
 * floor's build-up, below the nosing, the riser and the run. */
static void foot_dimensions(struct dims *d, const struct stringer_subject *t, double scale)
{
	const struct stair *s = t->context->stair;
	const struct stringer *w = t->part->stringer;
	struct arena *a = d->drawing->arena;
	double rise = s->unit_rise * scale, nose = -s->job->treads.nosing * scale;
	double cut = rise - s->job->treads.thickness * scale, foot = w->foot_level * scale;
	double riser = s->job->risers.thickness * scale, run = t->flight->unit_run * scale;
	const struct dim_link rises[] = {
		{ s->lower_structural * scale, 0, d->around.x0, d->around.x0,
			arena_printf(a, "%s finish", length_words(a, s, -s->lower_structural)) },
		{ 0, rise, d->around.x0, nose, length_words(a, s, w->first_rise_finished) },
		{ rise, 2 * rise, nose, run + nose, length_words(a, s, s->unit_rise) },
	};
	int bare = s->lower_structural < -NEAR_ENOUGH ? 0 : 1;
	const struct dim_link as_cut[] = {
		{ foot, cut, riser, riser,
			arena_printf(a, "%s cut", length_words(a, s, w->first_rise_cut)) },
	};
	const struct dim_link along[] = {
		{ nose, 0, cut, foot, length_words(a, s, s->job->treads.nosing) },
		{ 0, run, foot, foot, length_words(a, s, t->flight->unit_run) },
	};

	dims_chain(d, DIM_LEFT, rises + bare, 3 - bare);
	dims_chain(d, DIM_BELOW, along, 2);
	if (w->kind != STRINGER_HOUSED)
		dims_chain(d, DIM_RIGHT, as_cut, 1);
}

static struct box compose_foot(struct sheet *s, const void *what, double scale)
{
	return compose_end(s, what,
		&(struct stringer_end){ "foot", foot_window(what), foot_dimensions }, scale);
}

struct composition stringer_foot(const struct stringer_subject *t)
{
	return (struct composition){ compose_foot, t, foot_window(t), largest(t) };
}

/* ---- head ---- */

static struct box head_window(const struct stringer_subject *t)
{
	const struct stair *s = t->context->stair;
	double run = t->flight->unit_run, top = t->flight->total_run;

	return (struct box){ top - run * 1.4, s->total_rise - s->unit_rise * 2.4, top + 4 * BEYOND,
		s->total_rise + BEYOND };
}

/* What the header's top stands over the stringer's last level cut, and what the floor does where
 * that is more: the landing nosing is let in between. */
static void header_dimensions(struct dims *d, const struct stringer_subject *t, double scale)
{
	const struct stair *s = t->context->stair;
	const struct stringer *w = t->part->stringer;
	struct arena *a = d->drawing->arena;
	double floor = s->upper_structural, cut = floor - w->head_under_structure;
	double header = floor - w->header_low, face = t->flight->header_x * scale;
	const struct dim_link links[] = {
		{ cut * scale, header * scale, face, face,
			arena_printf(a, "%s to header", length_words(a, s, header - cut)) },
		{ header * scale, floor * scale, face, d->around.x1,
			length_words(a, s, w->header_low) },
	};
	const char *to = s->job->floors.upper_finish > 0 ? "structure" : "floor";
	const struct dim_link whole[] = { { cut * scale, floor * scale, face, d->around.x1,
		arena_printf(a, "%s to %s", length_words(a, s, w->head_under_structure), to) } };

	if (w->header_low > NEAR_ENOUGH)
		dims_chain(d, DIM_RIGHT, links, 2);
	if (w->head_under_structure > NEAR_ENOUGH)
		dims_chain(d, DIM_RIGHT, whole, 1);
}

/* Left the rises as they are walked, right where the stringer's last level cut is set on the
 * header. */
static void head_dimensions(struct dims *d, const struct stringer_subject *t, double scale)
{
	const struct stair *s = t->context->stair;
	struct arena *a = d->drawing->arena;
	double top = s->total_rise, rise = s->unit_rise, run = t->flight->unit_run;
	double nose = (t->flight->total_run - s->job->treads.nosing) * scale;
	const struct dim_link rises[] = {
		{ (top - 2 * rise) * scale, (top - rise) * scale, d->around.x0, nose - run * scale,
			length_words(a, s, rise) },
		{ (top - rise) * scale, top * scale, nose - run * scale, nose,
			length_words(a, s, rise) },
	};

	dims_chain(d, DIM_LEFT, rises, 2);
	header_dimensions(d, t, scale);
}

static struct box compose_head(struct sheet *s, const void *what, double scale)
{
	return compose_end(s, what,
		&(struct stringer_end){ "head", head_window(what), head_dimensions }, scale);
}

struct composition stringer_head(const struct stringer_subject *t)
{
	return (struct composition){ compose_head, t, head_window(t), largest(t) };
}

/* ---- one step, on the bench ---- */

/* The step after the back corner that is cut deepest; the middle one where nothing is cut through.
 * There is a step before it. */
static int shown_step(const struct stringer *w)
{
	int nearest = 0;

	if (w->kind == STRINGER_HOUSED)
		return w->steps / 2;
	for (int i = 1; i + 1 < w->steps; i++)
		if (fabs(w->inner_corners[i].x - w->throat_at.x) <
			fabs(w->inner_corners[nearest].x - w->throat_at.x))
			nearest = i;
	return nearest + 1;
}

/* From one front corner to the next, and some of the plank on either side. */
static struct box step_window(const struct stringer_subject *t)
{
	const struct stringer *w = t->part->stringer;
	int i = shown_step(w);
	double one = shape_point(&t->shape, w->tread_corners[i - 1]).x;
	double next = shape_point(&t->shape, w->tread_corners[i]).x;
	double step = fabs(next - one);

	return (struct box){ fmin(one, next) - step * 0.2, 0, fmax(one, next) + step * 0.4,
		w->plank_width };
}

/* Square to the edge, from the lower edge up to the corner that is cut deepest, where it is in the
 * window; the figure on that side of the line where it has room. */
static void draw_throat(struct sheet *s, const struct stringer_subject *t, struct box window,
	double scale)
{
	const struct stringer *w = t->part->stringer;
	struct hand h = s->hand;
	double x = shape_point(&t->shape, w->throat_at).x * scale, throat = w->throat * scale;
	const char *text = length_words(h.g->arena, t->context->stair, w->throat);
	const struct spot spots[] = {
		{ vec(x - 0.9, throat / 2), ALIGN_MIDDLE, PI / 2, SPOT_PLAIN },
		{ vec(x + 0.9 + h.letter, throat / 2), ALIGN_MIDDLE, PI / 2, SPOT_PLAIN },
	};

	if (x < window.x0 * scale || x > window.x1 * scale ||
		measure_width(h.measure, LETTER_REGULAR, h.letter, text) + 2 > throat)
		return;
	if (place_text(h.g, h.measure, h.letter, spots, 2, text) >= 0)
		dim_between(h.g, h.letter, vec(x, 0), vec(x, throat), "");
}

static void step_dimensions(struct dims *d, const struct stringer_subject *t, double scale)
{
	const struct stair *s = t->context->stair;
	const struct stringer *w = t->part->stringer;
	struct arena *a = d->drawing->arena;
	int i = shown_step(w);
	double one = shape_point(&t->shape, w->tread_corners[i - 1]).x;
	double next = shape_point(&t->shape, w->tread_corners[i]).x;
	double from = fmin(one, next), to = fmax(one, next);
	const struct dim_link along[] = { { from * scale, to * scale, d->around.y1, d->around.y1,
		arena_printf(a, "%s a step", inches_words(a, s, to - from)) } };
	double front = w->tread_corners[i].y, back = w->inner_corners[i].y;
	const struct dim_link across[] = {
		{ 0, back * scale, d->around.x0, d->around.x0, inches_words(a, s, back) },
		{ back * scale, front * scale, d->around.x0, d->around.x0,
			inches_words(a, s, front - back) },
		{ front * scale, w->plank_width * scale, d->around.x0, d->around.x0,
			inches_words(a, s, w->plank_width - front) },
	};
	const struct dim_link whole[] = { { 0, w->plank_width * scale, d->around.x0, d->around.x0,
		inches_words(a, s, w->plank_width) } };

	dims_chain(d, DIM_ABOVE, along, 1);
	dims_chain(d, DIM_LEFT, whole, 1);
	if (w->kind == STRINGER_HOUSED)
		dims_chain(d, DIM_LEFT, across, 3);
}

/* The pitch board itself: run and rise along the two cuts that meet in a back corner. */
static void letter_cuts(struct sheet *s, const struct stringer_subject *t, double scale)
{
	const struct stringer *w = t->part->stringer;
	const struct stair *st = t->context->stair;
	struct arena *a = s->drawing->arena;
	double way = t->shape.mirrored ? -1 : 1, off = s->hand.letter * 0.8;
	int i = shown_step(w) - 1;
	struct vec inner = vec_scale(shape_point(&t->shape, w->inner_corners[i]), scale);
	struct vec level = vec(-cos(w->pitch) * way, sin(w->pitch));
	struct vec plumb = vec(sin(w->pitch) * way, cos(w->pitch));
	struct vec run = vec_add(vec_scale(level, w->unit_run * scale / 2), vec_scale(plumb, off));
	struct vec rise =
		vec_add(vec_scale(plumb, w->unit_rise * scale / 2), vec_scale(level, off));

	/* too small to letter: the table has the figures */
	if (w->unit_rise * scale < 30)
		return;
	draw_text_styled(s->drawing, vec_add(inner, run), s->hand.letter, -w->pitch * way,
		ALIGN_MIDDLE, LETTER_REGULAR, inches_words(a, st, w->unit_run));
	draw_text_styled(s->drawing, vec_add(inner, rise), s->hand.letter,
		(PI / 2 - w->pitch) * way, ALIGN_MIDDLE, LETTER_REGULAR,
		inches_words(a, st, w->unit_rise));
}

static struct box compose_step(struct sheet *s, const void *what, double scale)
{
	const struct stringer_subject *t = what;
	struct box window = step_window(t), used = box_scale(window, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);

	draw_clipped(s, PEN_OUTLINE, t->shape.outline, window, scale);
	draw_clipped(s, PEN_HIDDEN, t->shape.far_face, window, scale);
	for (const struct chain *c = t->shape.grooves; c; c = c->next)
		draw_clipped(s, PEN_OUTLINE, *c, window, scale);
	draw_box(s->drawing, PEN_ABOVE, used);
	if (t->part->stringer->kind != STRINGER_HOUSED) {
		draw_throat(s, t, window, scale);
		letter_cuts(s, t, scale);
	}
	step_dimensions(&d, t, scale);
	return title_under(s, t, dims_draw(&d), "one step", scale);
}

struct composition stringer_step(const struct stringer_subject *t)
{
	return (struct composition){ compose_step, t, step_window(t), largest(t) };
}
