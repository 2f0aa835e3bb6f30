/*
 * Wood by species and thickness: what the pieces take, and what is bought for them.
 *
 * In inches board feet by nominal thickness, sheets by the square foot; in
 * millimetres cubic metres as sawn, sheets by the square metre.
 */
#include "lists/group_words.h"
#include "lists/table.h"

#define SQUARE_FOOT (144 * MM_PER_INCH * MM_PER_INCH)

enum {
	LUMBER_SPECIES,
	LUMBER_STUFF,
	LUMBER_NOMINAL,
	LUMBER_PIECES,
	LUMBER_ROUGH,
	LUMBER_BOUGHT,
	LUMBER_UNIT,
	LUMBER_USED,
	LUMBER_COLUMNS
};

static const struct list_column columns[LUMBER_COLUMNS] = {
	[LUMBER_SPECIES] = { "Species", "species", LIST_TEXT, 40 },
	[LUMBER_STUFF] = { "As", "stuff", LIST_TEXT, 0 },
	[LUMBER_NOMINAL] = { "Thick", "nominal", LIST_LENGTH, 0 },
	[LUMBER_PIECES] = { "Pieces", "pieces", LIST_COUNT, 0 },
	[LUMBER_ROUGH] = { "In the pieces", "rough", LIST_NUMBER, 0 },
	[LUMBER_BOUGHT] = { "To buy", "bought", LIST_NUMBER, 0 },
	[LUMBER_UNIT] = { "Unit", "unit", LIST_TEXT, 0 },
	[LUMBER_USED] = { "Used %", "used_percent", LIST_NUMBER, 0 },
};

/* The volume of a piece, or its area where it is bought by that. */
static double quantity(enum units units, const struct cut_group *g, double width, double length)
{
	double wide = g->nominal_width > 0 ? g->nominal_width : width;

	if (g->stuff == STUFF_SHEET)
		return width * length / (units == UNITS_INCHES ? SQUARE_FOOT : 1e6);
	return units == UNITS_INCHES ? board_feet(g->nominal, wide, length)
				     : g->nominal * wide * length / 1e9;
}

static const char *unit_words(enum units units, enum stuff stuff)
{
	if (stuff == STUFF_SHEET)
		return units == UNITS_INCHES ? "sq ft" : "m²";
	return units == UNITS_INCHES ? "bd ft" : "m³";
}

struct sums {
	int pieces;
	double rough, bought;
};

static void add_piece(struct sums *sums, enum units units, const struct cut_group *g,
	const struct cut_piece *p, int times)
{
	sums->pieces += p->count * times;
	sums->rough += p->count * times *
		quantity(units, g, p->blank->rough_width, p->blank->rough_length);
}

static struct sums sum(enum units units, const struct cut_group *g)
{
	struct sums sums = { 0 };

	for (int i = 0; i < g->board_count; i++) {
		const struct cut_board *b = &g->boards[i];
		sums.bought += b->count * quantity(units, g, b->width, b->length);
		for (int k = 0; k < b->strip_count; k++)
			for (int j = 0; j < b->strips[k].piece_count; j++)
				add_piece(&sums, units, g, &b->strips[k].pieces[j], b->count);
	}
	for (int i = 0; i < g->misfit_count; i++)
		add_piece(&sums, units, g, &g->misfits[i], 1);
	return sums;
}

static void add(struct list_maker *m, const struct stair *s, const struct cut_group *g)
{
	struct arena *a = m->arena;
	enum units units = s->job->about.units;
	struct sums sums = sum(units, g);
	int places = units == UNITS_MILLIMETRES && g->stuff != STUFF_SHEET ? 3 : 1;
	struct list_cell *row = list_row(m);

	row[LUMBER_SPECIES] = cell_text(g->species);
	row[LUMBER_STUFF] = cell_text(stuff_words(g->stuff));
	row[LUMBER_NOMINAL] = cell_nominal(m, g);
	row[LUMBER_PIECES] = cell_count(a, sums.pieces);
	row[LUMBER_ROUGH] = cell_number(a, sums.rough, places);
	row[LUMBER_BOUGHT] = cell_number(a, sums.bought, places);
	row[LUMBER_UNIT] = cell_text(unit_words(units, g->stuff));
	row[LUMBER_USED] = sums.bought > 0 && !g->misfit_count
		? cell_number(a, 100 * sums.rough / sums.bought, 0)
		: cell_none();
}

static const char *const notes[] = {
	"Board feet are reckoned on the thickness and width as bought, never under 1\" thick: "
	"thickness x width x length in inches, by 144.",
	NULL
};

static const char *const metric_notes[] = { "Cubic metres are reckoned on the thickness as sawn.",
	NULL };

struct list list_lumber(struct arena *a, const struct stair *s, const struct cut_group *groups)
{
	struct list_maker m = list_begin(a, s, "lumber", "Wood", columns, LUMBER_COLUMNS);

	for (const struct cut_group *g = groups; g; g = g->next)
		if (g->stuff != STUFF_MOULDING)
			add(&m, s, g);
	m.list.notes = s->job->about.units == UNITS_INCHES ? notes : metric_notes;
	return m.list;
}
