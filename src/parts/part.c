#include "pitchboard/part.h"

#include <string.h>

#include "parts/piece.h"

/* In this order they are listed: existing work first, then as they go up in the house. */
static const struct part_kind *const kinds[] = {
	&part_existing,
	&part_stringer,
	&part_block,
	&part_riser,
	&part_tread,
	&part_landing,
	&part_newel,
	&part_rail,
	&part_baluster,
};

#define KINDS (sizeof(kinds) / sizeof(kinds[0]))

struct part *piece_add(struct pieces *list, const char *name, const char *material,
	struct frame place)
{
	struct part *p = NEW(list->arena, struct part);
	struct frame *f = NEW(list->arena, struct frame);
	*f = place;
	*p = (struct part){ .kind = list->kind, .name = name, .material = material };
	p->mark = "";
	p->places = f;
	p->count = 1;
	if (list->last)
		list->last->next = p;
	else
		list->first = p;
	list->last = p;
	return p;
}

void piece_feature(struct arena *a, struct part *p, struct feature f)
{
	struct feature **tail = &p->features;
	while (*tail)
		tail = &(*tail)->next;
	*tail = NEW(a, struct feature);
	**tail = f;
}

static bool near(double a, double b)
{
	return fabs(a - b) <= NEAR_ENOUGH;
}

static bool same_size(struct part_size a, struct part_size b)
{
	return near(a.length, b.length) && near(a.width, b.width) && near(a.thickness, b.thickness);
}

static bool same_outline(struct outline a, struct outline b)
{
	if (a.n != b.n)
		return false;
	for (int i = 0; i < a.n; i++)
		if (!near(a.corners[i].at.x, b.corners[i].at.x) ||
			!near(a.corners[i].at.y, b.corners[i].at.y) ||
			!near(a.corners[i].bulge, b.corners[i].bulge))
			return false;
	return true;
}

static bool same_points(const struct vec3 *a, const struct vec3 *b, int n)
{
	for (int i = 0; i < n; i++)
		if (!near(a[i].x, b[i].x) || !near(a[i].y, b[i].y) || !near(a[i].z, b[i].z))
			return false;
	return true;
}

static bool same_solids(const struct solid *a, const struct solid *b)
{
	for (; a && b; a = a->next, b = b->next)
		if (a->n != b->n || !same_points(a->a, b->a, a->n) ||
			!same_points(a->b, b->b, a->n))
			return false;
	return !a && !b;
}

static bool same_piece(const struct part *a, const struct part *b)
{
	return strcmp(a->name, b->name) == 0 && same_size(a->size, b->size) &&
		same_outline(a->outline, b->outline) && same_solids(a->solids, b->solids);
}

/* The first piece of the list that is equal to this one: itself, unless an equal one came before.
 * Only first ones are looked at, and a flight has a handful of those. */
static struct part *model_of(struct part *models, struct part *piece)
{
	for (struct part *m = models; m; m = m->next)
		if (same_piece(m, piece))
			return m;
	return NULL;
}

/* Room for the places doubles, so that n equal pieces cost n. */
static void add_place(struct arena *a, struct part *p, struct frame at)
{
	bool full = (p->count & (p->count - 1)) == 0;
	struct frame *places = (struct frame *)p->places;
	if (full) {
		places = NEW_N(a, struct frame, 2 * p->count);
		memcpy(places, p->places, (size_t)p->count * sizeof(*places));
		p->places = places;
	}
	places[p->count++] = at;
}

/* Equal pieces become one part with several places; marks are given in the order met. */
static struct part *merge(struct arena *a, const struct part_kind *kind, struct part *pieces)
{
	struct part *first = NULL, **tail = &first, *next;
	int number = 0;
	for (struct part *p = pieces; p; p = next) {
		next = p->next;
		p->next = NULL;
		struct part *model = model_of(first, p);
		if (model) {
			add_place(a, model, p->places[0]);
			continue;
		}
		if (kind->prefix[0])
			p->mark = arena_printf(a, "%s%d", kind->prefix, ++number);
		*tail = p;
		tail = &p->next;
	}
	return first;
}

/* The pieces of one family in all flights. */
static struct part *family_make(struct arena *a, const struct part_kind *kind,
	const struct stair *s, struct diags *d)
{
	struct part *first = NULL, **tail = &first;
	for (int i = 0; i < s->flight_count; i++) {
		*tail = kind->make(a, s, &s->flights[i], d);
		while (*tail)
			tail = &(*tail)->next;
	}
	return merge(a, kind, first);
}

const struct part *parts_make(struct arena *a, const struct stair *s, struct diags *d)
{
	if (!s)
		return NULL;
	int before = d->errors;
	struct part *first = NULL, **tail = &first;
	for (size_t i = 0; i < KINDS; i++) {
		*tail = family_make(a, kinds[i], s, d);
		while (*tail)
			tail = &(*tail)->next;
	}
	return d->errors > before ? NULL : first;
}
