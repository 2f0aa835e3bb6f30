#include "sheets/guard_balls.h"

#include "draw/bounds.h"
#include "pitchboard/rail.h"
#include "sheets/limits.h"
#include "sheets/words.h"

/* Round a ball, in the house. */
#define WINDOW 330.0

/* What stands more than this nearer the eye than the ball is taken away. */
#define BEFORE 60.0

#define PLACES BALL_BETWEEN_TREADS

/* Balls are measured to 0.02 mm: these are two. */
#define TELLS_APART 0.05

/* Each place counts on the rake and on level runs. */
#define KINDS (2 * PLACES)

static int kind_of(const struct ball *b)
{
	return (int)b->place + (b->on_rake ? 0 : PLACES);
}

static enum which_side side_of(const struct ball *b)
{
	return b->on_left ? ON_THE_LEFT : ON_THE_RIGHT;
}

enum ball_lies { LIES_ON_RAKE, LIES_LEVEL };

static const struct ball *largest(const struct ball *balls, int kind)
{
	const struct ball *best = NULL;

	for (; balls; balls = balls->next)
		if (kind_of(balls) == kind &&
			(!best || balls->diameter > best->diameter + NEAR_ENOUGH))
			best = balls;
	return best;
}

/* With the next letter. */
static void add_ball(struct arena *a, struct guard_balls *to, const struct ball *b)
{
	if (b)
		to->list[to->n] = (struct guard_ball){ arena_printf(a, "%c", 'a' + to->n), b };
	to->n += b != NULL;
}

struct guard_balls guard_balls_find(struct arena *a, const struct sheet_context *c)
{
	struct guard_balls found = { .all = balls_measure(a, c->stair, c->parts) };

	for (int kind = 0; kind < KINDS; kind++)
		add_ball(a, &found, largest(found.all, kind));
	add_ball(a, &found, ball_between_treads(a, c->stair));
	return found;
}

/* The level rail nearest to it runs across the stair: the part of the way of its length. */
static bool is_across(const struct sheet_context *c, const struct ball *b)
{
	double least = INFINITY;
	bool across = false;

	for (const struct part *p = c->parts; p; p = p->next)
		for (int i = 0; p->rail && p->rail->pitch <= 0 && i < p->count; i++) {
			struct vec3 in = frame_place_back(p->places[i], b->at);
			double beyond = fmax(0, fmax(-in.x, in.x - p->size.length));
			double off = hypot(beyond, in.y);
			if (off >= least)
				continue;
			least = off;
			across = fabs(p->places[i].u.y) > fabs(p->places[i].u.x);
		}
	return across;
}

bool ball_is_in_guard(const struct ball *b)
{
	return b->place != BALL_BETWEEN_TREADS;
}

enum view_from ball_seen_from(const struct sheet_context *c, const struct ball *b)
{
	if (!b->on_rake && is_across(c, b))
		return VIEW_FRONT;
	return b->on_left ? VIEW_FROM_LEFT : VIEW_FROM_RIGHT;
}

static const char *gauge_of(const struct ball *b)
{
	if (b->place == BALL_BETWEEN_TREADS)
		return "riser_opening";
	if (!b->on_rake)
		return "floor_ball";
	return b->place == BALL_TRIANGLE ? "ball_in_triangle" : "ball_between";
}

static const char *where_words(struct arena *a, const struct ball *b)
{
	const char *side = b->on_left ? "left" : "right";

	if (b->place == BALL_BETWEEN_TREADS)
		return "every step alike";
	if (b->step > 0)
		return arena_printf(a, "%s side, step %d", side, b->step);
	return arena_printf(a, "%s side, %s", side, b->on_rake ? "at the floor" : "upper floor");
}

static bool is_drawn_side(const struct guard_balls *balls, enum which_side side)
{
	for (int i = 0; i < balls->n; i++)
		if (ball_is_in_guard(balls->list[i].ball) && side_of(balls->list[i].ball) == side)
			return true;
	return false;
}

/* Is there, of every ball that is drawn, one as large on this side? */
static bool is_alike(const struct guard_balls *balls, enum which_side side)
{
	for (int i = 0; i < balls->n; i++) {
		const struct ball *b = balls->list[i].ball, *other = balls->all;
		while (other &&
			(side_of(other) != side || kind_of(other) != kind_of(b) ||
				fabs(other->diameter - b->diameter) > TELLS_APART))
			other = other->next;
		if (!other && ball_is_in_guard(b))
			return false;
	}
	return true;
}

