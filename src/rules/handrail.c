#include "rules/handrail.h"

#include <stdlib.h>

#define NEARLY 2.0 /* a rail so close to the end of the flight goes all the way */

static int by_from(const void *a, const void *b)
{
	double x = ((const struct stretch_of_x *)a)->from;
	double y = ((const struct stretch_of_x *)b)->from;

	return (x > y) - (x < y);
}

static bool counts_to_hold(const struct part *p)
{
	return counts_rails(p) || counts_wall_rails(p) || counts_newels(p);
}

/* Rails and newels of one side, in order. */
static int held_of(const struct survey *s, enum which_side side, struct stretch_of_x *list)
{
	int n = 0;

	for (int i = 0; i < s->count; i++) {
		const struct placed *p = &s->pieces[i];
		if (counts_to_hold(p->part) && placed_side(s, p) == side)
			list[n++] = (struct stretch_of_x){ p->box.low.x, p->box.high.x };
	}
	qsort(list, (size_t)n, sizeof(*list), by_from);
	return n;
}

static double length_of(struct stretch_of_x x)
{
	return x.to - x.from;
}

/* From over the first riser to over the last one. */
static struct stretch_of_x bare_of(const struct survey *s, enum which_side side)
{
	struct stretch_of_x *list = NEW_N(s->arena, struct stretch_of_x, s->count + 1);
	struct stretch_of_x longest = { 0, 0 };
	double end = (s->flight->risers - 1) * s->flight->unit_run, reached = 0;
	int n = held_of(s, side, list);

	list[n] = (struct stretch_of_x){ end, end };
	for (int i = 0; i <= n; i++) {
		struct stretch_of_x bare = { reached, fmin(list[i].from, end) };
		if (length_of(bare) > length_of(longest))
			longest = bare;
		reached = fmax(reached, list[i].to);
	}
	return length_of(longest) > NEARLY ? longest : (struct stretch_of_x){ 0, 0 };
}

bool has_rail(const struct survey *s, enum which_side side)
{
	for (int i = 0; i < s->count; i++)
		if (counts_rails(s->pieces[i].part) && placed_side(s, &s->pieces[i]) == side)
			return true;
	return false;
}

static bool is_on_wall(const struct survey *s, enum which_side side)
{
	for (int i = 0; i < s->count; i++)
		if (counts_wall_rails(s->pieces[i].part) && placed_side(s, &s->pieces[i]) == side)
			return true;
	return false;
}

struct handrail handrail_of(const struct survey *s)
{
	struct handrail right = { ON_THE_RIGHT, bare_of(s, ON_THE_RIGHT) };
	struct handrail left = { ON_THE_LEFT, bare_of(s, ON_THE_LEFT) };
	double more = length_of(left.bare) - length_of(right.bare);

	if (!has_rail(s, ON_THE_LEFT))
		return right;
	if (!has_rail(s, ON_THE_RIGHT))
		return left;
	if (fabs(more) < NEAR_ENOUGH)
		return is_on_wall(s, ON_THE_LEFT) && !is_on_wall(s, ON_THE_RIGHT) ? left : right;
	return more > 0 ? right : left;
}

bool is_of_handrail(const struct survey *s, struct handrail h, const struct placed *p)
{
	return counts_rails(p->part) && placed_side(s, p) == h.side;
}
