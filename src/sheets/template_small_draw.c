/*
 * Small patterns in cells: the pattern in a frame of its own, its words under that.
 */
#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/template_sheets.h"
#include "sheets/template_small.h"

#define ROUND_IT 8.0 /* room round a pattern, in its frame */
#define CELL_GAP 6.0
#define BOLD_WIDER 0.88 /* regular over bold lettering */
#define CELL_LEAST 56.0 /* width: room for words */

struct cell {
	const struct small *small;
	struct vec frame; /* 0, 0: there is no room for the pattern on any sheet */
	struct lines name, sizes;
	struct vec size; /* of frame and words */
};

static struct cell cell_of(const struct template_sheets *s, const struct small *k)
{
	struct arena *a = s->arena;
	struct vec c = s->place.correction,
		   room = vec(box_width(s->place.frame), box_height(s->place.frame));
	struct cell cell = { .small = k };
	const char *size = k->sizes;

	cell.frame = vec(fmax(box_width(k->pattern.box) / c.x + 2 * ROUND_IT, CELL_LEAST),
		box_height(k->pattern.box) / c.y + 2 * ROUND_IT);
	if (cell.frame.x > room.x || cell.frame.y > room.y - 6 * TEMPLATE_PITCH) {
		size = arena_printf(a, "%s. Larger than this paper: see its part sheet", size);
		cell.frame = vec(0, 0);
	}
	cell.size.x = fmax(cell.frame.x, CELL_LEAST);
	cell.name =
		wrap_text(a, s->job->context->measure, TEMPLATE_LETTER, cell.size.x * BOLD_WIDER,
			arena_printf(a, "%s: %s", marks_words(a, k->marks), k->what));
	cell.sizes = wrap_text(a, s->job->context->measure, TEMPLATE_LETTER, cell.size.x, size);
	cell.size.y = cell.frame.y + 1 + (cell.name.n + cell.sizes.n) * TEMPLATE_PITCH;
	return cell;
}

static void draw_frame(const struct template_sheets *s, struct page *page, const struct cell *c,
	struct vec top)
{
	struct window_place place = s->place;

	place.frame = (struct box){ top.x, top.y - c->frame.y, top.x + c->frame.x, top.y };
	const struct tiling t =
		tiling_make(s->arena, &c->small->pattern, window_size(place), TILE_LAP);
	const struct wording none = { "", TEMPLATE_LETTER, LETTER_REGULAR };
	window_draw(page, place, &t, (struct tile){ 0, 0 }, &none, 0);
}

static void letter_lines(struct page *page, struct vec top, struct lines l, enum letter_style style)
{
	for (int i = 0; i < l.n; i++)
		page_text(page, vec(top.x, top.y - TEMPLATE_LETTER - i * TEMPLATE_PITCH),
			ALIGN_LEFT, TURN_LEVEL,
			(struct wording){ l.line[i], TEMPLATE_LETTER, style });
}

static void draw_cell(const struct template_sheets *s, struct page *page, const struct cell *c,
	struct vec top)
{
	if (c->frame.x > 0)
		draw_frame(s, page, c, top);
	struct vec under = vec(top.x, top.y - c->frame.y - 1);
	letter_lines(page, under, c->name, LETTER_BOLD);
	letter_lines(page, vec(under.x, under.y - c->name.n * TEMPLATE_PITCH), c->sizes,
		LETTER_REGULAR);
}

/* A sheet being filled from the upper left, row by row. */
struct shelf {
	struct page page;
	const char *marks; /* of what is on it */
	struct vec at;     /* of the next cell */
	double low;        /* of the row so far */
};

static struct shelf begin_sheet(const struct template_sheets *s, int nth)
{
	struct arena *a = s->arena;
	struct box f = s->place.frame;
	struct shelf l = { template_page(s, arena_printf(a, "%s/%d", template_id(a, s->job), nth),
				   arena_printf(a, "Small patterns, sheet %d", nth)),
		"", { f.x0, f.y1 }, f.y1 };

	sheet_checks(s, &l.page, arena_printf(a, "small patterns, sheet %d", nth));
	return l;
}

static void next_row(struct shelf *l, const struct template_sheets *s)
{
	l->at = vec(s->place.frame.x0, l->low - CELL_GAP);
	l->low = l->at.y;
}

/* Is there room for the cell where the shelf stands, or in the next row? */
static bool finds_room(struct shelf *l, const struct template_sheets *s, const struct cell *c)
{
	struct box f = s->place.frame;

	if (l->at.x + c->size.x > f.x1 + NEAR_ENOUGH && l->at.x > f.x0)
		next_row(l, s);
	return l->at.y - c->size.y > f.y0 || l->at.y > f.y1 - NEAR_ENOUGH;
}

static void put(struct shelf *l, const struct template_sheets *s, const struct cell *c)
{
	draw_cell(s, &l->page, c, l->at);
	l->marks = *l->marks ? arena_printf(s->arena, "%s, %s", l->marks, c->small->marks)
			     : c->small->marks;
	l->low = fmin(l->low, l->at.y - c->size.y);
	l->at.x += c->size.x + CELL_GAP;
}

/* It names its parts to the cut list. */
static struct drawing *sheet_done(struct shelf *l, struct arena *a)
{
	l->page.drawing->shows = marks_list(a, l->marks);
	return l->page.drawing;
}

static struct template_job small_job(struct arena *a, const struct sheet_context *c,
	const struct paper *paper, int number)
{
	struct template_job t = { .context = c,
		.paper = paper,
		.number = number,
		.mark = "small",
		.name = "small",
		.words = template_words(a, c->stair->job) };

	t.words.piece = "Small patterns";
	return t;
}

struct drawing *small_draw(struct arena *a, const struct sheet_context *c, const struct small *list,
	const struct paper *paper, int number)
{
	struct template_job *job = NEW(a, struct template_job);
	int nth = 1;

	if (!list)
		return NULL;
	*job = small_job(a, c, paper, number);
	struct template_sheets s = template_sheets(a, job, USE_TILES, "", PAPER_AS_GIVEN);
	struct drawing *drawings = template_calibration(a, c->measure, s.paper, s.file);
	struct shelf shelf = begin_sheet(&s, nth);
	for (const struct small *k = list; k; k = k->next) {
		struct cell cell = cell_of(&s, k);
		if (!finds_room(&shelf, &s, &cell)) {
			*drawings_end(&drawings) = sheet_done(&shelf, a);
			shelf = begin_sheet(&s, ++nth);
		}
		put(&shelf, &s, &cell);
	}
	*drawings_end(&drawings) = sheet_done(&shelf, a);
	return drawings;
}
