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

struct grid {
	struct arena *arena;
	struct cell **cells;
	unsigned mask;
	bool used[SIZES][SIZES]; /* by width and height of the cells */
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

static int cell_at(double position, double size)
{
	return (int)fmin(fmax(floor(position / size), -FURTHEST), FURTHEST - 1);
}

static uint64_t key_of(int wide, int high, int column, int row)
{
	uint64_t grid = (uint64_t)(wide * SIZES + high);
	return grid << 54 | (uint64_t)(column + FURTHEST) << 27 | (uint64_t)(row + FURTHEST);
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

static void grid_add(struct grid *g, struct screen *s)
{
	struct box b = s->box;
	int wide = size_for(b.x1 - b.x0), high = size_for(b.y1 - b.y0);
	double w = size_of(wide), h = size_of(high);
	int right = cell_at(b.x1 + MARGIN, w), top = cell_at(b.y1 + MARGIN, h);

	g->used[wide][high] = true;
	for (int column = cell_at(b.x0 - MARGIN, w); column <= right; column++) {
		for (int row = cell_at(b.y0 - MARGIN, h); row <= top; row++) {
			struct cell *c = cell_for(g, key_of(wide, high, column, row));
			struct entry *e = NEW(g->arena, struct entry);
			*e = (struct entry){ c->entries, s };
			c->entries = e;
		}
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
	double t = (x - a.x) / (b.x - a.x);
	return a.y + (b.y - a.y) * fmin(fmax(t, 0), 1);
}

/* Column by column, the cells between the heights at which the line enters and leaves it. */
static struct screen *search_size(
	struct grid *g, int wide, int high, struct vec a, struct vec b, struct screen *found)
{
	double w = size_of(wide), h = size_of(high);
	int first = cell_at(a.x, w), last = cell_at(b.x, w);

	for (int column = first; column <= last; column++) {
		double y0 = column == first ? a.y : height_at(a, b, column * w);
		double y1 = column == last ? b.y : height_at(a, b, (column + 1) * w);
		int top = cell_at(fmax(y0, y1), h);
		for (int row = cell_at(fmin(y0, y1), h); row <= top; row++)
			found = search_cell(g, key_of(wide, high, column, row), found);
	}
	return found;
}

struct screen *grid_search(struct grid *g, struct vec a, struct vec b)
{
	struct screen *found = NULL;
	struct vec left = a.x <= b.x ? a : b, right = a.x <= b.x ? b : a;

	g->asked++;
	for (int wide = 0; wide < SIZES; wide++) {
		for (int high = 0; high < SIZES; high++) {
			if (g->used[wide][high])
				found = search_size(g, wide, high, left, right, found);
		}
	}
	return found;
}

long grid_steps(const struct grid *g)
{
	return g->steps;
}
