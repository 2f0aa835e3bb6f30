#include "random/joints.h"

#include "parts/solid.h"

/* A hole in the house. */
struct mouth {
	const struct part *part;
	int place;
	const struct bore *bore;
	struct frame at;
};

struct mouths {
	struct mouth *mouth;
	int n;
};

static struct mouths all_mouths(struct arena *a, const struct part *parts)
{
	struct mouths m = { NULL, 0 };
	int room = 1;
	for (const struct part *p = parts; p; p = p->next)
		for (const struct bore *b = p->bores; b; b = b->next)
			room += p->count;
	m.mouth = NEW_N(a, struct mouth, room);
	for (const struct part *p = parts; p; p = p->next)
		for (const struct bore *b = p->bores; b; b = b->next)
			for (int i = 0; i < p->count; i++)
				m.mouth[m.n++] = (struct mouth){ p, i, b,
					frame_compose(p->places[i], b->at) };
	return m;
}

static const char *label(struct arena *a, const struct mouth *m)
{
	struct vec3 o = m->at.origin;
	return arena_printf(a, "%s of %s (%s, place %d) at %.3f,%.3f,%.3f",
		m->bore->text ? m->bore->text : "a hole", m->part->mark, m->part->name, m->place,
		o.x, o.y, o.z);
}

static bool face_each_other(const struct mouth *one, const struct mouth *other)
{
	return one->part != other->part &&
		vec3_length(vec3_sub(one->at.origin, other->at.origin)) < 1e-6 &&
		vec3_dot(one->at.w, other->at.w) < -1 + 1e-9 &&
		fabs(vec3_dot(one->at.u, other->at.u)) > 1 - 1e-9;
}

static int halves_facing(const struct mouths *m, const struct mouth *one)
{
	int n = 0;
	for (int i = 0; i < m->n; i++)
		n += m->mouth[i].bore->is_mate != one->bore->is_mate &&
			face_each_other(one, &m->mouth[i]);
	return n;
}

/* It begins where another hole comes out of the piece in front. */
static int holes_before(const struct mouths *m, const struct mouth *one)
{
	int n = 0;
	for (int i = 0; i < m->n; i++) {
		const struct mouth *other = &m->mouth[i];
		struct vec3 end = vec3_sub(other->at.origin,
			vec3_scale(other->at.w, other->bore->size.depth));
		n += other->part != one->part &&
			vec3_length(vec3_sub(end, one->at.origin)) < 1e-6 &&
			vec3_dot(one->at.w, other->at.w) > 1 - 1e-9;
	}
	return n;
}

/* Or on the seam of two pieces that are glued up before they are drilled. */
static bool holds(const struct part *p, struct vec3 at, struct frame mouth)
{
	const struct vec3 beside[2] = { vec3_scale(mouth.u, 0.02), vec3_scale(mouth.v, 0.02) };
	if (solids_contain(p->solids, at))
		return true;
	for (int i = 0; i < 2; i++)
		if (solids_contain(p->solids, vec3_add(at, beside[i])) ||
			solids_contain(p->solids, vec3_sub(at, beside[i])))
			return true;
	return false;
}

/* Along its axis, from just inside the mouth to just before the bottom. */
static bool lies_in_wood(const struct mouth *m)
{
	for (int i = 0; i < 3; i++) {
		double deep = 0.05 + (m->bore->size.depth - 0.1) * i / 2;
		struct frame at = m->bore->at;
		if (!holds(m->part, vec3_sub(at.origin, vec3_scale(at.w, deep)), at))
			return false;
	}
	return true;
}

const char *joints_meet(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct mouths m = all_mouths(a, parts);
	(void)s;
	for (int i = 0; i < m.n; i++) {
		const struct mouth *one = &m.mouth[i];
		bool paired = one->bore->is_mate || one->bore->mate.depth > 0;
		bool goes_on = one->bore->goes_on;
		int facing = goes_on ? holes_before(&m, one) : halves_facing(&m, one);
		if (facing != (paired ? 1 : 0))
			return arena_printf(a, "%s has %d other halves", label(a, one), facing);
		if (!lies_in_wood(one))
			return arena_printf(a, "%s runs out of the wood", label(a, one));
	}
	return NULL;
}
