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

struct box draw_running(struct hand h, enum dim_side side, double edge,
	const struct running_mark *marks, int n)
{
	double way = side == DIM_ABOVE ? 1 : -1;
	double *at = NEW_N(h.g->arena, double, n + 1);
	struct box used = box_empty();

	for (int i = 0; i < n; i++)
		at[i] = marks[i].at;
	spread(h.g->arena, at, n, h.letter * PITCH);
	for (int i = 0; i < n; i++) {
		const struct vec line[] = { vec(marks[i].at, marks[i].foot + way * FOOT_GAP),
			vec(marks[i].at, edge + way * STRAIGHT),
			vec(at[i], edge + way * (STRAIGHT + BEND)),
			vec(at[i], edge + way * (STRAIGHT + BEND + 1)) };
		double begin = edge + way * (STRAIGHT + BEND + 1.8);
		double width = measure_width(h.measure, LETTER_REGULAR, h.letter, marks[i].text);
		draw_polyline(h.g, PEN_DIM, line, 4);
		draw_text_styled(h.g, vec(at[i] + h.letter / 2, begin), h.letter, PI / 2,
			side == DIM_ABOVE ? ALIGN_LEFT : ALIGN_RIGHT, LETTER_REGULAR,
			marks[i].text);
		used = box_add(used, vec(at[i] - h.letter, edge));
		used = box_add(used, vec(at[i] + h.letter, begin + way * width));
	}
	return used;
}
