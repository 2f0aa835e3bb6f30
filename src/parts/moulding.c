#include "parts/moulding.h"

#include "parts/landing.h"
#include "parts/nosing.h"
#include "parts/tread.h"

/*
 * Coves and scotias: under the front of every tread and of the nosing piece
 * above, against the riser; along every return, against the stringer; and on
 * the back of every tread, against the riser above.  In section:
 *
 *            |
 *            | riser
 *      ______|.______________
 *     (_________________|____    the return's runs on behind the riser above, and is returned
 *          ' |                   there as far out as it is itself
 *            | riser
 */

/* A stretch between two places, and how a length that fills it ends there. */
struct reach {
	double from, to;
	enum moulding_end first, last;
};

/* Where a length across the stair ends at a side: in from its limit, its long point when mitred. */
struct stop {
	double in;
	enum moulding_end end;
};

/* How far in what the tread is cut out for reaches between two places of its end; -INFINITY:
 * nothing does. */
static double gap_in(const struct gaps *g, double from, double to)
{
	double in = -INFINITY;
	for (int i = 0; i < g->n; i++)
		if (g->at[i].from < to - NEAR_ENOUGH && g->at[i].to > from + NEAR_ENOUGH)
			in = fmax(in, g->at[i].in);
	return in;
}

/* The skirt of the wall that a tread is cut out for: beside the first open step, or behind the
 * last. */
static double skirt_beside(const struct tread_plan *t, const struct side *side)
{
	bool at_end = side->from > 1 && t->step == side->from;
	return at_end || !side_open_at(side, t->step) ? side->skirt : 0;
}

/* Between two places of a tread's end, counted back from its front, where nothing leads it on: at a
 * string, at what the tread is cut out for, at a wall, or returned at the end of its riser. */
static struct stop stop_at(const struct tread_plan *t, enum side_hand hand, double from, double to)
{
	const struct tread_end *e = &t->ends[hand];
	const struct side *side = e->side;
	double gap = gap_in(&e->gaps, from, to);
	if (side->kind == STRINGER_HOUSED)
		return (struct stop){ side->inner, MOULDING_SQUARE };
	if (!isinf(gap))
		return (struct stop){ fmax(gap, skirt_beside(t, side)), MOULDING_SQUARE };
	if (side_open_at(side, t->step) || e->overhang > 0)
		return (struct stop){ 0, MOULDING_RETURNED };
	return (struct stop){ side->skirt > 0 ? side->skirt : e->body, MOULDING_SQUARE };
}

/* Across the stair, in the corner at x and z; from and to count from the right-hand limit. */
static void across_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	struct vec corner, struct reach s)
{
	struct moulding_run run = { .length = s.to - s.from, .start = s.first, .end = s.last };
	run.at = (struct frame){ .u = { 0, 1, 0 }, .v = { -1, 0, 0 }, .w = { 0, 0, 1 } };
	run.at.origin = vec3(corner.x, s.from, corner.y);
	moulding_add(list, r, m, run);
}

static struct reach between(const struct rod *r, struct stop right, struct stop left)
{
	return (struct reach){ rod_y(r, &r->sides[HAND_RIGHT], right.in),
		rod_y(r, &r->sides[HAND_LEFT], left.in), right.end, left.end };
}

/* Cuts a stretch at whatever stands in it: writes what is left of it, at most n + 1. */
static int reach_clear(struct reach s, const struct reach *taken, int n, struct reach *out)
{
	int count = 0;
	while (s.from < s.to) {
		struct reach next = { s.to, s.to, 0, 0 };
		for (int i = 0; i < n; i++)
			if (taken[i].to > s.from + NEAR_ENOUGH && taken[i].from < next.from)
				next = taken[i];
		struct reach clear = s;
		if (next.from < s.to) {
			clear.to = next.from;
			clear.last = MOULDING_SQUARE;
		}
		if (clear.to - clear.from > NEAR_ENOUGH)
			out[count++] = clear;
		s.from = fmax(next.to, clear.to);
		s.first = MOULDING_SQUARE;
	}
	return count;
}

/* ---- under the nosings ---- */

/* A carriage that stands in without a board before it leaves nothing to lay one along. */
static bool goes_along(const struct tread_end *e)
{
	return e->overhang > 0 && (e->side->board > 0 || e->side->outer < NEAR_ENOUGH);
}

static bool is_mitred(const struct tread_plan *t, enum side_hand hand, const struct moulding *m)
{
	const struct tread_end *e = &t->ends[hand];
	double nosing = t->rod->nosing;
	return goes_along(e) && isinf(gap_in(&e->gaps, nosing - m->width, nosing));
}

