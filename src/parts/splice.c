#include "parts/splice.h"

#include "lists/yard.h"
#include "pitchboard/rail.h"

/* From a joint to the end of the piece (24 in), to the joint of a piece that this one lies on, and
 * to any other hole: common practice. */
#define FROM_END 610.0
#define STAGGER 300.0
#define STAGGER_LEAST 75.0 /* where there is no place so far off */
#define CLEAR 6.0

/* Places are tried so far apart. */
#define RULE_INCHES 0.25
#define RULE_MM 5.0

/* A piece that is too long, while it is being joined. */
struct splicing {
	struct arena *arena;
	const struct job *job;
	struct part *part;
	double longest;     /* that a length may be */
	double overlap;     /* of two lengths, along the piece */
	struct box3 own;    /* of the piece, in its axes */
	struct box3 *taken; /* by what is drilled into it, and where its neighbours are joined */
	int taken_count;
	struct splice_holes holes;
	double stagger; /* from the joints of its neighbours */
};

/* ---- what is taken ---- */

static void take(struct splicing *s, struct box3 b)
{
	if (box3_near(b, s->own, 1))
		s->taken[s->taken_count++] = b;
}

/* A hole with what it leads on to in the piece on the other side of its joint, and what is driven
 * beyond its bottom.  A brad through a scarf does no harm. */
static void take_bores(struct splicing *s, const struct part *p)
{
	for (const struct bore *b = p->bores; b; b = b->next) {
		if (b->fixing == FIXING_BRAD && s->part->splice == SPLICE_SCARF)
			continue;
		struct frame at =
			frame_within(s->part->places[0], frame_compose(p->places[0], b->at));
		take(s, bore_box(at, b->size, -b->size.depth - b->driven, b->mate.depth));
	}
}

/* Nor is what is worked into the piece itself cut through. */
static void take_features(struct splicing *s)
{
	for (const struct feature *f = s->part->features; f; f = f->next) {
		struct box at = outline_extent(f->at);
		struct box3 b = s->own;
		b.low.x = at.x0;
		b.high.x = at.x1;
		if (f->at.n > 0)
			take(s, b);
	}
}

/* Joints of pieces that lie on each other are staggered. */
static void take_joint(struct splicing *s, const struct part *p)
{
	struct box3 all = solids_extent(p->solids);
	struct box3 end = box3_empty();
	if (p == s->part || !part_goes_on(p))
		return;
	for (int i = 0; i < 4; i++) {
		struct vec3 at = vec3(all.high.x, i & 1 ? all.low.y : all.high.y,
			i & 2 ? all.low.z : all.high.z);
		end = box3_add(end,
			frame_place_back(s->part->places[0], frame_place(p->places[0], at)));
	}
	end.low.x -= s->stagger;
	end.high.x += s->stagger;
	take(s, end);
}

static int count_taken(const struct part *own, struct part *const *families, int n)
{
	int count = 0;
	for (const struct feature *f = own->features; f; f = f->next)
		count++;
	for (int i = 0; i < n; i++)
		for (const struct part *p = families[i]; p; p = p->next, count++)
			for (const struct bore *b = p->bores; b; b = b->next)
				count++;
	return count;
}

static void take_all(struct splicing *s, struct part *const *families, int n)
{
	s->taken = NEW_N(s->arena, struct box3, count_taken(s->part, families, n) + 1);
	take_features(s);
	for (int i = 0; i < n; i++)
		for (const struct part *p = families[i]; p; p = p->next) {
			take_bores(s, p);
			take_joint(s, p);
		}
}

/* ---- where ---- */

/* So far along the piece: square for a bolt, else mitred through its thickness. */
static struct end_plane cut_at(const struct splicing *s, double x)
{
	return (struct end_plane){ x, 0, s->part->splice == SPLICE_SCARF ? 1 : 0 };
}

static bool is_clear_of(const struct splicing *s, struct box3 b)
{
	for (int i = 0; i < s->taken_count; i++)
		if (box3_near(b, s->taken[i], CLEAR))
			return false;
	return true;
}

static bool holes_are_clear(const struct splicing *s, double x)
{
	for (int i = 0; i < s->holes.n; i++) {
		const struct bore *b = &s->holes.bores[i];
		struct box3 box = bore_box(b->at, b->size, -b->size.depth, b->mate.depth);
		box.low.x += x;
		box.high.x += x;
		if (!is_clear_of(s, box))
			return false;
	}
	return true;
}

static bool can_be_at(const struct splicing *s, double x)
{
	struct box3 joint = s->own;
	joint.low.x = x;
	joint.high.x = x + s->overlap;
	return is_clear_of(s, joint) && holes_are_clear(s, x) &&
		splice_can_cut(s->part, cut_at(s, x));
}

