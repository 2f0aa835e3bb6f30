#include "sheets/balloons.h"

#include <stdlib.h>

#include "draw/bounds.h"
#include "draw/place.h"

#define DOT 0.45 /* radius of the leader's end */
#define CORNERS 24

double balloon_radius(struct hand h)
{
	return 1.75 * h.letter;
}

/* One balloon by where it would like to stand along the line. */
struct wanted {
	struct balloon *balloon;
	double along;
};

static int by_place(const void *one, const void *other)
{
	const struct wanted *a = one, *b = other;

	if (a->along != b->along)
		return a->along < b->along ? -1 : 1;
	return a->balloon < b->balloon ? -1 : 1;
}

/* Do the straight lines a-b and c-d cross? */
static bool cross(struct vec a, struct vec b, struct vec c, struct vec d)
{
	struct vec ab = vec_sub(b, a), cd = vec_sub(d, c);
	double s = vec_cross(ab, vec_sub(c, a)), t = vec_cross(ab, vec_sub(d, a));
	double u = vec_cross(cd, vec_sub(a, c)), v = vec_cross(cd, vec_sub(b, c));

	return s * t < 0 && u * v < 0;
}

/* Each exchange makes the leaders shorter together, so this comes to an end. */
static void uncross(struct balloon *list, int n)
{
	bool again = true;

	for (int turn = 0; again && turn < n * n; turn++) {
		again = false;
		for (int i = 0; i < n; i++)
			for (int k = i + 1; k < n; k++) {
				if (!cross(list[i].points_at, list[i].at, list[k].points_at,
					    list[k].at))
					continue;
				struct vec at = list[i].at;
				list[i].at = list[k].at;
				list[k].at = at;
				again = true;
			}
	}
}

void balloons_set(struct hand h, struct balloon *list, int n, struct vec from, struct vec along)
{
	struct wanted *w = NEW_N(h.g->arena, struct wanted, n + 1);
	double *at = NEW_N(h.g->arena, double, n + 1);

	for (int i = 0; i < n; i++)
		w[i] = (struct wanted){ &list[i],
			vec_dot(vec_sub(list[i].points_at, from), along) };
	qsort(w, (size_t)n, sizeof(*w), by_place);
	for (int i = 0; i < n; i++)
		at[i] = w[i].along;
	spread(h.g->arena, at, n, 2 * balloon_radius(h) + 0.6);
	for (int i = 0; i < n; i++)
		w[i].balloon->at = vec_add(from, vec_scale(along, at[i]));
	uncross(list, n);
}

static void fill_round(struct drawing *g, enum shade shade, struct vec at, double radius)
{
	struct vec ring[CORNERS];

	for (int i = 0; i < CORNERS; i++)
		ring[i] = vec_add(at, vec_rotate(vec(radius, 0), 2 * PI * i / CORNERS));
	draw_fill(g, shade, ring, CORNERS);
}

struct box balloons_draw(struct hand h, const struct balloon *list, int n)
{
	struct box used = box_empty();
	double radius = balloon_radius(h);

	for (int i = 0; i < n; i++) {
		const struct balloon *b = &list[i];
		struct vec way = vec_unit(vec_sub(b->points_at, b->at));
		draw_line(h.g, PEN_DIM, vec_add(b->at, vec_scale(way, radius)), b->points_at);
		fill_round(h.g, SHADE_BLACK, b->points_at, DOT);
		fill_round(h.g, SHADE_WHITE, b->at, radius);
		draw_circle(h.g, PEN_DIM, b->at, radius);
		draw_text(h.g, vec(b->at.x, b->at.y - h.letter / 2), h.letter, ALIGN_MIDDLE,
			b->text);
		used = box_add(used, vec(b->at.x - radius, b->at.y - radius));
		used = box_add(used, vec(b->at.x + radius, b->at.y + radius));
	}
	return used;
}
