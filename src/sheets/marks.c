#include "sheets/marks.h"

#include <string.h>

#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/place.h"

#define SPOTS 9 /* along a cut face, at which its mark is tried */

/* What of a cut face is in the window, as a box. */
static struct box shown_box(struct arena *a, const struct cut_face *c, struct box window)
{
	struct chain whole = { .points = c->points, .n = c->n, .closed = true };
	struct box b = box_empty();

	for (const struct chain *k = clip_chain(a, window, whole); k; k = k->next)
		for (int i = 0; i < k->n; i++)
			b = box_add(b, k->points[i]);
	return b;
}

/* Even-odd, along a level line to the right. */
static bool is_inside(const struct cut_face *c, struct vec p)
{
	bool inside = false;

	for (int i = 0, j = c->n - 1; i < c->n; j = i++) {
		struct vec a = c->points[i], b = c->points[j];
		if ((a.y > p.y) != (b.y > p.y) &&
			p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
			inside = !inside;
	}
	return inside;
}

/* Is all of a word centred there on the face? */
static bool holds(const struct cut_face *c, struct vec p, double width, double height)
{
	for (int i = 0; i < 4; i++)
		if (!is_inside(c,
			    vec(p.x + (i % 2 ? width : -width) / 2,
				    p.y + (i < 2 ? height : -height) / 2)))
			return false;
	return true;
}

/* Places on a grid of three by three over the face that lie in the wood; the middle first. */
static int spots_on(const struct cut_face *c, struct box b, struct hand h, double scale,
	double width, struct spot *spots)
{
	static const double shares[] = { 0.5, 0.3, 0.7 };
	int n = 0;

	for (int i = 0; i < SPOTS; i++) {
		int column = i / 3, row = i % 3;
		struct vec p = vec(b.x0 + box_width(b) * shares[column],
			b.y0 + box_height(b) * shares[row]);
		if (holds(c, p, width / scale, h.letter / scale))
			spots[n++] = (struct spot){ vec(p.x * scale, p.y * scale - h.letter / 2),
				ALIGN_MIDDLE, 0, SPOT_KNOCKED_OUT };
	}
	return n;
}

static void knock_out(struct hand h, struct vec at, double width)
{
	double x0 = at.x - width / 2 - 0.5, x1 = at.x + width / 2 + 0.5;
	double y0 = at.y - h.letter * DESCENDER, y1 = at.y + h.letter + 0.5;
	const struct vec box[] = { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 } };

	draw_fill(h.g, SHADE_WHITE, box, 4);
}

/* Was there room for it? */
static bool letter_face(struct hand h, const struct cut_face *c, double scale, struct box window)
{
	const char *text = part_is_existing(c->part) ? c->part->name : c->part->mark;
	struct box b = shown_box(h.g->arena, c, window);
	double width = measure_width(h.measure, LETTER_REGULAR, h.letter, text);
	struct spot spots[SPOTS];

	if (box_is_empty(b) || box_width(b) * scale < width + 0.4 ||
		box_height(b) * scale < h.letter * 1.5)
		return false;
	int n = spots_on(c, b, h, scale, width, spots);
	int i = place_text(h.g, h.measure, h.letter, spots, n, text);
	if (i >= 0)
		knock_out(h, spots[i].at, width);
	return i >= 0;
}

/* ---- what finds no room ---- */

#define GRID 9 /* places each way at which a small face is looked for wood */

/* In the wood of a face, and in the window: as far from the edges of the grid as may be. */
static bool find_wood(const struct cut_face *c, struct box b, struct vec *at)
{
	double best = INFINITY;

	for (int i = 0; i < GRID * GRID; i++) {
		int row = i / GRID;
		double u = (i % GRID + 0.5) / GRID, v = (row + 0.5) / GRID;
		struct vec p = vec(b.x0 + box_width(b) * u, b.y0 + box_height(b) * v);
		double off = fmax(fabs(u - 0.5), fabs(v - 0.5));
		if (off < best && is_inside(c, p)) {
			best = off;
			*at = p;
		}
	}
	return !isinf(best);
}

