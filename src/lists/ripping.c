#include "lists/ripping.h"

#include "lists/pack.h"

/* Sizes as whole numbers.  In millionths of a millimetre 1/64 in is one, so that what fits on paper
 * fits here. */
#define STEPS_PER_MM 1e6

static long exact(double mm)
{
	return lround(mm * STEPS_PER_MM);
}

/* Blanks of one rough size are one kind of piece. */
struct rip {
	struct arena *arena;
	const struct ripping *ask;
	struct pack_piece *pieces;
	int piece_count;
	int *piece_of; /* of each blank */
	int *taken;    /* of each blank, onto boards made so far */
};

static int find_piece(struct rip *r, long length, long width)
{
	int k = 0;

	while (k < r->piece_count && (r->pieces[k].length != length || r->pieces[k].width != width))
		k++;
	if (k == r->piece_count)
		r->pieces[r->piece_count++] = (struct pack_piece){ length, width, 0 };
	return k;
}

static struct rip begin(struct arena *a, const struct ripping *ask)
{
	struct rip r = { .arena = a, .ask = ask };

	r.pieces = NEW_N(a, struct pack_piece, ask->blank_count + 1);
	r.piece_of = NEW_N(a, int, ask->blank_count + 1);
	r.taken = NEW_N(a, int, ask->blank_count + 1);
	for (int i = 0; i < ask->blank_count; i++) {
		const struct blank *b = ask->blanks[i];
		double takes = offer_takes(ask->offers, b->rough_length);
		int k = find_piece(&r, exact(takes + ask->kerf), exact(b->rough_width + ask->kerf));
		r.pieces[k].count += blank_count(b);
		r.piece_of[i] = k;
	}
	return r;
}

/* ---- stock ---- */

/* Costs as whole numbers.  Where boards are counted first and their wood after that, the wood of
 * the largest board costs a hundredth of a board: fewer than a hundred cannot outweigh one. */
enum { CENTS = 100, ONE_BOARD = 10000, LARGEST_WOOD = ONE_BOARD / 100 };

static long cost_of(const struct offers *o, const struct offer *offer, enum rip_aim aim)
{
	double share = offer->width * offer->length / (o->widest * o->longest);

	switch (aim) {
	case RIP_BOARDS: return 1;
	case RIP_WOOD: return ONE_BOARD + lround(LARGEST_WOOD * share);
	case RIP_PRICE: return lround(offer->price * CENTS);
	}
	return 0;
}

/* Back in boards, or in money. */
static double bound_of(long cost, enum rip_aim aim)
{
	switch (aim) {
	case RIP_BOARDS: return (double)cost;
	case RIP_WOOD: return ceil((double)cost / (ONE_BOARD + LARGEST_WOOD));
	case RIP_PRICE: return (double)cost / CENTS;
	}
	return 0;
}

static const struct pack_stock *stock_of(const struct rip *r, enum rip_aim aim)
{
	const struct offers *o = r->ask->offers;
	struct pack_stock *stock = NEW_N(r->arena, struct pack_stock, o->n + 1);

	for (int i = 0; i < o->n; i++) {
		double usable = fmax(offer_usable(o, o->offers[i].length), 0);
		stock[i] = (struct pack_stock){ exact(usable + r->ask->kerf),
			exact(o->offers[i].width + r->ask->kerf), cost_of(o, &o->offers[i], aim) };
	}
	return stock;
}

/* ---- boards ---- */

/* So many pieces of a kind: of the first blank of that size until it is done, then of the next. */
static void add_pieces(struct rip *r, struct cut_strip *s, struct cut_piece *pieces, int kind,
	int count)
{
	for (int i = 0; i < r->ask->blank_count && count > 0; i++) {
		const struct blank *b = r->ask->blanks[i];
		int left = blank_count(b) - r->taken[i], n = left < count ? left : count;
		if (r->piece_of[i] != kind || !n)
			continue;
		pieces[s->piece_count++] = (struct cut_piece){ b, n };
		s->used += n * (b->rough_length + r->ask->kerf);
		s->width = fmax(s->width, b->rough_width);
		r->taken[i] += n;
		count -= n;
	}
}

/* The widest first, of these the longest. */
static int *order_of_pieces(const struct rip *r)
{
	int *order = NEW_N(r->arena, int, r->piece_count + 1);

	for (int k = 0; k < r->piece_count; k++) {
		const struct pack_piece *p = &r->pieces[k];
		int at = k;
		for (; at > 0; at--) {
			const struct pack_piece *before = &r->pieces[order[at - 1]];
			if (before->width > p->width ||
				(before->width == p->width && before->length >= p->length))
				break;
			order[at] = order[at - 1];
		}
		order[at] = k;
	}
	return order;
}

static struct cut_board board_of(struct rip *r, const struct packed_board *from, const int *order)
{
	const struct offer *o = &r->ask->offers->offers[from->stock];
	struct cut_strip *strips = NEW_N(r->arena, struct cut_strip, from->strip_count + 1);

	for (int i = 0; i < from->strip_count; i++) {
		struct cut_piece *pieces =
			NEW_N(r->arena, struct cut_piece, r->ask->blank_count + 1);
		strips[i] = (struct cut_strip){ .used = -r->ask->kerf, .pieces = pieces };
		for (int k = 0; k < r->piece_count; k++)
			add_pieces(r, &strips[i], pieces, order[k],
				from->strips[i].counts[order[k]]);
	}
	return (struct cut_board){ o->width, o->length, r->ask->offers->end_trim, o->price, strips,
		from->strip_count, 1 };
}

static bool is_cut_alike(const struct rip *r, const struct packed_board *a,
	const struct packed_board *b)
{
	if (a->stock != b->stock || a->strip_count != b->strip_count)
		return false;
	for (int i = 0; i < a->strip_count; i++)
		for (int k = 0; k < r->piece_count; k++)
			if (a->strips[i].counts[k] != b->strips[i].counts[k])
				return false;
	return true;
}

/* Boards that are cut alike one after the other, so that they come to hold the same blanks. */
static struct cut_board *cut_boards(struct rip *r, const struct packing *k)
{
	struct cut_board *boards = NEW_N(r->arena, struct cut_board, k->count + 1);
	bool *is_done = NEW_N(r->arena, bool, k->count + 1);
	const int *order = order_of_pieces(r);
	int n = 0;

	for (int i = 0; i < k->count; i++)
		for (int j = i; j < k->count; j++) {
			if (is_done[j] || !is_cut_alike(r, &k->boards[i], &k->boards[j]))
				continue;
			is_done[j] = true;
			boards[n++] = board_of(r, &k->boards[j], order);
		}
	return boards;
}

struct ripped rip_boards(struct arena *a, const struct ripping *ask, enum rip_aim aim)
{
	struct rip r = begin(a, ask);
	struct packing k = pack_boards(a,
		&(struct pack_problem){ r.pieces, r.piece_count, stock_of(&r, aim), ask->offers->n,
			ask->work });

	return (struct ripped){ cut_boards(&r, &k), k.count, bound_of(k.bound, aim), k.is_proved,
		k.work };
}
