/*
 * From finished pieces to the rough ones that come off the saw.
 */
#include <string.h>
#include <strings.h>

#include "lists/nominal.h"
#include "lists/offers.h"
#include "lists/yard.h"

double board_feet(double nominal, double width, double length)
{
	const double cubic = MM_PER_INCH * MM_PER_INCH * MM_PER_INCH;

	return fmax(nominal, MM_PER_INCH) * width * length / (144 * cubic);
}

/* Species in which only sheets are sold. */
static bool is_sheet_goods(const char *species)
{
	static const char *const words[] = { "plywood", "mdf", "particle" };

	for (const char *p = species; *p; p++)
		for (int i = 0; i < 3; i++)
			if (strncasecmp(p, words[i], strlen(words[i])) == 0 &&
				(p == species || p[-1] == ' '))
				return true;
	return false;
}

static enum stuff stuff_of(const struct part *p)
{
	if (p->stringer)
		return STUFF_PLANK;
	if (p->stuff == STUFF_BOARD && is_sheet_goods(p->material))
		return STUFF_SHEET;
	return p->stuff;
}

/* The thinnest of the boards named for its species that comes out so thick.  bought 0: none does,
 * or it is named without a thickness. */
static struct nominal named_board(const struct job *job, const char *species, double finished)
{
	struct nominal thinnest = { 0, 0 };

	for (int i = 0; i < job->stock.board_count; i++) {
		const struct job_board *board = &job->stock.boards[i];
		double planing = job->stock.rough_thickness > 0
			? job->stock.rough_thickness
			: nominal_planing(job->about.units, board->thickness);
		double comes_out = board->thickness - planing;
		if (!offer_is_of(board, species))
			continue;
		if (board->thickness <= 0)
			return (struct nominal){ 0, 0 };
		bool will_do = comes_out >= finished - NEAR_ENOUGH;
		if (will_do && (thinnest.bought <= 0 || board->thickness < thinnest.bought))
			thinnest = (struct nominal){ board->thickness, comes_out };
	}
	return thinnest;
}

/* Where the job names no board that will do, the usual one. */
static struct nominal board_for(const struct job *job, const char *species, double finished)
{
	struct nominal named = named_board(job, species, finished);

	return named.bought > 0
		? named
		: nominal_board(job->about.units, finished, job->stock.rough_thickness);
}

static void turn(struct blank *b)
{
	double thickness = b->thickness;

	b->thickness = b->width;
	b->width = thickness;
	b->is_turned = !b->is_turned;
}

/* Finished sizes as they lie in the board: along the grain, across it, and through it; on edge
 * where a thinner board will then do. */
static void set_sizes(const struct job *job, struct blank *b, const struct part *p)
{
	b->length = part_sawn_length(p);
	b->width = p->size.width;
	b->thickness = p->size.thickness;
	if (b->stuff != STUFF_BOARD || p->makeup.plies || b->width >= b->thickness)
		return;
	double flat = board_for(job, b->species, b->thickness).bought;
	double on_edge = board_for(job, b->species, b->width).bought;
	if (on_edge > 0 && (flat <= 0 || on_edge < flat))
		turn(b);
}

/* A strip that several pieces come out of is ripped off the edge of a board that is planed to its
 * width, where that board is no thicker than the one to plane it down from. */
static void lay_on_edge(const struct job *job, struct blank *b)
{
	double flat = board_for(job, b->species, b->thickness).bought;
	double on_edge = board_for(job, b->species, b->width).bought;

	if (b->stuff == STUFF_BOARD && on_edge > 0 && (flat <= 0 || on_edge <= flat))
		turn(b);
}

static double ply_step(enum units units)
{
	return units == UNITS_INCHES ? MM_PER_INCH / 64 : 0.1;
}

double ply_planed(enum units units, double exact)
{
	return ceil(exact / ply_step(units) - 1e-6) * ply_step(units);
}

const char *ply_bought(struct arena *a, const struct job *job, const char *species, double exact)
{
	struct lettering l = job_lettering(job);
	double bought = board_for(job, species, ply_planed(job->about.units, exact)).bought;

	if (bought <= 0)
		return NULL;
	return l.units == UNITS_INCHES ? nominal_letter(a, l, bought) : length_say(a, l, bought);
}

double board_ripped(const struct job *job, double exact)
{
	struct lettering l = job_lettering(job);
	double lettered = length_lettered_value(l, exact);

	return lettered >= exact - NEAR_ENOUGH ? lettered : length_on_graduation(l, exact, 1);
}

struct lettering ply_lettering(const struct job *job)
{
	struct lettering l = job_lettering(job);

	l.fraction = l.finest = l.units == UNITS_INCHES ? 64 : 10;
	return l;
}

/* Boards edge to edge, plies face to face, or several out of one: as the part says. */
static void make_up(const struct job *job, struct blank *b, const struct makeup *m)
{
	if (m->gang > 1) {
		b->gang = m->gang;
		b->width = ply_planed(job->about.units, m->gang_width);
		b->thickness = b->part->size.thickness;
		b->is_turned = false;
		lay_on_edge(job, b);
	}
	if (m->boards > 1) {
		b->each *= m->boards;
		b->width = board_ripped(job, m->board_width);
	}
	if (m->plies > 1) {
		b->each *= m->plies;
		b->plies = m->plies;
		b->thickness = ply_planed(job->about.units, m->ply_thickness);
	}
}

/* Out of boards no wider than that, allowance off: the fewest, one more where these would be ripped
 * wider. */
