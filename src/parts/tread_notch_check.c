#include <string.h>

#include "parts/tread.h"

/*
 * What notches of the job cannot be: where no wall is, where they leave too little wood, where they
 * meet each other or what carries the treads.
 */

/* Of a tread's body that must be left beside a notch (common practice). */
#define LEAST_LEFT 50.0

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

static int number_of(const struct trial *c)
{
	return (int)(c->notch - c->rod->job->treads.notches) + 1;
}

static const char *write_most(const struct trial *c, const char *key, double mm)
{
	return job_write_most(c->a, c->rod->job,
		arena_printf(c->a, "treads.notches[%d].%s", number_of(c), key), mm);
}

static bool step_is_there(const struct trial *c)
{
	if (c->notch->step <= c->rod->steps)
		return true;
	diag_error(c->diags, node_pos(c->notch->src, "step"),
		arena_printf(c->a, "write treads.notches[%d].step: %d", number_of(c),
			c->rod->steps),
		"treads.notches: there is no step %d, the stair has %d treads", c->notch->step,
		c->rod->steps);
	return false;
}

static const char *hand_words(const struct job_notch *n)
{
	return n->at == NOTCH_LEFT ? "left" : "right";
}

/* The first of the steps it stands in, or behind the riser of, that is open at its side; 0: none.
 */
static int open_step(const struct trial *c, const struct side *side)
{
	struct notch_wall w = notch_wall_make(c->rod, c->notch);
	for (int step = c->notch->step; side->is_open && step <= w.last; step++)
		if (side_open_at(side, step) || step == side->to + 1)
			return step;
	return 0;
}

/* "step 4", "steps 4 to 6" */
static const char *steps_words(const struct trial *c)
{
	int first = c->notch->step, last = notch_wall_make(c->rod, c->notch).last;
	return last > first ? arena_printf(c->a, "steps %d to %d", first, last)
			    : arena_printf(c->a, "step %d", first);
}

/* A housed stringer is one straight plank that holds the treads all along: it runs before the face
 * of what stands out, or is a carriage. */
static void refuse_in_housing(const struct trial *c, const struct side *side)
{
	const struct job_notch *n = c->notch;
	const char *width = arena_printf(c->a,
		"measure the stair from the face of this wall (stair.width %s, the notch left out) "
		"and pack out behind the stringer",
		say(c, c->rod->width - n->along));
	const char *gap = job_write_least(c->a, c->rod->job, "stringers.wall_gap",
		n->along + c->rod->job->treads.scribe);
	diag_error(c->diags, node_pos(n->src, "at"),
		side->is_open
			? width
			: arena_printf(c->a, "write stringers.wall.kind: sawtooth and %s, or %s",
				  gap + strlen("write "), width),
		"treads.notches: the wall in %s stands %s out, where the stringer runs that the "
		"treads are housed in on the %s",
		steps_words(c), say(c, n->along), hand_words(n));
}

static bool wall_is_there(const struct trial *c)
{
	const struct job_notch *n = c->notch;
	if (n->at == NOTCH_BACK)
		return true;
	const struct side *side = &c->rod->sides[notch_hand(n)];
	int open = open_step(c, side);
	if (side->kind == STRINGER_HOUSED)
		refuse_in_housing(c, side);
	else if (open > 0)
		diag_error(c->diags, node_pos(n->src, "at"),
			"where the side opens, wall_past of that side says how far the wall goes",
			"treads.notches: there is no wall at the %s of step %d, it is open there",
			hand_words(n), open);
	else
		return true;
	return false;
}

/* A limit from below. */
static const char *say_up(const struct trial *c, double mm)
{
	return say(c, length_on_graduation(job_lettering(c->rod->job), mm, 1));
}

