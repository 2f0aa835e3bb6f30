#include "sheets/template_cover.h"

#include "base/text.h"
#include "draw/place.h"
#include "draw/table.h"

#define TITLE_LETTER 5.0
#define TABLE_GAP 4.0

double cover_heading(const struct template_sheets *s, struct page *page, struct vec top,
	double width, const char *title)
{
	const char *const lines[] = { s->job->words.job, s->job->words.piece, s->job->words.stock,
		s->job->words.face, s->job->words.edges, s->job->words.work, s->job->words.units };
	double y = top.y - TITLE_LETTER;

	page_text(page, vec(top.x, y), ALIGN_LEFT, TURN_LEVEL,
		(struct wording){ arena_printf(s->arena, "%s: %s", words_full_size, title),
			TITLE_LETTER, LETTER_BOLD });
	y -= 4;
	for (int i = 0; i < 7; i++)
		if (*lines[i])
			y = page_paragraph(page, vec(top.x, y), width, lines[i]);
	return y - 2;
}

const char *joining_order(struct arena *a, const struct tiling *t)
{
	struct text order = { .arena = a };

	for (int row = 0; row < t->rows; row++) {
		struct text names = { .arena = a };
		for (int column = 0; column < t->columns; column++) {
			struct tile at = { column, row };
			if (tile_is_printed(t, at))
				text_join(&names, ", ", tile_name(a, t, at));
		}
		text_join(&order, "; then ", text_chars(&names));
	}
	return text_chars(&order);
}

static const struct table_column columns[] = {
	{ .head = "No.", .align = ALIGN_RIGHT },
	{ .head = "Point", .align = ALIGN_LEFT },
	{ .head = "Along", .align = ALIGN_RIGHT },
	{ .head = "Across", .align = ALIGN_RIGHT },
};

static struct table positions_table(struct arena *a, struct positions p, int first, int rows)
{
	int n = p.n - first < rows ? p.n - first : rows;
	const char **cells = NEW_N(a, const char *, 4 * n);

	for (int i = 0; i < n; i++) {
		const struct position *q = &p.position[first + i];
		const char *row[] = { arena_printf(a, "%d", q->number), q->what, q->along,
			q->across };
		for (int k = 0; k < 4; k++)
			cells[4 * i + k] = row[k];
	}
	return (struct table){ NULL, columns, 4, cells, n };
}

int draw_positions(struct page *page, struct box room, int rows, struct positions p, int first)
{
	struct hand h = { page->drawing, page->measure, TEMPLATE_LETTER };
	double x = room.x0;

	while (first < p.n) {
		struct table t = positions_table(page->arena, p, first, rows);
		if (x > room.x0 && x + table_size(h, &t).x1 > room.x1)
			break;
		x = draw_table(h, vec(x, room.y1), &t).x1 + TABLE_GAP;
		first += t.row_count;
	}
	return first;
}

double positions_width(const struct template_sheets *s, int rows, struct positions p)
{
	struct drawing *none = drawing_new(s->arena, s->use, 0, 0); /* only measured */
	struct hand h = { none, s->job->context->measure, TEMPLATE_LETTER };
	double width = 0;

	for (int first = 0; first < p.n; first += rows) {
		struct table t = positions_table(s->arena, p, first, rows);
		width += table_size(h, &t).x1 + TABLE_GAP;
	}
	return width;
}

static const char *position_words(const struct template_sheets *s)
{
	return arena_printf(s->arena,
		"Positions are measured %s. Each is measured from the same end, so that no "
		"rounding adds up. The number stands beside the point on the template.",
		s->job->words.from);
}

static int rows_below(double y)
{
	return (int)fmax(1, floor((y - TEMPLATE_MARGIN) / POSITION_ROW) - 1);
}

static struct box width_below(const struct template_sheets *s, double y)
{
	return (struct box){ TEMPLATE_MARGIN, TEMPLATE_MARGIN, s->paper.x - TEMPLATE_MARGIN, y };
}

static struct page position_page(const struct template_sheets *s, int first)
{
	struct arena *a = s->arena;

	return template_page(s,
		arena_printf(a, "%s/positions from %d", template_id(a, s->job), first + 1),
		arena_printf(a, "Template %s, positions in figures", s->job->mark));
}

static double position_heading(const struct template_sheets *s, struct page *page)
{
	double width = s->paper.x - 2 * TEMPLATE_MARGIN;
	double y = cover_heading(s, page, sheet_top(s), width, "positions in figures");

	return page_paragraph(page, vec(TEMPLATE_MARGIN, y), width, position_words(s)) - 2;
}

static struct drawing *position_pages(const struct template_sheets *s, struct positions p)
{
	struct drawing *list = NULL, **tail = &list;

	for (int first = 0; first < p.n;) {
		struct page page = position_page(s, first);
		double y = position_heading(s, &page);
		first = draw_positions(&page, width_below(s, y), rows_below(y), p, first);
		*tail = page.drawing;
		tail = &page.drawing->next;
	}
	return list;
}

struct drawing *cover_positions(const struct template_sheets *s, struct page *cover, double y)
{
	struct positions p = s->job->positions;
	struct box room = width_below(s, y - 3);
	struct lines words = wrap_text(s->arena, cover->measure, TEMPLATE_LETTER, box_width(room),
		position_words(s));

	room.y1 -= words.n * TEMPLATE_PITCH + 1;
	int rows = (int)floor(box_height(room) / POSITION_ROW) - 1;
	if (rows > 0 && positions_width(s, rows, p) <= box_width(room)) {
		page_paragraph(cover, vec(room.x0, y - 3), box_width(room), position_words(s));
		draw_positions(cover, room, rows, p, 0);
		return NULL;
	}
	return position_pages(s, p);
}
