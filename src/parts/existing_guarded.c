#include "parts/existing.h"
#include "parts/level_run.h"

/*
 * The upper floor under level runs: a box round all runs of a side, less what is floor already and
 * less the opening.
 *
 *      _____________________________
 *     |  runs of the right-hand side |
 *     |   ____________________       |______
 *     |__|     opening        |______|      |  floor behind the header
 */

#define MARGIN 150.0 /* how much floor is shown round a run */

static const struct work beside = { EXISTING_UPPER_FLOOR, "upper floor under the level rails" };

struct boxes {
	struct box *at;
	int n;
};

static void keep(struct boxes *to, double x0, double y0, double x1, double y1)
{
	if (x1 - x0 > NEAR_ENOUGH && y1 - y0 > NEAR_ENOUGH)
		to->at[to->n++] = (struct box){ x0, y0, x1, y1 };
}

/* What is left of one box round a hole: before it, behind it, and at its two sides. */
static void keep_round(struct boxes *to, struct box b, struct box hole)
{
	double x0 = fmax(b.x0, hole.x0), x1 = fmin(b.x1, hole.x1);
	if (x1 <= x0 || hole.y1 <= b.y0 || hole.y0 >= b.y1) {
		keep(to, b.x0, b.y0, b.x1, b.y1);
		return;
	}
	keep(to, b.x0, b.y0, x0, b.y1);
	keep(to, x1, b.y0, b.x1, b.y1);
	keep(to, x0, b.y0, x1, fmin(b.y1, hole.y0));
	keep(to, x0, fmax(b.y0, hole.y1), x1, b.y1);
}

static struct boxes less(struct arena *a, struct boxes from, struct box hole)
{
	struct boxes left = { NEW_N(a, struct box, 4 * from.n + 1), 0 };
	for (int i = 0; i < from.n; i++)
		keep_round(&left, from.at[i], hole);
	return left;
}

/* Round all runs of a side; in front of the header only where one runs back.  It stops at walls. */
static struct box floor_wanted(const struct rod *r, const struct side *side,
	const struct run_lines *l)
{
	struct box b = { INFINITY, INFINITY, -INFINITY, -INFINITY };
	for (int i = 0; i < l->n; i++) {
		struct box k = level_run_box(r, &l->line[i]);
		b = (struct box){ fmin(b.x0, k.x0), fmin(b.y0, k.y0), fmax(b.x1, k.x1),
			fmax(b.y1, k.y1) };
	}
	bool runs_back = b.x0 < r->header_x - r->job->newels.section;
	double front = runs_back ? b.x0 - MARGIN : fmax(b.x0 - MARGIN, r->header_x);
	b = rod_box(r, side, (struct box){ front, b.y0 - MARGIN, b.x1 + MARGIN, b.y1 + MARGIN });
	if (!r->sides[HAND_LEFT].is_open && side->hand == HAND_RIGHT)
		b.y1 = fmin(b.y1, r->width);
	if (!r->sides[HAND_RIGHT].is_open && side->hand == HAND_LEFT)
		b.y0 = fmax(b.y0, 0);
	return b;
}

void existing_guarded_floor_add(struct pieces *list, const struct rod *r)
{
	struct arena *a = list->arena;
	struct box done = { 0, 0, 0, 0 };
	for (int i = 0; i < 2; i++) {
		struct run_lines l = level_run_lines(a, r, &r->sides[i]);
		if (l.n == 0)
			continue;
		struct box all = floor_wanted(r, &r->sides[i], &l);
		struct boxes left = { &all, 1 };
		left = less(a, left, level_run_opening(r, &r->sides[HAND_RIGHT]));
		left = less(a, left, existing_floor_behind(r));
		left = less(a, left, existing_floor_over_foot(r));
		left = less(a, left, done);
		for (int k = 0; k < left.n; k++)
			existing_box_add(list, r, beside,
				vec3(left.at[k].x0, left.at[k].y0,
					r->top - existing_floor_depth(r)),
				vec3(left.at[k].x1, left.at[k].y1, r->top));
		done = all;
	}
}
