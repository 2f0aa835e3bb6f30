#include "parts/piece.h"

/*
 * Balusters: the run divided evenly, the first on every tread with its front in
 * line with the riser's face (as Hatfield sets them: the first centre half its
 * thickness from the riser), tops cut to the rake of the rail.
 *
 *        |    .|'                     long point
 *        |  .' |              short   |
 *        |.'|  |              point __|'|
 *        |  |  |                   |    |
 *      __|__|__|__ tread           |____|
 *        |
 *      riser's face
 *
 * On a housed stringer they stand on its top edge, foot cut to the same rake.
 */

#define MOST_PER_TREAD 12 /* more of them is a screen, not a balustrade */

/* How one side is set out. */
struct setting {
	const struct rod *rod;
	const struct side *side;
	int per_tread;
	double section, pitch; /* front to front */
	int count;             /* places from the first open riser on; ends leave some out */
};

static struct setting setting_of(const struct rod *r, const struct side *side, int per_tread)
{
	struct setting s = { .rod = r, .side = side, .per_tread = per_tread };
	/* the top edge of a housed stringer carries them on past the last riser */
	int treads = side->to - side->from + (side->kind == STRINGER_HOUSED ? 2 : 1);
	s.section = r->job->balusters.section;
	s.pitch = r->run / per_tread;
	s.count = treads * per_tread;
	return s;
}

static double front_of(const struct setting *s, int i)
{
	return (s->side->from - 1) * s->rod->run + i * s->rod->run / s->per_tread;
}

/* Not where a newel stands, nor beyond the rail. */
static bool is_placed(const struct setting *s, int i)
{
	double x = front_of(s, i);
	return x >= s->side->foot.x - NEAR_ENOUGH &&
		x + s->section <= s->side->head.x + NEAR_ENOUGH;
}

/* The largest clear distance, newels and the wall's end counted in. */
static double largest_gap(const struct setting *s)
{
	double largest = 0, before = s->side->foot.x;
	for (int i = 0; i < s->count; i++) {
		if (!is_placed(s, i))
			continue;
		largest = fmax(largest, front_of(s, i) - before);
		before = front_of(s, i) + s->section;
	}
	return fmax(largest, s->side->head.x - before);
}

/* How many go to a tread so that no gap is over the limit; 0: none does. */
static int fewest(const struct rod *r, const struct side *side, double limit)
{
	for (int n = 1; n <= MOST_PER_TREAD; n++) {
		struct setting s = setting_of(r, side, n);
		if (largest_gap(&s) <= limit + NEAR_ENOUGH)
			return n;
	}
	return 0;
}

static const char *letter(struct arena *a, const struct rod *r, double mm)
{
	return length_say(a, job_lettering(r->job), mm);
}

/* The number to a tread, or 0 and an error. */
static int per_tread(struct arena *a, const struct rod *r, const struct side *side, struct diags *d)
{
	const struct job_balusters *b = &r->job->balusters;
	double limit = b->largest_gap > 0 ? b->largest_gap : INFINITY;
	int enough = fewest(r, side, limit);
	if (enough == 0)
		diag_error(d, rod_pos(r, b->src, "largest_gap"), "allow a larger gap",
			"no number of balusters keeps every gap to %s", letter(a, r, limit));
	if (b->per_tread == 0 || enough == 0)
		return enough;
	struct setting s = setting_of(r, side, b->per_tread);
	double gap = largest_gap(&s);
	if (gap <= limit + NEAR_ENOUGH)
		return b->per_tread;
	diag_error(d, rod_pos(r, b->src, "per_tread"), NULL,
		"%d to a tread leave a gap of %s, more than largest_gap, %s: it takes %d",
		b->per_tread, letter(a, r, gap), letter(a, r, limit), enough);
	return 0;
}

/* The last one on a tread must stay clear of the nosing above, and all must have a length. */
static bool fits(struct arena *a, const struct setting *s, struct diags *d)
{
	const struct rod *r = s->rod;
	const struct job_balusters *b = &r->job->balusters;
	bool housed = s->side->kind == STRINGER_HOUSED;
	double room = s->pitch - (housed ? 0 : r->nosing);
	double over = housed ? r->job->stringers.margin / r->cosine : 0;
	double clear = r->job->rail.height - r->job->rail.depth / r->cosine - over;
	if (s->section > room + NEAR_ENOUGH)
		diag_error(d, rod_pos(r, b->src, "section"),
			"take thinner or fewer balusters, or a smaller nosing",
			"%d balusters of %s to a tread: the last one runs %s into the nosing above",
			s->per_tread, letter(a, r, s->section), letter(a, r, s->section - room));
	else if (clear < 1)
		diag_error(d, rod_pos(r, r->job->rail.src, "height"), NULL,
			"a rail %s high and %s deep leaves no room for balusters",
			letter(a, r, r->job->rail.height), letter(a, r, r->job->rail.depth));
	else
		return true;
	return false;
}

static struct outline shape(struct arena *a, const struct baluster *b, double section, double lift)
{
	struct path p = path_begin(a, 4);
	path_to(&p, 0, 0);
	path_to(&p, b->short_point, 0);
	path_to(&p, lift + b->long_point, section);
	path_to(&p, lift, section);
	return path_close(p);
}

static void baluster_add(struct pieces *list, const struct setting *s, int i)
{
	struct arena *a = list->arena;
	const struct rod *r = s->rod;
	bool housed = s->side->kind == STRINGER_HOUSED;
	double x = front_of(s, i), back = x + s->section;
	int step = s->side->from + i / s->per_tread;
	double foot = housed ? rod_housed_edge_z(r, x) : step * r->rise;
	double lift = housed ? s->section * r->slope : 0;
	double under = r->job->rail.height - r->job->rail.depth / r->cosine;
	struct baluster *b = NEW(a, struct baluster);
	b->short_point = rod_nosing_z(r, x) + under - foot;
	b->long_point = rod_nosing_z(r, back) + under - foot - lift;
	b->rake = r->pitch;
	b->foot_rake = housed ? r->pitch : 0;
	b->from_riser = (i % s->per_tread) * s->pitch + s->section / 2;
	double y = rod_y(r, s->side, s->side->rail) - s->section / 2;
	struct part *p =
		piece_add(list, "baluster", r->job->material.balustrade, rod_post(r, x, y, foot));
	p->baluster = b;
	p->size = (struct part_size){ lift + b->long_point, s->section, s->section };
	p->outline = shape(a, b, s->section, lift);
	p->start.mitre = b->foot_rake;
	p->end.mitre = b->rake;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, s->section);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_baluster };
	struct rod r = rod_make(s, f);
	int before = d->errors;
	/* what is wrong on both sides is said once */
	for (int i = 0; i < 2 && d->errors == before; i++) {
		const struct side *side = &r.sides[i];
		if (!side->is_open)
			continue;
		int n = per_tread(a, &r, side, d);
		if (n == 0)
			continue;
		struct setting set = setting_of(&r, side, n);
		if (!fits(a, &set, d))
			continue;
		for (int k = 0; k < set.count; k++)
			if (is_placed(&set, k))
				baluster_add(&list, &set, k);
	}
	return list.first;
}

const struct part_kind part_baluster = { "baluster", "B", make };
