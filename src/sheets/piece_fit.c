/*
 * At which scale a piece is drawn: whole and as large as goes in, or with plain stretches broken
 * out where it is so slender that nothing could be told then.
 */
#include "sheets/compose.h"
#include "sheets/piece_cell.h"

/* Scales worth having (1 to so much). */
#define WHOLE_MOST 12
#define BROKEN_MOST 10

/* A piece less than this across on paper is slender, unless it is drawn larger than 1 to 4. */
#define SLENDER 7.0
#define SLENDER_DRILLED 12.0
#define SLENDER_RATIO 4

#define LEAST_SECTION 10.0 /* on paper; smaller than this it tells nothing */

#define BROKEN_HIGH 40.0  /* a broken piece is drawn no wider across, on paper */
#define FIGURES_ROOM 34.0 /* beside a view, for what is figured across it */
#define SHOWN_BREAK 10.0  /* of each stretch that is broken out, at least so much, on paper */

bool cell_goes_in(const struct cell *c, const struct cell_wish *w)
{
	return c->width <= w->width + NEAR_ENOUGH && c->height <= w->height + NEAR_ENOUGH;
}

bool cell_is_worth_having(const struct cell *c, const struct cell_wish *w)
{
	return c->drawing && c->ratio <= WHOLE_MOST && cell_goes_in(c, w);
}

static struct cell none(const struct cell_wish *w)
{
	return (struct cell){ w->sides->part, NULL, 0, 0, 0 };
}

static double lap_length(const struct cell_wish *w)
{
	double from = fmax(w->lap.from - w->sides->zero.x, 0);

	return fmin(w->lap.to - w->sides->zero.x, w->sides->part->size.length) - from;
}

/* The largest scale at which it goes in, down to 1:most. */
static struct cell whole(const struct cell_wish *w, double most)
{
	const double *ratio = sheet_ratios(w->sheet->context);

	for (; *ratio != 0 && *ratio <= most; ratio++) {
		if (lap_length(w) / *ratio > w->width)
			continue;
		struct cell c = cell_fill(w, *ratio, w->lap);
		if (cell_goes_in(&c, w))
			return c;
	}
	return none(w);
}

/* Broken at this scale so as to come out no longer than this on paper. */
static struct cell broken_within(const struct cell_wish *w, double ratio, double room)
{
	const struct part *p = w->sides->part;
	struct piece_breaks b =
		piece_breaks(w->sheet->drawing->arena, p, room * ratio, SHOWN_BREAK * ratio);

	if (b.n == 0 || breaks_drawn_at(&b, p->size.length) / ratio > room + NEAR_ENOUGH)
		return none(w);
	return cell_fill(w, ratio, b);
}

/* Broken so as to take this share of the width: half of it leaves room for the ends beside.  Where
 * more is figured across it than was allowed for, it gives way by so much. */
static struct cell broken_to(const struct cell_wish *w, double share)
{
	const double *ratio = sheet_ratios(w->sheet->context);
	double room = w->width * share - FIGURES_ROOM;

	for (; *ratio != 0 && *ratio <= BROKEN_MOST; ratio++) {
		if (w->sides->part->size.width / *ratio > BROKEN_HIGH)
			continue;
		struct cell c = broken_within(w, *ratio, room);
		if (c.drawing && c.width > w->width + NEAR_ENOUGH)
			c = broken_within(w, *ratio, room - (c.width - w->width));
		if (c.drawing && cell_goes_in(&c, w))
			return c;
	}
	return none(w);
}

static struct cell broken(const struct cell_wish *w)
{
	if (!piece_is_whole(&w->lap))
		return none(w);
	struct cell c = broken_to(w, 1);

	return c.drawing ? c : broken_to(w, 0.5);
}

bool cell_is_slender(const struct cell *c)
{
	double least = c->part->bores ? SLENDER_DRILLED : SLENDER;

	return c->ratio > SLENDER_RATIO && c->part->size.width / c->ratio < least;
}

/* Ends and words have scales of their own. */
static struct cell ends(const struct cell_wish *w)
{
	struct cell c = cell_fill(w, 1, piece_unbroken());

	return cell_goes_in(&c, w) ? c : none(w);
}

struct cell cell_make(const struct cell_wish *wish)
{
	if (!(wish->holds & CELL_VIEWS))
		return ends(wish);
	struct cell c = whole(wish, WHOLE_MOST);

	if (c.drawing && !cell_is_slender(&c))
		return c;
	struct cell large = broken(wish);
	return large.drawing ? large : c;
}

static bool is_one_thing(unsigned holds)
{
	return (holds & (holds - 1)) == 0;
}

/* Readable, with sections as small as they may be. */
static struct cell with_small_sections(struct cell_wish w)
{
	struct cell c = none(&w);

	for (; w.section > LEAST_SECTION; w.section /= 2) {
		c = cell_make(&w);
		if (c.drawing && (!(w.holds & CELL_VIEWS) || !cell_is_slender(&c)))
			break;
	}
	return c;
}

struct cell cell_make_anyhow(const struct cell_wish *wish)
{
	struct cell c = with_small_sections(*wish);

	if (!is_one_thing(wish->holds))
		return c.drawing && !cell_is_slender(&c) ? c : none(wish);
	if (!c.drawing && (wish->holds & CELL_VIEWS))
		c = whole(wish, INFINITY);
	return c.drawing ? c : cell_fill(wish, BROKEN_MOST, piece_unbroken());
}