struct wood_shown wood_cut(struct arena *a, const struct view *v, const struct part *p,
	struct box window)
{
	struct wood_shown best = { 0 };
	double most = 0;

	for (int i = 0; i < v->cut_count; i++) {
		const struct cut_face *c = &v->cuts[i];
		struct box b = c->part == p ? shown_box(a, c, window) : box_empty();
		struct vec at = { 0, 0 };
		if (box_is_empty(b) || box_width(b) * box_height(b) <= most ||
			!find_wood(c, b, &at))
			continue;
		most = box_width(b) * box_height(b);
		best = (struct wood_shown){ true, at };
	}
	return best;
}

static double off_line(struct vec a, struct vec b, struct vec p)
{
	struct vec along = vec_sub(b, a);
	double length = vec_length(along), t = vec_dot(vec_sub(p, a), along);

	if (length < NEAR_ENOUGH || t < 0 || t > length * length)
		return INFINITY;
	return fabs(vec_cross(along, vec_sub(p, a))) / length;
}

bool runs_along_cut(const struct view *v, const struct part *p, struct vec a, struct vec b)
{
	struct vec middle = vec_scale(vec_add(a, b), 0.5);

	for (int i = 0; i < v->cut_count; i++) {
		const struct cut_face *c = &v->cuts[i];
		for (int k = 0; c->part != p && k < c->n; k++)
			if (off_line(c->points[k], c->points[(k + 1) % c->n], middle) < 0.5)
				return true;
	}
	return false;
}

static bool is_among(struct marks_left l, const char *mark)
{
	for (int i = 0; i < l.n; i++)
		if (strcmp(l.list[i].text, mark) == 0)
			return true;
	return false;
}

static bool is_lettered(const struct view *v, const bool *lettered, const char *mark)
{
	for (int i = 0; i < v->cut_count; i++)
		if (lettered[i] && strcmp(v->cuts[i].part->mark, mark) == 0)
			return true;
	return false;
}

static struct marks_left left_over(struct hand h, const struct view *v, const bool *lettered,
	double scale, struct box window)
{
	struct arena *a = h.g->arena;
	struct marks_left l = { NEW_N(a, struct leader, v->cut_count + 1), 0 };

	for (int i = 0; i < v->cut_count; i++) {
		const struct cut_face *c = &v->cuts[i];
		struct box b = shown_box(a, c, window);
		struct vec at = { 0, 0 };
		if (part_is_existing(c->part) || box_is_empty(b) || is_among(l, c->part->mark) ||
			is_lettered(v, lettered, c->part->mark) || !find_wood(c, b, &at))
			continue;
		l.list[l.n++] =
			(struct leader){ .text = c->part->mark, .points_at = vec_scale(at, scale) };
	}
	return l;
}

static struct box face_box(const struct cut_face *c)
{
	struct box b = box_empty();

	for (int i = 0; i < c->n; i++)
		b = box_add(b, c->points[i]);
	return b;
}

/* A piece whose solid is of several has its mark on one of them. */
static bool goes_on(const struct view *v, const bool *lettered, int face)
{
	struct box b = box_grow(face_box(&v->cuts[face]), NEAR_ENOUGH);

	for (int i = 0; i < face; i++)
		if (lettered[i] && v->cuts[i].piece == v->cuts[face].piece &&
			box_touches(b, face_box(&v->cuts[i])))
			return true;
	return false;
}

struct marks_left letter_marks(struct hand h, const struct view *v, double scale, struct box window)
{
	bool *lettered = NEW_N(h.g->arena, bool, v->cut_count + 1);

	for (int i = 0; i < v->cut_count; i++)
		lettered[i] =
			!goes_on(v, lettered, i) && letter_face(h, &v->cuts[i], scale, window);
	return left_over(h, v, lettered, scale, window);
}
