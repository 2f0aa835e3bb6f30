#include "random/joints.h"

#include "parts/solid.h"
#include "sheets/joint_words.h"
#include "sheets/piece_view.h"

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

/* Corners of what a hole takes, in its part. */
static void stretch(struct vec3 *low, struct vec3 *high, const struct bore *b)
{
	for (int i = 0; i < 8; i++) {
		struct vec3 p = frame_place(b->at,
			vec3((i & 1 ? 0.5 : -0.5) * b->size.length,
				(i & 2 ? 0.5 : -0.5) * b->size.width, i & 4 ? -b->size.depth : 0));
		*low = vec3(fmin(low->x, p.x), fmin(low->y, p.y), fmin(low->z, p.z));
		*high = vec3(fmax(high->x, p.x), fmax(high->y, p.y), fmax(high->z, p.z));
	}
}

/* The widest gap between their boxes along any axis; less than 0 when they run into each other. */
static double apart(const struct bore *one, const struct bore *other)
{
	struct vec3 low[2], high[2];
	for (int i = 0; i < 2; i++) {
		low[i] = vec3(INFINITY, INFINITY, INFINITY);
		high[i] = vec3(-INFINITY, -INFINITY, -INFINITY);
		stretch(&low[i], &high[i], i ? other : one);
	}
	double x = fmax(low[0].x - high[1].x, low[1].x - high[0].x);
	double y = fmax(low[0].y - high[1].y, low[1].y - high[0].y);
	double z = fmax(low[0].z - high[1].z, low[1].z - high[0].z);
	return fmax(x, fmax(y, z));
}

static const char *tenon_met(struct arena *a, const struct part *p, const struct bore *tenon)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (b != tenon && apart(b, tenon) < 5)
			return arena_printf(a, "%s %s: %s and %s are %.2f apart", p->mark, p->name,
				tenon->text, b->text ? b->text : "a hole", apart(b, tenon));
	return NULL;
}

const char *tenons_clear(struct arena *a, const struct stair *s, const struct part *parts)
{
	(void)s;
	for (const struct part *p = parts; p; p = p->next)
		for (const struct bore *b = p->bores; p->kind == &part_tread && b; b = b->next) {
			const char *why =
				b->fixing == FIXING_LOOSE_TENON ? tenon_met(a, p, b) : NULL;
			if (why)
				return why;
		}
	return NULL;
}

static bool is_wood_of_another(const struct part *parts, const struct mouth *one, struct vec3 at)
{
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			if ((p != one->part || i != one->place) &&
				solids_contain(p->solids, frame_place_back(p->places[i], at)))
				return true;
	return false;
}

/* What is driven on behind its hole finds wood all the way, to the point and not out again. */
static bool bites_into_wood(const struct part *parts, const struct mouth *one)
{
	for (int i = 0; i <= 4; i++) {
		double deep = one->bore->size.depth + 0.4 + (one->bore->driven - 0.2) * i / 4;
		struct vec3 at = vec3_sub(one->at.origin, vec3_scale(one->at.w, deep));
		if (!is_wood_of_another(parts, one, at))
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
		if (one->bore->driven > 0 && !bites_into_wood(parts, one))
			return arena_printf(a, "%s bites into nothing", label(a, one));
	}
	return NULL;
}

/* ---- as they are laid out from the sheets ---- */

/* By what a middle is off when it is laid out by its two figures, each in a direction of the
 * joint's own plane; in the piece's axes. */
static struct vec3 off_by(const struct job *job, const struct bore *b, struct vec3 axis, double mm)
{
	struct vec3 in_joint = vec3_sub(axis, vec3_scale(b->at.w, vec3_dot(axis, b->at.w)));
	return vec3_scale(vec3_unit(in_joint), joint_lettered(job, mm) - mm);
}

/* A stringer is figured along and across the plank, and from its face: in an edge or an end, which
 * is there already, that one counts of the first two which runs more along it. */
static struct vec3 laid_out_on_stringer(const struct job *job, const struct bore *b)
{
	struct vec3 at = b->at.origin, w = b->at.w;
	struct vec3 along = off_by(job, b, vec3(1, 0, 0), at.x);
	struct vec3 across = off_by(job, b, vec3(0, 1, 0), at.y);
	if (fabs(w.z) > 0.7)
		return vec3_add(along, across);
	return vec3_add(fabs(w.x) < fabs(w.y) ? along : across,
		off_by(job, b, vec3(0, 0, 1), at.z));
}

static struct vec3 laid_out(const struct job *job, const struct part *p, const struct bore *b)
{
	struct vec3 x = { 1, 0, 0 }, y = { 0, 1, 0 }, z = { 0, 0, 1 };
	struct piece_view v = { .part = p, .zero = piece_zero(p) };
	if (p->stringer)
		return laid_out_on_stringer(job, b);
	v.side = piece_bore_side(p, b);
	v.stretch = piece_stretch(p, v.side);
	struct vec figured = piece_figured(&v, b->at.origin);
	bool along = v.side == PIECE_FACE || v.side == PIECE_EDGE;
	return vec3_add(off_by(job, b, along ? x : y, figured.x),
		off_by(job, b, v.side == PIECE_FACE ? y : z, figured.y));
}

static struct vec3 off_in_house(const struct job *job, const struct mouth *m)
{
	return frame_turn(m->part->places[m->place], laid_out(job, m->part, m->bore));
}

/* Either way across the hole. */
static double miss(const struct job *job, const struct mouth *one, const struct mouth *other)
{
	struct vec3 apart = vec3_sub(off_in_house(job, one), off_in_house(job, other));
	return fmax(fabs(vec3_dot(apart, one->at.u)), fabs(vec3_dot(apart, one->at.v)));
}

const char *joints_laid_out(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct mouths m = all_mouths(a, parts);
	double allowed = joint_miss(s->job->about.units) + 1e-6;
	for (int i = 0; i < m.n; i++)
		for (int k = 0; k < m.n; k++) {
			const struct mouth *one = &m.mouth[i], *other = &m.mouth[k];
			if (other->bore->is_mate == one->bore->is_mate ||
				!bore_is_of_joint(one->bore) || !face_each_other(one, other) ||
				miss(s->job, one, other) <= allowed)
				continue;
			return arena_printf(a, "%s and %s: laid out by figures %.3f apart",
				label(a, one), label(a, other), miss(s->job, one, other));
		}
	return NULL;
}
