#include "parts/landing.h"
#include "parts/nosing.h"
#include "parts/riser.h"
#include "parts/tread.h"

/*
 * Bars of open risers: hung under the front of each tread, they leave a gap
 * that a child's head does not go through.
 *
 *      ___________________
 *     (___________________| tread
 *         |_| bar
 *          gap
 *      ___________________
 *     (___________________|
 */

/* A wall in the step below that reaches back to the bar, or passes it: as far in as it stands, 0
 * for none. */
static double wall_before(const struct rod *r, const struct side *side, int step)
{
	enum notch_at at = side->hand == HAND_LEFT ? NOTCH_LEFT : NOTCH_RIGHT;
	double front = (step - 1) * r->run - r->job->risers.bar_thickness, far = 0;
	for (int i = 0; i < r->job->treads.notch_count; i++) {
		struct notch_wall n = notch_wall_make(r, &r->job->treads.notches[i]);
		bool goes_by = n.high.x > front && n.high.z > (step - 1) * r->rise;
		bool stands_here = n.passes ? n.low.x < front + r->job->risers.bar_thickness
					    : n.notch->step == step - 1;
		if (n.notch->at == at && stands_here && goes_by)
			far = fmax(far, n.notch->along + r->job->treads.scribe);
	}
	return far;
}

static double bar_end(const struct rod *r, const struct side *side, int step)
{
	if (side->kind == STRINGER_HOUSED)
		return side->inner;
	if (step == 1 && side_has_foot_newel(side))
		return rod_newel_inner(r, side);
	int beside = step > r->steps ? r->steps : step;
	bool at_skirt = side->plain > 0 && side->from > 1 && step == side->from;
	if (!side_open_at(side, beside) || at_skirt)
		return fmax(rod_wall_end(r, side), wall_before(r, side, step));
	return 0;
}

static const char *note(struct arena *a, const struct rod *r)
{
	struct lettering l = job_lettering(r->job);
	return arena_printf(a, "glued under its tread; leaves a gap of %s over the one below",
		length_say(a, l, r->rise - r->tread - r->job->risers.bar));
}

static void bar_add(struct pieces *list, const struct rod *r, int step)
{
	struct arena *a = list->arena;
	const struct job_risers *job = &r->job->risers;
	double x0 = rod_along(r, &r->sides[HAND_LEFT], bar_end(r, &r->sides[HAND_LEFT], step));
	double x1 = rod_along(r, &r->sides[HAND_RIGHT], bar_end(r, &r->sides[HAND_RIGHT], step));
	double under = step > r->steps ? r->top - landing_thickness(r) : step * r->rise - r->tread;
	struct part *p = piece_add(list, "riser bar", r->job->material.riser_bars,
		rod_upright(r, x0, (step - 1) * r->run, under - job->bar));
	p->size = (struct part_size){ x1 - x0, job->bar, job->bar_thickness };
	p->outline = outline_box(a, 0, 0, x1 - x0, job->bar);
	p->solids = solid_box(a, vec3(0, 0, 0), vec3(x1 - x0, job->bar, job->bar_thickness));
	p->note = note(a, r);
}

static bool bars_fit(struct arena *a, const struct rod *r, struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	const struct job_risers *job = &r->job->risers;
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	double room = r->nosing - nosing_under(&n), gap = r->rise - r->tread;
	int before = d->errors;
	if (job->bar > gap - NEAR_ENOUGH)
		diag_error(d, rod_pos(r, job->src, "bar"),
			job_write_most(a, r->job, "risers.bar", gap - 1),
			"risers.bar: %s fills the gap between two treads, %s",
			length_say(a, l, job->bar), length_say(a, l, gap));
	else if (job->bar_thickness > room + NEAR_ENOUGH)
		diag_error(d, rod_pos(r, job->src, "bar_thickness"),
			arena_printf(a, "%s, or take a thinner one",
				job_write_least(a, r->job, "treads.nosing",
					r->nosing + job->bar_thickness - room)),
			"risers.bar_thickness: %s stands out from under the nosing: at most %s",
			length_say(a, l, job->bar_thickness), length_say_most(a, l, fmax(room, 0)));
	return d->errors == before;
}

void riser_bars_add(struct pieces *list, const struct rod *r, struct diags *d)
{
	if (r->job->risers.bar <= 0 || !bars_fit(list->arena, r, d))
		return;
	for (int step = 1; step <= r->risers; step++)
		bar_add(list, r, step);
}
