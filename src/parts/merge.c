#include <string.h>

#include "parts/alike.h"
#include "parts/piece.h"
#include "pitchboard/rail.h"

static bool same_meeting(struct rail_meeting a, struct rail_meeting b)
{
	return a.newel == b.newel && near_enough(a.top, b.top) && near_enough(a.under, b.under);
}

/* What is known of a rail are levels in the house too: equal ones at other levels are parts of
 * their own, or those of the first would be told of all. */
static bool lie_alike(const struct rail *a, const struct rail *b)
{
	if (!a || !b)
		return a == b;
	return near_enough(a->height, b->height) && same_meeting(a->foot, b->foot) &&
		same_meeting(a->head, b->head);
}

/* The first piece of the list that is equal to this one: itself, unless an equal one came before.
 * Only first ones are looked at, and a flight has a handful of those. */
static struct part *model_of(struct part *models, struct part *piece)
{
	for (struct part *m = models; m; m = m->next)
		if (parts_are_alike(m, piece) && lie_alike(m->rail, piece->rail))
			return m;
	return NULL;
}

/* Room for the places doubles, so that n equal pieces cost n. */
static void add_place(struct arena *a, struct part *p, struct frame at, int unit)
{
	bool full = (p->count & (p->count - 1)) == 0;
	struct frame *places = (struct frame *)p->places;
	int *units = (int *)p->units;
	if (full) {
		places = NEW_N(a, struct frame, 2 * p->count);
		units = NEW_N(a, int, 2 * p->count);
		memcpy(places, p->places, (size_t)p->count * sizeof(*places));
		memcpy(units, p->units, (size_t)p->count * sizeof(*units));
		p->places = places;
		p->units = units;
	}
	places[p->count] = at;
	units[p->count++] = unit;
}

struct part *pieces_merge(struct arena *a, const struct part_kind *kind, struct part *pieces)
{
	struct part *first = NULL, **tail = &first, *next;
	int number = 0;
	for (struct part *p = pieces; p; p = next) {
		next = p->next;
		p->next = NULL;
		struct part *model = model_of(first, p);
		if (model) {
			add_place(a, model, p->places[0], p->units[0]);
			continue;
		}
		if (kind->prefix[0])
			p->mark = arena_printf(a, "%s%d", kind->prefix, ++number);
		*tail = p;
		tail = &p->next;
	}
	return first;
}
