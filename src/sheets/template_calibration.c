/*
 * The calibration page: what the printer makes of known lengths.
 *
 *   |\  `````````|    one leg of each triangle along x and one along y, and the
 *   | \  \  [][] |    diagonal, which shows a sheet that was drawn askew:
 *   |  \  \      |    200, 150 and 250 mm below; 8, 6 and 10 in above.
 *   |___\  \     |
 *       |||||        vernier
 *
 * It is never corrected for the printer, or it could not be read.
 */
#include <stdlib.h>

#include "sheets/template_sheets.h"

#define VERNIER_STEP 1.9 /* ten of them against ten times 2 mm of the rule: 0.1 mm apart each */
#define VERNIER_LINES 10
#define TICK 3.0
#define CORNER (TEMPLATE_MARGIN + 16) /* of the lower triangle, from the paper's edges */
#define BESIDE_X 16.0                 /* the other triangle's shift, across the diagonals */
#define BESIDE_Y 12.0

struct triangle {
	struct vec legs;
	struct vec words; /* the room for them inside the lower one */
	const char *x, *y, *diagonal;
};

enum { LOWER, UPPER };

static const struct triangle lying[] = {
	[LOWER] = { { 200, 150 }, { 105, 66 }, "200 mm", "150 mm", "250 mm" },
	[UPPER] = { { 8 * MM_PER_INCH, 6 * MM_PER_INCH }, { 0, 0 }, "8 in", "6 in", "10 in" },
};

static const struct triangle standing[] = {
	[LOWER] = { { 150, 200 }, { 72, 82 }, "150 mm", "200 mm", "250 mm" },
	[UPPER] = { { 6 * MM_PER_INCH, 8 * MM_PER_INCH }, { 0, 0 }, "6 in", "8 in", "10 in" },
};

static void letter(struct page *p, struct vec at, enum align align, enum turn turn,
	const char *text)
{
	page_text(p, at, align, turn, (struct wording){ text, TEMPLATE_LETTER, LETTER_REGULAR });
}

/* With a stroke across each end. */
static void measured_line(struct page *p, struct vec a, struct vec b)
{
	struct vec across = vec_scale(vec_left(vec_unit(vec_sub(b, a))), TICK);

	page_line(p, PEN_GUIDE, a, b);
	page_line(p, PEN_GUIDE, vec_add(a, across), vec_sub(a, across));
	page_line(p, PEN_GUIDE, vec_add(b, across), vec_sub(b, across));
}

/* `inward` is 1 for the triangle whose legs go right and up from its corner, -1 for the other. */
static void draw_triangle(struct page *p, struct vec corner, int inward, const struct triangle *t)
{
	struct vec x_end = vec(corner.x + inward * t->legs.x, corner.y);
	struct vec y_end = vec(corner.x, corner.y + inward * t->legs.y);
	struct vec beside = vec_add(vec_scale(x_end, 0.75), vec_scale(y_end, 0.25));
	double under = inward > 0 ? 0 : -TEMPLATE_LETTER;

	measured_line(p, corner, x_end);
	measured_line(p, corner, y_end);
	measured_line(p, x_end, y_end);
	letter(p, vec((corner.x + x_end.x) / 2, corner.y + inward * 2 + under), ALIGN_MIDDLE,
		TURN_LEVEL, t->x);
	letter(p,
		vec(corner.x + inward * 2 - under -
				(inward < 0 ? TEMPLATE_LETTER : -TEMPLATE_LETTER),
			(corner.y + y_end.y) / 2),
		ALIGN_MIDDLE, TURN_UPWARD, t->y);
	letter(p, vec(beside.x - inward * 14, beside.y - inward * 4 + under),
		inward > 0 ? ALIGN_RIGHT : ALIGN_LEFT, TURN_LEVEL, t->diagonal);
}

