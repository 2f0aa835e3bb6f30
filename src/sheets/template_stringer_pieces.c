#include "sheets/template_stringer_pieces.h"

#include "sheets/template_stringer.h"

/* Unit k goes from the back of tread k to the back of tread k + 1. */
static bool is_bevelled(const struct part *p, int unit)
{
	const struct vec *back = p->stringer->inner_corners;

	for (const struct feature *f = p->features; f; f = f->next) {
		if (f->kind != FEATURE_MITRE || f->at.n == 0)
			continue;
		double x = f->at.corners[0].at.x;
		if (x > back[unit - 1].x - PATTERN_ALIKE && x < back[unit].x - PATTERN_ALIKE)
			return true;
	}
	return false;
}

static bool units_are_alike(const struct part *p, int one, int other)
{
	const struct vec *front = p->stringer->tread_corners, *back = p->stringer->inner_corners;

	return pattern_same_point(vec_sub(front[one], back[one - 1]),
		       vec_sub(front[other], back[other - 1])) &&
		pattern_same_point(vec_sub(back[one], back[one - 1]),
			vec_sub(back[other], back[other - 1])) &&
		is_bevelled(p, one) == is_bevelled(p, other);
}

struct parter {
	struct arena *arena;
	const struct part *part;
	struct box whole;
	struct template_pieces list;
	int steps, links; /* kinds of them so far */
};

static double back_x(const struct parter *p, int tread)
{
	return p->part->stringer->inner_corners[tread - 1].x;
}

static void add(struct parter *p, struct template_piece piece)
{
	piece.region = p->whole;
	if (piece.from > 0)
		piece.region.x0 = back_x(p, piece.from);
	if (piece.to > 0)
		piece.region.x1 = back_x(p, piece.to);
	p->list.piece[p->list.n++] = piece;
}

/* How many units from this one on are like it; the last of all belongs to the head. */
static int run_of_units(const struct part *p, int first, int units)
{
	int n = 1;

	while (first + n <= units && units_are_alike(p, first, first + n))
		n++;
	return n;
}

/* Steps and links are counted apart, and the first of either goes without a number. */
static const char *run_name(struct parter *p, int times)
{
	int nth = times > 1 ? ++p->steps : ++p->links;
	const char *kind = times > 1 ? "step" : "link";

	return nth == 1 ? kind : arena_printf(p->arena, "%s %d", kind, nth);
}

struct template_pieces template_pieces(struct arena *a, const struct part *part)
{
	struct parter p = { a, part, stringer_extent(a, part), { NULL, 0 }, 0, 0 };
	int steps = part->stringer->steps, units = steps - 2;

	p.list.piece = NEW_N(a, struct template_piece, steps + 2);
	add(&p, (struct template_piece){ .name = "foot", .times = 1, .to = steps > 1 ? 1 : 0 });
	for (int first = 1; first <= units;) {
		int times = run_of_units(part, first, units);
		add(&p,
			(struct template_piece){ run_name(&p, times), p.whole, times, first,
				first + 1 });
		first += times;
	}
	if (steps > 1)
		add(&p,
			(struct template_piece){ .name = "head",
				.times = 1,
				.from = units < 1 ? 1 : units + 1 });
	return p.list;
}
