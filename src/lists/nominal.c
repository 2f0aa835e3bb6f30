#include "lists/nominal.h"

#include <math.h>

#define IN(whole) ((whole)*MM_PER_INCH)

/* Hardwood by the quarter, surfaced on two sides: 4/4 gives 13/16 and so on, a dealers' table; 10/4
 * from memory. */
static const struct nominal quarters[] = {
	{ IN(1), IN(13.0 / 16) },
	{ IN(1.25), IN(17.0 / 16) },
	{ IN(1.5), IN(21.0 / 16) },
	{ IN(2), IN(1.75) },
	{ IN(2.5), IN(2.25) },
	{ IN(3), IN(2.75) },
	{ IN(4), IN(3.75) },
	{ 0, 0 },
};

/* Sawn hardwood in Europe (EN 1313-2, from memory); 5 mm off in planing is common practice. */
static const struct nominal sawn[] = { { 20, 15 }, { 27, 22 }, { 32, 27 }, { 40, 35 }, { 50, 45 },
	{ 60, 55 }, { 65, 60 }, { 70, 65 }, { 80, 75 }, { 100, 95 }, { 0, 0 } };

/* American Softwood Lumber Standard PS 20, dry. */
static const struct nominal plank_thicknesses[] = { { IN(1), IN(0.75) }, { IN(1.25), IN(1) },
	{ IN(1.5), IN(1.25) }, { IN(2), IN(1.5) }, { IN(3), IN(2.5) }, { IN(4), IN(3.5) },
	{ 0, 0 } };
static const struct nominal plank_widths[] = { { IN(2), IN(1.5) }, { IN(3), IN(2.5) },
	{ IN(4), IN(3.5) }, { IN(5), IN(4.5) }, { IN(6), IN(5.5) }, { IN(8), IN(7.25) },
	{ IN(10), IN(9.25) }, { IN(12), IN(11.25) }, { IN(14), IN(13.25) }, { 0, 0 } };

static const struct nominal *boards_in(enum units units)
{
	switch (units) {
	case UNITS_INCHES: return quarters;
	case UNITS_MILLIMETRES: return sawn;
	}
	return quarters;
}

/* As the tables above have it: 3/16 in to 6/4 and 1/4 in over it; 5 mm. */
double nominal_planing(enum units units, double bought)
{
	switch (units) {
	case UNITS_INCHES: return bought < IN(1.5) + NEAR_ENOUGH ? IN(3.0 / 16) : IN(0.25);
	case UNITS_MILLIMETRES: return 5;
	}
	return 0;
}

static double comes_out(const struct nominal *n, double planing)
{
	return planing > 0 ? n->bought - planing : n->finished;
}

struct nominal nominal_board(enum units units, double finished, double planing)
{
	const struct nominal *n = boards_in(units);

	while (n->bought > 0 && comes_out(n, planing) < finished - NEAR_ENOUGH)
		n++;
	return *n;
}

static double standard_size(const struct nominal *table, enum units units, double dressed)
{
	if (units == UNITS_INCHES)
		for (const struct nominal *n = table; n->bought > 0; n++)
			if (near_enough(n->finished, dressed))
				return n->bought;
	return dressed;
}

double nominal_plank_thickness(enum units units, double dressed)
{
	return standard_size(plank_thicknesses, units, dressed);
}

double nominal_plank_width(enum units units, double dressed)
{
	return standard_size(plank_widths, units, dressed);
}

const char *nominal_letter(struct arena *a, struct lettering how, double bought)
{
	double quarter = bought / IN(0.25);

	if (how.units == UNITS_INCHES && fabs(quarter - round(quarter)) < 1e-6)
		return arena_printf(a, "%.0f/4", quarter);
	return length_letter_inches(a, how, bought);
}
