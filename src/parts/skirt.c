#include "parts/skirt.h"

#include "parts/landing.h"
#include "parts/level_run.h"
#include "parts/nosing.h"
#include "parts/stringer.h"
#include "parts/tread.h"

/*
 * Skirt boards on walls, their upper edge a stated height over the nosing line:
 *
 *                      ____ baseboard of the upper floor
 *                   .'|____
 *                 .'  |         plain: treads and risers butt against its face;
 *               .'   .'         cut round: it is scribed over their ends
 *     ________.'   .'
 *             |  .'
 *     ________|.'__ floor
 *      baseboard
 *
 * It ends plumb in front where its upper edge has come down to the baseboard,
 * and plumb over the upper floor, level with the baseboard there.  In front it
 * stands on what the stair stands on: a finish that is laid later ends at it.  Where the side
 * is open for some steps, it ends plumb with the wall, on the tread that the
 * wall's end stands beside.
 */

/* A plain skirt reaches this far below the corner of tread and riser (common practice). */
#define COVER 25.0

/* It begins at least this far in front of the first nosing (common practice). */
#define LEAST_FRONT 20.0

struct skirt {
	const struct rod *rod;
	double upper;       /* level of its upper edge over x = 0 */
	double front, back; /* its plumb ends */
	double level_from;  /* where its upper edge goes over into the baseboard's at the head */
	int first, last;    /* riser that it goes up first, and last */
};

double wall_skirt_front(const struct rod *r)
{
	const struct job_skirts *j = &r->job->skirts;
	double upper = rod_nosing_z(r, 0) + j->height / r->cosine;
	return fmin((j->baseboard - upper) / r->slope, -r->nosing - LEAST_FRONT);
}

/* The newel of a level run may stand in past the face of the wall that ends at the head: over the
 * floor there the skirt ends at that. */
static double before_newel(struct arena *a, const struct rod *r, const struct side *side,
	double back)
{
	struct run_lines l = level_run_lines(a, r, side);
	for (int i = 0; i < l.n; i++) {
		struct box newel = level_run_box(r, &l.line[i]);
		if (newel.y1 > NEAR_ENOUGH && newel.y0 < side->skirt &&
			newel.x0 > r->header_x - NEAR_ENOUGH)
			back = fmin(back, newel.x0);
	}
	return back;
}

static struct skirt skirt_of(struct arena *a, const struct rod *r, const struct side *side)
{
	const struct job_skirts *j = &r->job->skirts;
	struct skirt k = { .rod = r };
	k.upper = rod_nosing_z(r, 0) + j->height / r->cosine;
	k.front = wall_skirt_front(r);
	k.level_from = (r->top + j->baseboard - k.upper) / r->slope;
	k.back = before_newel(a, r, side, fmax(k.level_from, r->header_x));
	k.first = 1;
	k.last = r->risers;
	return k;
}

/* On the wall in front of the open steps. */
static struct skirt skirt_before(struct arena *a, const struct rod *r, const struct side *side)
{
	struct skirt k = skirt_of(a, r, side);
	k.back = side->wall_end;
	k.last = side->from;
	return k;
}

/* And on the one behind them. */
static struct skirt skirt_behind(struct arena *a, const struct rod *r, const struct side *side)
{
	struct skirt k = skirt_of(a, r, side);
	k.front = side->head.x;
	k.first = side->to + 2;
	return k;
}

/* From the back end along the upper edge to the front one. */
static void strike_upper(struct path *p, const struct skirt *k)
{
	const struct rod *r = k->rod;
	double head = r->top + r->job->skirts.baseboard;
	path_to(p, k->back, fmin(head, k->upper + r->slope * k->back));
	if (k->front < k->level_from && k->level_from < k->back)
		path_to(p, k->level_from, head);
	path_to(p, k->front, fmin(head, k->upper + r->slope * k->front));
}

