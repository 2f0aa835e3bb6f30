/*
 * The plan of a tread: its ends, its front and what it is cut out for.
 */
#include "parts/tread.h"

#include "parts/nosing.h"

static void add_gap(struct gaps *g, struct gap gap)
{
	if (g->n < MOST_GAPS)
		g->at[g->n++] = gap;
}

static double front_of(const struct rod *r, int step)
{
	return (step - 1) * r->run - r->nosing;
}

int tread_unit(const struct tread_plan *t)
{
	return t->rod->flight->first_step + t->step - 1;
}

double tread_front(const struct tread_plan *t)
{
	return front_of(t->rod, t->step);
}

/* Newels of the upper floor are not; nor is one on a housed stringer, whose treads end inside. */
static bool is_in_the_stair(struct rail_end e)
{
	return e.kind == RAIL_END_NEWEL || e.kind == RAIL_END_TREAD_NEWEL;
}

/* A newel that stands lower than the tread's top, somewhere along its end. */
static bool is_pierced(const struct tread_plan *t, struct rail_end e)
{
	const struct rod *r = t->rod;
	double x = e.newel_x - tread_front(t), section = r->job->newels.section;
	return is_in_the_stair(e) && e.newel_z < t->step * r->rise - NEAR_ENOUGH &&
		x < t->depth - NEAR_ENOUGH && x + section > NEAR_ENOUGH;
}

static void find_newel(struct tread_plan *t, struct tread_end *end, struct rail_end e)
{
	const struct rod *r = t->rod;
	double fit = r->job->treads.newel_fit, x = e.newel_x - tread_front(t);
	if (!is_pierced(t, e))
		return;
	add_gap(&end->gaps,
		(struct gap){ .in = rod_newel_inner(r, end->side) + fit,
			.from = x > NEAR_ENOUGH ? x - fit : -INFINITY,
			.to = x + r->job->newels.section + fit,
			.around = "the newel" });
}

static const char *around_wall(const struct side *side)
{
	return side->plain > 0 ? "the skirt of the wall" : "the end of the wall";
}

/* The wall in front of the open steps runs on beside the first of them. */
static void find_wall_before(struct tread_plan *t, struct tread_end *end)
{
	double scribe = t->rod->job->treads.scribe;
	if (end->side->from > 1 && t->step == end->side->from)
		add_gap(&end->gaps,
			(struct gap){ .in = end->side->plain + scribe,
				.from = -INFINITY,
				.to = end->side->wall_end - tread_front(t) + scribe,
				.around = around_wall(end->side) });
}

/* And the wall behind them begins beside the tread after the last. */
static void find_wall_behind(struct tread_plan *t, struct tread_end *end)
{
	double scribe = t->rod->job->treads.scribe;
	add_gap(&end->gaps,
		(struct gap){ .in = end->side->plain + scribe,
			.from = end->side->head.x - tread_front(t) - scribe,
			.to = INFINITY,
			.around = around_wall(end->side) });
}

/* No further in than what stands at its front, or it would come out in front of that. */
static double return_width(const struct tread_end *e, const struct job_treads *t)
{
	double width = t->strip_width;
	for (int i = 0; i < e->gaps.n; i++)
		width = fmin(width, e->overhang + e->gaps.at[i].in);
	return width;
}

static void give_return(struct tread_end *e, const struct job_treads *t)
{
	if (t->side_overhang <= NEAR_ENOUGH)
		return;
	e->overhang = t->side_overhang;
	e->width = return_width(e, t);
	e->body = e->width - e->overhang;
	e->strip = -e->overhang;
}

/* Where it is not free enough for a return, the skirt of that wall still begins behind its front.
 */
static void end_at_wall(struct tread_plan *t, struct tread_end *e)
{
	const struct side *side = e->side;
	double scribe = t->rod->job->treads.scribe;
	e->body = e->strip = rod_wall_end(t->rod, side);
	if (side->plain <= 0 || t->step != side->to + 1 ||
		side->head.x - tread_front(t) < scribe + NEAR_ENOUGH)
		return;
	e->body = e->strip = scribe;
	find_wall_behind(t, e);
}

/* Is its front still free of the wall that begins beside it? */
static bool is_half_free(const struct tread_plan *t, const struct side *side)
{
	double free = side->head.x - tread_front(t) - t->rod->job->treads.scribe;
	return side->is_open && t->step == side->to + 1 &&
		free > nosing_make(&t->rod->job->treads, t->rod->tread).reach;
}

static struct tread_end end_make(struct tread_plan *t, const struct side *side)
{
	const struct rod *r = t->rod;
	struct tread_end e = { .side = side };
	if (side->kind == STRINGER_HOUSED) {
		e.body = e.strip = side->inner - r->job->stringers.housing_depth;
		return e;
	}
	if (side_open_at(side, t->step)) {
		find_newel(t, &e, side->foot);
		find_newel(t, &e, side->head);
		find_wall_before(t, &e);
		give_return(&e, &r->job->treads);
	} else if (is_half_free(t, side)) {
		find_wall_behind(t, &e);
		give_return(&e, &r->job->treads);
	} else {
		end_at_wall(t, &e);
	}
	return e;
}

struct tread_plan tread_plan_make(const struct rod *r, int step)
{
	struct tread_plan t = { .rod = r, .step = step, .depth = r->nosing + r->run };
	for (int i = 0; i < 2; i++)
		t.ends[i] = end_make(&t, &r->sides[i]);
	tread_notches_find(&t);
	return t;
}

double tread_end_gap(const struct tread_end *e, double back)
{
	double in = -INFINITY;
	for (int i = 0; i < e->gaps.n; i++)
		if (back > e->gaps.at[i].from && back < e->gaps.at[i].to)
			in = fmax(in, e->gaps.at[i].in);
	return in;
}

double tread_end_mitre(const struct tread_end *e, double back)
{
	return e->strip + (e->overhang > 0 ? fmin(back, e->width) : 0);
}
