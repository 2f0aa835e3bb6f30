/*
 * The other halves of joints.
 *
 *      ___________
 *     |    ||     |   a baluster is drilled for its dowel ...
 *   __|____||_____|__
 *          ||           ... and so is the tread under it: found here by feeling
 *          ||           a little way out of the mouth for other wood
 *
 * A family knows where its own piece is drilled; what stands against it another
 * family made.
 */
#include "parts/piece.h"

/* How far out of the mouth the neighbour is felt for: beyond any gap that a fit leaves. */
#define FEEL 0.6

/* A piece with the box it fills in the house. */
struct candidate {
	struct part *piece;
	struct vec3 low, high;
};

struct bench {
	struct candidate *candidates;
	int n;
};

static void widen(struct candidate *c, const struct vec3 *points, int n)
{
	for (int i = 0; i < n; i++) {
		struct vec3 p = frame_place(c->piece->places[0], points[i]);
		c->low = vec3(fmin(c->low.x, p.x), fmin(c->low.y, p.y), fmin(c->low.z, p.z));
		c->high = vec3(fmax(c->high.x, p.x), fmax(c->high.y, p.y), fmax(c->high.z, p.z));
	}
}

static struct candidate candidate_of(struct part *piece)
{
	struct candidate c = { piece, { INFINITY, INFINITY, INFINITY },
		{ -INFINITY, -INFINITY, -INFINITY } };
	for (const struct solid *s = piece->solids; s; s = s->next) {
		widen(&c, s->a, s->n);
		widen(&c, s->b, s->n);
	}
	return c;
}

/* Existing work is not drilled here: that is done on site. */
static struct bench bench_lay(struct arena *a, struct part *const *families, int n)
{
	struct bench b = { NULL, 0 };
	int room = 0;
	for (int i = 0; i < n; i++)
		for (const struct part *p = families[i]; p; p = p->next)
			room++;
	b.candidates = NEW_N(a, struct candidate, room + 1);
	for (int i = 0; i < n; i++)
		for (struct part *p = families[i]; p; p = p->next)
			if (p->existing == EXISTING_NONE)
				b.candidates[b.n++] = candidate_of(p);
	return b;
}

static bool holds(const struct candidate *c, struct vec3 p)
{
	if (p.x < c->low.x || p.x > c->high.x || p.y < c->low.y || p.y > c->high.y ||
		p.z < c->low.z || p.z > c->high.z)
		return false;
	return solids_contain(c->piece->solids, frame_place_back(c->piece->places[0], p));
}

static struct part *neighbour(const struct bench *b, const struct part *of, struct frame mouth)
{
	struct vec3 p = vec3_add(mouth.origin, vec3_scale(mouth.w, FEEL));
	for (int i = 0; i < b->n; i++)
		if (b->candidates[i].piece != of && holds(&b->candidates[i], p))
			return b->candidates[i].piece;
	return NULL;
}

/* Looking out of the neighbour, at the same mouth. */
static struct bore mate_of(const struct bore *b, struct frame mouth, const struct part *neighbour)
{
	struct frame facing = mouth;
	facing.v = vec3_scale(mouth.v, -1);
	facing.w = vec3_scale(mouth.w, -1);
	struct bore mate = { .at = frame_within(neighbour->places[0], facing), .size = b->mate };
	mate.fixing = b->fixing;
	mate.fixing_length = b->fixing_length;
	mate.fixing_width = b->fixing_width;
	mate.is_mate = true;
	mate.text = b->text;
	return mate;
}

static void drill_for(struct arena *a, const struct bench *bench, const struct part *piece)
{
	for (const struct bore *b = piece->bores; b; b = b->next) {
		if (b->is_mate || b->mate.depth <= 0)
			continue;
		struct frame mouth = frame_compose(piece->places[0], b->at);
		struct part *other = neighbour(bench, piece, mouth);
		if (other)
			piece_bore(a, other, mate_of(b, mouth, other));
	}
}

void mates_drill(struct arena *a, struct part *const *families, int n)
{
	struct bench b = bench_lay(a, families, n);
	for (int i = 0; i < b.n; i++)
		drill_for(a, &b, b.candidates[i].piece);
}
