/*
 * Which boards to buy, and what comes out of each.
 *
 * All boards of a group are cut from boards of one length, for every length on
 * offer; the best of these is kept.  Then every board is changed for the least
 * one on offer that still holds what is on it.
 */
#include <string.h>

#include "lists/nominal.h"
#include "lists/ripping.h"

#define MOST_LENGTHS 16 /* tried one by one; the longest ones take the fewest boards */

/* Of one moulding: run with the same cutters. */
static bool is_same_profile(const struct part *a, const struct part *b)
{
	if (a->section.n != b->section.n || fabs(a->size.width - b->size.width) > NEAR_ENOUGH ||
		fabs(a->size.thickness - b->size.thickness) > NEAR_ENOUGH)
		return false;
	for (int i = 0; i < a->section.n; i++)
		if (vec_length(vec_sub(a->section.corners[i].at, b->section.corners[i].at)) >
				NEAR_ENOUGH ||
			fabs(a->section.corners[i].bulge - b->section.corners[i].bulge) >
				NEAR_ENOUGH)
			return false;
	return true;
}

static bool is_same_group(const struct blank *a, const struct blank *b)
{
	if (a->stuff != b->stuff || strcmp(a->species, b->species) != 0)
		return false;
	if (a->stuff == STUFF_MOULDING)
		return is_same_profile(a->part, b->part);
	if (a->part->stringer && b->part->stringer &&
		fabs(a->part->stringer->plank_length - b->part->stringer->plank_length) >
			NEAR_ENOUGH)
		return false;
	return fabs(a->nominal - b->nominal) < NEAR_ENOUGH &&
		fabs(a->nominal_width - b->nominal_width) < NEAR_ENOUGH;
}

/* The blanks that go with this one, itself first. */
static const struct blank **members_of(struct arena *a, const struct blank *first, int *n)
{
	const struct blank **list;
	int count = 0;

	for (const struct blank *b = first; b; b = b->next)
		count += is_same_group(first, b);
	list = NEW_N(a, const struct blank *, count + 1);
	*n = 0;
	for (const struct blank *b = first; b; b = b->next)
		if (is_same_group(first, b))
			list[(*n)++] = b;
	return list;
}

static bool is_met_before(const struct blank *all, const struct blank *b)
{
	for (const struct blank *o = all; o != b; o = o->next)
		if (is_same_group(o, b))
			return true;
	return false;
}

/* ---- what goes on the boards ---- */

static bool holds(const struct offers *o, const struct offer *one, double width, double length)
{
	return one->width >= width - NEAR_ENOUGH &&
		offer_usable(o, one->length) >= offer_takes(o, length) - NEAR_ENOUGH;
}

static bool fits_somewhere(const struct offers *o, const struct blank *b)
{
	for (int i = 0; i < o->n; i++)
		if (holds(o, &o->offers[i], b->rough_width, b->rough_length))
			return true;
	return false;
}

static bool fits_length(const struct ripping *r, double length)
{
	double widest = 0, longest = 0, wide = 0;

	for (int i = 0; i < r->blank_count; i++) {
		widest = fmax(widest, r->blanks[i]->rough_width);
		longest = fmax(longest, r->blanks[i]->rough_length);
	}
	for (int i = 0; i < r->offers->n; i++)
		if (fabs(r->offers->offers[i].length - length) < NEAR_ENOUGH)
			wide = fmax(wide, r->offers->offers[i].width);
	return wide >= widest - NEAR_ENOUGH &&
		offer_usable(r->offers, length) >= offer_takes(r->offers, longest) - NEAR_ENOUGH;
}

/* ---- the best length ---- */

static double width_used(const struct cut_board *b, double kerf)
{
	double used = -kerf;

	for (int i = 0; i < b->strip_count; i++)
		used += b->strips[i].width + kerf;
	return used;
}

static double length_used(const struct cut_board *b)
{
	double used = 0;

	for (int i = 0; i < b->strip_count; i++)
		used = fmax(used, b->strips[i].used);
	return used;
}

/* The least offer that holds what is on the board: the cheapest, else the smallest. */
static void change_for_least(struct cut_board *b, const struct ripping *r)
{
	double wide = width_used(b, r->kerf), length = length_used(b);

	for (int i = 0; i < r->offers->n; i++) {
		const struct offer *o = &r->offers->offers[i];
		if (!holds(r->offers, o, wide, length))
			continue;
		double now = b->width * b->length, then = o->width * o->length;
		if (r->aim == CUT_CHEAPEST ? o->price < b->price : then < now) {
			b->width = o->width;
			b->length = o->length;
			b->price = o->price;
		}
	}
}

/* No price is less than this and more than the bound. */
static double whole_cents(double bound)
{
	return ceil(bound * 100 - 1e-6) / 100;
}

struct plan {
	struct cut_board *boards;
	int count;
	double price, wood;
	double bound; /* no plan of these lengths takes fewer, or costs less */
};

static struct plan plan_of(struct arena *a, const struct ripping *r, struct ripped cut)
{
	struct plan p = { .count = cut.count, .bound = whole_cents(cut.bound) };

	p.boards = NEW_N(a, struct cut_board, cut.count + 1);
	for (int i = 0; i < cut.count; i++) {
		p.boards[i] = cut.boards[i];
		change_for_least(&p.boards[i], r);
		p.price += p.boards[i].price;
		p.wood += p.boards[i].width * p.boards[i].length;
	}
	return p;
}

