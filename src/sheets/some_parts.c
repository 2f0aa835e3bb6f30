#include "sheets/some_parts.h"

/* NULL where none of its places is wanted. */
static struct part *in_some_places(struct arena *a, const struct part *p, wanted_fn *wanted,
	const void *with)
{
	struct frame *places = NEW_N(a, struct frame, p->count + 1);
	int n = 0;

	for (int i = 0; i < p->count; i++)
		if (wanted(p, i, with))
			places[n++] = p->places[i];
	if (n == 0)
		return NULL;
	struct part *copy = NEW(a, struct part);
	*copy = *p;
	copy->places = places;
	copy->count = n;
	copy->next = NULL;
	return copy;
}

const struct part *some_parts(struct arena *a, const struct part *parts, wanted_fn *wanted,
	const void *with)
{
	struct part *first = NULL, **tail = &first;

	for (const struct part *p = parts; p; p = p->next) {
		*tail = in_some_places(a, p, wanted, with);
		if (*tail)
			tail = &(*tail)->next;
	}
	return first;
}
