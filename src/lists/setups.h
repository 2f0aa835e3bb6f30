/*
 * Settings of machines, each once, with all the pieces that want it, in the order of the shop.
 *
 * Work goes as in the shop: plane, rip the strips and run mouldings while they are long, trim what
 * is glued up and shall have short pieces cut off it, cut to length, trim panels to width after
 * their ends (the long cut takes off what the cross cut broke out), saw blocks, shape, bore.
 * Within each, settings are sorted so that the next one is the nearest: thickness and fence
 * downwards, mitres up from square, and under one mitre the stops from the longest down.
 */
#ifndef LISTS_SETUPS_H
#define LISTS_SETUPS_H

#include "base/text.h"
#include "pitchboard/list.h"

enum setup_work {
	WORK_PLANE,
	WORK_RIP,
	WORK_BEVEL,
	WORK_PROFILE,
	WORK_TRIM,
	WORK_CROSSCUT,
	WORK_PANEL,
	WORK_BLOCK,
	WORK_SHAPE,
	WORK_BORE
};

/* A setting, and who wants it.  Settings that are equal in all but the marks are one. */
struct setup {
	struct setup *next;
	enum setup_work work;
	double mitre, bevel; /* of the saw, from square */
	double main;         /* thickness, fence, width of a bore; crosscut: stop, 0: none */
	double second;       /* bore: depth; block: height of the blade; crosscut: to a line */
	int rank;            /* of shaping: what goes first */
	const char *words;   /* of shaping and boring: what it is */
	int each;            /* cuts for one piece; 0: one */
	int cuts;
	struct text marks, short_ones;
	const struct part *last;
	struct lettering lettering; /* of `main`: plies are planed, bits are sold finer than the
				       rest is lettered */
};

/* What the blanks want.  Lengths are as lettered: what is lettered alike is one setting. */
const struct setup *setups_find(struct arena *a, const struct job *job, const struct blank *blanks);

#endif