/* Round the end of a starting step a bent one goes on. */
static bool is_bent(const struct tread_plan *t, enum side_hand hand)
{
	return t->step == 1 && t->ends[hand].side->start > 0;
}

static struct stop front_stop(const struct tread_plan *t, enum side_hand hand,
	const struct moulding *m)
{
	double nosing = t->rod->nosing;
	if (is_bent(t, hand))
		return (struct stop){ 0, MOULDING_SQUARE };
	if (is_mitred(t, hand, m))
		return (struct stop){ -m->width, MOULDING_MITRED };
	return stop_at(t, hand, nosing - m->width, nosing);
}

static void front_add(struct pieces *list, const struct tread_plan *t, const struct moulding *m)
{
	const struct rod *r = t->rod;
	double under = t->step * r->rise - r->tread;
	across_add(list, r, m, vec((t->step - 1) * r->run, under - m->height),
		between(r, front_stop(t, HAND_RIGHT, m), front_stop(t, HAND_LEFT, m)));
}

/* Under the nosing piece at the floor, whose end a newel may leave free. */
static struct stop landing_stop(const struct rod *r, const struct side *side)
{
	bool at_skirt = side->skirt > 0 && !side_open_at(side, r->steps);
	double end = at_skirt ? side->skirt : landing_end(r, side);
	bool at_string = side->kind == STRINGER_HOUSED && end <= side->inner + NEAR_ENOUGH;
	bool free = side_open_at(side, r->steps) && !at_string;
	return (struct stop){ end, free ? MOULDING_RETURNED : MOULDING_SQUARE };
}

static void landing_add(struct pieces *list, const struct rod *r, const struct moulding *m)
{
	double under = r->top - landing_thickness(r);
	across_add(list, r, m, vec(r->steps * r->run, under - m->height),
		between(r, landing_stop(r, &r->sides[HAND_RIGHT]),
			landing_stop(r, &r->sides[HAND_LEFT])));
}

/* How far behind the riser above a length along a return ends, and how: as far out as it is, when
 * the nosing over it runs on so far. */
static struct stop back_stop(const struct rod *r, const struct moulding *m, int step)
{
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	double wanted = r->job->treads.return_past;
	double room = step == r->steps ? r->header_x - r->steps * r->run : INFINITY;
	if (wanted >= room - NEAR_ENOUGH)
		return (struct stop){ room, MOULDING_SQUARE };
	double under = wanted > NEAR_ENOUGH ? wanted - nosing_under(&n) : 0;
	return (struct stop){ fmin(m->width, under), MOULDING_RETURNED };
}

/* From front to back, in the flight's x. */
static void along_add(struct pieces *list, const struct tread_plan *t, const struct moulding *m,
	const struct side *side, struct reach s)
{
	const struct rod *r = t->rod;
	double z = t->step * r->rise - r->tread - m->height;
	struct moulding_run run = { .at = frame_at(s.from, rod_y(r, side, 0), z),
		.length = s.to - s.from,
		.start = s.first,
		.end = s.last };
	if (side->hand == HAND_RIGHT) {
		run.start = s.last;
		run.end = s.first;
		run.at.origin.x = s.to;
		run.at.u = vec3(-1, 0, 0);
		run.at.v = vec3(0, -1, 0);
	}
	if (run.length > 2 * m->width)
		moulding_add(list, r, m, run);
}

static void along_return_add(struct pieces *list, const struct tread_plan *t, enum side_hand hand,
	const struct moulding *m)
{
	const struct tread_end *e = &t->ends[hand];
	struct stop back = back_stop(t->rod, m, t->step);
	double riser = (t->step - 1) * t->rod->run;
	struct reach whole = { riser - m->width, riser + t->rod->run + back.in, MOULDING_MITRED,
		back.end };
	struct reach taken[MOST_GAPS], clear[MOST_GAPS + 1];
	if (!is_mitred(t, hand, m)) {
		whole.from = riser;
		whole.first = MOULDING_SQUARE;
	}
	for (int i = 0; i < e->gaps.n; i++) {
		taken[i].from = tread_front(t) + e->gaps.at[i].from;
		taken[i].to = tread_front(t) + e->gaps.at[i].to;
	}
	int n = reach_clear(whole, taken, e->gaps.n, clear);
	for (int i = 0; i < n; i++)
		along_add(list, t, m, e->side, clear[i]);
}

