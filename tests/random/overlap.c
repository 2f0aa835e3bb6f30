#include "random/overlap.h"

#include <stdlib.h>
#include <string.h>

#include "random/convex.h"

/* All pieces of all placed parts, sorted by where they begin along the house. */
struct heap {
	struct convex **pieces;
	int n;
	struct placed *owners;
	int owner_count;
};

static int placed_count(const struct part *parts)
{
	int n = 0;
	for (const struct part *p = parts; p; p = p->next)
		n += p->count;
	return n;
}

static int by_x(const void *one, const void *other)
{
	const struct convex *a = *(struct convex *const *)one, *b = *(struct convex *const *)other;
	return (a->low.x > b->low.x) - (a->low.x < b->low.x);
}

static struct convex *all_pieces(struct arena *a, const struct part *parts, struct heap *h)
{
	struct convex *all = NULL;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count; i++) {
			struct convex *c = convex_pieces(a, p, p->places[i], vec3(0, 0, 0));
			for (struct convex *next; c; c = next) {
				next = c->next;
				c->owner = h->owner_count;
				c->next = all;
				all = c;
				h->n++;
			}
			h->owners[h->owner_count++] = (struct placed){ p, i };
		}
	return all;
}

static struct heap heap_make(struct arena *a, const struct part *parts)
{
	struct heap h = { .owners = NEW_N(a, struct placed, placed_count(parts)) };
	struct convex *all = all_pieces(a, parts, &h);
	h.pieces = NEW_N(a, struct convex *, h.n);
	for (int i = 0; i < h.n; i++, all = all->next)
		h.pieces[i] = all;
	qsort(h.pieces, (size_t)h.n, sizeof(*h.pieces), by_x);
	return h;
}

static bool boxes_meet(const struct convex *a, const struct convex *b, double allowed)
{
	return fmin(a->high.x, b->high.x) - fmax(a->low.x, b->low.x) > allowed &&
		fmin(a->high.y, b->high.y) - fmax(a->low.y, b->low.y) > allowed &&
		fmin(a->high.z, b->high.z) - fmax(a->low.z, b->low.z) > allowed;
}

/* A wall is given a step at a time, as it stands over each tread: under a nosing, that lies over
 * the step before it, its halves may run into each other. */
static bool is_one_wall(const struct part *a, const struct part *b)
{
	return strcmp(a->name, WALL_IN_TREAD) == 0 && strcmp(b->name, WALL_IN_TREAD) == 0;
}

struct overlap overlap_find(struct arena *a, const struct part *parts, double allowed)
{
	struct heap h = heap_make(a, parts);
	struct overlap worst = { .depth = 0 };
	for (int i = 0; i < h.n; i++)
		for (int k = i + 1; k < h.n && h.pieces[k]->low.x < h.pieces[i]->high.x; k++) {
			const struct convex *one = h.pieces[i], *other = h.pieces[k];
			const struct placed *of = &h.owners[one->owner];
			const struct placed *by = &h.owners[other->owner];
			if (of == by || is_one_wall(of->part, by->part) ||
				!boxes_meet(one, other, allowed))
				continue;
			double depth = convex_depth(one, other, fmax(allowed, worst.depth));
			if (depth > fmax(allowed, worst.depth))
				worst = (struct overlap){ *of, *by, depth };
		}
	return worst;
}

double overlap_between(struct arena *a, struct placed one, struct vec3 moved, struct placed other)
{
	struct convex *mine = convex_pieces(a, one.part, one.part->places[one.place], moved);
	struct convex *theirs =
		convex_pieces(a, other.part, other.part->places[other.place], vec3(0, 0, 0));
	double deepest = 0;
	for (struct convex *i = mine; i; i = i->next)
		for (struct convex *k = theirs; k; k = k->next)
			if (boxes_meet(i, k, 0))
				deepest = fmax(deepest, convex_depth(i, k, 0));
	return deepest;
}
