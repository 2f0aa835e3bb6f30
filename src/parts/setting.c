#include "parts/setting.h"

#include "parts/baluster.h"
#include "parts/rail_joint.h"

#define MOST_PER_TREAD 12 /* more of them is a screen, not a balustrade */
#define UNIT_ON_FLOOR 3
#define LEAST_SECTION 10.0 /* no thinner one holds a dowel */

static struct setting on_rake(const struct stretch *s, int per_tread)
{
	const struct side *side = s->side;
	const struct rod *r = s->rod;
	/* the top edge of a housed stringer carries them on past the last riser */
	int treads = side->to - side->from + (s->feet == FEET_ON_EDGE ? 2 : 1);
	return (struct setting){
		.stretch = s,
		.per_tread = per_tread,
		.section = r->job->balusters.section,
		.start = (side->from - 1) * r->run,
		.pitch = r->run / per_tread,
		.count = treads * per_tread,
	};
}

/* How far the panels of a newel lie behind its face: a ball beside it has that much more room. */
static double newel_recess(const struct job_newels *n)
{
	return n->build == NEWEL_PANELLED ? n->panels.strip_thickness : 0;
}

/* As few as keep the gap, all gaps equal: n = (clear - gap) / (section + gap), rounded up. */
static struct setting on_floor(const struct stretch *s, double limit)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	double clear = s->to - s->from;
	double gap = limit - 2 * baluster_flat(s->rod->job) - newel_recess(&s->rod->job->newels);
	double n = ceil((clear - gap) / (b->section + gap) - NEAR_ENOUGH);
	struct setting set = { .stretch = s, .section = b->section };
	set.per_tread = b->per_tread > 0 ? b->per_tread : UNIT_ON_FLOOR;
	set.count = n > 0 ? (int)n : 0;
	set.pitch = (clear + b->section) / (set.count + 1);
	set.start = s->from + set.pitch - b->section;
	return set;
}

double setting_front(const struct setting *s, int i)
{
	return s->start + i * s->pitch;
}

bool setting_is_placed(const struct setting *s, int i)
{
	double x = setting_front(s, i);
	return x >= s->stretch->from - NEAR_ENOUGH &&
		x + s->section <= s->stretch->to + NEAR_ENOUGH;
}

/* A clear distance, and what it is between. */
struct gap_found {
	double wide;
	const char *where;
};

static struct gap_found wider(struct gap_found one, double wide, const char *where)
{
	return wide > one.wide + NEAR_ENOUGH ? (struct gap_found){ wide, where } : one;
}

static const char *end_words(const struct stretch *s, struct rail_end e)
{
	bool foot = e.x < (s->from + s->to) / 2;
	if (rail_end_has_newel(e))
		return foot ? "beside the bottom newel" : "beside the top newel";
	return foot ? "at the foot of the rail" : "at the head of the rail";
}

/* The largest clear distance, newels and the wall's end counted in, and the flats of round ones. */
static struct gap_found largest_gap(const struct setting *s)
{
	const struct stretch *t = s->stretch;
	struct gap_found largest = { 0, "between them" };
	double before = t->from, flat = baluster_flat(t->rod->job);
	const char *where = end_words(t, t->foot);
	for (int i = 0; i < s->count; i++) {
		if (!setting_is_placed(s, i))
			continue;
		largest = wider(largest, setting_front(s, i) + flat - before, where);
		before = setting_front(s, i) + s->section - flat;
		where = "between them";
	}
	return wider(largest, t->to - before, end_words(t, t->head));
}

static double room_for_one(const struct setting *s)
{
	return s->pitch - (infill_on_treads(s->stretch) ? s->stretch->rod->nosing : 0);
}

static bool fits_tread(const struct setting *s)
{
	return s->section <= room_for_one(s) + NEAR_ENOUGH;
}

/* How many go to a tread: the fewest that leave no gap over the limit. */
struct number {
	int n;
	struct gap_found gap; /* the largest that they leave */
};

/* Where no number does it, an end that does not move is in the way: then the fewest of those that
 * leave the smallest gap. */
