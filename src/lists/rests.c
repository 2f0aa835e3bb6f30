#include "lists/rests.h"

#include <string.h>

enum { SLOTS = 1 << 15, MOST = SLOTS / 2 };

struct rests {
	struct arena *arena;
	int kinds, count;
	struct rest slots[SLOTS];
};

struct rests *rests_new(struct arena *a, int kinds)
{
	struct rests *r = NEW(a, struct rests);

	r->arena = a;
	r->kinds = kinds;
	return r;
}

/* FNV-1a, over numbers instead of bytes. */
static unsigned hash(const struct rests *r, const int *left)
{
	unsigned h = 2166136261u;

	for (int i = 0; i < r->kinds; i++)
		h = (h ^ (unsigned)left[i]) * 16777619u;
	return h ^ h >> 15;
}

struct rest *rests_find(struct rests *r, const int *left)
{
	size_t all = (size_t)r->kinds * sizeof(*left);
	unsigned at = hash(r, left) % SLOTS;

	while (r->slots[at].left && memcmp(r->slots[at].left, left, all) != 0)
		at = (at + 1) % SLOTS;
	struct rest *rest = &r->slots[at];
	if (rest->left)
		return rest;
	if (r->count == MOST)
		return NULL;
	r->count++;
	rest->left = NEW_N(r->arena, int, r->kinds + 1);
	memcpy(rest->left, left, all);
	return rest;
}
