#include "parts/existing.h"
#include "parts/level_run.h"
#include "parts/tread.h"
#include "parts/wall_rail.h"

/*
 * A wall rail runs from plumb over the lowest riser to plumb over the top one, or as far as there
 * is a wall for it.
 *
 *                        __
 *                    _.-'_.'   its whole depth reaches the top riser's face ...
 *                _.-'_.-'  :
 *            _.-'_.-'      :
 *          '.__.-'         :
 *           :  ... and the lowest one's
 */

/* Common practice. */
#define GAP 25.0    /* left to the end of a wall, at either end and above */
#define LEAST 400.0 /* a shorter rail is none */

/* A piece of wall on one side. */
struct wall {
	double from, to, top;
};

struct walls {
	struct wall *wall;
	int n;
};

/* Level runs stand on the wall where the upper floor is: it ends under the floor there. */
static struct walls walls_of(struct arena *a, const struct rod *r, const struct side *side)
{
	double ceiling = r->top - existing_floor_depth(r);
	double high = level_run_lines(a, r, side).n > 0 ? ceiling : INFINITY;
	struct walls w = { NEW_N(a, struct wall, 2 + r->job->treads.notch_count), 0 };
	if (!side->is_open) {
		w.wall[w.n++] = (struct wall){ -INFINITY, INFINITY, high };
		return w;
	}
	if (side->from > 1)
		w.wall[w.n++] = (struct wall){ -INFINITY, side->wall_end, ceiling };
	if (side->head.kind == RAIL_END_WALL)
		w.wall[w.n++] = (struct wall){ side->head.x, INFINITY, high };
	return w;
}

/* Out from the wall of this rail. */
static double stands_out(const struct rod *r, const struct side *side, const struct notch_wall *n)
{
	return side->hand == HAND_LEFT ? r->width - n->low.y : n->high.y;
}

/* Does what a tread is cut out for stand in the way of this rail, or of what holds it to its wall?
 */
static bool is_in_the_way(const struct rod *r, const struct side *side,
	const struct job_wall_rail *w, const struct notch_wall *n)
{
	enum notch_at at = side->hand == HAND_LEFT ? NOTCH_LEFT : NOTCH_RIGHT;
	/* a bracket that ends at it hangs from where the rail is lower */
	double middle = n->low.x - bracket_half();
	double under = rod_nosing_z(r, middle) + w->height - w->depth / r->cosine;
	double below = bracket_reach(w);
	double back = fmin(n->high.x, r->header_x);
	double over = rod_nosing_z(r, back) + w->height;
	bool is_beside = n->notch->at == at || n->notch->at == NOTCH_BACK;
	return is_beside && stands_out(r, side, n) > NEAR_ENOUGH && n->high.z > under - below &&
		n->low.z < over;
}

/* What stands out less than the rail does is still in the way of its brackets and returns. */
static const char *hit_words(struct arena *a, const struct rod *r, const struct side *side,
	const struct job_wall_rail *w, const struct notch_wall *n)
{
	if (stands_out(r, side, n) <= w->clearance + NEAR_ENOUGH)
		return "what holds the rail to its wall";
	return arena_printf(a, "the rail, %s off its wall",
		length_say(a, job_lettering(r->job), w->clearance));
}

static void say_cut(struct arena *a, const struct rod *r, const struct side *side,
	const struct job_wall_rail *w, const struct notch_wall *n, struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	diag_warning(d, node_pos(w->src, "side"),
		"give the notch its height if it ends below, or end the rail there with to_step",
		"wall_rails: the wall in step %d, %s out and %s long, stands in the way of %s: the "
		"rail stops before it and goes on behind",
		n->notch->step, length_say(a, l, n->notch->along),
		length_say(a, l, n->high.x - n->low.x), hit_words(a, r, side, w, n));
}

/* A wall that is cut in two by what stands out of it, or shortened at an end: no two of them reach
 * over each other, so that one at most becomes two. */
static void cut_at(struct walls *w, const struct notch_wall *n)
{
	int count = w->n;
	for (int i = 0; i < count; i++) {
		struct wall whole = w->wall[i];
		if (n->low.x >= whole.to || n->high.x <= whole.from)
			continue;
		if (n->low.x <= whole.from) {
			w->wall[i].from = n->high.x;
			continue;
		}
		w->wall[i].to = n->low.x;
		if (n->high.x < whole.to)
			w->wall[w->n++] = (struct wall){ n->high.x, whole.to, whole.top };
	}
}

static void cut_at_notches(struct arena *a, const struct rod *r, const struct side *side,
	const struct job_wall_rail *w, struct walls *walls, struct diags *d)
{
	const struct job_treads *job = &r->job->treads;
	for (int i = 0; i < job->notch_count; i++) {
		struct notch_wall n = notch_wall_make(r, &job->notches[i]);
		if (!is_in_the_way(r, side, w, &n))
			continue;
		cut_at(walls, &n);
		if (d)
			say_cut(a, r, side, w, &n, d);
	}
}