static struct number fewest(const struct stretch *stretch, double limit)
{
	struct number best = { 0 };
	for (int n = 1; n <= MOST_PER_TREAD; n++) {
		struct setting s = on_rake(stretch, n);
		struct gap_found gap = largest_gap(&s);
		if (n == 1 || (gap.wide < best.gap.wide - NEAR_ENOUGH && fits_tread(&s)))
			best = (struct number){ n, gap };
		if (best.gap.wide <= limit + NEAR_ENOUGH)
			break;
	}
	return best;
}

/* The gap is a wish: what is drawn beside it is what the job says, or comes nearest. */
static void warn_of_gap(struct arena *a, const struct stretch *s, struct number given,
	struct number enough, struct diags *d)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	double limit = b->largest_gap;
	const char *hint = enough.gap.wide <= limit + NEAR_ENOUGH
		? arena_printf(a, "write balusters.per_tread: %d", enough.n)
		: arena_printf(a, "write balusters.largest_gap: %s",
			  length_say_least(a, job_lettering(s->rod->job), given.gap.wide));
	diag_warning(d, rod_pos(s->rod, b->src, b->per_tread > 0 ? "per_tread" : "largest_gap"),
		hint, "balusters: %d to a tread leave a gap of %s %s, more than largest_gap, %s",
		given.n, infill_letter(s, a, given.gap.wide), given.gap.where,
		infill_letter(s, a, limit));
}

static int per_tread(struct arena *a, const struct stretch *s, struct diags *d)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	struct number enough = fewest(s, b->largest_gap), given = enough;
	if (b->per_tread > 0) {
		struct setting set = on_rake(s, b->per_tread);
		given = (struct number){ b->per_tread, largest_gap(&set) };
	}
	if (given.gap.wide > b->largest_gap + NEAR_ENOUGH)
		warn_of_gap(a, s, given, enough, d);
	return given.n;
}

/* The last one on a tread must stay clear of the nosing above. */
static bool fits(struct arena *a, const struct setting *set, struct diags *d)
{
	const struct stretch *s = set->stretch;
	bool on_tread = infill_on_treads(s);
	double room = room_for_one(set);
	if (fits_tread(set))
		return true;
	diag_error(d, rod_pos(s->rod, s->rod->job->balusters.src, "section"),
		room < LEAST_SECTION
			? "take fewer balusters or a larger gap"
			: arena_printf(a, "%s, or take fewer",
				  job_write_most(a, s->rod->job, "balusters.section", room)),
		on_tread ? "%d balusters of %s to a tread: the last one runs %s into the nosing "
			   "above"
			 : "%d balusters of %s in a row run %s into each other",
		s->feet == FEET_ON_FLOOR ? set->count : set->per_tread,
		infill_letter(s, a, set->section), infill_letter(s, a, set->section - room));
	return false;
}

/* All must have a length. */
static bool has_height(struct arena *a, const struct setting *set, struct diags *d)
{
	const struct stretch *s = set->stretch;
	const struct job_rail *rail = &s->rod->job->rail;
	double slope = infill_foot_is_raked(s) ? s->slope * set->section : 0;
	double height = infill_head(s, set->start) - infill_foot(s, set->start) - slope;
	if (height >= 1)
		return true;
	diag_error(d, rod_pos(s->rod, rail->src, "height"),
		s->run ? "make the level run's rail higher, or what lies under and over the "
			 "balusters thinner"
		       : arena_printf(a, "%s, or make what lies under and over them thinner",
				 job_write_least(a, s->rod->job, "rail.height",
					 rail->height + 2 - height)),
		"a rail %s high and %s deep leaves no room for balusters",
		infill_letter(s, a, rail->height), infill_letter(s, a, rail->depth));
	return false;
}

struct setting setting_make(struct arena *a, const struct stretch *s, struct diags *d)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	struct setting set = { .stretch = s };
	if (s->feet == FEET_ON_FLOOR) {
		set = on_floor(s, b->largest_gap);
	} else {
		set = on_rake(s, per_tread(a, s, d));
	}
	if (!fits(a, &set, d) || !has_height(a, &set, d))
		set.count = 0;
	return set;
}