const char *guard_balls_other_side(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls)
{
	const struct ball *most = NULL;
	enum which_side side = is_drawn_side(balls, ON_THE_RIGHT) ? ON_THE_LEFT : ON_THE_RIGHT;
	const char *name = side_word(side);

	for (const struct ball *b = balls->all; b; b = b->next)
		if (side_of(b) == side && (!most || b->diameter > most->diameter))
			most = b;
	if (!most || is_drawn_side(balls, side))
		return "";
	if (is_alike(balls, side))
		return arena_printf(a,
			"The guard on the %s is the same, the other way round: the same balls pass "
			"there.",
			name);
	return arena_printf(a, "On the %s no larger ball passes: the largest there %s, %s.", name,
		inches_words(a, c->stair, most->diameter),
		ball_place_name(c->stair->job, most->place));
}

/* Of the row as a whole: a smaller ball of another place may meet what the largest does not. */
static const char *result_of(const struct finding *f, const struct ball *b)
{
	if (f->state == FINDING_NOT_MET && b->diameter < f->limit - NEAR_ENOUGH)
		return result_words(FINDING_MET);
	return result_words(f->state);
}

struct table guard_balls_table(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls)
{
	static const struct table_column columns[] = { { "", ALIGN_LEFT, 0 },
		{ "Ball", ALIGN_LEFT, 48 }, { "Where", ALIGN_LEFT, 32 },
		{ "Measured", ALIGN_RIGHT, 0 }, { "Asked", ALIGN_LEFT, 34 },
		{ "Section", ALIGN_LEFT, 0 }, { "Result", ALIGN_LEFT, 0 } };
	const char **cells = NEW_N(a, const char *, 7 * balls->n + 1), **row = cells;

	for (int i = 0; i < balls->n; i++, row += 7) {
		const struct ball *b = balls->list[i].ball;
		const struct finding *f = limit_for(c->findings, gauge_of(b));
		row[0] = balls->list[i].letter;
		row[1] = ball_place_name(c->stair->job, b->place);
		row[2] = where_words(a, b);
		row[3] = inches_words(a, c->stair, b->diameter);
		row[4] = f ? f->asked : c->findings ? "no limit entered" : "no code named";
		row[5] = f ? f->rule->section : "";
		row[6] = f ? result_of(f, b) : "";
	}
	return (struct table){ "Largest ball that passes", columns, 7, cells, balls->n };
}

/* Those of one floor or of the rake, largest of each place, in a row of words. */
static const char *ball_words(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls, const char *where, enum ball_lies lies)
{
	const char *words = "";

	for (int i = 0; i < balls->n; i++) {
		const struct ball *b = balls->list[i].ball;
		if (b->on_rake != (lies == LIES_ON_RAKE))
			continue;
		words = arena_printf(a, "%s%s %s %s", words, *words ? "," : where,
			ball_place_name(c->stair->job, b->place),
			inches_words(a, c->stair, b->diameter));
	}
	return *words ? arena_printf(a, "%s.", words) : "";
}

const char *guard_balls_words(struct arena *a, const struct sheet_context *c)
{
	struct guard_balls balls = guard_balls_find(a, c);
	const char *rake = ball_words(a, c, &balls, " Beside the steps:", LIES_ON_RAKE);
	const char *level = ball_words(a, c, &balls, " On the upper floor:", LIES_LEVEL);

	if (balls.n == 0)
		return "";
	return arena_printf(a, "The largest ball that passes, measured on the model.%s%s", rake,
		level);
}

struct closeup guard_ball_closeup(struct arena *a, const struct sheet_context *c,
	const struct guard_ball *g)
{
	const struct ball *b = g->ball;
	enum view_from from = ball_seen_from(c, b);
	struct view_spec spec = { .from = from, .cut = true };
	struct vec at = view_project(from, b->at);
	double half = fmax(WINDOW, b->diameter * 0.8);
	const struct finding *f = limit_for(c->findings, gauge_of(b));

	spec.at = vec3_dot(b->at, view_frame(from).w) + BEFORE;
	spec.window = box_about(at, half);
	struct closeup t = { .context = c,
		.title = arena_printf(a, "Ball %s, %s", g->letter,
			ball_place_name(c->stair->job, b->place)),
		.view = view_make(a, c->parts, spec),
		.window = spec.window,
		.ball = at,
		.diameter = b->diameter };
	closeup_size(&t,
		(struct closeup_size){ DIM_ABOVE, at.x - b->diameter / 2, at.x + b->diameter / 2,
			at.y });
	closeup_say(&t,
		arena_printf(a, "%s: %s.",
			ball_is_in_guard(b) ? arena_printf(a, "On the %s", where_words(a, b))
					    : "Every step alike",
			inches_words(a, c->stair, b->diameter)));
	if (f)
		closeup_say(&t,
			arena_printf(a, "Asked %s (%s): %s.", f->asked, f->rule->section,
				result_of(f, b)));
	return t;
}
