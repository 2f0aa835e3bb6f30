/*
 * The chains of dimensions round the plan.
 */
#include "draw/bounds.h"
#include "pitchboard/width.h"
#include "sheets/plan_landings.h"
#include "sheets/rail_runs.h"
#include "sheets/reader.h"
#include "sheets/stands.h"
#include "sheets/words.h"

struct vec plan_at(const struct plan *p, double x, double y, double scale)
{
	struct vec3 v = frame_place(p->flight->frame, vec3(x, y, 0));

	return vec_scale(vec(v.x, v.y), scale);
}

static void run_dimensions(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	const struct flight *f = p->flight;
	struct arena *a = d->drawing->arena;
	int runs = (int)lround(f->total_run / f->unit_run);
	double *ticks = NEW_N(a, double, runs + 1);
	double foot = plan_at(p, 0, 0, scale).y;

	for (int i = 0; i <= runs; i++)
		ticks[i] = plan_at(p, i * f->unit_run, 0, scale).x;
	struct dim_link all = { ticks[0], ticks[runs], foot, foot,
		steps_words(a, s, runs, f->unit_run) };
	dims_steps(d, DIM_BELOW, &all, 1, ticks, runs + 1);
}

static void opening_dimension(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = d->drawing->arena;
	double foot = plan_at(p, 0, s->width, scale).y;

	if (s->opening.x1 <= s->opening.x0)
		return;
	const struct dim_link l = { plan_at(p, s->opening.x0, 0, scale).x,
		plan_at(p, s->opening.x1, 0, scale).x, foot, foot,
		arena_printf(a, "opening above %s",
			measured_words(a, s, "opening_length", s->job->opening.length)) };
	dims_chain(d, DIM_ABOVE, &l, 1);
}

/* Across the opening, where the job gives its width. */
static void opening_width(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = d->drawing->arena;
	double x = plan_at(p, s->opening.x0, 0, scale).x;
	const struct dim_link l = { plan_at(p, 0, s->opening.y0, scale).y,
		plan_at(p, 0, s->opening.y1, scale).y, x, x,
		arena_printf(a, "opening %s",
			measured_words(a, s, "opening_width", s->job->opening.width)) };

	if (s->job->opening.width > 0 && s->opening.x1 > s->opening.x0)
		dims_chain(d, DIM_LEFT, &l, 1);
}

/* From the first riser's face to the end of a wall that stops along the flight. */
static void wall_end(struct dims *d, const struct plan *p, const struct job_side *side,
	enum dim_side where, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = d->drawing->arena;

	if (side->kind != SIDE_OPEN || side->from_step < 2)
		return;
	double x = p->flight->steps[side->from_step - 1].riser_x + side->wall_past;
	double foot = where == DIM_BELOW ? d->around.y0 : d->around.y1;
	const struct dim_link l = { plan_at(p, 0, 0, scale).x, plan_at(p, x, 0, scale).x, foot,
		foot, arena_printf(a, "wall %s", length_words(a, s, x)) };
	dims_chain(d, where, &l, 1);
}

static void whole_width(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	double x = plan_at(p, p->flight->total_run, 0, scale).x;
	const struct dim_link whole = { plan_at(p, 0, 0, scale).y, plan_at(p, 0, s->width, scale).y,
		x, x, measured_words(d->drawing->arena, s, "width", s->width) };

	dims_chain(d, DIM_RIGHT, &whole, 1);
}

/* At its narrowest: at the rail and under it, and over it. */
static void clear_widths(struct dims *d, const struct plan *p, double scale)
{
	static const char *const words[] = {
		[CLEAR_OVER_RAIL] = "over the rail",
		[CLEAR_AT_RAIL] = "at the rail",
	};
	const struct sheet_context *c = p->context;
	struct arena *a = d->drawing->arena;
	double x = plan_at(p, p->flight->total_run, 0, scale).x;

	for (int i = CLEAR_AT_RAIL; i >= CLEAR_OVER_RAIL; i--) {
		struct clear_width w = clear_width_measure(a, c->stair, c->parts, (enum clear_at)i);
		const struct dim_link clear = { plan_at(p, 0, w.right, scale).y,
			plan_at(p, 0, w.left, scale).y, x, x,
			arena_printf(a, "clear %s %s", length_words(a, c->stair, w.left - w.right),
				words[i]) };
		dims_chain(d, DIM_RIGHT, &clear, 1);
	}
}

