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

#define OUTSIDE 1000.0 /* further out than any tread */

static bool at_back_corner(const struct job_notch *n)
{
	return n->at != NOTCH_BACK && !node_has(n->src, "from");
}

enum side_hand notch_hand(const struct job_notch *n)
{
	return n->at == NOTCH_LEFT ? HAND_LEFT : HAND_RIGHT;
}

/* So far in; from and to are along the edge that is that long.  What the allowance makes reach a
 * corner takes it. */
static struct gap wall_gap(const struct tread_plan *t, double in, double from, double to,
	double edge)
{
	double scribe = t->rod->job->treads.scribe;
	return (struct gap){ .in = in + scribe,
		.from = from - scribe < NEAR_ENOUGH ? -INFINITY : from - scribe,
		.to = to + scribe > edge - NEAR_ENOUGH ? INFINITY : to + scribe,
		.around = "the wall",
		.is_existing = true };
}

/* Between front and back at an end; between left and right at the back. */
static struct gap gap_of(const struct tread_plan *t, const struct job_notch *n)
{
	if (n->at == NOTCH_BACK)
		return wall_gap(t, n->across, n->from, n->from + n->along, t->rod->width);
	double from = at_back_corner(n) ? t->depth - n->across : n->from;
	return wall_gap(t, n->along, from, from + n->across, t->depth);
}

/* Does it come up through the underside of this tread? */
static bool is_as_high(const struct tread_plan *t, const struct notch_wall *w)
{
	const struct rod *r = t->rod;
	return w->high.z > t->step * r->rise - r->tread + NEAR_ENOUGH;
}

/* A wall in the tread below that stands under this one's nosing is cut out of that too: here as far
 * as it reaches back from the front. */
static bool comes_up_through(const struct tread_plan *t, const struct job_notch *n, struct gap *g)
{
	struct notch_wall w = notch_wall_make(t->rod, n);
	double reach = w.high.x - tread_front(t);
	if (w.passes || n->step + 1 != t->step || reach < NEAR_ENOUGH || !is_as_high(t, &w))
		return false;
	*g = wall_gap(t, n->along, -INFINITY, reach, t->depth);
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

/* One that passes steps, at the end of a tread that it stands in. */
static bool passes_through(const struct tread_plan *t, const struct notch_wall *w, struct gap *g)
{
	double from = w->low.x - tread_front(t), to = w->high.x - tread_front(t);
	if (to < NEAR_ENOUGH || from > t->depth - NEAR_ENOUGH || !is_as_high(t, w))
		return false;
	*g = wall_gap(t, w->notch->along, from, to, t->depth);
	return true;
}

bool notch_takes(const struct tread_plan *t, const struct job_notch *n, struct gap *g)
{
	struct notch_wall w = notch_wall_make(t->rod, n);
	if (w.passes)
		return passes_through(t, &w, g);
	*g = gap_of(t, n);
	return n->step == t->step;
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
		struct gap g;
		bool mine = notch_takes(t, n, &g) ||
			(comes_up_through(t, n, &g) && !has_own(t, n, g.to));
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

struct box notch_box(const struct tread_plan *t, const struct job_notch *n, const struct gap *g)
{
	return gap_box(t, n->at == NOTCH_BACK ? NULL : &t->ends[notch_hand(n)], g);
}

static struct box box_common(struct box a, struct box b)
{
	return (struct box){ fmax(a.x0, b.x0), fmax(a.y0, b.y0), fmin(a.x1, b.x1),
		fmin(a.y1, b.y1) };
}

static bool is_nothing(struct box b)
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

/* Its corner, and what it goes round, are on the piece's sheet: notches of one size are one
 * setting. */
static const char *saw_words(struct arena *a, struct lettering l, struct box cut)
{
	return arena_printf(a, "notch %s along x %s across",
		length_letter_inches(a, l, cut.x1 - cut.x0),
		length_letter_inches(a, l, cut.y1 - cut.y0));
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
	if (is_nothing(cut))
		return;
	const char *words = cut_words(a, job_lettering(t->rod->job), g, part, cut);
	piece_feature(a, p,
		(struct feature){ .kind = FEATURE_NOTCH,
			.depth = p->size.thickness,
			.at = outline_box(a, cut.x0 - part.x0, cut.y0 - part.y0, cut.x1 - part.x0,
				cut.y1 - part.y0),
			.text = words,
			.setting = saw_words(a, job_lettering(t->rod->job), cut) });
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
