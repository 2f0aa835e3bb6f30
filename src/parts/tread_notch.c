#include "parts/tread.h"

/*
 * What is cut out of a tread: where walls stand in its way, as the job gives
 * them, and newels.
 *
 *            at the back                   along
 *        ______        ______            ________
 *       |      | across      |   across |   wall |___
 *       |      |______|      |          |________|   |  at the right
 *       |<---->               |           from |     |
 *         from                |                |_____|
 */

/* Of a tread's body that must be left beside a notch (common practice). */
#define LEAST_LEFT 50.0

#define OUTSIDE 1000.0 /* further out than any tread */

static bool at_back_corner(const struct job_notch *n)
{
	return n->at != NOTCH_BACK && !node_has(n->src, "from");
}

static enum hand notch_hand(const struct job_notch *n)
{
	return n->at == NOTCH_LEFT ? HAND_LEFT : HAND_RIGHT;
}

/* Between front and back at an end; between left and right at the back.  What the allowance makes
 * reach the edge takes the corner. */
static struct gap gap_of(const struct tread_plan *t, const struct job_notch *n)
{
	double scribe = t->rod->job->treads.scribe;
	bool at_back = n->at == NOTCH_BACK;
	double size = at_back ? n->along : n->across;
	double start = at_back_corner(n) ? t->depth - size : n->from;
	double limit = at_back ? t->rod->width : t->depth;
	struct gap g = { .in = (at_back ? n->across : n->along) + scribe,
		.from = start - scribe,
		.to = start + size + scribe,
		.around = "the wall",
		.is_existing = true,
		.allowance = scribe };
	g.from = g.from < NEAR_ENOUGH ? -INFINITY : g.from;
	g.to = g.to > limit - NEAR_ENOUGH ? INFINITY : g.to;
	return g;
}

/* A wall in the tread below that stands under this one's nosing is cut out of that too: here as far
 * as it reaches back from the front. */
static bool comes_up_through(const struct tread_plan *t, const struct job_notch *n, struct gap *g)
{
	const struct rod *r = t->rod;
	struct notch_wall w = notch_wall_make(r, n);
	double scribe = r->job->treads.scribe, reach = w.high.x - tread_front(t);
	if (n->step + 1 != t->step || reach < NEAR_ENOUGH ||
		w.high.z < t->step * r->rise - r->tread + NEAR_ENOUGH)
		return false;
	*g = (struct gap){ .in = n->along + scribe,
		.from = -INFINITY,
		.to = reach + scribe,
		.around = "the wall",
		.is_existing = true,
		.allowance = scribe };
	return true;
}

/* Is there a notch of the tread's own where the wall below comes up? */
static bool has_own(const struct tread_plan *t, const struct job_notch *below, double reach)
{
	const struct job_treads *job = &t->rod->job->treads;
	for (int i = 0; i < job->notch_count; i++) {
		const struct job_notch *n = &job->notches[i];
		if (n->step == t->step && n->at == below->at && gap_of(t, n).from < reach)
			return true;
	}
	return false;
}

static struct gaps *gaps_at(struct tread_plan *t, const struct job_notch *n)
{
	return n->at == NOTCH_BACK ? &t->back : &t->ends[notch_hand(n)].gaps;
}

void tread_notches_find(struct tread_plan *t)
{
	const struct job_treads *job = &t->rod->job->treads;
	for (int i = 0; i < job->notch_count; i++) {
		const struct job_notch *n = &job->notches[i];
		struct gaps *list = gaps_at(t, n);
		struct gap g = gap_of(t, n);
		bool mine =
			n->step == t->step || (comes_up_through(t, n, &g) && !has_own(t, n, g.to));
		if (mine && list->n < MOST_GAPS)
			list->at[list->n++] = g;
	}
}

/* Of a gap: along from the left-hand limit, and back from the front; at the back of the tread when
 * there is no end. */
static struct box gap_box(const struct tread_plan *t, const struct tread_end *e,
	const struct gap *g)
{
	const struct rod *r = t->rod;
	if (!e)
		return (struct box){ fmax(g->from, 0), t->depth - g->in, fmin(g->to, r->width),
			t->depth };
	double edge = rod_along(r, e->side, -OUTSIDE);
	double in = rod_along(r, e->side, g->in);
	return (struct box){ fmin(edge, in), fmax(g->from, 0), fmax(edge, in),
		fmin(g->to, t->depth) };
}

static struct box box_common(struct box a, struct box b)
{
	return (struct box){ fmax(a.x0, b.x0), fmax(a.y0, b.y0), fmin(a.x1, b.x1),
		fmin(a.y1, b.y1) };
}

static bool box_is_empty(struct box b)
{
	return b.x1 - b.x0 < NEAR_ENOUGH || b.y1 - b.y0 < NEAR_ENOUGH;
}

/* Which edges of a piece a cut reaches. */
struct reached {
	bool left, right, front, back;
};