static void stringer_widths(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = d->drawing->arena;
	struct stands stands = list_stands(a, p->context->parts);
	struct dim_link *across = NEW_N(a, struct dim_link, 2 * stands.n + 2);
	double x = plan_at(p, p->flight->total_run, 0, scale).x, from = 0;
	int n = 0;

	for (int i = 0; i < stands.n; i++) {
		const struct stringer_stand *w = &stands.at[i];
		if (w->low > from + NEAR_ENOUGH)
			across[n++] = (struct dim_link){ from * scale, w->low * scale, x, x,
				inches_words(a, s, w->low - from) };
		across[n++] = (struct dim_link){ w->low * scale, w->high * scale, x, x, NULL };
		from = w->high;
	}
	if (s->width > from + NEAR_ENOUGH)
		across[n++] = (struct dim_link){ from * scale, s->width * scale, x, x,
			inches_words(a, s, s->width - from) };
	if (n)
		dims_chain(d, DIM_RIGHT, across, n);
}

/* A level rail, in however many lengths, from end to end: on that side of the stair where it is. */
static void level_rail(struct dims *d, const struct plan *p, const struct rail_run *run,
	double scale)
{
	const struct stair *s = p->context->stair;
	struct vec3 from = rail_run_point(run, RUN_LOW_END), to = rail_run_point(run, RUN_HIGH_END);
	struct vec a = vec(from.x * scale, from.y * scale), b = vec(to.x * scale, to.y * scale);
	struct vec middle = vec_scale(vec_add(a, b), 0.5);
	struct vec centre = plan_at(p, p->flight->total_run / 2, s->width / 2, scale);
	const char *text = arena_printf(d->drawing->arena, "level rail %s",
		length_words(d->drawing->arena, s, run->length));
	const struct dim_link along = { fmin(a.x, b.x), fmax(a.x, b.x), middle.y, middle.y, text };
	const struct dim_link across = { fmin(a.y, b.y), fmax(a.y, b.y), middle.x, middle.x, text };

	if (along.b - along.a > across.b - across.a)
		dims_chain(d, middle.y > centre.y ? DIM_ABOVE : DIM_BELOW, &along, 1);
	else
		dims_chain(d, middle.x > centre.x ? DIM_RIGHT : DIM_LEFT, &across, 1);
}

static void level_rails(struct dims *d, const struct plan *p, double scale)
{
	struct rail_runs runs = rail_runs(d->drawing->arena, p->context->parts, &part_rail);

	for (int i = 0; i < runs.n; i++)
		if (runs.run[i].end[RUN_LOW_END]->pitch <= 0)
			level_rail(d, p, &runs.run[i], scale);
}

void plan_add_dimensions(struct dims *d, const struct plan *p, double scale)
{
	const struct sheet_context *c = p->context;

	run_dimensions(d, p, scale);
	opening_dimension(d, p, scale);
	wall_end(d, p, &c->stair->job->stair.right, DIM_BELOW, scale);
	wall_end(d, p, &c->stair->job->stair.left, DIM_ABOVE, scale);
	opening_width(d, p, scale);
	level_rails(d, p, scale);
	if (sheet_says(c, SAYS_STRINGERS))
		stringer_widths(d, p, scale);
	if (sheet_says(c, SAYS_LIMITS))
		clear_widths(d, p, scale);
	if (sheet_says(c, SAYS_FLOORS))
		plan_add_landings(d, p, scale);
	whole_width(d, p, scale);
}