static void under_nosings_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	const struct moulding *returned)
{
	for (int step = 1; step <= r->steps; step++) {
		struct tread_plan t = tread_plan_make(r, step);
		front_add(list, &t, m);
		for (int hand = 0; hand < 2; hand++)
			if (goes_along(&t.ends[hand]) && !is_bent(&t, (enum side_hand)hand))
				along_return_add(list, &t, (enum side_hand)hand, returned);
			else if (is_bent(&t, (enum side_hand)hand))
				moulding_bent_add(list, r, t.ends[hand].side, m);
	}
	if (r->steps < r->risers)
		landing_add(list, r, m);
}

/* ---- on the backs of the treads ---- */

static void back_add(struct pieces *list, const struct tread_plan *t, const struct moulding *m)
{
	const struct rod *r = t->rod;
	double front = t->depth - m->width;
	struct reach whole = between(r, stop_at(t, HAND_RIGHT, front, t->depth),
		stop_at(t, HAND_LEFT, front, t->depth));
	struct reach taken[MOST_GAPS], clear[MOST_GAPS + 1];
	for (int i = 0; i < t->back.n; i++) {
		taken[i].from = r->width - t->back.at[i].to;
		taken[i].to = r->width - t->back.at[i].from;
	}
	int n = reach_clear(whole, taken, t->back.n, clear);
	for (int i = 0; i < n; i++)
		across_add(list, r, m, vec(t->step * r->run, t->step * r->rise), clear[i]);
}

static void backs_add(struct pieces *list, const struct rod *r, const struct moulding *m)
{
	for (int step = 1; step < r->risers; step++) {
		struct tread_plan t = tread_plan_make(r, step);
		back_add(list, &t, m);
	}
}

/* ---- what the job asks for ---- */

static struct pos pos_of(const struct rod *r, const char *key)
{
	return rod_pos(r, r->job->mouldings.src, key);
}

/* No smaller one is sold (the least of its key). */
#define LEAST_UNDER 6.0

/* Under the nosing there is room as far as its underside is flat, in front and at the returns. */
static bool width_fits(struct arena *a, const struct rod *r, struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	double over = r->nosing, width = r->job->mouldings.under_width;
	if (rod_has_returns(r))
		over = fmin(over, r->job->treads.side_overhang);
	double room = over - nosing_under(&n);
	if (width <= room + NEAR_ENOUGH)
		return true;
	double over_too = fmin(r->nosing, over) + width - room;
	const char *longer = job_write_least(a, r->job, "treads.nosing", over_too);
	diag_error(d, pos_of(r, "under_width"),
		room >= LEAST_UNDER ? job_write_most(a, r->job, "mouldings.under_width", room)
			: rod_has_returns(r) ? arena_printf(a, "%s and treads.side_overhang: %s",
						       longer, length_say_least(a, l, over_too))
					     : longer,
		"mouldings.under_width: %s does not fit under the nosing, which is flat for %s",
		length_say(a, l, width), length_say_most(a, l, fmax(0, room)));
	return false;
}

static bool job_fits(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_mouldings *m = &r->job->mouldings;
	bool under = m->under_nosing != MOULDING_NONE, on = m->back != MOULDING_NONE;
	if ((under || on) && r->riser <= 0) {
		diag_error(d, pos_of(r, under ? "under_nosing" : "back"),
			under && on ? "write mouldings.under_nosing: none and mouldings.back: none"
				: under ? "write mouldings.under_nosing: none"
					: "write mouldings.back: none",
			"mouldings: open risers leave nothing to lay them against");
		return false;
	}
	if (m->under_nosing == MOULDING_SCOTIA && m->under_height <= m->under_width) {
		diag_error(d, pos_of(r, "under_height"),
			arena_printf(a, "%s, or write cove",
				job_write_least(a, r->job, "mouldings.under_height",
					m->under_width + 1)),
			"mouldings.under_height: a scotia is higher than it is wide");
		return false;
	}
	return !under || width_fits(a, r, d);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_moulding };
	struct rod r = rod_make(s, f);
	const struct job_mouldings *j = &r.job->mouldings;
	if (!job_fits(a, &r, d))
		return NULL;
	const char *word = j->under_nosing == MOULDING_SCOTIA ? "scotia" : "cove";
	struct moulding under = { j->under_nosing, MOULDING_UNDER, j->under_width, j->under_height,
		arena_printf(a, "%s under the nosing", word) };
	struct moulding returned = under;
	returned.name = arena_printf(a, "%s along the return", word);
	struct moulding back = { j->back, MOULDING_ON, j->back_size, j->back_size,
		"cove on the back of the tread" };
	if (j->under_nosing != MOULDING_NONE)
		under_nosings_add(&list, &r, &under, &returned);
	if (j->back != MOULDING_NONE)
		backs_add(&list, &r, &back);
	return list.first;
}

const struct part_kind part_moulding = { "moulding", "M", make };
