#include "sheets/piece_section.h"

#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/dimension.h"
#include "sheets/words.h"

/*
 *        short
 *       |-----|
 *    _   ______
 *   |   |     /       an edge bevelled to the rake, or mitred along the piece
 *   |   |    /
 *   |_  |___/___ .
 *       |-------|     over all
 */

/* A straight side of it, from one corner to the next. */
struct section_side {
	struct vec from, to;
};

static struct section_side section_side(struct outline o, int i)
{
	return (struct section_side){ o.corners[i].at, o.corners[(i + 1) % o.n].at };
}

static bool is_four_straight_sides(struct outline o)
{
	for (int i = 0; i < o.n; i++)
		if (fabs(o.corners[i].bulge) > 0)
			return false;
	return o.n == 4;
}

/* A side along one of the axes that is shorter than the section over all: figured beside it. */
static void add_short_side(struct dims *d, const struct sheet *s, struct section_side side,
	double scale)
{
	struct vec from = vec_scale(side.from, scale), to = vec_scale(side.to, scale);
	bool lies = near_enough(from.y, to.y), stands = near_enough(from.x, to.x);
	double size = vec_length(vec_sub(side.to, side.from));
	double over_all = (lies ? box_width(d->around) : box_height(d->around)) / scale;
	const char *text = inches_words(s->drawing->arena, s->context->stair, size);
	double foot = lies ? from.y : from.x;
	const struct dim_link link = { lies ? fmin(from.x, to.x) : fmin(from.y, to.y),
		lies ? fmax(from.x, to.x) : fmax(from.y, to.y), foot, foot, text };

	if ((!lies && !stands) || size > over_all - NEAR_ENOUGH)
		return;
	if (lies)
		dims_chain(d, near_enough(foot, d->around.y0) ? DIM_BELOW : DIM_ABOVE, &link, 1);
	else
		dims_chain(d, near_enough(foot, d->around.x0) ? DIM_LEFT : DIM_RIGHT, &link, 1);
}

static void add_over_all(struct dims *d, const struct sheet *s, struct box size)
{
	struct arena *a = s->drawing->arena;
	const struct stair *stair = s->context->stair;
	struct box b = d->around;
	const struct dim_link wide = { b.x0, b.x1, b.y0, b.y0,
		inches_words(a, stair, box_width(size)) };
	const struct dim_link high = { b.y0, b.y1, b.x0, b.x0,
		inches_words(a, stair, box_height(size)) };

	dims_chain(d, DIM_BELOW, &wide, 1);
	dims_chain(d, DIM_LEFT, &high, 1);
}

struct box piece_section_draw(struct sheet *s, struct outline section, double scale)
{
	struct chain c = outline_chain(s->drawing->arena, section);
	struct vec *paper = NEW_N(s->drawing->arena, struct vec, c.n);
	struct box size = outline_extent(section);
	struct dims d =
		dims_begin(s->drawing, s->hand.measure, s->hand.letter, box_scale(size, scale));

	for (int i = 0; i < c.n; i++)
		paper[i] = vec_scale(c.points[i], scale);
	draw_polygon(s->drawing, PEN_CUT, paper, c.n);
	if (is_four_straight_sides(section))
		for (int i = 0; i < section.n; i++)
			add_short_side(&d, s, section_side(section, i), scale);
	add_over_all(&d, s, size);
	return dims_draw(&d);
}
