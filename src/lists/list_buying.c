/*
 * What to ask the yard for, and what comes out of each board.
 */
#include "base/text.h"
#include "lists/group_words.h"
#include "lists/table.h"

/* ---- buying ---- */

enum { BUY_COUNT, BUY_SPECIES, BUY_STUFF, BUY_NOMINAL, BUY_WIDE, BUY_LONG, BUY_PRICE, BUY_COLUMNS };

static const struct list_column buying_columns[BUY_COLUMNS] = {
	[BUY_COUNT] = { "Buy", "count", LIST_COUNT, 0 },
	[BUY_SPECIES] = { "Species", "species", LIST_TEXT, 40 },
	[BUY_STUFF] = { "As", "stuff", LIST_TEXT, 0 },
	[BUY_NOMINAL] = { "Thick", "nominal", LIST_LENGTH, 0 },
	[BUY_WIDE] = { "Wide", "width", LIST_LENGTH, 0 },
	[BUY_LONG] = { "Long", "length", LIST_LENGTH, 0 },
	[BUY_PRICE] = { "Price", "price", LIST_NUMBER, 0 },
};

static bool is_same_stock(const struct cut_board *a, const struct cut_board *b)
{
	return near_enough(a->width, b->width) && near_enough(a->length, b->length);
}

static int boards_like(const struct cut_group *g, int i)
{
	int n = 0;

	for (int k = 0; k < i; k++)
		if (is_same_stock(&g->boards[k], &g->boards[i]))
			return 0;
	for (int k = i; k < g->board_count; k++)
		if (is_same_stock(&g->boards[k], &g->boards[i]))
			n += g->boards[k].count;
	return n;
}

static void add_boards(struct list_maker *m, const struct cut_group *g)
{
	for (int i = 0; i < g->board_count; i++) {
		const struct cut_board *b = &g->boards[i];
		int n = boards_like(g, i);
		if (!n)
			continue;
		struct list_cell *row = list_row(m);
		row[BUY_COUNT] = cell_count(m->arena, n);
		row[BUY_SPECIES] = cell_text(g->species);
		row[BUY_STUFF] = cell_text(stuff_words(g->stuff));
		row[BUY_NOMINAL] = cell_nominal(m, g);
		row[BUY_WIDE] = cell_length(m, b->width);
		row[BUY_LONG] = cell_feet(m, b->length);
		if (b->price > 0)
			row[BUY_PRICE] = cell_number(m->arena, n * b->price, 2);
	}
}

static const char *const *proofs(struct arena *a, const struct list_maker *m, const struct job *job,
	const struct cut_group *groups)
{
	int n = 0;
	bool moulded = false;
	for (const struct cut_group *g = groups; g; g = g->next, n++)
		moulded |= g->stuff == STUFF_MOULDING;
	const char **notes = NEW_N(a, const char *, n + 3);

	n = 0;
	notes[n++] =
		"Proofs hold for boards with one straight edge that are first ripped over their "
		"whole length into strips, each as wide as the widest piece on it, and the "
		"strips then cut to length.";
	for (const struct cut_group *g = groups; g; g = g->next)
		if (g->total)
			notes[n++] = arena_printf(a, "%s %s: %s.", g->species,
				group_thickness(a, m->lettering, g), group_proof(a, g));
	if (moulded)
		notes[n++] = moulding_note(a, job);
	return notes;
}

struct list list_buying(struct arena *a, const struct stair *s, const struct cut_group *groups)
{
	struct list_maker m =
		list_begin(a, s, "buying", "Boards to buy", buying_columns, BUY_COLUMNS);

	for (const struct cut_group *g = groups; g; g = g->next)
		add_boards(&m, g);
	m.list.notes = proofs(a, &m, s->job, groups);
	return m.list;
}

/* ---- cutting ---- */

enum {
	CUTTING_COUNT,
	CUTTING_SPECIES,
	CUTTING_NOMINAL,
	CUTTING_WIDE,
	CUTTING_LONG,
	CUTTING_STRIPS,
	CUTTING_COLUMNS
};

static const struct list_column cutting_columns[CUTTING_COLUMNS] = {
	[CUTTING_COUNT] = { "Boards", "count", LIST_COUNT, 0 },
	[CUTTING_SPECIES] = { "Species", "species", LIST_TEXT, 40 },
	[CUTTING_NOMINAL] = { "Thick", "nominal", LIST_LENGTH, 0 },
	[CUTTING_WIDE] = { "Wide", "width", LIST_LENGTH, 0 },
	[CUTTING_LONG] = { "Long", "length", LIST_LENGTH, 0 },
	[CUTTING_STRIPS] = { "Rip, then cut", "strips", LIST_TEXT, 0 },
};

/* 2 T1 @ 41"; a narrower one is ripped once more: T2 @ 40" rip to 2". */
static const char *piece_words(const struct list_maker *m, const struct cut_strip *s,
	const struct cut_piece *p)
{
	struct arena *a = m->arena;
	const struct blank *b = p->blank;
	const char *many = p->count > 1 ? arena_printf(a, "%d ", p->count) : "";
	const char *row = b->row > 1
		? arena_printf(a, "length%s of %d ", p->count > 1 ? "s" : "", b->row)
		: "";
	const char *again = b->rough_width < s->width - NEAR_ENOUGH
		? arena_printf(a, " rip to %s",
			  length_letter_inches(a, m->lettering, b->rough_width))
		: "";

	return arena_printf(a, "%s%s%s @ %s%s", many, row, b->part->mark,
		length_letter_inches(a, m->lettering, b->rough_length), again);
}

/* 3 3/4": 2 T1 @ 41", T2 @ 40" */
static const char *strip_words(const struct list_maker *m, const struct cut_strip *s)
{
	struct text t = { .arena = m->arena };

	for (int i = 0; i < s->piece_count; i++)
		text_join(&t, ", ", piece_words(m, s, &s->pieces[i]));
	return arena_printf(m->arena, "%s: %s",
		length_letter_inches(m->arena, m->lettering, s->width), text_chars(&t));
}

struct list list_cutting(struct arena *a, const struct stair *s, const struct cut_group *groups)
{
	struct list_maker m =
		list_begin(a, s, "cutting", "Cutting", cutting_columns, CUTTING_COLUMNS);

	for (const struct cut_group *g = groups; g; g = g->next)
		for (int i = 0; i < g->board_count; i++) {
			const struct cut_board *b = &g->boards[i];
			struct list_cell *row = list_row(&m);
			struct text strips = { .arena = a };
			for (int k = 0; k < b->strip_count; k++)
				text_join(&strips, "; ", strip_words(&m, &b->strips[k]));
			row[CUTTING_COUNT] = cell_count(a, b->count);
			row[CUTTING_SPECIES] = cell_text(g->species);
			row[CUTTING_NOMINAL] = cell_nominal(&m, g);
			row[CUTTING_WIDE] = cell_length(&m, b->width);
			row[CUTTING_LONG] = cell_feet(&m, b->length);
			row[CUTTING_STRIPS] = cell_text(text_chars(&strips));
		}
	return m.list;
}
