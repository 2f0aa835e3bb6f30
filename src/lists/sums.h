/*
 * Sums that costs of boards can come to: between two of them there is no cost of a job.
 */
#ifndef LISTS_SUMS_H
#define LISTS_SUMS_H

#include "lists/pack.h"

struct sums {
	const long *up; /* the least sum that is not less, for each number up to `most` */
	long most;
};

/* Up to `most`, or as far as is worth the trouble. */
struct sums sums_of(struct arena *a, const struct pack_problem *p, long most);

/* The least sum that is not less; the number itself beyond what was reckoned. */
static inline long sums_up(const struct sums *s, long cost)
{
	return cost >= 0 && cost < s->most ? s->up[cost] : cost;
}

#endif