static bool length_fits(const struct trial *c)
{
	const struct job_notch *n = c->notch;
	const struct rod *r = c->rod;
	bool at_back = n->at == NOTCH_BACK;
	double along = at_back ? r->width : r->width / 2 - LEAST_LEFT;
	if (n->along <= along)
		return true;
	diag_error(c->diags, node_pos(n->src, "along"),
		at_back ? write_most(c, "along", along)
			: arena_printf(c->a, "%s; %s of the tread stay beside a wall in it",
				  write_most(c, "along", along), say_up(c, LEAST_LEFT)),
		"treads.notches: %s along is too long for the tread", say(c, n->along));
	return false;
}

/* How much of the tread must be left, in the words of who reads the tape. */
static bool depth_is_left(const struct trial *c, const struct tread_plan *t)
{
	const struct job_notch *n = c->notch;
	bool at_back = n->at == NOTCH_BACK;
	double strip = at_back ? c->rod->job->treads.strip_width : 0;
	double across = t->depth - strip - LEAST_LEFT, reach = n->from + n->along;
	int before = c->diags->errors;
	const char *hint = arena_printf(c->a, "%s; %s of the tread stay beside a wall in it%s",
		write_most(c, "across", across), say_up(c, LEAST_LEFT),
		at_back ? ""
			: arena_printf(c->a,
				  "; one that takes its whole depth, or more steps, is given from "
				  "the front of the lowest: from: 0, across: %s",
				  say(c, t->depth)));
	if (n->across > across)
		diag_error(c->diags, node_pos(n->src, "across"), hint,
			"treads.notches: %s across is too deep for the tread", say(c, n->across));
	else if (at_back && reach > c->rod->width + NEAR_ENOUGH)
		diag_error(c->diags, node_pos(n->src, "from"),
			write_most(c, "from", c->rod->width - n->along),
			"treads.notches: it ends %s off, past the tread's right-hand side",
			say(c, reach));
	return c->diags->errors == before;
}

/* What stays of a tread in front of one that passes steps, or behind it, is no splinter, and it
 * goes no further than the last tread. */
static bool passing_leaves_wood(const struct trial *c, const struct notch_wall *w)
{
	const struct job_notch *n = c->notch;
	const struct rod *r = c->rod;
	double front = (n->step - 1) * r->run - r->nosing;
	double before = w->low.x - front, behind = w->last * r->run - w->high.x;
	int errors = c->diags->errors;
	if (w->last > r->steps)
		diag_error(c->diags, node_pos(n->src, "across"),
			write_most(c, "across", r->steps * r->run - w->low.x),
			"treads.notches: it ends %s behind the back edge of the last tread",
			say(c, w->high.x - r->steps * r->run));
	else if (before < -NEAR_ENOUGH)
		diag_error(c->diags, node_pos(n->src, "across"),
			"give the lowest step that it stands in, and from",
			"treads.notches: it comes out %s in front of step %d", say(c, -before),
			n->step);
	else if (before > NEAR_ENOUGH && before < LEAST_LEFT)
		diag_error(c->diags, node_pos(n->src, "from"),
			arena_printf(c->a,
				"write treads.notches[%d].from: 0; pack the wall out to the nosing",
				number_of(c)),
			"treads.notches: it leaves %s of step %d in front of it: at least %s",
			say(c, before), n->step, say_up(c, LEAST_LEFT));
	else if (behind > NEAR_ENOUGH && behind < LEAST_LEFT)
		diag_error(c->diags, node_pos(n->src, "across"),
			arena_printf(c->a,
				"write treads.notches[%d].across: %s; pack the wall out "
				"to the riser",
				number_of(c), say(c, w->last * r->run - w->low.x)),
			"treads.notches: it leaves %s of step %d behind it: at least %s",
			say(c, behind), w->last, say_up(c, LEAST_LEFT));
	return c->diags->errors == errors;
}

/* One that ends half-way up a riser would be in the way of that, and under the tread on it. */
static bool passing_is_high_enough(const struct trial *c, const struct notch_wall *w)
{
	const struct job_notch *n = c->notch;
	double need = (w->last - n->step) * c->rod->rise;
	if (n->height <= 0 || n->height >= need - NEAR_ENOUGH)
		return true;
	diag_error(c->diags, node_pos(n->src, "height"),
		arena_printf(c->a, "%s, or let across end at the steps that it stands up through",
			job_write_least(c->a, c->rod->job,
				arena_printf(c->a, "treads.notches[%d].height", number_of(c)),
				need)),
		"treads.notches: a wall %s high over step %d ends under step %d, which is %s over "
		"it",
		say(c, n->height), n->step, w->last, say(c, need));
	return false;
}

