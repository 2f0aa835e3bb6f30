#include "lists/offers.h"

#include <strings.h>

/* Boards that a yard sells as one thickness may be this far apart as they are typed: 1 1/2 in
 * against 38 mm is 0.1. */
#define SAME_THICKNESS 0.5

/* Room for so many more. */
static void make_room(struct arena *a, struct offers *o, int more)
{
	struct offer *list = NEW_N(a, struct offer, o->n + more + 1);

	for (int i = 0; i < o->n; i++)
		list[i] = o->offers[i];
	o->offers = list;
}

static void add_lengths(struct offers *o, double width, const double *lengths, int n)
{
	for (int i = 0; i < n; i++)
		o->offers[o->n++] = (struct offer){ width, lengths[i], 0 };
}

bool offer_is_of(const struct job_board *board, const char *species)
{
	return !*board->species || strcasecmp(board->species, species) == 0;
}

static bool is_for(const struct job_board *board, const struct blank *b)
{
	if (!offer_is_of(board, b->species))
		return false;
	return board->thickness <= 0 || fabs(board->thickness - b->nominal) < SAME_THICKNESS;
}

/* As it is paid. */
static double whole_cents(double price)
{
	return round(price * 100) / 100;
}

static void add_named(struct arena *a, struct offers *o, const struct job_stock *stock,
	const struct blank *b)
{
	for (int i = 0; i < stock->board_count; i++) {
		const struct job_board *board = &stock->boards[i];
		if (!is_for(board, b))
			continue;
		make_room(a, o, board->length_count);
		for (int k = 0; k < board->length_count; k++)
			o->offers[o->n++] = (struct offer){ board->width, board->lengths[k],
				whole_cents(board->price * board->lengths[k] / board->lengths[0]) };
	}
}

/* The plank that its own sheet names; without one, those the stringers are chosen from. */
static void add_planks(struct offers *o, const struct job_stringers *s, const struct blank *b)
{
	const struct stringer *stringer = b->part->stringer;

	if (stringer && stringer->plank_length > 0)
		add_lengths(o, b->rough_width, &stringer->plank_length, 1);
	else
		add_lengths(o, b->rough_width, s->stock_lengths, s->stock_length_count);
}

/* What is on offer when no board is named for it. */
static void add_general(struct arena *a, struct offers *o, const struct job *job,
	const struct blank *b)
{
	const struct job_stock *stock = &job->stock;

	make_room(a, o,
		stock->width_count * stock->length_count + job->stringers.stock_length_count);
	switch (b->stuff) {
	case STUFF_BOARD:
		for (int i = 0; i < stock->width_count; i++)
			add_lengths(o, stock->widths[i], stock->lengths, stock->length_count);
		return;
	case STUFF_SHEET: add_lengths(o, stock->sheet_width, &stock->sheet_length, 1); return;
	case STUFF_PLANK: add_planks(o, &job->stringers, b); return;
	case STUFF_MOULDING:
		add_lengths(o, b->rough_width, stock->lengths, stock->length_count);
		return;
	case STUFF_BOUGHT: return;
	}
}

/* Plywood has no checked ends and no knots to speak of; what is bought to length has been sorted.
 */
static void set_losses(struct offers *o, const struct job *job, enum stuff stuff)
{
	switch (stuff) {
	case STUFF_BOARD:
		o->end_trim = job->stock.end_trim;
		o->spare = job->stock.spare;
		return;
	case STUFF_PLANK: o->end_trim = job->stringers.end_trim; return;
	case STUFF_MOULDING: o->end_trim = job->stock.end_trim; return;
	case STUFF_SHEET:
	case STUFF_BOUGHT: return;
	}
}

struct offers offers_for(struct arena *a, const struct job *job, const struct blank *b)
{
	struct offers o = { 0 };

	if (b->stuff == STUFF_BOARD || b->stuff == STUFF_SHEET)
		add_named(a, &o, &job->stock, b);
	o.is_named = o.n > 0;
	if (!o.is_named)
		add_general(a, &o, job, b);
	set_losses(&o, job, b->stuff);
	for (int i = 0; i < o.n; i++) {
		o.widest = fmax(o.widest, o.offers[i].width);
		o.longest = fmax(o.longest, o.offers[i].length);
	}
	return o;
}

double offer_usable(const struct offers *o, double length)
{
	return length * (1 - o->spare) - 2 * o->end_trim;
}

double offer_clear(const struct offers *o, double length)
{
	return length - 2 * o->end_trim;
}

double offer_takes(const struct offers *o, double piece)
{
	double usable = offer_usable(o, o->longest);
	bool is_for_clear = piece > usable && piece <= offer_clear(o, o->longest) + NEAR_ENOUGH;

	return is_for_clear ? usable : piece;
}
