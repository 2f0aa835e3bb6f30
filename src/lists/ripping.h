/*
 * Blanks to boards: strips are ripped off over the whole length of a board, and cut to length
 * (pack.h has the picture).
 */
#ifndef LISTS_RIPPING_H
#define LISTS_RIPPING_H

#include "lists/offers.h"

/* What is to be as little as can be. */
enum rip_aim {
	RIP_BOARDS, /* their number */
	RIP_WOOD,   /* their number first, then what they measure */
	RIP_PRICE,
};

struct ripping {
	const struct blank *const *blanks; /* each fits some offer */
	int blank_count;
	const struct offers *offers;
	double kerf;
	long work; /* at most, in steps of pack.h */
};

struct ripped {
	struct cut_board *boards; /* one by one */
	int count;
	double bound;   /* no less does: boards, or money */
	bool is_proved; /* no less than this does */
	long work;
};

struct ripped rip_boards(struct arena *a, const struct ripping *ask, enum rip_aim aim);

#endif
