#include "draw/annotate.h"

#include <stddef.h>

#include "draw/bounds.h"

void draw_level(struct hand h, struct vec at, enum level_side side, const char *words,
	const char *figure)
{
	double t = h.letter * 0.9, way = side == LEVEL_LEFT ? -1 : 1;
	double words_width = measure_width(h.measure, LETTER_REGULAR, h.letter, words);
	double figure_width = measure_width(h.measure, LETTER_REGULAR, h.letter, figure);
	double length = 3 * t + fmax(words_width, figure_width);
	struct vec tip = vec(at.x + way * t, at.y);
	const struct vec triangle[] = { tip, vec(tip.x - t * 0.8, tip.y + t),
		vec(tip.x + t * 0.8, tip.y + t) };
	double left = side == LEVEL_LEFT ? at.x - length : at.x + 2.4 * t;

	draw_line(h.g, PEN_DIM, at, vec(at.x + way * length, at.y));
	draw_polygon(h.g, PEN_DIM, triangle, 3);
	draw_text(h.g, vec(left, at.y + 0.9), h.letter, ALIGN_LEFT, words);
	draw_text(h.g, vec(left, at.y - h.letter - 1.0), h.letter, ALIGN_LEFT, figure);
}

void draw_arrow_head(struct drawing *g, struct vec tip, struct vec direction, double length)
{
	struct vec back = vec_scale(vec_unit(direction), -length);
	struct vec half = vec_scale(vec_left(back), 0.22);
	const struct vec head[] = { tip, vec_add(vec_add(tip, back), half),
		vec_sub(vec_add(tip, back), half) };

	draw_fill(g, SHADE_BLACK, head, 3);
}

double draw_view_title(struct hand h, struct vec at, const char *title, const char *scale)
{
	double big = h.letter * VIEW_TITLE;
	double w = measure_width(h.measure, LETTER_BOLD, big, title);

	draw_text_styled(h.g, at, big, 0, ALIGN_LEFT, LETTER_BOLD, title);
	draw_line(h.g, PEN_FRAME, vec(at.x, at.y - big * 0.55), vec(at.x + w, at.y - big * 0.55));
	draw_text(h.g, vec(at.x + w + 4, at.y), h.letter, ALIGN_LEFT, scale);
	return w + 4 + measure_width(h.measure, LETTER_REGULAR, h.letter, scale);
}

/* The scales an architect's rule carries (US), and the ratios they stand for. */
static const struct {
	const char *text;
	double ratio;
} architects[] = {
	{ "FULL SIZE", 1 },
	{ "6\" = 1'-0\"", 2 },
	{ "3\" = 1'-0\"", 4 },
	{ "1 1/2\" = 1'-0\"", 8 },
	{ "1\" = 1'-0\"", 12 },
	{ "3/4\" = 1'-0\"", 16 },
	{ "1/2\" = 1'-0\"", 24 },
	{ "3/8\" = 1'-0\"", 32 },
	{ "1/4\" = 1'-0\"", 48 },
	{ "3/16\" = 1'-0\"", 64 },
	{ "1/8\" = 1'-0\"", 96 },
	{ NULL, 0 },
};

const char *scale_letter(struct arena *a, double ratio, enum units units)
{
	for (int i = 0; units == UNITS_INCHES && architects[i].text; i++)
		if (near_enough(architects[i].ratio, ratio))
			return architects[i].text;
	return arena_printf(a, "1:%g", ratio);
}

/* What one division of a scale bar may stand for, largest first. */
struct bar_unit {
	double mm;
	int figure;       /* what one division counts as */
	const char *name; /* written after the last figure */
	int parts;        /* into which the first one is divided */
};

static const struct bar_unit imperial_units[] = {
	{ 12 * MM_PER_INCH, 1, " ft", 4 },
	{ 6 * MM_PER_INCH, 6, "\"", 2 },
	{ 3 * MM_PER_INCH, 3, "\"", 3 },
	{ 1 * MM_PER_INCH, 1, "\"", 4 },
};

static const struct bar_unit metric_units[] = {
	{ 1000, 1, " m", 5 },
	{ 500, 500, " mm", 5 },
	{ 100, 100, " mm", 5 },
	{ 20, 20, " mm", 2 },
};

#define UNITS_OFFERED 4
#define BAR_HEIGHT 1.1

