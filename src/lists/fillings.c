#include "lists/fillings.h"

#include <string.h>

/* How much room a piece takes and what it is worth, for the order of limits. */
struct takes {
	int piece;
	double each, worth;
};

/* The longest first leaves short ones for the boards to come, which is good for a packing; those
 * worth most for their length first finds the best filling of one board. */
enum trying { TRY_LONGEST, TRY_WORTHIEST };

struct listing {
	struct arena *arena;
	const struct fillings_wanted *wanted;
	const struct pack_problem *problem;
	struct strip_widths widths;
	enum trying trying;
	int kinds;
	int stock;
	int *counts;   /* on the board so far */
	int *left;     /* of each piece, beside those */
	int *strips;   /* the same by strips, one after the other */
	int *width_of; /* each of them: which width it has */
	int strip_count;
	struct takes *along, *by_area; /* worth most for the room first */
	int *order;                    /* in which pieces are tried */
	long most_loss;                /* falls below the worst of a full list */
	struct filling *list;
	int n, steps;
	bool is_cut_short;
};

/* The strip that is being filled. */
struct filled {
	int first;   /* piece, in the order of all: it makes the strip's width */
	long wide;   /* beside it */
	long beside; /* what that can be worth at most */
};

static long length_of(const struct listing *l, int piece)
{
	return l->problem->pieces[piece].length;
}

static bool goes_on(const struct listing *l, int piece, long room)
{
	return length_of(l, piece) <= room && l->left[piece] > 0;
}

static int *last_strip(const struct listing *l)
{
	return l->strips + (l->strip_count - 1) * l->kinds;
}

/* ---- the list ---- */

static struct packed_board copy_board(const struct listing *l)
{
	size_t n = (size_t)l->kinds;
	int *counts = NEW_N(l->arena, int, n + 1);
	int *on_strips = NEW_N(l->arena, int, n *(size_t)l->strip_count + 1);
	struct packed_strip *strips = NEW_N(l->arena, struct packed_strip, l->strip_count + 1);

	memcpy(counts, l->counts, n * sizeof(*counts));
	memcpy(on_strips, l->strips, n * (size_t)l->strip_count * sizeof(*on_strips));
	for (int i = 0; i < l->strip_count; i++)
		strips[i].counts = on_strips + i * l->kinds;
	return (struct packed_board){ l->stock, counts, strips, l->strip_count };
}

/* The same pieces on the same kind of board, otherwise parted into strips, are one filling. */
static bool is_listed(const struct listing *l, long loss)
{
	size_t all = (size_t)l->kinds * sizeof(*l->counts);

	for (int i = 0; i < l->n; i++)
		if (l->list[i].loss == loss && l->list[i].board.stock == l->stock &&
			memcmp(l->list[i].board.counts, l->counts, all) == 0)
			return true;
	return false;
}

/* Into its place among the best; of two that lose alike the one found first goes before. */
static void keep(struct listing *l, long loss)
{
	if (is_listed(l, loss))
		return;
	int at = l->n < l->wanted->most ? l->n : l->n - 1;
	while (at > 0 && l->list[at - 1].loss > loss) {
		l->list[at] = l->list[at - 1];
		at--;
	}
	l->list[at] = (struct filling){ copy_board(l), loss };
	l->n += l->n < l->wanted->most;
	if (l->n == l->wanted->most && l->list[l->n - 1].loss <= l->most_loss)
		l->most_loss = l->list[l->n - 1].loss - 1;
}

/* ---- along a strip ---- */

static void next_strip(struct listing *l, int width, long wide, long loss);

/* Which pieces a limit counts. */
struct from {
	int piece; /* in the order of all */
	int place; /* in the order of what they are worth */
};

/* Those still to be tried on the strip. */
static struct from still_to_try(const struct listing *l, int first, int at)
{
	switch (l->trying) {
	case TRY_LONGEST: return (struct from){ first > at ? first : at, 0 };
	case TRY_WORTHIEST: break;
	}
	return (struct from){ first, at };
}

/* What so much room is worth at most, pieces cut up at will: those that are worth most for what
 * they take of it first. */
