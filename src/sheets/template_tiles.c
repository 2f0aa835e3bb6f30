/*
 * The whole stringer over sheets of an office printer, to be joined.
 */
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
	"says. If the check line is out by more than 1.5 mm (1/16 in), do not cut to the sheets "
	"as they lie: join again, or use them for the shape of a step only and set each step to "
	"its figure in the table.";

static const char *order_words(struct arena *a, const struct tiling *t)
{
	return arena_printf(a,
		"2. Join a row at a time, from the left: %s. Trim each sheet along the line "
		"at its right, lay it on the sheet named there until both crosses meet their "
		"halves, and tape.%s%s",
		joining_order(a, t), t->rows > 1 ? words_rows : "",
		tiling_count(t) < t->columns * t->rows ? words_blank : "");
}

static const char words_surer[] =
	"That is more than the check line may be out: the step template with its rod, or the "
	"roll, is the surer way. ";

static double expected_error(const struct tiling *t)
{
	return (t->columns - 1) * JOINT_ERROR + t->pattern->check_length * PAPER_MOVES;
}

static const char *budget_words(struct arena *a, const struct template_sheets *s,
	const struct tiling *t)
{
	struct lettering l = job_lettering(s->job->context->stair->job);
	double length = t->pattern->check_length;

	return arena_printf(a,
		"How far it can be out: %d joints along the length at about 0.3 mm each make "
		"%.1f mm, and paper that moves 0.2 %% with the damp %.1f mm more over %s "
		"(common practice). %sKeep the paper flat in the shop for a day; fix it with "
		"spray or dry paste, never with water. %s",
		t->columns - 1, (t->columns - 1) * JOINT_ERROR, length * PAPER_MOVES,
		length_letter(a, l, length), expected_error(t) > CHECK_ERROR ? words_surer : "",
		words_figures_govern);
}

static struct drawing *cover(const struct template_sheets *s, const struct tiling *t)
{
	struct arena *a = s->arena;
	struct page page = template_page(s, template_id(a, s->job),
		arena_printf(a, "Template %s, how the sheets go together", s->job->part->mark));
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;
	double y = cover_heading(s, &page, sheet_top(s), width, "how the sheets go together");
	const char *const words[] = { arena_printf(a, "%d sheets of %s to join. Check line: %s.",
					      tiling_count(t), s->job->paper->name,
					      length_letter(a,
						      job_lettering(s->job->context->stair->job),
						      t->pattern->check_length)),
		words_print, order_words(a, t), words_check, budget_words(a, s, t), words_line,
		correction_words(a, s->place.correction) };

	for (int i = 0; i < (int)(sizeof(words) / sizeof(*words)); i++)
		y = page_paragraph(&page, vec(x, y), width, words[i]) - 1.5;
	y = draw_map(&page, (struct box){ x, TEMPLATE_MARGIN, x + width, y - 2 }, t);
	page.drawing->next = cover_positions(s, &page, y);
	return page.drawing;
}

static struct tiling tile_whole(struct arena *a, const struct template_sheets *s,
	const struct pattern *whole)
{
	return tiling_make(a, whole, window_size(s->place), TILE_LAP);
}

struct drawing *template_tiles(struct arena *a, const struct template_job *t)
{
	struct lettering l = job_lettering(t->context->stair->job);
	struct pattern *whole = NEW(a, struct pattern);
	struct template_sheets s = template_sheets(a, t, USE_TILES, "tiles", PAPER_AS_GIVEN);
	struct template_sheets turned = template_sheets(a, t, USE_TILES, "tiles", PAPER_TURNED);

	*whole = pattern_make(a, t->part, l, pattern_extent(a, t->part), FIGURES_FROM_PLANK_END);
	struct tiling tiling = tile_whole(a, &s, whole), other = tile_whole(a, &turned, whole);
	if (tiling_count(&other) < tiling_count(&tiling)) {
		s = turned;
		tiling = other;
	}
	struct drawing *list = template_calibration(a, t, s.paper, s.file);
	*drawings_end(&list) = cover(&s, &tiling);
	*drawings_end(&list) = sheets_of_tiling(&s, &tiling);
	return list;
}