static int boards_for(const struct job *job, double width, double widest)
{
	int n = widest > 0 ? (int)ceil(width / widest - NEAR_ENOUGH) : 1;

	return n > 1 && board_ripped(job, width / n) > widest + NEAR_ENOUGH ? n + 1 : n;
}

/* As it is lettered, so that on paper too the strips of a board go into it; never wider than the
 * widest board that does take it. */
static double rough_wide(const struct job *job, double width, double widest)
{
	double exact = width + job->stock.rough_width;

	return fmin(board_ripped(job, exact), fmax(exact, widest));
}

/* One of so many plies, as it is planed; a piece that is one board is as thick as it is. */
static double ply_of(const struct job *job, double thickness, int plies)
{
	return plies > 1 ? ply_planed(job->about.units, thickness / plies) : thickness;
}

/* Thicker than any board, or wider: in as few equal plies and boards as there are boards for. */
static void glue_up_to_stock(struct arena *a, const struct job *job, struct blank *b)
{
	int plies = 1;

	while (board_for(job, b->species, ply_of(job, b->thickness, plies)).bought <= 0)
		plies++;
	if (plies > 1) {
		b->each *= plies;
		b->plies = plies * (b->plies > 1 ? b->plies : 1);
		b->thickness = ply_of(job, b->thickness, plies);
	}
	b->nominal = board_for(job, b->species, b->thickness).bought;
	struct offers o = offers_for(a, job, b);
	int boards = boards_for(job, b->width, o.widest - job->stock.rough_width);
	if (boards > 1) {
		b->each *= boards;
		b->width = board_ripped(job, b->width / boards);
	}
	b->rough_width = rough_wide(job, b->width, o.widest);
}

static void set_rough(struct arena *a, const struct job *job, struct blank *b)
{
	const struct job_stock *stock = &job->stock;
	const struct stringer *plank = b->part->stringer;

	b->nominal = b->thickness;
	b->rough_length = b->length + stock->rough_length;
	b->rough_width = b->width;
	switch (b->stuff) {
	case STUFF_BOARD: glue_up_to_stock(a, job, b); return;
	case STUFF_PLANK:
		b->nominal = nominal_plank_thickness(job->about.units, b->thickness);
		b->rough_width = plank ? plank->plank_width : b->width;
		b->rough_length = plank ? plank->cut_length : b->rough_length;
		b->nominal_width = nominal_plank_width(job->about.units, b->rough_width);
		return;
	case STUFF_SHEET:
	case STUFF_MOULDING:
	case STUFF_BOUGHT: return;
	}
}

static int spares_of(const struct job_stock *stock, const struct blank *b)
{
	bool is_small = b->stuff == STUFF_BOARD || b->stuff == STUFF_MOULDING;

	return stock->spare_every > 0 && is_small ? b->pieces / stock->spare_every : 0;
}

/* No hand that holds a piece comes nearer to the blade, and no piece is held that is shorter: half
 * of what the job calls short, 6 in where it says nothing (common practice). */
static double least_held(const struct job *job)
{
	return job->stock.short_piece / 2;
}

#define LONGEST_ROW 1000.0 /* that is handled with ease (common practice) */

/* Shorter ones stay together in one length until they are cut off it, glued up in that and trimmed;
 * what is left of it is held. */
static void lay_in_row(struct arena *a, const struct job *job, struct blank *b)
{
	bool is_sawn = b->stuff == STUFF_BOARD || b->stuff == STUFF_MOULDING;
	int sawn = blank_sawn(b);

	if (b->length >= least_held(job) || !is_sawn)
		return;
	struct offers o = offers_for(a, job, b);
	double step = b->length + job->stock.kerf;
	double rest = job->stock.rough_length + least_held(job);
	int most = (int)((fmin(LONGEST_ROW, offer_usable(&o, o.longest)) - rest) / step);
	if (most < 1 || sawn < 1)
		return;
	int lengths = (sawn + most - 1) / most;
	b->row = (sawn + lengths - 1) / lengths;
	b->rough_length = b->row * step + rest;
}

static struct blank *blank_of(struct arena *a, const struct job *job, const struct part *p)
{
	struct blank *b = NEW(a, struct blank);

	*b = (struct blank){ .part = p, .species = p->material, .stuff = stuff_of(p), .each = 1 };
	b->pieces = p->count;
	b->is_short = p->size.length < job->stock.short_piece;
	set_sizes(job, b, p);
	make_up(job, b, &p->makeup);
	set_rough(a, job, b);
	b->spares = spares_of(&job->stock, b);
	lay_in_row(a, job, b);
	return b;
}

double longest_piece(struct arena *a, const struct job *job, const struct part *p)
{
	const struct blank *b = blank_of(a, job, p);
	struct offers o = offers_for(a, job, b);
	double longest = 0;

	for (int i = 0; i < o.n; i++)
		if (o.offers[i].width >= b->rough_width - NEAR_ENOUGH)
			longest = fmax(longest, offer_clear(&o, o.offers[i].length));
	return longest > 0 ? longest - job->stock.rough_length : INFINITY;
}

struct part_size blanks_finished(const struct blank *blanks, const struct part *p)
{
	for (const struct blank *b = blanks; b; b = b->next)
		if (b->part == p)
			return blank_finished(b);
	return (struct part_size){ part_sawn_length(p), p->size.width, p->size.thickness };
}

const struct blank *blanks_make(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct blank *first = NULL, **tail = &first;

	if (!s || !parts)
		return NULL;
	for (const struct part *p = parts; p; p = p->next) {
		if (part_is_existing(p) || p->stuff == STUFF_BOUGHT)
			continue;
		*tail = blank_of(a, s->job, p);
		tail = &(*tail)->next;
	}
	return first;
}