static struct outline plain(struct arena *a, const struct skirt *k, double lower)
{
	const struct rod *r = k->rod;
	double back = fmin(k->back, r->header_x);
	double foot = fmin((r->foot - lower) / r->slope, back);
	struct path p = path_begin(a, 10);
	if (k->front < foot) {
		path_to(&p, k->front, r->foot);
		path_to(&p, foot, r->foot);
	} else {
		path_to(&p, k->front, lower + r->slope * k->front);
	}
	if (foot < back)
		path_to(&p, back, lower + r->slope * back);
	if (k->back > back + NEAR_ENOUGH) {
		path_to(&p, r->header_x, r->top);
		path_to(&p, k->back, r->top);
	}
	strike_upper(&p, k);
	return path_close(p);
}

/* Of the tread that this riser stands behind; of the first, what the stair stands on. */
static double riser_foot(const struct rod *r, int step)
{
	return step > 1 ? (step - 1) * r->rise : r->foot;
}

/* Up the face of a riser and round the nosing over it. */
static void strike_step(struct path *p, const struct rod *r, int step, double thickness)
{
	struct nosing n = nosing_make(&r->job->treads, thickness);
	double face = (step - 1) * r->run, top = step * r->rise;
	path_to(p, face, riser_foot(r, step));
	path_to(p, face, top - thickness);
	nosing_strike_up(p, &n, face - r->nosing, top - thickness);
}

static struct outline cut_round(struct arena *a, const struct skirt *k)
{
	const struct rod *r = k->rod;
	struct path p = path_begin(a, (NOSING_ROOM + 2) * r->risers + 8);
	path_to(&p, k->front, riser_foot(r, k->first));
	for (int step = k->first; step <= k->last; step++)
		strike_step(&p, r, step, step > r->steps ? landing_thickness(r) : r->tread);
	path_to(&p, k->back, k->last * r->rise);
	strike_upper(&p, k);
	return path_close(p);
}

/* Those of two walls are one part, laid the other way up. */
static const char *face_words(const struct rod *r, const struct side *side)
{
	bool both = r->sides[HAND_LEFT].skirt > 0 && r->sides[HAND_RIGHT].skirt > 0;
	if (both && !r->sides[HAND_LEFT].is_open && !r->sides[HAND_RIGHT].is_open)
		return "face up as drawn on the left wall, down on the right";
	return side->hand == HAND_LEFT ? "face up as drawn" : "face down as drawn";
}

static const char *foot_words(struct arena *a, const struct rod *r)
{
	double structure = r->stair->lower_structural;
	if (structure > -NEAR_ENOUGH)
		return "";
	if (r->foot > structure + NEAR_ENOUGH)
		return "; its foot stands on the finished floor";
	return arena_printf(a,
		"; its foot stands on the structural floor, and the finish, %s, is laid up to it",
		length_say(a, job_lettering(r->job), -structure));
}

static bool stands_on_floor(const struct rod *r, struct outline face)
{
	return outline_extent(face).y0 < r->foot + NEAR_ENOUGH;
}

/* A length of a whole skirt that walls in the steps part. */
static const char *end_words(struct arena *a, const struct rod *r, struct outline face,
	struct box whole)
{
	struct box b = outline_extent(face);
	bool low = b.x0 > whole.x0 + NEAR_ENOUGH, high = b.x1 < whole.x1 - NEAR_ENOUGH;
	double scribe = r->job->treads.scribe;
	if (!low && !high)
		return "";
	return arena_printf(a, "; its %s %s the wall in the steps",
		low && high   ? "ends stop"
			: low ? "lower end stops"
			      : "upper end stops",
		scribe > 0 ? arena_printf(a, "%s short of",
				     length_say(a, job_lettering(r->job), scribe))
			   : "at");
}

static const char *note_of(struct arena *a, const struct rod *r, const struct side *side,
	struct outline face, struct box whole)
{
	bool is_round = r->job->skirts.wall == SKIRT_CUT_ROUND;
	return arena_printf(a, "%s%s%s%s", face_words(r, side),
		is_round ? "; scribe it to treads and risers" : "", end_words(a, r, face, whole),
		stands_on_floor(r, face) ? foot_words(a, r) : "");
}

/* The narrowest board that holds it. */
static struct edges edges_of(const struct rod *r, struct outline face)
{
	struct edges e = { -INFINITY, INFINITY };
	for (int i = 0; i < face.n; i++) {
		struct vec at = face.corners[i].at;
		e.upper = fmax(e.upper, at.y - r->slope * at.x);
		e.lower = fmin(e.lower, at.y - r->slope * at.x);
	}
	return e;
}

