#include "lists/strips.h"

#include <string.h>

#include "lists/knapsack.h"

/* All strips of one length. */
struct length {
	long at;
	long *values;            /* by width */
	int **counts;            /* by width, of each piece */
	struct knapsack *beside; /* strips by their width */
};

struct strips {
	const struct pack_problem *problem;
	struct strip_widths widths;
	struct length *lengths;
	int length_count;
	int *length_of; /* of each stock */
	struct knapsack *along;
	struct knapsack_item *items; /* scratch, for pieces and strips alike */
	int *strip_counts;
};

static struct strip_widths widths_of(struct arena *a, const struct pack_problem *p)
{
	long *at = NEW_N(a, long, p->piece_count + 1);
	int *first = NEW_N(a, int, p->piece_count + 1), n = 0;

	for (int i = 0; i < p->piece_count; i++)
		if (!n || at[n - 1] != p->pieces[i].width) {
			at[n] = p->pieces[i].width;
			first[n++] = i;
		}
	first[n] = p->piece_count;
	return (struct strip_widths){ at, first, n };
}

static void add_length(struct arena *a, struct strips *s, long at, struct work *work)
{
	int n = s->widths.n;
	struct length *l = &s->lengths[s->length_count++];

	*l = (struct length){ at, NEW_N(a, long, n + 1), NEW_N(a, int *, n + 1),
		knapsack_new(a, n, work) };
	for (int k = 0; k < n; k++)
		l->counts[k] = NEW_N(a, int, s->problem->piece_count + 1);
}

struct strips *strips_new(struct arena *a, const struct pack_problem *sorted, struct work *work)
{
	struct strips *s = NEW(a, struct strips);

	s->problem = sorted;
	s->widths = widths_of(a, sorted);
	s->lengths = NEW_N(a, struct length, sorted->stock_count + 1);
	s->length_of = NEW_N(a, int, sorted->stock_count + 1);
	for (int j = 0; j < sorted->stock_count; j++) {
		int k = 0;
		while (k < s->length_count && s->lengths[k].at != sorted->stock[j].length)
			k++;
		if (k == s->length_count)
			add_length(a, s, sorted->stock[j].length, work);
		s->length_of[j] = k;
	}
	s->along = knapsack_new(a, sorted->piece_count, work);
	s->items = NEW_N(a, struct knapsack_item, sorted->piece_count + 1);
	s->strip_counts = NEW_N(a, int, s->widths.n + 1);
	return s;
}

struct strip_widths strips_widths(const struct strips *s)
{
	return s->widths;
}

/* The narrowest first: what is best there goes on a wider strip too, to begin with. */
static void fill_length(struct strips *s, struct length *l)
{
	size_t all = (size_t)s->problem->piece_count * sizeof(**l->counts);

	for (int k = s->widths.n - 1; k >= 0; k--) {
		if (k + 1 < s->widths.n)
			memcpy(l->counts[k], l->counts[k + 1], all);
		else
			memset(l->counts[k], 0, all);
		l->values[k] = knapsack_fill(s->along, s->widths.first[k], l->at, l->counts[k]);
	}
}

/* Of each width no more strips than pieces that need it; where a narrower one does as well, that
 * one instead. */
static void load_strips(struct strips *s, struct length *l, const int *left)
{
	int needed = 0;

	for (int k = 0; k < s->widths.n; k++) {
		for (int i = s->widths.first[k]; i < s->widths.first[k + 1]; i++)
			needed += left[i];
		bool is_better = k + 1 == s->widths.n || l->values[k] > l->values[k + 1];
		s->items[k] = (struct knapsack_item){ s->widths.at[k], l->values[k],
			is_better ? needed : 0 };
		needed = is_better ? 0 : needed;
	}
	knapsack_load(l->beside, s->items, s->widths.n);
}

void strips_set(struct strips *s, const long *worth, const int *left)
{
	const struct pack_piece *pieces = s->problem->pieces;

	for (int i = 0; i < s->problem->piece_count; i++)
		s->items[i] = (struct knapsack_item){ pieces[i].length, worth[i], left[i] };
	knapsack_load(s->along, s->items, s->problem->piece_count);
	for (int k = 0; k < s->length_count; k++) {
		fill_length(s, &s->lengths[k]);
		load_strips(s, &s->lengths[k], left);
	}
}

long strips_side_by_side(struct strips *s, int stock, int width, long wide)
{
	return knapsack_worth(s->lengths[s->length_of[stock]].beside, width, wide);
}

/* So many strips of each width, those that are best. */
static struct packed_board board_of(struct arena *a, const struct strips *s, const struct length *l,
	const int *strip_counts)
{
	int n = 0, kinds = s->problem->piece_count, *counts = NEW_N(a, int, kinds + 1);

	for (int k = 0; k < s->widths.n; k++)
		n += strip_counts[k];
	struct packed_strip *strips = NEW_N(a, struct packed_strip, n + 1);
	n = 0;
	for (int k = 0; k < s->widths.n; k++)
		for (int i = 0; i < strip_counts[k]; i++) {
			strips[n++].counts = l->counts[k];
			for (int j = 0; j < kinds; j++)
				counts[j] += l->counts[k][j];
		}
	return (struct packed_board){ 0, counts, strips, n };
}

struct full_board strips_best_board(struct arena *a, struct strips *s, int stock)
{
	struct length *l = &s->lengths[s->length_of[stock]];

	memset(s->strip_counts, 0, (size_t)s->widths.n * sizeof(*s->strip_counts));
	long value = knapsack_fill(l->beside, 0, s->problem->stock[stock].width, s->strip_counts);
	struct packed_board b = board_of(a, s, l, s->strip_counts);
	b.stock = stock;
	return (struct full_board){ b, value };
}
