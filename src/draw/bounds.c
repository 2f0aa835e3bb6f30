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

static struct box points_box(const struct vec *points, int n)
{
	struct box b = box_empty();

	for (int i = 0; i < n; i++)
		b = box_add(b, points[i]);
	return b;
}

static struct box mark_box(const struct mark *k, struct measure m)
{
	switch (k->kind) {
	case MARK_LINE: return points_box(k->line.points, k->line.n);
	case MARK_ARC: return arc_box(k);
	case MARK_FILL: return points_box(k->fill.points, k->fill.n);
	case MARK_TEXT: {
		struct text_room room = text_room(k, m);
		return points_box(room.corner, 4);
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
