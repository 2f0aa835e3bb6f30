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
	struct tiling piece[PIECES]; /* no pattern: there is none */
	int first, last;             /* unit that the step stands for, and the last one */
	struct tiling rod;
};

/* Unit k goes from the back of tread k to the back of tread k + 1. */
static bool is_bevelled(const struct part *p, int unit)
{
	const struct vec *back = p->stringer->inner_corners;

	for (const struct feature *f = p->features; f; f = f->next) {
		if (f->kind != FEATURE_MITRE || f->at.n == 0)
			continue;
		double x = f->at.corners[0].at.x;
		if (x > back[unit - 1].x - 0.001 && x < back[unit].x - 0.001)
			return true;
	}
	return false;
}

static bool is_near(struct vec a, struct vec b)
{
	return vec_length(vec_sub(a, b)) < 0.001;
}

/* A stringer need not be alike all along: it may stand in the open above and at a wall below. */
static bool units_are_alike(const struct part *p, int one, int other)
{
	const struct vec *front = p->stringer->tread_corners, *back = p->stringer->inner_corners;

	return is_near(vec_sub(front[one], back[one - 1]),
		       vec_sub(front[other], back[other - 1])) &&
		is_near(vec_sub(back[one], back[one - 1]), vec_sub(back[other], back[other - 1])) &&
		is_bevelled(p, one) == is_bevelled(p, other);
}

/* The longest run of equal units; the one above the last tread but one belongs to the head. */
static void find_units(struct step_plan *plan, const struct part *p)
{
	int units = p->stringer->steps - 2;

	plan->first = 1;
	plan->last = 0;
	for (int first = 1; first <= units; first++) {
		int last = first;
		while (last < units && units_are_alike(p, first, last + 1))
			last++;
		if (last - first <= plan->last - plan->first)
			continue;
		plan->first = first;
		plan->last = last;
	}
}

static int repeats(const struct step_plan *p)
{
	return p->last - p->first + 1;
}

static bool has_piece(const struct step_plan *plan, int piece)
{
	int steps = plan->sheets.job->part->stringer->steps;

	return piece == PIECE_FOOT || (piece == PIECE_HEAD ? steps > 1 : repeats(plan) > 1);
}

static struct box piece_region(const struct step_plan *plan, int piece)
{
	const struct part *part = plan->sheets.job->part;
	const struct vec *back = part->stringer->inner_corners;
	struct box whole = pattern_extent(plan->sheets.arena, part);
	bool repeated = has_piece(plan, PIECE_STEP);

	if (!has_piece(plan, PIECE_HEAD))
		return whole;
	if (piece == PIECE_FOOT)
		whole.x1 = back[plan->first - 1].x;
	if (piece == PIECE_HEAD)
		whole.x0 = back[repeated ? plan->last : plan->first - 1].x;
	if (piece == PIECE_STEP) {
		whole.x0 = back[plan->first - 1].x;
		whole.x1 = back[plan->first].x;
	}
	return whole;
}

static struct tiling piece_tiling(const struct step_plan *plan, int piece)
{
	const struct template_sheets *s = &plan->sheets;
	struct pattern *p = NEW(s->arena, struct pattern);

	*p = pattern_make(s->arena, s->job->part, job_lettering(s->job->context->stair->job),
		piece_region(plan, piece),
		piece == PIECE_STEP ? FIGURES_FROM_PIECE_END : FIGURES_FROM_PLANK_END);
	struct tiling t = tiling_make(s->arena, p, window_size(s->place), TILE_LAP);
	t.prefix = piece_names[piece];
	return t;
}

static struct step_plan plan(struct arena *a, const struct template_job *t, enum paper_turn turn)
{
	struct step_plan p = { .sheets = template_sheets(a, t, USE_STEP, "step", turn) };
	struct vec window = window_size(p.sheets.place);
	struct pattern *rod = NEW(a, struct pattern);

	find_units(&p, t->part);
	for (int i = 0; i < PIECES; i++)
		if (has_piece(&p, i))
			p.piece[i] = piece_tiling(&p, i);
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
	struct page page = template_page(s, arena_printf(a, "%s/%s", template_id(a, s->job), name),
		arena_printf(a, "Template %s, %s", s->job->part->mark, name));

	sheet_checks(s, &page, arena_printf(a, "%s  %s", s->job->part->mark, name));
	for (int i = first; i < after; i++) {
		struct tile at = { i, 0 };
		const struct wording heading = { arena_printf(a, "%s %s", s->job->part->mark,
							 tile_name(a, &p->rod, at)),
			TEMPLATE_LETTER, LETTER_BOLD };
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

static const char words_rod[] = "3. Trim each strip of the rod along the line at its right and "
				"join it to the next, in the order "
				"of their numbers. Lay it along the plank from the lower end and "
				"prick off every corner; check "
				"each with a tape against the table of positions.";

static const char *join_words(const struct step_plan *p)
{
	struct arena *a = p->sheets.arena;
	const char *text = "2. Join the sheets of each piece, a row at a time, from the left:";

	for (int i = 0; i < PIECES; i++)
		if (p->piece[i].pattern)
			text = arena_printf(a, "%s %s.", text, joining_order(a, &p->piece[i]));
	return arena_printf(a,
		"%s Trim a sheet along the line at its right or bottom, lay it on the sheet named "
		"there "
		"until both crosses meet their halves, and tape.",
		text);
}

static const char words_two_pieces[] =
	"4. Lay the foot at the lower end of the plank and the head at the upper, each with its "
	"ends on "
	"the rod's marks and its lower edge on the plank's lower edge.";

static const char words_one_piece[] = "4. Lay the template on the plank with its ends on the rod's "
				      "marks and its lower edge on the "
				      "plank's lower edge.";

static const char *place_words(const struct step_plan *p)
{
	if (!has_piece(p, PIECE_HEAD))
		return words_one_piece;
	if (!has_piece(p, PIECE_STEP))
		return words_two_pieces;
	return arena_printf(p->sheets.arena,
		"4. Lay the foot at the lower end of the plank, its upper end on the mark \"back "
		"of tread "
		"%d\". Mark the step %d times, each time with its two ends on the marks of two "
		"backs of "
		"treads. Set it to the rod every time, never to the step before it: so no error "
		"adds up. "
		"Lay the head with its lower end on \"back of tread %d\". The lower edge of every "
		"piece "
		"lies on the lower edge of the plank.",
		p->first, repeats(p), p->last + 1);
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
	struct page page = template_page(s, template_id(a, s->job),
		arena_printf(a, "Template %s, step by step", s->job->part->mark));
	double y = cover_heading(s, &page, sheet_top(s), "step by step");
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;
	const char *const words[] = {
		arena_printf(a,
			"%d sheets of %s for foot, step and head; %d strips of rod on %d more.",
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
