#include "parts/setting.h"

#include "parts/baluster.h"
#include "parts/rail_joint.h"

#define MOST_PER_TREAD 12 /* more of them is a screen, not a balustrade */
#define UNIT_ON_FLOOR 3

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

/* How many go to a tread so that no gap is over the limit; 0: none does. */
static int fewest(const struct stretch *stretch, double limit)
{
	for (int n = 1; n <= MOST_PER_TREAD; n++) {
		struct setting s = on_rake(stretch, n);
		if (largest_gap(&s).wide <= limit + NEAR_ENOUGH)
			return n;
	}
	return 0;
}

/* The number to a tread, or 0 and an error. */
static int per_tread(struct arena *a, const struct stretch *s, double limit, struct diags *d)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	int enough = fewest(s, limit);
	if (enough == 0)
		diag_error(d, rod_pos(s->rod, b->src, "largest_gap"), "allow a larger gap",
			"no number of balusters keeps every gap to %s", infill_letter(s, a, limit));
	if (b->per_tread == 0 || enough == 0)
		return enough;
	struct setting set = on_rake(s, b->per_tread);
	struct gap_found gap = largest_gap(&set);
	if (gap.wide <= limit + NEAR_ENOUGH)
		return b->per_tread;
	diag_error(d, rod_pos(s->rod, b->src, "per_tread"), NULL,
		"%d to a tread leave a gap of %s %s, more than largest_gap, %s: it takes %d",
		b->per_tread, infill_letter(s, a, gap.wide), gap.where, infill_letter(s, a, limit),
		enough);
	return 0;
}

/* The last one on a tread must stay clear of the nosing above. */
static bool fits(struct arena *a, const struct setting *set, struct diags *d)
{
	const struct stretch *s = set->stretch;
	bool on_tread = s->feet == FEET_ON_TREADS && !infill_has_shoe(s->rod->job);
	double room = set->pitch - (on_tread ? s->rod->nosing : 0);
	if (set->section <= room + NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(s->rod, s->rod->job->balusters.src, "section"),
		"take thinner or fewer balusters, or a smaller nosing",
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
	if (infill_head(s, set->start) - infill_foot(s, set->start) - slope >= 1)
		return true;
	diag_error(d, rod_pos(s->rod, rail->src, "height"), NULL,
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
		int n = per_tread(a, s, b->largest_gap, d);
		if (n == 0)
			return set;
		set = on_rake(s, n);
	}
	if (!fits(a, &set, d) || !has_height(a, &set, d))
		set.count = 0;
	return set;
}
