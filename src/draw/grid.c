#include "draw/grid.h"

#include <stdint.h>

/* Cell sizes: the smallest, and each next one four times the one before. */
#define SMALLEST 16.0
#define SIZES 12

/* Cells are numbered from the view's origin; this far on either side. */
#define FURTHEST (1 << 26)

/* A screen's box is taken this much larger than it is. */
#define MARGIN (10 * RIM)

struct entry {
	struct entry *next;
	struct screen *screen;
};

struct cell {
	struct cell *next; /* of the same hash */
	uint64_t key;
	struct entry *entries;
};

/* All cells of one width and height. */
struct tier {
	struct tier *next;
	int number;
	double width, height;
};

struct grid {
	struct arena *arena;
	struct cell **cells;
	unsigned mask;
	struct tier *tiers; /* those in use */
	long asked, steps;
};

static double size_of(int size)
{
	double mm = SMALLEST;
	for (; size > 0; size--)
		mm *= 4;
	return mm;
}

static int size_for(double extent)
{
	int size = 0;
	for (double mm = SMALLEST; mm < extent && size < SIZES - 1; mm *= 4)
		size++;
	return size;
}

static struct tier *tier_for(struct grid *g, struct box b)
{
	int wide = size_for(b.x1 - b.x0), high = size_for(b.y1 - b.y0);
	int number = wide * SIZES + high;

	for (struct tier *t = g->tiers; t; t = t->next) {
		if (t->number == number)
			return t;
	}
	struct tier *t = NEW(g->arena, struct tier);
	*t = (struct tier){ g->tiers, number, size_of(wide), size_of(high) };
	g->tiers = t;
	return t;
}

static int cell_at(double position, double size)
{
	double n = floor(position / size);
	if (n < -FURTHEST)
		return -FURTHEST;
	return n < FURTHEST ? (int)n : FURTHEST - 1;
}

static uint64_t key_of(const struct tier *t, int column, int row)
{
	return (uint64_t)t->number << 54 | (uint64_t)(column + FURTHEST) << 27 |
		(uint64_t)(row + FURTHEST);
}

/* Knuth's multiplicative hashing, TAOCP vol. 3, 6.4: 2^64 over the golden ratio. */
static unsigned slot_of(const struct grid *g, uint64_t key)
{
	return (unsigned)(key * UINT64_C(0x9E3779B97F4A7C15) >> 32) & g->mask;
}

static struct cell *cell_find(const struct grid *g, uint64_t key)
{
	struct cell *c = g->cells[slot_of(g, key)];
	while (c && c->key != key)
		c = c->next;
	return c;
}

static struct cell *cell_for(struct grid *g, uint64_t key)
{
	struct cell *c = cell_find(g, key);
	if (c)
		return c;
	struct cell **slot = &g->cells[slot_of(g, key)];
	c = NEW(g->arena, struct cell);
	*c = (struct cell){ .next = *slot, .key = key };
	*slot = c;
	return c;
}

static void cell_add(struct grid *g, uint64_t key, struct screen *s)
{
	struct cell *c = cell_for(g, key);
	struct entry *e = NEW(g->arena, struct entry);

	*e = (struct entry){ c->entries, s };
	c->entries = e;
}

static void grid_add(struct grid *g, struct screen *s)
{
	struct box b = s->box;
	const struct tier *t = tier_for(g, b);
	int right = cell_at(b.x1 + MARGIN, t->width), top = cell_at(b.y1 + MARGIN, t->height);

	for (int column = cell_at(b.x0 - MARGIN, t->width); column <= right; column++) {
		for (int row = cell_at(b.y0 - MARGIN, t->height); row <= top; row++)
			cell_add(g, key_of(t, column, row), s);
	}
}

struct grid *grid_make(struct arena *a, struct screen *screens, int count)
{
	struct grid *g = NEW(a, struct grid);
	unsigned slots = 64;

	while (slots < 4 * (unsigned)count)
		slots *= 2;
	g->arena = a;
	g->mask = slots - 1;
	g->cells = NEW_N(a, struct cell *, slots);
	for (struct screen *s = screens; s; s = s->next)
		grid_add(g, s);
	return g;
}

static struct screen *search_cell(struct grid *g, uint64_t key, struct screen *found)
{
	const struct cell *c = cell_find(g, key);

	g->steps++;
	if (!c)
		return found;
	for (struct entry *e = c->entries; e; e = e->next) {
		g->steps++;
		if (e->screen->asked == g->asked)
			continue;
		e->screen->asked = g->asked;
		e->screen->found = found;
		found = e->screen;
	}
	return found;
}

/* Height of the line at x, kept between its ends. */
static double height_at(struct vec a, struct vec b, double x)
{
	if (x <= a.x)
		return a.y;
	return x < b.x ? a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x) : b.y;
}

/* Column by column, the cells between the heights at which the line enters and leaves it. */
static struct screen *search_tier(struct grid *g, const struct tier *t, struct vec a, struct vec b,
	struct screen *found)
{
	int last = cell_at(b.x, t->width);

	for (int column = cell_at(a.x, t->width); column <= last; column++) {
		int from = cell_at(height_at(a, b, column * t->width), t->height);
		int to = cell_at(height_at(a, b, (column + 1) * t->width), t->height);
		int top = from > to ? from : to;
		for (int row = from < to ? from : to; row <= top; row++)
			found = search_cell(g, key_of(t, column, row), found);
	}
	return found;
}

struct screen *grid_search(struct grid *g, struct vec a, struct vec b)
{
	struct screen *found = NULL;
	struct vec left = a.x <= b.x ? a : b, right = a.x <= b.x ? b : a;

	g->asked++;
	for (const struct tier *t = g->tiers; t; t = t->next)
		found = search_tier(g, t, left, right, found);
	return found;
}

static struct screen *cover_tier(struct grid *g, const struct tier *t, struct box b,
	struct screen *found)
{
	int right = cell_at(b.x1, t->width), top = cell_at(b.y1, t->height);

	for (int column = cell_at(b.x0, t->width); column <= right; column++) {
		for (int row = cell_at(b.y0, t->height); row <= top; row++)
			found = search_cell(g, key_of(t, column, row), found);
	}
	return found;
}

struct screen *grid_cover(struct grid *g, struct box b)
{
	struct screen *found = NULL;

	g->asked++;
	for (const struct tier *t = g->tiers; t; t = t->next)
		found = cover_tier(g, t, b, found);
	return found;
}

static bool is_inside(const struct screen *s, struct vec p)
{
	for (int i = 0; i < s->n; i++)
		if (s->sides[i].x * p.x + s->sides[i].y * p.y + s->sides[i].at < 0)
			return false;
	return true;
}

double grid_nearest(struct grid *g, struct vec p)
{
	double nearest = -INFINITY;

	for (const struct screen *s = grid_search(g, p, p); s; s = s->found)
		if (s->nearest > nearest && is_inside(s, p))
			nearest = fmax(nearest, plane_at(s->plane, p.x, p.y));
	return nearest;
}

long grid_steps(const struct grid *g)
{
	return g->steps;
}
