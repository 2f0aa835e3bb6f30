/*
 * A whole pattern over sheets of an office printer, to be joined.
 */
#include "base/text.h"
#include "sheets/template_cover.h"

/* What one taped joint may be out, and how much paper moves with the air (bond paper: 0.1 to 0.4
 * percent, more across the machine direction than along it). */
#define JOINT_ERROR 0.3
#define PAPER_MOVES 0.002

/* The check line may be out by this much: 1/16 in. */
#define CHECK_ERROR 1.5

static const char words_rows[] = " Then trim each finished row along the line at its bottom and "
				 "lay it on the row below, in the same way.";

static const char words_blank[] =
	" Crossed out on the map: nothing falls there, no sheet is printed.";

static const char words_check[] =
	"3. Check before cutting: the check line is straight from end to end and as long as "
	"figured; the base line is straight; the running figures on it fall where a tape "
	"says. If the check line is out by more than 1.5 mm (1/16 in), do not work to the sheets "
	"as they lie: ";

/* A job over sheets: its parts, each in a tiling of its own. */
struct spread {
	struct template_sheets sheets;
	struct mapped *parts;
	int n;
};

static const struct template_part *parts_of(struct arena *a, const struct template_job *t)
{
	struct template_part *whole;

	if (t->parts)
		return t->parts;
	whole = NEW(a, struct template_part);
	*whole = (struct template_part){ "", t->pattern };
	return whole;
}

static struct spread spread_out(struct arena *a, const struct template_job *t, enum paper_turn turn)
{
	const struct template_part *parts = parts_of(a, t);
	int n = t->parts ? t->part_count : 1;
	struct spread s = { template_sheets(a, t, USE_TILES, "tiles", turn),
		NEW_N(a, struct mapped, n), n };

	for (int i = 0; i < s.n; i++) {
		const struct template_part *p = &parts[i];
		s.parts[i].name = p->name;
		s.parts[i].tiling =
			tiling_make(a, &p->pattern, window_size(s.sheets.place), TILE_LAP);
		s.parts[i].tiling.prefix = *p->name ? arena_printf(a, "%s ", p->name) : "";
	}
	return s;
}

static int sheet_count(const struct spread *s)
{
	int n = 0;

	for (int i = 0; i < s->n; i++)
		n += tiling_count(&s->parts[i].tiling);
	return n;
}

static const char *count_words(const struct spread *s)
{
	struct arena *a = s->sheets.arena;
	const struct template_job *t = s->sheets.job;
	struct lettering l = job_lettering(t->context->stair->job);
	struct text lengths = { .arena = a };
	int n = sheet_count(s);

	for (int i = 0; i < s->n; i++)
		text_join(&lengths, ", ",
			length_letter(a, l, s->parts[i].tiling.pattern->check_length));
	return arena_printf(a, "%d sheet%s of %s%s. Check line%s: %s.", n, n == 1 ? "" : "s",
		t->paper->name, n > s->n ? " to join" : "", s->n == 1 ? "" : "s",
		text_chars(&lengths));
}

static const char *order_words(const struct spread *s)
{
	struct arena *a = s->sheets.arena;
	struct text order = { .arena = a };
	const char *rows = "", *blank = "";

	if (sheet_count(s) == s->n)
		return "2. Each piece is one sheet: there is nothing to join.";
	for (int i = 0; i < s->n; i++) {
		const struct tiling *t = &s->parts[i].tiling;
		text_join(&order, ". ", joining_order(a, t));
		rows = t->rows > 1 ? words_rows : rows;
		blank = tiling_count(t) < t->columns * t->rows ? words_blank : blank;
	}
	return arena_printf(a,
		"2. Join a row at a time, from the left: %s. Trim each sheet along the line "
		"at its right, lay it on the sheet named there until both crosses meet their "
		"halves, and tape.%s%s",
		text_chars(&order), rows, blank);
}

