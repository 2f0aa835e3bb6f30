/*
 * Units: pieces joined in the shop, found by the number their family gave them.
 */
#include "parts/piece.h"

static bool near_frame(struct frame a, struct frame b)
{
	return vec3_near(a.origin, b.origin) && vec3_near(a.u, b.u) && vec3_near(a.v, b.v) &&
		vec3_near(a.w, b.w);
}

static int highest_number(const struct part *parts, const struct part_kind *kind)
{
	int highest = 0;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == kind && i < p->count; i++)
			highest = p->units[i] > highest ? p->units[i] : highest;
	return highest;
}

static int piece_count(const struct part *parts, const struct part_kind *kind, int number)
{
	int n = 0;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == kind && i < p->count; i++)
			n += p->units[i] == number;
	return n;
}

static void gather(struct unit *u, struct unit_piece *pieces, const struct part *parts, int number)
{
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == u->kind && i < p->count; i++)
			if (p->units[i] == number)
				pieces[u->piece_count++] =
					(struct unit_piece){ p, p->places[i], p->places[i] };
}

/* NULL when the family has none of this number. */
static struct unit *unit_of(struct arena *a, const struct part *parts, const struct part_kind *kind,
	int number)
{
	int n = piece_count(parts, kind, number);
	if (n == 0)
		return NULL;
	struct unit *u = NEW(a, struct unit);
	struct unit_piece *pieces = NEW_N(a, struct unit_piece, n);
	struct frame *place = NEW(a, struct frame);
	int *numbers = NEW(a, int);
	u->kind = kind;
	gather(u, pieces, parts, number);
	*place = pieces[0].at;
	*numbers = number;
	for (int i = 0; i < n; i++)
		pieces[i].at = frame_within(*place, pieces[i].at);
	u->pieces = pieces;
	u->places = place;
	u->numbers = numbers;
	u->count = 1;
	return u;
}

static bool same_unit(const struct unit *a, const struct unit *b)
{
	if (a->kind != b->kind || a->piece_count != b->piece_count)
		return false;
	for (int i = 0; i < a->piece_count; i++)
		if (a->pieces[i].part != b->pieces[i].part ||
			!near_frame(a->pieces[i].at, b->pieces[i].at))
			return false;
	return true;
}

static void add_place(struct arena *a, struct unit *to, const struct unit *u)
{
	struct frame *places = NEW_N(a, struct frame, to->count + 1);
	int *numbers = NEW_N(a, int, to->count + 1);
	for (int i = 0; i < to->count; i++) {
		places[i] = to->places[i];
		numbers[i] = to->numbers[i];
	}
	places[to->count] = u->places[0];
	numbers[to->count] = u->numbers[0];
	to->places = places;
	to->numbers = numbers;
	to->count++;
}

/* The units of one family are appended, equal ones to the one that is there. */
static void add_family(struct arena *a, struct unit **list, const struct part *parts,
	const struct part_kind *kind)
{
	int highest = highest_number(parts, kind), marks = 0;
	for (int number = 1; number <= highest; number++) {
		struct unit *u = unit_of(a, parts, kind, number), **tail = list;
		if (!u)
			continue;
		while (*tail && !same_unit(*tail, u))
			tail = &(*tail)->next;
		if (*tail) {
			add_place(a, *tail, u);
			continue;
		}
		u->mark = arena_printf(a, "%sU%d", kind->prefix, ++marks);
		*tail = u;
	}
}

const struct unit *units_make(struct arena *a, const struct part *parts)
{
	struct unit *list = NULL;
	const struct part_kind *last = NULL;
	for (const struct part *p = parts; p; p = p->next) {
		if (p->kind != last)
			add_family(a, &list, parts, p->kind);
		last = p->kind;
	}
	return list;
}
