#include "lists/sums.h"

enum { MOST_SUMS = 1 << 18 };

static bool is_sum(const struct pack_problem *p, const long *up, long cost)
{
	for (int j = 0; j < p->stock_count; j++) {
		long rest = cost - p->stock[j].cost;
		if (rest >= 0 && up[rest] == rest)
			return true;
	}
	return cost == 0;
}

struct sums sums_of(struct arena *a, const struct pack_problem *p, long most)
{
	if (most > MOST_SUMS)
		most = MOST_SUMS;
	long *up = NEW_N(a, long, most + 1);

	/* first whether it is one: then it stands for itself */
	for (long cost = 0; cost <= most; cost++)
		up[cost] = is_sum(p, up, cost) ? cost : -1;
	for (long cost = most; cost >= 0; cost--)
		if (up[cost] < 0)
			up[cost] = cost == most ? most : up[cost + 1];
	return (struct sums){ up, most };
}