static const char *surer_words(const struct spread *s)
{
	return arena_printf(s->sheets.arena, "That is more than the check line may be out: %s. ",
		s->sheets.job->words.surer);
}

/* The way that has more of them. */
static int joint_count(const struct tiling *t)
{
	return (t->columns > t->rows ? t->columns : t->rows) - 1;
}

static double expected_error(const struct tiling *t)
{
	return joint_count(t) * JOINT_ERROR + t->pattern->check_length * PAPER_MOVES;
}

/* The part that can be out most. */
static const struct tiling *worst(const struct spread *s)
{
	const struct tiling *t = &s->parts[0].tiling;

	for (int i = 1; i < s->n; i++)
		if (expected_error(&s->parts[i].tiling) > expected_error(t))
			t = &s->parts[i].tiling;
	return t;
}

static const char *budget_words(const struct spread *s)
{
	struct arena *a = s->sheets.arena;
	const struct tiling *t = worst(s);
	struct lettering l = job_lettering(s->sheets.job->context->stair->job);
	double length = t->pattern->check_length;

	return arena_printf(a,
		"How far it can be out: %d joint%s one way at about 0.3 mm each make "
		"%.1f mm, and paper that moves 0.2 %% with the damp %.1f mm more over %s "
		"(common practice). %sKeep the paper flat in the shop for a day; fix it with "
		"spray or dry paste, never with water. %s",
		joint_count(t), joint_count(t) == 1 ? "" : "s", joint_count(t) * JOINT_ERROR,
		length * PAPER_MOVES, length_letter(a, l, length),
		expected_error(t) > CHECK_ERROR ? surer_words(s) : "",
		figures_words(a, &s->sheets.job->words));
}

static struct drawing *cover(const struct spread *spread)
{
	const struct template_sheets *s = &spread->sheets;
	struct arena *a = s->arena;
	struct page page = template_page(s, template_id(a, s->job),
		arena_printf(a, "Template %s, how the sheets go together", s->job->mark));
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;
	double y = cover_heading(s, &page, sheet_top(s), width, "how the sheets go together");
	const char *const words[] = { count_words(spread), words_print, order_words(spread),
		arena_printf(a, "%s%s", words_check, s->job->words.doubt), budget_words(spread),
		s->job->words.line, correction_words(a, s->place.correction) };

	for (int i = 0; i < (int)(sizeof(words) / sizeof(*words)); i++)
		y = page_paragraph(&page, vec(x, y), width, words[i]) - 1.5;
	y = draw_maps(&page, (struct box){ x, TEMPLATE_MARGIN, x + width, y - 2 }, spread->parts,
		spread->n);
	page.drawing->next = cover_positions(s, &page, y);
	return page.drawing;
}

/* A group's sheets all lie the same way, whichever takes fewer of them. */
struct laid_out {
	struct spread *spreads;
	int sheets;
};

static struct laid_out lay_out(struct arena *a, struct template_group g, enum paper_turn turn)
{
	struct laid_out l = { NEW_N(a, struct spread, g.n), 0 };

	for (int i = 0; i < g.n; i++) {
		l.spreads[i] = spread_out(a, &g.jobs[i], turn);
		l.sheets += sheet_count(&l.spreads[i]);
	}
	return l;
}

struct drawing *template_tiles(struct arena *a, struct template_group g)
{
	struct laid_out l = lay_out(a, g, PAPER_AS_GIVEN), turned = lay_out(a, g, PAPER_TURNED);

	if (turned.sheets < l.sheets)
		l = turned;
	const struct template_sheets *first = &l.spreads[0].sheets;
	struct drawing *list =
		template_calibration(a, first->job->context->measure, first->paper, first->file);
	for (int i = 0; i < g.n; i++) {
		const struct spread *s = &l.spreads[i];
		*drawings_end(&list) = cover(s);
		for (int k = 0; k < s->n; k++)
			*drawings_end(&list) = sheets_of_tiling(&s->sheets, &s->parts[k].tiling);
	}
	return list;
}
