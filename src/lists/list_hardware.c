/*
 * What is counted by the piece, and by the running length.
 *
 * Hardware is counted from the holes it goes into: those a part was drilled with
 * for its own sake, for those on the other side of a joint hold the same piece.
 */
#include <string.h>

#include "base/text.h"
#include "lists/table.h"

enum { HARD_COUNT, HARD_ITEM, HARD_SIZE, HARD_WHERE, HARD_COLUMNS };

static const struct list_column hardware_columns[HARD_COLUMNS] = {
	[HARD_COUNT] = { "Count", "count", LIST_COUNT, 0 },
	[HARD_ITEM] = { "Item", "item", LIST_TEXT, 0 },
	[HARD_SIZE] = { "Size", "size", LIST_TEXT, 0 },
	[HARD_WHERE] = { "In", "parts", LIST_TEXT, 70 },
};

struct item {
	struct item *next;
	const char *name, *size;
	int count;
	struct text where;
	const struct part *last; /* that was put into `where` */
};

/* Where it is, or has to come in: what goes by one name stands together. */
static struct item **place_of(struct item **items, const char *name, const char *size)
{
	struct item **last = NULL, **at = items;

	for (; *at; at = &(*at)->next) {
		if (strcmp((*at)->name, name) != 0)
			continue;
		if (strcmp((*at)->size, size) == 0)
			return at;
		last = &(*at)->next;
	}
	return last ? last : at;
}

static void count(struct arena *a, struct item **items, const char *name, const char *size,
	const struct part *p)
{
	struct item **at = place_of(items, name, size), *item = *at;

	if (!item || strcmp(item->name, name) != 0 || strcmp(item->size, size) != 0) {
		item = NEW(a, struct item);
		*item = (struct item){ .next = *at,
			.name = name,
			.size = size,
			.where = { .arena = a } };
		*at = item;
	}
	item->count += p->count;
	if (item->last != p)
		text_join(&item->where, ", ", p->mark);
	item->last = p;
}

static const char *bought_size(const struct list_maker *m, struct part_size s)
{
	return arena_printf(m->arena, "%s x %s x %s",
		length_letter_inches(m->arena, m->lettering, s.thickness),
		length_letter_inches(m->arena, m->lettering, s.width),
		length_letter_inches(m->arena, m->lettering, s.length));
}

struct list list_hardware(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct list_maker m =
		list_begin(a, s, "hardware", "Hardware", hardware_columns, HARD_COLUMNS);
	struct item *items = NULL;

	for (const struct part *p = parts; p; p = p->next) {
		for (const struct bore *b = p->bores; b; b = b->next)
			if (!b->is_mate && b->fixing != FIXING_NONE)
				count(a, &items, fixing_name(b->fixing),
					fixing_size(a, m.lettering, b), p);
		if (!part_is_existing(p) && p->stuff == STUFF_BOUGHT)
			count(a, &items, p->name, bought_size(&m, p->size), p);
	}
	for (const struct item *i = items; i; i = i->next) {
		struct list_cell *row = list_row(&m);
		row[HARD_COUNT] = cell_count(a, i->count);
		row[HARD_ITEM] = cell_text(i->name);
		row[HARD_SIZE] = cell_text(i->size);
		row[HARD_WHERE] = cell_text(text_chars(&i->where));
	}
	return m.list;
}

/* ---- mouldings ---- */

enum {
	MOULD_NAME,
	MOULD_SPECIES,
	MOULD_SECTION,
	MOULD_PIECES,
	MOULD_NET,
	MOULD_BUY,
	MOULD_COLUMNS
};

static const struct list_column moulding_columns[MOULD_COLUMNS] = {
	[MOULD_NAME] = { "Moulding", "moulding", LIST_TEXT, 0 },
	[MOULD_SPECIES] = { "Species", "species", LIST_TEXT, 40 },
	[MOULD_SECTION] = { "Section", "section", LIST_TEXT, 0 },
	[MOULD_PIECES] = { "Pieces", "pieces", LIST_COUNT, 0 },
	[MOULD_NET] = { "Finished", "finished", LIST_NUMBER, 0 },
	[MOULD_BUY] = { "To make or buy", "bought", LIST_NUMBER, 0 },
};

static bool holds(const struct cut_board *board, const struct blank *b)
{
	for (int k = 0; k < board->strip_count; k++)
		for (int j = 0; j < board->strips[k].piece_count; j++)
			if (board->strips[k].pieces[j].blank == b)
				return true;
	return false;
}

static bool is_cut_from(const struct cut_group *g, const struct blank *b)
{
	for (int i = 0; i < g->board_count; i++)
		if (holds(&g->boards[i], b))
			return true;
	return false;
}

static double bought_length(const struct cut_group *g)
{
	double length = 0;

	for (int i = 0; i < g->board_count; i++) {
		const struct cut_board *b = &g->boards[i];
		length += b->count * b->length;
	}
	return length;
}

/* Finished, of the pieces that are cut out of its lengths. */
static double finished_length(const struct cut_group *g, const struct blank *blanks, int *pieces)
{
	double length = 0;

	for (const struct blank *b = blanks; b; b = b->next) {
		int made = b->pieces + b->spares;
		if (!is_cut_from(g, b))
			continue;
		*pieces += made;
		length += made * b->length;
	}
	return length;
}

static const struct blank *first_blank(const struct cut_group *g)
{
	return g->board_count ? g->boards[0].strips[0].pieces[0].blank : g->misfits[0].blank;
}

struct list list_mouldings(struct arena *a, const struct list_sources *from)
{
	struct list_maker m = list_begin(a, from->stair, "mouldings", "Mouldings", moulding_columns,
		MOULD_COLUMNS);
	double unit = from->stair->job->about.units == UNITS_INCHES ? 12 * MM_PER_INCH : 1000;
	static const char *const feet[] = { "Mouldings in running feet.", NULL };
	static const char *const metres[] = { "Mouldings in running metres.", NULL };

	for (const struct cut_group *g = from->cutting; g; g = g->next) {
		if (g->stuff != STUFF_MOULDING)
			continue;
		const struct blank *b = first_blank(g);
		int pieces = 0;
		double net = finished_length(g, from->blanks, &pieces);
		struct list_cell *row = list_row(&m);
		row[MOULD_NAME] = cell_text(g->name);
		row[MOULD_SPECIES] = cell_text(g->species);
		row[MOULD_SECTION] = cell_text(arena_printf(a, "%s x %s",
			length_letter_inches(a, m.lettering, b->thickness),
			length_letter_inches(a, m.lettering, b->width)));
		row[MOULD_PIECES] = cell_count(a, pieces);
		row[MOULD_NET] = cell_number(a, net / unit, 1);
		row[MOULD_BUY] = cell_number(a, bought_length(g) / unit, 1);
	}
	m.list.notes = unit < 1000 ? feet : metres;
	return m.list;
}
