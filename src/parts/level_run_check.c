/*
 * Level runs that cannot stand: what is said of them.
 */
#include "parts/level_run.h"

struct run_check {
	const struct rod *rod;
	const struct side *side;
	struct lettering lettering;
	struct arena *arena;
	struct diags *diags;
};

static const char *letter(const struct run_check *c, double mm)
{
	return length_say(c->arena, c->lettering, mm);
}

/* Which of the job's, as they are written. */
static int number_of(const struct run_check *c, const struct run_line *l)
{
	return (int)(l->run - c->rod->job->rail.level_runs) + 1;
}

static void refuse(const struct run_check *c, const struct run_line *l, const char *key,
	const char *hint, const char *why)
{
	diag_error(c->diags, node_pos(l->run->src, key), hint, "rail.level_runs[%d]: %s",
		number_of(c, l), why);
}

static const char *write_length(const struct run_check *c, const struct run_line *l, double mm,
	int way)
{
	const char *path = arena_printf(c->arena, "rail.level_runs[%d].length", number_of(c, l));
	return way > 0 ? job_write_least(c->arena, c->rod->job, path, mm)
		       : job_write_most(c->arena, c->rod->job, path, mm);
}

static bool level_is_along(enum run_direction d)
{
	return d == RUN_ON || d == RUN_BACK;
}

static bool is_turned_back(enum run_direction before, enum run_direction now)
{
	switch (now) {
	case RUN_ON: return before == RUN_BACK;
	case RUN_BACK: return before == RUN_ON;
	case RUN_OUT: return before == RUN_ACROSS;
	case RUN_ACROSS: return before == RUN_OUT;
	}
	return false;
}

static bool is_wider_than_newel(const struct job *job)
{
	return job->rail.width > job->newels.section + NEAR_ENOUGH;
}

/* Does it go on from the one before it? */
static bool follows(const struct run_check *c, const struct run_line *l,
	const struct run_line *before)
{
	if (!before && l->run->direction == RUN_ACROSS)
		refuse(c, l, "direction", "begin with on, back or out",
			"a run across the head of the stair bars the way");
	else if (before && before->run->end == RUN_END_WALL)
		refuse(c, l, "direction", "let the run before it end at a newel",
			"the run before this one ends at a wall, there is no newel to go on from");
	else if (before && is_turned_back(before->run->direction, l->run->direction))
		refuse(c, l, "direction",
			arena_printf(c->arena, "write rail.level_runs[%d].direction: %s",
				number_of(c, l),
				level_is_along(before->run->direction) ? "out" : "on"),
			"this run goes back over the one before it");
	else if (l->is_met && l->run->direction != RUN_ON && is_wider_than_newel(c->rod->job))
		refuse(c, l, "direction",
			job_write_least(c->arena, c->rod->job, "newels.section",
				c->rod->job->rail.width),
			"two rails wider than their newel cannot meet round its corner");
	else
		return true;
	return false;
}

static bool overlap(struct box a, struct box b)
{
	return a.x0 < b.x1 - NEAR_ENOUGH && b.x0 < a.x1 - NEAR_ENOUGH &&
		a.y0 < b.y1 - NEAR_ENOUGH && b.y0 < a.y1 - NEAR_ENOUGH;
}

/* A size that is to be cleared, on the tape's next graduation. */
static const char *letter_up(const struct run_check *c, double mm)
{
	return letter(c, length_on_graduation(c->lettering, mm, 1));
}

/* Across it must pass the opening's far end; along or away from it, its edge. */
static const char *way_off(const struct run_check *c, const struct run_line *l,
	const struct run_line *before, struct box opening)
{
	const struct job *job = c->rod->job;
	struct box b = level_run_box(c->rod, l);
	bool across = l->run->direction == RUN_ACROSS;
	double off = across ? b.x1 - opening.x0 : b.y1 - opening.y0;
	double inset = l->run->from_edge > 0 ? l->run->from_edge : job->newels.section / 2;
	if (!isfinite(off))
		return "give opening.length, and go back past its end";
	if (before)
		return write_length(c, before, before->run->length + off, 1);
	return job_write_least(c->arena, job,
		arena_printf(c->arena, "rail.level_runs[%d].from_edge", number_of(c, l)),
		inset + off);
}

/* There must be a floor under it, and no wall in it. */
static bool has_floor(const struct run_check *c, const struct run_line *l,
	const struct run_line *before)
{
	const struct rod *r = c->rod;
	struct box b = level_run_box(r, l);
	const struct side *other = &r->sides[c->side->hand == HAND_RIGHT ? HAND_LEFT : HAND_RIGHT];
	struct box opening = level_run_opening(r, c->side);
	/* the stair's own newel stands at the opening's corner */
	if (l->is_met && l->run->direction == RUN_ON)
		b.x0 = fmax(b.x0, r->header_x);
	if (l->is_met && l->run->direction == RUN_OUT)
		b.y1 = fmin(b.y1, opening.y0);
	if (overlap(b, opening))
		refuse(c, l, "length", way_off(c, l, before, opening),
			"this run stands over the opening");
	else if (!other->is_open && b.y1 > r->width + NEAR_ENOUGH)
		refuse(c, l, "length", write_length(c, l, l->run->length - (b.y1 - r->width), -1),
			"this run goes into the wall on the other side");
	else
		return true;
	return false;
}

