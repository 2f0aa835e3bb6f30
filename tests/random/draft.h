/*
 * A job file being made up: what its parts have to know of each other, and how a size is thrown
 * and written.
 */
#ifndef RANDOM_DRAFT_H
#define RANDOM_DRAFT_H

#include <math.h>

#include "base/text.h"
#include "random/dice.h"

/* Sizes are thrown in millimetres and written in the job's unit. */
struct draft {
	struct text text;
	struct dice dice;
	bool inches;
	bool right_open, left_open;
	bool open_risers, wall_is_sawn, open_is_sawn, open_is_rough;
	bool left_starts, right_starts; /* open from the first step on */
	bool has_start;
	double rise, run;
	int risers, steps;
	bool chooses; /* the program, how many: about as many */
	double tread, nosing, riser;
	double opening; /* its length; 0: not said */
	bool level_runs;
	double under; /* of a nosing: to where its underside is whole */
	double side_overhang;
	int passed;      /* the last step that a wall in the treads passes */
	double wall_gap; /* behind the carriages at walls */
};

static inline bool once_in(struct draft *d, int n)
{
	return dice_once_in(&d->dice, n);
}

static inline double size(struct draft *d, double from, double to)
{
	double step = d->inches ? 25.4 / 16 : 1;
	return dice_size(&d->dice, from - fmod(from, step), to, step);
}

static inline void put(struct draft *d, int indent, const char *key, double mm)
{
	if (d->inches)
		text_add(&d->text, "%*s%s: %.4f in\n", indent, "", key, mm / 25.4);
	else
		text_add(&d->text, "%*s%s: %.3f mm\n", indent, "", key, mm);
}

/* Left to its default half of the time. */
static inline void maybe(struct draft *d, int indent, const char *key, double from, double to)
{
	double mm = size(d, from, to);
	if (once_in(d, 2))
		put(d, indent, key, mm);
}

/* The edge of treads, with their overhang; the group mouldings. */
void draft_nosing(struct draft *d);
void draft_mouldings(struct draft *d);
void draft_skirts(struct draft *d);

/* Of the group treads: walls wrapped, a starting step, loose tenons. */
void draft_treads(struct draft *d);

/* The group stock. */
void draft_stock(struct draft *d);

/* The groups balusters and infill. */
void draft_infill(struct draft *d);

/* The groups rail and wall_rails. */
void draft_rail(struct draft *d);
void draft_wall_rails(struct draft *d);

#endif
