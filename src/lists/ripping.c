#include "lists/ripping.h"

#include "lists/pack.h"

#define STEPS 20000 /* of search; as many as take a tenth of a second or two */
#define SHARE 1e6   /* money as a whole number: a share of a price may be any part of a cent */

/* Sizes as whole numbers.  In millionths of a millimetre 1/64 in is one, so that what fits on paper
 * fits here. */
static long exact(double mm)
{
	return lround(mm * 1e6);
}

struct strip {
	struct cut_strip cut;
	int length; /* of its board: which of the lengths */
};

/* The blanks of one width, and the strips they are cut from. */
struct class
{
	double width;
	const struct blank *const *blanks;
	int blank_count;
	struct strip *strips;
	int strip_count;
	long bound; /* on what its strips cost */
};

struct rip {
	struct arena *arena;
	const struct ripping *ask;
	const double *lengths; /* of the boards */
	int length_count;
	struct class *classes; /* widest first */
	int class_count;
};

static bool goes_before(const struct blank *a, const struct blank *b)
{
	if (exact(a->rough_width) != exact(b->rough_width))
		return a->rough_width > b->rough_width;
	return exact(a->rough_length) > exact(b->rough_length);
}

/* Sorted by insertion: equal ones stay in the order of their marks. */
static const struct blank **sorted_blanks(struct arena *a, const struct ripping *r)
{
	const struct blank **list = NEW_N(a, const struct blank *, r->blank_count + 1);

	for (int i = 0; i < r->blank_count; i++) {
		int at = i;
		for (; at > 0 && goes_before(r->blanks[i], list[at - 1]); at--)
			list[at] = list[at - 1];
		list[at] = r->blanks[i];
	}
	return list;
}

static struct rip begin(struct arena *a, const struct ripping *ask)
{
	const struct blank **sorted = sorted_blanks(a, ask);
	struct rip r = { .arena = a, .ask = ask };
	struct class *last = NULL;

	r.classes = NEW_N(a, struct class, ask->blank_count + 1);
	for (int i = 0; i < ask->blank_count; i++) {
		double width = sorted[i]->rough_width;
		if (!last || exact(last->width) != exact(width)) {
			last = &r.classes[r.class_count++];
			*last = (struct class){ .width = width, .blanks = sorted + i };
		}
		last->blank_count++;
	}
	return r;
}

/* ---- strips ---- */

/* What a strip costs: its share of the cheapest board of its length, by width; all of it where
 * nothing else would go beside it. */
static double strip_cost(const struct rip *r, double width, int length)
{
	const struct offers *o = r->ask->offers;
	double beside = r->classes[r->class_count - 1].width + r->ask->kerf;
	double least = INFINITY;

	for (int i = 0; i < o->n; i++) {
		double board = o->offers[i].width, wide = width;
		if (exact(o->offers[i].length) != exact(r->lengths[length]) ||
			exact(board) < exact(width))
			continue;
		if (exact(width + beside) > exact(board))
			wide = board;
		double share = (wide + r->ask->kerf) / (board + r->ask->kerf);
		least = fmin(least, o->offers[i].price * share);
	}
	return floor(least * SHARE);
}

/* Lengths that have no board for strips so wide are left out; `which` are those that do. */
static int strip_stock(const struct rip *r, const struct class *c, struct pack_stock *stock,
	int *which)
{
	int n = 0;

	for (int i = 0; i < r->length_count; i++) {
		double usable = offer_usable(r->ask->offers, r->lengths[i]);
		double cost = r->length_count > 1 ? strip_cost(r, c->width, i) : 1;
		if (usable <= 0 || !isfinite(cost))
			continue;
		which[n] = i;
		stock[n++] = (struct pack_stock){ exact(usable + r->ask->kerf), (long)cost };
	}
	return n;
}

