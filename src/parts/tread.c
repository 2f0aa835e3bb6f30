#include "parts/tread.h"

#include "parts/nosing.h"
#include "parts/start.h"

/*
 * Treads, glued up from a body, a front strip that carries the nosing, and at
 * every open end a return strip mitred to it.  Seen from above, the front
 * nearest:
 *
 *                ___________________________
 *               |                        |  |
 *     wall      |  body                  |  | return
 *               |________________________|  |
 *               |  front strip            \_|
 *               |__________________________\|
 *
 * Where a newel or the end of a wall stands in the way all of them are cut out
 * for it as if they were one piece: what the mitre would have been is gone, and
 * front strip and return end square.
 */

/* Depth of a tread body below which there is nothing to glue to. */
#define LEAST_BODY 10.0

/* The end of a body from front to back, in from the limit and back from the nosing's front. */
static struct cuts_across body_cuts(const struct tread_plan *t, const struct tread_end *e)
{
	struct cuts_across c = cuts_between(t->rod->job->treads.strip_width, t->depth);
	for (int i = 0; i < e->gaps.n; i++) {
		cuts_add(&c, e->gaps.at[i].from);
		cuts_add(&c, e->gaps.at[i].to);
	}
	return c;
}

static double body_end(const struct tread_plan *t, const struct tread_end *e, double back)
{
	return rod_along(t->rod, e->side, fmax(e->body, tread_end_gap(e, back)));
}

static void strike_right(struct path *p, const struct tread_plan *t)
{
	const struct tread_end *e = &t->ends[HAND_RIGHT];
	struct cuts_across c = body_cuts(t, e);
	for (int i = 0; i + 1 < c.n; i++) {
		double x = body_end(t, e, (c.at[i] + c.at[i + 1]) / 2);
		path_straight_to(p, x, c.at[i]);
		path_straight_to(p, x, c.at[i + 1]);
	}
}

static void strike_left(struct path *p, const struct tread_plan *t)
{
	const struct tread_end *e = &t->ends[HAND_LEFT];
	struct cuts_across c = body_cuts(t, e);
	for (int i = c.n - 1; i > 0; i--) {
		double x = body_end(t, e, (c.at[i] + c.at[i - 1]) / 2);
		path_straight_to(p, x, c.at[i]);
		path_straight_to(p, x, c.at[i - 1]);
	}
}

/* The next notch of the back edge on the way from right to left. */
static const struct gap *gap_before(const struct gaps *back, double along)
{
	const struct gap *next = NULL;
	for (int i = 0; i < back->n; i++)
		if (back->at[i].to <= along && (!next || back->at[i].to > next->to))
			next = &back->at[i];
	return next;
}

static void strike_back(struct path *p, const struct tread_plan *t)
{
	double along = t->rod->width;
	for (const struct gap *g; (g = gap_before(&t->back, along)); along = g->from) {
		path_straight_to(p, g->to, t->depth);
		path_straight_to(p, g->to, t->depth - g->in);
		path_straight_to(p, g->from, t->depth - g->in);
		path_straight_to(p, g->from, t->depth);
	}
}

static struct outline body_outline(struct arena *a, const struct tread_plan *t)
{
	struct path p = path_begin(a, 4 * (MOST_BANDS + MOST_GAPS));
	strike_right(&p, t);
	strike_back(&p, t);
	strike_left(&p, t);
	return path_close(p);
}

struct makeup tread_makeup(const struct job *job, double width)
{
	int boards = (int)ceil(width / job->treads.widest_board - NEAR_ENOUGH);
	if (boards < 2)
		return (struct makeup){ 0 };
	return (struct makeup){ .boards = boards, .board_width = width / boards };
}

static void body_add(struct pieces *list, const struct tread_plan *t)
{
	struct arena *a = list->arena;
	const struct rod *r = t->rod;
	struct outline o = body_outline(a, t);
	struct box at = outline_extent(o);
	struct part *p = piece_add(list, "tread body", r->job->material.treads,
		rod_flat(r, at.x0, tread_front(t) + at.y0, t->step * r->rise - r->tread));
	p->outline = outline_moved(a, o, -at.x0, -at.y0);
	p->size = (struct part_size){ at.x1 - at.x0, at.y1 - at.y0, r->tread };
	p->makeup = tread_makeup(r->job, p->size.width);
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, r->tread);
	tread_notches_add(a, p, t, at);
}