/* How wide the opening has to be for the stair's own wood to come up through it. */
static double least_opening(const struct rod *r)
{
	double right = level_run_reach(r, &r->sides[HAND_RIGHT]);
	double left = level_run_reach(r, &r->sides[HAND_LEFT]);
	bool both = r->sides[HAND_RIGHT].is_open && r->sides[HAND_LEFT].is_open;
	return r->width + (both ? 2 * fmax(right, left) : fmax(right, left));
}

/* Beside the flight the floor has to keep clear of the stair's own wood. */
static bool keeps_clear(const struct run_check *c, const struct run_line *l)
{
	const struct rod *r = c->rod;
	double reach = level_run_reach(r, c->side), past = -level_run_edge(r, c->side);
	struct box b = level_run_box(r, l);
	if (b.x0 >= r->header_x - NEAR_ENOUGH || past >= reach - NEAR_ENOUGH)
		return true;
	diag_error(c->diags, rod_pos(r, r->job->opening.src, "width"),
		arena_printf(c->arena, "write opening.width: %s", letter_up(c, least_opening(r))),
		"opening.width: the floor under a level run would run %s into the treads, rail or "
		"newels on the %s",
		letter(c, reach - past), hand_word(c->side->hand));
	return false;
}

/* Nobody measured where the floor beside the flight ends: say where it is drawn. */
static void warn_of_edge(const struct run_check *c, const struct run_line *l)
{
	const struct rod *r = c->rod;
	double past = -level_run_edge(r, c->side);
	if (r->job->opening.width > 0 || past < NEAR_ENOUGH ||
		level_run_box(r, l).x0 >= r->header_x - NEAR_ENOUGH)
		return;
	diag_warning(c->diags, rod_pos(r, r->job->opening.src, "width"),
		arena_printf(c->arena, "measure it: opening.width, at least %s",
			letter_up(c, least_opening(r))),
		"opening: no width is given; on the %s the floor under the level run is taken to "
		"end %s outside the stair, clear of treads, rail and newels",
		hand_word(c->side->hand), letter(c, past));
}

/* How far from the wall that it is said to end at a run may stop: what is scribed away. */
#define TO_THE_WALL 25.0

/* A guard that does not reach its wall leaves a gap to fall through. */
static void warn_short(const struct run_check *c, const struct run_line *l)
{
	const struct rod *r = c->rod;
	const struct side *other = &r->sides[c->side->hand == HAND_RIGHT ? HAND_LEFT : HAND_RIGHT];
	double gap = r->width - level_run_box(r, l).y1;

	if (l->run->end != RUN_END_WALL || l->run->direction != RUN_ACROSS || other->is_open ||
		gap < TO_THE_WALL)
		return;
	diag_warning(c->diags, node_pos(l->run->src, "length"),
		write_length(c, l, l->run->length + gap, -1),
		"rail.level_runs[%d]: this run is said to end at a wall, and stops %s short of it",
		number_of(c, l), letter(c, gap));
}

/* Where one does not follow the one before it, nothing is known of those after it. */
static bool check_side(const struct run_check *c, const struct run_lines *l)
{
	bool fine = true;

	for (int i = 0; i < l->n; i++) {
		const struct run_line *before = i ? &l->line[i - 1] : NULL;
		if (!follows(c, &l->line[i], before))
			return false;
		fine = has_floor(c, &l->line[i], before) && keeps_clear(c, &l->line[i]) && fine;
	}
	return fine;
}

/* Runs that follow each other share a newel; all others keep apart, and at their ends too. */
static void check_meetings(const struct run_check *c, const struct run_lines *one,
	const struct run_lines *other, int apart)
{
	const struct side *sides = c->rod->sides;
	for (int i = 0; i < one->n; i++)
		for (int k = apart > 0 ? i + apart : 0; k < other->n; k++) {
			struct box a = level_run_box(c->rod, &one->line[i]);
			struct box b = level_run_box(c->rod, &other->line[k]);
			a = rod_box(c->rod, &sides[one->line[i].run->side], a);
			b = rod_box(c->rod, &sides[other->line[k].run->side], b);
			if (!overlap(a, b))
				continue;
			refuse(c, &other->line[k], "length", "make one of them shorter",
				arena_printf(c->arena,
					"this run and rail.level_runs[%d] run into each other",
					number_of(c, &one->line[i])));
			return;
		}
}

void level_runs_check(struct arena *a, const struct rod *r, struct diags *d)
{
	struct run_check c = { r, NULL, job_lettering(r->job), a, d };
	struct run_lines lines[2];
	bool fine = true;
	for (int i = 0; i < 2; i++) {
		c.side = &r->sides[i];
		lines[i] = level_run_lines(a, r, c.side);
		fine = check_side(&c, &lines[i]) && fine;
	}
	if (!fine)
		return;
	for (int i = 0; i < 2; i++)
		for (int k = 0; k < lines[i].n; k++) {
			c.side = &r->sides[i];
			warn_short(&c, &lines[i].line[k]);
			warn_of_edge(&c, &lines[i].line[k]);
		}
	check_meetings(&c, &lines[0], &lines[0], 2);
	check_meetings(&c, &lines[1], &lines[1], 2);
	check_meetings(&c, &lines[0], &lines[1], 0);
}