/* The nearest place to an even division where nothing is in the way; NAN: there is none. */
static double place_of(const struct splicing *s, int lengths)
{
	double rule = round_size(s->job->about.units, RULE_INCHES, RULE_MM);
	double long_each = s->longest - s->overlap, all = s->own.high.x - s->overlap;
	double wanted = round(all / lengths / rule) * rule;
	double from = fmax(FROM_END, all - (lengths - 1) * long_each);
	double to = fmin(long_each, all - (lengths - 1) * FROM_END);
	for (int i = 0; i * rule / 2 <= to - from + rule; i++) {
		int steps = (i + 1) / 2 * (i & 1 ? 1 : -1); /* 0, 1, -1, 2 ... */
		double x = wanted + rule * steps;
		if (x >= from && x <= to && can_be_at(s, x))
			return x;
	}
	return NAN;
}

/* ---- the lengths ---- */

/* Where the length begins and ends, of what is known of the whole rail. */
static const struct rail *rail_between(struct arena *a, const struct part *p, double from,
	double to)
{
	const struct rail *whole = p->rail;
	struct rail *r = NEW(a, struct rail);
	double sine = sin(whole->pitch), deep = whole->profile.depth * cos(whole->pitch);
	*r = *whole;
	r->between = (to - from) * cos(whole->pitch);
	if (from > 0) {
		double under = whole->foot.under + from * sine;
		r->foot = (struct rail_meeting){ .under = under, .top = under + deep };
	}
	if (to < p->size.length) {
		double under = whole->foot.under + to * sine;
		r->head = (struct rail_meeting){ .under = under, .top = under + deep };
	}
	return r;
}

static void say_scarf(struct arena *a, struct part *p)
{
	static const char words[] = "scarf glued, over solid wood";
	p->note = p->note ? arena_printf(a, "%s; %s", p->note, words) : words;
}

/* The first length; what is left of the piece follows it. */
static struct part *cut_off(const struct splicing *s, double x)
{
	struct part *p = s->part, whole = *p, *rest = splice_cut(s->arena, p, cut_at(s, x));
	for (int i = 0; i < s->holes.n; i++) {
		struct bore b = s->holes.bores[i];
		b.at.origin.x += x;
		piece_bore(s->arena, p, b);
	}
	if (whole.rail) {
		p->rail = rail_between(s->arena, &whole, 0, x);
		rest->rail = rail_between(s->arena, &whole, x, whole.size.length);
	}
	return rest;
}

static void name_lengths(struct arena *a, struct part *first, int count)
{
	const char *whole = first->name;
	for (int i = 1; i <= count; i++, first = first->next) {
		first->length_of = (struct part_length){ i, count, whole };
		first->name = arena_printf(a, "%s, %d of %d", whole, i, count);
		if (first->splice == SPLICE_SCARF)
			say_scarf(a, first);
	}
}

static int lengths_wanted(const struct splicing *s)
{
	double more = s->longest - s->overlap;
	if (part_sawn_length(s->part) <= s->longest + NEAR_ENOUGH || more < FROM_END)
		return 1;
	return (int)ceil((s->own.high.x - s->overlap) / more - NEAR_ENOUGH);
}

static double place_among(struct splicing *s, struct part *const *families, int n, int lengths)
{
	static const double staggers[] = { STAGGER, STAGGER_LEAST };
	double x = NAN;
	s->own = solids_extent(s->part->solids);
	for (int i = 0; i < 2 && isnan(x); i++) {
		s->stagger = staggers[i];
		s->taken_count = 0;
		take_all(s, families, n);
		x = place_of(s, lengths);
	}
	return x;
}

/* As long as there is a place for a joint; what is too long even so is told by the lists. */
static void join(struct splicing *s, struct part *const *families, int n)
{
	struct part *first = s->part;
	int lengths = lengths_wanted(s), made = 1;
	for (; lengths > 1; lengths--, made++) {
		double x = place_among(s, families, n, lengths);
		if (isnan(x))
			break;
		s->part = cut_off(s, x);
	}
	if (made > 1)
		name_lengths(s->arena, first, made);
}

static struct splicing splicing_of(struct arena *a, const struct job *job, struct part *p)
{
	struct splicing s = { .arena = a, .job = job, .part = p, .own = solids_extent(p->solids) };
	s.longest = longest_piece(a, job, p);
	s.overlap = p->splice == SPLICE_SCARF ? p->size.thickness : 0;
	if (p->splice == SPLICE_BOLT)
		s.holes = splice_holes_of(job, p);
	return s;
}

void splices_make(struct arena *a, const struct job *job, struct part **families, int n)
{
	if (job->stock.long_pieces == LONG_PIECES_WHOLE)
		return;
	for (int i = 0; i < n; i++)
		for (struct part *p = families[i], *next; p; p = next) {
			next = p->next;
			if (p->splice == SPLICE_NONE)
				continue;
			struct splicing s = splicing_of(a, job, p);
			if (p->splice == SPLICE_SCARF || s.holes.n > 0)
				join(&s, families, n);
		}
}