static bool wood_is_left(const struct trial *c, const struct tread_plan *t)
{
	struct notch_wall w = notch_wall_make(c->rod, c->notch);
	if (!length_fits(c))
		return false;
	return w.passes ? passing_leaves_wood(c, &w) && passing_is_high_enough(c, &w)
			: depth_is_left(c, t);
}

/* A notch at the back keeps off ends that are no plain walls. */
static bool ends_are_clear(const struct trial *c, const struct tread_plan *t)
{
	struct gap g;
	if (c->notch->at != NOTCH_BACK || !notch_takes(t, c->notch, &g))
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
			say(c, LEAST_LEFT), hand_word((enum side_hand)i), c->notch->step);
		return false;
	}
	return true;
}

static bool boxes_meet(struct box a, struct box b)
{
	return fmin(a.x1, b.x1) - fmax(a.x0, b.x0) > NEAR_ENOUGH &&
		fmin(a.y1, b.y1) - fmax(a.y0, b.y0) > NEAR_ENOUGH;
}

/* Does an earlier one take some of the same wood of this tread? */
static const struct job_notch *met_in(const struct trial *c, const struct tread_plan *t)
{
	struct gap mine, other;
	if (!notch_takes(t, c->notch, &mine))
		return NULL;
	struct box box = notch_box(t, c->notch, &mine);
	for (const struct job_notch *n = c->rod->job->treads.notches; n < c->notch; n++)
		if (notch_takes(t, n, &other) && boxes_meet(box, notch_box(t, n, &other)))
			return n;
	return NULL;
}

static bool others_are_clear(const struct trial *c)
{
	for (int step = 1; step <= c->rod->steps; step++) {
		struct tread_plan t = tread_plan_make(c->rod, step);
		const struct job_notch *n = met_in(c, &t);
		if (!n)
			continue;
		diag_error(c->diags, node_pos(c->notch->src, NULL),
			arena_printf(c->a, "the other one is on line %d",
				node_pos(n->src, NULL).line),
			"treads.notches: two notches of step %d overlap", step);
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

/* Where a chimney breast stands into the stair, what carries the treads stands inside of it all
 * along, or has to be trimmed round it. */
static void refuse_at_stringer(const struct trial *c, const struct side *side)
{
	const struct job_notch *n = c->notch;
	double clear = n->along + c->rod->job->treads.scribe;
	const char *hint = side->is_open
		? "measure the width of the stair from the face of this wall"
		: arena_printf(c->a,
			  "write stringers.wall_gap: %s; it sets the carriage inside of it all "
			  "along: carry "
			  "the treads on a ledger at the wall before and behind it",
			  say_up(c, clear));
	diag_error(c->diags, node_pos(n->src, "along"), hint,
		"treads.notches: the wall in %s stands %s out and comes up where the stringer is, "
		"%s off the wall of the stair",
		steps_words(c), say(c, n->along), say(c, side->outer));
}

/* What goes up to the upper floor comes up from the lower one, past the stringer under the tread.
 */
static void check_stringer(const struct trial *c)
{
	const struct job_notch *n = c->notch;
	if (n->at == NOTCH_BACK)
		return;
	const struct side *side = &c->rod->sides[notch_hand(n)];
	struct notch_wall w = notch_wall_make(c->rod, n);
	if (n->along <= side->outer + NEAR_ENOUGH)
		return;
	if (w.passes)
		refuse_at_stringer(c, side);
	else if (n->height <= 0)
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
		if (wood_is_left(&c, &t) && ends_are_clear(&c, &t) && others_are_clear(&c))
			check_stringer(&c);
	}
}
