/*
 * Which boards to buy, and what comes out of each.
 */
#include <string.h>

#include "lists/nominal.h"
#include "lists/ripping.h"
#include "lists/work.h"
#include "parts/alike.h"

/* Steps of search, of some 25 ns: for one group, and for all of a job. */
#define WORK_FOR_GROUP 4500000
#define WORK_FOR_ALL 12000000

/* Of one moulding: run with the same cutters. */
static bool is_same_profile(const struct part *a, const struct part *b)
{
	return near_enough(a->size.width, b->size.width) &&
		near_enough(a->size.thickness, b->size.thickness) &&
		outlines_are_same(a->section, b->section);
}

static bool is_same_group(const struct blank *a, const struct blank *b)
{
	if (a->stuff != b->stuff || strcmp(a->species, b->species) != 0)
		return false;
	if (a->stuff == STUFF_MOULDING)
		return is_same_profile(a->part, b->part);
	if (a->part->stringer && b->part->stringer &&
		!near_enough(a->part->stringer->plank_length, b->part->stringer->plank_length))
		return false;
	return near_enough(a->nominal, b->nominal) &&
		near_enough(a->nominal_width, b->nominal_width);
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

/* ---- the best boards ---- */

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
static void change_for_least(struct cut_board *b, const struct ripping *r, enum cut_aim aim)
{
	double wide = width_used(b, r->kerf), length = length_used(b);

	for (int i = 0; i < r->offers->n; i++) {
		const struct offer *o = &r->offers->offers[i];
		if (!holds(r->offers, o, wide, length))
			continue;
		double now = b->width * b->length, then = o->width * o->length;
		if (aim == CUT_CHEAPEST ? o->price < b->price : then < now) {
			b->width = o->width;
			b->length = o->length;
			b->price = o->price;
		}
	}
}

struct plan {
	struct cut_board *boards;
	int count;
	double price, wood;
	double bound;
	bool is_proved;
	long work;
};

static struct plan plan_of(const struct ripping *r, enum cut_aim aim, struct ripped cut)
{
	struct plan p = { cut.boards, cut.count, 0, 0, cut.bound, cut.is_proved, cut.work };

	for (int i = 0; i < cut.count; i++) {
		change_for_least(&p.boards[i], r, aim);
		p.price += p.boards[i].price;
		p.wood += p.boards[i].width * p.boards[i].length;
	}
	return p;
}

static struct plan cheapest_plan(struct arena *a, const struct ripping *r)
{
	return plan_of(r, CUT_CHEAPEST, rip_boards(a, r, RIP_PRICE));
}

/* The fewest boards; then, as many, with as little wood as a shorter search finds. */
static struct plan fewest_plan(struct arena *a, const struct ripping *r)
{
	struct ripping less = *r;

	less.work = r->work / 4;
	struct plan p = plan_of(r, CUT_FEWEST, rip_boards(a, r, RIP_BOARDS));
	struct plan q = plan_of(r, CUT_FEWEST, rip_boards(a, &less, RIP_WOOD));
	p.work += q.work;
	if (q.count > p.count || q.wood >= p.wood - NEAR_ENOUGH)
		return p;
	q.bound = p.bound;
	q.is_proved = q.count <= q.bound;
	q.work = p.work;
	return q;
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
	if (a->strip_count != b->strip_count || !near_enough(a->width, b->width) ||
		!near_enough(a->length, b->length))
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

/* The length that would hold it, where its width is on offer. */
static const char *longer_board(struct arena *a, const struct job *job, const struct offers *o,
	const struct blank *b)
{
	const char *length =
		length_say_least(a, job_lettering(job), b->rough_length + 2 * o->end_trim);

	if (b->stuff == STUFF_SHEET && !o->is_named)
		return arena_printf(a, "write stock.sheet_length: %s", length);
	if (o->is_named)
		return arena_printf(a, "name one %s long in stock.boards, if it can be had",
			length);
	return arena_printf(a, "name %s among stock.lengths, if it can be had", length);
}

static const char *misfit_mend(struct arena *a, const struct job *job, const struct offers *o,
	const struct blank *b)
{
	if (b->rough_width > o->widest + NEAR_ENOUGH)
		return "name a wider board under stock";
	if (b->part->splice != SPLICE_NONE && job->stock.long_pieces == LONG_PIECES_WHOLE)
		return arena_printf(a, "write stock.long_pieces: joined; or %s",
			longer_board(a, job, o, b));
	if (b->part->splice != SPLICE_NONE)
		return arena_printf(a, "there is no place for a joint in it: %s",
			longer_board(a, job, o, b));
	return longer_board(a, job, o, b);
}

static void tell_misfit(struct arena *a, const struct job *job, const struct offers *o,
	const struct blank *b, struct diags *d)
{
	struct lettering l = job_lettering(job);

	if (b->part->stringer) /* told with the other findings */
		return;
	diag_warning(d, node_pos(job->stock.src, "boards"), misfit_mend(a, job, o, b),
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
	const struct blank *first, struct work *work, struct diags *d)
{
	struct cut_group *g = NEW(a, struct cut_group);
	struct offers offers = offers_for(a, job, first);
	long left = work->most - work->done;
	struct ripping r = { .offers = &offers,
		.kerf = job->stock.kerf,
		.work = left < WORK_FOR_GROUP ? left : WORK_FOR_GROUP };
	const struct blank **list = members_of(a, first, &r.blank_count);

	*g = (struct cut_group){ .species = first->species,
		.name = first->stuff == STUFF_MOULDING ? part_whole_name(first->part) : "",
		.stuff = first->stuff,
		.nominal = first->nominal,
		.nominal_width = first->nominal_width,
		.aim = aim_of(&offers) };
	set_misfits(a, job, g, &r, list, d);
	r.blanks = list;
	if (!r.blank_count)
		return g;
	struct plan best = g->aim == CUT_CHEAPEST ? cheapest_plan(a, &r) : fewest_plan(a, &r);
	g->bound = best.bound;
	g->total = best.count;
	g->price = best.price;
	g->is_proved = best.is_proved;
	work->done += best.work;
	g->board_count = merge_boards(best.boards, best.count);
	g->boards = best.boards;
	return g;
}

const struct cut_group *cutting_make(struct arena *a, const struct stair *s,
	const struct blank *blanks, struct diags *d)
{
	struct cut_group *first = NULL, **tail = &first;
	struct work work = { 0, WORK_FOR_ALL };

	if (!s || !blanks)
		return NULL;
	for (const struct blank *b = blanks; b; b = b->next) {
		if (is_met_before(blanks, b))
			continue;
		*tail = group_make(a, s->job, b, &work, d);
		tail = &(*tail)->next;
	}
	return first;
}
