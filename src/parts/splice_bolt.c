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

#define WOOD 2.0          /* at least so much is left round a dowel */
#define ROOMY 6.0         /* and round the bolt: common practice */
#define USUAL_HEIGHT 24.0 /* of the bolt: 15/16 in (from memory) */
#define LEVELS 8          /* at which a section is looked at for its width */

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
	double wood = fmin(at.y, p->size.thickness - at.y) - radius;
	for (int i = 0; i <= LEVELS; i++) {
		double level = at.y - radius + 2 * radius * i / LEVELS;
		if (level < 0 || level > p->size.thickness)
			return -radius;
		wood = fmin(wood, profile_half_width(p->section, level) - fabs(at.x) - radius);
	}
	return wood;
}

/* In the middle, as low as is usual, or where there is wood. */
static bool bolt_fits(struct joint *j)
{
	double radius = j->bolt.clearance / 2, keep = radius + ROOMY;
	double depth = j->part->size.thickness;
	double wanted = j->bolt.height > 0 ? j->bolt.height : USUAL_HEIGHT;
	if (depth < 2 * keep)
		return false;
	j->height = fmin(fmax(wanted, keep), depth - keep);
	return wood_round(j->part, vec(0, j->height), radius) >= ROOMY &&
		profile_half_width(j->part->section, j->height / 2) >=
		j->bolt.access_diameter / 2 + WOOD;
}

static struct joint joint_of(const struct job *job, const struct part *p)
{
	double step = round_size(job->about.units, 1.0 / 16, 1);
	struct joint j = { p, job->rail.bolt, job->rail.dowel, 0, step };
	if (!bolt_fits(&j) && rail_bolt_may_be_smaller(&job->rail))
		j.bolt = rail_bolt_smaller(job);
	return j;
}

/* Least wood about a pair of dowels, each so far aside; about one in the middle when that is 0. */
static double wood_about(const struct joint *j, struct hole dowel, struct vec at)
{
	double radius = dowel.diameter / 2, up = at.y - j->height;
	double wood = wood_round(j->part, at, radius);
	wood = fmin(wood, hypot(at.x, up) - radius - j->bolt.clearance / 2);
	if (dowel.depth > j->bolt.access - j->bolt.access_diameter / 2 - WOOD &&
		up < j->bolt.clearance + radius + WOOD)
		wood = fmin(wood, at.x - radius - j->bolt.access_diameter / 2);
	return at.x > 0 ? fmin(wood, 2 * at.x - dowel.diameter) : wood;
}

/* Where they have most wood, not less than this; of places with as much, the first.  `first` and
 * `last` count the steps that they are aside; (0, 0): there is no place. */
static struct vec dowels_at(const struct joint *j, struct hole dowel, int first, int last)
{
	struct vec best = vec(0, 0);
	double most = WOOD;
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

/* Two; where there is wood for one only, one. */
static bool add_dowels(struct splice_holes *h, const struct joint *j)
{
	struct hole hole = dowel_hole(&j->dowel);
	int outermost = (int)(j->part->size.width / 2 / j->step);
	struct bore b = dowel_bore(
		(struct dowel){ hole.diameter, j->dowel.length, hole.depth, hole.depth });
	struct vec at = dowels_at(j, hole, 1, outermost);
	if (at.x <= 0)
		at = dowels_at(j, hole, 0, 0);
	if (at.y <= 0)
		return false;
	add(h, b, at, "dowel, length to length");
	if (at.x > 0)
		add(h, b, vec(-at.x, at.y), "dowel, length to length");
	return true;
}

struct splice_holes splice_holes_of(const struct job *job, const struct part *p)
{
	struct splice_holes h = { .n = 0 };
	struct joint j = joint_of(job, p);
	if (!bolt_fits(&j))
		return h;
	add_bolt(&h, &j);
	if (!add_dowels(&h, &j))
		h.n = 0;
	return h;
}
