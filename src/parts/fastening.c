#include "parts/fastening.h"

/* Wood between a fastener and any other hole; round its shank in what it bites into; under its
 * point; round a plug up to whatever stands on the piece (common practice). */
#define CLEAR 5.0
#define ROUND_SHANK 3.0
#define UNDER_POINT 2.0
#define ROUND_PLUG 2.0

/* The way that it is moved when there is no room. */
#define NUDGE 5.0

/* So far under a face it is felt for whether there is wood. */
#define HAIR 0.3

void piece_fasten(struct arena *a, struct part *p, struct fastening f)
{
	struct fastening *made = NEW(a, struct fastening), **tail = &p->fastenings;
	*made = f;
	while (*tail)
		tail = &(*tail)->next;
	*tail = made;
}

static double bite(const struct fastening *f)
{
	return f->fastener.length - (f->through - f->sunk);
}

/* A point so deep under the mouth, and so far beside the axis: to either side, and along the row.
 */
static struct vec3 beside(struct frame mouth, double deep, int way, double off)
{
	struct vec3 side = way & 1 ? mouth.u : mouth.v;
	struct vec3 at = vec3_sub(mouth.origin, vec3_scale(mouth.w, deep));
	return vec3_add(at, vec3_scale(side, way & 2 ? off : -off));
}

/* How much nearer or further a sloping joint is so far beside the axis. */
static double slack(const struct fastening *f, double off)
{
	return HAIR + f->slope * off;
}

static bool is_wood_round(const struct part *p, struct frame mouth, double deep, double off)
{
	for (int way = 0; way < 4; way++) {
		struct vec3 at = beside(mouth, deep, way, off);
		if (!solids_contain(p->solids, frame_place_back(p->places[0], at)))
			return false;
	}
	return true;
}

/* In the piece: head or plug at the mouth, shank further down. */
static bool lies_in_piece(const struct part *p, const struct fastening *f, struct frame mouth)
{
	double head = fmax(f->fastener.head, f->plug) / 2, off = f->fastener.hole / 2 + f->beside;
	return is_wood_round(p, mouth, HAIR, head) &&
		is_wood_round(p, mouth, f->through / 2, off) &&
		is_wood_round(p, mouth, f->through - slack(f, off), off);
}

/* The piece that it bites into all the way; NULL: it would come out of it. */
static struct part *bites_into(const struct assembly *all, const struct part *p,
	const struct fastening *f, struct frame mouth)
{
	double off = f->fastener.width / 2 + ROUND_SHANK;
	double from = f->through + slack(f, off), to = f->through + bite(f) + UNDER_POINT;
	struct part *other = assembly_wood_at(all, p, beside(mouth, (from + to) / 2, 0, 0));
	if (!other)
		return NULL;
	for (int way = 0; way < 4; way++)
		for (int deep = 0; deep < 2; deep++) {
			struct vec3 at = beside(mouth, deep ? to : from, way, off);
			if (!solids_contain(other->solids, frame_place_back(other->places[0], at)))
				return NULL;
		}
	return other;
}

/* Nothing stands on the plug. */
static bool is_open(const struct assembly *all, const struct part *p, const struct fastening *f,
	struct frame mouth)
{
	for (int way = 0; f->plug > 0 && way < 4; way++)
		if (assembly_wood_at(all, p, beside(mouth, -HAIR, way, f->plug / 2 + ROUND_PLUG)))
			return false;
	return true;
}

static bool has_room(const struct assembly *all, const struct part *p, const struct fastening *f,
	struct frame mouth)
{
	struct bore_size shank = bore_round(fmax(f->fastener.hole, f->plug), f->through + bite(f));
	if (!lies_in_piece(p, f, mouth) || !bore_is_clear(p, mouth, shank, CLEAR))
		return false;
	const struct part *other = bites_into(all, p, f, mouth);
	return other && bore_is_clear(other, mouth, shank, CLEAR) && is_open(all, p, f, mouth);
}

static void drill(struct arena *a, struct part *p, const struct fastening *f, struct frame mouth)
{
	struct bore b = fastener_bore(f->fastener, f->through);
	b.at = frame_within(p->places[0], mouth);
	b.driven = bite(f);
	b.text = f->text;
	piece_bore(a, p, b);
	if (f->plug <= 0)
		return;
	b = (struct bore){ .at = b.at,
		.size = bore_round(f->plug, f->sunk),
		.fixing = FIXING_PLUG,
		.fixing_width = f->plug,
		.fixing_length = f->sunk,
		.text = "for the head and its plug" };
	piece_bore(a, p, b);
}

/* In the nearest place with room, not further off than half way to the next one. */
static bool set_one(struct arena *a, const struct assembly *all, struct part *p,
	const struct fastening *f, double along, double reach)
{
	struct frame at = frame_compose(p->places[0], f->at);
	int most = (int)(reach / NUDGE);
	for (int i = 0; i <= 2 * most; i++) {
		int nudges = (i + 1) / 2 * (i & 1 ? 1 : -1); /* 0, 1, -1, 2 ... */
		struct frame mouth = at;
		mouth.origin = vec3_add(at.origin, vec3_scale(at.u, along + NUDGE * nudges));
		if (!has_room(all, p, f, mouth))
			continue;
		drill(a, p, f, mouth);
		return true;
	}
	return false;
}

int fastening_drill(struct arena *a, const struct assembly *all, struct part *p,
	const struct fastening *f)
{
	double between = f->length - 2 * f->first;
	int spaces = f->count - 1, missed = 0;
	if (f->length <= 0 || bite(f) <= 0)
		return f->count;
	if (between < 2 * CLEAR || spaces == 0)
		return set_one(a, all, p, f, f->length / 2, f->length / 2) ? 0 : f->count;
	if (f->pitch > 0)
		spaces = (int)ceil(between / f->pitch - NEAR_ENOUGH);
	for (int i = 0; i <= spaces; i++)
		missed += !set_one(a, all, p, f, f->first + between * i / spaces,
			between / spaces / 2);
	return missed;
}

void fastenings_drill(struct arena *a, const struct assembly *all)
{
	for (int i = 0; i < all->n; i++) {
		struct part *p = all->pieces[i].piece;
		for (const struct fastening *f = p->fastenings; f; f = f->next)
			fastening_drill(a, all, p, f);
	}
}
