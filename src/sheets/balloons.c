#include "sheets/balloons.h"

#include "draw/bounds.h"

#define MOST_ROWS 3 /* more, and nobody could follow a leader */

double balloon_radius(struct hand h)
{
	return 1.75 * h.letter;
}

void balloons_set(struct hand h, struct leader *list, int n, struct balloon_line line)
{
	double wide = 2 * balloon_radius(h) + 0.6;
	int rows = line.length > 0 ? (int)ceil(n * wide / line.length) : 1;
	struct leader_line rule = { .from = line.from,
		.along = line.along,
		.shift = line.shift,
		.low = line.low,
		.high = line.high };

	rule.rows = rows < MOST_ROWS ? rows : MOST_ROWS;
	rule.gap = wide / fmax(rule.rows, 1);
	rule.next = vec_scale(line.out, wide);
	leaders_set(h.g->arena, list, n, rule);
}

static double from_line(struct vec p, struct vec a, struct vec b)
{
	struct vec run = vec_sub(b, a);
	double along = vec_dot(vec_sub(p, a), run) / fmax(vec_dot(run, run), NEAR_ENOUGH);

	return vec_length(vec_sub(p, vec_add(a, vec_scale(run, fmax(0, fmin(1, along))))));
}

int balloons_crowd(struct hand h, const struct leader *list, int n)
{
	double radius = balloon_radius(h);
	int crowd = 0;

	for (int i = 0; i < n; i++)
		for (int k = 0; k < n; k++) {
			if (k == i)
				continue;
			double away = vec_length(vec_sub(list[k].at, list[i].at));
			double off = from_line(list[k].at, list[i].at, list[i].points_at);
			crowd += off < radius || away < 2 * radius;
		}
	return crowd;
}

struct box balloons_draw(struct hand h, const struct leader *list, int n)
{
	struct box used = box_empty();
	double radius = balloon_radius(h);

	if (balloons_crowd(h, list, n) > 0)
		h.g->is_crowded = true;
	for (int i = 0; i < n; i++) {
		const struct leader *b = &list[i];
		struct vec way = vec_unit(vec_sub(b->points_at, b->at));
		leader_draw(h.g, vec_add(b->at, vec_scale(way, radius)), b->points_at);
	}
	for (int i = 0; i < n; i++) {
		const struct leader *b = &list[i];
		fill_round(h.g, SHADE_WHITE, b->at, radius);
		draw_circle(h.g, PEN_DIM, b->at, radius);
		draw_text(h.g, vec(b->at.x, b->at.y - h.letter / 2), h.letter, ALIGN_MIDDLE,
			b->text);
		used = box_add(used, vec(b->at.x - radius, b->at.y - radius));
		used = box_add(used, vec(b->at.x + radius, b->at.y + radius));
	}
	return used;
}
