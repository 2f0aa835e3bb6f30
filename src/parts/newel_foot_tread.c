#include "parts/fixing.h"
#include "parts/newel_foot.h"
#include "parts/nosing.h"
#include "parts/start.h"
#include "parts/stringer.h"
#include "parts/tread.h"

/* A newel on a tread: dowels into its body, and a newel bolt through it into the stringer, or up
 * through the block of a starting step. */

#define BESIDE_DOWEL 10.0 /* of the tread up to its end, and of the newel up to its face */
#define BETWEEN 2.0       /* dowel and bolt: wood at least (common practice) */
#define DOWEL_IN_NEWEL 50.0
#define UNDER_DOWEL 5.0 /* of the tread, left whole */
#define LEAST_IN_STRING 50.0
#define UNDER_BOLT 15.0 /* of a stringer, left whole */
#define BESIDE_BOLT 8.0 /* hole to the stringer's face */
#define LEAST_HALF 12.0 /* middle of a bolt to a face of newel or block */

static int step_under(const struct post *p)
{
	return (int)round(p->end.newel_z / p->rod->rise);
}

static bool is_on_start(const struct post *p)
{
	return step_under(p) == 1 && side_starts(p->side);
}

/* Where the body of the tread ends that a newel stands on, in from the limit: none of the return
 * strip holds a newel. */
static double tread_end_under(const struct post *p)
{
	const struct rod *r = p->rod;
	int step = step_under(p);
	if (step < 1 || step > r->steps || is_on_start(p))
		return -INFINITY;
	return tread_plan_make(r, step).ends[p->side->hand].body;
}

/* How far back from the newel's face the tread's edge is whole above, where its nosing is rounded
 * under the newel. */
static double nosing_under_newel(const struct post *p)
{
	const struct rod *r = p->rod;
	int step = step_under(p);

	if (step < 1 || step > r->steps || is_on_start(p))
		return -INFINITY;
	double front = (step - 1) * r->run - r->nosing;
	return front + nosing_make(&r->job->treads, r->tread).reach - p->end.newel_x;
}

/* As they are sold, and the thinnest that holds a newel. */
static double tread_dowel(enum units units)
{
	return round_size(units, 5.0 / 8, 16);
}

static double least_tread_dowel(enum units units)
{
	return round_size(units, 5.0 / 16, 8);
}

/* How thick dowels may be, and how far in from the limit: under the newel's middle, unless the end
 * of the tread is too near.  The one before the middle stands clear of a rounded edge; between them
 * there is room for the bolt. */
struct dowel_place {
	double diameter, in, front;
};

static struct dowel_place dowel_place(const struct post *p)
{
	double end = tread_end_under(p), face = p->side->rail + p->core / 2;
	enum units units = p->rod->job->about.units;
	double most = fmin(face - end - 2 * BESIDE_DOWEL, p->core / 6);
	double thick = dowel_within(units, tread_dowel(units), most);
	double in = fmax(p->side->rail, end + BESIDE_DOWEL + thick / 2);
	double front = fmax(p->section / 2 - p->core / 4, nosing_under_newel(p) + thick / 2);
	return (struct dowel_place){ thick, in, front };
}

static void tread_dowels_add(struct pieces *list, const struct post *p, struct dowel_place at)
{
	double middle = p->section / 2, out = p->core / 4, tread = p->rod->tread;
	double in_tread = fmax(tread - UNDER_DOWEL, tread / 2);
	struct bore b = dowel_bore(
		(struct dowel){ at.diameter, 2 * DOWEL_IN_NEWEL, DOWEL_IN_NEWEL, in_tread });
	b.text = "dowel, newel to tread";
	for (int i = 0; i < 2; i++) {
		double z = post_across(p, at.in);
		b.at = post_mouth(vec3(0, i ? middle + out : at.front, z), post_back, post_down);
		post_drill(list, p, b);
	}
}

/* Plumb under the tread, of the stringer's wood that the bolt may take. */
static double depth_in_string(struct arena *a, const struct post *p)
{
	const struct rod *r = p->rod;
	struct stand at = side_stand(r, p->side->hand);
	double x = p->end.newel_x + p->section / 2 + foot_bits(p).bolt / 2;
	double block = stringers_have_block(r) ? r->job->stringers.block_thickness : 0;
	double under = fmax(sawtooth_edges(a, &at).lower + r->slope * x, r->foot + block);
	return fmin(BOLT_IN_STRING, p->end.newel_z - r->tread - under - UNDER_BOLT);
}

/* In from the limit: through the newel's middle, or as near to it as the stringer lies. */
static double over_string(const struct post *p)
{
	double keep = foot_bits(p).bolt / 2 + BESIDE_BOLT;
	double low = p->side->outer + keep, high = p->side->inner - keep;
	return low > high ? (low + high) / 2 : fmin(fmax(p->side->rail, low), high);
}

static bool string_bolt_add(struct pieces *list, const struct post *p)
{
	double depth = depth_in_string(list->arena, p), in = over_string(p);
	double off = p->core / 2 - fabs(in - p->side->rail);
	if (depth < LEAST_IN_STRING || off < LEAST_HALF)
		return false;
	struct bore b = { .text = "newel bolt, through the tread into the stringer" };
	b.mate = bore_round(foot_bits(p).bolt, p->rod->tread + depth);
	b.thread = foot_bits(p).thread;
	b.fixing_length = BOLT_IN_NEWEL + b.mate.depth;
	foot_bolt_add(list, p, vec(p->section / 2, post_across(p, in)), b);
	return true;
}

/* Down through tread and riser block, with a nut let in under that: half-way between the stringer
 * and the outer face of newel or block. */
static bool block_bolt_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	double block = p->side->start - r->nosing; /* beyond the stringer's face */
	double half = fmin(p->core / 2 - p->side->rail, block) / 2;
	if (!is_on_start(p) || half < LEAST_HALF)
		return false;
	struct bore b = { .text = "newel bolt, up through riser block and tread" };
	b.mate = bore_round(foot_bits(p).bolt, r->tread + rod_first_riser(r));
	b.fixing_length = BOLT_IN_NEWEL + b.mate.depth;
	foot_bolt_add(list, p, vec(p->section / 2, post_across(p, -half)), b);
	return true;
}

enum newel_held foot_on_tread_fix(struct pieces *list, const struct post *p)
{
	struct dowel_place at = dowel_place(p);
	double beside_bolt = (at.diameter + foot_bits(p).bolt) / 2 + BETWEEN;
	bool doweled = at.diameter >= least_tread_dowel(p->rod->job->about.units) &&
		at.front <= p->section / 2 - beside_bolt + NEAR_ENOUGH;
	if (p->is_bottom && p->side->from > 1)
		foot_note_add(list->arena, p, "pack out and screw to the end of the wall as well");
	bool in_block = block_bolt_add(list, p), in_string = string_bolt_add(list, p);
	if (in_block || in_string)
		foot_access_add(list, p, vec(p->section / 2, post_across(p, over_string(p))));
	if (doweled)
		tread_dowels_add(list, p, at);
	if (!doweled)
		return NEWEL_WITHOUT_DOWELS;
	return in_block || in_string ? NEWEL_HELD : NEWEL_WITHOUT_BOLT;
}
