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

enum { MOST_BALLS = 16 };

struct guard_balls {
	struct guard_ball list[MOST_BALLS];
	int n;
};

/* On the rake, then on level runs; of each place the largest. */
struct guard_balls guard_balls_find(struct arena *a, const struct sheet_context *c);

/* Which way one looks square at the guard that a ball goes through. */
enum view_from ball_seen_from(const struct sheet_context *c, const struct ball *b);

struct table guard_balls_table(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls);

struct closeup guard_ball_closeup(struct arena *a, const struct sheet_context *c,
	const struct guard_ball *g);

#endif