static struct reached reached_by(struct box cut, struct box part)
{
	return (struct reached){ cut.x0<part.x0 + NEAR_ENOUGH, cut.x1> part.x1 - NEAR_ENOUGH,
		cut.y0<part.y0 + NEAR_ENOUGH, cut.y1> part.y1 - NEAR_ENOUGH };
}

/* "front right corner", "left end, 3 in back from the front": on the piece as it lies, its front
 * towards the foot of the stair. */
static const char *place_words(struct arena *a, struct lettering l, struct box part, struct box cut)
{
	struct reached at = reached_by(cut, part);
	const char *hand = at.left ? "left" : "right";
	if (!at.left && !at.right)
		return arena_printf(a, "%s edge, %s from its left end,",
			at.front ? "front" : "back", length_letter_inches(a, l, cut.x0 - part.x0));
	if (at.front || at.back)
		return arena_printf(a, "%s %s corner", at.front ? "front" : "back", hand);
	return arena_printf(a, "%s end, %s back from its front,", hand,
		length_letter_inches(a, l, cut.y0 - part.y0));
}

static const char *cut_words(struct arena *a, struct lettering l, const struct gap *g,
	struct box part, struct box cut)
{
	return arena_printf(a, "%s cut out round %s: %s along x %s across",
		place_words(a, l, part, cut), g->around,
		length_letter_inches(a, l, cut.x1 - cut.x0),
		length_letter_inches(a, l, cut.y1 - cut.y0));
}

static void notch_add(struct arena *a, struct part *p, const struct tread_plan *t,
	const struct tread_end *e, const struct gap *g, struct box part)
{
	struct box cut = box_common(part, gap_box(t, e, g));
	if (box_is_empty(cut))
		return;
	const char *words = cut_words(a, job_lettering(t->rod->job), g, part, cut);
	piece_feature(a, p,
		(struct feature){ .kind = FEATURE_NOTCH,
			.depth = p->size.thickness,
			.at = outline_box(a, cut.x0 - part.x0, cut.y0 - part.y0, cut.x1 - part.x0,
				cut.y1 - part.y0),
			.text = words });
	p->note = p->note ? arena_printf(a, "%s; %s", p->note, words) : words;
}

void tread_notches_add(struct arena *a, struct part *p, const struct tread_plan *t, struct box part)
{
	for (int i = 0; i < 2; i++)
		for (int k = 0; k < t->ends[i].gaps.n; k++)
			notch_add(a, p, t, &t->ends[i], &t->ends[i].gaps.at[k], part);
	for (int k = 0; k < t->back.n; k++)
		notch_add(a, p, t, NULL, &t->back.at[k], part);
}

/* One notch of the job, being looked at. */
struct trial {
	struct arena *a;
	const struct rod *rod;
	struct diags *diags;
	const struct job_notch *notch;
};

static const char *say(const struct trial *c, double mm)
{
	return length_say(c->a, job_lettering(c->rod->job), mm);
}

/* A limit: what may be written. */
static const char *say_down(const struct trial *c, double mm)
{
	return say(c, length_on_graduation(job_lettering(c->rod->job), mm, -1));
}

static bool step_is_there(const struct trial *c)
{
	if (c->notch->step <= c->rod->steps)
		return true;
	diag_error(c->diags, node_pos(c->notch->src, "step"), NULL,
		"treads.notches: there is no step %d, the stair has %d treads", c->notch->step,
		c->rod->steps);
	return false;
}

static bool wall_is_there(const struct trial *c)
{
	const struct job_notch *n = c->notch;
	if (n->at == NOTCH_BACK)
		return true;
	const struct side *side = &c->rod->sides[notch_hand(n)];
	const char *hand = n->at == NOTCH_LEFT ? "left" : "right";
	if (side->kind == STRINGER_HOUSED)
		diag_error(c->diags, node_pos(n->src, "at"),
			"a housed stringer stands between tread and wall",
			"treads.notches: the %s end of step %d lies in a housing", hand, n->step);
	else if (side_open_at(side, n->step) || (side->is_open && n->step == side->to + 1))
		diag_error(c->diags, node_pos(n->src, "at"),
			"where the side opens, wall_past of that side says how far the wall goes",
			"treads.notches: there is no wall at the %s of step %d, it is open there",
			hand, n->step);
	else
		return true;
	return false;
}

