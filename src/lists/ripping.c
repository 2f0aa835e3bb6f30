#include "lists/ripping.h"

#include "lists/pack.h"

#define STEPS 20000      /* of search, where it proves the boards */
#define STRIP_STEPS 1000 /* where it only helps them */
#define SHARE 1e6        /* a board, or a unit of money: shares of it as whole numbers */

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

struct rip {
	struct arena *arena;
	const struct ripping *ask;
	struct lengths lengths;      /* of the boards */
	const struct blank **blanks; /* narrowest first */
	int blank_count;
	double *widths; /* of the pieces, and so of the strips; each once, narrowest first */
	int width_count;
	struct strip *strips;
	int strip_count;
};

/* ---- widths ---- */

static bool goes_before(const struct blank *a, const struct blank *b)
{
	if (exact(a->rough_width) != exact(b->rough_width))
		return a->rough_width < b->rough_width;
	return exact(a->rough_length) > exact(b->rough_length);
}

/* Sorted by insertion: equal ones stay in the order of their marks. */
static void sort_blanks(struct rip *r)
{
	const struct ripping *ask = r->ask;

	r->blanks = NEW_N(r->arena, const struct blank *, ask->blank_count + 1);
	for (int i = 0; i < ask->blank_count; i++) {
		int at = i;
		for (; at > 0 && goes_before(ask->blanks[i], r->blanks[at - 1]); at--)
			r->blanks[at] = r->blanks[at - 1];
		r->blanks[at] = ask->blanks[i];
	}
	r->blank_count = ask->blank_count;
}

static void find_widths(struct rip *r)
{
	r->widths = NEW_N(r->arena, double, r->blank_count + 1);
	for (int i = 0; i < r->blank_count; i++) {
		double width = r->blanks[i]->rough_width;
		if (!r->width_count || exact(r->widths[r->width_count - 1]) != exact(width))
			r->widths[r->width_count++] = width;
	}
}

static struct rip begin(struct arena *a, const struct ripping *ask, struct lengths lengths)
{
	struct rip r = { .arena = a, .ask = ask, .lengths = lengths };

	sort_blanks(&r);
	find_widths(&r);
	return r;
}

/* Of a width: its place among them, from the narrowest. */
static int grade_of(const struct rip *r, double width)
{
	int grade = 0;

	while (exact(r->widths[grade]) != exact(width))
		grade++;
	return grade;
}

/* ---- strips ---- */

static double cost_of(const struct ripping *r, const struct offer *o)
{
	return r->aim == CUT_CHEAPEST ? o->price : 1;
}

/* What a strip takes at least of a board of this length; INFINITY: there is no board so wide. */
static double share_of(const struct rip *r, double width, int length)
{
	const struct offers *o = r->ask->offers;
	double beside = r->widths[0] + r->ask->kerf, least = INFINITY;

	for (int i = 0; i < o->n; i++) {
		double board = o->offers[i].width, wide = width;
		if (exact(o->offers[i].length) != exact(r->lengths.at[length]) ||
			exact(board) < exact(width))
			continue;
		if (exact(width + beside) > exact(board))
			wide = board;
		least = fmin(least,
			cost_of(r->ask, &o->offers[i]) * (wide + r->ask->kerf) /
				(board + r->ask->kerf));
	}
	return least;
}

/* Strips of every width and length that there is a board for. */
struct strip_stock {
	struct pack_stock *stock;
	int *lengths; /* beside each */
	int n;
};

static struct strip_stock strip_stock(const struct rip *r)
{
	int most = r->lengths.n * r->width_count + 1;
	struct strip_stock s = { NEW_N(r->arena, struct pack_stock, most),
		NEW_N(r->arena, int, most), 0 };

	for (int k = 0; k < r->lengths.n; k++)
		for (int i = 0; i < r->width_count; i++) {
			double usable = offer_usable(r->ask->offers, r->lengths.at[k]);
			double share = share_of(r, r->widths[i], k);
			if (usable <= 0 || !isfinite(share))
				continue;
			s.lengths[s.n] = k;
			s.stock[s.n++] = (struct pack_stock){ exact(usable + r->ask->kerf),
				(long)fmax(floor(share * SHARE), 1), i };
		}
	return s;
}

static struct pack_piece piece_of(const struct rip *r, const struct blank *b)
{
	double takes = offer_takes(r->ask->offers, b->rough_length);