/* Length 0: this wall is too short for it. */
static struct wall_run run_on(const struct rod *r, const struct side *side,
	const struct job_wall_rail *w, struct wall wall)
{
	double lean = w->depth * sin(r->pitch);
	double last = w->to_step > 0 ? fmin(w->to_step, r->risers - 1) : r->risers - 1;
	double from = fmax((w->from_step - 1) * r->run, wall.from + GAP + lean);
	double to = fmin(last * r->run, wall.to - GAP - lean);
	double over = rod_nosing_z(r, 0) + w->height + GAP;
	to = fmin(to, (wall.top - over) / r->slope);
	struct wall_run n = { .spec = w,
		.side = side,
		.sizes = profile_of_wall_rail(w),
		.start = from };
	n.room = to - from;
	n.length = to - from >= LEAST ? (to - from + lean) / r->cosine : 0;
	n.under = rod_nosing_z(r, from) + w->height - w->depth / r->cosine;
	n.middle = w->clearance + w->width / 2;
	return n;
}

static bool has_section(const struct rod *r, const struct job_wall_rail *w, struct diags *d)
{
	struct profile_fault wrong = profile_fault_of(profile_of_wall_rail(w));
	if (!wrong.key)
		return true;
	if (d)
		diag_error(d, node_pos(w->src, wrong.key),
			wrong.most > 0
				? job_write_most(d->arena, r->job,
					  arena_printf(d->arena, "wall_rails[%d].%s",
						  (int)(w - r->job->wall_rails) + 1, wrong.key),
					  wrong.most)
				: NULL,
			"wall_rails.%s: %s", wrong.key, wrong.text);
	return false;
}

/* The longest piece of wall had so much for it, along the flight; less than 0: no wall at all. */
static void say_no_wall(const struct rod *r, const struct job_wall_rail *w, double longest,
	struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	const char *side = side_word(w->side);
	if (isfinite(longest))
		diag_error(d, node_pos(w->src, "side"), "take in more steps, or leave it out",
			"wall_rails: on the %s the wall is too short for a rail: it has room for "
			"%s along the stair, and a rail takes %s",
			side, length_say(d->arena, l, fmax(longest, 0)),
			length_say(d->arena, l, LEAST));
	else
		diag_error(d, node_pos(w->src, "side"),
			"write side: wall under stair, or leave it out",
			"wall_rails: the stair is open on the %s, there is no wall", side);
}

/* Along each piece of wall of its side. */
static void add_runs(struct arena *a, const struct rod *r, const struct job_wall_rail *w,
	struct wall_runs *to, struct diags *d)
{
	const struct side *side = &r->sides[(int)w->side];
	struct walls walls = walls_of(a, r, side);
	int before = to->n;
	double longest = -INFINITY;
	if (!has_section(r, w, d))
		return;
	cut_at_notches(a, r, side, w, &walls, d);
	for (int i = 0; i < walls.n; i++) {
		struct wall_run run = run_on(r, side, w, walls.wall[i]);
		longest = fmax(longest, run.room);
		if (run.length > 0)
			to->run[to->n++] = run;
	}
	if (to->n == before && d)
		say_no_wall(r, w, longest, d);
}

/* On one side two rails keep apart. */
static void check_apart(const struct rod *r, const struct wall_runs *runs, struct diags *d)
{
	for (int i = 0; i < runs->n; i++)
		for (int k = 0; k < i; k++) {
			const struct wall_run *a = &runs->run[k], *b = &runs->run[i];
			if (a->side != b->side || a->start >= b->start + b->length * r->cosine ||
				b->start >= a->start + a->length * r->cosine)
				continue;
			diag_error(d, node_pos(b->spec->src, "side"),
				"give them steps of their own with from_step and to_step",
				"wall_rails: two rails on the %s run into each other",
				side_word(b->spec->side));
			return;
		}
}

struct wall_runs wall_runs_make(struct arena *a, const struct rod *r, struct diags *d)
{
	int n = r->job->wall_rail_count;
	int most = 2 + r->job->treads.notch_count;
	struct wall_runs runs = { NEW_N(a, struct wall_run, most * n + 1), 0 };
	for (int i = 0; i < n; i++)
		add_runs(a, r, &r->job->wall_rails[i], &runs, d);
	if (d)
		check_apart(r, &runs, d);
	return runs;
}

double wall_run_wall(const struct wall_run *run)
{
	return run->side->hand == HAND_LEFT ? 1 : -1;
}

struct frame wall_run_axes(const struct rod *r, const struct wall_run *run)
{
	double sine = sin(r->pitch);
	struct frame f = frame_at(run->start, rod_y(r, run->side, run->middle), run->under);
	f.u = vec3(r->cosine, 0, sine);
	f.w = vec3(-sine, 0, r->cosine);
	return frame_compose(r->flight->frame, f);
}

double wall_runs_top(struct arena *a, const struct rod *r, const struct side *side)
{
	struct wall_runs runs = wall_runs_make(a, r, NULL);
	double top = -INFINITY;
	for (int i = 0; i < runs.n; i++) {
		const struct wall_run *n = &runs.run[i];
		if (n->side == side)
			top = fmax(top,
				n->under + n->length * sin(r->pitch) + n->spec->depth / r->cosine);
	}
	return top;
}
