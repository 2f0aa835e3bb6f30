#include "sheets/balloons.h"

#include "draw/bounds.h"

double balloon_radius(struct hand h)
{
	return 1.75 * h.letter;
}

void balloons_set(struct hand h, struct leader *list, int n, struct vec from, struct vec along)
{
	struct leader_line line = { from, along, 2 * balloon_radius(h) + 0.6, 0, 0 };

	leaders_set(h.g->arena, list, n, line);
}

struct box balloons_draw(struct hand h, const struct leader *list, int n)
{
	struct box used = box_empty();
	double radius = balloon_radius(h);

	for (int i = 0; i < n; i++) {
		const struct leader *b = &list[i];
		struct vec way = vec_unit(vec_sub(b->points_at, b->at));
		leader_draw(h.g, vec_add(b->at, vec_scale(way, radius)), b->points_at);
		fill_round(h.g, SHADE_WHITE, b->at, radius);
		draw_circle(h.g, PEN_DIM, b->at, radius);
		draw_text(h.g, vec(b->at.x, b->at.y - h.letter / 2), h.letter, ALIGN_MIDDLE,
			b->text);
		used = box_add(used, vec(b->at.x - radius, b->at.y - radius));
		used = box_add(used, vec(b->at.x + radius, b->at.y + radius));
	}
	return used;
}