static void length_add(struct pieces *list, const struct rod *r, const struct side *side,
	struct outline face, struct box whole)
{
	struct arena *a = list->arena;
	enum skirt_kind kind = r->job->skirts.wall;
	struct edges e = edges_of(r, face);
	double width = (e.upper - e.lower) * r->cosine;
	struct bench b = bench_make(r, e, &face, 1);
	double one = rod_y(r, side, 0), other = rod_y(r, side, side->skirt);
	struct part *p = piece_add(list,
		kind == SKIRT_PLAIN ? "wall skirt" : "wall skirt, cut round the steps",
		r->job->material.skirts, bench_frame(r, b, fmax(one, other)));
	p->outline = bench_outline(a, b, face);
	p->size = (struct part_size){ outline_extent(p->outline).x1, width, side->skirt };
	p->splice = SPLICE_SCARF;
	/* level, or plumb */
	p->start.mitre = stands_on_floor(r, face) ? PI / 2 - r->pitch : r->pitch;
	p->end.mitre = r->pitch;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, side->skirt);
	p->note = note_of(a, r, side, face, whole);
}

static void skirt_add(struct pieces *list, const struct skirt *k, const struct side *side)
{
	struct arena *a = list->arena;
	const struct rod *r = k->rod;
	if (r->job->skirts.wall == SKIRT_CUT_ROUND) {
		struct outline round = cut_round(a, k);
		length_add(list, r, side, round, outline_extent(round));
		return;
	}
	struct outline whole = plain(a, k, -COVER / r->cosine);
	struct lengths l = skirt_lengths(a, r, side, whole);
	for (int i = 0; i < l.n; i++)
		length_add(list, r, side, l.at[i], outline_extent(whole));
}

/* A plain skirt stops at a wall that the ends of treads are cut out for; one that goes round the
 * steps does not, and of a wall at the back of a tread nobody knows whether it reaches here. */
static bool is_in_the_way(const struct rod *r, const struct side *side, enum skirt_kind kind)
{
	const struct job_treads *t = &r->job->treads;
	enum notch_at at = side->hand == HAND_LEFT ? NOTCH_LEFT : NOTCH_RIGHT;
	for (int i = 0; i < t->notch_count; i++)
		if (t->notches[i].at == NOTCH_BACK ||
			(t->notches[i].at == at && kind == SKIRT_CUT_ROUND))
			return true;
	return false;
}

/* Can skirts of all walls be cut round the steps? */
static bool goes_cut_round(const struct rod *r)
{
	bool goes = r->riser > 0;
	for (int i = 0; i < 2; i++)
		goes = goes && !is_in_the_way(r, &r->sides[i], SKIRT_CUT_ROUND);
	return goes;
}

static bool skirt_fits(struct arena *a, const struct rod *r, const struct side *side,
	struct diags *d)
{
	const struct job_skirts *j = &r->job->skirts;
	struct lettering l = job_lettering(r->job);
	struct pos at = rod_pos(r, j->src, "wall");
	int before = d->errors;
	if (j->wall == SKIRT_PLAIN && side->skirt > side->outer + NEAR_ENOUGH)
		diag_error(d, at,
			arena_printf(a, "%s%s",
				job_write_least(a, r->job, "stringers.wall_gap", side->skirt),
				goes_cut_round(r) ? ", or write cut_round" : ""),
			"skirts.wall: behind the stringer there is %s for a skirt %s thick",
			length_say(a, l, side->outer), length_say(a, l, side->skirt));
	if (j->wall == SKIRT_CUT_ROUND && r->riser <= 0)
		diag_error(d, at, "write skirts.wall: plain",
			"skirts.wall: open risers leave nothing to scribe it to");
	if (is_in_the_way(r, side, r->job->skirts.wall))
		diag_error(d, at,
			"write skirts.wall: none, and fit it in lengths between the notches",
			"skirts.wall: treads are notched for a wall that stands in its way");
	return d->errors == before;
}

