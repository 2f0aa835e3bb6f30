#include "parts/piece.h"

struct part *piece_add(struct pieces *list, const char *name, const char *material,
	struct frame place)
{
	struct part *p = NEW(list->arena, struct part);
	struct frame *f = NEW(list->arena, struct frame);
	int *unit = NEW(list->arena, int);
	*f = place;
	*unit = list->unit;
	*p = (struct part){ .kind = list->kind, .name = name, .material = material };
	p->mark = "";
	p->places = f;
	p->units = unit;
	p->count = 1;
	if (list->last)
		list->last->next = p;
	else
		list->first = p;
	list->last = p;
	return p;
}

void pieces_begin_unit(struct pieces *list)
{
	list->unit = ++list->units;
}

void piece_feature(struct arena *a, struct part *p, struct feature f)
{
	struct feature **tail = &p->features;
	while (*tail)
		tail = &(*tail)->next;
	*tail = NEW(a, struct feature);
	**tail = f;
}

void piece_bore(struct arena *a, struct part *p, struct bore b)
{
	struct bore **tail = &p->bores;
	while (*tail)
		tail = &(*tail)->next;
	*tail = NEW(a, struct bore);
	**tail = b;
}

struct bore_size bore_round(double diameter, double depth)
{
	return (struct bore_size){ BORE_HOLE, diameter, diameter, depth };
}

struct bore_size bore_oblong(enum bore_kind kind, double length, double width, double depth)
{
	return (struct bore_size){ kind, length, width, depth };
}
