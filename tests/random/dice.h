/*
 * Numbers thrown from a seed: the same seed throws the same numbers everywhere.
 */
#ifndef RANDOM_DICE_H
#define RANDOM_DICE_H

#include <stdbool.h>
#include <stdint.h>

struct dice {
	uint64_t state;
};

static inline uint64_t dice_throw(struct dice *d)
{
	/* xorshift64*: Vigna, "An experimental exploration of Marsaglia's xorshift generators" */
	d->state ^= d->state >> 12;
	d->state ^= d->state << 25;
	d->state ^= d->state >> 27;
	return d->state * UINT64_C(2685821657736338717);
}

static inline struct dice dice_from(uint64_t seed)
{
	struct dice d = { seed * UINT64_C(0x9E3779B97F4A7C15) + 1 };
	for (int i = 0; i < 8; i++)
		dice_throw(&d);
	return d;
}

/* Whole, both ends included. */
static inline int dice_count(struct dice *d, int from, int to)
{
	return from + (int)((dice_throw(d) >> 33) % (uint64_t)(to - from + 1));
}

/* Once in `n` throws. */
static inline bool dice_once_in(struct dice *d, int n)
{
	return dice_count(d, 1, n) == 1;
}

/* A size in steps of `step`. */
static inline double dice_size(struct dice *d, double from, double to, double step)
{
	return from + step * dice_count(d, 0, (int)((to - from) / step));
}

#endif
