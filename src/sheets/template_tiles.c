/*
 * A whole pattern over sheets of an office printer, to be joined.
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
	"says. If the check line is out by more than 1.5 mm (1/16 in), do not work to the sheets "
	"as they lie: ";

static const char *order_words(struct arena *a, const struct tiling *t)
{
	return arena_printf(a,
		"2. Join a row at a time, from the left: %s. Trim each sheet along the line "
		"at its right, lay it on the sheet named there until both crosses meet their "
		"halves, and tape.%s%s",
		joining_order(a, t), t->rows > 1 ? words_rows : "",
		tiling_count(t) < t->columns * t->rows ? words_blank : "");
}

static const char *surer_words(struct arena *a, const struct template_sheets *s)
{
	return arena_printf(a, "That is more than the check line may be out: %s. ",
		s->job->words.surer);
}

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
		length_letter(a, l, length),
		expected_error(t) > CHECK_ERROR ? surer_words(a, s) : "",
		figures_words(a, &s->job->words));
}

static struct drawing *cover(const struct template_sheets *s, const struct tiling *t)
{
	struct arena *a = s->arena;
	struct page page = template_page(s, template_id(a, s->job),
		arena_printf(a, "Template %s, how the sheets go together", s->job->mark));
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;
	double y = cover_heading(s, &page, sheet_top(s), width, "how the sheets go together");
	const char *const words[] = { arena_printf(a, "%d sheets of %s to join. Check line: %s.",
					      tiling_count(t), s->job->paper->name,
					      length_letter(a,
						      job_lettering(s->job->context->stair->job),
						      t->pattern->check_length)),
		words_print, order_words(a, t),
		arena_printf(a, "%s%s", words_check, s->job->words.doubt), budget_words(a, s, t),
		s->job->words.line, correction_words(a, s->place.correction) };

	for (int i = 0; i < (int)(sizeof(words) / sizeof(*words)); i++)
		y = page_paragraph(&page, vec(x, y), width, words[i]) - 1.5;
	y = draw_map(&page, (struct box){ x, TEMPLATE_MARGIN, x + width, y - 2 }, t);
	page.drawing->next = cover_positions(s, &page, y);
	return page.drawing;
}

/* A group's sheets all lie the same way, whichever takes fewer of them. */
struct laid_out {
	struct template_sheets *sheets; /* of every job */
	struct tiling *tilings;
	int count;
};

static struct laid_out lay_out(struct arena *a, struct template_group g, enum paper_turn turn)
{
	struct laid_out l = { NEW_N(a, struct template_sheets, g.n), NEW_N(a, struct tiling, g.n),
		0 };

	for (int i = 0; i < g.n; i++) {
		const struct template_job *t = &g.jobs[i];
		l.sheets[i] = template_sheets(a, t, USE_TILES, "tiles", turn);
		l.tilings[i] =
			tiling_make(a, &t->pattern, window_size(l.sheets[i].place), TILE_LAP);
		l.count += tiling_count(&l.tilings[i]);
	}
	return l;
}

struct drawing *template_tiles(struct arena *a, struct template_group g)
{
	struct laid_out l = lay_out(a, g, PAPER_AS_GIVEN), turned = lay_out(a, g, PAPER_TURNED);

	if (turned.count < l.count)
		l = turned;
	struct drawing *list = template_calibration(a, g.jobs[0].context->measure,
		l.sheets[0].paper, l.sheets[0].file);
	for (int i = 0; i < g.n; i++) {
		*drawings_end(&list) = cover(&l.sheets[i], &l.tilings[i]);
		*drawings_end(&list) = sheets_of_tiling(&l.sheets[i], &l.tilings[i]);
	}
	return list;
}