static void add_strip_features(struct arena *a, struct part *p, const struct rod *r,
	const struct nosing *n)
{
	nosing_add(a, p, r->job, n);
	if (p->start.mitre > 0 || p->end.mitre > 0)
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_MITRE,
				.angle = PI / 4,
				.text = "front corner mitred 45 degrees" });
}

/* Where a band of the front strip ends, along from the left-hand limit. */
static struct end_plane strip_end(const struct tread_plan *t, const struct tread_end *e,
	double back)
{
	double gap = tread_end_gap(e, back), mitre = tread_end_mitre(e, back);
	double way = e->side->hand == HAND_LEFT ? 1 : -1;
	if (gap > mitre)
		return (struct end_plane){ rod_along(t->rod, e->side, gap), 0, 0 };
	if (e->overhang > 0 && back < e->width)
		return (struct end_plane){ rod_along(t->rod, e->side, e->strip), way, 0 };
	return (struct end_plane){ rod_along(t->rod, e->side, mitre), 0, 0 };
}

static void add_strip_cuts(struct cuts_across *c, const struct tread_end *e)
{
	cuts_add(c, e->overhang > 0 ? e->width : 0);
	for (int i = 0; i < e->gaps.n; i++) {
		cuts_add(c, e->gaps.at[i].from);
		cuts_add(c, e->gaps.at[i].to);
		cuts_add(c, e->gaps.at[i].in - e->strip); /* there it crosses the mitre */
	}
}

static struct bands strip_bands(const struct tread_plan *t)
{
	struct cuts_across c = cuts_between(0, t->rod->job->treads.strip_width);
	struct bands b = { .n = 0 };
	add_strip_cuts(&c, &t->ends[HAND_LEFT]);
	add_strip_cuts(&c, &t->ends[HAND_RIGHT]);
	for (int i = 0; i + 1 < c.n; i++) {
		double middle = (c.at[i] + c.at[i + 1]) / 2;
		bands_add(&b,
			(struct band){ c.at[i], c.at[i + 1],
				strip_end(t, &t->ends[HAND_LEFT], middle),
				strip_end(t, &t->ends[HAND_RIGHT], middle) });
	}
	return b;
}

static double steepest_mitre(const struct bands *b, enum side_hand hand)
{
	double mitre = 0;
	for (int i = 0; i < b->n; i++)
		mitre = fmax(mitre,
			atan(fabs(hand == HAND_LEFT ? b->at[i].near.by_y : b->at[i].far.by_y)));
	return mitre;
}

static void strip_add(struct pieces *list, const struct tread_plan *t)
{
	struct arena *a = list->arena;
	const struct rod *r = t->rod;
	double width = r->job->treads.strip_width;
	struct bands b = strip_bands(t);
	struct box at = outline_extent(bands_outline(a, &b));
	bands_shift(&b, -at.x0);
	struct part *p = piece_add(list, "tread front strip", r->job->material.treads,
		rod_flat(r, at.x0, tread_front(t), t->step * r->rise - r->tread));
	p->outline = bands_outline(a, &b);
	p->size = (struct part_size){ at.x1 - at.x0, width, r->tread };
	p->start.mitre = steepest_mitre(&b, HAND_LEFT);
	p->end.mitre = steepest_mitre(&b, HAND_RIGHT);
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	p->section = nosing_outline(a, &n, width);
	p->solids = bands_solids(a, &b, p->section);
	add_strip_features(a, p, r, &n);
	tread_notches_add(a, p, t, at);
}

static void tread_add(struct pieces *list, const struct rod *r, int step)
{
	struct tread_plan t = tread_plan_make(r, step);
	list->unit = tread_unit(&t);
	if (step == 1 && rod_has_start(r)) {
		list->unit = 0; /* one piece alone is no unit */
		start_tread_add(list, &t);
		return;
	}
	body_add(list, &t);
	strip_add(list, &t);
	for (int i = 1; i >= 0; i--)
		if (t.ends[i].overhang > 0)
			return_add(list, &t, &t.ends[i]);
}

/* One size that only goes with another: a complaint when it does not hold. */
struct demand {
	bool holds;
	const char *key;
	double size;
	const char *fault;
	const char *mend; /* the key to set */
	double limit;     /* and to what; */
	int way;          /* 1: at least, -1: at most */
};

