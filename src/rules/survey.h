/*
 * A survey of the stair as made: every face of every placed piece, in the axes
 * of the flight, and how to find the outermost point in some region of it.
 *
 * Gauges ask the wood, not the arithmetic that made it: the top of a tread is
 * the highest point of tread wood in a column over it, the clear width ends at
 * the innermost point of rail, newel or wall within the height that counts.
 */
#ifndef RULES_SURVEY_H
#define RULES_SURVEY_H

#include "pitchboard/rule.h"

struct face {
	const struct vec3 *at;
	int n;
};

/* A piece in its place. */
struct placed {
	const struct part *part;
	const struct face *faces;
	int face_count;
	struct box3 box; /* round it */
};

struct survey {
	struct arena *arena;
	const struct stair *stair;
	const struct part *parts;
	const struct flight *flight;
	const struct placed *pieces;
	int count;
	struct vec3 *scratch[2]; /* for cutting faces */
	struct slope_line nosing_line;
	double first_nosing, last_nosing; /* x of them; the last is that of the upper floor */
	double top;                       /* level of the floor that the flight comes up to */
};

struct survey survey_make(struct arena *a, const struct stair *s, const struct part *parts);

/* Points p with normal·p <= at. */
struct half_space {
	struct vec3 normal;
	double at;
};

enum { MOST_SIDES = 8 };

struct region {
	struct half_space sides[MOST_SIDES];
	int n;
};

struct region region_between(struct region r, struct vec3 direction, double from, double to);
struct region region_box(struct vec3 low, struct vec3 high);

struct extreme {
	bool found;
	double value;
	struct vec3 at;
	const struct part *part;
};

/* Which pieces count. */
typedef bool counts_fn(const struct part *p);

/* The greatest direction·p of all points of wood within the region. */
struct extreme survey_extreme(const struct survey *s, counts_fn *counts, struct region r,
	struct vec3 direction);

/* Direction in which a point lies plumb over the nosing line: direction·p - nosing_line.z0. */
struct vec3 survey_over_nosings(const struct survey *s);

/* "step 3", "the lower floor", "the upper floor": what is under x. */
const char *survey_place(const struct survey *s, double x);

bool counts_walking(const struct part *p);  /* treads, landing nosing, floors */
bool counts_treads(const struct part *p);   /* treads and landing nosing */
bool counts_overhead(const struct part *p); /* upper floor and header */
bool counts_walls(const struct part *p);
bool counts_rails(const struct part *p);       /* on the rake */
bool counts_guard_rails(const struct part *p); /* of those, what stands on an open side */
bool counts_wall_rails(const struct part *p);  /* and what hangs on a wall, its returns with it */
bool counts_level_rails(const struct part *p); /* round the opening, at the upper floor */
bool counts_newels(const struct part *p);
bool counts_infill(const struct part *p);
bool counts_risers(const struct part *p);

/* A length as it is said in a finding: in inches alone, or in millimetres with their unit. */
const char *survey_say(const struct survey *s, double mm);

#endif
