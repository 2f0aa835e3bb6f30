#include "sheets/template_map.h"

#define LARGEST 0.25    /* scale: of a pattern that is on few sheets */
#define CELL_LEAST 10.0 /* width of a sheet on the map: room for its name */
#define BAND_GAP 3.0

/* Pattern to paper, for some of the columns. */
struct map {
	struct page *page;
	const struct tiling *tiling;
	int first, last; /* columns */
	double scale;
	struct vec low; /* of the band, on the pattern */
	struct vec at;  /* the same on paper */
};

static struct vec on_map(const struct map *m, struct vec p)
{
	return vec_add(m->at, vec_scale(vec_sub(p, m->low), m->scale));
}

static struct box cell(const struct map *m, struct tile at)
{
	struct box own = tile_own(m->tiling, at);
	struct vec low = on_map(m, vec(own.x0, own.y0)), high = on_map(m, vec(own.x1, own.y1));

	return (struct box){ low.x, low.y, high.x, high.y };
}

static void map_sheet(const struct map *m, struct tile at)
{
	struct box b = cell(m, at);

	page_box(m->page, PEN_GUIDE, b);
	if (tile_is_printed(m->tiling, at))
		return;
	page_line(m->page, PEN_GUIDE, vec(b.x0, b.y0), vec(b.x1, b.y1));
	page_line(m->page, PEN_GUIDE, vec(b.x0, b.y1), vec(b.x1, b.y0));
}

/* Clear of the lines where there is room. */
static void map_name(const struct map *m, struct tile at)
{
	struct box b = cell(m, at);
	struct vec middle = vec((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2);
	struct wording name = { tile_grid_name(m->page->arena, m->tiling, at), TEMPLATE_LETTER,
		LETTER_BOLD };
	struct wish wish = { middle, fmax(box_width(b), box_height(b)) / 2, b };

	if (!tile_is_printed(m->tiling, at))
		return;
	if (box_is_empty(page_words(m->page, wish, TURN_LEVEL, &name, 1)))
		page_text(m->page, vec(middle.x, middle.y - TEMPLATE_LETTER / 2), ALIGN_MIDDLE,
			TURN_LEVEL, name);
}

static void map_line(const struct map *m, struct box band, struct chain line)
{
	struct arena *a = m->page->arena;

	for (struct chain *c = clip_chain(a, band, line); c; c = c->next) {
		struct vec *points = NEW_N(a, struct vec, c->n);
		for (int i = 0; i < c->n; i++)
			points[i] = on_map(m, c->points[i]);
		page_chain(m->page, PEN_FINE, (struct chain){ NULL, points, c->n, c->closed });
	}
}

static struct box band_of(const struct tiling *t, int first, int last)
{
	struct box upper = tile_own(t, (struct tile){ first, 0 });
	struct box lower = tile_own(t, (struct tile){ last, t->rows - 1 });

	return (struct box){ upper.x0, lower.y0, lower.x1, upper.y1 };
}

static void draw_band(const struct map *m)
{
	const struct tiling *t = m->tiling;
	struct box band = band_of(t, m->first, m->last);

	for (const struct pattern_line *l = t->pattern->lines; l; l = l->next)
		if (l->pen == PEN_TEMPLATE)
			map_line(m, band, l->chain);
	for (int row = 0; row < t->rows; row++)
		for (int column = m->first; column <= m->last; column++)
			map_sheet(m, (struct tile){ column, row });
	for (int row = 0; row < t->rows; row++)
		for (int column = m->first; column <= m->last; column++)
			map_name(m, (struct tile){ column, row });
}

/* Columns in one band. */
static int band_columns(const struct tiling *t, double width)
{
	int most = (int)fmax(1, floor(width / CELL_LEAST));
	int bands = (t->columns + most - 1) / most;

	return (t->columns + bands - 1) / bands;
}

/* Hanging from the top of the room; how far down it reaches. */
static double draw_map(struct page *page, struct box room, const struct tiling *t)
{
	int columns = band_columns(t, box_width(room)),
	    bands = (t->columns + columns - 1) / columns;
	struct box first = band_of(t, 0, columns - 1);
	double height = (box_height(room) + BAND_GAP) / bands - BAND_GAP, y = room.y1;
	struct map m = { .page = page, .tiling = t };

	m.scale = fmin(box_width(room) / box_width(first), height / box_height(first));
	m.scale = fmin(m.scale, LARGEST);
	for (m.first = 0; m.first < t->columns; m.first = m.last + 1) {
		m.last = (int)fmin(m.first + columns, t->columns) - 1;
		struct box band = band_of(t, m.first, m.last);
		m.low = vec(band.x0, band.y0);
		m.at = vec(room.x0, y - box_height(band) * m.scale);
		draw_band(&m);
		y = m.at.y - BAND_GAP;
	}
	return y + BAND_GAP;
}

#define MAP_GAP 4.0

double draw_maps(struct page *page, struct box room, const struct mapped *maps, int n)
{
	double width = (box_width(room) + MAP_GAP) / n - MAP_GAP, low = room.y1;

	for (int i = 0; i < n; i++) {
		double x = room.x0 + i * (width + MAP_GAP), top = room.y1;
		if (*maps[i].name) {
			page_text(page, vec(x, top - TEMPLATE_LETTER), ALIGN_LEFT, TURN_LEVEL,
				(struct wording){ maps[i].name, TEMPLATE_LETTER, LETTER_BOLD });
			top -= TEMPLATE_PITCH;
		}
		low = fmin(low,
			draw_map(page, (struct box){ x, room.y0, x + width, top },
				&maps[i].tiling));
	}
	return low;
}
