/*
 * The moulding under the round of a starting step: it goes round the block, from
 * the stringer's face in front to its face at the back.  Seen from above:
 *
 *     straight length   .-'''''-.
 *     _______________.-' .---.   `.   half round: two quarters, and what is
 *     _______________|.-'     `.   |  straight before, between and behind them
 *                    |  block  |   |
 *                    |_______.'   .'
 *                    |__________.'
 *                     stringer's face
 *
 * Its foot is no thicker than the flat left under the hollow, so that kerfs from
 * the back would come through: the round is sawn in segments out of wide board, or
 * laminated.  Solids follow the facets of the block behind it.  Round a block whose corners are
 * sharp, the radius being no more than the nosing, it is three lengths mitred to each other.
 */
#include "parts/moulding.h"
#include "parts/start.h"

#define SEGMENT (PI / 4) /* of a round, so that the grain runs along it (common practice) */

/* Along from the left-hand limit and back from the front of the nosing, in the order in which the
 * block's outline goes round. */
struct chain_of {
	const struct rod *rod;
	const struct side *side;
	struct vec *at;
	int n;
};

static struct chain_of chain_make(struct arena *a, const struct rod *r, const struct side *side)
{
	struct profile f = profile_of(a, start_block_outline(a, r, side));
	struct chain_of c = { r, side, NEW_N(a, struct vec, f.n + 1), 0 };
	double limit = rod_along(r, side, 0), inside = start_back(r) - 2 * r->nosing;
	for (int i = 0; i < f.n; i++) {
		bool corner = near_enough(f.at[i].x, limit) && near_enough(f.at[i].y, inside);
		bool again = c.n > 0 && vec_near(f.at[i], c.at[c.n - 1]);
		if (!corner && !again)
			c.at[c.n++] = f.at[i];
	}
	return c;
}

/* Of the block's corners; 0: they are sharp. */
static double block_radius(const struct rod *r)
{
	double radius = start_radius(r) - r->nosing;
	return radius > NEAR_ENOUGH ? radius : 0;
}

/* Where its line at this distance from the block turns: straight to 1, round to 2, straight to 3,
 * round to 4; 0 and 5 at the stringer's face.  In from the limit, and back.  At a sharp corner 1
 * is 2, and 3 is 4. */
static void turns_of(const struct rod *r, const struct side *side, double out, struct vec c[6])
{
	double front = r->nosing - out, back = start_back(r) - front, end = -side->start + front;
	double radius = block_radius(r) > 0 ? block_radius(r) + out : 0;
	c[0] = vec(0, front);
	c[1] = vec(end + radius, front);
	c[2] = vec(end, front + radius);
	c[3] = vec(end, back - radius);
	c[4] = vec(end + radius, back);
	c[5] = vec(0, back);
}

/* Out from the block at a place of its edge, in from the limit and back: straight out, or from the
 * centre of its round; from a sharp corner to that of the mitre. */
static struct vec way_out(const struct vec c[6], struct vec p)
{
	double radius = c[1].x - c[2].x, middle = (c[0].y + c[5].y) / 2;
	double level = p.y < middle ? -1 : 1;
	struct vec from = vec(c[1].x, p.y < middle ? c[2].y : c[3].y);
	if (radius < NEAR_ENOUGH)
		return vec(p.x < c[1].x + NEAR_ENOUGH ? -1 : 0, level);
	if (p.x > c[1].x - NEAR_ENOUGH)
		return vec(0, level);
	bool is_straight = p.y > c[2].y - NEAR_ENOUGH && p.y < c[3].y + NEAR_ENOUGH;
	return is_straight ? vec(-1, 0) : vec_unit(vec_sub(p, from));
}

/* A corner of the chain set out by so much. */
static struct vec set_out(const struct chain_of *c, int i, double out)
{
	const struct rod *r = c->rod;
	struct vec p = vec(rod_along(r, c->side, c->at[i].x), c->at[i].y), turns[6];
	turns_of(r, c->side, 0, turns);
	p = vec_add(p, vec_scale(way_out(turns, p), out));
	return vec(rod_along(r, c->side, p.x), p.y);
}

/* From the chain's own axes to the piece's, which lies turned about: y towards the foot. */
static struct vec3 within(struct vec origin, struct vec p, double z)
{
	return vec3(origin.x - p.x, origin.y - p.y, z);
}

