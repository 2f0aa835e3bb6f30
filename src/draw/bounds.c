#include "draw/bounds.h"

struct text_room text_room(const struct mark *text, struct measure m)
{
	double w = measure_width(m, text->text.style, text->text.height, text->text.text);
	double left = text->text.align == ALIGN_LEFT ? 0
		: text->text.align == ALIGN_MIDDLE   ? -w / 2
						     : -w;
	double low = -text->text.height * DESCENDER, high = text->text.height;
	const struct vec flat[4] = { { left, low }, { left + w, low }, { left + w, high },
		{ left, high } };
	struct text_room room;

	for (int i = 0; i < 4; i++)
		room.corner[i] = vec_add(text->text.at, vec_rotate(flat[i], text->text.angle));
	return room;
}

/* Two rectangles, turned or not, are apart when some side of one has the other wholly beyond it.
 * A line is the same with a rectangle of no width. */
static bool beyond_a_side(const struct vec *sides, int n, const struct vec *others, int m)
{
	for (int i = 0; i < n; i++) {
		struct vec from = sides[i], along = vec_unit(vec_sub(sides[(i + 1) % n], from));
		double nearest = INFINITY;
		for (int j = 0; j < m; j++)
			nearest = fmin(nearest, vec_cross(vec_sub(others[j], from), along));
		if (nearest > -GRACE)
			return true;
	}
	return false;
}

bool rooms_touch(const struct text_room *a, const struct text_room *b)
{
	return !beyond_a_side(a->corner, 4, b->corner, 4) &&
		!beyond_a_side(b->corner, 4, a->corner, 4);
}

static bool room_is_crossed(const struct text_room *t, struct vec a, struct vec b)
{
	const struct vec ends[2] = { a, b };

	return !beyond_a_side(t->corner, 4, ends, 2) && !beyond_a_side(ends, 2, t->corner, 4);
}

struct box room_box(const struct text_room *t)
{
	struct box b = box_empty();

	for (int i = 0; i < 4; i++)
		b = box_add(b, t->corner[i]);
	return b;
}

static bool line_crosses(const struct mark *k, const struct text_room *room, struct box box)
{
	int pieces = k->line.n - 1 + (k->line.closed ? 1 : 0);

	for (int i = 0; i < pieces; i++) {
		struct vec a = k->line.points[i], b = k->line.points[(i + 1) % k->line.n];
		struct box piece = box_grow(box_add(box_add(box_empty(), a), b), GRACE);
		if (box_touches(box, piece) && room_is_crossed(room, a, b))
			return true;
	}
	return false;
}

#define CHORDS 24 /* of an arc, as it is held against a text */

static bool arc_crosses(const struct mark *k, const struct text_room *room)
{
	struct vec from = vec_add(k->arc.centre, vec_rotate(vec(k->arc.radius, 0), k->arc.from));

	for (int i = 1; i <= CHORDS; i++) {
		double angle = k->arc.from + (k->arc.to - k->arc.from) * i / CHORDS;
		struct vec to = vec_add(k->arc.centre, vec_rotate(vec(k->arc.radius, 0), angle));
		if (room_is_crossed(room, from, to))
			return true;
		from = to;
	}
	return false;
}

bool mark_crosses(const struct mark *k, const struct text_room *room, struct box box)
{
	switch (k->kind) {
	case MARK_LINE: return line_crosses(k, room, box);
	case MARK_ARC: return arc_crosses(k, room);
	case MARK_FILL:
	case MARK_TEXT: break;
	}
	return false;
}

bool mark_is_ring(const struct mark *k)
{
	return k->kind == MARK_ARC && k->arc.to - k->arc.from > 2 * PI - NEAR_ENOUGH;
}

bool mark_is_heavy(const struct mark *k)
{
	switch (k->kind) {
	case MARK_LINE: return pen_is_heavy(k->line.pen);
	case MARK_ARC: return pen_is_heavy(k->arc.pen) || mark_is_ring(k);
	case MARK_FILL:
	case MARK_TEXT: break;
	}
	return false;
}

bool fill_holds(const struct mark *fill, struct vec p)
{
	int left = 0, right = 0;

	for (int i = 0; i < fill->fill.n; i++) {
		struct vec a = fill->fill.points[i], b = fill->fill.points[(i + 1) % fill->fill.n];
		double turn = vec_cross(vec_sub(b, a), vec_sub(p, a));
		left += turn > 0;
		right += turn < 0;
	}
	return left == 0 || right == 0;
}

bool fill_touches(const struct mark *fill, const struct text_room *room, struct box box)
{
	const struct mark rim = { .kind = MARK_LINE,
		.line = { PEN_DIM, fill->fill.points, fill->fill.n, 1 } };

	if (!box_touches(box, points_box(fill->fill.points, fill->fill.n)))
		return false;
	return fill_holds(fill, room->corner[0]) || line_crosses(&rim, room, box);
}

static struct box arc_box(const struct mark *m)
{
	struct vec c = m->arc.centre;
	double r = m->arc.radius;
	struct box b = box_empty();

	b = box_add(b, vec(c.x + r * cos(m->arc.from), c.y + r * sin(m->arc.from)));
	b = box_add(b, vec(c.x + r * cos(m->arc.to), c.y + r * sin(m->arc.to)));
	for (double q = ceil(m->arc.from / (PI / 2)) * (PI / 2); q < m->arc.to; q += PI / 2)
		b = box_add(b, vec(c.x + r * cos(q), c.y + r * sin(q)));
	return b;
}

double points_area(const struct vec *points, int n)
{
	double twice = 0;

	for (int i = 2; i < n; i++)
		twice +=
			vec_cross(vec_sub(points[i - 1], points[0]), vec_sub(points[i], points[0]));
	return twice / 2;
}

struct box points_box(const struct vec *points, int n)
{
	struct box b = box_empty();

	for (int i = 0; i < n; i++)
		b = box_add(b, points[i]);
	return b;
}

struct box mark_box(const struct mark *k, struct measure m)
{
	switch (k->kind) {
	case MARK_LINE: return points_box(k->line.points, k->line.n);
	case MARK_ARC: return arc_box(k);
	case MARK_FILL: return points_box(k->fill.points, k->fill.n);
	case MARK_TEXT: {
		struct text_room room = text_room(k, m);
		return room_box(&room);
	}
	}
	return box_empty();
}

struct box drawing_bounds(const struct drawing *g, struct measure m)
{
	struct box b = box_empty();

	for (const struct mark *k = g->first; k; k = k->next)
		b = box_join(b, mark_box(k, m));
	return b;
}