static struct cut_strip strip_of(const struct rip *r, const struct class *c, const int *counts)
{
	struct cut_piece *pieces = NEW_N(r->arena, struct cut_piece, c->blank_count + 1);
	struct cut_strip s = { .width = c->width, .used = -r->ask->kerf, .pieces = pieces };

	for (int i = 0; i < c->blank_count; i++) {
		if (!counts[i])
			continue;
		pieces[s.piece_count++] = (struct cut_piece){ c->blanks[i], counts[i] };
		s.used += counts[i] * (c->blanks[i]->rough_length + r->ask->kerf);
	}
	return s;
}

/* The longest used first: a board whose strips end alike can be a shorter one. */
static void sort_strips(struct class *c)
{
	for (int i = 1; i < c->strip_count; i++) {
		struct strip s = c->strips[i];
		int at = i;
		for (; at > 0 && c->strips[at - 1].cut.used < s.cut.used; at--)
			c->strips[at] = c->strips[at - 1];
		c->strips[at] = s;
	}
}

static void pack_strips(const struct rip *r, struct class *c)
{
	struct arena *a = r->arena;
	struct pack_piece *pieces = NEW_N(a, struct pack_piece, c->blank_count + 1);
	struct pack_stock *stock = NEW_N(a, struct pack_stock, r->length_count + 1);
	int *which = NEW_N(a, int, r->length_count + 1);
	struct pack_problem p = { pieces, c->blank_count, stock, strip_stock(r, c, stock, which),
		STEPS };

	for (int i = 0; i < c->blank_count; i++)
		pieces[i] = (struct pack_piece){ exact(offer_takes(r->ask->offers,
							       c->blanks[i]->rough_length) +
							 r->ask->kerf),
			blank_count(c->blanks[i]) };
	struct packing k = pack_boards(a, &p);
	c->strips = NEW_N(a, struct strip, k.count + 1);
	c->strip_count = k.count;
	c->bound = k.bound;
	for (int i = 0; i < k.count; i++)
		c->strips[i] = (struct strip){ strip_of(r, c, k.boards[i].counts),
			which[k.boards[i].stock] };
	sort_strips(c);
}

/* ---- boards ---- */

struct boards {
	struct cut_board *list;
	int n;
};

/* Cents, or boards. */
static long cost_of(const struct ripping *r, const struct offer *o)
{
	return r->aim == CUT_CHEAPEST ? lround(o->price * 100) : 1;
}

static double in_money(const struct ripping *r, long cost)
{
	return r->aim == CUT_CHEAPEST ? (double)cost / 100 : (double)cost;
}

/* The next strip of a class that belongs on boards of this length. */
static const struct cut_strip *next_strip(const struct class *c, int length, int *at)
{
	while (c->strips[*at].length != length)
		++*at;
	return &c->strips[(*at)++].cut;
}

static void add_board(const struct rip *r, struct boards *out, const struct packed_board *packed,
	const struct offer *o, int length, int *at)
{
	struct cut_board *b = &out->list[out->n++];
	int n = 0;

	for (int i = 0; i < r->class_count; i++)
		n += packed->counts[i];
	struct cut_strip *strips = NEW_N(r->arena, struct cut_strip, n + 1);
	*b = (struct cut_board){ o->width, o->length, r->ask->offers->end_trim, o->price, strips, n,
		1 };
	n = 0;
	for (int i = 0; i < r->class_count; i++)
		for (int k = 0; k < packed->counts[i]; k++)
			strips[n++] = *next_strip(&r->classes[i], length, &at[i]);
}