/* Lines on both sides of the end of a leg, numbered 0, 5 and 10 outward. */
static void draw_vernier(struct page *p, struct vec end, struct vec along)
{
	struct vec off = along.x > 0 ? vec(0, -1) : vec(-1, 0);

	for (int k = -VERNIER_LINES; k <= VERNIER_LINES; k++) {
		struct vec at = vec_add(end, vec_scale(along, k * VERNIER_STEP));
		double reach = k % 5 == 0 ? 7 : 5;
		page_line(p, PEN_GUIDE, at, vec_add(at, vec_scale(off, reach)));
		if (k % 5 != 0)
			continue;
		const char *figure = arena_printf(p->arena, "%d", abs(k));
		if (along.x > 0)
			letter(p, vec(at.x, at.y - 11), ALIGN_MIDDLE, TURN_LEVEL, figure);
		else
			letter(p, vec(at.x - 8, at.y - TEMPLATE_LETTER / 2), ALIGN_RIGHT,
				TURN_LEVEL, figure);
	}
}

static void draw_square(struct page *p, struct vec upper_right, double side, const char *text)
{
	page_box(p, PEN_GUIDE,
		(struct box){ upper_right.x - side, upper_right.y - side, upper_right.x,
			upper_right.y });
	letter(p, vec(upper_right.x - side / 2, upper_right.y - side / 2), ALIGN_MIDDLE, TURN_LEVEL,
		text);
}

static const char words_read[] =
	"Lay a steel rule along a millimetre line, its zero at the corner. If the last stroke "
	"is off its mark, look for the short line beside it that stands exactly over an even "
	"millimetre of the rule. Its number is the error in tenths of a millimetre: drawn too "
	"long on the outer side, too short on the inner.";

static const char words_enter[] = "Write what you read, divided by what it should be, in the job "
				  "file and draw again: x for the longer side of the paper, "
				  "y for the shorter. 200.8 mm for 200 mm is";

static const char words_key[] = "sheets: {printer_x: 1.004, printer_y: 1}";

static const char words_limits[] =
	"Less than 0.97 or more than 1.03 is refused: then the print dialog fits the page to "
	"the paper; choose actual size. If the diagonal is off by more than 0.5 mm the sheet "
	"was drawn askew and no factor helps. This page is never corrected, nor is the roll. "
	"Read it again on the day of use.";

static double draw_words(struct page *p, struct vec top, double width)
{
	double y = page_paragraph(p, top, width, words_read) - 1;

	y = page_paragraph(p, vec(top.x, y), width, words_enter) - 0.5;
	page_text(p, vec(top.x + 4, y - TEMPLATE_LETTER), ALIGN_LEFT, TURN_LEVEL,
		(struct wording){ words_key, TEMPLATE_LETTER, LETTER_BOLD });
	return page_paragraph(p, vec(top.x, y - TEMPLATE_PITCH - 1), width, words_limits);
}

struct drawing *template_calibration(struct arena *a, struct measure measure, struct vec paper,
	const char *file)
{
	struct page p = page_begin(a, USE_CALIBRATION, paper, measure);
	const struct triangle *pair = paper.x >= paper.y ? lying : standing;
	struct vec low = vec(CORNER, CORNER);
	struct vec high =
		vec(CORNER + BESIDE_X + pair[UPPER].legs.x, CORNER + BESIDE_Y + pair[UPPER].legs.y);
	struct vec square = vec(high.x - 10, high.y - 10);

	p.drawing->id = "T-0";
	p.drawing->title = "Calibration page";
	p.drawing->file = file;
	draw_triangle(&p, low, 1, &pair[LOWER]);
	draw_triangle(&p, high, -1, &pair[UPPER]);
	draw_vernier(&p, vec(low.x + pair[LOWER].legs.x, low.y), vec(1, 0));
	draw_vernier(&p, vec(low.x, low.y + pair[LOWER].legs.y), vec(0, 1));
	draw_square(&p, square, 2 * MM_PER_INCH, "2 in");
	draw_square(&p, pair == lying ? vec(square.x - 56, square.y) : vec(square.x, square.y - 56),
		50, "50 mm");
	page_text(&p, vec(CORNER + BESIDE_X, paper.y - TEMPLATE_MARGIN - 4), ALIGN_LEFT, TURN_LEVEL,
		(struct wording){ "CALIBRATION PAGE - print at actual size", 4, LETTER_BOLD });
	draw_words(&p, vec(low.x + 8, low.y + pair[LOWER].words.y), pair[LOWER].words.x);
	return p.drawing;
}