/* On a wall all along one, else one before and one behind the open steps. */
static void side_add(struct pieces *list, const struct rod *r, const struct side *side)
{
	struct arena *a = list->arena;
	struct skirt whole = skirt_of(a, r, side);
	if (!side->is_open) {
		skirt_add(list, &whole, side);
		return;
	}
	struct skirt before = skirt_before(a, r, side), behind = skirt_behind(a, r, side);
	if (side->from > 1)
		skirt_add(list, &before, side);
	if (side->to < r->steps)
		skirt_add(list, &behind, side);
}

/* A stringer that treads are housed in stands up over the nosings as a skirt does. */
static void warn_of_housed(const struct rod *r, const struct side *side, struct diags *d)
{
	if (r->job->skirts.wall != SKIRT_NONE && side->kind == STRINGER_HOUSED &&
		side_has_wall(r, side))
		diag_warning(d, rod_pos(r, r->job->skirts.src, "wall"), "write none",
			"skirts.wall: none on the %s, where the housed stringer is its own skirt",
			hand_word(side->hand));
}

/* A stringer goes straight on from the wall to the open steps: a finished one cannot stand in
 * behind a plain skirt there and be flush here; a rough one can, and wants a board here. */
static void warn_of_plain(const struct rod *r, const struct side *side, struct diags *d)
{
	const char *hand = hand_word(side->hand);
	if (r->job->skirts.wall != SKIRT_PLAIN || !side->is_open || !side_has_wall(r, side))
		return;
	if (side->kind == STRINGER_MITRED)
		diag_warning(d, rod_pos(r, r->job->skirts.src, "wall"),
			goes_cut_round(r) ? "write cut_round; or stringers: open: sawtooth and "
					    "skirts: open: mitred"
					  : "write stringers: open: sawtooth and skirts: open: "
					    "mitred",
			"skirts.wall: none on the %s, where the stringer of the open steps stands "
			"against the wall: a plain one would have to go behind it",
			hand);
	else if (side->kind == STRINGER_SAWTOOTH && side->board <= 0)
		diag_warning(d, rod_pos(r, r->job->skirts.src, "wall"),
			"skirts: open: mitred sets a finished board before it there",
			"skirts.wall: the carriage on the %s stands in behind the skirt of its "
			"wall, and as far in beside the open steps",
			hand);
}

/* Treads and risers run dead against a chimney breast: nothing is left between for a board. */
static void warn_of_breasts(struct arena *a, const struct rod *r, const struct side *side,
	struct diags *d)
{
	const struct job_treads *t = &r->job->treads;
	struct lettering l = job_lettering(r->job);
	for (int i = 0; i < t->notch_count; i++) {
		const struct job_notch *n = &t->notches[i];
		struct notch_wall w = notch_wall_make(r, n);
		if (n->at == NOTCH_BACK || notch_hand(n) != side->hand || !w.passes)
			continue;
		diag_warning(d, node_pos(n->src, "along"),
			arena_printf(a,
				"treads and risers are scribed to it; boards on its faces are "
				"entered as part of it: along %s more, from as much less, across "
				"%s more",
				length_say(a, l, side->skirt), length_say(a, l, 2 * side->skirt)),
			"skirts.wall: none on the faces of the wall that stands out %s from step "
			"%d on, on the %s: the skirts of its wall end at it",
			length_say(a, l, n->along), n->step, hand_word(side->hand));
	}
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_skirt };
	struct rod r = rod_make(s, f);
	for (int i = 0; i < 2; i++) {
		warn_of_housed(&r, &r.sides[i], d);
		warn_of_plain(&r, &r.sides[i], d);
		if (r.sides[i].skirt <= 0 || !skirt_fits(a, &r, &r.sides[i], d))
			continue;
		warn_of_breasts(a, &r, &r.sides[i], d);
		side_add(&list, &r, &r.sides[i]);
	}
	if (open_skirt_fits(&r, d))
		for (int i = 0; i < 2; i++)
			if (r.sides[i].board > 0)
				open_skirt_add(&list, &r, (enum side_hand)i);
	return list.first;
}

const struct part_kind part_skirt = { "skirt", "F", make };
