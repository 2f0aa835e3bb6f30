/*
 * Three short pieces instead of the whole: the foot, one step to repeat, the
 * head; and a rod that says where along the plank each of them goes.
 *
 *         foot      |  one step  | one step |  head
 *    ______       __|          __|        __|_______
 *   |      |_____|  |_________|  |_______|  |       |
 *   |_______________|____________|__________|_______|
 *
 * The pieces end at the backs of treads, so that each begins where the one
 * before it ends, and both ends are positions on the rod.
 */
#include "sheets/template_cover.h"

enum { PIECE_FOOT, PIECE_STEP, PIECE_HEAD, PIECES };

static const char *const piece_names[PIECES] = { "foot ", "step ", "head " };

/* The pieces, and how they are spread. */
struct step_plan {
	struct template_sheets sheets;
	int pieces;
	int repeats; /* of the step */
	struct tiling piece[PIECES];
	struct tiling rod;
};

static struct box piece_region(struct box whole, const struct stringer *s, int piece)
{
	int last = s->steps - 2; /* the last back of a tread that has a whole step after it */

	switch (piece) {
	case PIECE_FOOT: whole.x1 = s->inner_corners[0].x; break;
	case PIECE_STEP:
		whole.x0 = s->inner_corners[0].x;
		whole.x1 = s->inner_corners[1].x;
		break;
	default: whole.x0 = s->inner_corners[last].x; break;
	}
	return whole;
}

static bool has_piece(const struct stringer *s, int piece)
{
	return piece == PIECE_STEP ? s->steps > 2 : s->steps > 1;
}

static struct tiling piece_tiling(
	const struct template_sheets *s, const struct part *part, int piece)
{
	struct arena *a = s->arena;
	struct pattern *p = NEW(a, struct pattern);
	struct box region = pattern_extent(a, part);

	if (has_piece(part->stringer, piece))
		region = piece_region(region, part->stringer, piece);
	*p = pattern_make(a, part, job_lettering(s->job->context->stair->job), region);
	struct tiling t = tiling_make(a, p, window_size(s->place), TILE_LAP);
	t.prefix = piece_names[piece];
	return t;
}

static struct step_plan plan(
	struct arena *a, const struct template_job *t, enum paper_turn turn)
{
	struct step_plan p = { .sheets = template_sheets(a, t, USE_STEP, "step", turn) };
	struct vec window = window_size(p.sheets.place);
	struct pattern *rod = NEW(a, struct pattern);

	for (int i = 0; i < PIECES; i++)
		if (i == PIECE_FOOT || has_piece(t->part->stringer, i))
			p.piece[i] = piece_tiling(&p.sheets, t->part, i);
	p.repeats = t->part->stringer->steps - 2;
	*rod = pattern_rod(a, t->part, job_lettering(t->context->stair->job));
	p.rod = tiling_make(a, rod, vec(window.x, box_height(rod->box) + 2 * TILE_EDGE), TILE_LAP);
	p.rod.names = TILES_IN_A_ROW;
	p.rod.prefix = "rod ";
	return p;
}

static int piece_sheets(const struct step_plan *p)
{
	int n = 0;

	for (int i = 0; i < PIECES; i++)
		n += p->piece[i].pattern ? tiling_count(&p->piece[i]) : 0;
	return n;
}

#define STRIP_GAP 3.0

static double strip_height(const struct step_plan *p)
{
	return p->rod.window.y / p->sheets.place.correction.y;
}

/* How many strips of the rod stand on one sheet, one under the other. */
static int strips_a_sheet(const struct step_plan *p)
{
	double room = box_height(p->sheets.place.frame) + STRIP_GAP;

	return (int)fmax(1, floor(room / (strip_height(p) + STRIP_GAP)));
}

static struct window_place strip_place(const struct step_plan *p, int nth)
{
	struct window_place place = p->sheets.place;

	place.frame.y1 -= nth * (strip_height(p) + STRIP_GAP);
	place.frame.y0 = place.frame.y1 - strip_height(p);
	return place;
}

static struct drawing *rod_sheet(const struct step_plan *p, int first)
{
	const struct template_sheets *s = &p->sheets;
	struct arena *a = s->arena;
	int after = (int)fmin(first + strips_a_sheet(p), p->rod.columns);
	const char *name = arena_printf(a, "rod %d to %d", first + 1, after);
	struct page page = sheet_begin(s, arena_printf(a, "%s/%s", template_id(a, s->job), name),
		arena_printf(a, "Template %s, %s", s->job->part->mark, name));