static struct plan better(struct plan p, struct plan q, enum cut_aim aim)
{
	if (!p.boards || !q.boards)
		return p.boards ? p : q;
	if (aim == CUT_CHEAPEST)
		return q.price < p.price - 0.005 ? q : p;
	if (p.count != q.count)
		return q.count < p.count ? q : p;
	return q.wood < p.wood - NEAR_ENOUGH ? q : p;
}

/* The best plan, with the bound on all plans. */
static struct plan best_plan(struct arena *a, const struct ripping *r)
{
	struct plan best = { 0 };
	struct lengths lengths = offers_lengths(a, r->offers);

	for (int i = 0; i < lengths.n && i < MOST_LENGTHS; i++)
		if (fits_length(r, lengths.at[i]))
			best = better(best, plan_of(a, r, rip_boards(a, r, lengths.at[i])), r->aim);
	/* where the longest piece and the widest go on boards of different lengths, these alone do
	 */
	if (lengths.n > 1 && (r->aim == CUT_CHEAPEST || !best.boards)) {
		struct plan mixed = plan_of(a, r, rip_any_boards(a, r));
		best = better(best, mixed, r->aim);
		best.bound = mixed.bound;
	}
	if (r->aim == CUT_FEWEST)
		best.bound = rip_fewest(a, r);
	return best;
}

/* ---- groups ---- */

static bool is_same_strip(const struct cut_strip *a, const struct cut_strip *b)
{
	if (a->piece_count != b->piece_count)
		return false;
	for (int i = 0; i < a->piece_count; i++)
		if (a->pieces[i].blank != b->pieces[i].blank ||
			a->pieces[i].count != b->pieces[i].count)
			return false;
	return true;
}

static bool is_same_board(const struct cut_board *a, const struct cut_board *b)
{
	if (a->strip_count != b->strip_count || fabs(a->width - b->width) > NEAR_ENOUGH ||
		fabs(a->length - b->length) > NEAR_ENOUGH)
		return false;
	for (int i = 0; i < a->strip_count; i++)
		if (!is_same_strip(&a->strips[i], &b->strips[i]))
			return false;
	return true;
}

/* Boards cut alike become one with a count. */
static int merge_boards(struct cut_board *boards, int count)
{
	int kinds = 0;

	for (int i = 0; i < count; i++) {
		int k = 0;
		while (k < kinds && !is_same_board(&boards[k], &boards[i]))
			k++;
		if (k < kinds)
			boards[k].count++;
		else
			boards[kinds++] = boards[i];
	}
	return kinds;
}

static enum cut_aim aim_of(const struct offers *o)
{
	for (int i = 0; i < o->n; i++)
		if (o->offers[i].price <= 0)
			return CUT_FEWEST;
	return CUT_CHEAPEST;
}

static void tell_misfit(struct arena *a, const struct job *job, const struct offers *o,
	const struct blank *b, struct diags *d)
{
	struct lettering l = job_lettering(job);

	if (b->part->stringer) /* told with the other findings */
		return;
	diag_warning(d, node_pos(job->stock.src, "boards"),
		"name a larger board under stock, or join the piece",
		"%s %s is %s x %s rough; the largest board on offer is %s x %s, of which %s can be "
		"used",
		b->part->name, b->part->mark, length_say(a, l, b->rough_length),
		length_say(a, l, b->rough_width), length_say(a, l, o->longest),
		length_say(a, l, o->widest), length_say(a, l, fmax(offer_clear(o, o->longest), 0)));
}

/* Takes those that fit no board out of the list. */
static void set_misfits(struct arena *a, const struct job *job, struct cut_group *g,
	struct ripping *r, const struct blank **list, struct diags *d)
{
	struct cut_piece *misfits = NEW_N(a, struct cut_piece, r->blank_count + 1);
	int kept = 0;

	for (int i = 0; i < r->blank_count; i++) {
		if (fits_somewhere(r->offers, list[i])) {
			list[kept++] = list[i];
			continue;
		}
		misfits[g->misfit_count++] = (struct cut_piece){ list[i], blank_count(list[i]) };
		tell_misfit(a, job, r->offers, list[i], d);
	}
	r->blank_count = kept;
	g->misfits = misfits;
}

static struct cut_group *group_make(struct arena *a, const struct job *job,
	const struct blank *first, struct diags *d)
{
	struct cut_group *g = NEW(a, struct cut_group);
	struct offers offers = offers_for(a, job, first);
	struct ripping r = { .offers = &offers, .kerf = job->stock.kerf, .aim = aim_of(&offers) };
	const struct blank **list = members_of(a, first, &r.blank_count);

	*g = (struct cut_group){ .species = first->species,
		.name = first->stuff == STUFF_MOULDING ? first->part->name : "",
		.stuff = first->stuff,
		.nominal = first->nominal,
		.nominal_width = first->nominal_width,
		.aim = r.aim };
	set_misfits(a, job, g, &r, list, d);
	r.blanks = list;
	if (!r.blank_count)
		return g;
	struct plan best = best_plan(a, &r);
	g->bound = best.bound;
	g->total = best.count;
	g->price = best.price;
	g->is_proved =
		g->aim == CUT_FEWEST ? best.count <= g->bound : best.price <= g->bound + 0.005;
	g->board_count = merge_boards(best.boards, best.count);
	g->boards = best.boards;
	return g;
}

const struct cut_group *cutting_make(struct arena *a, const struct stair *s,
	const struct blank *blanks, struct diags *d)
{
	struct cut_group *first = NULL, **tail = &first;

	if (!s || !blanks)
		return NULL;
	for (const struct blank *b = blanks; b; b = b->next) {
		if (is_met_before(blanks, b))
			continue;
		*tail = group_make(a, s->job, b, d);
		tail = &(*tail)->next;
	}
	return first;
}