	return (struct pack_piece){ exact(takes + r->ask->kerf), blank_count(b),
		grade_of(r, b->rough_width) };
}

/* The widest first on the strip. */
static struct cut_strip strip_of(const struct rip *r, const int *counts)
{
	struct cut_piece *pieces = NEW_N(r->arena, struct cut_piece, r->blank_count + 1);
	struct cut_strip s = { .used = -r->ask->kerf, .pieces = pieces };

	for (int i = r->blank_count - 1; i >= 0; i--) {
		const struct blank *b = r->blanks[i];
		if (!counts[i])
			continue;
		pieces[s.piece_count++] = (struct cut_piece){ b, counts[i] };
		s.used += counts[i] * (b->rough_length + r->ask->kerf);
		s.width = fmax(s.width, b->rough_width);
	}
	return s;
}

/* The longest used first: a board whose strips end alike can be a shorter one. */
static void add_strip(struct rip *r, struct strip s)
{
	int at = r->strip_count++;

	for (; at > 0 && r->strips[at - 1].cut.used < s.cut.used; at--)
		r->strips[at] = r->strips[at - 1];
	r->strips[at] = s;
}

/* The bound on what the strips cost together. */
static double pack_strips(struct rip *r)
{
	struct pack_piece *pieces = NEW_N(r->arena, struct pack_piece, r->blank_count + 1);
	struct strip_stock s = strip_stock(r);

	for (int i = 0; i < r->blank_count; i++)
		pieces[i] = piece_of(r, r->blanks[i]);
	struct packing k = pack_boards(r->arena,
		&(struct pack_problem){ pieces, r->blank_count, s.stock, s.n, STRIP_STEPS });
	r->strips = NEW_N(r->arena, struct strip, k.count + 1);
	for (int i = 0; i < k.count; i++)
		add_strip(r,
			(struct strip){ strip_of(r, k.boards[i].counts),
				s.lengths[k.boards[i].stock] });
	return (double)k.bound / SHARE;
}

/* ---- boards ---- */

struct boards {
	struct cut_board *list;
	int n;
};

static const struct cut_strip *next_strip(const struct rip *r, double width, int length, int *at)
{
	while (r->strips[*at].length != length || exact(r->strips[*at].cut.width) != exact(width))
		++*at;
	return &r->strips[(*at)++].cut;
}

/* Widest strip at the top. */
static void add_board(const struct rip *r, struct boards *out, const int *counts,
	const struct offer *o, int length, int *at)
{
	struct cut_board *b = &out->list[out->n++];
	int n = 0;

	for (int i = 0; i < r->width_count; i++)
		n += counts[i];
	struct cut_strip *strips = NEW_N(r->arena, struct cut_strip, n + 1);
	*b = (struct cut_board){ o->width, o->length, r->ask->offers->end_trim, o->price, strips, n,
		1 };
	n = 0;
	for (int i = r->width_count - 1; i >= 0; i--)
		for (int k = 0; k < counts[i]; k++)
			strips[n++] = *next_strip(r, r->widths[i], length, &at[i]);
}

/* Boards of one length as stock to put strips on side by side; `from` are their offers. */
static int board_stock(const struct rip *r, int length, struct pack_stock *stock,
	const struct offer **from)
{
	const struct offers *o = r->ask->offers;
	int n = 0;

	for (int i = 0; i < o->n; i++) {
		if (exact(o->offers[i].length) != exact(r->lengths.at[length]))
			continue;
		from[n] = &o->offers[i];
		stock[n++] = (struct pack_stock){ exact(o->offers[i].width + r->ask->kerf),
			(long)fmax(round(cost_of(r->ask, &o->offers[i]) * 100), 1), 0 };
	}
	return n;
}

