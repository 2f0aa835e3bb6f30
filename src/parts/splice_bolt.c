/*
 * The joint of two lengths of a rail: butted square, a bolt, and two dowels beside or over it.
 *
 *         .---.
 *        ( o o )    dowels: as far from the bolt, its access hole and the rail's
 *         \ O /     faces as they can be
 *         /   \     bolt: from the lower length, whose access hole holds the nut
 *
 * How the trade joins rails (common practice).  Holes run along the rail, so that a height over the
 * underside is the same at both their ends.
 */
#include "parts/profile.h"
#include "parts/rail_holes.h"
#include "parts/rail_joint.h"
#include "parts/splice.h"

struct joint {
	const struct part *part;
	struct job_rail_bolt bolt;
	struct job_dowel dowel;
	double height; /* of the bolt */
	double step;   /* in which places for dowels are tried */
};

/* Wood from a hole of this radius out to the faces; less than 0: it comes out. */
static double wood_round(const struct part *p, struct vec at, double radius)
{
	double half = profile_narrowest(p->section, at.y - radius, at.y + radius);
	return fmin(half - fabs(at.x), fmin(at.y, p->size.thickness - at.y)) - radius;
}

/* How high a bolt is tried: as the job says, or as is usual, and then lower, for the dowels' sake.
 */
static double first_height(const struct joint *j)
{
	double wanted = j->bolt.height > 0 ? j->bolt.height : BOLT_HEIGHT;
	return fmin(wanted, j->part->size.thickness - j->bolt.clearance / 2 - HOLE_ROOMY);
}

static bool bolt_fits(const struct joint *j)
{
	return wood_round(j->part, vec(0, j->height), j->bolt.clearance / 2) >=
		HOLE_ROOMY - NEAR_ENOUGH &&
		rail_bolt_access_fits(j->part->section, &j->bolt, j->height);
}

/* Least wood about a pair of dowels, each so far aside; about one in the middle when that is 0. */
static double wood_about(const struct joint *j, struct hole dowel, struct vec at)
{
	double radius = dowel.diameter / 2, up = at.y - j->height;
	double wood = wood_round(j->part, at, radius);
	wood = fmin(wood, hypot(at.x, up) - radius - j->bolt.clearance / 2);
	if (dowel.depth > j->bolt.access - j->bolt.access_diameter / 2 - HOLE_WOOD &&
		up < j->bolt.clearance + radius + HOLE_WOOD)
		wood = fmin(wood, at.x - radius - j->bolt.access_diameter / 2);
	return at.x > 0 ? fmin(wood, 2 * at.x - dowel.diameter) : wood;
}

/* Where they have most wood, not less than this; of places with as much, the first.  `first` and
 * `last` count the steps that they are aside; (0, 0): there is no place. */
static struct vec dowels_at(const struct joint *j, struct hole dowel, int first, int last)
{
	struct vec best = vec(0, 0);
	double most = HOLE_WOOD;
	for (int i = first; i <= last; i++)
		for (int k = 1; k * j->step < j->part->size.thickness; k++) {
			struct vec at = vec(i * j->step, k * j->step);
			double wood = wood_about(j, dowel, at);
			if (wood <= most + NEAR_ENOUGH)
				continue;
			most = wood;
			best = at;
		}
	return best;
}

static void add(struct splice_holes *h, struct bore b, struct vec at, const char *text)
{
	b.at = (struct frame){ vec3(0, at.x, at.y), { 0, 1, 0 }, { 0, 0, 1 }, { 1, 0, 0 } };
	b.text = text;
	h->bores[h->n++] = b;
}

static void add_bolt(struct splice_holes *h, const struct joint *j)
{
	struct hole hole = bolt_hole(&j->bolt);
	struct bore b = { .size = bore_round(hole.diameter, hole.depth),
		.mate = bore_round(j->bolt.pilot, j->bolt.length / 2),
		.fixing = FIXING_RAIL_BOLT,
		.fixing_length = j->bolt.length,
		.fixing_width = j->bolt.diameter };
	add(h, b, vec(0, j->height), "rail bolt, length to length");
	h->bores[h->n++] = rail_bolt_access(&j->bolt, vec3(-j->bolt.access, 0, j->height),
		j->part->size.thickness);
}

static void add_dowels(struct splice_holes *h, const struct joint *j, struct vec at)
{
	struct hole hole = dowel_hole(&j->dowel);
	struct bore b = dowel_bore(
		(struct dowel){ hole.diameter, j->dowel.length, hole.depth, hole.depth });
	add(h, b, at, "dowel, length to length");
	if (at.x > 0)
		add(h, b, vec(-at.x, at.y), "dowel, length to length");
}

/* A pair, or one over the bolt. */
enum dowels { DOWELS_TWO, DOWELS_ONE };

/* At the first height of the bolt that leaves wood for them. */
static bool drill(struct splice_holes *h, struct joint j, enum dowels dowels)
{
	struct hole hole = dowel_hole(&j.dowel);
	int first = dowels == DOWELS_TWO ? 1 : 0;
	int last = dowels == DOWELS_TWO ? (int)(j.part->size.width / 2 / j.step) : 0;
	double highest = first_height(&j), least = j.bolt.height > 0 ? highest : j.step;
	for (int i = 0; highest - i * j.step >= least; i++) {
		j.height = highest - i * j.step;
		if (!bolt_fits(&j))
			continue;
		struct vec at = dowels_at(&j, hole, first, last);
		if (at.y <= 0)
			continue;
		add_bolt(h, &j);
		add_dowels(h, &j, at);
		return true;
	}
	return false;
}

/* Two dowels sooner than the larger bolt; the smaller one where it may be. */
struct splice_holes splice_holes_of(const struct job *job, const struct part *p)
{
	struct splice_holes h = { .n = 0 };
	double step = round_size(job->about.units, 1.0 / 16, 1);
	struct joint larger = { p, job->rail.bolt, job->rail.dowel, 0, step };
	struct joint smaller = larger;
	if (rail_bolt_may_be_smaller(&job->rail))
		smaller.bolt = rail_bolt_smaller(job);
	if (!drill(&h, larger, DOWELS_TWO) && !drill(&h, smaller, DOWELS_TWO) &&
		!drill(&h, larger, DOWELS_ONE))
		drill(&h, smaller, DOWELS_ONE);
	return h;
}
