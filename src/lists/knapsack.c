#include "lists/knapsack.h"

#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

#define MOST_STEPS 50000

struct entry {
	struct knapsack_item item;
	int index;
	double worth;             /* of each unit of its size */
	long all_size, all_value; /* of as many as there are */
};

struct filling {
	const struct entry *entries; /* most worth for their size first */
	int n;
	int *now, *best;
	long best_value;
	int steps;
};

static struct entry entry_of(struct knapsack_item item, int index)
{
	return (struct entry){ item, index, (double)item.value / (double)item.size,
		item.most * item.size, item.most * item.value };
}

static int by_worth(const void *pa, const void *pb)
{
	const struct entry *a = pa, *b = pb;

	if (a->worth != b->worth)
		return a->worth > b->worth ? -1 : 1;
	return a->index - b->index;
}

/* What the room left can be worth at most, pieces cut up at will: the next best one fills it. */
static long limit(const struct filling *f, int i, long room)
{
	long value = 0;

	for (; i < f->n && room > 0; i++) {
		const struct entry *e = &f->entries[i];
		if (room < e->all_size)
			return value + (long)((double)room * e->worth * (1 + 1e-15) + 1e-3);
		value += e->all_value;
		room -= e->all_size;
	}
	return value;
}

static void fill(struct filling *f, int i, long room, long value)
{
	if (value > f->best_value) {
		f->best_value = value;
		memcpy(f->best, f->now, (size_t)f->n * sizeof(*f->best));
	}
	if (i == f->n || ++f->steps > MOST_STEPS)
		return;
	struct knapsack_item item = f->entries[i].item;
	long fit = room / item.size;
	for (int k = fit < item.most ? (int)fit : item.most; k >= 0; k--) {
		long left = room - k * item.size, so_far = value + k * item.value;
		/* with fewer of what is worth most for its size it only gets worse */
		if (so_far + limit(f, i + 1, left) <= f->best_value)
			break;
		f->now[i] = k;
		fill(f, i + 1, left, so_far);
	}
	f->now[i] = 0;
}

struct knapsack knapsack_fill(struct arena *a, const struct knapsack_item *items, int n, long room)
{
	struct entry *entries = NEW_N(a, struct entry, n + 1);
	struct filling f = { .entries = entries };
	int *counts = NEW_N(a, int, n + 1);

	for (int i = 0; i < n; i++)
		if (items[i].value > 0 && items[i].size <= room && items[i].most > 0)
			entries[f.n++] = entry_of(items[i], i);
	qsort(entries, (size_t)f.n, sizeof(*entries), by_worth);
	f.now = NEW_N(a, int, f.n + 1);
	f.best = NEW_N(a, int, f.n + 1);
	fill(&f, 0, room, 0);
	for (int i = 0; i < f.n; i++)
		counts[entries[i].index] = f.best[i];
	bool is_exact = f.steps <= MOST_STEPS;
	return (struct knapsack){ is_exact ? f.best_value : limit(&f, 0, room), counts };
}
