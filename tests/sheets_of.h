/*
 * The sheets of one kind, of a stair, on a plain paper in millimetres.
 */
#ifndef TESTS_SHEETS_OF_H
#define TESTS_SHEETS_OF_H

#include "built.h"
#include "pitchboard/sheet.h"
#include "six_tenths.h"

static inline const struct drawing *sheets_of(const struct built *b, const struct sheet_kind *kind,
	double width, double height)
{
	struct paper paper = { .name = "of the test",
		.width = width,
		.height = height,
		.left = 20,
		.right = 10,
		.top = 10,
		.bottom = 10,
		.lettering = 2.5,
		.scales = SCALES_METRIC };
	struct stationery none = { .paper_count = 0 };
	struct sheet_context c = { .stair = b->stair,
		.parts = b->parts,
		.stationery = &none,
		.paper = &paper,
		.measure = six_tenths() };

	return kind->draw(b->arena, &c);
}

#endif
