#include "draw/bounds.h"
#include "sheets/side_drafting.h"
#include "sheets/words.h"

static struct dim_link link_between(double a, double b, double foot_a, double foot_b,
	const char *text)
{
	if (a <= b)
		return (struct dim_link){ a, b, foot_a, foot_b, text };
	return (struct dim_link){ b, a, foot_b, foot_a, text };
}

static void floor_dimension(struct dims *dims, const struct drafting *d, double foot)
{
	const struct stair *s = d->stair;
	struct arena *a = dims->drawing->arena;
	double thick = s->floor_depth;

	if (thick <= 0)
		return;
	struct dim_link l = { side_at(d, 0, s->total_rise - thick).y,
		side_at(d, 0, s->total_rise).y, foot, foot,
		arena_printf(a, "floor %s", measured_words(a, s, "floor_thickness", thick)) };
	dims_chain(dims, side_high(d), &l, 1);
}

static void rise_dimensions(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	struct arena *a = dims->drawing->arena;
	double *ticks = NEW_N(a, double, s->risers + 1);
	double foot = side_at(d, d->flight->steps[0].nosing_x, 0).x,
	       head = side_at(d, d->flight->total_run, 0).x;
	bool from_structure = s->job->floors.structural_rise > 0;
	const char *size = from_structure ? "structural_rise" : "total_rise";

	for (int i = 0; i <= s->risers; i++)
		ticks[i] = side_at(d, 0, i * s->unit_rise).y;
	struct dim_link all = { ticks[0], ticks[s->risers], foot, foot,
		steps_words(a, s, s->risers, s->unit_rise) };
	dims_steps(dims, side_low(d), &all, 1, ticks, s->risers + 1);
	all.text = arena_printf(a, "%s total rise%s", length_words(a, s, s->total_rise),
		job_is_measured(s->job, size) ? "" : " VIF");
	all.foot_a = all.foot_b = head;
	dims_chain(dims, side_high(d), &all, 1);
	floor_dimension(dims, d, head);
	if (!from_structure)
		return;
	double low = side_at(d, 0, s->lower_structural).y,
	       high = side_at(d, 0, s->upper_structural).y;
	struct dim_link structure = { low, high, head, head,
		arena_printf(a, "%s structure",
			measured_words(a, s, size, s->job->floors.structural_rise)) };
	dims_chain(dims, side_high(d), &structure, 1);
}

/* The steps, and what is left to the face of the header; right to left where the stair climbs so.
 */
static void run_dimensions(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	const struct flight *f = d->flight;
	struct arena *a = dims->drawing->arena;
	int runs = (int)lround(f->total_run / f->unit_run);
	double *ticks = NEW_N(a, double, runs + 1);
	double floor = side_at(d, 0, s->lower_structural).y;
	bool right = side_high(d) == DIM_RIGHT;

	for (int i = 0; i <= runs; i++)
		ticks[i] = side_at(d, i * f->unit_run, 0).x;
	struct dim_link steps = link_between(ticks[0], ticks[runs], floor, floor,
		steps_words(a, s, runs, f->unit_run));
	struct dim_link rest = link_between(ticks[runs], side_at(d, f->header_x, 0).x, floor, floor,
		arena_printf(a, "%s to header", length_words(a, s, f->header_x - f->total_run)));
	struct dim_link links[] = { right ? steps : rest, right ? rest : steps };
	if (f->header_x > f->total_run + NEAR_ENOUGH)
		dims_steps(dims, DIM_BELOW, links, 2, ticks, runs + 1);
	else
		dims_steps(dims, DIM_BELOW, &steps, 1, ticks, runs + 1);
}

static void opening_dimension(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	struct arena *a = dims->drawing->arena;
	double foot = side_at(d, 0, s->total_rise).y;

	if (s->opening.x1 <= s->opening.x0)
		return;
	struct dim_link l = link_between(side_at(d, s->opening.x0, 0).x,
		side_at(d, s->opening.x1, 0).x, foot, foot,
		arena_printf(a, "opening %s",
			measured_words(a, s, "opening_length", s->job->opening.length)));
	dims_chain(dims, DIM_ABOVE, &l, 1);
}

void side_add_dimensions(struct dims *dims, const struct drafting *d, const struct left_over *rest)
{
	rise_dimensions(dims, d);
	run_dimensions(dims, d);
	opening_dimension(dims, d);
	for (int i = 0; i < rest->n; i++)
		dims_chain(dims, side_low(d), &rest->links[i], 1);
}

struct box side_draw_levels(const struct drafting *d, struct box used)
{
	struct hand h = d->sheet->hand;
	struct arena *a = h.g->arena;
	const struct stair *s = d->stair;
	bool right = side_high(d) == DIM_RIGHT;
	struct vec low = vec(right ? used.x1 : used.x0, side_at(d, 0, 0).y);
	struct vec high = vec(low.x, side_at(d, 0, s->total_rise).y);
	const char *upper = "Upper finished floor", *lower = "Lower finished floor";
	double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, upper) + h.letter * 3.5;

	draw_level(h, low, right ? LEVEL_RIGHT : LEVEL_LEFT, lower,
		arena_printf(a, "±%s", length_words(a, s, 0)));
	draw_level(h, high, right ? LEVEL_RIGHT : LEVEL_LEFT, upper,
		arena_printf(a, "+%s", length_words(a, s, s->total_rise)));
	used = box_add(used, vec(low.x + (right ? wide : -wide), low.y - 2 * h.letter));
	return box_add(used, vec(high.x, high.y + 2 * h.letter));
}