static const struct bar_unit *choose_unit(const struct bar_unit *units, double scale, double length)
{
	int i = 0;

	while (i + 1 < UNITS_OFFERED && units[i].mm * scale > length * 0.6)
		i++;
	return &units[i];
}

static int bar_count(const struct bar_unit *u, double scale, double length)
{
	return (int)fmax(1, floor(length / (u->mm * scale)) - 1);
}

/* One row: the first unit divided to the left of zero, then whole units. */
static double draw_bar(struct drawing *g, struct vec at, const struct bar_unit *u, double scale,
	int count)
{
	double x = at.x, unit = u->mm * scale;

	for (int i = 0; i < u->parts + count; i++) {
		double w = i < u->parts ? unit / u->parts : unit;
		const struct vec box[] = { vec(x, at.y), vec(x + w, at.y),
			vec(x + w, at.y + BAR_HEIGHT), vec(x, at.y + BAR_HEIGHT) };
		if (i % 2 == 0)
			draw_fill(g, SHADE_BLACK, box, 4);
		draw_polygon(g, PEN_FINE, box, 4);
		x += w;
	}
	return x;
}

static void letter_bar(struct hand h, struct vec at, const struct bar_unit *u, double scale,
	int count)
{
	struct arena *a = h.g->arena;
	double unit = u->mm * scale;

	draw_text(h.g, vec(at.x + unit, at.y), h.letter, ALIGN_MIDDLE, "0");
	draw_text(h.g, vec(at.x + unit * (count + 1) - 1, at.y), h.letter, ALIGN_LEFT,
		arena_printf(a, "%d%s", u->figure * count, u->name));
}

/* Feet above, metres below, alternately filled, the first unit divided, from its lower left corner;
 * the box it takes. */
static struct box draw_scale_bar(struct hand h, struct vec at, double scale)
{
	double length = fmax(44, 14 * h.letter);
	const struct bar_unit *feet = choose_unit(imperial_units, scale, length);
	const struct bar_unit *metres = choose_unit(metric_units, scale, length);
	int n = bar_count(feet, scale, length), m = bar_count(metres, scale, length);
	double low = at.y + h.letter + 1.0;

	/* one zero for both */
	double zero = at.x + fmax(metres->mm, feet->mm) * scale;
	double from_m = zero - metres->mm * scale, from_n = zero - feet->mm * scale;
	double x0 = draw_bar(h.g, vec(from_m, low), metres, scale, m);
	double x1 = draw_bar(h.g, vec(from_n, low + BAR_HEIGHT), feet, scale, n);
	letter_bar(h, vec(from_m, at.y), metres, scale, m);
	double over = low + 2 * BAR_HEIGHT + fmax(1.0, 0.4 * h.letter);
	letter_bar(h, vec(from_n, over), feet, scale, n);
	return (struct box){ at.x, at.y, fmax(x0, x1) + 4 * h.letter, over + h.letter };
}

/* The room that a scale bar is given beside a title. */
static double bar_room(struct hand h)
{
	return fmax(70, 28 * h.letter);
}

struct box draw_view_foot(struct hand h, struct box view, const char *title, double scale,
	enum units units)
{
	const char *written = scale_letter(h.g->arena, 1 / scale, units);
	double y = view.y0 - h.letter * 3.6;
	double w = draw_view_title(h, vec(view.x0, y), title, written);
	double x = fmax(view.x1 - bar_room(h), view.x0 + w + 8);
	struct box bar = draw_scale_bar(h, vec(x, y - h.letter * 2.2), scale);

	return box_join(view, box_join(bar, (struct box){ view.x0, y - h.letter, view.x1, y }));
}

struct box draw_view_foot_narrow(struct hand h, struct box view, const char *title, double scale,
	enum units units)
{
	const char *written = scale_letter(h.g->arena, 1 / scale, units);
	double wide = measure_width(h.measure, LETTER_BOLD, VIEW_TITLE * h.letter, title) + 4 +
		measure_width(h.measure, LETTER_REGULAR, h.letter, written);
	double y = view.y0 - h.letter * 3.6;

	if (wide + 8 + bar_room(h) <= box_width(view))
		return draw_view_foot(h, view, title, scale, units);
	draw_view_title(h, vec(view.x0, y), title, written);
	struct box bar = draw_scale_bar(h, vec(view.x0, y - h.letter * 6), scale);
	view = box_add(view, vec(view.x0 + wide, y));
	return box_join(view, bar);
}