static long limit(const struct listing *l, const struct takes *takes, struct from from, double room)
{
	double worth = 0;

	for (const struct takes *t = takes + from.place; t < takes + l->kinds && room > 0; t++) {
		double left = l->left[t->piece];
		if (t->piece < from.piece)
			continue;
		if (left * t->each > room)
			left = room / t->each;
		worth += left * t->worth;
		room -= left * t->each;
	}
	return (long)(worth * (1 + 1e-12)) + 1;
}

/* What goes beside a strip: strips as good as any, and no more pieces than are left. */
static long most_beside(const struct listing *l, int width, long wide)
{
	double area = (double)wide * (double)l->problem->stock[l->stock].length;
	long by_strips = strips_side_by_side(l->wanted->strips, l->stock, width, wide);
	long by_area = limit(l, l->by_area, (struct from){ l->widths.first[width], 0 }, area);

	return by_area < by_strips ? by_area : by_strips;
}

/* Would a piece that is left still go on?  Then the strip is not full. */
static bool holds_more(const struct listing *l, long room)
{
	for (int i = l->widths.first[l->width_of[l->strip_count - 1]]; i < l->kinds; i++)
		if (goes_on(l, i, room))
			return true;
	return false;
}

/* Strips of one width stand in one order only. */
static bool is_in_order(const struct listing *l)
{
	int n = l->strip_count;

	if (n < 2 || l->width_of[n - 1] != l->width_of[n - 2])
		return true;
	const int *now = last_strip(l), *before = now - l->kinds;
	for (int i = 0; i < l->kinds; i++)
		if (now[i] != before[i])
			return now[i] < before[i];
	return true;
}

/* With so much room along the strip, and so much lost so far. */
static bool is_hopeless(const struct listing *l, const struct filled *f, int at, long room,
	long loss)
{
	long most = limit(l, l->along, still_to_try(l, f->first, at), (double)room);

	return loss - f->beside - most > l->most_loss;
}

/* So many more of a piece on the strip. */
static void put(struct listing *l, int piece, int count)
{
	last_strip(l)[piece] += count;
	l->counts[piece] += count;
	l->left[piece] -= count;
}

/* Goes on with the pieces from place `at` on: as many as fit first, then fewer. */
static void fill(struct listing *l, const struct filled *f, int at, long room, long loss)
{
	while (at < l->kinds && (l->order[at] < f->first || !goes_on(l, l->order[at], room)))
		at++;
	if (at == l->kinds) {
		if (!holds_more(l, room) && is_in_order(l))
			next_strip(l, l->width_of[l->strip_count - 1], f->wide, loss);
		return;
	}
	if (++l->steps > l->wanted->most_steps) {
		l->is_cut_short = true;
		return;
	}
	int i = l->order[at], most = l->left[i];
	long each = length_of(l, i), worth = l->wanted->worth[i], fit = room / each;
	for (int k = fit < most ? (int)fit : most; k >= 0; k--) {
		put(l, i, k);
		bool hopeless = is_hopeless(l, f, at + 1, room - k * each, loss - k * worth);
		if (!hopeless)
			fill(l, f, at + 1, room - k * each, loss - k * worth);
		put(l, i, -k);
		/* with fewer of what is worth most for its length it only gets worse */
		if (hopeless && l->trying == TRY_WORTHIEST)
			break;
	}
}

/* ---- side by side ---- */

/* A strip whose first piece, in the order of all, is this one: it makes the strip's width. */
static void begin_strip(struct listing *l, int piece, int width, long wide, long loss)
{
	const struct pack_stock *board = &l->problem->stock[l->stock];
	struct filled f = { .first = piece, .wide = wide - l->widths.at[width] };
	long room = board->length - length_of(l, piece);

	loss -= l->wanted->worth[piece];
	l->width_of[l->strip_count++] = width;
	memset(last_strip(l), 0, (size_t)l->kinds * sizeof(*l->strips));
	put(l, piece, 1);
	f.beside = most_beside(l, width, f.wide);
	if (!is_hopeless(l, &f, 0, room, loss))
		fill(l, &f, 0, room, loss);
	put(l, piece, -1);
	l->strip_count--;
}

static bool is_strip_left(const struct listing *l, int width, long wide)
{
	if (l->widths.at[width] > wide)
		return false;
	for (int i = l->widths.first[width]; i < l->widths.first[width + 1]; i++)
		if (goes_on(l, i, l->problem->stock[l->stock].length))
			return true;
	return false;
}

