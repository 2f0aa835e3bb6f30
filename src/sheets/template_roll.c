/*
 * A whole pattern on one long page, for a print shop with a roll.
 *
 *   +------------------------------------------------------+
 *   | title     words          table of positions          |  head
 *   |b+--------------------------------------------------+b|
 *   |b|                  the template                    |b|
 *   | +--------------------------------------------------+ |
 *   | bbbbbbb                                    bbbbbbbbb |
 *   +------------------------------------------------------+
 */
#include "draw/place.h"
#include "sheets/template_cover.h"

#define PAGE_MOST 5075.0 /* just under 200 in, which is what readers of PDF take */
#define ROLL_LAP 150.0   /* where two pages join */
#define SIDE (TEMPLATE_MARGIN + BARS_ROOM + 2)
#define WORDS_WIDTH 140.0
#define WORDS_GAP 10.0
#define FIGURES_LEFT (SIDE + 2 * (WORDS_WIDTH + WORDS_GAP))
#define BLOCK_ROWS 8 /* of the table of positions, where there is room beside it */

struct roll {
	struct template_sheets sheets;
	struct tiling tiling;
	struct positions positions;
	int rows;    /* of a block of the table */
	double head; /* room over the frame */
	const char *words;
};

static const char *roll_words(struct arena *a, const struct template_words *w, int pages)
{
	const char *join = pages == 1
		? ""
		: arena_printf(a,
			  " It is in %d pages: trim one along the line at its right, lay it "
			  "on the next until both crosses meet their halves, and prove the "
			  "join with the check line.",
			  pages);

	return arena_printf(a,
		"For the print shop: actual size (100 %%), black, on film or heavy paper.%s "
		"%s The check line must be as long as figured. %s %s",
		join, words_stop, w->line, figures_words(a, w));
}

static double room_for_figures(const struct roll *r)
{
	return r->sheets.paper.x - FIGURES_LEFT - TEMPLATE_MARGIN;
}

static void lay_out_head(struct roll *r)
{
	struct template_sheets *s = &r->sheets;
	struct lines l = wrap_text(s->arena, s->job->context->measure, TEMPLATE_LETTER, WORDS_WIDTH,
		r->words);

	for (r->rows = BLOCK_ROWS; r->rows < r->positions.n; r->rows++)
		if (positions_width(s, r->rows, r->positions) <= room_for_figures(r))
			break;
	r->head = 6 + fmax((r->rows + 1) * POSITION_ROW, fmax(40, l.n * TEMPLATE_PITCH));
}

/* One page as long as the pattern, or as the head over it where one block of figures is all that
 * stands there; or several of the greatest length, with a lap. */
static struct vec roll_window(const struct pattern *p, double figures)
{
	double length = fmax(box_width(p->box) + 2 * TILE_EDGE,
		FIGURES_LEFT + figures + TEMPLATE_MARGIN - 2 * SIDE);

	return vec(fmin(length, PAGE_MOST - 2 * SIDE), box_height(p->box) + 2 * TILE_EDGE);
}

static struct roll roll_make(struct arena *a, const struct template_job *t)
{
	struct roll r = { .sheets = template_sheets(a, t, USE_ROLL, "roll", PAPER_AS_GIVEN) };
	struct template_sheets *s = &r.sheets;

	double figures = positions_width(s, t->positions.n, t->positions);
	r.tiling = tiling_make(a, &t->pattern, roll_window(&t->pattern, figures), ROLL_LAP);
	r.tiling.names = TILES_IN_A_ROW;
	r.tiling.prefix = arena_printf(a, "%s/", template_id(a, t));
	r.positions = t->positions;
	r.words = roll_words(a, &t->words, r.tiling.columns);
	s->paper.x = r.tiling.window.x + 2 * SIDE;
	lay_out_head(&r);
	s->paper.y = r.tiling.window.y + r.head + TEMPLATE_MARGIN + SIDE;
	s->place =
		(struct window_place){ { SIDE, SIDE, s->paper.x - SIDE, SIDE + r.tiling.window.y },
			{ 1, 1 } };
	return r;
}

/* At both ends: a long page may be stretched more at one of them. */
static void draw_bars(const struct roll *r, struct page *page)
{
	struct vec none = { 1, 1 }, paper = r->sheets.paper;
	double longest = 4 * MM_PER_INCH;

	calibration_bars(page, vec(SIDE, TEMPLATE_MARGIN), TURN_LEVEL, none);
	calibration_bars(page, vec(paper.x - SIDE - longest, TEMPLATE_MARGIN), TURN_LEVEL, none);
	calibration_bars(page, vec(SIDE - 2, SIDE), TURN_UPWARD, none);
	calibration_bars(page, vec(paper.x - TEMPLATE_MARGIN, SIDE), TURN_UPWARD, none);
}

static void draw_head(const struct roll *r, struct page *page)
{
	struct vec top = vec(SIDE, r->sheets.paper.y - TEMPLATE_MARGIN);
	struct box figures = { FIGURES_LEFT, SIDE, FIGURES_LEFT + room_for_figures(r), top.y };

	cover_heading(&r->sheets, page, top, WORDS_WIDTH, "roll");
	page_paragraph(page, vec(top.x + WORDS_WIDTH + WORDS_GAP, top.y), WORDS_WIDTH, r->words);
	draw_positions(page, figures, r->rows, r->positions, 0);
}

static struct drawing *roll_page(const struct roll *r, struct tile at)
{
	const struct template_sheets *s = &r->sheets;
	struct arena *a = s->arena;
	const char *name =
		r->tiling.columns > 1 ? tile_name(a, &r->tiling, at) : template_id(a, s->job);
	const struct wording heading[] = {
		{ s->job->words.piece, 7, LETTER_BOLD },
		{ s->job->words.face, 3.5, LETTER_BOLD },
		{ s->job->words.edges, 3.5, LETTER_REGULAR },
		{ s->job->words.job, 3.5, LETTER_REGULAR },
	};
	struct page page =
		template_page(s, name, arena_printf(a, "Template %s, roll", s->job->mark));

	if (at.column == 0)
		page.drawing->shows = s->job->shows;
	draw_head(r, &page);
	draw_bars(r, &page);
	window_draw(&page, s->place, &r->tiling, at, heading, 4);
	return page.drawing;
}

struct drawing *template_roll(struct arena *a, const struct template_job *t)
{
	struct roll r = roll_make(a, t);
	struct drawing *list = NULL;

	for (int column = 0; column < r.tiling.columns; column++)
		*drawings_end(&list) = roll_page(&r, (struct tile){ column, 0 });
	return list;
}