/* How much of the tread must be left, in the words of who reads the tape. */
static bool wood_is_left(const struct trial *c, const struct tread_plan *t)
{
	const struct job_notch *n = c->notch;
	const struct rod *r = c->rod;
	double strip = r->job->treads.strip_width;
	bool at_back = n->at == NOTCH_BACK;
	double along = at_back ? r->width : r->width / 2 - LEAST_LEFT;
	double across = at_back ? t->depth - strip - LEAST_LEFT : t->depth - LEAST_LEFT;
	double reach = n->from + (at_back ? n->along : n->across);
	int before = c->diags->errors;
	const char *hint = arena_printf(c->a, "%s of the tread stay beside a wall in it",
		say(c, length_on_graduation(job_lettering(r->job), LEAST_LEFT, 1)));
	if (n->along > along)
		diag_error(c->diags, node_pos(n->src, "along"), at_back ? NULL : hint,
			"treads.notches: %s along is too long for the tread: at most %s",
			say(c, n->along), say_down(c, along));
	else if (n->across > across)
		diag_error(c->diags, node_pos(n->src, "across"), hint,
			"treads.notches: %s across is too deep for the tread: at most %s",
			say(c, n->across), say_down(c, across));
	else if (reach > (at_back ? r->width : t->depth) + NEAR_ENOUGH)
		diag_error(c->diags, node_pos(n->src, "from"), NULL,
			"treads.notches: it ends %s off, past the tread's %s", say(c, reach),
			at_back ? "right-hand side" : "back edge");
	return c->diags->errors == before;
}

static const struct tread_end *end_of(const struct tread_plan *t, const struct job_notch *n)
{
	return n->at == NOTCH_BACK ? NULL : &t->ends[notch_hand(n)];
}

/* A notch at the back keeps off ends that are no plain walls. */
static bool ends_are_clear(const struct trial *c, const struct tread_plan *t)
{
	struct gap g = gap_of(t, c->notch);
	if (c->notch->at != NOTCH_BACK)
		return true;
	for (int i = 0; i < 2; i++) {
		const struct tread_end *e = &t->ends[i];
		double edge = rod_along(c->rod, e->side, fmax(e->body, 0));
		bool hit = i == HAND_LEFT ? g.from < edge + LEAST_LEFT : g.to > edge - LEAST_LEFT;
		if (!hit)
			continue;
		diag_error(c->diags, node_pos(c->notch->src, "from"),
			"at a wall, write at: left or right without from",
			"treads.notches: it comes nearer than %s to the %s end of step %d",
			say(c, LEAST_LEFT), i == HAND_LEFT ? "left" : "right", c->notch->step);
		return false;
	}
	return true;
}

/* Does an earlier one of the same tread take some of the same wood, or leave next to none? */
static bool others_are_clear(const struct trial *c, const struct tread_plan *t)
{
	const struct job_treads *job = &c->rod->job->treads;
	struct gap mine = gap_of(t, c->notch);
	struct box box = gap_box(t, end_of(t, c->notch), &mine);
	for (const struct job_notch *n = job->notches; n < c->notch; n++) {
		struct gap other = gap_of(t, n);
		struct box b = gap_box(t, end_of(t, n), &other);
		if (n->step != c->notch->step || box_is_empty(box_common(box, b)))
			continue;
		diag_error(c->diags, node_pos(c->notch->src, NULL),
			arena_printf(c->a, "the other one is on line %d",
				node_pos(n->src, NULL).line),
			"treads.notches: two notches of step %d overlap", n->step);
		return false;
	}
	return true;
}

static int count_alike(const struct rod *r, const struct job_notch *n)
{
	const struct job_treads *job = &r->job->treads;
	int count = 0;
	for (const struct job_notch *o = job->notches; o <= n; o++)
		count += o->step == n->step && o->at == n->at;
	return count;
}

static bool are_few(const struct trial *c)
{
	if (count_alike(c->rod, c->notch) <= MOST_NOTCHES)
		return true;
	diag_error(c->diags, node_pos(c->notch->src, NULL), NULL,
		"treads.notches: more than %d at one edge of step %d", MOST_NOTCHES,
		c->notch->step);
	return false;
}

/* What goes up to the upper floor comes up from the lower one, past the stringer under the tread.
 */
static void warn_of_stringer(const struct trial *c)
{
	const struct job_notch *n = c->notch;
	if (n->at == NOTCH_BACK || n->height > 0)
		return;
	const struct side *side = &c->rod->sides[notch_hand(n)];
	if (n->along > side->outer + NEAR_ENOUGH)
		diag_warning(c->diags, node_pos(n->src, "along"),
			"a wider wall_gap sets the stringer in; give the wall its height, if it "
			"stands on the tread",
			"treads.notches: the wall in step %d stands %s out, in the way of the "
			"stringer, which is %s off the wall of the stair",
			n->step, say(c, n->along), say(c, side->outer));
}

void tread_notches_check(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_treads *job = &r->job->treads;
	for (int i = 0; i < job->notch_count; i++) {
		struct trial c = { a, r, d, &job->notches[i] };
		if (!step_is_there(&c) || !wall_is_there(&c) || !are_few(&c))
			continue;
		struct tread_plan t = tread_plan_make(r, c.notch->step);
		if (wood_is_left(&c, &t) && ends_are_clear(&c, &t) && others_are_clear(&c, &t))
			warn_of_stringer(&c);
	}
}
