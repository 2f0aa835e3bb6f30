#include "parts/assembly.h"

static void widen(struct standing_piece *c, const struct vec3 *points, int n)
{
	for (int i = 0; i < n; i++)
		c->box = box3_add(c->box, frame_place(c->piece->places[0], points[i]));
}

static struct standing_piece standing(struct part *piece)
{
	struct standing_piece c = { piece, box3_empty() };
	for (const struct solid *s = piece->solids; s; s = s->next) {
		widen(&c, s->a, s->n);
		widen(&c, s->b, s->n);
	}
	return c;
}

struct assembly assembly_make(struct arena *a, struct part *const *families, int n)
{
	struct assembly all = { NULL, 0 };
	int room = 0;
	for (int i = 0; i < n; i++)
		for (const struct part *p = families[i]; p; p = p->next)
			room++;
	all.pieces = NEW_N(a, struct standing_piece, room + 1);
	for (int i = 0; i < n; i++)
		for (struct part *p = families[i]; p; p = p->next)
			all.pieces[all.n++] = standing(p);
	return all;
}

static bool holds(const struct standing_piece *c, struct vec3 p)
{
	struct vec3 low = c->box.low, high = c->box.high;
	if (p.x < low.x || p.x > high.x || p.y < low.y || p.y > high.y || p.z < low.z ||
		p.z > high.z)
		return false;
	return solids_contain(c->piece->solids, frame_place_back(c->piece->places[0], p));
}

struct part *assembly_wood_at(const struct assembly *all, const struct part *but, struct vec3 p)
{
	for (int i = 0; i < all->n; i++)
		if (all->pieces[i].piece != but && holds(&all->pieces[i], p))
			return all->pieces[i].piece;
	return NULL;
}

struct box3 bore_box(struct frame at, struct bore_size size, double from, double to)
{
	struct box3 b = box3_empty();
	for (int i = 0; i < 8; i++) {
		double u = (i & 1 ? 0.5 : -0.5) * size.length,
		       v = (i & 2 ? 0.5 : -0.5) * size.width;
		b = box3_add(b, frame_place(at, vec3(u, v, i & 4 ? from : to)));
	}
	return b;
}

/* In the piece's own axes, along which most holes run. */
bool bore_is_clear(const struct part *p, struct frame mouth, struct bore_size size, double gap)
{
	struct box3 takes = bore_box(frame_within(p->places[0], mouth), size, -size.depth, 0);
	for (const struct bore *o = p->bores; o; o = o->next)
		if (box3_near(takes, bore_box(o->at, o->size, -o->size.depth, 0), gap))
			return false;
	return true;
}
