/*
 * The balls that a guard sheet draws: of each kind of place the largest one.
 */
#ifndef SHEETS_GUARD_BALLS_H
#define SHEETS_GUARD_BALLS_H

#include "draw/table.h"
#include "pitchboard/ball.h"
#include "sheets/closeup.h"

struct guard_ball {
	const char *letter; /* "a" */
	const struct ball *ball;
};

/* Each place on the rake and on level runs, and between the treads. */
enum { MOST_BALLS = 2 * BALL_BETWEEN_TREADS + 1 };

struct guard_balls {
	struct guard_ball list[MOST_BALLS];
	int n;
	const struct ball *all;
};

/* On the rake, then on level runs, then between the treads; of each place the largest. */
struct guard_balls guard_balls_find(struct arena *a, const struct sheet_context *c);

/* Which way one looks square at the guard that a ball goes through. */
enum view_from ball_seen_from(const struct sheet_context *c, const struct ball *b);

/* Seen from a side of the stair; else it is only seen in section. */
bool ball_is_in_guard(const struct ball *b);

/* How the guard of an open side compares whose balls are not drawn, because none is the largest. */
const char *guard_balls_other_side(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls);

struct table guard_balls_table(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls);

struct closeup guard_ball_closeup(struct arena *a, const struct sheet_context *c,
	const struct guard_ball *g);

/* The same in one sentence for who reads no table of them; "" where nothing is open. */
const char *guard_balls_words(struct arena *a, const struct sheet_context *c);

#endif