/* The strips of one length go side by side on boards of that length. */
static long pack_boards_of(const struct rip *r, int length, struct boards *out)
{
	struct arena *a = r->arena;
	const struct offers *o = r->ask->offers;
	struct pack_piece *pieces = NEW_N(a, struct pack_piece, r->class_count + 1);
	struct pack_stock *stock = NEW_N(a, struct pack_stock, o->n + 1);
	const struct offer **from = NEW_N(a, const struct offer *, o->n + 1);
	int *index = NEW_N(a, int, r->class_count + 1), kinds = 0, n = 0;

	for (int i = 0; i < r->class_count; i++) {
		const struct class *c = &r->classes[i];
		int count = 0;
		for (int k = 0; k < c->strip_count; k++)
			count += c->strips[k].length == length;
		index[kinds] = i;
		pieces[kinds] = (struct pack_piece){ exact(c->width + r->ask->kerf), count };
		kinds += count > 0;
	}
	for (int i = 0; i < o->n; i++) {
		if (exact(o->offers[i].length) != exact(r->lengths[length]))
			continue;
		from[n] = &o->offers[i];
		stock[n++] = (struct pack_stock){ exact(o->offers[i].width + r->ask->kerf),
			cost_of(r->ask, &o->offers[i]) };
	}
	if (!kinds)
		return 0;
	struct packing k = pack_boards(a, &(struct pack_problem){ pieces, kinds, stock, n, STEPS });
	int *at = NEW_N(a, int, r->class_count + 1);
	for (int i = 0; i < k.count; i++) {
		int *counts = NEW_N(a, int, r->class_count + 1);
		for (int j = 0; j < kinds; j++)
			counts[index[j]] = k.boards[i].counts[j];
		add_board(r, out, &(struct packed_board){ k.boards[i].stock, counts },
			from[k.boards[i].stock], length, at);
	}
	return k.bound;
}

static int strips_of(const struct rip *r)
{
	int n = 0;

	for (int i = 0; i < r->class_count; i++)
		n += r->classes[i].strip_count;
	return n;
}

/* Were some widths cut into more strips than are known to be needed?  Then so much is not certain
 * of the boards. */
static bool are_strips_fewest(const struct rip *r)
{
	for (int i = 0; i < r->class_count; i++)
		if (r->classes[i].bound < r->classes[i].strip_count)
			return false;
	return true;
}

struct ripped rip_boards(struct arena *a, const struct ripping *ask, double length)
{
	struct rip r = begin(a, ask);

	r.lengths = &length;
	r.length_count = 1;
	for (int i = 0; i < r.class_count; i++)
		pack_strips(&r, &r.classes[i]);
	struct boards out = { NEW_N(a, struct cut_board, strips_of(&r) + 1), 0 };
	long bound = pack_boards_of(&r, 0, &out);
	return (struct ripped){ out.list, out.n, are_strips_fewest(&r) ? in_money(ask, bound) : 0 };
}

struct ripped rip_any_boards(struct arena *a, const struct ripping *ask)
{
	struct rip r = begin(a, ask);
	double *lengths = NEW_N(a, double, ask->offers->n + 1), bound = 0;

	r.lengths = lengths;
	for (int i = 0; i < ask->offers->n; i++) {
		int k = 0;
		while (k < r.length_count &&
			exact(lengths[k]) != exact(ask->offers->offers[i].length))
			k++;
		lengths[k] = ask->offers->offers[i].length;
		r.length_count += k == r.length_count;
	}
	for (int i = 0; i < r.class_count; i++) {
		pack_strips(&r, &r.classes[i]);
		bound += (double)r.classes[i].bound / SHARE;
	}
	struct boards out = { NEW_N(a, struct cut_board, strips_of(&r) + 1), 0 };
	for (int i = 0; i < r.length_count; i++)
		pack_boards_of(&r, i, &out);
	return (struct ripped){ out.list, out.n, bound };
}

double rip_fewest(struct arena *a, const struct ripping *ask)
{
	const struct offer largest = { offers_widest(ask->offers), offers_longest(ask->offers), 0 };
	struct offers offers = *ask->offers;
	struct ripping with_largest = *ask;

	offers.offers = &largest;
	offers.n = 1;
	with_largest.offers = &offers;
	with_largest.aim = CUT_FEWEST;
	return rip_boards(a, &with_largest, largest.length).bound;
}
