/*
 * The chains of dimensions round a side view.
 */
#include "draw/bounds.h"
#include "sheets/reader.h"
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

/* What a floor is built up of, where the set's reader wants it. */
static const char *floor_words(const struct drafting *d, double structure, double finish)
{
	struct arena *a = d->sheet->drawing->arena;
	const struct stair *s = d->stair;

	if (!sheet_says(d->what->context, SAYS_FLOORS))
		return "";
	if (finish <= 0)
		return "its build-up is not in the job";
	return arena_printf(a, "finish %s on structure at %s%s", length_words(a, s, finish),
		structure < 0 ? "-" : "+", length_words(a, s, fabs(structure)));
}

/* Words, figure and build-up of one floor under each other. */
struct level_words {
	const char *name, *figure, *build_up;
};

/* How far they reach over their line and under it, in heights of a capital. */
#define LEVEL_OVER 2.0
#define LEVEL_UNDER 3.5

/* Outside of what is drawn, on that side. */
static struct box draw_floor_level(const struct drafting *d, enum dim_side side, double z,
	struct level_words w, struct box used)
{
	struct hand h = d->sheet->hand;
	bool right = side == DIM_RIGHT;
	struct vec at = vec(right ? used.x1 : used.x0, side_at(d, 0, z).y);
	double wide = fmax(measure_width(h.measure, LETTER_REGULAR, h.letter, w.name),
		measure_width(h.measure, LETTER_REGULAR, h.letter, w.build_up));
	struct vec left = vec(at.x + (right ? 2.2 * h.letter : -wide - 2.7 * h.letter),
		at.y - 2.6 * h.letter - 1);

	draw_level(h, at, right ? LEVEL_RIGHT : LEVEL_LEFT, w.name, w.figure);
	if (*w.build_up)
		draw_text(h.g, left, h.letter, ALIGN_LEFT, w.build_up);
	wide += h.letter * 3.5;
	used = box_add(used,
		vec(at.x + (right ? wide : -wide),
			at.y - (*w.build_up ? LEVEL_UNDER : 2) * h.letter));
	return box_add(used, vec(at.x, at.y + LEVEL_OVER * h.letter));
}

/* Both where the head is; of floors too near each other for that the lower one where the foot is.
 */
struct box side_draw_levels(const struct drafting *d, struct box used)
{
	struct arena *a = d->sheet->drawing->arena;
	const struct stair *s = d->stair;
	const struct job_floors *f = &s->job->floors;
	const struct level_words lower = { "Lower finished floor",
		arena_printf(a, "±%s", length_words(a, s, 0)),
		floor_words(d, s->lower_structural, f->lower_finish) };
	const struct level_words upper = { "Upper finished floor",
		arena_printf(a, "+%s", length_words(a, s, s->total_rise)),
		floor_words(d, s->upper_structural, f->upper_finish) };

	double between = s->total_rise * d->scale;
	double wanted = (LEVEL_OVER + LEVEL_UNDER) * d->sheet->hand.letter;
	enum dim_side side = between < wanted ? side_low(d) : side_high(d);
	struct box with_lower = draw_floor_level(d, side, 0, lower, used);

	return box_join(with_lower, draw_floor_level(d, side_high(d), s->total_rise, upper, used));
}

const char *side_steps_note(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	const struct job *job = s->job;
	const char *risers = job->risers.kind == RISER_OPEN
		? "risers open"
		: arena_printf(a, "risers %s thick", inches_words(a, s, job->risers.thickness));

	if (!sheet_says(c, SAYS_LIMITS))
		return "";
	return arena_printf(a, "Treads %s thick, their nosings %s over the riser's face; %s.",
		inches_words(a, s, job->treads.thickness), inches_words(a, s, job->treads.nosing),
		risers);
}
