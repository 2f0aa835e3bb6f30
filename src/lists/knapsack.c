#include "lists/knapsack.h"

#include <stdlib.h>
#include <string.h>

#define MOST_STEPS 500    /* of branch and bound, which mostly is enough, for one room */
#define MOST_STATES 60000 /* of dynamic programming, where it is not */

struct entry {
	struct knapsack_item item;
	int index;
	double worth;             /* of each unit of its size */
	long all_size, all_value; /* of as many as there are */
};

struct knapsack {
	struct arena *arena;
	struct work *work;
	struct entry *loaded; /* most worth for their size first */
	int loaded_count;
	/* while one room is filled: */
	struct entry *entries;
	int n;
	int *now, *best;
	long best_value;
	int steps, most_steps;
	struct state *states;
	int state_count;
};

/* Some pieces on the room: so many of an entry on those of an earlier state. */
struct state {
	long used, value;
	int entry, count, from; /* from -1: nothing yet */
};

struct knapsack *knapsack_new(struct arena *a, int most_items, struct work *work)
{
	struct knapsack *k = NEW(a, struct knapsack);

	k->work = work;
	k->loaded = NEW_N(a, struct entry, most_items + 1);
	k->entries = NEW_N(a, struct entry, most_items + 1);
	k->now = NEW_N(a, int, most_items + 1);
	k->best = NEW_N(a, int, most_items + 1);
	k->arena = a;
	return k;
}

static int by_worth(const void *pa, const void *pb)
{
	const struct entry *a = pa, *b = pb;

	if (a->worth != b->worth)
		return a->worth > b->worth ? -1 : 1;
	return a->index - b->index;
}

void knapsack_load(struct knapsack *k, const struct knapsack_item *items, int n)
{
	k->loaded_count = 0;
	for (int i = 0; i < n; i++)
		if (items[i].value > 0 && items[i].most > 0)
			k->loaded[k->loaded_count++] = (struct entry){ items[i], i,
				(double)items[i].value / (double)items[i].size,
				items[i].most * items[i].size, items[i].most * items[i].value };
	qsort(k->loaded, (size_t)k->loaded_count, sizeof(*k->loaded), by_worth);
}

/* What the room left can be worth at most, pieces cut up at will: the next best one fills it. */
static long limit(const struct knapsack *f, int i, long room)
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

static void fill(struct knapsack *f, int i, long room, long value)
{
	if (value > f->best_value) {
		f->best_value = value;
		memcpy(f->best, f->now, (size_t)f->n * sizeof(*f->best));
	}
	if (i == f->n || ++f->steps > f->most_steps)
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

/* ---- state by state, where many fillings take up the same room ---- */

/* A run of states, by room used, each worth more than those before it. */
struct run {
	int from, to;
};

/* So many of an entry are put on at once, or not; those before it are weighed already. */
struct bundle {
	int entry, count;
	int next; /* entry that may still go on after it */
};

static void keep_state(struct knapsack *f, int at)
{
	f->best_value = f->states[at].value;
	memset(f->best, 0, (size_t)f->n * sizeof(*f->best));
	for (; f->states[at].from >= 0; at = f->states[at].from)
		f->best[f->states[at].entry] += f->states[at].count;
}

static void add_state(struct knapsack *f, struct state s, int next, long room)
{
	int at = f->state_count;

	if (s.value + limit(f, next, room - s.used) <= f->best_value)
		return;
	f->states[f->state_count++] = s;
	if (s.value > f->best_value)
		keep_state(f, at);
}

/* All states of a run, without the bundle and with it. */
static struct run merge(struct knapsack *f, struct bundle b, long room, struct run run)
{
	const struct knapsack_item *item = &f->entries[b.entry].item;
	long size = item->size * b.count, value = item->value * b.count, most = -1;
	struct run out = { f->state_count, 0 };
	int without = run.from, with = without;

	while (without < run.to || (with < run.to && f->states[with].used + size <= room)) {
		bool fits = with < run.to && f->states[with].used + size <= room;
		bool is_old = !fits ||
			(without < run.to &&
				f->states[without].used <= f->states[with].used + size);
		struct state s = is_old
			? f->states[without++]
			: (struct state){ f->states[with].used + size,
				  f->states[with].value + value, b.entry, b.count, with };
		with += !is_old;
		if (s.value <= most)
			continue;
		most = s.value;
		add_state(f, s, b.next, room);
	}
	out.to = f->state_count;
	return out;
}

/* All entries; false where there are too many states. */
static bool fill_by_states(struct knapsack *f, long room)
{
	struct run run = { 0, 1 };

	if (!f->states)
		f->states = NEW_N(f->arena, struct state, MOST_STATES);
	f->states[0] = (struct state){ .from = -1 };
	f->state_count = 1;
	for (int i = 0; i < f->n; i++)
		for (int left = f->entries[i].item.most, count = 1; left > 0; count *= 2) {
			if (count > left)
				count = left;
			left -= count;
			if (f->state_count + 2 * (run.to - run.from) > MOST_STATES)
				return false;
			run = merge(f, (struct bundle){ i, count, left ? i : i + 1 }, room, run);
		}
	return true;
}

/* Begins with what `counts` holds, if there are any. */
static void enter_items(struct knapsack *f, int first, long room, const int *counts)
{
	f->n = 0;
	f->best_value = 0;
	for (int i = 0; i < f->loaded_count; i++) {
		const struct entry *e = &f->loaded[i];
		if (e->index < first || e->item.size > room)
			continue;
		f->entries[f->n] = *e;
		f->now[f->n] = 0;
		f->best[f->n] = counts ? counts[e->index] : 0;
		f->best_value += f->best[f->n++] * e->item.value;
	}
	f->steps = 0;
	f->most_steps = work_is_over(f->work) ? 0 : MOST_STEPS;
}

static long fill_room(struct knapsack *f, long room)
{
	fill(f, 0, room, 0);
	f->work->done += 1 + f->steps;
	if (f->steps <= f->most_steps)
		return f->best_value;
	if (work_is_over(f->work))
		return limit(f, 0, room);
	bool is_exact = fill_by_states(f, room);
	f->work->done += f->state_count;
	return is_exact ? f->best_value : limit(f, 0, room);
}

long knapsack_fill(struct knapsack *k, int first, long room, int *counts)
{
	enter_items(k, first, room, counts);
	long value = fill_room(k, room);
	for (int i = 0; i < k->n; i++)
		counts[k->entries[i].index] = k->best[i];
	return value;
}

long knapsack_worth(struct knapsack *k, int first, long room)
{
	enter_items(k, first, room, NULL);
	return fill_room(k, room);
}
