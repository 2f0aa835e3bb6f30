/*
 * A few short pieces instead of the whole, for a shop with a small printer; and
 * a rod that says where along the plank each of them goes.
 */
#include "sheets/template_cover.h"
#include "sheets/template_stringer.h"
#include "sheets/template_stringer_pieces.h"
#include "sheets/template_strips.h"

/* The pieces, and how they are spread over sheets. */
struct step_plan {
	struct template_sheets sheets;
	struct template_pieces pieces;
	struct tiling *tiling; /* of each piece */
	struct tiling rod;
};

static struct tiling piece_tiling(const struct template_sheets *s,
	const struct template_piece *piece)
{
	struct arena *a = s->arena;
	struct pattern *p = NEW(a, struct pattern);

	*p = stringer_pattern(a, s->job->stringer, job_lettering(s->job->context->stair->job),
		piece->region, piece->times > 1 ? FIGURES_FROM_PIECE_END : FIGURES_FROM_PLANK_END);
	struct tiling t = tiling_make(a, p, window_size(s->place), TILE_LAP);
	t.prefix = arena_printf(a, "%s ", piece->name);
	return t;
}

static struct step_plan plan(struct arena *a, const struct template_job *t, enum paper_turn turn)
{
	struct step_plan p = { .sheets = template_sheets(a, t, USE_STEP, "step", turn) };
	struct lettering l = job_lettering(t->context->stair->job);
	struct marking_rod rod = stringer_rod(a, t->stringer, l);
	struct pattern *strip = NEW(a, struct pattern);

	p.pieces = template_pieces(a, t->stringer);
	p.tiling = NEW_N(a, struct tiling, p.pieces.n);
	for (int i = 0; i < p.pieces.n; i++)
		p.tiling[i] = piece_tiling(&p.sheets, &p.pieces.piece[i]);
	*strip = rod_pattern(a, &rod, l);
	p.rod = strip_tiling(a, &p.sheets, strip, "rod ");
	return p;
}

static int piece_sheets(const struct step_plan *p)
{
	int n = 0;

	for (int i = 0; i < p->pieces.n; i++)
		n += tiling_count(&p->tiling[i]);
	return n;
}

static struct strips rod_strips(const struct step_plan *p)
{
	struct arena *a = p->sheets.arena;
	struct strip *list = NEW_N(a, struct strip, p->rod.columns);

	for (int i = 0; i < p->rod.columns; i++) {
		struct tile at = { i, 0 };
		list[i] = (struct strip){ &p->rod, at,
			arena_printf(a, "%s %s", p->sheets.job->mark, tile_name(a, &p->rod, at)),
			NULL };
	}
	return (struct strips){ list, p->rod.columns };
}

static int rod_sheets(const struct step_plan *p)
{
	int a_sheet = strips_a_sheet(&p->sheets, rod_strips(p));

	return (p->rod.columns + a_sheet - 1) / a_sheet;
}

static const char words_rod[] = "3. Trim each strip of the rod along the line at its right and "
				"join it to the next, in the order of their numbers. Lay it "
				"along the plank from the lower end and prick off every "
				"corner; check each with a tape against the table of "
				"positions.";

static const char *join_words(const struct step_plan *p)
{
	struct arena *a = p->sheets.arena;
	const char *text = "2. Join the sheets of each piece, a row at a time, from the left:";

	for (int i = 0; i < p->pieces.n; i++)
		text = arena_printf(a, "%s %s.", text, joining_order(a, &p->tiling[i]));
	return arena_printf(a,
		"%s Trim a sheet along the line at its right or bottom, lay it on the sheet "
		"named there until both crosses meet their halves, and tape.",
		text);
}

/* "the step 7 times, from the back of tread 1 to that of tread 8" */
static const char *one_place(struct arena *a, const struct template_piece *p)
{
	if (p->from == 0)
		return p->to == 0
			? "all of it in one piece"
			: arena_printf(a, "the foot from the lower end to the back of tread %d",
				  p->to);
	if (p->to == 0)
		return arena_printf(a, "the head from the back of tread %d to the upper end",
			p->from);
	const char *times = p->times > 1 ? arena_printf(a, "%d times", p->times) : "once";
	return arena_printf(a, "the %s %s, from the back of tread %d to that of tread %d", p->name,
		times, p->from, p->from + p->times);
}

static const char *place_words(const struct step_plan *p)
{
	struct arena *a = p->sheets.arena;
	const char *text = "4. Mark";

	for (int i = 0; i < p->pieces.n; i++)
		text = arena_printf(a, "%s%s %s", text, i > 0 ? ";" : "",
			one_place(a, &p->pieces.piece[i]));
	return arena_printf(a,
		"%s. Both ends of a piece lie on the rod's marks, its lower edge on the lower "
		"edge of the plank. Set it to the rod every time, never to the piece before "
		"it: so no error adds up.",
		text);
}

static struct drawing *cover(const struct step_plan *p)
{
	const struct template_sheets *s = &p->sheets;
	struct arena *a = s->arena;
	struct page page = template_page(s, template_id(a, s->job),
		arena_printf(a, "Template %s, step by step", s->job->mark));
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;
	double y = cover_heading(s, &page, sheet_top(s), width, "step by step");
	const char *const words[] = {
		arena_printf(a, "%d sheets of %s for the pieces; %d strips of rod on %d more.",
			piece_sheets(p), s->job->paper->name, p->rod.columns, rod_sheets(p)),
		words_print, join_words(p), words_rod, place_words(p),
		figures_words(a, &s->job->words), s->job->words.line,
		correction_words(a, s->place.correction)
	};

	for (int i = 0; i < (int)(sizeof(words) / sizeof(*words)); i++)
		y = page_paragraph(&page, vec(x, y), width, words[i]) - 1.5;
	struct mapped *maps = NEW_N(a, struct mapped, p->pieces.n);
	for (int i = 0; i < p->pieces.n; i++)
		maps[i] = (struct mapped){ p->pieces.piece[i].name, p->tiling[i] };
	y = draw_maps(&page, (struct box){ x, TEMPLATE_MARGIN, x + width, y - 2 }, maps,
		p->pieces.n);
	page.drawing->next = cover_positions(s, &page, y);
	return page.drawing;
}

struct drawing *template_step(struct arena *a, const struct template_job *t)
{
	struct step_plan p = plan(a, t, PAPER_AS_GIVEN), turned = plan(a, t, PAPER_TURNED);

	if (piece_sheets(&turned) < piece_sheets(&p))
		p = turned;
	struct drawing *list =
		template_calibration(a, t->context->measure, p.sheets.paper, p.sheets.file);
	*drawings_end(&list) = cover(&p);
	for (int i = 0; i < p.pieces.n; i++)
		*drawings_end(&list) = sheets_of_tiling(&p.sheets, &p.tiling[i]);
	*drawings_end(&list) = strips_draw(&p.sheets, rod_strips(&p), "rod");
	return list;
}
