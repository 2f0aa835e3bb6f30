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
 * family made.  A hole deeper than its piece goes on in the wood behind: a rail
 * bolt through the cross rail of a panelled newel into its core.
 */
#include "parts/piece.h"

/* How far out of the mouth the neighbour is felt for: beyond any gap that a fit leaves. */
#define FEEL 0.6
#define HAIR 0.01

/* What is too little to be drilled on, and how finely the end of the wood is felt for. */
#define SKIN 0.05
#define STEP 2.0

/* A piece with the box it fills in the house. */
struct candidate {
	struct part *piece;
	struct box3 box;
};

struct bench {
	struct candidate *candidates;
	int n;
};

static void widen(struct candidate *c, const struct vec3 *points, int n)
{
	for (int i = 0; i < n; i++)
		c->box = box3_add(c->box, frame_place(c->piece->places[0], points[i]));
}

static struct candidate candidate_of(struct part *piece)
{
	struct candidate c = { piece, box3_empty() };
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
	struct vec3 low = c->box.low, high = c->box.high;
	if (p.x < low.x || p.x > high.x || p.y < low.y || p.y > high.y || p.z < low.z ||
		p.z > high.z)
		return false;
	return solids_contain(c->piece->solids, frame_place_back(c->piece->places[0], p));
}

static struct part *piece_at(const struct bench *b, const struct part *of, struct vec3 p)
{
	for (int i = 0; i < b->n; i++)
		if (b->candidates[i].piece != of && holds(&b->candidates[i], p))
			return b->candidates[i].piece;
	return NULL;
}

/* A mouth just over the joint of two pieces that are glued up first, as over the mitre of a return,
 * is felt for a hair beside it. */
static struct part *neighbour(const struct bench *b, const struct part *of, struct frame mouth)
{
	struct vec3 p = vec3_add(mouth.origin, vec3_scale(mouth.w, FEEL));
	struct part *there = piece_at(b, of, p);
	if (!there)
		there = piece_at(b, of, vec3_add(p, vec3_scale(mouth.u, HAIR)));
	return there ? there : piece_at(b, of, vec3_add(p, vec3_scale(mouth.v, HAIR)));
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

static struct vec3 bore_point(const struct bore *b, double deep)
{
	return vec3_sub(b->at.origin, vec3_scale(b->at.w, deep));
}

/* How deep the wood of a piece is along a hole: its depth, when it ends inside. */
static double wood_along(const struct part *piece, const struct bore *b)
{
	double in = 0, out = b->size.depth;
	if (solids_contain(piece->solids, bore_point(b, out - SKIN)))
		return out;
	for (double at = SKIN; at < out; at += STEP) {
		if (!solids_contain(piece->solids, bore_point(b, at))) {
			out = at;
			break;
		}
		in = at;
	}
	while (out - in > NEAR_ENOUGH / 100) {
		double middle = (in + out) / 2;
		bool inside = solids_contain(piece->solids, bore_point(b, middle));
		*(inside ? &in : &out) = middle;
	}
	return out;
}

/* What is left of a hole when it comes out of this piece, in the one behind; is there one? */
static bool drill_on(struct arena *a, const struct bench *bench, struct part *piece, struct bore *b)
{
	double wood = wood_along(piece, b), left = b->size.depth - wood;
	if (left < SKIN)
		return false;
	struct bore on = *b;
	on.next = NULL;
	on.at.origin = bore_point(b, wood);
	struct frame way_out = frame_compose(piece->places[0], on.at), ahead = way_out;
	ahead.w = vec3_scale(way_out.w, -1);
	struct part *behind = neighbour(bench, piece, ahead);
	if (!behind)
		return false;
	b->size.depth = wood;
	on.at = frame_within(behind->places[0], way_out);
	on.size.depth = left;
	on.mate.depth = 0;
	on.is_mate = on.goes_on = true;
	piece_bore(a, behind, on);
	return true;
}

/* Whatever the order of the pieces, each hole is followed until it ends. */
static void holes_end(struct arena *a, const struct bench *bench)
{
	bool went_on = true;
	while (went_on) {
		went_on = false;
		for (int i = 0; i < bench->n; i++) {
			struct part *piece = bench->candidates[i].piece;
			for (struct bore *b = piece->bores; b; b = b->next)
				went_on = drill_on(a, bench, piece, b) || went_on;
		}
	}
}

void mates_drill(struct arena *a, struct part *const *families, int n)
{
	struct bench b = bench_lay(a, families, n);
	for (int i = 0; i < b.n; i++)
		drill_for(a, &b, b.candidates[i].piece);
	holes_end(a, &b);
}
