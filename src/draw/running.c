#include "draw/running.h"

#include "draw/bounds.h"
#include "draw/place.h"

#define STRAIGHT 3.0 /* the line runs on beyond the edge before it bends */
#define BEND 3.5     /* height of the bend to the figure's place */
#define FOOT_GAP 0.8
#define PITCH 1.5 /* of figures side by side, in letter heights */

double running_length(struct hand h, int n)
{
	return n * h.letter * PITCH;
}

static bool is_beside(enum dim_side side)
{
	return side == DIM_LEFT || side == DIM_RIGHT;
}

/* A point so far along the edge, at this place across it. */
static struct vec point(enum dim_side side, double along, double across)
{
	return is_beside(side) ? vec(across, along) : vec(along, across);
}

/* Where the figures stand. */
static double *places(struct arena *a, enum dim_side side, double pitch,
	const struct running_mark *marks, int n)
{
	double *at = NEW_N(a, double, n + 1);

	for (int i = 0; i < n; i++)
		at[i] = marks[i].at;
	spread(a, at, n, pitch);
	for (int i = 0; i < n && is_beside(side); i++)
		at[i] = fmax(at[i], marks[0].at + i * pitch);
	return at;
}

/* From its foot to where the figure begins; the box it took. */
static struct box draw_mark(struct hand h, enum dim_side side, double edge, struct running_mark m,
	double at)
{
	double way = side == DIM_ABOVE || side == DIM_RIGHT ? 1 : -1;
	double bent = edge + way * (STRAIGHT + BEND), begin = bent + way * 1.8;
	double end = begin + way * measure_width(h.measure, LETTER_REGULAR, h.letter, m.text);
	double base = at + (is_beside(side) ? -1 : 1) * h.letter / 2;
	const struct vec line[] = { point(side, m.at, m.foot + way * FOOT_GAP),
		point(side, m.at, edge + way * STRAIGHT), point(side, at, bent),
		point(side, at, bent + way) };

	draw_polyline(h.g, PEN_DIM, line, 4);
	draw_text_styled(h.g, point(side, base, begin), h.letter, is_beside(side) ? 0 : PI / 2,
		way > 0 ? ALIGN_LEFT : ALIGN_RIGHT, LETTER_REGULAR, m.text);
	return box_add(box_add(box_empty(), point(side, at - h.letter, edge)),
		point(side, at + h.letter, end));
}

struct box draw_running(struct hand h, enum dim_side side, double edge,
	const struct running_mark *marks, int n)
{
	double *at = places(h.g->arena, side, h.letter * PITCH, marks, n);
	struct box used = box_empty();

	for (int i = 0; i < n; i++)
		used = box_join(used, draw_mark(h, side, edge, marks[i], at[i]));
	return used;
}
