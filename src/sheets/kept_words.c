#include "sheets/kept_words.h"

#include <stdint.h>
#include <string.h>

/* A place is the same within this, on paper. */
#define SAME_PLACE 0.5

/* Kept words next to each other move together: what moved otherwise than all round it, along the
 * sheet or up it, has changed places with another. */
#define MOVED_ALONG 8.0
#define MOVED_UP 2.5

struct word {
	const char *text;
	struct vec at;
};

struct words {
	struct word *at;
	int n;
};

/* For each word of the later sheet which of the earlier one it is; -1: none. */
struct pairing {
	struct words then, now;
	int *of;
};

static void add_words(struct words *w, const struct drawing *g)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT)
			w->at[w->n++] = (struct word){ k->text.text, k->text.at };
}

static struct words words_of(struct arena *a, struct earlier_sheets sheets)
{
	int marks = 0;

	for (int i = 0; i < sheets.n; i++)
		marks += sheets.sheet[i]->mark_count;
	struct words w = { NEW_N(a, struct word, marks + 1), 0 };
	for (int i = 0; i < sheets.n; i++)
		add_words(&w, sheets.sheet[i]);
	return w;
}

static bool is_in_place(struct word a, struct word b)
{
	return vec_length(vec_sub(a.at, b.at)) < SAME_PLACE;
}

/* Two words that read alike count two; three where they stand in the same place. */
static unsigned worth(struct word a, struct word b)
{
	if (strcmp(a.text, b.text) != 0)
		return 0;
	return is_in_place(a, b) ? 3 : 2;
}

/* The longest common subsequence by weight (Wagner and Fischer, 1974): best[i][k] is that of what
 * follows the i-th word then and the k-th now. */
static void pair_in_order(struct arena *scratch, struct pairing *p)
{
	size_t row = (size_t)p->now.n + 1;
	uint16_t *best = NEW_N(scratch, uint16_t, row * ((size_t)p->then.n + 1));

	for (int i = p->then.n - 1; i >= 0; i--)
		for (int k = p->now.n - 1; k >= 0; k--) {
			uint16_t *b = best + (size_t)i * row + (size_t)k;
			unsigned both = worth(p->then.at[i], p->now.at[k]);
			unsigned most = b[1] > b[row] ? b[1] : b[row];
			if (both && both + b[row + 1] > most)
				most = both + b[row + 1];
			*b = (uint16_t)most;
		}
	for (int i = 0, k = 0; i < p->then.n && k < p->now.n;) {
		const uint16_t *b = best + (size_t)i * row + (size_t)k;
		unsigned both = worth(p->then.at[i], p->now.at[k]);
		if (both && *b == both + b[row + 1])
			p->of[k++] = i++;
		else if (*b == b[row])
			i++;
		else
			k++;
	}
}

static struct vec moved(const struct pairing *p, int k)
{
	return vec_sub(p->now.at[k].at, p->then.at[p->of[k]].at);
}

/* Did two kept words move together? */
static bool is_beside(const struct pairing *p, int k, int other)
{
	if (other < 0 || other >= p->now.n || p->of[other] < 0)
		return false;
	struct vec d = vec_sub(moved(p, k), moved(p, other));
	return p->of[other] - p->of[k] == other - k ||
		(fabs(d.x) < MOVED_ALONG && fabs(d.y) < MOVED_UP);
}

static int next_kept(const struct pairing *p, int k, int step)
{
	for (k += step; k >= 0 && k < p->now.n; k += step)
		if (p->of[k] >= 0)
			return k;
	return -1;
}

static bool is_kept(const struct pairing *p, int k)
{
	if (p->of[k] < 0)
		return false;
	return is_in_place(p->then.at[p->of[k]], p->now.at[k]) ||
		is_beside(p, k, next_kept(p, k, -1)) || is_beside(p, k, next_kept(p, k, 1));
}

const bool *words_kept(struct arena *a, struct earlier_sheets then, const struct drawing *now)
{
	struct arena *scratch = arena_new();
	struct pairing p = { words_of(scratch, then),
		words_of(scratch, (struct earlier_sheets){ &now, 1 }), NULL };
	bool *kept = NEW_N(a, bool, p.now.n + 1);

	p.of = NEW_N(scratch, int, p.now.n + 1);
	for (int k = 0; k < p.now.n; k++)
		p.of[k] = -1;
	pair_in_order(scratch, &p);
	for (int k = 0; k < p.now.n; k++)
		kept[k] = is_kept(&p, k);
	arena_free(scratch);
	return kept;
}
