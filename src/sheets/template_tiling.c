#include "sheets/template_tiling.h"

#include "draw/bounds.h"

static int sheets_needed(double length, double window, double lap)
{
	return (int)fmax(1, ceil((length - lap) / (window - lap) - NEAR_ENOUGH));
}

static double covered(int sheets, double window, double lap)
{
	return sheets * (window - lap) + lap;
}

static bool runs_through(const struct pattern_line *l, struct box own)
{
	struct chain c = l->chain;

	if (!box_touches(l->box, own))
		return false;
	for (int i = 0; i < c.n - (c.closed ? 0 : 1); i++)
		if (clip_segment(own, c.points[i], c.points[(i + 1) % c.n]).some)
			return true;
	return false;
}

static bool falls_on(const struct pattern *p, struct box own)
{
	for (const struct pattern_line *l = p->lines; l; l = l->next)
		if (runs_through(l, own))
			return true;
	return false;
}

static void find_printed(struct arena *a, struct tiling *t)
{
	unsigned char *printed = NEW_N(a, unsigned char, t->columns * t->rows);

	for (int row = 0; row < t->rows; row++)
		for (int column = 0; column < t->columns; column++)
			printed[row * t->columns + column] =
				falls_on(t->pattern, tile_own(t, (struct tile){ column, row }));
	t->printed = printed;
}

/* How near the nearest corner of the cut line comes to a joint between rows: a joint through all
 * inner corners would put every one of them under tape. */
static double corner_clearance(const struct tiling *t)
{
	double least = INFINITY;

	for (const struct pattern_line *l = t->pattern->lines; l; l = l->next)
		for (int i = 0; l->pen == PEN_TEMPLATE && i < l->chain.n; i++)
			for (int row = 1; row < t->rows; row++) {
				double y = tile_own(t, (struct tile){ 0, row }).y1;
				least = fmin(least, fabs(l->chain.points[i].y - y));
			}
	return least;
}

#define SHIFTS 8 /* ways of sharing out what is spare that are tried */

/* Takes up the spare height where the joints keep clearest of the corners. */
static void choose_rows(struct tiling *t, double top, double spare)
{
	double best = top + spare / 2, clearest = -1;

	for (int i = 0; i <= SHIFTS && t->rows > 1; i++) {
		t->corner.y = top + spare * i / SHIFTS;
		if (corner_clearance(t) <= clearest)
			continue;
		clearest = corner_clearance(t);
		best = t->corner.y;
	}
	t->corner.y = best;
}

struct tiling tiling_make(struct arena *a, const struct pattern *p, struct vec window, double lap)
{
	struct tiling t = { .pattern = p, .window = window, .lap = lap, .prefix = "" };
	struct box b = box_grow(p->box, TILE_EDGE);

	t.columns = sheets_needed(box_width(b), window.x, lap);
	t.rows = sheets_needed(box_height(b), window.y, lap);
	t.corner = vec(b.x0 - (covered(t.columns, window.x, lap) - box_width(b)) / 2, b.y1);
	choose_rows(&t, b.y1, covered(t.rows, window.y, lap) - box_height(b));
	find_printed(a, &t);
	return t;
}

bool tile_is_printed(const struct tiling *t, struct tile at)
{
	if (at.column < 0 || at.column >= t->columns || at.row < 0 || at.row >= t->rows)
		return false;
	return t->printed[at.row * t->columns + at.column];
}

int tiling_count(const struct tiling *t)
{
	int n = 0;

	for (int i = 0; i < t->columns * t->rows; i++)
		n += t->printed[i];
	return n;
}

const char *tile_grid_name(struct arena *a, const struct tiling *t, struct tile at)
{
	char letters[3] = { (char)('A' + at.column % 26), 0, 0 };

	if (t->names == TILES_IN_A_ROW)
		return arena_printf(a, "%d", at.column + 1);
	if (at.column >= 26) {
		letters[1] = letters[0];
		letters[0] = (char)('A' + at.column / 26 - 1);
	}
	return arena_printf(a, "%s%d", letters, at.row + 1);
}

const char *tile_name(struct arena *a, const struct tiling *t, struct tile at)
{
	return arena_printf(a, "%s%s", t->prefix, tile_grid_name(a, t, at));
}

struct box tile_window(const struct tiling *t, struct tile at)
{
	double x = t->corner.x + at.column * (t->window.x - t->lap);
	double y = t->corner.y - at.row * (t->window.y - t->lap);

	return (struct box){ x, y - t->window.y, x + t->window.x, y };
}

struct box tile_own(const struct tiling *t, struct tile at)
{
	struct box b = tile_window(t, at);

	b.x0 += at.column > 0 ? t->lap / 2 : 0;
	b.x1 -= at.column < t->columns - 1 ? t->lap / 2 : 0;
	b.y1 -= at.row > 0 ? t->lap / 2 : 0;
	b.y0 += at.row < t->rows - 1 ? t->lap / 2 : 0;
	return b;
}

struct tile tile_of(const struct tiling *t, struct vec at)
{
	double column = floor((at.x - t->corner.x - t->lap / 2) / (t->window.x - t->lap));
	double row = floor((t->corner.y - at.y - t->lap / 2) / (t->window.y - t->lap));

	return (struct tile){ (int)fmin(fmax(column, 0), t->columns - 1),
		(int)fmin(fmax(row, 0), t->rows - 1) };
}

struct tile tile_beside(struct tile at, enum tile_side side)
{
	switch (side) {
	case TILE_LEFT: return (struct tile){ at.column - 1, at.row };
	case TILE_RIGHT: return (struct tile){ at.column + 1, at.row };
	case TILE_TOP: return (struct tile){ at.column, at.row - 1 };
	case TILE_BOTTOM: return (struct tile){ at.column, at.row + 1 };
	}
	return at;
}

struct joint tile_joint(const struct tiling *t, struct tile at, enum tile_side side)
{
	struct box b = tile_own(t, at);
	struct joint j = { .from = vec(b.x0, b.y0), .to = vec(b.x1, b.y1) };

	switch (side) {
	case TILE_LEFT: j.to.x = b.x0; break;
	case TILE_RIGHT: j.from.x = b.x1; break;
	case TILE_TOP: j.from.y = b.y1; break;
	case TILE_BOTTOM: j.to.y = b.y0; break;
	}
	struct vec run = vec_sub(j.to, j.from);
	j.cross[0] = vec_add(j.from, vec_scale(run, 0.25));
	j.cross[1] = vec_add(j.from, vec_scale(run, 0.75));
	return j;
}
