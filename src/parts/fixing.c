#include "parts/fixing.h"

#include <stdlib.h>

/* Shanks by ASME B18.6.1 (0.060 in and 0.013 in more a number), from memory; shank holes from
 * memory. Pilots in hardwood by the National Design Specification, 90 % of the root, as quoted in
 * the trade's tables. */
struct screw_row {
	int number;
	double shank, hole, pilot, head;
	const char *metric; /* sold as, in millimetres */
};

static const struct screw_row screws[] = {
	{ 6, 3.5, 3.6, 2.0, 7.0, "3.5" },
	{ 8, 4.2, 4.4, 2.4, 8.3, "4" },
	{ 10, 4.8, 4.8, 2.8, 9.7, "5" },
	{ 12, 5.5, 5.6, 3.2, 11.0, "5.5" },
	{ 14, 6.1, 6.4, 3.6, 12.3, "6" },
};

/* American steel wire gauge, from memory. */
struct wire_row {
	int gauge;
	double thick;
};

static const struct wire_row wires[] = { { 15, 1.83 }, { 16, 1.59 }, { 18, 1.22 }, { 21, 0.81 },
	{ 23, 0.64 } };

#define SCREWS ((int)(sizeof(screws) / sizeof(screws[0])))
#define WIRES ((int)(sizeof(wires) / sizeof(wires[0])))

/* Lengths on the shelf (common practice), upwards; in inches and in millimetres. */
static const double screw_inches[] = { 0.5, 0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3, 3.5,
	4, 0 };
static const double screw_metric[] = { 12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 0 };
static const double brad_inches[] = { 0.5, 0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 0 };
static const double brad_metric[] = { 12, 15, 20, 25, 30, 35, 40, 45, 50, 0 };

/* Dowel rod and pins, thick (common practice). */
static const double dowel_inches[] = { 0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625, 0.75, 0 };
static const double dowel_metric[] = { 6, 8, 10, 12, 14, 16, 18, 20, 0 };

/* The largest of a row that rises and ends in 0, in units of so many millimetres. */
static double most_within(const double *sizes, double unit, double most)
{
	double best = 0;
	for (; *sizes > 0 && *sizes * unit <= most + NEAR_ENOUGH; sizes++)
		best = *sizes * unit;
	return best;
}

/* The nearest number of the table; of two as near the thicker one. */
static const struct screw_row *screw_row(int number)
{
	int i = 0;
	while (i + 1 < SCREWS && screws[i].number < number)
		i++;
	return &screws[i];
}

/* The nearest gauge that is sold; of two as near the thinner one. */
static const struct wire_row *wire_row(int gauge)
{
	int i = 0;
	while (i + 1 < WIRES && abs(wires[i + 1].gauge - gauge) <= abs(wires[i].gauge - gauge))
		i++;
	return &wires[i];
}

double bit_within(enum units units, double wanted, double most)
{
	double step = round_size(units, 1.0 / 16, 1);

	return wanted <= most ? wanted : step * floor(most / step + NEAR_ENOUGH);
}

double dowel_within(enum units units, double wanted, double most)
{
	bool inches = units == UNITS_INCHES;
	if (wanted <= most + NEAR_ENOUGH)
		return wanted;
	return most_within(inches ? dowel_inches : dowel_metric, inches ? MM_PER_INCH : 1, most);
}

struct fastener fastener_screw(int number, double length)
{
	const struct screw_row *r = screw_row(number);
	return (struct fastener){ FIXING_SCREW, r->shank, length, r->hole, r->pilot, r->head };
}

struct fastener fastener_brad(int gauge, double length)
{
	double thick = wire_row(gauge)->thick;
	return (struct fastener){ FIXING_BRAD, thick, length, thick, thick, thick };
}

struct fastener fastener_screw_within(int number, double most, enum units units)
{
	bool inches = units == UNITS_INCHES;
	return fastener_screw(number,
		most_within(inches ? screw_inches : screw_metric, inches ? MM_PER_INCH : 1, most));
}

