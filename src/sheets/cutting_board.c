#include "sheets/cutting_board.h"

#include "base/text.h"
#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/words.h"

#define TITLE 2.0 /* heights in capitals: of the line over the board */
#define LINE 1.5  /* of a line under it */
#define AIR 2.0   /* under all */
#define LEAST 1.6 /* a strip lower than this is not lettered */

double board_margin(struct hand h)
{
	return 7 * h.letter;
}

static bool fits(struct hand h, const char *text, double width)
{
	return measure_width(h.measure, LETTER_REGULAR, h.letter, text) + h.letter * 0.6 <= width;
}

/* Mark and rough length, or as much of it as the piece has room for. */
static const char *full_label(struct arena *a, const struct stair *s, const struct blank *b)
{
	const char *row = b->row > 1 ? arena_printf(a, "%d ", b->row) : "";

	return arena_printf(a, "%s%s  %s", row, b->part->mark, inches_words(a, s, b->rough_length));
}

static const char *label_for(struct hand h, const struct board_view *v, const struct blank *b)
{
	double length = b->rough_length * v->along;
	const char *full = full_label(h.g->arena, v->stair, b);

	if (b->rough_width * v->across < LEAST * h.letter)
		return "";
	if (fits(h, full, length))
		return full;
	return fits(h, b->part->mark, length) ? b->part->mark : "";
}

/* Does the diagram itself say all of a piece?  Not when it is ripped once more. */
static bool is_told(struct hand h, const struct board_view *v, const struct cut_strip *s,
	const struct blank *b)
{
	const char *full = full_label(h.g->arena, v->stair, b);

	return b->rough_width > s->width - NEAR_ENOUGH &&
		b->rough_width * v->across >= LEAST * h.letter &&
		fits(h, full, b->rough_length * v->along);
}

static bool is_strip_told(struct hand h, const struct board_view *v, const struct cut_strip *s)
{
	for (int i = 0; i < s->piece_count; i++)
		if (!is_told(h, v, s, s->pieces[i].blank))
			return false;
	return true;
}

static const char *piece_line(struct arena *a, const struct board_view *v,
	const struct cut_strip *s, const struct cut_piece *p)
{
	const struct blank *b = p->blank;
	const char *again = b->rough_width < s->width - NEAR_ENOUGH
		? arena_printf(a, " ripped to %s", inches_words(a, v->stair, b->rough_width))
		: "";

	const char *length = inches_words(a, v->stair, b->rough_length);

	if (b->row > 1)
		return arena_printf(a, "%d length%s of %d %s, %s%s", p->count,
			p->count > 1 ? "s" : "", b->row, b->part->mark, length, again);
	return arena_printf(a, "%d %s of %s%s", p->count, b->part->mark, length, again);
}

static const char *strip_line(struct arena *a, const struct board_view *v, int index)
{
	const struct cut_strip *s = &v->board->strips[index];
	struct text t = { .arena = a };

	for (int i = 0; i < s->piece_count; i++)
		text_join(&t, ", ", piece_line(a, v, s, &s->pieces[i]));
	if (v->board->strip_count == 1)
		return text_chars(&t);
	return arena_printf(a, "Strip %d from the top, %s: %s", index + 1,
		inches_words(a, v->stair, s->width), text_chars(&t));
}

static struct lines lines_under(struct hand h, const struct board_view *v)
{
	struct text t = { .arena = h.g->arena };

	for (int i = 0; i < v->board->strip_count; i++)
		if (!is_strip_told(h, v, &v->board->strips[i]))
			text_join(&t, ".  ", strip_line(h.g->arena, v, i));
	if (!t.length)
		return (struct lines){ NULL, 0 };
	return wrap_text(h.g->arena, h.measure, h.letter, v->width, text_chars(&t));
}

double board_depth(struct hand h, const struct board_view *v)
{
	return (TITLE + AIR + LINE * lines_under(h, v).n) * h.letter + v->board->width * v->across;
}

static const char *board_title(struct arena *a, const struct board_view *v)
{
	const struct cut_board *b = v->board;
	const char *price = b->price > 0 ? arena_printf(a, ", %.2f", b->price) : "";

	return arena_printf(a, "%d of %s x %s%s%s", b->count, inches_words(a, v->stair, b->width),
		length_words(a, v->stair, b->length), price, b->count > 1 && *price ? " each" : "");
}

static void fill_box(struct drawing *g, struct box b)
{
	const struct vec corners[] = { vec(b.x0, b.y0), vec(b.x1, b.y0), vec(b.x1, b.y1),
		vec(b.x0, b.y1) };

	draw_fill(g, SHADE_LIGHT, corners, 4);
}

static void fill_white(struct drawing *g, struct box b)
{
	const struct vec corners[] = { vec(b.x0, b.y0), vec(b.x1, b.y0), vec(b.x1, b.y1),
		vec(b.x0, b.y1) };

	draw_fill(g, SHADE_WHITE, corners, 4);
}

static void draw_piece(struct hand h, const struct board_view *v, const struct blank *b,
	struct box at)
{
	const char *label = label_for(h, v, b);

	fill_white(h.g, at);
	draw_box(h.g, PEN_FINE, at);
	if (*label)
		draw_text(h.g, vec((at.x0 + at.x1) / 2, (at.y0 + at.y1 - h.letter) / 2), h.letter,
			ALIGN_MIDDLE, label);
}

static void draw_strip(struct hand h, const struct board_view *v, const struct cut_strip *s,
	struct vec at)
{
	double down = s->width * v->across, x = at.x + v->end_trim * v->along;

	if (down >= LEAST * h.letter)
		draw_text(h.g, vec(at.x - h.letter * 0.6, at.y - (down + h.letter) / 2), h.letter,
			ALIGN_RIGHT, inches_words(h.g->arena, v->stair, s->width));
	for (int i = 0; i < s->piece_count; i++)
		for (int k = 0; k < s->pieces[i].count; k++) {
			const struct blank *b = s->pieces[i].blank;
			double end = x + b->rough_length * v->along;
			draw_piece(h, v, b,
				(struct box){ x, at.y - b->rough_width * v->across, end, at.y });
			x = end + v->kerf * v->along;
		}
}

void draw_board(struct hand h, const struct board_view *v, struct vec at)
{
	const struct cut_board *b = v->board;
	double x = at.x + board_margin(h), y = at.y - TITLE * h.letter;
	struct box board = { x, y - b->width * v->across, x + b->length * v->along, y };
	struct lines under = lines_under(h, v);

	draw_text(h.g, vec(x, at.y - h.letter * 1.3), h.letter, ALIGN_LEFT,
		board_title(h.g->arena, v));
	fill_box(h.g, board);
	for (int i = 0; i < b->strip_count; i++) {
		draw_strip(h, v, &b->strips[i], vec(x, y));
		y -= (b->strips[i].width + v->kerf) * v->across;
	}
	draw_box(h.g, PEN_OUTLINE, board);
	for (int i = 0; i < under.n; i++)
		draw_text(h.g, vec(at.x, board.y0 - (i + 1) * LINE * h.letter), h.letter,
			ALIGN_LEFT, under.line[i]);
}
