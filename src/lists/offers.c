#include "lists/offers.h"

#include <strings.h>

#define SAME_THICKNESS 0.5

static void add(struct arena *a, struct offers *o, struct offer one)
{
	struct offer *list = NEW_N(a, struct offer, o->n + 1);

	for (int i = 0; i < o->n; i++)
		list[i] = o->offers[i];
	list[o->n++] = one;
	o->offers = list;
}

static void add_lengths(struct arena *a, struct offers *o, double width, const double *lengths,
	int n)
{
	for (int i = 0; i < n; i++)
		add(a, o, (struct offer){ width, lengths[i], 0 });
}

static bool is_for(const struct job_board *board, const struct blank *b)
{
	if (*board->species && strcasecmp(board->species, b->species) != 0)
		return false;
	return board->thickness <= 0 || fabs(board->thickness - b->nominal) < SAME_THICKNESS;
}

static void add_named(struct arena *a, struct offers *o, const struct job_stock *stock,
	const struct blank *b)
{
	for (int i = 0; i < stock->board_count; i++) {
		const struct job_board *board = &stock->boards[i];
		if (!is_for(board, b))
			continue;
		for (int k = 0; k < board->length_count; k++)
			add(a, o,
				(struct offer){ board->width, board->lengths[k],
					board->price * board->lengths[k] / board->lengths[0] });
	}
}

/* What is on offer when no board is named for it. */
static void add_general(struct arena *a, struct offers *o, const struct job *job,
	const struct blank *b)
{
	const struct job_stock *stock = &job->stock;

	switch (b->stuff) {
	case STUFF_BOARD:
		for (int i = 0; i < stock->width_count; i++)
			add_lengths(a, o, stock->widths[i], stock->lengths, stock->length_count);
		return;
	case STUFF_SHEET:
		add(a, o, (struct offer){ stock->sheet_width, stock->sheet_length, 0 });
		return;
	case STUFF_PLANK:
		if (b->part->stringer && b->part->stringer->plank_length > 0) {
			/* the plank that its own sheet names */
			add_lengths(a, o, b->rough_width, &b->part->stringer->plank_length, 1);
			return;
		}
		add_lengths(a, o, b->rough_width, job->stringers.stock_lengths,
			job->stringers.stock_length_count);
		return;
	case STUFF_MOULDING:
		add_lengths(a, o, b->rough_width, stock->lengths, stock->length_count);
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
	if (!o.n)
		add_general(a, &o, job, b);
	set_losses(&o, job, b->stuff);
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
	double longest = offers_longest(o), usable = offer_usable(o, longest);
	bool is_for_clear = piece > usable && piece <= offer_clear(o, longest) + NEAR_ENOUGH;

	return is_for_clear ? usable : piece;
}

double offers_widest(const struct offers *o)
{
	double most = 0;

	for (int i = 0; i < o->n; i++)
		most = fmax(most, o->offers[i].width);
	return most;
}

double offers_longest(const struct offers *o)
{
	double most = 0;

	for (int i = 0; i < o->n; i++)
		most = fmax(most, o->offers[i].length);
	return most;
}
