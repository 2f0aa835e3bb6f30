#include "sheets/template_sheets.h"

#include "base/text.h"
#include "draw/place.h"

#define NAME_LETTER 3.5
#define STRIP_GAP 2.5
#define BESIDE_BARS 6.0

static const char *small_print(const struct template_sheets *s)
{
	const struct template_words *w = &s->job->words;
	const char *const parts[] = { w->piece, w->face };
	struct text t = { .arena = s->arena };

	text_join(&t, "", arena_printf(s->arena, "%s on %s", words_full_size, s->job->paper->name));
	text_join(&t, ". ", w->job);
	for (int i = 0; i < 2; i++)
		if (*parts[i])
			text_join(&t, ". ", parts[i]);
	text_join(&t, ". ", words_stop);
	if (*w->work)
		text_join(&t, " ", w->work);
	text_join(&t, " ", w->line);
	text_join(&t, " ", words_govern);
	text_join(&t, " ", w->units);
	text_join(&t, " ", correction_words(s->arena, s->place.correction));
	return text_chars(&t);
}

static double words_width(const struct template_sheets *s)
{
	return s->paper.x - 2 * TEMPLATE_MARGIN;
}

static double strip_height(const struct template_sheets *s)
{
	struct lines l = wrap_text(s->arena, s->job->context->measure, TEMPLATE_LETTER,
		words_width(s), s->small_print);

	return BARS_ROOM + STRIP_GAP + l.n * TEMPLATE_PITCH;
}

/* A printer errs along the sides of its paper, and a page that is turned lies the other way on it.
 */
static struct vec correction_for(const struct job_sheets *wanted, struct vec paper)
{
	return paper.x >= paper.y ? vec(wanted->printer_x, wanted->printer_y)
				  : vec(wanted->printer_y, wanted->printer_x);
}

struct template_sheets template_sheets(struct arena *a, const struct template_job *t,
	enum drawing_use use, const char *kind, enum paper_turn turn)
{
	const struct job_sheets *wanted = &t->context->stair->job->sheets;
	struct template_sheets s = { .arena = a, .job = t, .use = use };
	struct vec p = vec(t->paper->width, t->paper->height);

	s.file = template_file(a, t, kind);
	s.paper = turn == PAPER_AS_GIVEN ? p : vec(p.y, p.x);
	s.place.correction = vec(1, 1);
	if (use != USE_ROLL && wanted->printer_x > 0 && wanted->printer_y > 0)
		s.place.correction = correction_for(wanted, s.paper);
	s.small_print = small_print(&s);
	s.place.frame = (struct box){ TEMPLATE_MARGIN, TEMPLATE_MARGIN + strip_height(&s),
		s.paper.x - TEMPLATE_MARGIN - BARS_ROOM - 1, s.paper.y - TEMPLATE_MARGIN };
	return s;
}

struct page template_page(const struct template_sheets *s, const char *id, const char *title)
{
	struct page p = page_begin(s->arena, s->use, s->paper, s->job->context->measure);

	p.drawing->id = id;
	p.drawing->title = title;
	p.drawing->file = s->file;
	return p;
}

struct vec sheet_top(const struct template_sheets *s)
{
	return vec(TEMPLATE_MARGIN, s->paper.y - TEMPLATE_MARGIN);
}

void sheet_checks(const struct template_sheets *s, struct page *page, const char *name)
{
	struct box f = s->place.frame;
	struct vec beside = vec(f.x0 + 4 * MM_PER_INCH / s->place.correction.x + BESIDE_BARS,
		TEMPLATE_MARGIN + (BARS_ROOM - NAME_LETTER) / 2);

	calibration_bars(page, vec(f.x0, TEMPLATE_MARGIN), TURN_LEVEL, s->place.correction);
	calibration_bars(page, vec(s->paper.x - TEMPLATE_MARGIN, f.y0), TURN_UPWARD,
		s->place.correction);
	page_text(page, beside, ALIGN_LEFT, TURN_LEVEL,
		(struct wording){ name, NAME_LETTER, LETTER_BOLD });
	page_paragraph(page, vec(f.x0, f.y0 - STRIP_GAP / 2), words_width(s), s->small_print);
}

struct drawing *sheet_of_tile(const struct template_sheets *s, const struct tiling *t,
	struct tile at)
{
	struct arena *a = s->arena;
	const char *name = tile_name(a, t, at);
	const struct wording heading[] = {
		{ name, 7, LETTER_BOLD },
		{ s->job->words.piece, TEMPLATE_LETTER, LETTER_BOLD },
		{ s->job->words.face, TEMPLATE_LETTER, LETTER_REGULAR },
		{ s->job->words.edges, TEMPLATE_LETTER, LETTER_REGULAR },
	};
	struct page page = template_page(s, arena_printf(a, "%s/%s", template_id(a, s->job), name),
		arena_printf(a, "Template %s, sheet %s", s->job->mark, name));

	sheet_checks(s, &page, arena_printf(a, "%s  sheet %s", s->job->mark, name));
	window_draw(&page, s->place, t, at, heading, 4);
	return page.drawing;
}

struct drawing *sheets_of_tiling(const struct template_sheets *s, const struct tiling *t)
{
	struct drawing *list = NULL, **tail = &list;

	for (int row = 0; row < t->rows; row++)
		for (int column = 0; column < t->columns; column++) {
			struct tile at = { column, row };
			if (!tile_is_printed(t, at))
				continue;
			*tail = sheet_of_tile(s, t, at);
			tail = &(*tail)->next;
		}
	return list;
}