struct fastener fastener_brad_within(int gauge, double most, enum units units)
{
	bool inches = units == UNITS_INCHES;
	return fastener_brad(gauge,
		most_within(inches ? brad_inches : brad_metric, inches ? MM_PER_INCH : 1, most));
}

struct bore fastener_bore(struct fastener f, double depth)
{
	return (struct bore){ .size = bore_round(f.hole, depth),
		.fixing = f.fixing,
		.fixing_length = f.length,
		.fixing_width = f.width };
}

struct bore dowel_bore(struct dowel d)
{
	double there = fmin(d.length / 2, d.mate_room - DOWEL_GLUE_ROOM);
	double here = fmin(d.length - there, d.room - DOWEL_GLUE_ROOM);
	there = fmin(d.length - here, d.mate_room - DOWEL_GLUE_ROOM);
	return (struct bore){ .size = bore_round(d.diameter, here + DOWEL_GLUE_ROOM),
		.mate = bore_round(d.diameter, there + DOWEL_GLUE_ROOM),
		.fixing = FIXING_DOWEL,
		.fixing_length = here + there,
		.fixing_width = d.diameter };
}

const char *fixing_name(enum fixing fixing)
{
	switch (fixing) {
	case FIXING_NONE: return "";
	case FIXING_LOOSE_TENON: return "loose tenon";
	case FIXING_DOWEL: return "dowel";
	case FIXING_DOWEL_SCREW: return "dowel screw";
	case FIXING_RAIL_BOLT: return "rail bolt";
	case FIXING_NEWEL_BOLT: return "newel bolt";
	case FIXING_BOLT: return "bolt, nut and washers";
	case FIXING_SCREW: return "screw";
	case FIXING_PLUG: return "plug, over a screw or a nut";
	case FIXING_BRAD: return "brad";
	case FIXING_BRACKET: return "rail bracket";
	case FIXING_PLATE: return "newel plate";
	case FIXING_COUNT: break;
	}
	return "";
}

/* ---- as it is asked for in a shop ---- */

static const char *screw_words(struct arena *a, struct lettering how, double shank)
{
	int i = 0;
	while (i + 1 < SCREWS && screws[i].shank < shank - 0.05)
		i++;
	return how.units == UNITS_INCHES ? arena_printf(a, "#%d", screws[i].number)
					 : screws[i].metric;
}

static const char *brad_words(struct arena *a, struct lettering how, double thick)
{
	int i = 0;
	while (i + 1 < WIRES && wires[i].thick > thick + 0.05)
		i++;
	return how.units == UNITS_INCHES ? arena_printf(a, "%d gauge", wires[i].gauge)
					 : arena_printf(a, "%.1f", wires[i].thick);
}

static const char *width_words(struct arena *a, struct lettering how, const struct bore *b)
{
	double width = b->fixing_width > 0 ? b->fixing_width : b->size.width;
	switch (b->fixing) {
	case FIXING_SCREW: return screw_words(a, how, width);
	case FIXING_BRAD: return brad_words(a, how, width);
	case FIXING_LOOSE_TENON:
		return arena_printf(a, "%s x %s", length_letter_inches(a, how, b->size.width),
			length_letter_inches(a, how, width));
	case FIXING_NONE:
	case FIXING_DOWEL:
	case FIXING_DOWEL_SCREW:
	case FIXING_RAIL_BOLT:
	case FIXING_NEWEL_BOLT:
	case FIXING_BOLT:
	case FIXING_PLUG:
	case FIXING_BRACKET:
	case FIXING_PLATE:
	case FIXING_COUNT: break;
	}
	return length_letter_inches(a, how, width);
}

const char *fixing_size(struct arena *a, struct lettering how, const struct bore *b)
{
	double length = b->fixing_length > 0 ? b->fixing_length : b->size.depth + b->mate.depth;
	return arena_printf(a, "%s x %s", width_words(a, how, b),
		length_letter_inches(a, how, length));
}