	sheet_checks(s, &page, arena_printf(a, "%s  %s", s->job->part->mark, name));
	for (int i = first; i < after; i++) {
		struct tile at = { i, 0 };
		const struct wording heading = {
			arena_printf(a, "%s %s", s->job->part->mark, tile_name(a, &p->rod, at)),
			TEMPLATE_LETTER, LETTER_BOLD
		};
		window_draw(&page, strip_place(p, i - first), &p->rod, at, &heading, 1);
	}
	return page.drawing;
}

static struct drawing *rod_sheets(const struct step_plan *p)
{
	struct drawing *list = NULL;

	for (int first = 0; first < p->rod.columns; first += strips_a_sheet(p))
		*drawings_end(&list) = rod_sheet(p, first);
	return list;
}

static const char words_print[] =
	"1. Print the calibration page and read it. Print every sheet at actual size, on one side. "
	"Measure the bars on each sheet, both ways: exactly 100 mm and 4 in, or STOP.";

static const char words_rod[] =
	"3. Join the strips of the rod end to end, lay it along the plank from the lower end and prick "
	"off every corner; check each with a tape against the table of positions.";

static const char *join_words(const struct step_plan *p)
{
	struct arena *a = p->sheets.arena;
	const char *text = "2. Join the sheets of each piece, a row at a time, from the left:";

	for (int i = 0; i < PIECES; i++)
		if (p->piece[i].pattern)
			text = arena_printf(a, "%s %s.", text, joining_order(a, &p->piece[i]));
	return arena_printf(a,
		"%s Trim a sheet along the line at its right or bottom, lay it on the sheet named there "
		"until both crosses meet their halves, and tape.",
		text);
}

static const char *place_words(const struct step_plan *p)
{
	struct arena *a = p->sheets.arena;

	if (p->repeats < 1)
		return "4. Lay the foot at the lower end of the plank, and the head after it, each with "
		       "its ends on the rod's marks and its lower edge on the plank's.";
	return arena_printf(a,
		"4. Lay the foot at the lower end of the plank, with its right end on the mark \"back of "
		"tread 1\". Mark the step %d times, each time with its two ends on the marks of two backs "
		"of treads. Set it to the rod every time, never to the step before it: so no error adds "
		"up. Lay the head at the mark \"back of tread %d\". The lower edge of every piece lies on "
		"the lower edge of the plank.",
		p->repeats, p->repeats + 1);
}

static double draw_maps(const struct step_plan *p, struct page *page, struct box room)
{
	double width = box_width(room) / PIECES - 4, low = room.y1;

	for (int i = 0; i < PIECES; i++) {
		double x = room.x0 + i * (width + 4);
		if (p->piece[i].pattern)
			low = fmin(low,
				draw_map(page, (struct box){ x, room.y0, x + width, room.y1 },
					&p->piece[i]));
	}
	return low;
}

static struct drawing *cover(const struct step_plan *p)
{
	const struct template_sheets *s = &p->sheets;
	struct arena *a = s->arena;
	struct page page = sheet_begin(s, template_id(a, s->job),
		arena_printf(a, "Template %s, step by step", s->job->part->mark));
	double y = cover_heading(s, &page, sheet_top(s), "step by step");
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;
	const char *const words[] = {
		arena_printf(a, "%d sheets of %s for foot, step and head; %d strips of rod on %d more.",
			piece_sheets(p), s->job->paper->name, p->rod.columns,
			(p->rod.columns + strips_a_sheet(p) - 1) / strips_a_sheet(p)),
		words_print, join_words(p), words_rod, place_words(p), words_figures_govern,
		words_line, correction_words(a, s->place.correction)
	};

	for (int i = 0; i < (int)(sizeof(words) / sizeof(*words)); i++)
		y = page_paragraph(&page, vec(x, y), width, words[i]) - 1.5;
	y = draw_maps(p, &page, (struct box){ x, TEMPLATE_MARGIN, x + width, y - 2 });
	page.drawing->next = cover_positions(s, &page, y);
	return page.drawing;
}

struct drawing *template_step(struct arena *a, const struct template_job *t)
{
	struct step_plan p = plan(a, t, PAPER_AS_GIVEN), turned = plan(a, t, PAPER_TURNED);

	if (piece_sheets(&turned) < piece_sheets(&p))
		p = turned;
	struct drawing *list = template_calibration(a, t, p.sheets.paper, p.sheets.file);
	*drawings_end(&list) = cover(&p);
	for (int i = 0; i < PIECES; i++)
		if (p.piece[i].pattern)
			*drawings_end(&list) = sheets_of_tiling(&p.sheets, &p.piece[i]);
	*drawings_end(&list) = rod_sheets(&p);
	return list;
}