/* One facet of the chain between two levels of the section. */
static struct solid *cell(struct arena *a, const struct chain_of *c, int i, struct vec origin,
	const struct vec level[2], double height)
{
	struct vec3 *face[2];
	unsigned char *soft = NEW_N(a, unsigned char, 4);
	for (int k = 0; k < 2; k++) {
		double out = level[k].x, z = level[k].y;
		face[k] = NEW_N(a, struct vec3, 4);
		face[k][0] = within(origin, c->at[i], z);
		face[k][1] = within(origin, c->at[i + 1], z);
		face[k][2] = within(origin, set_out(c, i + 1, out), z);
		face[k][3] = within(origin, set_out(c, i, out), z);
	}
	unsigned seam = (level[1].y < height - NEAR_ENOUGH ? SOFT_B : 0u) |
		(level[0].y > NEAR_ENOUGH ? SOFT_A : 0u);
	for (int k = 0; k < 4; k++)
		soft[k] = (unsigned char)(seam | SOFT_SIDE);
	if (i > 0)
		soft[3] = SOFT_SIDE | SOFT_A | SOFT_B;
	if (i + 2 < c->n)
		soft[1] = SOFT_SIDE | SOFT_A | SOFT_B;
	return solid_join(a, 4, face[0], face[1], soft);
}

static struct solid *ring_solids(struct arena *a, const struct moulding *m,
	const struct chain_of *c, struct vec origin)
{
	struct profile f = profile_of(a, moulding_section(a, m));
	struct solid *s = NULL;
	for (int i = 0; i < f.n; i++) {
		const struct vec level[2] = { f.at[i], f.at[(i + 1) % f.n] };
		if (level[1].y <= level[0].y + NEAR_ENOUGH)
			continue;
		for (int k = 0; k + 1 < c->n; k++)
			s = solid_add(s, cell(a, c, k, origin, level, m->height));
	}
	return s;
}

/* ---- its outline, with true rounds ---- */

static struct outline ring_outline(struct arena *a, const struct rod *r, const struct side *side,
	double width, struct vec origin)
{
	struct vec c[6];
	bool right = side->hand == HAND_RIGHT;
	struct path p = path_begin(a, 14);
	for (int pass = 0; pass < 2; pass++) {
		turns_of(r, side, pass ? 0 : width, c);
		bool onward = right == (pass == 0);
		for (int i = 0; i < 6; i++) {
			int k = onward ? i : 5 - i;
			bool round = k == (onward ? 2 : 1) || k == (onward ? 4 : 3);
			double x = origin.x - rod_along(r, side, c[k].x), y = origin.y - c[k].y;
			if (round && pass == 0)
				path_round_to(&p, x, y);
			else if (round)
				path_hollow_to(&p, x, y);
			else
				path_to(&p, x, y);
		}
	}
	return path_close(p);
}

static const char *note(struct arena *a, const struct rod *r, const struct moulding *m,
	double length)
{
	struct lettering l = job_lettering(r->job);
	double inner = block_radius(r), outer = inner + m->width;
	if (inner <= 0)
		return arena_printf(a,
			"%s long on the block, %s on its outer edge: three lengths, mitred to each "
			"other at the block's corners",
			length_say(a, l, length), length_say(a, l, length + 4 * m->width));
	return arena_printf(a,
		"%s long on the block, %s on its outer edge; rounds of %s and %s: sawn in segments "
		"of 45 degrees out of board %s wide or more, or laminated round the block; not "
		"kerfed, its "
		"foot is %s thick",
		length_say(a, l, length), length_say(a, l, length + PI * m->width),
		length_say(a, l, inner), length_say(a, l, outer),
		length_say_least(a, l, outer - inner * cos(SEGMENT / 2)),
		length_say(a, l, MOULDING_EDGE));
}

void moulding_bent_add(struct pieces *list, const struct rod *r, const struct side *side,
	const struct moulding *m)
{
	struct arena *a = list->arena;
	struct chain_of c = chain_make(a, r, side);
	double out = side->start - r->nosing + m->width;
	struct vec origin = vec(side->hand == HAND_RIGHT ? r->width + out : 0,
		start_back(r) - r->nosing + m->width);
	struct frame at = { .u = { 0, 1, 0 }, .v = { -1, 0, 0 }, .w = { 0, 0, 1 } };
	at.origin = vec3(origin.y - r->nosing, r->width - origin.x, r->rise - r->tread - m->height);
	struct part *p = piece_add(list, arena_printf(a, "%s, bent", m->name),
		r->job->material.treads, frame_compose(r->flight->frame, at));
	double length = start_bent_length(r, side);
	p->section = moulding_section(a, m);
	p->outline = ring_outline(a, r, side, m->width, origin);
	/* listed as the board that its segments are glued up to before the round is sawn */
	struct box whole = outline_extent(p->outline);
	p->size = (struct part_size){ whole.x1, whole.y1, m->height };
	p->solids = ring_solids(a, m, &c, origin);
	p->note = note(a, r, m, length);
}
