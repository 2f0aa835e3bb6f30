#include "sheets/leaders.h"

#include <stdlib.h>

#include "draw/bounds.h"
#include "draw/place.h"

#define DOT 0.45 /* radius of the leader's end */
#define CORNERS 24

/* One leader by where it would like to stand along the line. */
struct wanted {
	struct leader *leader;
	double along;
};

static int by_place(const void *one, const void *other)
{
	const struct wanted *a = one, *b = other;

	if (a->along != b->along)
		return a->along < b->along ? -1 : 1;
	return a->leader < b->leader ? -1 : 1;
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
static void uncross(struct leader *list, int n)
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

/* Moves what stands too far along back on the line; `reach` is how far each stands from the first
 * where none has room to spare. */
static void keep_between(double *at, const double *reach, const struct wanted *w, int n,
	struct leader_line line)
{
	double low = line.low + w[0].leader->size / 2, high = line.high - w[n - 1].leader->size / 2;

	if (line.high <= line.low)
		return;
	for (int i = n - 1; i >= 0; i--)
		at[i] = fmin(at[i], high - (reach[n - 1] - reach[i]));
	for (int i = 0; i < n; i++)
		at[i] = fmax(at[i], low + reach[i]);
}

/* In this order, as near as may be to where they would like to stand. */
static void put_in_order(struct arena *a, const struct wanted *w, int n, struct leader_line line)
{
	double *at = NEW_N(a, double, n + 1), *reach = NEW_N(a, double, n + 1);

	for (int i = 0; i < n; i++) {
		if (i > 0)
			reach[i] = reach[i - 1] + line.gap +
				(w[i - 1].leader->size + w[i].leader->size) / 2;
		at[i] = w[i].along + line.shift - reach[i];
	}
	spread(a, at, n, 0);
	for (int i = 0; i < n; i++)
		at[i] += reach[i];
	if (n > 0)
		keep_between(at, reach, w, n, line);
	for (int i = 0; i < n; i++)
		w[i].leader->at = vec_add(vec_add(line.from, vec_scale(line.along, at[i])),
			vec_scale(line.next, line.rows > 1 ? i % line.rows : 0));
}

static double along_line(struct leader_line line, struct vec p)
{
	return vec_dot(vec_sub(p, line.from), line.along);
}

/* By where they stand after some have changed places: those of other sizes need other room. */
static void settle_sizes(struct arena *a, struct wanted *w, int n, struct leader_line line)
{
	bool differ = false;

	for (int i = 1; i < n; i++)
		differ |= !near_enough(w[i].leader->size, w[0].leader->size);
	if (!differ)
		return;
	for (int i = 0; i < n; i++)
		w[i].along = along_line(line, w[i].leader->at);
	qsort(w, (size_t)n, sizeof(*w), by_place);
	for (int i = 0; i < n; i++)
		w[i].along = along_line(line, w[i].leader->points_at);
	put_in_order(a, w, n, line);
}

void leaders_set(struct arena *a, struct leader *list, int n, struct leader_line line)
{
	struct wanted *w = NEW_N(a, struct wanted, n + 1);

	for (int i = 0; i < n; i++)
		w[i] = (struct wanted){ &list[i], along_line(line, list[i].points_at) };
	qsort(w, (size_t)n, sizeof(*w), by_place);
	put_in_order(a, w, n, line);
	uncross(list, n);
	settle_sizes(a, w, n, line);
}

void fill_round(struct drawing *g, enum shade shade, struct vec at, double radius)
{
	struct vec ring[CORNERS];

	for (int i = 0; i < CORNERS; i++)
		ring[i] = vec_add(at, vec_rotate(vec(radius, 0), 2 * PI * i / CORNERS));
	draw_fill(g, shade, ring, CORNERS);
}

void leader_draw(struct drawing *g, struct vec from, struct vec to)
{
	draw_line(g, PEN_DIM, from, to);
	fill_round(g, SHADE_BLACK, to, DOT);
}