static void demand(struct arena *a, const struct rod *r, struct diags *d, struct demand m)
{
	const char *path = arena_printf(a, "treads.%s", m.mend);
	if (!m.holds)
		diag_error(d, rod_pos(r, r->job->treads.src, m.key),
			m.way > 0 ? job_write_least(a, r->job, path, m.limit)
				  : job_write_most(a, r->job, path, m.limit),
			"treads.%s: %s %s", m.key, length_say(a, job_lettering(r->job), m.size),
			m.fault);
}

static void returns_fit(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_treads *t = &r->job->treads;
	double round = nosing_make(t, r->tread).reach + 1, past = r->run - t->side_overhang;
	demand(a, r, d,
		(struct demand){ t->side_overhang >= round, "side_overhang", t->side_overhang,
			"does not hold the rounded nosing", "side_overhang", round, 1 });
	demand(a, r, d,
		(struct demand){ t->return_past <= past, "return_past", t->return_past,
			"reaches under the tread after next", "return_past", past, -1 });
}

/* The wall in front of the open steps leaves the first of them room for its newel. */
static void wall_ends_fit(struct arena *a, const struct rod *r, const struct side *side,
	struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	bool newel = side->foot.kind == RAIL_END_TREAD_NEWEL;
	double post = r->job->newels.section + rod_cap_overhang(r);
	double most = r->run - r->nosing - (newel ? post : LEAST_BODY);
	const char *hand = hand_word(side->hand);
	if (!side->is_open || side->from == 1 || side->job->wall_past <= most + NEAR_ENOUGH)
		return;
	diag_error(d, rod_pos(r, side->job->src, "wall_past"),
		most < 0 ? job_write_most(a, r->job, "newels.section",
				   fmax(r->job->newels.section + most - side->job->wall_past, 1))
			 : job_write_most(a, r->job, arena_printf(a, "stair.%s.wall_past", hand),
				   most),
		"stair.%s.wall_past: %s leaves no room on step %d%s", hand,
		length_say(a, l, side->job->wall_past), side->from, newel ? " for its newel" : "");
}

/* So far past its carriage a tread may reach to a wall and carry itself (common practice). */
#define REACHES_ALONE 100.0

static void warn_of_reach(struct arena *a, const struct rod *r, struct diags *d)
{
	double gap = r->job->stringers.wall_gap;
	bool at_wall = false;
	for (int i = 0; i < 2; i++)
		at_wall = at_wall || (!r->sides[i].is_open && r->sides[i].kind != STRINGER_HOUSED);
	if (at_wall && gap > REACHES_ALONE)
		diag_warning(d, rod_pos(r, r->job->stringers.src, "wall_gap"),
			"carry them on a ledger at the wall, or on a carriage more in lengths",
			"stringers.wall_gap: treads reach %s past their carriage to the wall",
			length_say(a, job_lettering(r->job), gap));
}

/* Sizes that only make a tread together. */
static bool sizes_fit(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_treads *t = &r->job->treads;
	int before = d->errors;
	double round = nosing_make(t, r->tread).reach;
	double lip = r->nosing + r->riser, body = r->run + r->nosing - LEAST_BODY;
	demand(a, r, d,
		(struct demand){ t->strip_width >= round - NEAR_ENOUGH, "strip_width",
			t->strip_width, "does not hold the rounded nosing", "strip_width", round,
			1 });
	demand(a, r, d,
		(struct demand){ r->riser <= 0 || round <= lip + NEAR_ENOUGH, "nosing_radius",
			round, "leaves nothing over the riser", "nosing", round - r->riser, 1 });
	demand(a, r, d,
		(struct demand){ t->strip_width <= body + NEAR_ENOUGH, "strip_width",
			t->strip_width, "leaves no body of the tread", "strip_width", body, -1 });
	if (rod_has_returns(r))
		returns_fit(a, r, d);
	for (int i = 0; i < 2; i++)
		wall_ends_fit(a, r, &r->sides[i], d);
	warn_of_reach(a, r, d);
	tread_notches_check(a, r, d);
	start_check(a, r, d);
	return d->errors == before;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_tread };
	struct rod r = rod_make(s, f);
	if (!sizes_fit(a, &r, d))
		return NULL;
	for (int i = 1; i <= r.steps; i++)
		tread_add(&list, &r, i);
	return list.first;
}

const struct part_kind part_tread = { "tread", "T", make };
