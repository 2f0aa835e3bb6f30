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
#include "parts/assembly.h"

/* How far out of the mouth the neighbour is felt for: beyond any gap that a fit leaves. */
#define FEEL 0.6
#define HAIR 0.01

/* What is too little to be drilled on, and how finely the end of the wood is felt for. */
#define SKIN 0.05
#define STEP 2.0

/* Existing work is not drilled here: that is done on site. */
static struct part *piece_at(const struct assembly *all, const struct part *of, struct vec3 p)
{
	struct part *there = assembly_wood_at(all, of, p);
	return there && there->existing == EXISTING_NONE ? there : NULL;
}

/* A mouth just over the joint of two pieces that are glued up first, as over the mitre of a return,
 * is felt for a hair beside it. */
static struct part *neighbour(const struct assembly *all, const struct part *of, struct frame mouth)
{
	struct vec3 p = vec3_add(mouth.origin, vec3_scale(mouth.w, FEEL));
	struct part *there = piece_at(all, of, p);
	if (!there)
		there = piece_at(all, of, vec3_add(p, vec3_scale(mouth.u, HAIR)));
	return there ? there : piece_at(all, of, vec3_add(p, vec3_scale(mouth.v, HAIR)));
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
	mate.thread = b->thread;
	return mate;
}

static void drill_for(struct arena *a, const struct assembly *all, const struct part *piece)
{
	for (const struct bore *b = piece->bores; b; b = b->next) {
		if (b->is_mate || b->mate.depth <= 0)
			continue;
		struct frame mouth = frame_compose(piece->places[0], b->at);
		struct part *other = neighbour(all, piece, mouth);
		if (other)
			piece_bore(a, other, mate_of(b, mouth, other));
	}
}

static struct vec3 bore_point(const struct bore *b, double deep)
{
	return vec3_sub(b->at.origin, vec3_scale(b->at.w, deep));
}

/* Wood of a piece at this depth; along a seam a hair beside it, on the piece's own side, counts. */
static bool is_wood(const struct part *piece, const struct bore *b, double deep)
{
	struct vec3 p = bore_point(b, deep);
	const struct vec3 hairs[] = { { 0, 0, 0 }, vec3_scale(b->at.u, HAIR),
		vec3_scale(b->at.u, -HAIR), vec3_scale(b->at.v, HAIR), vec3_scale(b->at.v, -HAIR) };
	for (int i = 0; i < 5; i++)
		if (solids_contain(piece->solids, vec3_add(p, hairs[i])))
			return true;
	return false;
}

/* How deep the wood of a piece is along a hole: its depth, when it ends inside. */
static double wood_along(const struct part *piece, const struct bore *b)
{
	double in = 0, out = b->size.depth;
	if (is_wood(piece, b, out - SKIN))
		return out;
	for (double at = SKIN; at < out; at += STEP) {
		if (!is_wood(piece, b, at)) {
			out = at;
			break;
		}
		in = at;
	}
	while (out - in > NEAR_ENOUGH / 100) {
		double middle = (in + out) / 2;
		bool inside = is_wood(piece, b, middle);
		*(inside ? &in : &out) = middle;
	}
	return out;
}

/* What is left of a hole when it comes out of this piece, in the one behind; is there one?  One
 * that has come into a piece without wood along it ends there, or two such would hand it to and
 * fro. */
static bool drill_on(struct arena *a, const struct assembly *all, struct part *piece,
	struct bore *b)
{
	double wood = wood_along(piece, b), left = b->size.depth - wood;
	if (left < SKIN || (b->goes_on && wood < SKIN))
		return false;
	struct bore on = *b;
	on.next = NULL;
	on.at.origin = bore_point(b, wood);
	struct frame way_out = frame_compose(piece->places[0], on.at), ahead = way_out;
	ahead.w = vec3_scale(way_out.w, -1);
	struct part *behind = neighbour(all, piece, ahead);
	if (!behind)
		return false;
	b->size.depth = wood;
	on.at = frame_within(behind->places[0], way_out);
	on.size.depth = left;
	if (b->thread > 0)
		on.size.length = on.size.width = b->thread;
	on.mate.depth = 0;
	on.is_mate = on.goes_on = true;
	piece_bore(a, behind, on);
	return true;
}

/* Whatever the order of the pieces, each hole is followed until it ends. */
static void holes_end(struct arena *a, const struct assembly *all)
{
	bool went_on = true;
	while (went_on) {
		went_on = false;
		for (int i = 0; i < all->n; i++) {
			struct part *piece = all->pieces[i].piece;
			for (struct bore *b = piece->bores; b; b = b->next)
				went_on = drill_on(a, all, piece, b) || went_on;
		}
	}
}

void mates_drill(struct arena *a, const struct assembly *all)
{
	for (int i = 0; i < all->n; i++)
		drill_for(a, all, all->pieces[i].piece);
	holes_end(a, all);
}
