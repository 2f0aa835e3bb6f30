/*
 * Solids at random, the same on every machine.
 */
#ifndef TESTS_DRAW_RANDOM_H
#define TESTS_DRAW_RANDOM_H

#include <stdint.h>

#include "draw_solids.h"

/* Numbers that look random and are the same on every machine: Lehmer's generator with the factor
 * of Park and Miller, CACM 31(10), 1988. */
static inline double chance(uint64_t *seed, double low, double high)
{
	*seed = *seed * 48271 % 2147483647;
	return low + (high - low) * (double)*seed / 2147483647;
}

static inline struct frame any_frame(uint64_t *seed)
{
	struct vec3 u =
		vec3_unit(vec3(chance(seed, -1, 1), chance(seed, -1, 1), chance(seed, 0.1, 1)));
	struct vec3 v = vec3_unit(vec3_cross(u, vec3(chance(seed, 0.1, 1), 1, 0)));
	struct vec3 at =
		vec3(chance(seed, -200, 200), chance(seed, -200, 200), chance(seed, -200, 200));
	return (struct frame){ at, u, v, vec3_cross(u, v) };
}

/* A star, mostly not convex, between two planes that may both lean. */
static inline void add_loft(struct bench *b, uint64_t *seed)
{
	int n = (int)chance(seed, 3, 12);
	struct vec3 *top = NEW_N(b->arena, struct vec3, n),
		    *bottom = NEW_N(b->arena, struct vec3, n);
	double lean[4];
	for (int i = 0; i < 4; i++)
		lean[i] = chance(seed, -0.2, 0.2);
	for (int i = 0; i < n; i++) {
		double r = chance(seed, 15, 90), x = r * cos(2 * PI * i / n);
		double y = r * sin(2 * PI * i / n);
		top[i] = vec3(x, y, 60 + lean[0] * x + lean[1] * y);
		bottom[i] = vec3(x, y, lean[2] * x + lean[3] * y);
	}
	bench_solid(b, bench_part(b, "L", any_frame(seed)), n, top, bottom);
}

static inline void add_box(struct bench *b, uint64_t *seed)
{
	struct vec3 low =
		vec3(chance(seed, -250, 200), chance(seed, -250, 200), chance(seed, -250, 200));
	struct vec3 size = vec3(chance(seed, 5, 120), chance(seed, 5, 120), chance(seed, 5, 120));
	bench_box(b, bench_part(b, "B", frame_house()), low, vec3_add(low, size));
}

#endif