/* Strips get narrower; the board is full when none goes beside those that are there. */
static void next_strip(struct listing *l, int width, long wide, long loss)
{
	bool is_full = true;

	for (int k = 0; k < l->widths.n; k++) {
		if (!is_strip_left(l, k, wide))
			continue;
		is_full = false;
		if (k < width)
			continue;
		for (int i = l->widths.first[k]; i < l->widths.first[k + 1]; i++)
			if (goes_on(l, i, l->problem->stock[l->stock].length))
				begin_strip(l, i, k, wide, loss);
	}
	if (is_full && loss <= l->most_loss)
		keep(l, loss);
}

/* ---- the whole ---- */

static struct takes *sort_takes(const struct listing *l, double (*room)(const struct pack_piece *p))
{
	struct takes *takes = NEW_N(l->arena, struct takes, l->kinds + 1);

	for (int i = 0; i < l->kinds; i++) {
		double each = room(&l->problem->pieces[i]), worth = (double)l->wanted->worth[i];
		int at = i;
		for (; at > 0; at--) {
			if (takes[at - 1].worth * each >= worth * takes[at - 1].each)
				break;
			takes[at] = takes[at - 1];
		}
		takes[at] = (struct takes){ i, each, worth };
	}
	return takes;
}

static double room_along(const struct pack_piece *p)
{
	return (double)p->length;
}

static double room_of_area(const struct pack_piece *p)
{
	return (double)p->length * (double)p->width;
}

static void set_order(struct listing *l)
{
	l->order = NEW_N(l->arena, int, l->kinds + 1);
	for (int k = 0; k < l->kinds; k++)
		l->order[k] = l->trying == TRY_LONGEST ? k : l->along[k].piece;
}

static struct listing begin(struct arena *a, const struct fillings_wanted *w, enum trying trying)
{
	const struct pack_problem *p = w->problem;
	struct listing l = { .arena = a, .wanted = w, .problem = p, .trying = trying };
	long wide = 0;

	l.kinds = p->piece_count;
	l.widths = strips_widths(w->strips);
	for (int j = 0; j < p->stock_count; j++)
		wide = p->stock[j].width > wide ? p->stock[j].width : wide;
	long most_strips = wide / l.widths.at[l.widths.n - 1] + 1;
	int all = 0;
	for (int i = 0; i < l.kinds; i++)
		all += w->left[i];
	most_strips = most_strips < all ? most_strips : all;
	l.most_loss = w->most_loss;
	l.list = NEW_N(a, struct filling, w->most + 1);
	l.counts = NEW_N(a, int, l.kinds + 1);
	l.left = NEW_N(a, int, l.kinds + 1);
	memcpy(l.left, w->left, (size_t)l.kinds * sizeof(*l.left));
	l.strips = NEW_N(a, int, l.kinds *(int)most_strips + 1);
	l.width_of = NEW_N(a, int, most_strips + 1);
	l.along = sort_takes(&l, room_along);
	l.by_area = sort_takes(&l, room_of_area);
	set_order(&l);
	return l;
}

static struct fillings end(struct listing *l)
{
	l->wanted->work->done += l->steps;
	/* a full list says nothing of those that lose more than its last */
	return (struct fillings){ l->list, l->n, l->is_cut_short || l->n == l->wanted->most };
}

struct fillings fillings_list(struct arena *a, const struct fillings_wanted *w)
{
	struct listing l = begin(a, w, TRY_LONGEST);
	int first = 0, width = 0;

	while (!w->left[first])
		first++;
	while (l.widths.first[width + 1] <= first)
		width++;
	strips_set(w->strips, w->worth, w->left);
	for (l.stock = 0; l.stock < l.problem->stock_count; l.stock++) {
		const struct pack_stock *b = &l.problem->stock[l.stock];
		if (pack_fits(&l.problem->pieces[first], b))
			begin_strip(&l, first, width, b->width, b->cost * w->scale);
	}
	return end(&l);
}

struct fillings fillings_best(struct arena *a, const struct fillings_wanted *w, int stock)
{
	struct listing l = begin(a, w, TRY_WORTHIEST);
	const struct pack_stock *b = &l.problem->stock[stock];

	l.stock = stock;
	next_strip(&l, 0, b->width, b->cost * w->scale);
	struct fillings f = end(&l);
	f.is_cut_short = l.is_cut_short;
	return f;
}