/* So many strips of each width, side by side on boards of one length. */
static struct packing pack_side_by_side(const struct rip *r, int length, const int *counts,
	const struct offer **from)
{
	struct arena *a = r->arena;
	struct pack_piece *pieces = NEW_N(a, struct pack_piece, r->width_count + 1);
	struct pack_stock *stock = NEW_N(a, struct pack_stock, r->ask->offers->n + 1);
	int *index = NEW_N(a, int, r->width_count + 1);
	struct pack_problem p = { pieces, 0, stock, board_stock(r, length, stock, from), STEPS };

	for (int i = 0; i < r->width_count; i++) {
		index[p.piece_count] = i;
		pieces[p.piece_count] =
			(struct pack_piece){ exact(r->widths[i] + r->ask->kerf), counts[i], 0 };
		p.piece_count += counts[i] > 0;
	}
	if (!p.piece_count)
		return (struct packing){ .is_proved = true };
	struct packing k = pack_boards(a, &p);
	struct packed_board *boards = NEW_N(a, struct packed_board, k.count + 1);
	for (int b = 0; b < k.count; b++) {
		int *of_all = NEW_N(a, int, r->width_count + 1);
		for (int i = 0; i < p.piece_count; i++)
			of_all[index[i]] = k.boards[b].counts[i];
		boards[b] = (struct packed_board){ k.boards[b].stock, of_all };
	}
	k.boards = boards;
	return k;
}

static void cut_boards_of(const struct rip *r, int length, struct boards *out)
{
	const struct offer **from = NEW_N(r->arena, const struct offer *, r->ask->offers->n + 1);
	int *counts = NEW_N(r->arena, int, r->width_count + 1);
	int *at = NEW_N(r->arena, int, r->width_count + 1);

	for (int i = 0; i < r->strip_count; i++)
		if (r->strips[i].length == length)
			counts[grade_of(r, r->strips[i].cut.width)]++;
	struct packing k = pack_side_by_side(r, length, counts, from);
	for (int i = 0; i < k.count; i++)
		add_board(r, out, k.boards[i].counts, from[k.boards[i].stock], length, at);
}

static struct boards cut_boards(const struct rip *r)
{
	struct boards out = { NEW_N(r->arena, struct cut_board, r->strip_count + 1), 0 };

	for (int i = 0; i < r->lengths.n; i++)
		cut_boards_of(r, i, &out);
	return out;
}

/* ---- bounds on boards of one length ---- */

/* Strips that the pieces from this width up take at least, whatever their widths. */
static int least_strips(const struct rip *r, int grade)
{
	struct pack_piece *pieces = NEW_N(r->arena, struct pack_piece, r->blank_count + 1);
	double usable = offer_usable(r->ask->offers, r->lengths.at[0]);
	const struct pack_stock strip = { exact(usable + r->ask->kerf), 1, 0 };
	int n = 0;

	for (int i = 0; i < r->blank_count; i++) {
		struct pack_piece p = piece_of(r, r->blanks[i]);
		if (p.grade < grade)
			continue;
		p.grade = 0;
		pieces[n++] = p;
	}
	return (int)pack_boards(r->arena, &(struct pack_problem){ pieces, n, &strip, 1, STEPS })
		.bound;
}

static double bound_by_counts(const struct rip *r)
{
	const struct offer **from = NEW_N(r->arena, const struct offer *, r->ask->offers->n + 1);
	int *counts = NEW_N(r->arena, int, r->width_count + 1), wider = 0;

	for (int i = r->width_count - 1; i >= 0; i--) {
		int all = least_strips(r, i);
		counts[i] = all > wider ? all - wider : 0;
		wider = all > wider ? all : wider;
	}
	return (double)pack_side_by_side(r, 0, counts, from).bound / 100;
}

/* ---- the whole ---- */

struct ripped rip_boards(struct arena *a, const struct ripping *ask, double length)
{
	struct rip r = begin(a, ask, (struct lengths){ &length, 1 });
	double shares = pack_strips(&r);
	struct boards out = cut_boards(&r);

	return (struct ripped){ out.list, out.n, fmax(shares, bound_by_counts(&r)) };
}

struct ripped rip_any_boards(struct arena *a, const struct ripping *ask)
{
	struct rip r = begin(a, ask, offers_lengths(a, ask->offers));
	double shares = pack_strips(&r);
	struct boards out = cut_boards(&r);

	return (struct ripped){ out.list, out.n, shares };
}

double rip_fewest(struct arena *a, const struct ripping *ask)
{
	struct offer largest = { ask->offers->widest, ask->offers->longest, 0 };
	struct offers offers = *ask->offers;
	struct ripping with_largest = *ask;

	offers.offers = &largest;
	offers.n = 1;
	with_largest.offers = &offers;
	with_largest.aim = CUT_FEWEST;
	return ceil(rip_boards(a, &with_largest, largest.length).bound - 1e-6);
}
